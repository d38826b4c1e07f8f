import {
  ATTENTION_GROUPS,
  type RollCall,
  type RollCallEntry,
  rollCall,
} from '../../domain/digest/attention.ts'
import type { WeekFacts } from '../../domain/digest/facts.ts'
import type { Ladder } from '../../domain/ladder/ladders.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { Texts } from '../../text/index.ts'
import { plain } from '../answer.ts'
import { Draft } from '../draft.ts'
import type { Answer, Button } from '../message.ts'
import type { ClientFile } from '../ports.ts'
import type { PracticeRow } from '../rows.ts'
import { assessOn } from './watch.ts'
import { factsOn } from './week-facts.ts'

// As many lines as a phone shows in two screens, and room for a heading or two within the platform's 2,000.
const LINES_A_PAGE = 20
const CHARACTERS_A_PAGE = 1_700

export interface RosterParts {
  readonly practice: PracticeRow
  readonly files: readonly ClientFile[]
  readonly now: Date
  readonly textsFor: (language: string) => Texts
  readonly ladders: readonly Ladder[]
}

interface Line {
  readonly entry: RollCallEntry
  readonly text: string
}

/** Who needs the coach, who can move on, the rest: one line each, a page at a time; a record is opened from there. */
export function rosterPage(parts: RosterParts, wished: number): Answer {
  const { practice, files, now } = parts
  const texts = parts.textsFor(practice.language)
  const roll = rollCall(files.map((file) => weekOf(file, parts)))
  const pages = pagesOf(roll, texts)
  const number = Math.min(Math.max(0, wished), pages.length - 1)
  const lines = pages[number] ?? []
  const counts = { needs: roll.needs.length, move: roll.move.length, rest: roll.rest.length }
  const page = { number: number + 1, of: pages.length }
  const head = texts.roster.head(counts, dayAt(now, practice.zone), page)
  const refs = lines.map(({ entry }) => entry.facts.ref)
  const choices = {
    buttons: turnButtons(number, pages.length, texts),
    pick: {
      name: 'open-record',
      label: texts.roster.open,
      options: refs.map((ref) => ({ value: ref, label: ref })),
      most: 1,
      act: { do: 'open-record' },
    },
  }
  const text = [head, ...withHeadings(lines, texts)].join('\n')
  return { ...plain(text, null), kind: 'roll-call', choices }
}

function weekOf(file: ClientFile, { now, textsFor, ladders }: RosterParts): WeekFacts {
  const draft = new Draft(file, now, 'roster', textsFor, now, ladders)
  return factsOn(draft, draft.today, assessOn(draft, draft.today))
}

function pagesOf(roll: RollCall, texts: Texts): Line[][] {
  const lines = ATTENTION_GROUPS.flatMap((group) => roll[group]).map((entry) => ({
    entry,
    text: texts.roster.line(entry),
  }))
  const pages: Line[][] = []
  let room = 0
  for (const line of lines) {
    const last = pages.at(-1)
    room -= line.text.length + 1
    if (last && last.length < LINES_A_PAGE && room >= 0) last.push(line)
    else {
      pages.push([line])
      room = CHARACTERS_A_PAGE - line.text.length
    }
  }
  return pages
}

const withHeadings = (lines: readonly Line[], texts: Texts): string[] =>
  lines.flatMap(({ entry, text }, n) =>
    entry.group === lines[n - 1]?.entry.group ? [text] : [texts.roster.heading(entry.group), text],
  )

function turnButtons(page: number, pages: number, { roster }: Texts): Button[] {
  const turn = (name: string, label: string, to: number): Button => ({
    name,
    label,
    act: { do: 'roster', page: to },
  })
  return [
    ...(page > 0 ? [turn('previous', roster.previous, page - 1)] : []),
    ...(page < pages - 1 ? [turn('next', roster.next, page + 1)] : []),
  ]
}
