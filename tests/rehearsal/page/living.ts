import { playedTo } from '../../../src/rehearsal/page/carrying-out.ts'
import { Hub } from '../../../src/rehearsal/page/hub.ts'
import { type PageServer, servePage } from '../../../src/rehearsal/page/server.ts'
import type { Opening } from '../../../src/rehearsal/page/session.ts'
import type {
  Action,
  Card,
  Control,
  Done,
  OpenForm,
  Refused,
  Snapshot,
} from '../../../src/rehearsal/page/wire.ts'

/** A practice that is lived in through the page's own addresses. */
export interface Living {
  readonly server: PageServer
  readonly hub: Hub
  act(action: Action): Promise<Done>
  refused(action: unknown): Promise<Refused>
  snapshot(who?: string): Promise<Snapshot>
  /** The latest card before somebody that has a control whose label fits. */
  latest(who: string, label: RegExp): Promise<{ card: Card; control: Control }>
  press(as: string, label: RegExp): Promise<OpenForm | null>
}

export async function liveIn(opening: Opening): Promise<Living> {
  const hub = new Hub(await playedTo(opening, 'beginning'))
  await hub.ready()
  const server = await servePage(hub)
  const post = (action: unknown): Promise<Response> =>
    fetch(`${server.url}act`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(action),
    })
  const living: Living = {
    server,
    hub,
    async act(action) {
      const done = (await (await post(action)).json()) as Done | Refused
      if (!done.ok) throw new Error(`${JSON.stringify(action)}: ${done.problem}`)
      return done
    },
    refused: async (action) => (await (await post(action)).json()) as Refused,
    snapshot: (who) => snapshotOf(`${server.url}events${who ? `?who=${who}` : ''}`),
    async latest(who, label) {
      const { cards } = await living.snapshot(who === 'coach' ? undefined : who)
      const side = who === 'coach' ? 'coach' : 'client'
      for (const card of cards.filter((one) => one.side === side).reverse()) {
        const control = card.rows.flat().find((one) => label.test(one.label))
        if (control) return { card, control }
      }
      throw new Error(`nothing before ${who} fits ${label}`)
    },
    async press(as, label) {
      const { card, control } = await living.latest(as, label)
      return (await living.act({ do: 'press', as, card: card.id, control: control.id })).form
    },
  }
  return living
}

/** The first event of a stream. */
async function snapshotOf(url: string): Promise<Snapshot> {
  const stop = new AbortController()
  const response = await fetch(url, { signal: stop.signal })
  let text = ''
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader()
  while (!text.includes('\n\n')) text += (await reader.read()).value ?? ''
  stop.abort()
  return JSON.parse(/^event: snapshot\ndata: (.*)$/m.exec(text)![1]!) as Snapshot
}

export const ANSWERS: Readonly<Record<string, string | string[]>> = {
  ...{
    age: '41',
    onset: '2026-02-10',
    earlier: 'no',
    seen: 'yes',
    risks: ['none'],
    known: ['none'],
    signs: ['none'],
  },
  ...{ reach: 'calf', pain: '6', side: 'left', eases: 'extension', activities: 'rowing 7' },
}

/** From nothing to the plan: set-up, the first client, consent, the first questions and the plan, all by hand. */
export async function firstSteps(living: Living): Promise<void> {
  for (let n = 0; n < 30; n += 1) {
    const { firstSteps: first } = await living.snapshot()
    const { step, ref, line } = first!
    if (step === 'go' || step === 'done') return
    if (step === 'client') await living.act({ do: 'add-client', ref: 'heron' })
    else if (line) await living.act({ do: 'command', as: 'coach', line })
    else if (step === 'consent') await living.press(ref!, /agree/)
    else await answerQuestions(living, ref!)
  }
  throw new Error('the first steps find no end')
}

async function answerQuestions(living: Living, as: string): Promise<void> {
  const form = await living.press(as, /./)
  if (!form) return
  const fields = Object.fromEntries(
    form.fields.flatMap(({ name }) => (ANSWERS[name] ? [[name, ANSWERS[name]]] : [])),
  )
  await living.act({ do: 'submit', as, form: form.form, fields })
}
