import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'
import { looksLike } from './looks-like.ts'

type Cues = LexiconData['cues']

/** "no to all of that": what answers the question of the signs, and tells nothing of sessions or pain. */
const DENIALS = [
  each(
    'none of/none at all of/none whatsoever of/not one of/not a single one of/havent had any of/havent got any of/havent any of/dont have any of/dont get any of/not had any of/not got any of/not experiencing any of/not experienced any of/not noticed any of/havent noticed any of/i have none of/ive none of/had none of/got none of',
    'that/this/those/these/the above/that stuff/those things/these things/those signs/those symptoms/these symptoms/these signs/what you ask/what you list/what you mention/what you asked/the things you list/the things you mention/the things you ask/the things you ask about/your list',
  ),
  each(
    'no to/nope to/negative on/negative to/no on/no for',
    'all/all of that/all of those/all of these/all of them/all that/all those/all these/all of it/everything/each/every one/the lot/the whole lot/the whole list/the list/all of those questions/all of these questions/all those questions/all the questions/all your questions/all six',
  ),
  'none of those apply, none of these apply, none of those apply to me, none of these apply to me, none apply, none apply to me, all no, all noes, all nos, all negative, all of those no, all of them no, all of these no, no across the board, nothing like that, nothing like those, nothing of the sort, nothing of the kind, no such symptoms, no such signs',
].join(', ')

