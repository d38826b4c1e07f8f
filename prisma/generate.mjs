// Generates the Prisma clients of both databases into src/generated, where they are missing or the models changed.
// Runs before every start, test and command, so it must cost nothing when there is nothing to do, and it never
// writes to standard output, which belongs to the command that follows.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const out = join(root, 'src/generated')
const stamp = join(out, '.made-from')
const lock = join(out, '.lock')

/** Addresses that make prisma.config.ts pick the folder; nothing is ever connected to. */
const DATABASES = { sqlite: 'file:unused.db', postgresql: 'postgresql://unused' }
const SOURCES = ['models/models.prisma', 'sqlite/schema.prisma', 'postgresql/schema.prisma', 'generate.mjs']

// Twice the time that a slow machine was seen to need; a lock older than its process is taken over before that.
const WAIT_MS = 120_000
const LOOK_AGAIN_MS = 100

function wanted() {
  const hash = createHash('sha256').update(readFileSync(join(root, 'node_modules/prisma/package.json')))
  for (const file of SOURCES) hash.update(readFileSync(join(root, 'prisma', file)))
  return hash.digest('hex')
}

function isMade(hash) {
  const clients = Object.keys(DATABASES).every((db) => existsSync(join(out, db, 'client.ts')))
  return clients && existsSync(stamp) && readFileSync(stamp, 'utf8') === hash
}

function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

/** True once the lock is ours; false where another run holds it. */
function takeLock() {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' })
    return true
  } catch (error) {
    if (error.code !== 'EEXIST') throw error
  }
  const holder = Number(existsSync(lock) ? readFileSync(lock, 'utf8') : 0)
  if (holder > 0 && !isAlive(holder)) rmSync(lock, { force: true })
  return false
}

/** Runs the Prisma command line for one database; its words are shown only where it fails. */
function generate(db) {
  const cli = join(dirname(createRequire(import.meta.url).resolve('prisma/package.json')), 'build/index.js')
  const env = {
    ...process.env,
    DATABASE_URL: DATABASES[db],
    CHECKPOINT_DISABLE: '1',
    PRISMA_HIDE_UPDATE_MESSAGE: '1',
    // The command line wants a native engine that generating never runs; any executable will do.
    PRISMA_SCHEMA_ENGINE_BINARY: process.env.PRISMA_SCHEMA_ENGINE_BINARY ?? process.execPath,
  }
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [cli, 'generate'], {
      cwd: root,
      env,
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let said = ''
    child.stdout.on('data', (data) => (said += data))
    child.stderr.on('data', (data) => (said += data))
    child.on('error', reject)
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`${db}:\n${said}`))))
  })
}

async function makeAll(hash) {
  process.stderr.write('Making the database clients (first run, or the tables changed) ...\n')
  rmSync(stamp, { force: true })
  for (const db of Object.keys(DATABASES)) rmSync(join(out, db), { recursive: true, force: true })
  await Promise.all(Object.keys(DATABASES).map(generate))
  writeFileSync(stamp, hash)
}

async function main() {
  const hash = wanted()
  if (isMade(hash)) return
  mkdirSync(out, { recursive: true })
  const end = Date.now() + WAIT_MS
  while (!takeLock()) {
    if (Date.now() > end) throw new Error(`another run holds ${lock}; remove that file if there is none`)
    await pause(LOOK_AGAIN_MS)
  }
  try {
    if (!isMade(hash)) await makeAll(hash)
  } finally {
    rmSync(lock, { force: true })
  }
}

main().catch((error) => {
  process.stderr.write(
    `The database clients could not be made. ${error.message}\nRun "npm ci", then try again.\n`,
  )
  process.exitCode = 1
})
