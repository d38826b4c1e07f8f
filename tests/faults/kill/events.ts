import type { Platform } from '../../../src/rehearsal/platform/index.ts'
import type { Cast } from '../../../src/rehearsal/player/cast.ts'
import { buttonOf } from '../../end-to-end/service-town.ts'
import type { Moment } from './snapshot.ts'

/** What somebody does, or what falls due, with the bot at a moment. */
export interface KillEvent {
  readonly name: string
  readonly from: Moment
  /** When it comes, where that is not the moment itself. */
  readonly at?: string
  /** Null: nobody does anything, the time has come. */
  readonly act: ((scene: Scene) => Promise<unknown>) | null
  /** An interaction: who gets no answer presses or types again. */
  readonly interaction?: true
  /** Another program holds the database meanwhile. */
  readonly locked?: true
}

export interface Scene {
  readonly platform: Platform
  readonly cast: Cast
}

const heron = ({ platform, cast }: Scene) => platform.person(cast.clients.get('heron')!)
const coach = ({ platform, cast }: Scene) => platform.person(cast.coach)

const say =
  (text: string): KillEvent['act'] =>
  async (scene) =>
    heron(scene).say(text)

const URGENT = "2 calf 4 and I can't pee since this morning"

export const EVENTS: readonly KillEvent[] = [
  { name: 'reply in words', from: 'prompted', act: say('2 calf 4') },
  { name: 'edit of a reply', from: 'replied', act: async (scene) => edit(scene, '2 knee 3') },
  { name: 'urgent reply', from: 'prompted', act: say(URGENT) },
  { name: 'urgent reply, locked', from: 'prompted', act: say(URGENT), locked: true },
  { name: 'button press', from: 'prompted', act: (scene) => press(scene, 'Take a break'), interaction: true },
  { name: 'form', from: 'prompted', act: fill, interaction: true },
  { name: 'change of zone', from: 'prompted', act: move, interaction: true },
  { name: 'due prompt', from: 'replied', at: '2026-03-08T08:00:00Z', act: null },
  { name: 'due digest', from: 'sunday', at: '2026-03-08T18:00:00Z', act: null },
  { name: 'decision', from: 'replied', act: decide, interaction: true },
]

/** Their own last message. */
function edit(scene: Scene, text: string): void {
  const person = heron(scene)
  const own = [...scene.platform.world.messages.values()].filter(({ wire }) => wire.author.id === person.id)
  person.edit(own.at(-1)!.wire.id, text)
}

function press(scene: Scene, label: string) {
  const { platform } = scene
  const posted = [...platform.world.messages.keys()].map((id) => platform.message(id)!)
  const message = posted.findLast((one) => buttonOf(one, label))
  if (!message) throw new Error('no such component')
  return heron(scene).press(message.id, buttonOf(message, label)!.custom_id!)
}

async function fill(scene: Scene): Promise<unknown> {
  const opened = await press(scene, 'Fill in the form')
  if (opened.outcome !== 'modal') throw new Error(`no form: ${opened.outcome}`)
  const filled = { sessions: '2', reach: 'calf', pain: '4', signs: ['none'] }
  return heron(scene).submit(opened.modal, filled)
}

function decide(scene: Scene): Promise<unknown> {
  const options = { client: 'heron', ladder: 'extension', do: 'advance' }
  return coach(scene).slash(scene.cast.coachChannel, 'decide', options)
}

/** Changes who is known, which is written to a file of its own. */
function move(scene: Scene): Promise<unknown> {
  return heron(scene).slash('dm', 'my-times', { zone: 'Europe/Madrid' })
}
