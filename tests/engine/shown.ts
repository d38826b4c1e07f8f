import type { Actor } from '../../src/engine/event.ts'
import type { Answer } from '../../src/engine/message.ts'
import { COACH, type Practice } from './practice.ts'

let id = 0

/** Presses a button of an answer that was shown in place, or chooses from its list. */
export async function pressShown(
  { bot }: Practice,
  answer: Answer | null,
  name: string,
  { values = [], by = COACH, event }: { values?: string[]; by?: Actor; event?: string } = {},
): Promise<Answer | null> {
  const { buttons, pick, outbox } = answer?.choices ?? { buttons: [], pick: null, outbox: undefined }
  const found = buttons.find((button) => button.name === name) ?? (pick?.name === name ? pick : null)
  if (!found || !outbox) throw new Error(`nothing to press called “${name}”: ${answer?.text}`)
  const { act, label } = found
  const handled = await bot.handle({
    kind: 'choice',
    id: event ?? `shown-${++id}`,
    actor: by,
    outbox,
    act,
    label,
    values,
  })
  return handled.answer
}

export const namesOf = (answer: Answer | null): string[] =>
  (answer?.choices?.buttons ?? []).map((button) => button.name)
