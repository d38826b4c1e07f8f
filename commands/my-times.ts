import { isClockTime, isZone } from '../src/domain/local-time.ts'
import { regionOf } from '../src/domain/region.ts'
import { saysNone } from '../src/domain/reply/says-none.ts'
import { plain } from '../src/engine/answer.ts'
import { readDaysOff } from '../src/engine/check-in/days-off.ts'
import { backInWords } from '../src/engine/check-in/quiet.ts'
import { reschedulePrompt } from '../src/engine/check-in/schedule-prompt.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { backInRegion, isServed, refuseRegion } from '../src/engine/course/served.ts'
import type { ClientRow } from '../src/engine/rows.ts'
import type { Texts } from '../src/text/index.ts'

export type Times = Pick<ClientRow, 'prompt' | 'reminder' | 'zone' | 'off' | 'region'>
type Options = Readonly<Record<string, string | number | boolean>>

/** Prompt time, reminder, zone, days off, country and language, by the client alone. */
export const myTimes: ClientCommand = {
  name: 'my-times',
  who: 'client',
  options: ['prompt', 'reminder', 'zone', 'off', 'region', 'language'].map((name) => ({
    name,
    kind: 'text',
    required: false,
  })),
  run(draft, { options }) {
    const language = String(options.language ?? draft.client.language)
      .trim()
      .toLowerCase()
    const texts = draft.textsFor(language)
    if (texts.language !== language)
      return plain(draft.texts.courseForCoach.badLanguage(language), draft.client.ref)
    const times = readTimes(options, draft.client, draft.texts)
    if (typeof times === 'string') return plain(times, draft.client.ref)
    // another zone may be another country: no number is named until the client has said which
    const changes = language !== draft.client.language
    const moved = times.zone !== draft.client.zone && options.region === undefined
    draft.put('client', { ...draft.client, ...times, language, ...(moved ? { region: null } : {}) })
    reschedulePrompt(draft)
    const { region } = draft.client
    const told = options.region !== undefined && region !== null
    if (told && !isServed(draft.file.practice, region))
      return plain(refuseRegion(draft, region), draft.client.ref)
    const { commands } = texts
    const back = told && backInRegion(draft) ? `\n${backInWords(draft)}` : ''
    const changed = changes ? `${texts.course.language}\n` : ''
    const text = changed + commands.timesChanged(times.prompt, times.zone, times.off.join(' ')) + back
    return plain(moved ? `${text}\n${commands.askCountry}` : text, draft.client.ref)
  },
}

/** The times as wished, or the sentence that says what cannot be. "none" ends a reminder or the days off. */
export function readTimes(options: Options, before: Times, { commands, language }: Texts): Times | string {
  const word = (name: string): string | null =>
    options[name] === undefined ? null : String(options[name]).trim()
  const prompt = clockOf(word('prompt')) ?? before.prompt
  const wished = word('reminder')
  const reminder = wished !== null && saysNone(wished, language) ? null : (clockOf(wished) ?? before.reminder)
  const zone = word('zone') ?? before.zone
  const region = word('region')?.toUpperCase() ?? before.region
  const daysOff = word('off')
  const off = daysOff === null ? [...before.off] : readDaysOff(daysOff, language)
  if (!isClockTime(prompt)) return commands.badTime(prompt)
  if (reminder !== null && !isClockTime(reminder)) return commands.badTime(reminder)
  if (!isZone(zone)) return commands.badZone(zone)
  if (region !== null && !regionOf(region)) return commands.badRegion(region)
  return off === null ? commands.badOff(daysOff ?? '') : { prompt, reminder, zone, region, off }
}

/** "7:30" is 07:30. */
const clockOf = (word: string | null): string | null => word && (/^\d:/.test(word) ? `0${word}` : word)
