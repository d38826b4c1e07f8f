import { exportCsv } from '../../domain/export/csv.ts'
import { exportFhir } from '../../domain/export/fhir/bundle.ts'
import { exportJson } from '../../domain/export/json.ts'
import type { Texts } from '../../text/index.ts'
import { plain } from '../answer.ts'
import type { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import type { Answer, Written } from '../message.ts'
import type { ClientFile, Kept, Tx } from '../ports.ts'
import { type ExportWish, exportFacts } from './export-facts.ts'

export const EXPORT_FORMATS = ['json', 'csv', 'fhir'] as const
export type ExportFormat = (typeof EXPORT_FORMATS)[number]

export interface ExportParts {
  /** With every row since the beginning. */
  readonly whole: ClientFile
  readonly kept: Kept
  readonly texts: Texts
  readonly now: Date
}

/** Everything kept of a client as the text of a file. */
export function exportText(format: ExportFormat, parts: ExportParts, wish: ExportWish): string {
  const { whole, kept, texts, now } = parts
  if (format === 'csv') return exportCsv(historyOf(whole), wish.words ? wordsByDay(kept) : new Map())
  const facts = exportFacts(whole, kept, wish, now)
  return format === 'json' ? exportJson(facts) : exportFhir(facts, texts.ownData.fhir)
}

/** What was written on each day, the versions in order. */
function wordsByDay({ version }: Kept): Map<string, string> {
  const words = new Map<string, string>()
  for (const { day, via, words: said } of version)
    if (day !== null && said !== '' && (via === 'words' || via === 'edit' || via === 'import'))
      words.set(day, [words.get(day), said].filter(Boolean).join(' / '))
  return words
}

/** The client's own file, sent to them in private. The coach's notes are left out, and the message says so. */
export async function sendOwnData(tx: Tx, draft: Draft, format: ExportFormat): Promise<Answer> {
  const { ownData } = draft.texts
  const files = [await fileOf(tx, draft, format, draft.texts, { words: true, notes: false })]
  draft.toClient({ kind: 'report', text: ownData.sent[format], files })
  return plain(ownData.onItsWay, draft.client.ref)
}

/** A client's file for the coach's channel, with a word of what leaving that place means. */
export async function postExport(tx: Tx, draft: Draft, format: ExportFormat): Promise<Answer> {
  const { ownDataForCoach, commands } = draft.forCoach
  const { ref } = draft.client
  const { practice } = draft.file
  if (!practice.coachChannel) return plain(commands.notSetUpChannel, ref)
  // where the client's words stay out of the channel, they stay out of a file in it
  const wish = { words: practice.quote, notes: false }
  const files = [await fileOf(tx, draft, format, draft.forCoach, wish)]
  draft.toCoach({ kind: 'report', text: ownDataForCoach.posted(ref, practice.quote), files })
  return plain(ownDataForCoach.done, ref)
}

async function fileOf(
  tx: Tx,
  draft: Draft,
  format: ExportFormat,
  texts: Texts,
  wish: ExportWish,
): Promise<Written> {
  const { id, ref } = draft.client
  const whole = (await tx.wholeClient(id)) ?? draft.file
  const parts = { whole, kept: await tx.kept(id), texts, now: draft.now }
  return { name: exportName(ref, draft.today, format), text: exportText(format, parts, wish) }
}

/** "heron-2026-03-04.csv"; a FHIR Bundle is JSON too. */
const exportName = (ref: string, day: string, format: ExportFormat): string =>
  `${ref}-${day}${format === 'fhir' ? '.fhir.json' : `.${format}`}`
