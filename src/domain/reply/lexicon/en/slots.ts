import type { LexiconData } from '../schema.ts'

/** Zones in a rower's own words; hip counts as buttock, groin and hamstring as thigh, shin as calf. */
export const zones: LexiconData['zones'] = {
  none: 'none anywhere, none anywhere at all, nothing anywhere, nothing anywhere at all, nowhere, nowhere at all, not anywhere, none of it, no where',
  back: `
    back, my back, the back, lower back, low back, lowerback, lower part of my back, lumbar, lumbar spine,
    spine, backs, small of my back, small of the back, in back, sacrum, waist, beltline, belt line, low
    spine, mid back, lower spine, sacral, sacroiliac, si joint, sij, back only, only back, just back, lumber, spinal,
    back at a, back at about, back at about a,
    backache, backpain, lowback, bk pain, bk only, lower bk, low bk
  `,
  buttock: `
    buttock, buttocks, butt, butts, bum, bums, bottom, glute, glutes, gluteal, gluteus, cheek, cheeks, bum
    cheek, butt cheek, arse, ass, backside, behind me, rear, rear end, tush, tushie, hip, hips, hip joint,
    piriformis, seat, sit bone, sit bones, sitting bone, sitbone, sitbones, tailbone, tail bone, coccyx,
    rump, booty, derriere, hip bone, hipbone, buttcheek, bumcheek
  `,
  thigh: `
    thigh, thighs, upper leg, upper legs, groin, groins, hamstring, hamstrings, hammy, hammie, hammies,
    hammys, hamstrung, quad, quads, quadriceps, top of my leg, top of the leg, upper part of my leg, upper
    part of the leg, adductor, adductors, inner leg above the knee, biceps femoris, itb, it band
  `,
  knee: `
    knee, knees, kneecap, kneecaps, knee cap, knee joint, popliteal, back of the knee, back of my knee,
    behind the knee, behind my knee
  `,
  calf: `
    calf, calfs, calves, calve, calfes, shin, shins, shinbone, shin bone, lower leg, lower legs, calf
    muscle, calf muscles, soleus, gastroc, gastrocnemius, lower part of my leg, lower part of the leg,
    tibia, tibialis, fibula
  `,
  foot: `
    foot, feet, foots, toe, toes, big toe, little toe, small toe, pinky toe, ankle, ankles, heel, heels,
    sole, soles, instep, achilles, ball of my foot, ball of the foot, arch of my foot, arch of the foot,
    metatarsal, tippy toes, outer foot, forefoot, midfoot, plantar
  `,
}

export const pairs: LexiconData['pairs'] =
  'buttocks, butts, cheeks, glutes, hips, thighs, hamstrings, hammies, quads, upper legs, knees, calves, calfs, shins, lower legs, feet, ankles, heels, toes, soles, groins, bums'

export const numbers: LexiconData['numbers'] = {
  0: 'zero, nought, naught, zilch, nil, nada, zip',
  1: 'one, wun, a single, single, one single',
  2: 'two, tow',
  3: 'three, tree',
  4: 'four, fore',
  5: 'five, fiv',
  6: 'six',
  7: 'seven',
  8: 'eight',
  9: 'nine',
  10: 'ten',
  11: 'eleven',
  12: 'twelve',
  13: 'thirteen',
  15: 'fifteen',
  20: 'twenty',
}

export const counts: LexiconData['counts'] = {
  1: 'once, one time, a single time, just the once',
  2: 'twice',
  3: 'thrice',
}

export const gerunds: LexiconData['gerunds'] = 'ing'

export const singular: LexiconData['singular'] = 'session, sesh, workout, round, routine, circuit'

/** A small word that dictation writes for a number. */
export const homophones: LexiconData['homophones'] = { 2: 'to, too', 4: 'for', 8: 'ate' }

export const sides: LexiconData['sides'] = {
  left: 'the left one, my left one, left one again, left, lft, lt, lefty, lhs, left hand, left sided, leftie',
  right:
    'the right one, my right one, right one again, right, r, rt, rgt, rhs, right hand, right sided, righty',
}

/** Further back than is read without a question, so that it is asked about. */
export const daysBack: LexiconData['daysBack'] = {
  7: 'a week ago i did, one week ago i did, a week ago we did, a week ago did',
  0: 'today, todays, tday, todays one, todday, tody',
  1: `
    yesterday, yday, yesterdays, yest, ystd, yesterd, yester, yesturday, yestarday, the day before, day
    before
  `,
  2: `
    day before yesterday, the day before yesterday, day before yday, other day before yesterday,
    ereyesterday
  `,
}
export const weekdays: LexiconData['weekdays'] = {
  1: 'monday, mon, mondays, on monday, last monday',
  2: 'tuesday, tue, tues, tuesdays, last tuesday',
  3: 'wednesday, wed, weds, wednesdays, wednsday, wensday, last wednesday',
  4: 'thursday, thu, thurs, thur, thursdays, last thursday',
  5: 'friday, fri, fridays, last friday',
  6: 'saturday, saturdays, last saturday',
  7: 'sunday, sun, sundays, last sunday',
}
/** "yesterday's drive", "Monday's row" */
export const daysOfThings: LexiconData['daysOfThings'] =
  'yesterdays, ydays, mondays, tuesdays, wednesdays, thursdays, fridays, saturdays, sundays, todays'

export const months: LexiconData['months'] = {
  1: 'january, jan',
  2: 'february, feb',
  3: 'march, mar',
  4: 'april, apr',
  5: 'may, may the',
  6: 'june, jun',
  7: 'july, jul',
  8: 'august, aug',
  9: 'september, sept, sep',
  10: 'october, oct',
  11: 'november, nov',
  12: 'december, dec',
}
