import type { LexiconData } from '../schema.ts'

/** Words that may stand between a name and its number, or anywhere, and change nothing. */
export const smallWords = {
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
} satisfies Partial<LexiconData['cues']>
