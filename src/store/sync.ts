import { closeSync, fsyncSync, openSync } from 'node:fs'

/** Waits until a file, or what a folder lists, is on the disk: it survives a power cut then. */
export function syncPath(path: string): void {
  const opened = openSync(path, 'r')
  try {
    fsyncSync(opened)
  } finally {
    closeSync(opened)
  }
}
