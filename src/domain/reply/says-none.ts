import { fold } from './fold.ts'
import { itemise } from './items.ts'
import { languageOf } from './lexicon/index.ts'
import { tokenise } from './tokens.ts'

const DENIES = ['no', 'nope', 'nothing', 'noSession']
const SMALL = ['article', 'be', 'soft', 'now', 'mark']

/** True where the words are "none" in this locale and say nothing else: "nothing except warfarin" is not. */
export function saysNone(text: string, locale: string): boolean {
  const { items } = itemise(tokenise(fold(text)), languageOf(locale))
  const denies = items.filter(({ cue }) => DENIES.includes(cue))
  return denies.length > 0 && items.every(({ cue }) => DENIES.includes(cue) || SMALL.includes(cue))
}
