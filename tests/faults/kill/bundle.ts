import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const HERE = fileURLToPath(new URL('.', import.meta.url))
// inside the package, where what stays outside the bundle is found
const CACHE = fileURLToPath(new URL('../../../node_modules/.cache/ebbline-kill/', import.meta.url))

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
  readonly path: string
  remove(): void
}

/** The bot and what stands around it in one file: loading it takes a third of the time, and hundreds are started. */
export async function bundleChild(): Promise<Bundle> {
  mkdirSync(CACHE, { recursive: true })
  const path = join(CACHE, `child-${process.pid}.mjs`)
  await build({
    entryPoints: [join(HERE, 'child.ts')],
    outfile: path,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    external: OUTSIDE,
    banner: {
      js: [
        "import { createRequire as makeRequire } from 'node:module'",
        'const require = makeRequire(import.meta.url)',
        'const __filename = new URL(import.meta.url).pathname',
      ].join(';'),
    },
  })
  return { path, remove: () => rmSync(path, { force: true }) }
}
