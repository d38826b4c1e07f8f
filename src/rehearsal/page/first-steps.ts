import type { Session } from './session.ts'
import type { FirstSteps } from './wire.ts'

/** Where an empty practice has come to, and the command that does the next step; null for any other practice. */
export function firstStepsOf({
  doc,
  refs,
  statuses,
  isSetUp,
  practiceZone,
  cards,
  programme,
}: Session): FirstSteps | null {
  if (doc.practice['by-hand'] !== true) return null
  const ref = refs[0] ?? null
  const at = (step: FirstSteps['step'], line: string | null = null): FirstSteps => ({ step, ref, line })
  if (!isSetUp)
    return at('set-up', `/set-up zone:${practiceZone} digest:Sun 18:00 region:PT policy-settled:true`)
  if (ref === null) return at('client')
  const status = statuses.get(ref)
  if (status === undefined)
    return at('enrol', `/enrol person:${ref} alias:${ref} zone:${practiceZone} prompt:08:00 side:left`)
  if (status === 'invited') return at('consent')
  if (status === 'screening') return at('screening')
  const own = [...cards.all.values()].filter((card) => card.place === `client:${ref}` && card.from === 'bot')
  if (own.some(({ kind }) => kind === 'prompt')) return at('done')
  if (own.some(({ kind }) => kind === 'plan')) return at('go')
  return at(
    'plan',
    `/plan client:${ref} sessions:2 ladders:extension:1 glide:1 from:${programme.script.start}`,
  )
}
