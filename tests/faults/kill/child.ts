// counts and kills; must come before everything that is counted

import { pino } from 'pino'
import { readReply } from '../../../src/domain/reply/read.ts'
import type { Event } from '../../../src/engine/event.ts'
import { type Service, startService } from '../../../src/service.ts'
import { LANGUAGE_CODES } from '../../../src/text/index.ts'
import type { Question, Told } from './protocol.ts'
import { beginInstant, count, instants, step, steps } from './steps.ts'

/** The bot as a process of its own, with the clock of the one that started it, who may kill it at any time. */
const PER_SECOND = 1_000_000

let now = 0
let service: Service | null = null

const tell = (told: Told): void => void process.send?.(told)
const log = pino({ level: 'fatal', base: null })

async function start({ databaseUrl, folder, token, api }: Question & { ask: 'start' }): Promise<void> {
  service = await startService({
    ...{ databaseUrl, token, api, log, spoolFolder: folder },
    perSecond: PER_SECOND,
    now: () => new Date(now),
    onSent: (row, sent) => tell({ told: 'sent', row, sent }),
    onHandled: (event, handled) => tell({ told: 'handled', event: portable(event), handled }),
  })
  // before the bot hears of it
  service.client.prependListener('raw', (packet: Packet) => {
    if (isFromPerson(packet)) step('event received', () => {})
  })
}

interface Packet {
  readonly t: string | null
  readonly d: { readonly author?: { readonly bot?: boolean } } | null
}
const isFromPerson = ({ t, d }: Packet): boolean =>
  t === 'INTERACTION_CREATE' || (t?.startsWith('MESSAGE_') === true && d?.author?.bot !== true)

/** A server as the chat sees it cannot travel, and nobody asks for it. */
function portable(event: Event): Event {
  if (event.kind !== 'command') return event
  const { server: _, ...rest } = event
  return rest
}

async function answer(question: Question): Promise<unknown> {
  switch (question.ask) {
    case 'start':
      return start(question)
    case 'count':
      return count(question.aim)
    case 'tick':
      return service!.bot.tick()
    case 'quiet':
      await service!.chat.idle()
      await service!.bot.idle()
      return service!.chat.lastSequence()
    case 'next-due':
      return service!.bot.nextDue()
    case 'steps':
      return steps()
    case 'instants':
      return instants()
    case 'stop': {
      await service?.stop()
      service = null
    }
  }
}

process.on('message', async (question: Question) => {
  now = question.now
  beginInstant(now)
  const { id } = question
  try {
    tell({ told: 'answer', id, value: await answer(question) })
  } catch (error) {
    tell({ told: 'failed', id, error: String((error as Error).stack ?? error) })
  }
})
process.on('disconnect', () => process.exit(0))

// what a start would do first, done while nobody waits
const day = { planned: 2, today: '2026-03-02', promptDay: '2026-03-02', asked: null }
for (const locale of LANGUAGE_CODES) readReply('2 calf 4, numb', { ...day, locale })
tell({ told: 'ready' })
