import { commands } from '../../../commands/index.ts'
import { customId } from '../../chat/custom-id.ts'
import type { Filled } from '../../engine/event.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import type { Answer, FieldValues, Person, Platform } from '../platform/index.ts'
import type { SlashCommand, Use } from '../scenario/index.ts'
import { type Cast, userOf } from './cast.ts'
import type { Received } from './received.ts'
import type { Usable } from './shown.ts'

interface PeopleParts {
  readonly platform: Platform
  readonly cast: Cast
  readonly received: Received
  readonly onTrouble: (what: string) => void
  /** False while no event can reach the bot, or it does not run: nobody can be answered then. */
  readonly reachable: () => boolean
}

/** What people do with their own apps. */
export class People {
  constructor(private readonly parts: PeopleParts) {}

  person(who: string): Person {
    return this.parts.platform.person(userOf(this.parts.cast, who))
  }

  async press(who: string, row: OutboxRow, index: number): Promise<Answer> {
    const custom = customId({ outbox: row.id, part: 'button', index })
    return this.answered(this.person(who).press(this.parts.received.messageWith(row, custom), custom))
  }

  async choose(who: string, row: OutboxRow, values: readonly string[]): Promise<void> {
    const custom = customId({ outbox: row.id, part: 'pick', index: 0 })
    const message = this.parts.received.messageWith(row, custom)
    await this.answered(this.person(who).choose(message, custom, values))
  }

  async fill(who: string, row: OutboxRow, index: number, filled: Filled): Promise<void> {
    const opened = await this.press(who, row, index)
    if (opened.outcome !== 'modal')
      return this.parts.onTrouble(`${who} pressed for a form and none was shown`)
    await this.answered(this.person(who).submit(opened.modal, filled as FieldValues))
  }

  /** As it is shown: a list, a button, or the form behind one. */
  async use(
    who: string,
    { message, customId, isList }: Usable,
    { values, fill }: Use,
  ): Promise<string | null> {
    const person = this.person(who)
    if (isList) {
      await this.answered(person.choose(message, customId, values ?? []))
      return null
    }
    const opened = await this.answered(person.press(message, customId))
    if (!fill) return null
    if (opened.outcome !== 'modal') return `${who} pressed for a form and none was shown`
    await this.answered(person.submit(opened.modal, fill as FieldValues))
    return null
  }

  async command(who: string, { name, options }: SlashCommand): Promise<void> {
    const { cast } = this.parts
    const isClients = commands.find((one) => one.name === name)?.who === 'client'
    const place = who === 'coach' ? cast.coachChannel : isClients ? 'dm' : cast.hall
    await this.answered(this.person(who).slash(place, name, { ...options }))
  }

  async answered(work: Promise<Answer>): Promise<Answer> {
    const answer = await work
    if (answer.outcome === 'expired' && this.parts.reachable())
      this.parts.onTrouble('an interaction was not answered within 3 s')
    return answer
  }
}
