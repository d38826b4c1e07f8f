import { describe, expect, it } from 'vitest'
import { phrasesIn } from '../../../src/domain/phrase-list.ts'
import { en } from '../../../src/domain/reply/lexicon/en/index.ts'
import { es } from '../../../src/domain/reply/lexicon/es/index.ts'
import { screen } from '../../../src/domain/signs/screen.ts'

const WHOLE = ['noSession', 'dayOff', 'all', 'both', 'half', 'aSession', 'oneSession', 'notYet'] as const
/** Of these one says how many: "skipped one". */
const COUNTED = ['missed'] as const
/** What could be told of a leg, of both, or of the way to the toilet as well: asked about behind a zone, or anywhere. */
const DOUBTFUL = [
  ...['couldnt manage it', 'couldnt do anything', 'couldnt get to it', 'couldnt get to them'],
  ...['both of them', 'the two of them'],
]

/** How the reader knows sessions, done and left out: the commonest answers of all, by themselves and beside values. */
describe.each([
  ['en', en, '2 calf 4', 'one'],
  ['es', es, '2 gemelo 4', 'dos'],
] as const)('what the reader takes for sessions is no sign: %s', (locale, { cues }, values, one) => {
  const raised = (phrases: readonly string[]): string[] =>
    phrases
      .filter((phrase) => !DOUBTFUL.includes(phrase))
      .flatMap((phrase) => [phrase, `${values} ${phrase}`, `${phrase}, ${values}`])
      .filter((text) => screen(text, locale).signs.length > 0)

  it.each(WHOLE)('%s', (kind) => expect(raised(phrasesIn(cues[kind] ?? ''))).toEqual([]))
  it.each(COUNTED)('%s', (kind) =>
    expect(raised(phrasesIn(cues[kind] ?? '').map((phrase) => `${phrase} ${one}`))).toEqual([]),
  )
})
