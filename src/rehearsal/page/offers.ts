import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { parse } from 'yaml'
import { commands } from '../../../commands/index.ts'
import { packageRoot } from '../../store/root.ts'
import { textsFor } from '../../text/index.ts'
import { loadScenario } from '../scenario/index.ts'
import type { Doc } from './recording.ts'
import type { Opening } from './session.ts'
import type { CommandOffer } from './wire.ts'

const FOLDER = join(packageRoot(), 'scenarios')

/** The commands as the platform offers them, with its own descriptions. */
export function commandOffers(): CommandOffer[] {
  const { describe, option } = textsFor('en').commands
  return commands.map(({ name, who, options }) => ({
    name,
    about: describe[name] ?? '',
    by: who === 'client' ? 'client' : 'coach',
    options: options.map((spec) => ({
      name: spec.name,
      about: option[spec.name] ?? '',
      kind: spec.kind,
      required: spec.required,
      choices: spec.choices ?? [],
      least: spec.least ?? null,
      most: spec.most ?? null,
    })),
  }))
}

/** The scenarios that come with the program. */
export function scenarioOffers(): { name: string; title: string }[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const title = /^title:\s*(.+)$/m.exec(readFileSync(join(FOLDER, name), 'utf8'))?.[1]
      return { name: basename(name, '.yaml'), title: title ?? name }
    })
}

/** A scenario of the program by its name; null where there is none. */
export function scenarioOf(name: string): Opening | null {
  if (!scenarioOffers().some((one) => one.name === name)) return null
  const file = `${name}.yaml`
  return openingOf(file, readFileSync(join(FOLDER, file), 'utf8'))
}

/** @throws ScenarioProblems with all that is wrong in the file */
export function openingOf(file: string, text: string): Opening {
  const script = loadScenario(file, text)
  return { script, doc: parse(text) as Doc }
}
