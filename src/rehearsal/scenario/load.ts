import { readExpectations } from './expectations.ts'
import { type ClientFileEntry, clientSchema, type ScenarioFile, scenarioSchema } from './format.ts'
import { readYaml } from './lines.ts'
import { Findings, ScenarioProblems } from './problem.ts'
import type { Script, ScriptClient, Step } from './script.ts'
import { clientSteps, practiceSteps } from './steps.ts'

/**
 * Reads and checks a scenario.
 * @param file its name, for messages
 * @throws ScenarioProblems with all that is wrong, before anything is played
 */
export function loadScenario(file: string, text: string): Script {
  const lined = readYaml(text)
  if (lined.problems.length > 0) throw new ScenarioProblems(file, lined.problems)
  const findings = new Findings(lined)
  const read = readFile(lined.value, findings)
  const steps = practiceSteps({ file: read, findings })
  const theirs = read.clients.flatMap((client, n) => clientSteps({ file: read, findings }, client, n))
  const expectations = readExpectations(read, findings)
  if (findings.problems.length > 0) throw new ScenarioProblems(file, findings.problems)
  const { practice } = read
  return {
    file,
    title: read.title,
    practice: { ...practice, region: practice.region ?? null },
    start: read.start,
    days: read.days,
    clients: read.clients.map((client) => filledIn(client, read)),
    steps: inOrder([...steps, ...theirs]),
    expectations,
  }
}

/** Reads as much as can be read, so that all problems are named at once: where a part is wrong, as if it were bare. */
function readFile(value: unknown, findings: Findings): ScenarioFile {
  const header = findings.read(scenarioSchema, value, [])
  const raw = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>
  const given: unknown[] = Array.isArray(raw.clients) ? raw.clients : []
  const clients = given.map(
    (client, n) => findings.read(clientSchema, client, ['clients', n]) ?? bare(client),
  )
  checkRefs(clients, findings)
  return { ...(header ?? { ...BARE, ...scriptsOf(raw) }), clients }
}

const BARE = scenarioSchema.parse({
  practice: { zone: 'UTC' },
  start: '2026-01-01',
  days: 1000,
  clients: [{}],
})

/** Of a file whose head cannot be read, what happens and what is expected. */
function scriptsOf(raw: Record<string, unknown>) {
  const { coach, faults, expect } = scenarioSchema.shape
  return {
    coach: coach.safeParse(raw.coach).data ?? {},
    faults: faults.safeParse(raw.faults).data ?? {},
    expect: expect.safeParse(raw.expect).data ?? [],
  }
}

/** A client that cannot be read, with what of it is needed to look at the rest. */
function bare(client: unknown): ClientFileEntry {
  const raw = (typeof client === 'object' && client !== null ? client : {}) as Record<string, unknown>
  const isScript = typeof raw.days === 'object' && raw.days !== null && !Array.isArray(raw.days)
  return clientSchema.parse({
    ref: clientSchema.shape.ref.safeParse(raw.ref).data ?? '-',
    days: isScript ? raw.days : {},
  })
}

function checkRefs(clients: readonly ClientFileEntry[], findings: Findings): void {
  for (const [n, { ref }] of clients.entries())
    if (clients.findIndex((other) => other.ref === ref) < n)
      findings.add(['clients', n], `the alias “${ref}” is there twice; allowed: one client each`, 'ref')
}

function filledIn({ days: _days, ...client }: ClientFileEntry, { practice }: ScenarioFile): ScriptClient {
  return {
    ...client,
    zone: client.zone ?? practice.zone,
    region: client.region ?? practice.region ?? null,
    reminder: client.reminder ?? null,
    side: client.side ?? null,
  }
}

const RANK = { world: 0, client: 1, coach: 2 } as const

/** By time; at one instant faults, clients, coach, each in the order of the file. */
const inOrder = (steps: readonly Step[]): Step[] =>
  [...steps].sort((a, b) => a.at.getTime() - b.at.getTime() || RANK[a.act.who] - RANK[b.act.who])
