import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { IANAZone } from 'luxon'
import { SettingsError } from '../../config.ts'
import { readOwnLadders } from '../../own-ladders.ts'
import { packageRoot } from '../../store/root.ts'
import { doctor } from '../../text/en/doctor.ts'
import { type Line, notOk, ok } from './line.ts'

/** The machine: Node, its zone data, and the file of own ladders. */
export const hostLines = (version: string, ladders: string | null): Line[] => [
  nodeLine(version),
  zoneLine(),
  laddersLine(ladders),
]

/** Against the lines of Node.js in package.json, as "^20.19.0 || ^22.0.0". */
function nodeLine(version: string): Line {
  const { engines } = JSON.parse(readFileSync(join(packageRoot(), 'package.json'), 'utf8')) as {
    engines: { node: string }
  }
  const lines = engines.node.split('||').map(partsOf)
  const [major, minor = 0] = partsOf(version)
  const isOfLine = lines.some((least) => major === least[0] && minor >= (least[1] ?? 0))
  return isOfLine
    ? ok('Node.js', doctor.node(version))
    : notOk('Node.js', doctor.nodeOther(version, lines.map(([line]) => String(line)).join(' or ')))
}

const partsOf = (text: string): number[] => text.match(/\d+/g)?.map(Number) ?? []

/**
 * Clock changes of 2026, as minutes east of UTC before and after: the last Sunday of March at 01:00 UTC (Directive
 * 2000/84/EC), the second Sunday of March at 02:00 local (15 U.S.C. 260a), and a zone that has none.
 */
const CHANGES = [
  { zone: 'Europe/Lisbon', at: '2026-03-29T01:00:00Z', before: 0, after: 60 },
  { zone: 'America/New_York', at: '2026-03-08T07:00:00Z', before: -300, after: -240 },
  { zone: 'Asia/Tokyo', at: '2026-03-29T01:00:00Z', before: 540, after: 540 },
] as const

function zoneLine(): Line {
  const wrong = CHANGES.find(({ zone, at, before, after }) => {
    const instant = Date.parse(at)
    const found = [instant - 1_000, instant].map((ms) => [
      IANAZone.create(zone).offset(ms),
      offsetOf(zone, ms),
    ])
    return JSON.stringify(found) !== JSON.stringify([before, after].map((minutes) => [minutes, minutes]))
  })
  return wrong
    ? notOk('zone data', doctor.zonesDiffer(wrong.zone))
    : ok('zone data', doctor.zonesAgree(process.versions.tz ?? ''))
}

/** Minutes east of UTC by the runtime's own calendar, without the library in between. */
function offsetOf(zone: string, ms: number): number {
  const format = new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longOffset' })
  const name = format.formatToParts(ms).find((part) => part.type === 'timeZoneName')?.value ?? ''
  const [, sign, hours, minutes] = /GMT(?:([+-])(\d\d):(\d\d))?/.exec(name) ?? []
  return (sign === '-' ? -1 : 1) * (Number(hours ?? 0) * 60 + Number(minutes ?? 0))
}

function laddersLine(path: string | null): Line {
  try {
    const own = readOwnLadders(path)
    return ok('own ladders', path === null ? doctor.noLadders : doctor.ladders(own.length))
  } catch (error) {
    if (!(error instanceof SettingsError)) throw error
    return notOk('own ladders', error.message)
  }
}
