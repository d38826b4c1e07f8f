import type { Published } from './publish.ts'

/** One line's part of the servers: its number, from 0, and how many lines there are. */
export type Shard = readonly [id: number, count: number]

export const THE_ONLY: Shard = [0, 1]

/**
 * Which line a server's events come by: `(guild_id >> 22) % num_shards`; what belongs to no server comes by the first
 * (Discord documentation, "Sharding").
 */
export const shardOf = (guildId: string | null, count: number): number =>
  guildId === null || count === 1 ? 0 : Number((BigInt(guildId) >> 22n) % BigInt(count))

/** Whether an event comes by this line. */
export function comesBy([id, count]: Shard, event: Published): boolean {
  return shardOf(guildOf(event), count) === id
}

const ALL_INTENTS = -1

function guildOf({ name, forIntents }: Published): string | null {
  const data = forIntents(ALL_INTENTS) as { guild_id?: string; id?: string } | null
  const isServer = name === 'GUILD_CREATE' || name === 'GUILD_UPDATE' || name === 'GUILD_DELETE'
  return (isServer ? data?.id : data?.guild_id) ?? null
}
