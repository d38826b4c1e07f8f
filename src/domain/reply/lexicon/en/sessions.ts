import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

const placesOfSession =
  'first, second, third, fourth, last, other, morning, evening, afternoon, lunchtime, early, late, night'
const namesOfSession = 'one, session, sesh, workout, set'

/** Mean the other leg, or nothing, as well. */
const MEANS_MORE = new Set(['last one', 'the last one', 'other one', 'the other one'])

/** "the evening one", "my first session" */
const sessionsByPlace = placesOfSession
  .split(', ')
  .flatMap((place) =>
    namesOfSession.split(', ').flatMap((name) => [`${place} ${name}`, `the ${place} ${name}`]),
  )
  .filter((phrase) => !MEANS_MORE.has(phrase))
  .concat(
    ['this mornings', 'this afternoons', 'this evenings', 'tonights'].flatMap((when) => [
      when,
      ...namesOfSession.split(', ').map((name) => `${when} ${name}`),
    ]),
  )

const ANY_OF_THEM =
  'any/any of them/any of it/any of those/either/either of them/them/it/anything/my sessions/my drills/my exercises/the sessions/the drills/the exercises'
const anyOf = (verb: string): string =>
  ANY_OF_THEM.split('/')
    .map((what) => `${verb} ${what}`)
    .join('/')

/** "never got round to them", "drills didn't happen" */
const notDone = [
  each(
    'didnt manage/did not manage/couldnt manage/could not manage/never managed/never did/never got round to/never got around to/never got to',
    'either/either of them/any/any of them/it/them/my sessions/the drills/my drills',
  ),
  each(
    'exercises/drills/sessions/my exercises/my drills/my sessions',
    'not done/didnt happen/did not happen',
  ),
  each(
    'didnt/did not/couldnt',
    `${anyOf('do')}/${anyOf('manage')}/${anyOf('find time for')}/${anyOf('have time for')}`,
  ),
  each(
    'didnt/did not/couldnt',
    `${anyOf('get round to')}/${anyOf('get around to')}/${anyOf('get to')}/${anyOf('face')}`,
  ),
  each(
    'never found time for/never had time for/never got round to/never got around to/never started',
    ANY_OF_THEM,
  ),
  each(
    'not make/no make/not made/no made/not did/no did/not making',
    'exercise/exercises/any exercise/any exercises/training/sessions/session/the exercise/the exercises/my exercises',
  ),
  each('didnt do/did not do/havent done', 'jack/jack shit/squat/diddly squat/a thing/nuthin/nuffin/nothin'),
  'did squat, did naff all, naff all, did nuthin, did nuffin',
].join(', ')

