import type { Day } from '../../domain/day.ts'
import type { Slot } from '../../domain/reply/reading.ts'
import { date } from './dates.ts'
import { doseLine, drillOf, drillText, loadOf, nameOfDrill, STOP_RULE } from './drills.ts'
import { enrol } from './enrol.ts'
import { ladderName } from './names.ts'
import { urgent } from './urgent.ts'

const drillName = (ladder: string, rung: number): string =>
  nameOfDrill(`${ladder}:${rung}`) ?? `${ladderName(ladder)} ${rung}`

function drillLines(
  drills: readonly string[],
  sessions: number,
  loads: Readonly<Record<string, string>>,
  detail: 'short' | 'full',
): string[] {
  return drills.flatMap((id) => {
    const drill = drillOf(id)
    if (!drill) return []
    const load = loadOf(drill, loads)
    if (detail === 'full') return [`**${drillText(drill, sessions, load).replace('\n', '**\n')}`]
    return [`• ${nameOfDrill(id)}: ${doseLine(drill, sessions)}${load ? ` Load: ${load}.` : ''}`]
  })
}

const HOW = 'Write “today” to read how each of your drills is done.'

const ASK: Readonly<Record<Slot, (planned: number) => string>> = {
  sessions: (planned) =>
    planned > 1 ? `How many of your ${planned} sessions did you do?` : 'How many sessions did you do?',
  reach: () => 'How far from the spine did you feel it, at the farthest?',
  pain: () => 'Your worst pain, 0 to 10?',
}
const AGAIN: Readonly<Record<Slot, (planned: number) => string>> = {
  sessions: (planned) => `I am not sure how many sessions you did (0 to ${planned + 2}). Which number is it?`,
  reach: () => 'I am not sure how far you feel it. Where is the farthest place?',
  pain: () => 'I am not sure about the pain. Which number is it, from 0 to 10?',
}

