import type { Day } from '../../domain/day.ts'
import { harmless } from '../harmless.ts'
import { LANGUAGE_WORDS } from '../language-words.ts'
import { fullDate } from './dates.ts'

/** One activity that matters: how hard it was at the first answer and at the last, 0..10; null: not asked again yet. */
export interface ActivityPath {
  readonly name: string
  readonly from: number
  readonly now: number | null
}
/** Where somebody stands at the end of the way; null or empty where it is not known. */
export interface CourseFacts {
  readonly weeks: number
  readonly began: string
  readonly now: string
  readonly activities: readonly ActivityPath[]
  /** Sessions done of those planned, in percent. */
  readonly percent: number | null
}

const safe = (name: string): string => harmless(name, 30)
const path = ({ name, from, now }: ActivityPath): string =>
  now === null ? `${safe(name)} ${from}` : `${safe(name)} ${from} → ${now}`
const weeksOf = (n: number): string => (n === 1 ? '1 week' : `${n} weeks`)

/** What a client reads from the first yes to the last word, besides the ordinary day. */
export const course = {
  sexual:
    'One more yes or no. One of the warning signs is a new change in feeling or function in sex. It can mean that you need help fast. May I ask about it in the form? If you say no, I leave it out. If you tell me of it in your own words, I still act on it.',
  sexualNoted: (yes: boolean): string => (yes ? 'Thank you. I will ask it.' : 'Thank you. I leave it out.'),
  screeningWaits: 'Your first questions are not done yet. Shall we go on? It takes a few minutes.',
  screeningGoesOn: 'Here we go on.',
  goOn: ['go on', 'continue', 'carry on', 'next', 'ready', 'i am ready', 'hello', 'hi'] as readonly string[],
  regionRefused:
    'I am sorry: your coach may not work with people in that country. Nothing more is asked. For anything urgent, call your local emergency number.',
  regionAway:
    'I am sorry: your coach may not work with people who are in that country, so your drills have a break. Your coach is told. I keep the country, so that I name the right emergency number.',
  elsewhere:
    'You check in here with another practice already, and your words can go to one of them only. Write “leave” to end there first, then press yes again. Nothing was changed, and neither coach is told.',
  regionStays:
    'Your break goes on: your coach may not work with people who are in that country. Once you are in another, tell me which with /my-times region. If a warning sign comes, get help at once.',
  askActivities: (names: readonly string[]): string =>
    `Every two weeks I ask about what matters to you. How hard is it now, from 0 (easy) to 10? Like this: “${names.map((name, n) => `${safe(name)} ${[5, 3, 4][n] ?? 4}`).join(', ')}”.`,
  activitiesButton: 'How hard is it now?',
  activitiesTitle: 'What matters to you',
  activityField: (name: string): string => `${name}: 0 (easy) to 10`,
  activitiesNoted: (paths: readonly ActivityPath[]): string =>
    `Noted: ${paths.map(path).join(', ')} (first answer → now).`,
  activitiesUnread: 'I could not read that. Please write a number from 0 to 10 for each.',
  summary: ({ weeks, began, now, activities, percent }: CourseFacts): string =>
    [
      `${weeksOf(weeks)}. You began at ${began || 'an unknown place'} and are now at ${now || 'an unknown place'}.`,
      activities.length > 0 ? `How hard it is: ${activities.map(path).join(', ')}.` : '',
      percent === null ? '' : `On the days you answered, you did ${percent} % of your sessions.`,
    ]
      .filter(Boolean)
      .join('\n'),
  discharged: (summary: string, breathing: boolean): string =>
    `This is the end of our way together. Well done!\n${summary}\nIf it comes back: ${breathing ? 'go back to the calm breathing, ' : ''}ease off, and ask your coach. If you go numb between the legs, or have bladder or bowel trouble, weakness or trouble in both legs, get help at once.`,
  dischargedLocked: (summary: string, emergency: string | null): string =>
    `This is the end of our way together.\n${summary}\nWhat I wrote about getting care still holds: please do not wait with it. If anything gets worse, call ${emergency ?? 'your local emergency number'}.`,
  askRemind: 'Shall I ask once, four weeks from now, how it is?',
  remindYes: 'Yes, ask me',
  remindNo: 'No, thank you',
  remindNoted: (yes: boolean): string =>
    yes ? 'I will ask you once, in four weeks.' : 'Then I will not write again.',
  comeBack:
    'Four weeks have gone since our way together ended. How is it? Tell me in a few words, or press. Your coach reads it. If a warning sign is new, tell me that first or get help at once.',
  comeBackGood: 'Going well',
  comeBackWorse: 'It has come back',
  comeBackThanks: 'Thank you. I have passed it on to your coach.',
  comeBackWorseThanks:
    'I am sorry to hear that. I have passed it on to your coach, who can start again with you. If you go numb between the legs, or have bladder or bowel trouble or weakness, get help at once.',
  movedTo:
    'From now on another coach of your practice looks after you. Your plan and your record stay as they are.',
  language: 'From now on I write to you in English.',
  languageWords: LANGUAGE_WORDS,
  erased: (rows: number, until: Day): string =>
    `${rows} ${rows === 1 ? 'row is' : 'rows are'} gone. Backups made before now may hold a copy until ${fullDate(until)}. They are out of my reach.`,
}