const withThem = {
  oneSession: `${sessionsByPlace.join(', ')}, the first, the second`,
  dayOff: 'rest day, day off, was off, took the day off, took a day off, recovery day, off day, resting day',
  aSession:
    'a session, a sesh, a workout, a full session, a quick session, another, another one, another session, an extra one, one more session',
  onTen: 'on',
  countTimes: 'times, time',
  all: `
    none missed, none skipped, nothing missed, nothing skipped, neither missed, neither skipped,
    didnt miss any, didnt miss one, didnt miss either, missed none, missed nothing, didnt skip any, didnt skip one, skipped none, havent missed any, havent missed one, havent skipped any,
    kept to the plan, stuck to the plan, followed the plan, did the plan, all of the above,
    all, all done, did all, did em all, done em all, did them all, done them all, all of them, all sessions,
    all the sessions, all
    my sessions, all of it, all exercises, all the exercises, all my exercises, all drills, all my drills,
    everything done, did everything, done everything, everything, the lot, whole lot, did the lot, as
    planned, all as planned, all completed, completed all, finished all, finished everything, all
    finished, all complete, full programme, full program, full set, full house, every session, every
    single one, every one, all sets, full plan, whole plan, whole programme, whole program, the whole
    thing, whole thing, did it all, done it all, every last one, all the drills, all of the sessions, all
    my stuff, all the stuff, all of the exercises, got them all done, got it all done, smashed them all,
    nailed them all, all sesh, all seshes, full day,  alldone
  `,
  both: `
    double session, a double session, double sesh, boff, bofe, baith,
    both, both of them, both done, did both, both sessions, did em both, done em both, the two of them,
    the pair, both times, both
    ways, pair
  `,
  half: `
    half, a half, half of, half of them, half of it, half the sessions, half my sessions, half done, did
    half, arf
  `,
  nothing: 'none, nothing, nowt, not any, nout, nuthin, nuffin, nothin, nuttin',
  noSession: `
    ${notDone},
    couldnt face any of it, couldnt face any of them, couldnt face any, couldnt do any of it, couldnt do any of them, didnt do any of them, didnt manage any of it, didnt manage any of them, havent done any of it, havent done any of them, not done any of it, not done any of them,
    skipped it all, missed it all, skipped all of it, gave it a miss, gave it all a miss, gave them a miss,
    skipped the lot, missed the lot,
    none done, didnt get to any of it, didnt get to any, didnt do any of it, did none, done none,
    did nothing, done nothing, didnt do any, did not do any, havent done any, have not done any,
    couldnt do any, could not do any, didnt do anything, did not do anything, havent done anything,
    didnt do them, didnt do it, did not do them, did not do it, didnt train, did not train,
    didnt exercise, did not exercise, no training, no exercises, no exercise, no drills, no workout,
    no workouts, no session, no sessions, no stretches, no rehab, zero sessions, skipped everything,
    skipped all, skipped them all, skipped both, skipped them, skipped it, skipped today,
    missed everything, missed all, missed both, missed them all, missed them, missed it,
    missed them both, skipped them both, missed today, didnt manage any, did not manage any,
    couldnt manage any, didnt get any done, didnt get round to it, didnt get around to it,
    didnt get to it, didnt get to them, didnt get round to them, didnt get around to them, didnt bother,
    couldnt face it, couldnt face them, no time to train, no time for sessions, no time for exercises, no time for drills, no time for the drills,
    no time for them, no time for the exercises, no time for any, no time to do them, no time for either,
    no time for it, not done any, not done anything, not a single one, not one, none of them,
    not a single session, failed to do any, forgot to do them, forgot to do it, forgot my exercises,
    forgot my sessions, forgot the sessions, forgot the exercises, forgot both, forgot all, forgot them,
    forgot them all, forgot to train, forgot to exercise, didnt do my exercises, didnt do my sessions,
    didnt do the exercises, didnt do the sessions, did not do my exercises, did not do my sessions,
    didnt do my drills, didnt do the drills, havent done my exercises, havent done my sessions,
    not do exercise, not do exercises, not do any exercise, not do the exercise, not do the exercises, no do
    exercise, no do exercises, nothing done, did bugger all, bugger all, did sod all, sod all, did jack,
    done jack, did zip, didnt do nothing, done nowt, did nowt, no sesh, no seshes, no seshs,
    none managed, managed none, managed nothing, no drills today, did neither, couldnt do it,
    couldnt do them, none at all done, missed my sessions, missed my exercises, skipped my sessions,
    skipped my exercises, missed the sessions, skipped the sessions, skipped the exercises,
    missed the exercises, couldnt do either, didnt do either, neither done, neither session
  `,
  missed:
    'all bar, everything bar, all except, everything except, everything but, both except, both bar, every one except, all minus, all apart from, gave up on, left out the, missed, skipped, skip, forgot the, forgot my, all but, except for, minus, one short, bailed on, ditched',
  vagueCount: `
    a session and a half, session and a half, one session and a half, a sesh and a half, one sesh and a half, one and a bit sessions, one and a bit,
    half a session, half a sesh, half one, half of one, half a workout, only half of one, some of them,
    some of it, a few, most of them, most of it, most, few, a couple, couple, couple of, a couple of,
    nearly both, almost both, not quite both, not quite all, less than half, more than half, about half, around half, roughly half, over half,
    under half, just over half, just under half, barely half, well over half, nearly half, almost half,
    several, a bit of it, bits of, part of it, part of them, some sessions, some exercises, some drills,
    partly, partially, nearly all, almost all, almost everything, nearly everything, not all,
    not all of it, not all of them, not everything, not both, didnt do all, didnt do both,
    didnt do everything, couldnt do all, couldnt do both, didnt finish, did not finish,
    didnt manage both, didnt manage all, couldnt finish, most sessions, most exercises, did some,
    done some, did a bit, did a little, did most, done most, some done, most done, did my sessions,
    did my exercises, did the exercises, did the sessions, did my drills, did the drills,
    done my exercises, done my sessions, did my stretches, did them, done them, did em, done em,
    did my session, did my workout, did sessions, did exercises, did it, as many as i could,
    what i could, did what i could, didnt quite finish, cut it short, cut short, gave up halfway,
    stopped halfway, halfway, half way, did not do all, did not do both, did not do everything
  `,
  notYet: `
    havent done the, havent done my, not done the, yet to do the,
    sessions to go, session to go, sessions remaining, session remaining,
    remaining, sessions left to do, session left to do, exercises left, drills left, sessions still to do,
    session still to do, to do, left to do, still left, to go, left to go, more to go, more to do,
    still to go, not yet, havent yet,
    still to do, yet to do, havent done them yet, havent done it yet, not done yet, havent done any yet,
    none yet, nothing yet
  `,
  session: `
    session count, sessions count, session total, sessions total, session tally, number of sessions, sessions number, session number today,
    session, sessions, sesh, seshes, seshs, sess, sesion, sesions, workout, workouts, exercise session,
    exercise sessions, rounds, round, routine, routines, circuits, circuit, exercises done, times through,
    training, trainings, session done, sessions done, drills done, of them, of those, of em, of my
    sessions, of the sessions, of the exercises, drill sessions, rehab sessions, bouts, practice,
    practices, work outs, mobility sessions, strength sessions, reps of the programme, slots, drills,
    exercises, set, set of exercises, set of drills, lot of exercises, lots of exercises, lot of drills, goes at it
  `,
  did: `
    was only able to do, only able to do, was able to do, able to do, was only able to manage, could only do, could only manage, couldnt do more than, couldnt manage more than, didnt do more than, didnt manage more than, did not do more than,
    did, ive done, have done, i did, had time for, only had time for, i had time for, found time for, made time for, stopped after, called it after, called it a day after, get round to, got round to, get around to, got around to, gotten to, did do, got through, got in, fitted in, squeezed in, fit in, do,
    knocked out, smashed, smashed out, banged out, ticked off, got, nailed
  `,
  done: `
    completed, finished, managed, have completed, ive managed, have managed, 
    ive completed, done, complete, ticked, in the bag, out of the way, down and dusted, finito
  `,
  sessionLetter: 's, x, sx',
} satisfies Partial<LexiconData['cues']>

/** Whatever is said of "them" is said of "em" too. */
const withEm = (phrases: string): string => {
  const list = phrases.split(',').map((phrase) => phrase.trim())
  const em = list.flatMap((phrase) => (/\bthem\b/.test(phrase) ? phrase.replace(/\bthem\b/, 'em') : []))
  return [...new Set([...list, ...em])].join(', ')
}

/** Sessions: named, done, left out or still to come. */
export const sessions = {
  ...withThem,
  noSession: withEm(withThem.noSession),
  all: withEm(withThem.all),
  vagueCount: withEm(withThem.vagueCount),
}
