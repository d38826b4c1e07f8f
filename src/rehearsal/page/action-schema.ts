import { z } from 'zod'
import type { Action } from './wire.ts'

const id = z.string().min(1).max(100)
// As many characters as somebody with the dearer subscription may write on the platform.
const words = z.string().max(4000)
const who = z.string().min(1).max(30)
const one = <T extends z.ZodRawShape>(shape: T) => z.strictObject(shape)

const ACTION = z.union([
  one({ do: z.literal('say'), as: who, text: words.min(1) }),
  one({ do: z.literal('edit'), as: who, card: id, text: words.min(1) }),
  one({ do: z.literal('take-back'), as: who, card: id }),
  one({ do: z.literal('press'), as: who, card: id, control: id }),
  one({ do: z.literal('choose'), as: who, card: id, control: id, values: z.array(words).max(25) }),
  one({
    do: z.literal('submit'),
    as: who,
    form: id,
    fields: z.record(id, z.union([words, z.array(words).max(25)])),
  }),
  one({ do: z.literal('command'), as: who, line: words }),
  one({ do: z.literal('time'), to: z.enum(['event', 'day', 'week', 'clocks', 'end']) }),
  one({ do: z.literal('time'), to: z.literal('date'), day: z.number().int() }),
  one({ do: z.literal('play'), speed: z.number() }),
  one({ do: z.literal('pause') }),
  one({ do: z.literal('start'), scenario: z.string().max(100).nullable() }),
  one({
    do: z.literal('open'),
    name: z.string().max(200),
    yaml: z.string(),
    at: z.enum(['beginning', 'end']),
  }),
  one({ do: z.literal('add-client'), ref: z.string().max(100) }),
  one({ do: z.literal('break'), what: z.enum(['chat', 'database']), on: z.boolean() }),
  one({ do: z.literal('break'), what: z.literal('kill') }),
  one({ do: z.literal('break'), what: z.literal('clock'), hours: z.number() }),
])

/** What the page asks for; null where it is nothing that it can. */
export function actionOf(body: string): Action | null {
  try {
    return ACTION.safeParse(JSON.parse(body)).data ?? null
  } catch {
    return null
  }
}
