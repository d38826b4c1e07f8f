import { plain } from '../src/engine/answer.ts'
import { backInWords } from '../src/engine/check-in/quiet.ts'
import { reschedulePrompt } from '../src/engine/check-in/schedule-prompt.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { backInRegion, isServed, refuseRegion } from '../src/engine/course/served.ts'
import { readTimes } from '../src/engine/course/times.ts'

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