const scope = {
  compare: `
    than, than on, than it was, than last, since last, compared to, compared with, compared,
    versus, vs, like, as, as on, unlike, because of, thanks to, due to, relative to,
    as it was, as with, from last, from what it was, what it was
  `,
  hour: 'before, after, until, since, by',
  noBeyond: `
    did not go below, did not go below my, did not go below the, did not go beyond,
    did not go beyond my, did not go beyond the, did not go further than, did not go further than my,
    did not go further than the, did not go lower than, did not go lower than my,
    did not go lower than the, did not go past, did not go past my, did not go past the,
    did not go under, did not go under my, did not go under the, didnt get below, didnt get below my,
    didnt get below the, didnt get beyond, didnt get beyond my, didnt get beyond the,
    didnt get further than, didnt get further than my, didnt get further than the,
    didnt get lower than, didnt get lower than my, didnt get lower than the, didnt get past,
    didnt get past my, didnt get past the, didnt get under, didnt get under my, didnt get under the,
    didnt go below, didnt go below my, didnt go below the, didnt go beyond, didnt go beyond my,
    didnt go beyond the, didnt go further than, didnt go further than my, didnt go further than the,
    didnt go lower than, didnt go lower than my, didnt go lower than the, didnt go past,
    didnt go past my, didnt go past the, didnt go under, didnt go under my, didnt go under the,
    does not go below, does not go below my, does not go below the, does not go beyond,
    does not go beyond my, does not go beyond the, does not go further than,
    does not go further than my, does not go further than the, does not go lower than,
    does not go lower than my, does not go lower than the, does not go past, does not go past my,
    does not go past the, does not go under, does not go under my, does not go under the,
    doesnt go below, doesnt go below my, doesnt go below the, doesnt go beyond, doesnt go beyond my,
    doesnt go beyond the, doesnt go further than, doesnt go further than my,
    doesnt go further than the, doesnt go lower than, doesnt go lower than my,
    doesnt go lower than the, doesnt go past, doesnt go past my, doesnt go past the, doesnt go under,
    doesnt go under my, doesnt go under the, has not gone below, has not gone below my,
    has not gone below the, has not gone beyond, has not gone beyond my, has not gone beyond the,
    has not gone further than, has not gone further than my, has not gone further than the,
    has not gone lower than, has not gone lower than my, has not gone lower than the,
    has not gone past, has not gone past my, has not gone past the, has not gone under,
    has not gone under my, has not gone under the, hasnt gone below, hasnt gone below my,
    hasnt gone below the, hasnt gone beyond, hasnt gone beyond my, hasnt gone beyond the,
    hasnt gone further than, hasnt gone further than my, hasnt gone further than the,
    hasnt gone lower than, hasnt gone lower than my, hasnt gone lower than the, hasnt gone past,
    hasnt gone past my, hasnt gone past the, hasnt gone under, hasnt gone under my,
    hasnt gone under the, never got below, never got below my, never got below the, never got beyond,
    never got beyond my, never got beyond the, never got further than, never got further than my,
    never got further than the, never got lower than, never got lower than my,
    never got lower than the, never got past my, never got past the, never got under,
    never got under my, never got under the, never went below, never went below my,
    never went below the, never went beyond, never went beyond my, never went beyond the,
    never went further than, never went further than my, never went further than the,
    never went lower than, never went lower than my, never went lower than the, never went past my,
    never went under, never went under my, never went under the, no numbness below,
    no numbness below my, no numbness below the, no numbness beyond, no numbness beyond my,
    no numbness beyond the, no numbness further than, no numbness further than my,
    no numbness further than the, no numbness lower than, no numbness lower than my,
    no numbness lower than the, no numbness past, no numbness past my, no numbness past the,
    no numbness under, no numbness under my, no numbness under the, no pain below, no pain below my,
    no pain below the, no pain beyond, no pain beyond my, no pain beyond the, no pain further than,
    no pain further than my, no pain further than the, no pain lower than, no pain lower than my,
    no pain lower than the, no pain past, no pain past my, no pain past the, no pain under,
    no pain under my, no pain under the, no symptoms below, no symptoms below my,
    no symptoms below the, no symptoms beyond, no symptoms beyond my, no symptoms beyond the,
    no symptoms further than, no symptoms further than my, no symptoms further than the,
    no symptoms lower than, no symptoms lower than my, no symptoms lower than the, no symptoms past,
    no symptoms past my, no symptoms past the, no symptoms under, no symptoms under my,
    no symptoms under the, no tingling below, no tingling below my, no tingling below the,
    no tingling beyond, no tingling beyond my, no tingling beyond the, no tingling further than,
    no tingling further than my, no tingling further than the, no tingling lower than,
    no tingling lower than my, no tingling lower than the, no tingling past, no tingling past my,
    no tingling past the, no tingling under, no tingling under my, no tingling under the, not below,
    not below my, not below the, not beyond, not beyond my, not beyond the, not further than,
    not further than my, not further than the, not going below, not going below my,
    not going below the, not going beyond, not going beyond my, not going beyond the,
    not going further than, not going further than my, not going further than the,
    not going lower than, not going lower than my, not going lower than the, not going past,
    not going past my, not going past the, not going under, not going under my, not going under the,
    not lower than, not lower than my, not lower than the, not past, not past my, not past the,
    not under, not under my, not under the, nothing below, nothing below my, nothing below the,
    nothing beyond, nothing beyond my, nothing beyond the, nothing felt below, nothing felt below my,
    nothing felt below the, nothing felt beyond, nothing felt beyond my, nothing felt beyond the,
    nothing felt further than, nothing felt further than my, nothing felt further than the,
    nothing felt lower than, nothing felt lower than my, nothing felt lower than the,
    nothing felt past, nothing felt past my, nothing felt past the, nothing felt under,
    nothing felt under my, nothing felt under the, nothing further than, nothing further than my,
    nothing further than the, nothing going on below, nothing going on below my,
    nothing going on below the, nothing going on beyond, nothing going on beyond my,
    nothing going on beyond the, nothing going on further than, nothing going on further than my,
    nothing going on further than the, nothing going on lower than, nothing going on lower than my,
    nothing going on lower than the, nothing going on past, nothing going on past my,
    nothing going on past the, nothing going on under, nothing going on under my,
    nothing going on under the, nothing lower than, nothing lower than my, nothing lower than the,
    nothing past, nothing past my, nothing past the, nothing to report below,
    nothing to report below my, nothing to report below the, nothing to report beyond,
    nothing to report beyond my, nothing to report beyond the, nothing to report further than,
    nothing to report further than my, nothing to report further than the,
    nothing to report lower than, nothing to report lower than my, nothing to report lower than the,
    nothing to report past, nothing to report past my, nothing to report past the,
    nothing to report under, nothing to report under my, nothing to report under the, nothing under,
    nothing under my, nothing under the
  `,
  no: `
    ${each('nuthin/nuffin/nothin/nuttin', 'in/in the/in my/down the/down my/at')},
    ${each('stubbed/rubbed/grazed/scraped/bruised/banged/twisted/sprained/rolled/cut/burnt/stubbed the/rubbing/blistered', 'my')},
    no, not, gone from the, gone from my, pain gone from, pain gone from the, pain gone from my,
    pain is gone from the, pain has gone from the, pain has gone from my, pain is gone from my, never,
    without, doesnt, dont, didnt, isnt, wasnt, hasnt, havent, arent, aint, couldnt, wont, wouldnt,
    doesnt reach, doesnt reach the, doesnt reach my, didnt reach, didnt reach the, didnt reach my,
    never reached, never reached the, hasnt reached the, not reach the, not in, not in the, not in my,
    no longer, not any more in, nothing in, nothing in the, nothing in my, nothing at, nothing down,
    nothing down the, none in the, none in my, none in, nor, no sign of, no pain in, no pain in the,
    no pain in my, no pain at the, no pain down, no pain down the, no pain down my, no pain around,
    no more, nowhere near, nowhere near the, not near, not reaching, not as far as, neither, out of my,
    out of the, left my, free of, rather than, instead of, hasnt reached, nothing to report in,
    absent from, no symptoms in, no symptoms in the, no symptoms in my, no pains in, no pain on,
    no pain on the, no tingling, no tingle, no tingles, no burning, no burn, no cramp, no cramps, no cramping, no sting, no stinging, no throbbing,
    no shooting pain, no shooting pains, no nerve pain, no stabbing, no zaps, no zing, no spikes, without tingling, without cramps, without burning, pain free in, pain free in the, pain free in my, nada in,
    zero in the
  `,
  clear: `
    fine, ok, okay, clear, gone, good, quiet, normal, great, happy, sorted, all good, all clear, went
    as planned, all went as planned, it all went as planned, everything went as planned, went to plan,
    all went to plan, all went well, feels
    fine, pain free now, gone away, has gone, went away, settled down, settled, has settled, have settled,
    disappeared, vanished, no more pain, clears, cleared, not affected, unaffected, no issue, no issues,
    no problem, no problems, no bother, free, symptomless, is history, felt fine, no trouble, all fine,
    totally fine, behaving, behaving itself, behaving well, behaved, behaved itself, calm, quiet as a mouse,
    feeling fine, feeling good, cool, okey
  `,
  was: 'was, were, been, had been',
  now: `
    now, currently, at the moment, right now, just now, atm, presently, these days, only now, by now,
    nowadays
  `,
  only: `
    only, one and only, just, just in the, only in the, just my, only my, merely, solely, purely,
    stops at, stops at the, stopped at the, stops in the, stayed in the, stays in the, stays in, stayed
    in, confined to, limited to, instead, simply, mostly in the, mainly in the, it is in the
  `,
  past: `
    used to, used to be, last week, weeks ago, months ago, last month, last year, previously, at the
    start, in the past, years ago, a week ago, long ago, at baseline, last time, had been in, before this,
    when i started, when we started, in the beginning, back in the day, formerly, ages ago, some time ago,
    over the weekend, at the weekend, last weekend, originally, at first visit
  `,
  but: `
    but, however, although, though, except that, yet, whereas, otherwise, while, apart from that
  `,
  except: `
    except, except in, except in the, except in my, except for a, apart from, other than, besides, aside
    from, unless, bar, save for, bar the, except the, apart from the, apart from in the, other than the,
    other than in the, other than in my
  `,
} satisfies Partial<Cues>