/** Everything a client reads on an ordinary day. Plain, warm, short. */
export const client = {
  ...enrol,
  ...urgent,
  work: (
    drills: readonly string[],
    sessions: number,
    loads: Readonly<Record<string, string>>,
    detail: 'short' | 'full',
  ): string =>
    [
      `**Your drills, ${sessions} ${sessions === 1 ? 'session' : 'sessions'}:**`,
      drillLines(drills, sessions, loads, detail).join(detail === 'full' ? '\n\n' : '\n'),
      STOP_RULE,
    ].join('\n'),
  stepDrills: (
    drills: readonly string[],
    sessions: number,
    loads: Readonly<Record<string, string>>,
    detail: 'short' | 'full',
  ): string =>
    [
      drillLines(drills, sessions, loads, detail).join(detail === 'full' ? '\n\n' : '\n'),
      ...(detail === 'short' ? [HOW] : []),
      STOP_RULE,
    ].join('\n'),
  noPlanYet: 'There is no plan for you yet. Your coach sends it.',
  dayOff: 'A day off: no drills planned. A short check-in still helps.',
  allRest: 'No drills today: your ladders rest. Your coach is looking at it.',
  planSet: (from: Day | null, prompt: string): string =>
    `Your plan is set${from ? ` and begins on ${date(from)}` : ''}. I write to you each day at ${prompt}.`,
  prompt: ({ work, settled }: { work: string; settled: string | null }): string =>
    [
      settled,
      work,
      'How did it go since your last check-in? Write it in one line, like “2 calf 4”: sessions, how far you feel it, worst pain 0 to 10.',
      'And is any warning sign new: numbness between the legs, bladder, bowels, both legs, weakness, fever? Write “no signs”, or what it is.',
    ]
      .filter((part) => part !== null && part !== '')
      .join('\n\n'),
  reminder:
    'A short word about today? One line is enough: sessions, how far, pain 0 to 10. If you feel unwell or something is new, tell me that first.',
  fillIn: 'Fill in the form',
  takeABreak: 'Take a break',
  formTitle: (day: Day): string => `Check-in, ${date(day)}`,
  form: {
    sessions: (planned: number): string =>
      planned > 0 ? `Sessions done (planned: ${planned})` : 'Sessions done',
    reach: 'How far from the spine, at the farthest',
    pain: 'Worst pain, 0 to 10',
    side: 'Which leg, if beyond the back',
    signs: 'New or changed: any of these?',
  },
  formEmpty:
    'The form came back empty, so nothing is written down. You can fill it in again, or write one line.',
  chooseByNumber: (labels: readonly string[]): string =>
    `Answer with the number:\n${labels.map((label, n) => `${n + 1}: ${label}`).join('\n')}`,
  chooseSeveral: (labels: readonly string[]): string =>
    labels.map((label, n) => `${n + 1}: ${label}`).join('\n'),
  understood: (lines: readonly string[]): string =>
    lines.length === 1 ? `Got it: ${lines[0]}.` : `Got it:\n${lines.map((line) => `• ${line}`).join('\n')}`,
  putRight: 'Not right? Change it',
  sameAsBefore: (values: string): string => `Same: ${values}`,
  askValue: (slot: Slot, planned: number): string => ASK[slot](planned),
  askAgain: (slot: Slot, planned: number): string => AGAIN[slot](planned),
  askSide: 'Which leg is it?',
  askSideAgain:
    'Is it the same leg as before, the other one, or both? If it is both, stop your drills now. If I hear nothing for 10 minutes I take it as both.',
  side: { same: 'The same leg', other: 'The other leg', both: 'Both legs' },
  tooFarBack:
    'I can fill in the last three days only. What you told of a day before that is not written down.',
  askDay: 'Which day is this about? I can fill in the last three days.',
  askComfort: (ladder: string, rung: number): string =>
    `One more thing: does “${drillName(ladder, rung)}” feel comfortable now?`,
  askSettled: 'Yesterday was sore after your sessions. Is it back to how it was before?',
  askBarrier: 'Some sessions were missed this week, and that happens. What got in the way most?',
  barrier: {
    time: 'Time',
    pain: 'Pain',
    'unsure-how': 'Unsure how',
    'no-kit': 'No kit',
    other: 'Something else',
  },
  barrierThanks: 'Thank you, that helps. Your coach sees it.',
  notedSessions: (n: number): string => `Noted: ${n} ${n === 1 ? 'session' : 'sessions'}.`,
  notedReach: (reach: string): string => `Noted: ${reach}.`,
  notedPain: (n: number): string => `Noted: pain ${n}.`,
  notedSide: (side: string): string => `Noted: ${/legs/.test(side) ? side : `the ${side} leg`}.`,
  notKnown: 'I did not know that answer. Please write it in words.',
  comfortYes: 'Good to hear. Your coach decides about the next step.',
  comfortNo: 'Thank you. Then we stay with this step.',
  settledYes: 'Thank you. Good to know.',
  settledNo: 'Thank you. We do not add anything for now, and your coach is told.',
  dayKept: (day: Day): string => `Noted for ${date(day)}.`,
  dayDropped: 'Then I leave it out. Your words are kept in your record.',
  paused:
    'All right, a break. I will not write until you say “I am back”. If a warning sign comes, get help at once; you can also tell me.',
  pausedLocked:
    'All right, a break. As long as your drills are stopped I still ask each morning how it is. Please get care if you have not yet.',
  alreadyPaused: 'You are on a break already. Write “I am back” when you want to go on.',
  resumed: (prompt: string): string => `Welcome back. I write to you again at ${prompt}.`,
  notPaused: 'You are not on a break; I write to you each day.',
  lowerAgain: `You were away for a while, so we start one step easier. ${HOW}`,
  nudge:
    'It has been quiet for a few days. No rush: one line when you can. If something is wrong, tell me or get help.',
  lapse:
    'I have not heard from you for two weeks, so I stop writing for now. Any check-in starts it again. If a warning sign comes, get help at once.',
  eased: (ladder: string, rung: number): string =>
    `You feel it further down than is usual for you. That happens, and it is a reason to ease off. From now on, instead of the harder step: **${drillName(ladder, rung)}**. If it goes on moving down, or numbness or weakness comes, stop and get help. Your coach is told.`,
  rests: (ladder: string): string =>
    `You feel it further down than is usual for you. That happens, and it is a reason to ease off. “${ladderName(ladder)}” rests for now. If it goes on moving down, or numbness or weakness comes, stop and get help. Your coach is told.`,
  allRestNow:
    'It has not drawn back yet, so all your drills rest for now. Your coach looks at it and decides. If numbness or weakness comes, get help at once.',
  allButCalmRest:
    'It has not drawn back yet, so all but the calm breathing rests for now. Your coach looks at it and decides. If numbness or weakness comes, get help at once.',
  restOver: (ladders: readonly string[]): string =>
    `${ladders.map(ladderName).join(' and ')} can come back, at the same step as before.`,
  undone: (ladders: readonly string[]): string =>
    `Your coach has put back the step for: ${ladders.map(ladderName).join(', ')}.`,
  advanced: (ladder: string, rung: number): string =>
    `Good news from your coach: from tomorrow the next step on “${ladderName(ladder)}” is **${drillName(ladder, rung)}**.`,
  easedByCoach: (ladder: string, rung: number): string =>
    `Your coach takes it one step easier: from tomorrow on “${ladderName(ladder)}” it is **${drillName(ladder, rung)}**.`,
  easedAtRest: (ladder: string): string =>
    `Your coach takes it one step easier on “${ladderName(ladder)}”. It still rests; I tell you when it comes back.`,
  held: 'Your coach has looked at your week: we stay with the same steps for now.',
  referred:
    'Your coach would like a doctor or another clinician to look at this with you, and will write to you about it. Keep to what feels easy until then.',
  help: 'One line a day is enough: “2 calf 4” means 2 sessions, felt down to the calf, worst pain 4. You can also write “today” (your drills), “my record”, “take a break”, “I am back”, “leave”, or a question for your coach. /erase-me erases all that is kept.\nIf something urgent comes – numbness between the legs, bladder or bowel trouble, weakness, both legs – call your local emergency number and do not wait for me.',
  tooOld:
    'That question is more than three days old, so nothing is written down. If a warning sign is new, tell me now or get help at once.',
  thumb: 'Thank you. I cannot tell what the thumb answers, so I ask.',
  howToCorrect:
    'Just write the day again, like “2 calf 4”, or “yesterday 1 knee 3”. The later one counts; both are kept.',
  questionPassedOn:
    'I have passed your question on to your coach. The answer comes here. If it is urgent, get help now and do not wait.',
  welcomeBack: 'You are welcome.',
  notUnderstood:
    'I could not make that out, so nothing is written down but your words. One line is enough, like “2 calf 4”. For a question to your coach, end it with a question mark.',
  cannotRead: (attached: string): string =>
    attached === 'voice'
      ? 'I cannot listen to voice messages. Please write it in a line. If it is urgent, call your local emergency number now.'
      : 'I cannot look at pictures or files. Please write it in a line. If it is urgent, call your local emergency number now.',
  takenBack:
    'I saw that you took a message back. What you told me stays in your record; write the day again to change it.',
  leaveHow:
    'If you want to leave, write “leave” and nothing else, and I stop at once. If not, all stays as it is. /erase-me erases all that is kept.',
  left: (days: number, asked: boolean): string =>
    `You have left, and I will not write again${asked ? ', but for my question about a warning sign. Please answer it: unanswered, it counts as yes, and I tell you once what to do' : ''}. What is kept is erased after ${days} days, or at once with /erase-me. If you did not mean to leave, ask your coach to invite you again. If a warning sign comes, call your local emergency number.`,
  notEnrolled:
    'You are not in a plan at the moment, so nothing is written down. Ask your coach if you want to start again. For anything urgent, call your local emergency number.',
  stranger:
    'Hello! This bot works with people whom a coach has invited, and it does not know you. Nothing you wrote is kept. For anything urgent, call your local emergency number.',
  notYours: 'This is not for you to press, or it is too old. Nothing has changed.',
  record: ({
    status,
    rungs,
    lines,
  }: {
    status: string
    rungs: Readonly<Record<string, number>>
    lines: readonly string[]
  }): string =>
    [
      `Status: ${status}`,
      `Steps: ${
        Object.entries(rungs)
          .map(([ladder, rung]) => `${ladderName(ladder)} ${rung}`)
          .join(', ') || 'none yet'
      }`,
      ...(lines.length > 0 ? lines : ['No check-in in the last two weeks.']),
    ].join('\n'),
}
