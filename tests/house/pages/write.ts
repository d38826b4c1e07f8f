import { writeFileSync } from 'node:fs'
import { PAGES } from './pages.ts'

/** `npm run pages`: writes the pages anew. */
for (const { path, text } of PAGES) writeFileSync(path, text)
