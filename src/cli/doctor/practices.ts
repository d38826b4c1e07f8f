import type { Client } from 'discord.js'
import { serverOf } from '../../chat/channel-facts.ts'
import { regionOf } from '../../domain/region.ts'
import { lackingOf } from '../../engine/coach/practice-state.ts'
import type { PracticeRow } from '../../engine/rows.ts'
import { doctor } from '../../text/en/doctor.ts'
import { textsFor } from '../../text/index.ts'
import { type Line, notChecked, notOk, ok } from './line.ts'

const texts = textsFor('en')
const { setUp } = texts

/** How each practice stands: rights and privacy of its channels, the policy, its emergency number. No client is named. */
export function practiceLines(
  practices: readonly PracticeRow[],
  client: Client | null,
  why: string,
): readonly Line[] {
  if (practices.length === 0) return [notOk('practices', doctor.noPractice)]
  return practices.flatMap((practice) => {
    const server = client && serverOf(client, practice.guild, texts.chat.permissions)
    const of = (check: string): string => `${check} of server ${server?.name ?? practice.guild}`
    const { policyConfirmed } = practice
    return [
      client ? channelsLine(of('channels'), practice, client) : notChecked(of('channels'), why),
      policyConfirmed
        ? ok(of('platform policy'), doctor.policy(policyConfirmed))
        : notOk(of('platform policy'), setUp.policyOpen),
      emergencyLine(of('emergency number'), practice.region),
    ]
  })
}

function channelsLine(check: string, practice: PracticeRow, client: Client): Line {
  const server = serverOf(client, practice.guild, texts.chat.permissions)
  if (!server) return notOk(check, doctor.notInServer)
  const { missing, notes } = lackingOf(practice, server, texts)
  // policy and region have lines of their own
  const problems = missing.filter((line) => line !== setUp.policyOpen)
  const looks = notes.filter((line) => line === setUp.cannotCall)
  if (problems.length > 0) return notOk(check, [...problems, ...looks].join(' '))
  return ok(check, [doctor.inOrder, ...looks].join('; '))
}

function emergencyLine(check: string, code: string | null): Line {
  const region = code === null ? null : regionOf(code)
  if (!region) return notOk(check, setUp.noRegion)
  const { number, source, seen } = region.emergency
  return ok(
    check,
    seen === 'M' ? doctor.fromMemory(region.code, number) : doctor.emergency(region.code, number, source),
  )
}
