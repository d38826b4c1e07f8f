import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder that holds package.json, found upward from here: the same from source and from a build in dist/. */
export function packageRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder)
    if (above === folder) throw new Error('package.json was not found above the store')
    folder = above
  }
  return folder
}
