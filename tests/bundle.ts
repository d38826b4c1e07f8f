import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
// inside the package, where what stays outside the bundle is found
const CACHE = join(ROOT, 'node_modules/.cache/ebbline-tests')

// native, or asked for only where it is there
const OUTSIDE = [
  'better-sqlite3',
  '@resvg/resvg-js',
  'zlib-sync',
  'bufferutil',
  'utf-8-validate',
  'pg-native',
]

export interface Bundle {
  /** Where the bundled program of a source file lies ("src/main.ts"). */
  of(file: string): string
  remove(): void
}

/**
 * Programs of ours with all that they load, in few files: a process begins with a third of the work, and the tests
 * start hundreds. Sources are named from the package's root; a name is used once in a process.
 */
export async function bundle(name: string, files: readonly string[]): Promise<Bundle> {
  removeDead()
  const folder = join(CACHE, `${process.pid}-${name}`)
  mkdirSync(folder, { recursive: true })
  await build({
    entryPoints: files.map((file) => join(ROOT, file)),
    outdir: folder,
    outbase: ROOT,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    external: OUTSIDE,
    banner: {
      js: [
        "import { createRequire as makeRequire } from 'node:module'",
        'const require = makeRequire(import.meta.url)',
        'const __filename = new URL(import.meta.url).pathname',
        "const __dirname = new URL('.', import.meta.url).pathname",
      ].join(';'),
    },
  })
  return {
    of: (file) => join(folder, file.replace(/\.ts$/, '.mjs')),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}

/** What runs that are over have left. */
function removeDead(): void {
  if (!existsSync(CACHE)) return
  for (const name of readdirSync(CACHE))
    if (!existsSync(`/proc/${Number.parseInt(name, 10)}`))
      rmSync(join(CACHE, name), { recursive: true, force: true })
}
