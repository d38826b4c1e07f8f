/** What a component stands for: its message in the outbox, and its place in it. Nothing of anybody's health. */
export interface ComponentRef {
  readonly outbox: string
  readonly part: 'button' | 'pick' | 'form'
  /** Place of the button among the message's buttons; 0 for a choice from a list. */
  readonly index: number
}

const LETTER = { button: '', pick: 'p', form: 'f' } as const
const SHAPE = /^([\w-]{1,25})\.(p|f?)(\d{0,2})$/

/** `<outbox id>.2` for a button, `.p` (`.p1`, ...) for a list, `.f2` for the form that the button opens. */
export function customId({ outbox, part, index }: ComponentRef): string {
  return `${outbox}.${LETTER[part]}${part === 'pick' && index === 0 ? '' : index}`
}

/** Reads a custom id; null where it is none of ours. */
export function readCustomId(id: string): ComponentRef | null {
  const [, outbox, letter, digits] = SHAPE.exec(id) ?? []
  if (outbox === undefined || (letter !== 'p' && digits === '')) return null
  const part = letter === 'p' ? 'pick' : letter === 'f' ? 'form' : 'button'
  return { outbox, part, index: Number(digits) }
}
