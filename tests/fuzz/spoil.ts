import type { Draw } from '../shake/draw.ts'

/** Pieces that readers stumble over: separators, signs, other scripts, lone surrogates, what looks like code. */
const PIECES = [
  ...[
    '',
    ' ',
    '\n',
    '\r\n',
    '\t',
    '\0',
    ',',
    ';',
    ':',
    '#',
    '"',
    "'",
    '[',
    '{',
    '}',
    '- ',
    '? ',
    '&a',
    '*a',
    '!!',
  ],
  ...[
    '\uFEFF',
    '\u200B',
    '\u202E',
    '\uD83D',
    '\uDE00',
    '😀',
    'é',
    'ß',
    'İ',
    '４',
    '٤',
    '½',
    'ﬁ',
    '\u0300'.repeat(30),
  ],
  ...[
    '-1',
    '1e999',
    '99999999999999999999',
    '0x10',
    'NaN',
    'null',
    'true',
    '__proto__',
    'constructor',
    '2026-02-30',
  ],
  ...[
    '<@1>',
    '@everyone',
    '`',
    '**',
    '%s',
    '%d',
    '../..',
    'no',
    'not',
    'numb',
    'pee',
    'both legs',
    'calf',
    '10',
  ],
] as const

/** A text spoiled in one to four places: cut, doubled, turned round, with something strange put in. */
export function spoiled(draw: Draw, samples: readonly string[]): string {
  let text = draw.one(samples)
  for (let times = draw.whole(1, 4); times > 0; times -= 1) text = spoiledOnce(draw, text, samples)
  return text
}

function spoiledOnce(draw: Draw, text: string, samples: readonly string[]): string {
  const at = draw.whole(0, text.length)
  const to = Math.min(text.length, at + draw.whole(0, 12))
  switch (draw.weighed({ put: 5, cut: 3, twice: 1, swap: 1, other: 1, letter: 2 })) {
    case 'put':
      return text.slice(0, at) + draw.one(PIECES) + text.slice(at)
    case 'cut':
      return text.slice(0, at) + text.slice(to)
    case 'twice':
      return text.slice(0, to) + text.slice(at)
    case 'swap':
      return text.slice(at) + text.slice(0, at)
    case 'other':
      return text.slice(0, at) + draw.one(samples).slice(at)
    case 'letter':
      return text.slice(0, at) + String.fromCharCode(draw.whole(0, 0xffff)) + text.slice(at + 1)
  }
}

const ODD: readonly unknown[] = [
  ...[
    undefined,
    null,
    '',
    ' ',
    'x'.repeat(5_000),
    0,
    -1,
    1e300,
    Number.NaN,
    true,
    [],
    {},
    [null],
    { id: null },
  ],
  ...['not a date', '0', '99999999999999999999999'],
]

/** An object in which one to three fields, at any depth, are missing or hold something else than they should. */
export function oddFields<T>(draw: Draw, sample: T): T {
  const copy = structuredClone(sample)
  for (let times = draw.whole(1, 3); times > 0; times -= 1) spoilField(draw, copy as Record<string, unknown>)
  return copy
}

function spoilField(draw: Draw, object: Record<string, unknown>): void {
  const keys = Object.keys(object)
  if (keys.length === 0) return
  const key = draw.one(keys)
  const value = object[key]
  if (typeof value === 'object' && value !== null && draw.chance(50))
    return spoilField(draw, value as Record<string, unknown>)
  if (draw.chance(40)) delete object[key]
  else object[key] = draw.one(ODD)
}