const numbersAndJoints = {
  or: 'or, or maybe, or so, or even',
  and: 'and, n, plus, then, and then, also',
  to: `
    to, up to, down to a, up to a, down to, through, til, till, going to, rising to, rose to, to a, to about,
    to
    around, to about a, dropped to, fell to, and up to, now a, up as high as, to maybe
  `,
  from: 'from, from a, from about, started at, started at a, started on, started on a, started as a',
  change: `
    pains gone from, pains gone from a, pain gone from a, pain has gone from a, pains gone down from,
    went down from a, went up from a, came down from a, rose from a, fell from a, improved from a,
    moved from a,
    down from, up from, down from a, up from a, dropped from, went from, went from a, gone from, gone from
    a, has gone from, came down from, fell from, rose from, improved from, reduced from, eased from,
    decreased from, increased from, moved from, changed from, down from about, went down from, went up
    from, better from, dropping from, dropped, going from, moving from, shifted from
  `,
  between: `
    between, in between, somewhere between, anywhere between, between a, somewhere between a, ranging
    from, ranged from, ranges from, anywhere from, varies from, varied from, varied between, varies
    between, fluctuating between
  `,
  outOf: 'out of, of, outta, over, of a possible, out of a possible, of the, of my',
  of: '',
  point: 'point, dot',
  andPart:
    'and a bit, and a bit of, and a little, and a bit more, and a quarter, and some, and a third, and change',
  percent: 'percent, per cent',
  atMost: `
    never went over, never went above, never went past, didnt go over, didnt go above, never got above,
    never got over, never got past, didnt exceed, never exceeded, no higher, nothing above, nothing over,
    stayed at or below, not higher than, no more than, not more than, never more than, at most a, max of,
    maximum of, a max of, no higher than, never above, not above, never over, not over, no worse than,
    never worse than, never higher than, up as far as, topped out at, topping out at, maxed out at, maxed
    at, worst was, worst was a, peak of, peaking at, peaked at, peaked at a, worst it got was, worst it
    got was a, highest was, at its worst a, hit, hit a, reached a, touching, went up to, goes up to, went
    as high as, got up to, got to, gets to, gets up to, spiked to, spikes to, spiking to, jumped to,
    climbed to, crept up to, shot up to, up to about, up to around, as high as, as much as, as bad as
  `,
  limit: `
    less than, more than, over a, under a, below a, above a, at least, at least a, fewer than, greater
    than, higher than, lower than a, upwards of, north of a, not even, a bit more than, a bit less than, a
    bit over, a bit under, just over, just under a, well over, well under, closer to
  `,
  maybe: `
    maybe, perhaps, possibly, maybe a, perhaps a, might be, might be a, sometimes a, sometimes even,
    occasionally a, and sometimes, sometimes up to, could be, could be a, probably, probably a, prob,
    probs, then a, and later, going on
  `,
} satisfies Partial<Cues>

