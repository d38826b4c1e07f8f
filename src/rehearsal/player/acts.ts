import { commands } from '../../../commands/index.ts'
import type { Day } from '../../domain/day.ts'
import type { Filled } from '../../engine/event.ts'
import { textsFor } from '../../text/index.ts'
import type { ClientAct, DayValues, ScriptClient, SlashCommand } from '../scenario/index.ts'
import type { Board } from './board.ts'
import { fileOf } from './opening.ts'
import type { Stage } from './stage.ts'

export interface ActParts {
  readonly stage: Stage
  readonly board: Board
  /** Platform ids of what each client has said, the latest last. */
  readonly said: Map<string, string[]>
  /** The local day that the script means. */
  readonly day: Day
  /** Lists the answers that have been shown so far. */
  readonly settle: () => void
}

export const NEEDS_CHAT = '“use” needs the stand-in: leave out --direct'

/** Plays one scripted act of a client. Gives what kept it from being played, or null. */
export async function playAct(
  client: ScriptClient,
  does: ClientAct,
  parts: ActParts,
): Promise<string | null> {
  const { stage, said } = parts
  const { ref } = client
  const mine = said.get(ref) ?? []
  switch (does.do) {
    case 'say':
      said.set(ref, [...mine, await stage.say(ref, does.text)])
      return null
    case 'edit':
      await stage.edit(ref, mine.at(-1)!, does.text)
      return null
    case 'delete':
      await stage.takeBack(ref, mine.at(-1)!)
      said.set(ref, mine.slice(0, -1))
      return null
    case 'form':
      return client.hands === 'words' ? sayForm(client, does.values, parts) : fillIn(ref, does.values, parts)
    case 'press':
      return press(client, does.button, parts)
    case 'use':
      return stage.use ? stage.use(ref, does.use) : NEEDS_CHAT
    case 'command':
      return command(ref, does.command, stage)
    case 'travel': {
      const { zone, region } = does
      const options = { ...(zone ? { zone } : {}), ...(region ? { region } : {}) }
      return command(ref, { name: 'my-times', options }, stage)
    }
  }
}

/** What the platform does not offer to a client cannot be typed. */
async function command(ref: string, { name, options }: SlashCommand, stage: Stage): Promise<string | null> {
  if (commands.find((one) => one.name === name)?.who === 'keeper')
    return `the platform does not offer /${name} to ${ref}`
  await stage.command(ref, { name, options: onPlatform(options, stage) })
  return null
}

/** Options with people, roles and rooms by their platform ids: "person:heron" is written in a scenario. */
export function onPlatform(options: SlashCommand['options'], { cast }: Stage): SlashCommand['options'] {
  const ids: Readonly<Record<string, string | undefined>> = {
    'coach-role': cast.role,
    'coach-channel': cast.coachChannel,
    'alert-channel': cast.alertChannel,
    person: cast.clients.get(String(options.person)),
    deputy: cast.clients.get(String(options.deputy)),
    to: cast.clients.get(String(options.to)),
  }
  return Object.fromEntries(
    Object.entries(options).map(([name, value]) => [
      name,
      /^\d{15,}$/.test(String(value)) ? value : (ids[name] ?? value),
    ]),
  )
}

async function press({ ref, hands }: ScriptClient, button: string, { stage, board }: ActParts) {
  if (hands === 'words') {
    const file = await fileOf(ref, stage)
    const option = file?.asked.flatMap((asked) => asked.options).find((one) => one.name === button)
    await stage.say(ref, option?.label ?? button.replaceAll('-', ' '))
    return null
  }
  const found = board.find(`client:${ref}`, button)
  if (!found) return `${ref} has no message with a button “${button}”`
  if (found.row.body.buttons[found.index]!.form)
    return `“${button}” opens a form; write form: instead of press:`
  await stage.press(ref, found.row, found.index)
  return null
}

/** The form under the day's prompt; where none came that day, one that is asked for. */
async function fillIn(
  ref: string,
  values: DayValues,
  { stage, board, day, settle }: ActParts,
): Promise<string | null> {
  const ofDay = () => {
    const found = board.find(`client:${ref}`, 'check-in')
    return found && found.row.body.buttons[found.index]!.act.day === day ? found : null
  }
  if (!ofDay()) {
    await stage.command(ref, { name: 'check-in', options: {} })
    settle()
  }
  const form = ofDay() ?? board.find(`client:${ref}`, 'check-in')
  if (!form) return `${ref} has no message with a form`
  await stage.fill(ref, form.row, form.index, filledOf(values))
  return null
}

function filledOf({ sessions, reach, pain, side, signs }: DayValues): Filled {
  return {
    ...(sessions === undefined ? {} : { sessions: String(sessions) }),
    ...(reach === undefined ? {} : { reach }),
    ...(pain === undefined ? {} : { pain: String(pain) }),
    ...(side === undefined ? {} : { side }),
    ...(signs === undefined ? {} : { signs: signs.length > 0 ? signs : ['none'] }),
  }
}

/** The form of somebody who never touches one: the same, written in a line. */
async function sayForm(client: ScriptClient, values: DayValues, { stage, said }: ActParts): Promise<null> {
  const { words, signs: names } = textsFor(client.language)
  const { sessions = null, reach = null, pain = null, side, signs } = values
  const isSpanish = client.language === 'es'
  const leg = side && (isSpanish ? `pierna ${words.side(side)}` : `${side} leg`)
  const told =
    signs?.length === 0
      ? [isSpanish ? 'sin señales' : 'no signs']
      : (signs ?? []).map((sign) => names[sign].short)
  const line = [words.values({ sessions, reach, pain }), leg ?? '', ...told]
  const id = await stage.say(client.ref, line.filter((part) => part !== '').join(', '))
  said.set(client.ref, [...(said.get(client.ref) ?? []), id])
  return null
}
