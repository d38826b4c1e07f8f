import type { Event } from '../../domain/report/facts.ts'
import type { Item } from '../../domain/report/page.ts'
import { ladderName } from './names.ts'
import { fullDate, oneLine, who } from './report-words.ts'

const DECIDED = {
  advance: 'advanced',
  hold: 'held',
  'ease-back': 'eased back',
  refer: 'referred',
  stop: 'stopped the drills',
} as const
const CHANGED = {
  plan: 'plan changed',
  advance: 'advanced',
  'ease-back': 'eased back by the rules',
  rest: 'rests, by the rules',
  return: 'a step lower after a gap',
  clearance: 'begins again after the clearance, a step lower',
  undo: 'change undone by the coach',
} as const
const STOPPED = {
  lock: 'drills stopped for a warning sign',
  park: 'waiting for a clinician’s word on a risk',
  pause: 'on a break',
} as const

const ladders = (ids: readonly string[]): string => ids.map((id) => oneLine(ladderName(id), 30)).join(', ')

/** One decision or change, with its day. */
export function eventItem(event: Event): Item {
  return { lead: fullDate(event.day, false), words: eventWords(event), most: 2 }
}

function eventWords(event: Event): string {
  if (event.kind === 'decision') {
    const what = `the coach ${DECIDED[event.decision]}${event.ladder === null ? '' : ` ${ladders([event.ladder])}`}`
    return event.reason === '' ? what : `${what} (“${oneLine(event.reason, 100)}”)`
  }
  if (event.kind === 'rungs') return `${CHANGED[event.why]}: ${ladders(event.ladders)}`
  const until =
    event.until === null
      ? ', still so'
      : event.until === event.day
        ? ''
        : ` until ${fullDate(event.until, false)}`
  return `${STOPPED[event.why]}${until}${event.by === null ? '' : ` (${who(event.by)})`}`
}