const smallWords = {
  article: `
    a, an, about, about a, around, around a, roughly, approx, approximately, circa, like a, the, my, some,
    at a, at, at about, at about a, at around, at around a, on a, of about, of around, of a, sort of, kind
    of, kinda, sorta, say, nearly a, solid, bout, bout a, or thereabouts, only a, just a, barely a,
    still a, still at, still at a, still about, still about a, still around, still around a, today a, was
    a, for, for the, with, with a, this, that, total, in total, altogether, exactly, precisely, bang on,
    definitely a, definitely, mostly a, quite a, almost a, more like, more like a, a steady, steady at,
    stable at, holding at, sitting at, sitting at a, hovering around, hovering at, hovering about, hovering
    round, hovering around a, hovering round a, hovering at a, round a, round about, round about a, sitting round, sitting
    around, sitting around a, i
    think, id guess, i guess, i reckon, reckon, guess, rated, scored, number, is like, about the, in at,
    coming in at, overall about, worth, i would guess, prolly, a strong, a weak, a low, a high, strong,
    weak
  `,
  be: `
    is, its, it is, are, be, being, feels, feel, felt, feeling, feels like, feels like a, felt like, felt
    like a, seems, got up, stays, stayed, remains, remained, stands, stands at, sits, sits at, still,
    still in, still in the, still in my, has been, have been, went, goes, gone to, came, comes, comes in
    at, got down, has, have, had, having, im, i am, i was, is still, was still, is now, was about, was
    around, was like, is about, is around, were about, says, reads, marked, runs, going, is at, was at,
    kept, hangs around, is in, is in the, is in my, in it, in there
  `,
  soft: `
    set it off, set off, set me off, sets it off, set that off, set things off, setting it off,
    in order, in that order, in your order, in the order you asked, bc, bcs, bcoz, cuz, coz of, cos of, bc of,
    while i, because, cos, cause, coz, rn, if i, tho, fr, bruh, period, comma, full stop,
    new line, forgot to log, forgot to answer, forgot to reply, forgot to report, missed logging, no new
    pain, no extra pain, no worse pain, no increase in pain, no change in pain, no added pain, no
    additional pain, what a, what the, i, me, it, you, we, he, so, too, very, really, again, well, pretty,
    quite, bit, a bit, little bit, a little, bit of, there, here, oh, hi, hello, hey, morning coach,
    coach, yo, lol, haha, lmao, hmm, um, uh, er, erm, ugh, argh, please, pls, plz, mate, bro, dude, buddy,
    update, report, log, checkin, check in, checking in, heres mine, result, results, numbers, number is,
    overall i, i have, ok so, right so, so far, all in all, all told, more or less, basically, literally,
    honestly, tbh, ngl, fyi, btw, imo, though tbh, sir, maam, right then, well then, anyway, always, my
    day, as always, at all, whatsoever, my number, things, thing, feels ok, feeling ok, all right,
    alright, everything ok, all ok, xx, xxx, slow day, good morning, good evening, good afternoon, good
    night, evening all, morning all, hiya, and my, and the, annoyingly, sadly, luckily, fortunately,
    unfortunately, finally, side note, note, actual, both fine, that was, thats, that is, this is, there
    was, there is, theres, yep so, but still, down there, this time, symptoms, symptom, numb, numbness,
    pins and needles, tingly, pins, needles, signs, sign
  `,
} satisfies Partial<Cues>

