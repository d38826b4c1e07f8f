/**
 * A stand-in for the chat platform on this machine: Discord's HTTP API v10 and gateway as far as a bot with
 * direct messages, commands, components and forms needs them. The real discord.js client runs against it:
 * `new Client({ rest: { api: platform.apiUrl } })`.
 *
 * Every request is checked against the platform's published schemas; what they do not allow is answered with
 * 50035 and kept in `platform.violations`.
 */

export { ComponentType, Intent, InteractionType } from './codes.ts'
export type { FieldValues } from './fill.ts'
export type { Forged } from './forger.ts'
export type { Answer, Modal } from './interaction.ts'
export type { Rates } from './limits.ts'
export type { OptionValues } from './options.ts'
export { Permission } from './permissions.ts'
export type { Person } from './person.ts'
export { Platform, type PlatformOptions } from './platform.ts'
export type { PostedAttachment, PostedEvent, PostedMessage } from './posted.ts'
export { compareSnowflakes, createSnowflakes, snowflakeTime } from './snowflake.ts'
export type { Component } from './wire.ts'
export type { Channel } from './world.ts'
