import { type Document, isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from 'yaml'

export type Path = readonly PropertyKey[]

/** What is wrong with a scenario file, and where; the text also says what is allowed. */
export interface Problem {
  readonly line: number
  readonly text: string
}

/** A YAML text as plain values, with the way back from a value to its line. */
export interface Lined {
  readonly value: unknown
  /** Line of what stands at a path, or of the nearest above it; with `key`, of that key there. */
  lineOf(path: Path, key?: string): number
  /** What keeps the text from being YAML. */
  readonly problems: readonly Problem[]
}

/** One slip makes the lines after it look wrong too. */
const FAULTS_MOST = 3

export function readYaml(text: string): Lined {
  const counter = new LineCounter()
  const doc = parseDocument(text, { lineCounter: counter, prettyErrors: false })
  const lineAt = (offset: number | undefined): number =>
    offset === undefined ? 1 : counter.linePos(offset).line
  const problems: Problem[] = doc.errors.slice(0, FAULTS_MOST).map(({ message, pos }) => ({
    line: lineAt(pos[0]),
    text: `${message.replace(/\s+/g, ' ')}; allowed: YAML 1.2`,
  }))
  const value = problems.length > 0 ? null : plainOf(doc, problems)
  return {
    value,
    problems,
    lineOf(path, key) {
      let at = doc.contents as Node | null
      let line = lineAt(at?.range?.[0])
      for (const step of key === undefined ? path : [...path, key]) {
        const found = child(at, step)
        if (!found) return line
        line = lineAt(found.start)
        at = found.node
      }
      return line
    },
  }
}

/** An alias without its anchor, or one that stands for far too much, shows only now. */
function plainOf(doc: Document, problems: Problem[]): unknown {
  try {
    return doc.toJS()
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error
    problems.push({ line: 1, text: `${error.message}; allowed: an alias after its anchor` })
    return null
  }
}

/** What stands under a key or at a place of a list, and where it begins: an entry of a map with its key. */
function child(
  node: Node | null,
  step: PropertyKey,
): { node: Node | null; start: number | undefined } | null {
  if (isMap(node)) {
    const pair = (node.items as Pair<Node, Node | null>[]).find(
      ({ key }) => isScalar(key) && String(key.value) === String(step),
    )
    return pair ? { node: pair.value, start: pair.key.range?.[0] } : null
  }
  if (isSeq(node)) {
    const item = (node.items as Node[])[Number(step)]
    return item ? { node: item, start: item.range?.[0] } : null
  }
  return null
}
