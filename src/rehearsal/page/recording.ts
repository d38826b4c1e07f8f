import { stringify } from 'yaml'
import { addDays, daysBetween } from '../../domain/day.ts'
import { dayAt, instantOf, isZone, timeAt } from '../../domain/local-time.ts'
import type { ClientAct, SlashCommand, Step } from '../scenario/index.ts'

type Plain = Record<string, unknown>

/** A scenario as plain values, as its file holds it. */
export interface Doc extends Plain {
  practice: Plain
  start: string
  days: number
  clients: Plain[]
}

/** Something that the reader did: `who` is an alias, "coach" or "world"; `item` as it stands under a day. */
export interface Recorded {
  readonly at: Date
  readonly who: string
  item: Plain
}

/** All that was played and improvised, as a scenario that plays the same. */
export function scenarioText(
  base: Doc,
  done: readonly Recorded[],
  { steps, now }: { steps: readonly Step[]; now: Date },
): string {
  const doc = structuredClone(base)
  const acts = [
    ...done
      .filter(isMove)
      .flatMap(({ who }, n, all) =>
        all.findIndex((one) => one.who === who) === n ? fixed(doc, who, steps) : [],
      ),
    ...done,
  ].sort((a, b) => a.at.getTime() - b.at.getTime())
  const practiceZone = String(doc.practice.zone)
  let last = Math.max(doc.days, dayNumber(doc, now, practiceZone))
  // what was expected of the scenario alone says nothing of what was made of it
  if (done.length > 0) delete doc.expect
  const changes: { who: string; day: number; zone: string }[] = []
  for (const { at, who, item } of acts) {
    const client = doc.clients.find((one) => String(one.ref) === who)
    const home = client ? String(client.zone ?? practiceZone) : practiceZone
    const zoneOn = (day: number): string =>
      changes.findLast((one) => one.who === who && one.day < day)?.zone ?? home
    const place = placeOf(doc.start, at, zoneOn)
    last = Math.max(last, place.day)
    const zone = String(
      item.zone ?? /^\/my-times\b.*\bzone:(\S+)/s.exec(String(item.command ?? ''))?.[1] ?? '',
    )
    if (zone && isZone(zone)) changes.push({ who, day: place.day, zone })
    const part = client ? partOf(client, 'days') : partOf(doc, who === 'world' ? 'faults' : 'coach')
    addTo(part, place.day, { at: place.time, ...item })
  }
  doc.days = Math.min(1000, last)
  return stringify(doc, { lineWidth: 110 })
}

/** Another zone or prompt time, after which a scenario would count the times of the client's days anew. */
const isMove = ({ item }: Recorded): boolean =>
  /^\/my-times\b.*\b(zone|prompt):/s.test(String(item.command ?? ''))

/** The client's days as they were lived, each at its time: taken out of the file, to be written down again. */
function fixed(doc: Doc, ref: string, steps: readonly Step[]): Recorded[] {
  const client = doc.clients.find((one) => String(one.ref) === ref)
  if (client) client.days = {}
  return steps.flatMap(({ at, act }) =>
    act.who === 'client' && act.ref === ref ? [{ at, who: ref, item: itemOf(act.does) }] : [],
  )
}

function itemOf(does: ClientAct): Plain {
  switch (does.do) {
    case 'say':
    case 'edit':
      return { [does.do]: does.text }
    case 'delete':
      return { delete: true }
    case 'form':
      return { form: does.values }
    case 'press':
      return { press: does.button }
    case 'use':
      return { use: does.use }
    case 'command':
      return { command: typed(does.command) }
    case 'travel':
      return { ...(does.zone ? { zone: does.zone } : {}), ...(does.region ? { region: does.region } : {}) }
  }
}

const typed = ({ name, options }: SlashCommand): string =>
  [`/${name}`, ...Object.entries(options).map(([key, value]) => `${key}:${value}`)].join(' ')

const dayNumber = (doc: Doc, at: Date, zone: string): number => daysBetween(doc.start, dayAt(at, zone)) + 1

/** Day of the run and time of that day, in the zone in which the day began. */
function placeOf(start: string, at: Date, zoneOn: (day: number) => string): { day: number; time: string } {
  const near = Math.max(1, daysBetween(start, dayAt(at, zoneOn(1000))) + 1)
  for (const day of [near, near + 1, near - 1].filter((one) => one >= 1)) {
    const zone = zoneOn(day)
    const date = addDays(start, day - 1)
    const time = timeAt(at, zone)
    if (dayAt(at, zone) === date && instantOf(date, time, zone).getTime() === at.getTime())
      return { day, time }
  }
  return { day: near, time: timeAt(at, zoneOn(near)) }
}

function partOf(of: Plain, key: string): Plain {
  of[key] ??= {}
  return of[key] as Plain
}

/** Adds to what a day holds; a span of days is cut around it. */
function addTo(days: Plain, day: number, item: Plain): void {
  const span = Object.keys(days).find((key) => isIn(key, day))
  if (days[day] === undefined && span !== undefined) {
    const [first, last] = span.split('-').map(Number) as [number, number]
    const held = days[span]
    delete days[span]
    for (const [from, to] of [
      [first, day - 1],
      [day, day],
      [day + 1, last],
    ] as const)
      if (from <= to) days[from === to ? String(from) : `${from}-${to}`] = structuredClone(held)
  }
  const held = days[day]
  const list = held === undefined || held === 'none' ? [] : Array.isArray(held) ? held : [held]
  days[day] = [...list, item]
}

function isIn(key: string, day: number): boolean {
  const [first, last] = key.split('-').map(Number)
  return last !== undefined && day >= first! && day <= last
}
