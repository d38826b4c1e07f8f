import type { LexiconData } from '../schema.ts'

/** How numbers are told and joined: ranges, changes, scales and bounds. */
export const numbersAndJoints = {
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
} satisfies Partial<LexiconData['cues']>
