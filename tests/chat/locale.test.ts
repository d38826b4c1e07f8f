import { describe, expect, it } from 'vitest'
import { inAll, textsIn } from '../../src/chat/locale.ts'
import { textsFor } from '../../src/text/index.ts'

const [en, es] = [textsFor('en').chat, textsFor('es').chat]
const parts = { texts: en, otherTexts: { 'es-ES': es, 'es-419': es } }

describe('what the chat itself says', () => {
  it('is in the language to which the platform is set, else in the first', () => {
    expect(textsIn(parts, 'es-419').failed).toBe(es.failed)
    expect(textsIn(parts, 'pt-BR').failed).toBe(en.failed)
    expect(textsIn({ texts: en }, 'es-ES').failed).toBe(en.failed)
  })

  it('is in each language once where nothing tells which', () => {
    expect(inAll(parts, ({ failed }) => failed)).toBe(`${en.failed}\n\n${es.failed}`)
  })
})
