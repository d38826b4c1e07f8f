import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

type Cues = LexiconData['cues']

const places = {
  leg: `
    leg, down the leg, down my leg, down leg, whole leg, back of the leg, back of my leg, side of my leg,
    front of my leg, entire leg, all down my leg, all down the leg, all the way down, sciatica, sciatic,
    sciatic nerve, limb, my leg, the leg, down it, down one side, side of the leg, front of the leg, inner
    leg, outer leg
  `,
  legs: 'legs, my legs',
  arm: `
    arm, arms, hand, hands, shoulder, shoulders, neck, wrist, wrists, elbow, elbows, finger, fingers,
    thumb, face, eye, eyes, ear, ears, rib, ribs, chest, belly, tummy, stomach, jaw, head, upper back,
    thoracic
  `,
  place: `
    reach, spot, place, zone, area, location, position, site, furthest, furthest point, felt in, where
  `,
  sideNoun: 'side, sided, hand side',
  otherSide: `
    the other, the other leg, other, other one, opposite, other leg, other side, opposite leg, opposite
    side, the other one, wrong leg, swapped legs, switched sides
  `,
  above: `
    stops before, stopped before, stopping before, just before, stops short of, stopped short of,
    stopping short of, stops above, stopped above,
    just above, above, right above, a bit above, bit above, slightly above, north of, short of
  `,
  below: 'below, under, underneath, beneath, south of',
  just: `
    just below, just under, right below, bit below, a bit below, slightly below, just beneath, right
    under, just underneath
  `,
  beyond: `
    past, beyond, further than, farther than, lower than, further down than, farther down than, lower down
    than, deeper than
  `,
  partOf: `
    back of, back of the, back of my, front of, front of the, front of my, side of, side of the,
    side of my, top of, top of the, top of my, outside of, outside of the, outside of my, inside of,
    inside of the, inside of my, bottom of, bottom of the, bottom of my, sole of the, sole of my, outer,
    inner, outside, rear of the, middle of, middle of the, middle of my, mid, upper, behind, behind the,
    behind my, part of the, part of my, edge of the, edge of my, tip of the, tip of my, end of the,
    end of my, ball of, muscle, muscles, joint, bone, nerve
  `,
  inside: `
    coming till, coming until, coming to, coming to my, coming up to, coming down to, comes till, comes until, comes down to, coming till my, coming till the, going till, goes till, till my, till the,
    in, in the, in my, in a, at the, at my, into, into the, into my, on the, on my, down, down the,
    down my, down to the, down to my, to the, to my, around the, around my, up to the, up to my,
    as far as, as far as the, as far as my, all the way to, all the way to the, all the way to my,
    all the way down to, all the way down to the, all the way down to my, reaching, reaches, reached,
    reaching the, reaching my, right down to, right down to the, right down to my, through the,
    coming to, coming to the, coming to my, coming down to, coming down to the, coming down to my, coming into,
    coming into the, coming into my, coming in the, coming in my, coming as far as, arrives at,
    arrives to, through my, across the, across my, down into, down into the, down into my, down in, down in the,
    down in my, along the, along my, up in the, from my, near the, near my, round the, inside the,
    inside my, towards the, towards my, toward the, toward my, as low as, low as, as far down as,
    as far down as the, as far down as my
  `,
  exercise: `
    raise, raises, stretch, stretches, stretching, stretched, bridge, bridges, bends, curls, curl,
    extension, extensions, lifts, opener, openers, hinge, hinges, press, presses, touches, rolls,
    rotations, rotation, glides, glide, sliders, slider, massage, roller, drops, walks, rockbacks, rocks,
    tucks, flexion, brace, support, taps, circles, drill, squat, squats, exercise, machine, band,
    height, length, path, locker, blister, blisters, infection, nail, nails, wart, verruca, bruise, graze, sock, socks,
    spa, boot, strap, plaster
  `,
} satisfies Partial<Cues>

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

const doing = {
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
} satisfies Partial<Cues>

