import type { LexiconData } from '../schema.ts'

/** What got in the way of a session, as an answer to that question. */
export const barriers: LexiconData['barriers'] = {
  time: `
    time, no time, busy, too busy, work, lack of time, time pressure, not enough time, hectic, schedule,
    kids, travel, travelling, traveling, long days, deadlines, family, overtime, meetings, no spare time,
    shifts, rushed, out of time
  `,
  pain: `
    pain, too painful, hurts, it hurts, sore, too sore, hurt too much, hurts too much, the pain, flare,
    flare up, back pain, ache, too much pain, pain mostly, my back, because it hurt, makes it worse, made
    it worse
  `,
  'unsure-how': `
    unsure, unsure how, not sure how, dont know how, do not know how, didnt know how, confused, confusing,
    how to do it, how to do them, technique, dont understand, not clear, dont get it, didnt understand,
    form, instructions, forgot how, not confident
  `,
  'no-kit': `
    kit, no kit, no band, band, no equipment, equipment, no gear, gear, lost my band, broken band, band
    broke, no space, no mat, mat, no anchor, nowhere to do it, no room, dont have a band, left my band, no
    strap
  `,
  other: `
    other, something else, else, another reason, motivation, tired, forgot, ill, sick, no reason, no
    motivation, lazy, cold, flu, other reason, too tired, other stuff, forgetful, unwell, bored, fed up,
    none of these, none of those, different reason, cant be bothered, fatigue, exhausted, mood, low mood
  `,
}
