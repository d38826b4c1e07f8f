import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APISelectMenuOption,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from 'discord.js'
import type { Button, Message, Option, Pick } from '../engine/message.ts'
import { customId } from './custom-id.ts'
import { cut, cutInTwo } from './cut.ts'

export type Row = APIActionRowComponent<APIButtonComponentWithCustomId | APIStringSelectComponent>

// Limits of the platform (its documentation, "Component Reference").
const BUTTONS_A_ROW = 5
const OPTIONS_A_LIST = 25
const LABEL_MOST = 80
const OPTION_MOST = 100
const PLACEHOLDER_MOST = 150

const STYLES = { main: ButtonStyle.Primary, danger: ButtonStyle.Danger } as const

/** The rows under a message: its list of choices first, then its buttons, five a row. */
export function rowsOf(outbox: string, { buttons, pick }: Choices): Row[] {
  const lists = pick ? listsOf(pick).map((part, n) => list(outbox, pick, part, n)) : []
  const drawn = buttons.map((button, index) => buttonOf(button, customId({ outbox, part: 'button', index })))
  return [...lists.map((one) => rowOf([one])), ...chunks(drawn, BUTTONS_A_ROW).map(rowOf)]
}
type Choices = { readonly [K in 'buttons' | 'pick']: Message[K] }

/** The options of each list that a choice is shown as. */
export const listsOf = (pick: Pick): Option[][] => chunks(pick.options, OPTIONS_A_LIST)

/** The options behind the values chosen; null where they are not a choice that was offered. */
export function chosenOf(
  offered: readonly Option[],
  values: readonly string[],
  most: number,
): Option[] | null {
  const chosen = offered.filter(({ value }) => values.includes(value))
  const fits = chosen.length === values.length && chosen.length <= most
  return fits ? chosen : null
}

const rowOf = (components: Row['components']): Row => ({ type: ComponentType.ActionRow, components })

function buttonOf(button: Button, custom_id: string): APIButtonComponentWithCustomId {
  const style = button.style ? STYLES[button.style] : ButtonStyle.Secondary
  return { type: ComponentType.Button, style, label: cut(button.label, LABEL_MOST), custom_id }
}

function list(
  outbox: string,
  pick: Pick,
  options: readonly Option[],
  index: number,
): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: customId({ outbox, part: 'pick', index }),
    placeholder: cut(pick.label, PLACEHOLDER_MOST),
    options: optionsOf(options),
    min_values: 1,
    max_values: Math.min(pick.most, options.length),
  }
}

/** Options of a list; what a label cannot hold goes on in the line below it. */
export function optionsOf(options: readonly Option[]): APISelectMenuOption[] {
  return options.map(({ value, label }) => {
    const [head, rest] = cutInTwo(label, OPTION_MOST, OPTION_MOST)
    return { value, label: head, ...(rest ? { description: rest } : {}) }
  })
}

export function chunks<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, n) =>
    items.slice(n * size, (n + 1) * size),
  )
}

/** The rows that are left when those components are taken out. */
export function rowsWithout(rows: readonly Row[], out: (customId: string) => boolean): Row[] {
  return rows
    .map((row) => ({ ...row, components: row.components.filter((one) => !out(one.custom_id)) }))
    .filter((row) => row.components.length > 0)
}
