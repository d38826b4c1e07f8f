import { ComponentType, InteractionType, MessageFlag } from './codes.ts'
import type { Context } from './context.ts'
import { checkChoices, type FieldValues, fillForm } from './fill.ts'
import type { Answer, Modal } from './interaction.ts'
import { addMessage, editMessage } from './messages.ts'
import { commandData, type OptionValues } from './options.ts'
import { channelPermissions, Permission } from './permissions.ts'
import { announce, retract } from './posting.ts'
import { type Component, type WireMessage, walkComponents } from './wire.ts'
import type { Account, Channel, StoredMessage } from './world.ts'

/** What comes with words that a person says. */
export interface SayExtras {
  /** A channel of a server; direct messages where left out. */
  channelId?: string
  attachments?: { filename: string; contentType: string; data: Buffer }[]
  /** Names of stickers. */
  stickers?: readonly string[]
  /** A voice message: the attachment is the recording. */
  voice?: boolean
}

/** Somebody with an account, acting through their own app: what the app would not let them do throws an Error. */
export class Person {
  constructor(
    private readonly context: Context,
    private readonly account: Account,
  ) {}

  get id(): string {
    return this.account.id
  }

  get name(): string {
    return this.account.name
  }

  /** Writes a message; gives its id. */
  say(text: string, extras: SayExtras = {}): string {
    const { world } = this.context
    const channel = extras.channelId === undefined ? world.dmChannel(this.id) : this.place(extras.channelId)
    const sent = extras.attachments ?? []
    const files = sent.map((f, i) => ({
      slot: String(i),
      name: f.filename,
      contentType: f.contentType,
      data: f.data,
    }))
    const stored = addMessage(world, {
      channel,
      author: this.account,
      body: { content: text, flags: extras.voice ? MessageFlag.voice : 0 },
      files,
      baseUrl: this.context.url,
      extra: stickersOf(this.context, extras.stickers ?? []),
    })
    announce(this.context, 'MESSAGE_CREATE', stored)
    return stored.wire.id
  }

  /** Changes the words of a message of one's own. */
  edit(messageId: string, text: string): void {
    const stored = this.own(messageId)
    editMessage(this.context.world, stored, { body: { content: text }, files: [], baseUrl: this.context.url })
    announce(this.context, 'MESSAGE_UPDATE', stored)
  }

  /** Takes back a message of one's own. */
  delete(messageId: string): void {
    retract(this.context, this.own(messageId))
  }

  /**
   * Uses a chat command.
   * @param place a channel's id, or 'dm' for the direct messages with the bot
   * @param name the command, with group and subcommand after it where it has them: `plan show`
   */
  async slash(place: string, name: string, options: OptionValues = {}): Promise<Answer> {
    return this.sendCommand(InteractionType.command, place, name, options, null)
  }

  /** Types into an option that offers suggestions; the answer holds them. */
  async complete(
    place: string,
    name: string,
    option: string,
    typed: string,
    others: OptionValues = {},
  ): Promise<Answer> {
    return this.sendCommand(InteractionType.autocomplete, place, name, { ...others, [option]: typed }, option)
  }

  /** Presses a button of a message. */
  async press(messageId: string, customId: string): Promise<Answer> {
    const message = this.visible(messageId)
    const button = usable(message, customId, ComponentType.button)
    const data = { component_type: button.type, custom_id: customId, id: button.id }
    return this.send(InteractionType.component, this.channelOf(message), data, message)
  }

  /** Chooses from a select of a message. */
  async choose(messageId: string, customId: string, values: readonly string[]): Promise<Answer> {
    const message = this.visible(messageId)
    const select = usable(message, customId, ComponentType.stringSelect)
    checkChoices(select, values, { min: select.min_values ?? 1, max: select.max_values ?? 1 }, true)
    const data = { component_type: select.type, custom_id: customId, id: select.id, values }
    return this.send(InteractionType.component, this.channelOf(message), data, message)
  }

