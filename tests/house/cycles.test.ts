import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const SRC = fileURLToPath(new URL('../../src/', import.meta.url))
const FROM_OURS = /^(?:import|export)\s(?<typeOnly>type\s)?[^'"]*?from\s+'(?<path>\.[^']+)'/gm
/** Loaded for what it does, or only when it is asked for. */
const LOADED = /\bimport\s*\(?\s*'(?<path>\.[^']+)'/g
const MOST_LINES = 250

const sources = new Map(
  readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.startsWith('generated/'))
    .map((name): [string, string] => [name, readFileSync(join(SRC, name), 'utf8')]),
)

type Ways = ReadonlyMap<string, readonly string[]>

/** Which of our files each file imports. */
const ways = (typesToo: boolean): Ways =>
  new Map(
    [...sources].map(([name, text]) => [
      name,
      [...text.matchAll(FROM_OURS), ...text.matchAll(LOADED)]
        .filter(({ groups }) => typesToo || groups!.typeOnly === undefined)
        .map(({ groups }) => join(dirname(name), groups!.path!)),
    ]),
  )

/** A way from a file back to itself, by name; null where there is none. */
function circleFrom(start: string, all: Ways): string[] | null {
  const seen = new Set<string>()
  const open = [[start]]
  for (let way = open.pop(); way; way = open.pop())
    for (const next of all.get(way.at(-1)!) ?? []) {
      if (next === start) return [...way, next]
      if (!seen.has(next)) open.push([...way, next])
      seen.add(next)
    }
  return null
}

const circles = (names: Iterable<string>, all: Ways): string[] =>
  [...names].flatMap((name) => circleFrom(name, all) ?? [])

describe('the modules', () => {
  it('load in no circle', () => {
    expect(circles(sources.keys(), ways(false))).toEqual([])
  })

  it.each(['engine', 'rehearsal'])('of the %s know of each other in no circle, types included', (part) => {
    const names = [...sources.keys()].filter((name) => name.startsWith(`${part}/`))
    expect(circles(names, ways(true))).toEqual([])
  })

  it('of the engine can be read at one sitting', () => {
    const long = [...sources].filter(
      ([name, text]) => name.startsWith('engine/') && text.split('\n').length > MOST_LINES,
    )
    expect(long.map(([name]) => name)).toEqual([])
  })
})
