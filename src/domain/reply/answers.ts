import type { Item } from './items.ts'
import type { Known, Language } from './lexicon/compile.ts'
import type { Ask } from './reading.ts'
import type { Token } from './tokens.ts'

const SMALL: readonly Item['cue'][] = [
  'mark',
  'article',
  'be',
  'soft',
  'sideNoun',
  'leg',
  'was',
  'now',
  'partOf',
  'inside',
  'only',
]
const THUMB_UP = '👍'
const THUMB_DOWN = '👎'
/** An answer is short; in a longer text only its first word can be one. */
const SHORT_ANSWER = 3

function yesOrNo(content: readonly Item[], tokens: readonly Token[]): string | null {
  const first = content[0]
  if (!first) {
    if (tokens.some((t) => t.text === THUMB_UP)) return 'yes'
    return tokens.some((t) => t.text === THUMB_DOWN) ? 'no' : null
  }
  if (first.cue === 'yes') return 'yes'
  if (first.cue === 'nope' || first.cue === 'no' || first.cue === 'nothing') return 'no'
  return null
}

function whichSide(content: readonly Item[]): string | null {
  const has = (cue: Item['cue']): boolean => content.some((item) => item.cue === cue && !item.denied)
  if (has('both') || (has('left') && has('right'))) return 'both'
  if (has('left')) return 'left'
  if (has('right')) return 'right'
  if (has('otherSide')) return 'other'
  return has('same') ? 'same' : null
}

function choice(content: readonly Item[]): string | null {
  const [first] = content
  return content.length === 1 && first?.cue === 'num' && Number.isInteger(first.value)
    ? String(first.value)
    : null
}

/** The barrier whose words stand in the answer, the longest first. */
function barrierOf(words: readonly string[], language: Language): string | null {
  for (let length = Math.min(words.length, 5); length > 0; length--) {
    for (let at = 0; at + length <= words.length; at++) {
      const found = language.barriers.get(words.slice(at, at + length).join(' '))
      if (found) return found
    }
  }
  return null
}

export interface Said {
  readonly items: readonly Item[]
  readonly words: readonly Known[]
  readonly tokens: readonly Token[]
}

/** A plain yes or no, a choice by its number, or a word of the choice; null where the question was not answered. */
export function answerTo(asked: Ask | null, said: Said, language: Language): string | null {
  if (asked === null) return null
  const content = said.items.filter((item) => !SMALL.includes(item.cue))
  if (asked === 'side') return whichSide(content) ?? choice(content)
  if (asked === 'barrier')
    return (
      choice(content) ??
      barrierOf(
        said.words.slice(0, 60).map(({ plain }) => plain),
        language,
      )
    )
  if (asked === 'reach' || asked === 'day') return choice(content)
  const plain = yesOrNo(content, said.tokens)
  if (asked === 'sessions' || asked === 'pain') return content.length <= 1 && plain !== null ? plain : null
  if (plain !== null) return plain
  // "not yet" to "does it feel easy?"
  if (content.length === 1 && content[0]!.cue === 'notYet') return 'no'
  return content.length <= SHORT_ANSWER ? choice(content) : null
}
