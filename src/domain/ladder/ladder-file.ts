import {
  type Alias,
  type Document,
  isNode,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml'
import { z } from 'zod'
import { DRILL_SIDES, type Drill, type DrillProse, drillId, type Ladder, NEEDS } from './ladders.ts'
import { LADDER_IDS } from './plan.ts'

/** A fault in a ladder file: the line (from 1), where in the file, and what to do. */
export interface LadderFileError {
  readonly line: number
  readonly where: string
  readonly message: string
}

/** A practice's own ladder: its data, its name, and the words of its drills by drill id. */
export type LadderFile =
  | {
      readonly ok: true
      readonly ladder: Ladder
      readonly name: string
      readonly prose: Readonly<Record<string, DrillProse>>
    }
  | { readonly ok: false; readonly errors: readonly LadderFileError[] }

// A day's drills are read on a telephone, in one chat message where they fit.
const WORDS_AT_MOST = 400
const FILE_AT_MOST = 64_000
// No drill may promise or name a condition.
const FORBIDDEN = /\b(safe(ly)?|all clear|diagnos\w*|cures?|guaranteed?)\b/i

const whole = (low: number, high: number) => {
  const message = `a whole number from ${low} to ${high} is needed`
  return z.int(message).min(low, message).max(high, message)
}
const words = (most: number) =>
  z
    .string('words are needed')
    .trim()
    .min(1, 'words are needed')
    .max(most, `at most ${most} characters`)
    .refine((text) => !FORBIDDEN.test(text), 'say what to do; promise nothing and name no diagnosis')

/** An object whose unknown keys are answered with the known ones. */
const keyed = <Shape extends z.ZodRawShape>(shape: Shape) => {
  const known = Object.keys(shape).join(', ')
  return z.strictObject(shape, {
    error: ({ code }) =>
      code === 'unrecognized_keys' ? `not known here; known are ${known}` : `needs ${known}`,
  })
}

const Dose = keyed({
  reps: whole(1, 50),
  hold: whole(0, 600).default(0),
  ease: whole(0, 600).default(0),
  sets: whole(1, 10).default(1),
  times: whole(1, 6),
})

const Rung = keyed({
  name: words(60),
  how: words(300),
  dose: Dose,
  kit: z.array(words(30)).max(6, 'at most 6 things').default([]),
  needs: z.array(z.enum(NEEDS, `one of ${NEEDS.join(', ')}`)).default([]),
  side: z.enum(DRILL_SIDES, `one of ${DRILL_SIDES.join(', ')}`).default('none'),
  'load-percent': whole(1, 100).nullable().default(null),
  'least-days': whole(1, 60).nullable().default(null),
  cautions: words(150),
  'stop-if': words(150),
})
  .refine(({ kit, needs }) => !kit.some(isBand) || needs.includes('anchor-check'), {
    path: ['needs'],
    message: 'a drill with a band needs anchor-check',
  })
  .refine(
    (rung) =>
      [rung.name, ...rung.kit, rung.how, rung.cautions, rung['stop-if']].join(' ').length <= WORDS_AT_MOST,
    {
      message: `name, kit, how, cautions and stop-if together hold at most ${WORDS_AT_MOST} characters`,
    },
  )

const File = keyed({
  id: z
    .string('an id is needed')
    .regex(/^[a-z][a-z0-9-]{1,29}$/, 'small letters, digits and hyphens, 2 to 30, a letter first')
    .refine(
      (id) => !(LADDER_IDS as readonly string[]).includes(id),
      'this id is one of the eight of the house; take another',
    ),
  // 1 to 8 are the ladders of the house
  number: whole(9, 99),
  name: words(40),
  rungs: z.array(Rung, 'a list of rungs is needed').min(1, 'at least one rung').max(12, 'at most 12 rungs'),
})
type RungInFile = z.infer<typeof Rung>

const isBand = (kit: string): boolean => /\bbands?\b/i.test(kit)

/**
 * Reads a practice's own ladder from YAML (or JSON, which YAML takes in). Never throws: what cannot be used comes
 * back as errors with their lines, all of them at once.
 */
export function readLadderFile(text: string): LadderFile {
  if (text.length > FILE_AT_MOST)
    return refused(
      1,
      'file',
      `the file holds more than ${FILE_AT_MOST} characters; one ladder a file is enough`,
    )
  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false })
  if (document.errors.length > 0)
    return { ok: false, errors: document.errors.map((error) => syntaxError(error, lines)) }
  const alias = firstAlias(document)
  if (alias) return refused(lineAt(alias, lines), 'file', 'write the value out: no references (& and *) here')
  const read = File.safeParse(document.toJS())
  if (read.success) return accepted(read.data)
  const errors = read.error.issues.flatMap((issue) => issueErrors(issue, document, lines))
  return { ok: false, errors: errors.sort((a, b) => a.line - b.line) }
}

