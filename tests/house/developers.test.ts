import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { PATIENCE, SLICE_MS } from '../../src/without-store/patience.ts'
import { DEVELOPERS, named, tableBelow } from './developers.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** What stands in a folder: files of TypeScript, and folders with a slash behind. */
const within = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter((entry) => entry.name !== 'generated' && (entry.isDirectory() || entry.name.endsWith('.ts')))
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name))

describe('the map of the house', () => {
  const map = tableBelow('## The house').map(([where, what]) => ({
    where: named(where!),
    what: named(what!),
  }))
  const saidOf = (folder: string): string[] => map.find(({ where }) => where.includes(folder))!.what

  it('names every folder and file of src, and no other', () => {
    const there = within('src').map((name) => `src/${name.replace(/\/$/, '')}`)
    expect(map.flatMap(({ where }) => where).toSorted()).toEqual(
      [...there, 'commands', 'prisma', 'scenarios', 'tests'].toSorted(),
    )
  })

  it('names every part of the domain', () => {
    const there = within('src/domain').map((name) => name.replace(/\.ts$/, ''))
    expect(there.filter((name) => !saidOf('src/domain').includes(name))).toEqual([])
  })

  it('names every folder of tests that mirrors none of src', () => {
    const ofTests = within('tests').filter((name) => name.endsWith('/') && !within('src').includes(name))
    expect(ofTests.filter((name) => !saidOf('tests').includes(name))).toEqual([])
  })

  it('names no folder that is not there', () => {
    const gone = ['src/domain', 'src/picture', 'tests'].flatMap((folder) =>
      saidOf(folder).filter((name) => /^[\w-]+\/$/.test(name) && !within(folder).includes(name)),
    )
    expect(gone).toEqual([])
  })
})

describe('what else is said of the code', () => {
  it('gives the very time that a sign waits for the database', () => {
    const seconds = (slices: number): string => `${(slices * SLICE_MS) / 1000} s`
    expect(DEVELOPERS).toContain(
      `a plain urgent sign waits ${seconds(PATIENCE.plain)} for it, one that would be asked back ${seconds(PATIENCE.unsure)};`,
    )
  })

  it('names every file outside the languages that names one', () => {
    const [, steps = ''] = /\*\*Add a language\*\*(.*?)\n\n/s.exec(DEVELOPERS) ?? []
    const spanish = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !/^generated\/|\/(?:en|es)\//.test(name))
      .filter((name) => /'es['-]|\/es\/|\bes(?::| })/.test(readFileSync(join(ROOT, 'src', name), 'utf8')))
      .map((name) => `src/${name}`)
    expect(spanish.length).toBeGreaterThan(3)
    expect(spanish.filter((path) => !steps.includes(`\`${path}\``))).toEqual([])
  })
})