/** The same for coach and keeper. */
export const courseForCoach = {
  regionNotServed: (code: string): string =>
    `The practice does not work with people in ${code}. Nothing was sent. The list of countries is part of /set-up.`,
  regionNeeded: 'The practice works in some countries only: say which one with region, like PT.',
  badLanguage: (code: string): string => `I do not speak “${harmless(code, 12)}” yet.`,
  aliasAgain: (before: string, now: string): string =>
    `The alias “${before}” belongs to their earlier record, so they are “${now}” from now on.`,
  regionRefused: (ref: string, code: string): string =>
    `**${harmless(ref)}** is in ${code}, where the practice does not work, and was refused politely.`,
  regionAway: (ref: string, code: string): string =>
    `**${harmless(ref)}** is in ${code} now, where the practice does not work. Prompts have stopped; please decide how to go on.`,
  regionBack: (ref: string, code: string): string =>
    `**${harmless(ref)}** is in ${code} now, where the practice works. The break is over, and prompts go on.`,
  activities: (paths: readonly ActivityPath[]): string =>
    `Matters (0-10, first → now): ${paths.map(path).join(', ')}`,
  lift: (wanted: string, load: string | null): string =>
    `Wants back: ${harmless(wanted, 60)}${load ? ` · load now: ${harmless(load, 60)}` : ''}`,
  discharged: (ref: string, lines: readonly string[]): string =>
    [`**${harmless(ref)}** has been discharged.`, ...lines].join('\n'),
  signStillOpen:
    '**An urgent sign is still open: please reach them.** The alert goes on until it is taken up, and the morning question until you record a clearance with /clear.',
  writtenLocked: 'An urgent sign is open, so I added that the drills stay stopped and that care comes first.',
  courseLines: ({ weeks, began, now, activities, percent }: CourseFacts): string[] => [
    `${weeksOf(weeks)} · began at ${began || 'not known'} · now at ${now || 'not known'}`,
    ...(activities.length > 0 ? [`Matters (0-10, first → now): ${activities.map(path).join(', ')}`] : []),
    ...(percent === null ? [] : [`Sessions: ${percent} % of those planned, on the days answered`]),
  ],
  endsOn: (day: Day): string => `Erased after ${fullDate(day)}, unless you erase it sooner.`,
  dischargedAlready: (ref: string): string =>
    `**${harmless(ref)}** is not in a plan any more. To begin again, invite them with /enrol.`,
  notBegun: (ref: string): string =>
    `**${harmless(ref)}** has not begun, so there is nothing to look back on. To end the invitation and what was answered so far, use /erase-client. Nothing was changed.`,
  notUnderWay: (ref: string): string =>
    `**${harmless(ref)}** is not under way, so there are no prompts to stop. Nothing was changed.`,
  saysLocked: (ref: string, words: string | null): string =>
    `**${harmless(ref)}**, whose plan is locked, ${words === null ? 'has written (words kept in the record)' : `writes: “${harmless(words, 800)}”`}.`,
  remind: (ref: string): string => `**${harmless(ref)}** would like one word in four weeks; I ask then.`,
  comeBack: (ref: string, words: string | null): string =>
    `**${harmless(ref)}**, four weeks after the end: ${words === null ? 'has answered (words kept in the record)' : `“${harmless(words, 800)}”`}. To start again, invite them with /enrol.`,
  moved: (ref: string, from: string, to: string): string =>
    `**${harmless(ref)}** is with ${to} from now on (before: ${from}). The client has been told.`,
  movedAlready: (ref: string, to: string): string => `**${harmless(ref)}** is with ${to} already.`,
  nobody: 'nobody by name',
  timeIsUp: (until: Day): string =>
    `1 record has been erased: its time was up. Backups made before now may hold a copy until ${fullDate(until)}.`,
  retentionWaits: (ref: string): string =>
    `The time of **${harmless(ref)}**’s record is up, but an urgent sign is still open. It is erased once that is closed: please reach them, then record it with /clear.`,
  erased: (rows: number, until: Day): string =>
    `${rows} ${rows === 1 ? 'row has' : 'rows have'} gone. Backups made before now may hold a copy until ${fullDate(until)}, when by your own rule the last of them is removed. They are out of my reach, and so are the chat service’s own copies.`,
}
