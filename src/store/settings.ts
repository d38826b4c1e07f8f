import type { Database } from './database.ts'

/** Small facts about the program itself, such as the hash of the commands it has registered. */
export interface SettingStore {
  get(key: string): Promise<string | null>
  set(key: string, value: string): Promise<void>
}

export function settingStore(database: Database): SettingStore {
  return {
    get: (key) =>
      database.use(async (db) => (await db.setting.findUnique({ where: { key } }))?.value ?? null),
    set: (key, value) =>
      database.use(async (db) => {
        await db.setting.upsert({ where: { key }, create: { key, value }, update: { value } })
      }),
  }
}
