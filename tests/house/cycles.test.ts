import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const ENGINE = fileURLToPath(new URL('../../src/engine/', import.meta.url))
const FROM_OURS = /^(?:import|export)\s[^'"]*?from\s+'(\.[^']+)'/gm
const MOST_LINES = 250

const sources = new Map(
  readdirSync(ENGINE, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name): [string, string] => [name, readFileSync(join(ENGINE, name), 'utf8')]),
)
const importsOf = (name: string): string[] =>
  [...(sources.get(name) ?? '').matchAll(FROM_OURS)].map((match) => join(dirname(name), match[1]!))

/** A way from a file back to itself, by name; null where there is none. */
function circleFrom(start: string): string[] | null {
  const seen = new Set<string>()
  const ways = [[start]]
  for (let way = ways.pop(); way; way = ways.pop())
    for (const next of importsOf(way.at(-1)!)) {
      if (next === start) return [...way, next]
      if (!seen.has(next)) ways.push([...way, next])
      seen.add(next)
    }
  return null
}

describe('the engine', () => {
  it('has no modules that import each other in a circle, types included', () => {
    expect([...sources.keys()].flatMap((name) => circleFrom(name) ?? [])).toEqual([])
  })

  it('has files that can be read at one sitting', () => {
    const long = [...sources].filter(([, text]) => text.split('\n').length > MOST_LINES)
    expect(long.map(([name]) => name)).toEqual([])
  })
})
