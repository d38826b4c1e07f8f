import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

/** Things that are counted and are none of ours: units, other scores, sets, hours. */
export const otherNumbers = {
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
} satisfies Partial<LexiconData['cues']>
