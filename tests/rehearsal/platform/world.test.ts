import { ChannelType, PermissionFlagsBits, SlashCommandBuilder } from 'discord.js'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  compareSnowflakes,
  createSnowflakes,
  Permission,
  snowflakeTime,
} from '../../../src/rehearsal/platform/index.ts'
import { codeOf, declare, setStage } from './harness.ts'

test('ids always increase, carry the time where the clock runs on, and repeat for the same times', () => {
  const times = fc.array(fc.integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2027, 0, 1) }), {
    minLength: 2,
  })
  const make = (at: readonly number[]) => {
    let i = 0
    const next = createSnowflakes(() => at[i]!)
    return at.map((_, n) => {
      i = n
      return next()
    })
  }
  fc.assert(
    fc.property(times, (at) => {
      const ids = make(at)
      expect(make(at)).toEqual(ids)
      for (let n = 1; n < ids.length; n += 1) expect(compareSnowflakes(ids[n - 1]!, ids[n]!)).toBeLessThan(0)
      const sorted = [...new Set(at)].sort((a, b) => a - b)
      expect(make(sorted).map(snowflakeTime)).toEqual(sorted)
    }),
  )
})

test('the permission bits are the platform’s own', () => {
  // names and bits: discord-api-types, which discord.js brings along
  for (const [name, bit] of Object.entries(Permission)) {
    const theirs = `${name[0]!.toUpperCase()}${name.slice(1)}` as keyof typeof PermissionFlagsBits
    expect(PermissionFlagsBits[theirs], name).toBe(bit)
  }
})

test('what the client computes for a channel agrees with what the platform allows', async (t) => {
  const { platform, client, guildId, heron } = await setStage(t)
  const coach = platform.build.addRole(guildId, 'coach')
  const seen = { id: coach.id, type: 'role', allow: Permission.viewChannel, deny: 0n } as const
  const room = platform.build.addChannel(guildId, 'room', { everyoneCanView: false, overwrites: [seen] })
  const guild = await client.guilds.fetch(guildId)
  const channel = (await guild.channels.fetch(room.id))!
  expect(channel.permissionsFor(guild.roles.everyone).has('ViewChannel')).toBe(false)
  expect(channel.permissionsFor(coach.id)!.has('ViewChannel')).toBe(true)
  expect(channel.permissionsFor(guild.members.me!).has(['ViewChannel', 'SendMessages'])).toBe(true)
  expect(() => heron.say('hello', { channelId: room.id })).toThrow('cannot see')
  platform.build.addMember(guildId, heron.id, [coach.id])
  expect(() => heron.say('hello', { channelId: room.id })).not.toThrow()
})

test('servers, roles, members and channels can be fetched', async (t) => {
  const { platform, client, guildId, channelId, heron } = await setStage(t)
  const coach = platform.build.addRole(guildId, 'coach')
  platform.build.addMember(guildId, heron.id, [coach.id])
  const guild = await client.guilds.fetch(guildId)
  const member = await guild.members.fetch(heron.id)
  expect(member.roles.cache.has(coach.id)).toBe(true)
  expect((await guild.members.fetchMe()).id).toBe(platform.appId)
  expect((await guild.roles.fetch()).map((r) => r.name).sort()).toEqual(['@everyone', 'coach', 'ebbline'])
  expect((await guild.channels.fetch()).map((c) => c!.id)).toEqual([channelId])
  expect(await codeOf(guild.members.fetch('1'))).toBe('404/10013')
  expect(await codeOf(client.guilds.fetch('1'))).toBe('404/10004')
  expect(await codeOf(guild.channels.create({ name: 'new', type: ChannelType.GuildText }))).toBe('403/50013')
  expect(platform.violations).toEqual([])
})

test('commands are declared for everybody or one server, keep their ids, and are limited to their places', async (t) => {
  const { platform, client, guildId, channelId, heron } = await setStage(t)
  const roster = new SlashCommandBuilder()
    .setName('roster')
    .setDescription('Who rows')
    .setDefaultMemberPermissions('0')
  const today = new SlashCommandBuilder().setName('today').setDescription('What to do')
  const first = await declare(client, [today])
  const second = await declare(client, [today, roster])
  expect(second.find((c) => c.name === 'today')!.id).toBe(first.first()!.id)
  expect((await client.application!.commands.fetch()).size).toBe(2)
  await client.application!.commands.set([today], guildId)
  expect([platform.registrations(), platform.registrations(guildId)]).toEqual([2, 1])
  const added = await client.application!.commands.create({ name: 'steer', description: 'Steers' }, guildId)
  await added.edit({ description: 'Steers well' })
  await added.delete()
  expect(platform.registrations(guildId)).toBe(3)
  await client.guilds.cache.get(guildId)!.commands.set([])
  await declare(client, [today.setContexts(0), roster.setDefaultMemberPermissions(Permission.manageGuild)])
  await expect(heron.slash('dm', 'today')).rejects.toThrow('cannot be used here')
  await expect(heron.slash(channelId, 'roster')).rejects.toThrow('may not use')
  await declare(client, [roster.setDefaultMemberPermissions('0')])
  await expect(heron.slash(channelId, 'roster')).rejects.toThrow('may not use')
  expect(platform.violations).toEqual([])
})
