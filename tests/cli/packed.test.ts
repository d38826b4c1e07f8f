import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'ebbline-packed-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** In a folder of its own, where only the packages of the project are found beside it. */
const bin = join(folder, 'node_modules/ebbline/dist/src/cli/index.js')
const run = (args: string[], input = ''): string =>
  execFileSync(process.execPath, [bin, ...args], { cwd: folder, input, encoding: 'utf8' })

describe('the packed file', () => {
  let files: string[] = []

  beforeAll(() => {
    const said = execFileSync('npm', ['pack', '--json', '--silent', '--pack-destination', folder], {
      cwd: ROOT,
      encoding: 'utf8',
    })
    const [packed] = JSON.parse(said.slice(said.indexOf('[')))
    files = packed.files.map((file: { path: string }) => file.path)
    execFileSync('tar', ['-xzf', packed.filename], { cwd: folder })
    mkdirSync(join(folder, 'node_modules'))
    symlinkSync(join(folder, 'package'), join(folder, 'node_modules/ebbline'))
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'package/node_modules'))
  })

  it('holds what the program needs and nothing of its workshop', () => {
    const tops = new Set(files.map((file) => file.split('/')[0]))
    expect([...tops].sort()).toEqual(
      ['CHANGELOG.md', 'LICENSE', 'README.md', 'dist', 'package.json', 'prisma', 'scenarios', 'src'].sort(),
    )
    expect(files.filter((file) => /(^|\/)tests?\//.test(file))).toEqual([])
    expect(files.filter((file) => file.startsWith('src/') && !file.endsWith('/README.md'))).toEqual([])
    expect(files).toContain('dist/src/rehearsal/page/site/page.js')
  })

  it('reads a reply', () => {
    expect(JSON.parse(run(['parse'], '{"text":"2 calf 4"}\n'))).toMatchObject({ reach: 'calf', pain: 4 })
  })

  it('plays a scenario through the whole program', () => {
    const scenario = join(folder, 'package/scenarios/urgent-second-week.yaml')
    expect(run(['play', scenario, '--direct'])).toMatch(/(\d+) of \1 expectations met/)
  })
})