const feeling = {
  painLetter: 'p, px, pn',
  pain: `
    points, pain of, pains of, pain level of, pain score of, pain rating of, ache of, pain levels of, score of,
    rating of, level of, pain, pains, pain level, pain levels, nprs, pain score, pain scale, pain rating,
    painlevel, painscore, ache, aches, aching, hurt, hurts, hurting, hurty, discomfort, soreness, nrs,
    vas, worst pain, pain worst, pain wise, painwise, ouch, ouchie, level, score, rating, scale,
    intensity, twinge, twinges, sting, stinging, burning, burn, throbbing, throb, cramp, cramping, zing,
    zaps, shooting pain, nerve pain, stabbing, pian, payne, it is a, its a, its at a, call it, call it a,
    i will say, i will say a, ill say, ill say a, i shall say, i will go with, i will go with a, ill go with, ill go with a, i will give it, i will give it a, ill give it, ill give it a,
    id say, id say a, i would say, i would say a, would say, id give it, id give it a, give it a, rate it,
    rated it, id rate it, rate it a, id rate it a, tingle, tingles, tingling, spikes, spike, ow
  `,
  painFree: `
    pain free, painfree, no pain, no pain at all, no pain whatsoever, no pain today, no pain now, without
    pain, without any pain, zero pain, painless, pain gone, pain has gone, pain is gone, pains gone, not
    in pain, not in any pain, no aches, doesnt hurt, does not hurt, didnt hurt, did not hurt, not hurting,
    isnt hurting, no hurt, nothing hurts, nothing hurt, no soreness, not sore, no discomfort, no ache, no
    aching, no aches or pains, no pains, nil pain, not a twinge, without a twinge, no twinges, out of
    pain, free of pain, freee of pain, pain nil, pain none, pain zero, didnt feel any pain, dont feel any
    pain, dont have any pain, dont have pain, have no pain, felt no pain, feel no pain, nada pain, not
    painful, wasnt painful, isnt painful, no pain any more, no pain anymore, hurts not at all, havent had
    any pain, havent any pain, aint hurting
  `,
  noSymptoms: `
    no symptoms, symptom free, no symptoms at all, no symptoms anywhere, no pain anywhere, without
    symptoms, zero symptoms, no pain or symptoms, no symptoms today, pain nowhere, doesnt hurt anywhere,
    nothing hurts anywhere
  `,
  painVague: `
    bad, mild, severe, awful, terrible, horrible, horrid, moderate, sore, achy, painful, stiff, rough,
    agony, unbearable, excruciating, killing me, slight, slightly sore, not too bad, not bad, not so bad,
    not great, not good, niggle, niggles, niggly, niggling, nasty, manageable, bearable, tolerable,
    intense, a lot of pain, lots of pain, in pain, some pain, a bit of pain, little pain, a little pain,
    bit of pain, hurts a lot, hurt a lot, hurts a bit, hurts like hell, a little bit of pain, much pain,
    so so, hardly any pain, barely any pain, almost no pain, not much pain, very little pain, minimal
    pain, no real pain, no major pain, no bad pain, no severe pain, no significant pain, no serious pain,
    next to no pain, practically no pain, virtually no pain, nearly pain free, almost pain free, mostly
    pain free, practically pain free, tender, grumbly, twingey, brutal, high pain, low pain, medium, ok
    ish, okish, meh, crap, shit, shite, dire, light pain, sharp, tight, really sore, dreadful, mega sore,
    hellish, on fire, grim, grotty, worst ever, mildly, acceptable, bit sore, a bit sore
  `,
  hardly: `
    hardly, barely, scarcely, almost, nearly, practically, virtually, not much, hardly any, little
  `,
  times: `
    getting out of the car, getting out of bed, getting out of a chair, getting out of my chair, getting into the car, getting in the car, getting in and out of the car, climbing stairs, on the stairs,
    worst of the day, the worst of the day, worst of today, worst moment, worst point, highest, the highest,
    ish, most of the day, most of the night, most of the evening, most of the morning, much of the day,
    mostly,
    most of the time, mainly, usually, on average, average, avg, ave, avrg, avg of, average of, mean, averaging, averaged, at times, at its worst, at worst, at the
    worst, at peak, peak, peaked, peaking, peaks, max, maximum, worst, at most, tops, spiked, spiking,
    after driving, after sitting, after standing, after walking, after work, after rowing, after sessions,
    after training, after exercise, after exercises, after lunch, after dinner, after breakfast, after the
    drive, after a drive, after a walk, after my walk, after the session, after bed, when sitting, when
    standing, when walking, when driving, when bending, when i sit, when i stand, when i walk, when i
    drive, when i bend, when i sat, when i stood, when i drove, when resting, at rest, on waking, when i
    woke, when i woke up, waking up, while driving, while sitting, while walking, while standing, during
    sessions, during training, during the session, sometimes, once in a while, in general, generally,
    overall, at first, later on, before bed, in bed, sitting, standing, walking, driving,
    when, whenever, resting, bending, lying down, at its best, at best, at its peak, briefly, for a while, for most of the
    day, all day, throughout, occasionally, now and then, on and off, on sitting, on standing, on bending,
    on walking, in the car, at work, after that, afterwards, on the erg, in the boat, with driving, with
    sitting
  `,
  dayPart: `
    this morning, in the morning, this afternoon, in the afternoon, this evening, in the evening, tonight,
    last night, at night, overnight, during the night, in the night, at lunch, at lunchtime, at noon,
    midday, at midday, earlier, earlier today, earlier on, first thing, later, by lunch, by lunchtime,
    by noon, by dinner, by bedtime, by teatime, ended, ended at, ended at a, ended on, ended on a, by evening,
    by night, by
    the evening, at bedtime, end of the day, by the end of the day, at the end of the day, start of the
    day, during the day, am, pm, morning, mornings, evening, evenings, afternoon, night, mornin, in the
    am, in the pm, early on, before lunch, before dinner, before breakfast, at the end
  `,
  better: `
    better, worse, improved, improving, easier, eased, easing, less, more, less pain, more pain, less
    painful, more painful, easing off, settling, calmer, quieter, milder, stronger, flared, flaring, flare
    up, flared up, lower pain, higher pain, bit better, bit worse, increased, decreased, going up, gone
    up, went up, went down, gone down, going down, worsened, worsening, sorer, less sore, more sore,
    reduced, eased off, acting up, playing up, wore off
  `,
  moved: `
    higher up, further up, further down, lower down, higher, lower, moving up, moving down, moved up,
    moved down, creeping up, creeping down, spreading, spread, spreads, retreated, crept down, crept up,
    crept further, further, farther, centralising, centralizing, centralised, centralized, closer to the
    spine, nearer the spine, pulled back, drawing in, shifted, travelled further, traveled further
  `,
  same: `
    same, the same, same as, the same as, ditto, no change, unchanged, no changes, as before, as usual,
    same again, same old, no different, not changed, hasnt changed, nothing new, nothing changed, copy,
    identical, usual, the usual, as ever, same same, samesies, nothing different, like before, idem, no
    diff, just the same, much the same, about the same, pretty much the same, stable, steady
  `,
} satisfies Partial<Cues>

/** Whatever is said of "them" is said of "em" too. */
const withEm = (phrases: string): string => {
  const list = phrases.split(',').map((phrase) => phrase.trim())
  const em = list.flatMap((phrase) => (/\bthem\b/.test(phrase) ? phrase.replace(/\bthem\b/, 'em') : []))
  return [...new Set([...list, ...em])].join(', ')
}

const doingThem = {
  ...doing,
  noSession: withEm(doing.noSession),
  all: withEm(doing.all),
  vagueCount: withEm(doing.vagueCount),
}

export const cuesOfSlots = { ...places, ...doingThem, ...feeling }