function accepted({ id, number, name, rungs }: z.infer<typeof File>): LadderFile {
  const drills = rungs.map((rung, index) => drillOf(drillId(id, index + 1), rung))
  const prose = rungs.map((rung, index) => [drillId(id, index + 1), proseOf(rung)] as const)
  return { ok: true, ladder: { id, number, rungs: drills }, name, prose: Object.fromEntries(prose) }
}

const drillOf = (id: string, rung: RungInFile): Drill => ({
  id,
  dose: {
    reps: rung.dose.reps,
    holdSeconds: rung.dose.hold,
    easeSeconds: rung.dose.ease,
    sets: rung.dose.sets,
    timesADay: rung.dose.times,
  },
  kit: rung.kit,
  needs: rung.needs,
  side: rung.side,
  loadPercent: rung['load-percent'],
  leastDays: rung['least-days'],
})

const proseOf = (rung: RungInFile): DrillProse => ({
  name: rung.name,
  how: rung.how,
  cautions: rung.cautions,
  stopIf: rung['stop-if'],
})

const refused = (line: number, where: string, message: string): LadderFile => ({
  ok: false,
  errors: [{ line, where, message }],
})

const syntaxError = (error: YAMLError, lines: LineCounter): LadderFileError => ({
  line: lines.linePos(error.pos[0]).line || 1,
  where: 'file',
  message:
    error.code === 'MULTIPLE_DOCS'
      ? 'one ladder a file: no "---" in it'
      : `cannot be read as YAML: ${error.message}`,
})

/** References are refused: a few lines of them can stand for gigabytes, and no ladder needs one. */
function firstAlias(document: Document): Alias | undefined {
  let first: Alias | undefined
  visit(document, {
    Alias(_, node) {
      first = node
      return visit.BREAK
    },
  })
  return first
}

type Path = readonly PropertyKey[]

function issueErrors(issue: z.core.$ZodIssue, document: Document, lines: LineCounter): LadderFileError[] {
  const keys = issue.code === 'unrecognized_keys' ? issue.keys : []
  if (keys.length > 0) return keys.map((key) => errorAt([...issue.path, key], issue.message, document, lines))
  const missing = issue.path.length > 0 && !document.hasIn(issue.path)
  return [errorAt(issue.path, missing ? `missing: ${issue.message}` : issue.message, document, lines)]
}

function errorAt(path: Path, message: string, document: Document, lines: LineCounter): LadderFileError {
  return { line: lineOf(path, document, lines), where: path.map(wherePart).join('.') || 'file', message }
}

// People count rungs from 1.
const wherePart = (part: PropertyKey): string => (typeof part === 'number' ? String(part + 1) : String(part))

/** The line of the node at a path, or of the nearest one around it that is there. */
function lineOf(path: Path, document: Document, lines: LineCounter): number {
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true)
    if (isNode(node)) return lineAt(node, lines)
  }
  return 1
}

const lineAt = (node: Node, lines: LineCounter): number =>
  node.range ? lines.linePos(node.range[0]).line : 1
