import type { AskedRow, OutboxRow } from '../../engine/rows.ts'
import type { ScriptClient } from '../scenario/index.ts'

/** How a client answers a question of the bot: a button, a choice from the list, or words. */
export type Reply =
  | { readonly by: 'button'; readonly index: number }
  | { readonly by: 'list'; readonly values: readonly string[] }
  | { readonly by: 'words'; readonly text: string }

interface Option {
  readonly name: string
  readonly label: string
  readonly act: { readonly do: string; readonly [key: string]: unknown }
}

/** The scripted answer to what a message asks, in the client's own way; null where the script has none. */
export function replyTo(client: ScriptClient, row: OutboxRow, asked: AskedRow | null): Reply | null {
  const { body } = row
  const inWords = client.hands === 'words'
  if (body.asks === 'signs' && client.answers.signs)
    return signsReply(client, row, asked, client.answers.signs)
  const options: readonly Option[] = inWords ? (asked?.options ?? []) : body.buttons
  const index = namesFor(client, String(body.asks))
    .map((name) => options.findIndex((option) => option.name === name))
    .find((at) => at >= 0)
  if (index === undefined) return null
  return inWords ? { by: 'words', text: options[index]!.label } : { by: 'button', index }
}

/** Names of the button that the script wants pressed; the side may be asked in two ways. */
function namesFor({ answers, side }: ScriptClient, asks: string): string[] {
  const value = answers[asks as keyof ScriptClient['answers']]
  if (value === undefined) return []
  if (typeof value === 'boolean') return [`${asks}-${value ? 'yes' : 'no'}`]
  if (asks !== 'side') return [`${asks}-${value}`]
  const known = side ?? 'left'
  const other = known === 'left' ? 'right' : 'left'
  const meant = value === 'same' ? known : value === 'other' ? other : String(value)
  const relative = meant === 'both' ? 'both' : meant === known ? 'same' : 'other'
  return [`side-${meant}`, `side-${relative}`]
}

/** Of the sign that was hinted at yes or no; else none, or one of these and then which. */
function signsReply(
  { hands }: ScriptClient,
  { body }: OutboxRow,
  asked: AskedRow | null,
  signs: readonly string[],
): Reply | null {
  const options: readonly Option[] = hands === 'words' ? (asked?.options ?? []) : body.buttons
  if (body.pick) {
    const values = body.pick.options.map((option) => option.value).filter((value) => signs.includes(value))
    return values.length > 0 ? { by: 'list', values } : null
  }
  const hinted = options.find((option) => option.act.do === 'sign')
  const listed = options.find((option) => signs.includes(option.name))
  const name = hinted
    ? signs.includes(String(hinted.act.sign))
      ? 'yes'
      : 'no'
    : (listed?.name ?? (signs.length > 0 ? 'one-of-these' : 'none-of-these'))
  const index = options.findIndex((option) => option.name === name)
  if (hands !== 'words') return index < 0 ? null : { by: 'button', index }
  return { by: 'words', text: options[index]?.label ?? (signs.length > 0 ? 'one of these' : 'no signs') }
}
