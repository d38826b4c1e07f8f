import { createHash } from 'node:crypto'
import { stopsDrills } from '../../domain/care.ts'
import { screen } from '../../domain/signs/screen.ts'
import type { Texts } from '../../text/index.ts'
import type { Words } from '../event.ts'
import { BARE } from '../message.ts'
import type { Posting } from '../ports.ts'

/** The key of what is answered to somebody unknown: it tells nothing of who they are. */
export const strangerKey = (event: string): string =>
  `stranger/${createHash('sha256').update(event).digest('hex').slice(0, 16)}`

/**
 * Somebody whom this bot does not know, or who has left: a sign is answered all the same, nothing is kept and
 * nobody told. There is nobody to ask back, so what is only likely counts.
 */
export function strangerAnswer(event: Words, texts: Texts, now: Date, hasLeft: boolean): Posting {
  const { care } = screen(event.text, texts.language)
  const { client } = texts
  const urgent = stopsDrills(care)
  const urgentText = hasLeft ? client.leftUrgent : client.strangerUrgent
  const calm = hasLeft ? client.notEnrolled : client.stranger
  return {
    message: {
      ...BARE,
      key: strangerKey(event.id),
      address: { to: 'client', user: event.actor.user },
      kind: urgent ? 'urgent' : 'notice',
      care,
      text: urgent ? urgentText : care === 'soon' ? `${client.soonBefore}\n${calm}` : calm,
    },
    clientId: null,
    practiceId: null,
    priority: urgent ? 0 : 2,
    notBefore: now,
    expires: null,
  }
}
