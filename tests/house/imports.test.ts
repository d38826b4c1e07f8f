import { readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { named, tableBelow } from './developers.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

interface May {
  readonly import: readonly string[]
  readonly types: readonly string[]
}
/** Which of our parts each part may import, as DEVELOPERS.md has it. */
const MAY = new Map(
  tableBelow('**Imports**').map(([of, all, types]): [string, May] => [
    named(of!)[0]!,
    { import: named(all!), types: named(types!) },
  ]),
)

const files = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    if (statSync(path).isDirectory()) return name === 'generated' ? [] : files(path)
    return path.endsWith('.ts') && !path.endsWith('.d.ts') ? [path] : []
  })

/** The part of the house a file is in: the folder below src, or `commands`. */
function partOf(path: string): string {
  const parts = relative(ROOT, path).split('/')
  if (parts[0] === 'commands') return 'commands'
  // the ports hold the error that delivery throws and catches: a value that the engine declares
  if (parts.join('/') === 'src/engine/ports.ts') return 'ports'
  return parts.length === 2 ? parts[1]!.replace('.ts', '') : parts[1]!
}

interface Import {
  readonly file: string
  readonly from: string
  readonly to: string
  readonly typeOnly: boolean
}

const imports = (file: string): Import[] =>
  [...readFileSync(file, 'utf8').matchAll(/^(?:import|export)\s+(type\s)?[^'"]*?from\s+'(\.[^']+)'/gm)].map(
    (match) => ({
      file: relative(ROOT, file),
      from: partOf(file),
      to: partOf(resolve(dirname(file), match[2]!)),
      typeOnly: match[1] !== undefined,
    }),
  )

const all = [...files(join(ROOT, 'src')), ...files(join(ROOT, 'commands'))].flatMap(imports)

/** Puts parts together: the command line, the rehearsal, and what stands in src itself. */
const isFree = ({ from, file }: Import): boolean =>
  /^src\/(?:(?:cli|rehearsal)\/.*|[\w-]+\.ts)$/.test(file) && !MAY.has(from)

const allowed = (one: Import): boolean => {
  if (one.from === one.to || isFree(one)) return true
  const may = MAY.get(one.from)
  // whoever may know the engine may know its ports
  const names = one.to === 'ports' ? ['ports', 'engine'] : [one.to]
  return names.some((name) => may?.import.includes(name) || (one.typeOnly && may?.types.includes(name)))
}

describe('the house', () => {
  it('is told of in the table of imports', () => {
    expect(MAY.get('store')).toEqual({ import: ['domain', 'ports', 'seal', 'generated'], types: ['engine'] })
    expect(MAY.size).toBe(14)
  })

  it('has imports that point the agreed way only', () => {
    const astray = all
      .filter((one) => !allowed(one))
      .map(({ file, from, to }) => `${file}: ${from} imports ${to}`)
    expect(astray).toEqual([])
  })

  it('has a command line that nothing else imports', () => {
    const astray = all.filter(({ from, to }) => to === 'cli' && from !== 'cli').map(({ file }) => file)
    expect(astray).toEqual([])
  })

  it('has no clock and no input or output in the domain', () => {
    const banned =
      /from 'node:(fs|http|net|child_process)|Date\.now\(|new Date\(\)|DateTime\.now|from 'discord|from '@prisma/
    const astray = files(join(ROOT, 'src/domain')).filter((file) => banned.test(readFileSync(file, 'utf8')))
    expect(astray.map((file) => relative(ROOT, file))).toEqual([])
  })
})
