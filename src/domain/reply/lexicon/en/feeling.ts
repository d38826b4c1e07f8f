import type { LexiconData } from '../schema.ts'

/** Pain, when it is felt, and how it has changed. */
export const feeling = {
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
} satisfies Partial<LexiconData['cues']>
