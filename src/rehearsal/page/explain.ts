import type { Care } from '../../domain/care.ts'
import { dayAt } from '../../domain/local-time.ts'
import { reachAt } from '../../domain/reach.ts'
import { assess } from '../../domain/rules/assess.ts'
import type { Flag } from '../../domain/rules/assessment.ts'
import { careOf, isSignId } from '../../domain/signs/catalogue.ts'
import { historyOf } from '../../engine/history.ts'
import type { VersionRow } from '../../engine/rows.ts'
import { textsFor } from '../../text/index.ts'
import type { Session } from './session.ts'
import type { Card, Explanation, ReadingShown, Reason } from './wire.ts'

const { rules, signs } = textsFor('en')
/** Slots of a reading, by their names in it. */
const SLOTS = ['day', 'sessions', 'reach', 'pain', 'side', 'comfort', 'settled', 'barrier', 'answer'] as const

/** Why a card is as it is, from what the engine holds; null where there is no such card. */
export async function explain(session: Session, id: string): Promise<Explanation | null> {
  const card = session.cards.all.get(id)
  if (!card) return null
  const nothing: Explanation = { card: id, reasons: [], proposal: null, reading: null }
  const { stage } = session
  if (card.about === null || stage.isDatabaseAway) return nothing
  return stage.store.store.transaction(async (tx) => {
    const found = await tx.clientByRef(stage.cast.guild, card.about!)
    const file = found && (await tx.wholeClient(found.client.id))
    if (!file) return nothing
    const { versions } = await tx.told(file.client.id)
    const version = versionOf(card, versions)
    const assessment = assess(historyOf(file), dayAt(new Date(card.at), file.client.zone))
    return {
      card: id,
      reasons: assessment.flags.map(reasonOf),
      proposal: assessment.proposal === 'none' ? null : assessment.proposal,
      reading: version ? readingOf(version) : null,
    }
  })
}

function reasonOf(flag: Flag): Reason {
  const figures = Object.entries(flag.figures).map(([name, value]) => ({
    name: name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    value: (Array.isArray(value) ? value : [value]).map((one) => worded(flag, name, one)).join(', '),
  }))
  return {
    rule: flag.rule,
    level: flag.level,
    day: flag.day,
    text: rules.why(flag),
    figures,
    source: flag.source,
  }
}

/** The latest version whose words came with the card: written at its instant, or just before a receipt. */
function versionOf(card: Card, versions: readonly VersionRow[]): VersionRow | null {
  const at = Date.parse(card.edited ?? card.at)
  const isReply = card.from === 'client' || card.kind === 'receipt' || card.kind === 'urgent'
  if (!isReply) return null
  const same = versions.filter((one) => Math.abs(one.at.getTime() - at) < 60_000)
  return same.findLast((one) => card.kind !== 'words' || one.words === card.text) ?? same.at(-1) ?? null
}

function readingOf({ day, words, reading }: VersionRow): ReadingShown {
  const read = reading as Record<string, unknown>
  const evidence = listOf(read.evidence) as { slot?: string; words?: string }[]
  const wordsOf = (slot: string): string | null => evidence.find((one) => one.slot === slot)?.words ?? null
  const unsure = listOf(read.unsure).map(String)
  return {
    day,
    slots: SLOTS.flatMap((slot) => {
      const value = read[slot]
      return value === null || value === undefined
        ? []
        : [{ slot, value: String(value), words: wordsOf(slot) }]
    }),
    signs: listOf(read.signs)
      .filter((one): one is string => typeof one === 'string')
      .map((sign) => ({
        sign,
        name: isSignId(sign) ? signs[sign].short : sign,
        care: (isSignId(sign) ? careOf(sign) : 'none') as Care,
        words: words === '' ? null : words,
        unsure: unsure.includes('signs'),
      })),
    denied: listOf(read.denied).map(String),
    missing: listOf(read.missing).map(String),
    unsure,
    intent: String(read.intent ?? ''),
  }
}

const REACH_RULES: readonly string[] = ['reach-spread', 'below-knee']
/** A place on the scale of reach by its name, a sign by its own. */
function worded({ rule }: Flag, name: string, value: unknown): string {
  const isReach = name.startsWith('reach') || (name === 'usual' && REACH_RULES.includes(rule))
  if (isReach && typeof value === 'number' && value >= 0 && value <= 6) return reachAt(value)
  return typeof value === 'string' && isSignId(value) ? signs[value].short : shown(value)
}

const SMALLEST = 0.001
/** As many digits as say something; words and dates as they are. */
function shown(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value !== 'number') return String(value ?? '')
  if (value !== 0 && Math.abs(value) < SMALLEST) return `below ${SMALLEST}`
  return String(Math.round(value * 100) / 100 || Number(value.toPrecision(1)))
}

const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : [])