const talk = {
  correction: `
    correction, i mean, i meant, meant, make that, make it, should be, should have been, shouldve been,
    should say, meant to say, i meant to say, scratch that, no wait, wait no, wait, rather, oops, whoops,
    my mistake, typo, edit, that should be, that should have been, that should read, it should be, change
    that to, change it to, change to, amend, amend to, fix, fixed, not what i said, strike that, wrong,
    was wrong, my bad, mistyped, i mistyped, misread, fat fingers, ment, i ment, sory i meant, sorry i
    meant, sorry i mean, sorry meant, sorry that should be, sorry make that, sorry correction, sorry
    wrong, no sorry, oops i meant, no i meant, no i mean, autocorrect, in fact, actually no, no actually,
    ooops, woops, jk, just kidding, only kidding, kidding, joking, just joking, only joking, wait no make that,
    no make that, no make it, no wait make that, no scratch that, no hang on, hang on, no hold on
  `,
  sorry: 'actually, sorry, soz, apologies, sry, srry, pardon, sori, actually it was, actually its',
  wrote: 'i put, i said, i wrote, i entered, i typed, i logged, i sent, i pressed, i told you',
  later: `
    next, the coming, coming, if, tomorrow, will do, will, ill do, ill try, ill be, ill have, ill get,
    going to do, gonna do, gonna, about to do, about to, plan to, planning, planning to, planning on, hope
    to, hoping to, hoping for, going for, aiming for, aiming at, aim for, aim to, intend to, later i will,
    tmrw, tomoz, tmr, try to do, want to do, due on, should be able to, still have to, have to do, need to
    do, will try, gotta do, want to get to, tonight ill, later ill, tomorow, tommorow, target, my target,
    goal, my goal, the goal, supposed to do, supposed to be, was meant to do, meant to do, would like, in
    case
  `,
  someone: `
    coach said, coach says, the coach said, physio said, physio says, doc said, doctor said, the doctor said,
    my dad, my mum, my mom, my wife, my husband, my partner, my son, my daughter, my brother, my sister,
    my friend, my mate, a friend, my mother, my father, my neighbour, my neighbor, my kid, my boss, my
    boyfriend, my girlfriend, my colleague, my doctor, the physio said, my physio, my nan, my dog, my
    uncle, my aunt, my crewmate, my coxswain, my coach
  `,
  ask: `
    can i, could i, should i, whens, wheres, hows, whos, shall i, may i, do i, is it, is this, is that, are there, what, whats, how,
    how do, why, would it, would you, will it, does it, does this, can you, could you, should we, any
    chance, how many, how long, how much, what if, is there, wondering if, i wonder, any advice, do you,
    have you, are you, can we, what should, what do, quick question, question, got a question, i have a
    question, wanted to ask, wondering whether, im wondering, i was wondering, any idea, any tips, ok to,
    okay to
  `,
  unit: `
    press ups, push ups, sit ups, pull ups,
    minutes, minute, min, mins, hours, hour, hrs, hr, h, seconds, secs, sec, weeks, wks, months, month,
    years, year, yrs, yr, km, kms, k, m, miles, mile, metres, meters, kg, kgs, kilos, kilo, lbs, lb,
    pounds, stone, g, mg, ml, litres, tablets, tablet, tabs, pills, pill, paracetamol, ibuprofen,
    naproxen, codeine, tramadol, gabapentin, pregabalin, painkillers, painkiller, paracetamols,
    ibuprofens, steps, reps, repetitions, flights, stairs, people, kids, coffees, beers, dogs, beer,
    coffee, times a day, times a night, days off, am today, pm today, oclock, st, nd, rd, th, years old,
    degrees, cm, mm, inches, inch, ft, bpm, watts, splits, times per day, nights, night shifts, shifts,
    meetings, nights in a row, days in a row, more days, more weeks, hour drive, hours drive, mile walk,
    person, flights of stairs, laps, lengths, pieces, strokes, pints, children, cushions, pillows, chairs,
    trips, times last night, calls, emails, hours sleep, hours of sleep, percent better, x better, times
    better, euros, dollars, quid, k row, k erg, min walk, minute walk, min drive, min row, hour flight,
    weekly
  `,
  unitBefore: `
    period cramps, period pains, ${each('tooth/neck/shoulder/stomach/tummy/wrist/elbow/head/ear/eye/hand/jaw', 'pain/pains/ache/aches/cramps')}, toothache, headache, migraine, earache,
    sleep, sleep score, anxiety, anxiety level, worry, happiness, enjoyment, difficulty, appetite, focus,
    hunger, weight, floor, heart rate, pulse, temperature, temp, dose, lesson, exertion, perceived exertion,
    workload, alertness, recovery, readiness, wellbeing, well being, turned, hydration, energy level,
    energy levels, energy, stress level, stress levels, stress, mood, sleep
    quality, effort, effort level, rpe, fatigue, motivation, confidence, motivation level, stress score,
    stiffness, tiredness, comfort, week, wk, day number, day no, rung, stage, phase, step, age, aged,
    room, chapter, exercise number, drill number, episode, season, l, version, page, bus, train number,
    platform, flight, gate, disc l, vertebra, vertebrae, take, took, block, weeknumber, number of weeks,
    grade, drank, ate, ref, order, invoice, since age, kilometre, series, room number, gate number, boat
  `,
  setsOf: 'sets of, rounds of, lots of, reps of, sets, sets x',
  clock: `
    fly at, flying at, fly out at, taxi at, bus at, boat at, shift at, on at, again at, kick off at, alarm for, call at, meeting with, see you at, speak at, talk at, meet you at, call you at, see ya at, back on at, work until, working until,
    at work until, worked until, at work till, working till, worked till, work till, busy until, busy till,
    out until, out till, on shift until, on shift till, up until, up till, stuck until, there until,
    in meetings until, in meetings till,
    back at, back by, back around, back home at, home by, woke at, woke up at, up at, bed at, to bed at,
    asleep at, got up at, home at, finished at, finished
    work at, start at, started work at, work at, awake at, from work at, it is now, arrived at, till
    about, leave at, left at, lunch at, train at, back at work at, dinner at, alarm at, appointment at,
    clock, quarter past, half past, quarter to, slept, slept for, slept about, woke around, woke up
    around, until about, time is, walked, ran, rowed, erged, drove, cycled, swam, drove for, walked for,
    sat for, stood for, meeting at
  `,
  yes: `
    yes, yeah, yep, yup, yea, ya, aye, ye, y, sure, definitely yes, certainly, of course, absolutely,
    correct yes, affirmative, one of these, one of those, uh huh, mhm, si, oui, ja, yes please, yess, yas,
    yess sir, indeed, it does, it did, i do, ok yes, yesss
  `,
  nope: `
    ${DENIALS}, none of the signs, none of your signs, none of these signs, none of those signs, none of that,
    none of the list, none on the list, none from the list, none of the symptoms, none of the red flags,
    none of the warning signs, none of the urgent signs, none of the others, none of the other things,
    none of the other stuff, nothing on the list, nothing from the list, nothing on your list,
    none of your list,
    nope, nah, nay, na, not really, not at all, no thanks, no thank you, nae, negative, none of these,
    none of those, no signs, no signs at all, none of the above, it doesnt, it didnt, i dont, not yet no,
    not quite, noo, non, nein, uh uh, nuh uh, no none, no not really, no nothing
  `,
  thanks: `
    thanks, thank you, thx, ty, cheers, ta, thank u, thanx, thnx, tks, many thanks, thanks a lot, thank
    you so much, thanks so much, thank you very much, tysm, much appreciated, appreciated, appreciate it,
    thanks for everything, thank you for everything, thanks for all, thanks for all your help, thank you for all
    your help, thanks for all of it, thanks for all this, cheers for everything, thanks coach, thank you coach, thanks again, cheers mate, cheers coach, have a good day, have a nice
    day, bye, goodbye, good night coach, see you, talk soon, speak soon, xox, xoxo, gracias, merci, danke,
    god bless, kind regards, regards, best wishes, thankyou, thanks mate, thanks bot, thank you bot
  `,
  ago: 'ago, back from today',
  dayUnit: 'days, day',
  nth: 'st of, nd of, rd of, th of',
} satisfies Partial<Cues>

export const cuesOfGrammar = { ...scope, ...numbersAndJoints, ...smallWords, ...talk, ...looksLike }
