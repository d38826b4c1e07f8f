import { harmless } from '../harmless.ts'

const name = (ref: string): string => `**${harmless(ref)}**`

/** What coaches read about who has an alert, and how it ends. */
export const alerts = {
  offered: (ref: string, from: string | null, to: string, signs: readonly string[]): string =>
    [
      `${name(ref)}: ${to}, please take this alert over${signs.length > 0 ? ` (${signs.join('; ')})` : ''}, and press when you have it.`,
      from === null
        ? 'Nobody has it yet, and it is repeated until somebody does.'
        : `Until then it stays with ${from}.`,
    ].join(' '),
  takeOver: 'I take it over',
  offeredTo: (ref: string, to: string, from: string | null): string =>
    `${to} has been asked in the alert channel to take over ${name(ref)}. ${from === null ? 'Nobody has it yet.' : `Until they press, it stays with ${from}.`}`,
  takenOver: (by: string, from: string, at: string): string => `${by} has it since ${at}, after ${from}.`,
  hasAlready: (ref: string, who: string): string => `${who} has the alert about ${name(ref)} already.`,
  noCoach: (who: string): string =>
    `${who} does not have the coach role here, so they may not see client records. Give them the role first, or name another coach. Nothing was changed.`,
  closedBy: (ref: string, by: string, outcome: string): string =>
    `${by} has closed the alert about ${name(ref)}: ${outcome}.`,
  endedAway: (ref: string): string =>
    `${name(ref)} is no longer with the practice, and in a day nobody has taken the alert up. I stop calling. They were told to seek care and not to wait.`,
  declinedOpen:
    '**They had written an urgent sign before that** and were told to seek care. The alert goes on for a day, until somebody takes it up.',
  spoken: (ref: string): string =>
    `Noted that you have spoken with ${name(ref)}. What was locked is open again, each ladder one rung lower (a first rung stays); the first prompt asks the signs.`,
  spokenStill: (ref: string, signs: readonly string[]): string =>
    `Noted that you have spoken with ${name(ref)}. **The plan stays locked**: ${signs.join('; ')}. That needs a clinician’s clearance: record it with /clear.`,
  resumed: (ref: string, prompt: string): string =>
    `The break of ${name(ref)} is over; the next prompt comes at ${prompt}.`,
  resumedLocked: (ref: string): string =>
    `The break of ${name(ref)} is over, but the plan is locked by an urgent sign: there is no prompt until you record a clearance with /clear.`,
  resumedParked: (ref: string): string =>
    `The break of ${name(ref)} is over, but they are parked: there is no prompt until you record with /release that a clinician has agreed.`,
}

/** What a client reads whose break ends while drills still wait. */
export const backAgain = {
  locked:
    'Welcome back. Your drills stay stopped until a medical person has seen you and your coach has noted it. I ask each morning how it is.',
  parked:
    'Welcome back. Your drills wait until a doctor or another clinician agrees and your coach has noted it. You hear from me then.',
}
