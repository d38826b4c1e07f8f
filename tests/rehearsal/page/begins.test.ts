import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const SCENARIO = `title: Two days at the oars
practice: { zone: Europe/Lisbon, region: PT }
start: 2026-03-02
days: 2
clients:
  - ref: heron
    plan: { sessions: 2, rungs: { extension: 1 } }
    answers: { signs: none }
    days: { 1-2: "2 calf 4" }
`
const folder = mkdtempSync(join(tmpdir(), 'ebbline-begins-'))
const file = join(folder, 'two.yaml')
writeFileSync(file, SCENARIO)
afterAll(() => rmSync(folder, { recursive: true }))

const LINK = /http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\//
const rehearse = () => [process.execPath, '--import', 'tsx', 'src/cli/index.ts', 'rehearse', file]
// util-linux; where it is missing no terminal can be made
const hasTerminal = spawnSync('script', ['--version']).status === 0
if (!hasTerminal)
  console.warn('SKIPPED, no program script (util-linux): a rehearsal is not begun in a terminal.')
const inTerminal = (): ChildProcess =>
  spawn('script', ['-qefc', rehearse().join(' '), '/dev/null'], { stdio: ['ignore', 'pipe', 'pipe'] })

function heard(child: ChildProcess): { text: string; ended: Promise<number | null> } {
  const told = { text: '', ended: new Promise<number | null>((resolve) => child.once('exit', resolve)) }
  child.stdout?.on('data', (chunk) => (told.text += chunk))
  child.stderr?.on('data', (chunk) => (told.text += chunk))
  return told
}

// programs of their own, on machines that may be busy
describe('a rehearsal', { timeout: 180_000 }, () => {
  it('ends with the play where nobody could open a link', async () => {
    const [program, ...args] = rehearse()
    const told = heard(spawn(program!, args))
    expect(await told.ended).toBe(0)
    expect(told.text).toMatch(/transcript\.txt/)
    expect(told.text).not.toMatch(LINK)
  })

  it.skipIf(!hasTerminal)(
    'shows how far it has come and serves the page in a terminal, until it is stopped',
    async () => {
      const child = inTerminal()
      const told = heard(child)
      await expect.poll(() => told.text, { timeout: 150_000 }).toMatch(LINK)
      expect(told.text).toMatch(/\[#+\.+\] {2}50 %/)
      const answer = await fetch(LINK.exec(told.text)![0])
      expect(await answer.text()).toContain('<title>Ebbline, rehearsal</title>')
      child.kill('SIGTERM')
      await told.ended
    },
  )
})
