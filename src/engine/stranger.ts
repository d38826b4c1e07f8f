import { createHash } from 'node:crypto'
import { screen } from '../domain/signs/screen.ts'
import type { Texts } from '../text/index.ts'
import { NOBODY } from './draft.ts'
import type { Words } from './event.ts'
import type { Posting } from './ports.ts'

/** Somebody this bot does not know: a sign is answered all the same, nothing is kept and nobody told. */
export function strangerAnswer(event: Words, texts: Texts, now: Date): Posting {
  const urgent = screen(event.text, texts.language).signs.length > 0
  return {
    message: {
      key: `stranger/${createHash('sha256').update(event.id).digest('hex').slice(0, 16)}`,
      address: { to: 'client', user: event.actor.user },
      about: null,
      kind: urgent ? 'urgent' : 'notice',
      asks: null,
      care: urgent ? 'emergency' : 'none',
      text: urgent ? texts.client.strangerUrgent : texts.client.stranger,
      drills: [],
      buttons: [],
      pick: null,
      picture: null,
      mentions: NOBODY,
    },
    clientId: null,
    practiceId: '',
    priority: urgent ? 0 : 2,
    notBefore: now,
    expires: null,
  }
}
