import { defineConfig } from 'prisma/config'

// For the Prisma command line alone; the bot itself reads DATABASE_URL through src/config.ts.
const url = process.env.DATABASE_URL ?? 'file:data/ebbline.db'
const folder = /^postgres(ql)?:/.test(url) ? 'prisma/postgresql' : 'prisma/sqlite'

export default defineConfig({
  schema: folder,
  migrations: { path: `${folder}/migrations` },
  datasource: { url },
})
