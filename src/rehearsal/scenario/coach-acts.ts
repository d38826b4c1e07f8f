import type { Item } from './items.ts'
import type { Findings } from './problem.ts'
import type { CoachPress, SlashCommand, Use } from './script.ts'
import { readSlash } from './slash.ts'

/** The command behind a coach's action. */
const COMMAND_OF: Readonly<Record<string, string>> = {
  pause: 'pause-client',
  resume: 'resume-client',
  erase: 'erase-client',
  export: 'export-client',
}

/** What whoever wrote the scenario has weighed already. */
const ADDED: Readonly<Record<string, Readonly<Record<string, boolean>>>> = {
  erase: { sure: true },
  decide: { anyway: true },
}

/** An action of the coach as the command that a coach types for it; null with a finding where it cannot be. */
export function coachCommand(
  item: Item,
  refs: readonly string[],
  findings: Findings,
): SlashCommand | CoachPress | Use | null {
  if (item.name === 'use') return item.data.use as Use
  if (item.name === 'command') {
    const read = readSlash(String(item.data.command))
    if (typeof read !== 'string') return read
    findings.add(item.path, read, 'command')
    return null
  }
  const given = item.data[item.name] as Record<string, string | undefined> & { client: string }
  if (!refs.includes(given.client)) {
    findings.add(
      [...item.path, item.name],
      `there is no client “${given.client}”; allowed: ${refs.join(', ')}`,
      'client',
    )
    return null
  }
  if (item.name === 'press') {
    const line = findings.lined.lineOf(item.path, item.name)
    return { ref: given.client, button: given.button ?? '', line }
  }
  const name = COMMAND_OF[item.name] ?? item.name
  const options = Object.fromEntries(
    Object.entries(given).filter((pair): pair is [string, string] => pair[1] !== undefined),
  )
  return { name, options: { ...options, ...ADDED[item.name] } }
}
