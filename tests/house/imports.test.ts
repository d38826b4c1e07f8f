import { readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** Which of our folders each folder may import; `type:` means types alone. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  domain: [],
  text: ['domain'],
  engine: ['domain', 'type:text'],
  store: ['domain', 'type:engine', 'ports', 'generated', 'seal'],
  chat: ['domain', 'type:engine', 'ports', 'safe-error', 'type:text', 'type:bot'],
  'without-store': ['domain', 'engine', 'ports', 'safe-error', 'seal', 'type:text'],
  schedule: ['domain', 'type:engine', 'ports', 'safe-error'],
  picture: ['domain', 'type:engine'],
  commands: ['domain', 'engine', 'ports', 'type:text'],
  seal: [],
  'safe-error': [],
  progress: [],
  'assessment-json': ['domain', 'text'],
}
const ANYTHING = [
  'main',
  'service',
  'short-way',
  'drawing',
  'told-keeper',
  'heartbeat',
  'health',
  'own-ladders',
  'keys',
  'start',
  'service-without-store',
  'bot',
  'bot-several',
  'several',
  'work',
  'work-fit',
  'config',
  'cli',
  'rehearsal',
]

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

const allowed = ({ from, to, typeOnly }: Import): boolean => {
  if (from === to || ANYTHING.includes(from)) return true
  if (from === 'ports') return to === 'engine' && typeOnly
  if (from === 'engine' && to === 'ports') return true
  const may = MAY[from] ?? []
  return (
    may.includes(to) ||
    (typeOnly && (may.includes(`type:${to}`) || (to === 'ports' && may.includes('type:engine'))))
  )
}

describe('the house', () => {
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
