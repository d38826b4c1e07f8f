import {
  type Alias,
  type Document,
  isMap,
  isNode,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml'
import type { z } from 'zod'
import { type LadderInFile, OneLadder, type RungInFile, SeveralLadders } from './ladder-schema.ts'
import { type Drill, type DrillProse, drillId, type Ladder } from './ladders.ts'

/** A fault in a ladder file: the line (from 1), where in the file, and what to do. */
export interface LadderFileError {
  readonly line: number
  readonly where: string
  readonly message: string
}

/** A practice's own ladder: its data, its name, and the words of its drills by drill id. */
export interface OwnLadder {
  readonly ladder: Ladder
  readonly name: string
  readonly prose: Readonly<Record<string, DrillProse>>
}

export type LadderFile =
  | { readonly ok: true; readonly ladders: readonly OwnLadder[] }
  | { readonly ok: false; readonly errors: readonly LadderFileError[] }

const FILE_AT_MOST = 128_000

/**
 * Reads a practice's own ladders from YAML (or JSON, which YAML takes in): one as it stands, or several under
 * `ladders:`. Never throws: what cannot be used comes back as errors with their lines, all of them at once.
 */
export function readLadderFile(text: string): LadderFile {
  if (text.length > FILE_AT_MOST)
    return refused(1, 'file', `the file holds more than ${FILE_AT_MOST} characters; shorten it`)
  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false })
  if (document.errors.length > 0)
    return { ok: false, errors: document.errors.map((error) => syntaxError(error, lines)) }
  const alias = firstAlias(document)
  if (alias) return refused(lineAt(alias, lines), 'file', 'write the value out: no references (& and *) here')
  const several = isMap(document.contents) && document.has('ladders')
  const read = (several ? SeveralLadders : OneLadder).safeParse(document.toJS())
  if (read.success) return { ok: true, ladders: read.data.map(accepted) }
  const errors = read.error.issues.flatMap((issue) => issueErrors(issue, document, lines))
  return { ok: false, errors: errors.sort((a, b) => a.line - b.line) }
}

function accepted({ id, number, name, rungs }: LadderInFile): OwnLadder {
  const drills = rungs.map((rung, index) => drillOf(drillId(id, index + 1), rung))
  const prose = rungs.map((rung, index) => [drillId(id, index + 1), proseOf(rung)] as const)
  return { ladder: { id, number, rungs: drills }, name, prose: Object.fromEntries(prose) }
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
      ? 'one document a file: no "---" in it; several ladders stand under "ladders:"'
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
