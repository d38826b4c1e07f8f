import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

/** How far words carry: compared, denied, of another time, made an exception of. */
export const scope = {
  compare: `
    than, than on, than it was, than last, since last, compared to, compared with, compared,
    versus, vs, like, as, as on, unlike, because of, thanks to, due to, relative to,
    as it was, as with, from last, from what it was, what it was
  `,
  hour: 'before, after, until, since, by',
  noBeyond: `
    ${each(
      'did not go/didnt get/didnt go/does not go/doesnt go/has not gone/hasnt gone/not/not going/no numbness/no pain/no symptoms/no tingling/nothing/nothing felt/nothing going on/nothing to report',
      'below/below my/below the/beyond/beyond my/beyond the/further than/further than my/further than the/lower than/lower than my/lower than the/past/past my/past the/under/under my/under the',
    )},
    ${each('never got/never went', 'below/below my/below the/beyond/beyond my/beyond the/further than/further than my/further than the/lower than/lower than my/lower than the/past my/under/under my/under the')},
    never got past the
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
} satisfies Partial<LexiconData['cues']>
