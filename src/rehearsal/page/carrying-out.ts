import { addDays } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { textsFor } from '../../text/index.ts'
import { nextOf, stepTo } from '../player/play.ts'
import { change, checkWho, command, NotDone, say, submit, use } from './acting.ts'
import { beforeClockChange, breakIt } from './breaking.ts'
import { openingOf, scenarioOf } from './offers.ts'
import { passTo, type Seen } from './passing.ts'
import { emptyPractice, type Opening, Session } from './session.ts'
import type { Action, OpenForm } from './wire.ts'

const { page } = textsFor('en').rehearsal
const DAY = 86_400_000
/** Where and when an empty practice begins: a Monday in spring. */
const EMPTY = { start: '2026-03-02', zone: 'Europe/Lisbon' }
const ALIAS = /^[\p{L}\d-]{1,30}$/u

/** Where the practice is lived in: it may go on in another one. */
interface Place {
  readonly session: Session
  begin(opening: Session): Promise<void>
}

/** Carries out one act; gives the form that it opened. @throws NotDone with a sentence */
export async function carryOut(place: Place, action: Action, seen: Seen): Promise<OpenForm | null> {
  const { session } = place
  if ('as' in action) {
    checkWho(session, action.as)
    session.lived.add(action.as)
  }
  switch (action.do) {
    case 'press':
    case 'choose':
      return use(session, action, seen)
    case 'say':
      await say(session, action, seen)
      return null
    case 'edit':
    case 'take-back':
      await change(session, action, seen)
      return null
    case 'submit':
      await submit(session, action, seen)
      return null
    case 'command':
      await command(session, action, seen)
      return null
    case 'time':
      await pass(session, action, seen)
      return null
    case 'break':
      await breakIt(session, action, seen)
      return null
    case 'add-client':
      addClient(session, action.ref)
      return null
    case 'start':
      await place.begin(await opened(action.scenario))
      return null
    case 'open':
      await place.begin(await playedTo(openingOf(action.name, action.yaml), action.at))
      return null
    default:
      throw new NotDone(page.notAsked)
  }
}

async function opened(scenario: string | null): Promise<Session> {
  const opening = scenario === null ? emptyPractice(EMPTY.start, EMPTY.zone) : scenarioOf(scenario)
  if (!opening) throw new NotDone(page.noScenario)
  return playedTo(opening, 'beginning')
}

/** A practice at its beginning, or lived through to the end of its scenario; `seen` hears of every step. */
export async function playedTo(
  opening: Opening,
  at: 'beginning' | 'end',
  seen: (session: Session) => void = () => {},
): Promise<Session> {
  const session = await Session.open(opening)
  // what comes to a client after their last day is no part of the scenario; only the life after it is open
  if (at === 'end')
    await toEnd(session, () => {
      seen(session)
      return session.settle()
    })
  session.programme.log.isOpenEnded = true
  return session
}

async function pass(session: Session, action: Extract<Action, { do: 'time' }>, seen: Seen): Promise<void> {
  const { programme, practiceZone: zone, now } = session
  if (action.to === 'event') {
    const next = await nextOf(programme)
    if (!next) throw new NotDone(page.nothingDue)
    await stepTo(programme, next)
    return
  }
  if (action.to === 'end') return toEnd(session, seen)
  await passTo(programme, targetOf(session, action, zone, now), seen)
}

function targetOf(session: Session, action: Extract<Action, { do: 'time' }>, zone: string, now: Date): Date {
  if (action.to === 'day') return new Date(now.getTime() + DAY)
  if (action.to === 'week') return new Date(now.getTime() + 7 * DAY)
  if (action.to === 'clocks') {
    const noon = beforeClockChange(now, zone)
    if (!noon) throw new NotDone(page.noClocks)
    return noon
  }
  const day = action.to === 'date' && Number.isInteger(action.day) ? action.day : 0
  const date = addDays(session.programme.script.start, Math.min(1000, day) - 1)
  if (day < 1 || date <= dayAt(now, zone)) throw new NotDone(page.past)
  return instantOf(date, '00:00', zone)
}

async function toEnd(session: Session, seen: Seen): Promise<void> {
  const { programme, now, end } = session
  if (programme.script.clients.length === 0) throw new NotDone(page.nothingDue)
  if (end <= now) throw new NotDone(page.past)
  await passTo(programme, end, seen)
}

/** Somebody new in the boathouse; the coach enrols them. */
function addClient({ stage, doc, programme, practiceZone }: Session, ref: string): void {
  const { cast, platform } = stage
  if (!ALIAS.test(ref) || ref === 'coach' || cast.clients.has(ref)) throw new NotDone(page.taken)
  const { id } = platform.build.addAccount(ref)
  platform.build.addMember(cast.guild, id)
  cast.clients.set(ref, id)
  doc.clients.push({ ref, 'by-hand': true, zone: practiceZone })
  programme.log.moved(ref, practiceZone)
}
