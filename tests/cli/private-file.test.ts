import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import {
  chmodSync,
  closeSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { writePrivate } from '../../src/cli/private-file.ts'

let folder: string
let path: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ebbline-private-'))
  path = join(folder, 'heron.csv')
})
const mode = (file: string): number => statSync(file).mode & 0o777

describe('a file for its owner alone', () => {
  it('is so from its first byte', () => {
    writePrivate(path, 'day,pain\n')
    expect([readFileSync(path, 'utf8'), mode(path), readdirSync(folder)]).toEqual([
      'day,pain\n',
      0o600,
      ['heron.csv'],
    ])
  })

  it('takes the place of one that others may read, who go on reading the old one', () => {
    writeFileSync(path, 'old')
    chmodSync(path, 0o644)
    const reader = openSync(path, 'r')
    writePrivate(path, 'new')
    expect(readFileSync(reader, 'utf8')).toBe('old')
    closeSync(reader)
    expect([readFileSync(path, 'utf8'), mode(path), readdirSync(folder)]).toEqual([
      'new',
      0o600,
      ['heron.csv'],
    ])
  })

  it('goes where a link points, and the link stays', () => {
    const link = join(folder, 'link.csv')
    writeFileSync(path, 'old')
    symlinkSync(path, link)
    writePrivate(link, 'new')
    expect(lstatSync(link).isSymbolicLink()).toBe(true)
    expect([readFileSync(path, 'utf8'), mode(path)]).toEqual(['new', 0o600])
  })

  it('leaves a pipe a pipe', async () => {
    execFileSync('mkfifo', [path])
    const reader = spawn('cat', [path])
    const heard: Buffer[] = []
    reader.stdout.on('data', (chunk: Buffer) => heard.push(chunk))
    const over = once(reader, 'close')
    writePrivate(path, 'through')
    await over
    expect(Buffer.concat(heard).toString()).toBe('through')
    expect(statSync(path).isFIFO()).toBe(true)
  })

  it.each([
    ['a folder', (): string => folder, 'EISDIR'],
    ['a folder that is not there', (): string => join(folder, 'none', 'x'), 'ENOENT'],
    ['a file taken for a folder', (): string => join(path, 'x'), 'ENOTDIR'],
  ])('cannot be written over %s: nothing is left lying', (_, of, code) => {
    mkdirSync(join(folder, 'other'))
    writeFileSync(path, 'old')
    const target = of()
    expect(() => writePrivate(target, 'new')).toThrow(expect.objectContaining({ code }))
    expect(readdirSync(folder).sort()).toEqual(['heron.csv', 'other'])
    expect(readFileSync(path, 'utf8')).toBe('old')
  })
})
