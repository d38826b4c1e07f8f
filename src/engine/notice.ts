import { type Address, BARE, type Message } from './message.ts'
import type { Posting } from './ports.ts'
import type { PracticeRow } from './rows.ts'

/** A message about the practice itself. */
export const notice = (key: string, address: Address, text: string): Message => ({
  ...BARE,
  key,
  address,
  kind: 'notice',
  text,
})

interface Notice {
  readonly key: string
  readonly address: Address
  readonly text: string
  readonly priority: Posting['priority']
  readonly at: Date
}

/** A word to the practice that hangs on no client's record. */
export const toPractice = (practice: PracticeRow, { key, address, text, priority, at }: Notice): Posting => ({
  message: notice(key, address, text),
  clientId: null,
  practiceId: practice.id,
  priority,
  notBefore: at,
  expires: null,
})
