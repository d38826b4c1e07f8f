import type { ChatCommand, OptionSpec } from './command.ts'
import type { Command } from './event.ts'

// What the platform takes of a text at most (its documentation, "Application Command Option Structure").
const TEXT_MOST = 6_000

/** Name of an option that is not as the command declares it, which the platform would not have sent; or null. */
export const oddOption = (command: ChatCommand, { options }: Pick<Command, 'options'>): string | null =>
  command.options.find((option) => !fits(option, options[option.name]))?.name ?? null

function fits(
  { name, kind, choices, least, most }: OptionSpec,
  value: string | number | boolean | undefined,
): boolean {
  if (value === undefined) return true
  if (kind === 'yes-no') return typeof value === 'boolean'
  if (kind === 'number') return Number.isSafeInteger(value) && inRange(Number(value), least, most)
  if (typeof value !== 'string' || value.length > TEXT_MOST) return false
  // ladders differ by practice, and the command itself names those that there are
  return name === 'ladder' || (choices?.includes(value) ?? true)
}

const inRange = (value: number, least = value, most = value): boolean => value >= least && value <= most