  /** Fills in a form that the bot opened, and sends it; fields left out keep what the form began with. */
  async submit(modal: Modal, fields: FieldValues): Promise<Answer> {
    if (modal.userId !== this.id) throw new Error('this form was opened for somebody else')
    const { world } = this.context
    const data = { custom_id: modal.customId, components: fillForm(modal.components, fields) }
    const message = modal.messageId === null ? undefined : world.messages.get(modal.messageId)
    return this.send(InteractionType.modal, world.channels.get(modal.channelId)!, data, message)
  }

  private sendCommand(
    type: number,
    place: string,
    name: string,
    values: OptionValues,
    focused: string | null,
  ) {
    const { world } = this.context
    const channel = place === 'dm' ? world.dmChannel(this.id) : this.place(place)
    const words = name.replace(/^\//, '').split(' ')
    const command = this.findCommand(channel, words[0]!)
    return this.send(type, channel, commandData(world, channel, command, words, values, focused))
  }

  private findCommand(channel: Channel, name: string) {
    const { world } = this.context
    const local = channel.guildId === null ? [] : (world.commands.get(channel.guildId) ?? [])
    const command = [...local, ...(world.commands.get('global') ?? [])].find((c) => c.name === name)
    if (!command) throw new Error(`there is no command /${name} here`)
    const context = channel.guildId === null ? 1 : 0
    const shut = command.contexts
      ? !command.contexts.includes(context)
      : context === 1 && command.dm_permission === false
    if (shut) throw new Error(`/${name} cannot be used here`)
    this.checkMayUse(channel, name, command.default_member_permissions)
    return command
  }

  private checkMayUse(channel: Channel, name: string, needed: string | null): void {
    const guild = this.context.world.guildOf(channel)
    if (!guild) return
    const held = channelPermissions(guild, channel, this.id)
    // documented: a command that asks for no permission at all, "0", is for administrators only
    const special = needed === null ? 0n : BigInt(needed) || Permission.administrator
    const asked = Permission.useApplicationCommands | special
    if ((held & asked) !== asked) throw new Error(`${this.name} may not use /${name} here`)
  }

  private send(type: number, channel: Channel, data: unknown, message?: StoredMessage): Promise<Answer> {
    const opening = { type, user: this.account, channel, data }
    return this.context.interactions.open(message ? { ...opening, message } : opening)
  }

  private place(channelId: string): Channel {
    const { world } = this.context
    const channel = world.channels.get(channelId)
    const guild = channel && world.guildOf(channel)
    const mine = channel?.recipientId === this.id
    if (channel && mine) return channel
    const held = channel && guild ? channelPermissions(guild, channel, this.id) : 0n
    if (!channel || !(held & Permission.viewChannel)) throw new Error(`${this.name} cannot see this channel`)
    return channel
  }

  private visible(messageId: string): StoredMessage {
    const stored = this.context.world.messages.get(messageId)
    if (!stored) throw new Error('the message is gone')
    this.place(stored.channelId)
    if (stored.onlyFor !== null && stored.onlyFor !== this.id) throw new Error('somebody else was told this')
    return stored
  }

  private own(messageId: string): StoredMessage {
    const stored = this.visible(messageId)
    if (stored.wire.author.id !== this.id) throw new Error('this message is somebody else’s')
    return stored
  }

  private channelOf(message: StoredMessage): Channel {
    return this.context.world.channels.get(message.channelId)!
  }
}

function usable(message: StoredMessage, customId: string, type: number): Component {
  const found: Component[] = []
  walkComponents(message.wire.components, (c) => c.custom_id === customId && c.type === type && found.push(c))
  const component = found[0]
  if (!component) throw new Error(`the message has no such component: ${customId}`)
  if (component.disabled) throw new Error(`the component is switched off: ${customId}`)
  return component
}

function stickersOf(context: Context, names: readonly string[]): Partial<WireMessage> {
  if (names.length === 0) return {}
  return { sticker_items: names.map((name) => ({ id: context.world.nextId(), name, format_type: 1 })) }
}
