import { textsFor } from '../../text/index.ts'
import { type Cast, whoIs } from '../player/cast.ts'
import type { VirtualClock } from '../player/clock.ts'
import type { LiveStage } from '../player/stage.ts'
import type { SlashCommand } from '../scenario/index.ts'
import type { Cards } from './cards.ts'

/** A stage on which whatever people do by a script leaves its card, before what it leads to. */
export function witnessed(stage: LiveStage, clock: VirtualClock, cards: () => Cards): LiveStage {
  const { page } = textsFor('en').rehearsal
  const deed = (who: string, text: string): string => cards().deed(who, text, clock.world())
  const own = (who: string, id: string): void => cards().own(who, stage.platform.message(id), id)
  const seen: Partial<LiveStage> = {
    async say(who, text) {
      const id = await stage.say(who, text)
      own(who, id)
      return id
    },
    async edit(who, message, text) {
      await stage.edit(who, message, text)
      own(who, message)
    },
    async takeBack(who, message) {
      await stage.takeBack(who, message)
      own(who, message)
    },
    press(who, row, index) {
      deed(who, page.pressed(row.body.buttons[index]?.label ?? ''))
      return stage.press(who, row, index)
    },
    choose(who, row, values) {
      const labels = row.body.pick?.options
        .filter((one) => values.includes(one.value))
        .map((one) => one.label)
      deed(who, page.chose((labels ?? values).join('; ')))
      return stage.choose(who, row, values)
    },
    fill(who, row, index, filled) {
      deed(who, page.filled(row.body.buttons[index]?.form?.title ?? row.body.buttons[index]?.label ?? ''))
      return stage.fill(who, row, index, filled)
    },
    command(who, command) {
      deed(who, typed(command, stage.cast))
      return stage.command(who, command)
    },
    use(who, use) {
      deed(
        who,
        use.fill
          ? page.filled(use.name)
          : use.values
            ? page.chose(use.values.join('; '))
            : page.pressed(use.name),
      )
      return stage.use!(who, use)
    },
  }
  return Object.assign(Object.create(stage) as LiveStage, seen)
}

/** As it was typed: people by alias, without the rooms and the role, which the page fills in. */
function typed({ name, options }: SlashCommand, cast: Cast): string {
  const rooms = [cast.coachChannel, cast.alertChannel, cast.role]
  const shown = Object.entries(options).filter(([, value]) => !rooms.includes(String(value)))
  return [`/${name}`, ...shown.map(([key, value]) => `${key}:${whoIs(cast, String(value)) ?? value}`)].join(
    ' ',
  )
}
