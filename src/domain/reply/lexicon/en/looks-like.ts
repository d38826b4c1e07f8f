import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

/** More or less of something that is no pain. */
const moreOf = each(
  'more/less',
  'time/work/sleep/rest/coffee/water/energy/stress/stressed/tired/busy/rain/food/sun/sitting time/screen time/meetings/driving tomorrow/than enough/of the same/to come/news soon/info/details/questions/motivation/motivated/confident/rushed/tomorrow/next week/later/gym/walking tomorrow/people/money/fun',
)

/** Phrases in which a word of ours means something else ("back to work", "on my feet", "half an hour"). */
export const looksLike = {
  none: `
    ${moreOf}, on the other foot, shot myself in the foot, best foot forward, foot in the door, wrong foot, on the right foot, on the wrong foot, foot in my mouth, under my feet, heel of bread,
    then nothing, nothing after, nothing after that, nothing afterwards, nothing since, nothing until then, nothing till then,
    let go of, not the pain, not my pain, not because of the pain, not because of pain,
    set foot in, set foot on, set foot, setting foot in, setting foot, set foot outside, foot of the bed, foot of the stairs, foot of the hill, foot the bill,
    one of them at, one of them in, one of them on, one of them with, one of them outside, one of which,
    forgot my phone, forgot my charger, forgot my password, forgot my keys, forgot my glasses, forgot my bag, left my phone, lost my phone,
    said no, says no, say no, saying no, said no to, said no more, says no more,
    delete all, delete all my, delete all my stuff, erase all, erase all my, erase all my stuff, wipe all, wipe all my
    stuff, remove all, remove all my, remove all my stuff, forget all my stuff,
    lazy one, slow one, quiet one, busy one, nice one, weird one, funny one, odd one, strange one,
    in the sun, the sun, some sun, sun is out, sun was out, sun out,
    and everything, and all that, and all, everything else, all over, all around, on the plus side, on the
    bright side, on the other hand, one thing and another,
    back to, back to work, back to normal, back at it, back at work, back on, back on track, back on it,
    back in the boat, back in the gym, back from, back home, back soon, came back, come back, comes back,
    coming back, back later, back again, back and forth, be back, im back, i am back, am back, i m back,
    we are back, get back, got back, getting back, go back, going back, went back, call back, hold back,
    held back, held me back, set back, setback, sent back, bounce back, bounced back, back up, back down,
    back then, laid back, feedback, fight back, back off, backed off, back end, back garden, back seat,
    step back, stepped back, days back, weeks back, months back, years back, back of the net, push back,
    back passage, sat back, lying back, lay back, kick back, on the way back, write back, report back, cut
    back, cutting back, pull back, be right back, welcome back, give back, turn back, look back, looking
    back, played back, on my feet, on his feet, feet up, my feet up, on foot, by foot, on our feet, foot
    off the gas, under foot, foot drop, foot strike, footwear, foot plate, foot stretcher, foot print, one
    foot in front of the other, cold feet, put my foot down, foot fall, on its heels, head to toe, toe the
    line, on my toes, on your toes, bottom line, bottom of the stairs, rock bottom, bottom out, bottom of
    it, hip hop, hip hip, on my knees, on my hands and knees, on hands and knees, knees up, sit on my bum,
    sole reason, sole purpose, on my butt, pain in the arse, pain in the ass, pain in the butt, pain in
    the bum, pain in the backside, pain in the neck, my ass off, my arse off, work my butt off, kicked my
    butt, kicked my ass, kick in the butt, lazy arse, half arsed, half assed, cheeky, cheek of it, back
    burner, high knees, rear view, take a seat, seat belt, car seat, hot seat, on my back, on the back
    foot, front seat, boat seat, seat post, laying on my back, lying on my back, lie on my back, flat on
    my back, on your back, one day, one leg, one side, one thing, one more, no one, this one,
    that one, last one, one of those days, for one, one another, one bit, a good one, a bad one, one sec,
    one minute, one moment, one or the other, one way, bad one, good one, tough one, easy one, hard one,
    one at a time, rough one, one word, day one, any one, anyone, long one, one tough day, one hell of a
    day, one question, one small, one too many, one tiny, big one, two minds, two ways about it, on all
    fours, all fours, high five, five star, nine to five, twenty four seven, ten to, at sixes and sevens,
    two left, for two, cloud nine, six pack, take five, two faced, back to square one, square one, number
    one, one on one, in two minds, to be one, for once, once i, once you, twice as, once again, once more,
    at once,
    once or twice, all at once, once the, once a, twice a, once upon, once in a, twice the, all day long,
    all night, all over, all week, all the time, all along, after all, above all, all around, all round,
    all of a sudden, all sorts, all is well, all well, all better, thats all, that is all, first of all,
    all the best, all gone, all morning, all afternoon, all evening, all of those, all of these, all of
    you, all in one, all quiet, best of all, not all there, all the same, once and for all, all the more,
    hi all, all that, of all, all my life, all systems go, is all, all too, all i, for all, of them all,
    all is good, all going well, all that bad, all year, all about, all ears, all alone, thats about all,
    all yours, all the while, half an hour, half a mile, half hour, half a day, half asleep, half time,
    half dead, half the time, half term, half marathon, half the night, half the day, other half, better
    half, half as, half of the day, half of the night, half expecting, half way house, half decent, half
    ok, half the pain, half a tablet, got worse, got better, do not, do my, getting better, get better,
    feel better, feeling better soon, get well, pain killers, pain killer, pain meds, pain relief, pain
    management, pain medication, pain tablets, pain clinic, no pain killers, no pain meds, no pain relief,
    without pain killers, without painkillers, no pain no gain, pain patch, growing pains, what a pain,
    not only, not just, no doubt, not sure, no idea, no worries, no problem at all, no wonder, no rush, no
    matter, not to mention, no excuses, no reason, no clue, why not, if not, or not, not least, no biggie,
    not long, not a lot, not surprised, not surprisingly, cant complain, cant wait, dont worry, dont know,
    do not know, dont think, not gonna lie, not going to lie, couldnt be better, cant remember, cant
    really say, wouldnt say, dont mind, no fun, no news, not that i can think of, no luck, not ideal, no
    joke, not tired, nothing special, nothing to add, nothing else, nothing else to report, nothing much,
    nothing to report, nothing major, nothing else new, nothing serious, nothing too bad, no complaints,
    no dramas, no drama, nothing dramatic, no biggy, no excuse, nothing to worry about, no need, no
    surprise, no surprises, right now then, right after, right before, right away, right through, all
    right then, not right, thats right, right there, right where, right on, righto, right as rain, right
    okay, right ok, quite right, the right way, is that right, put right, right lads, get it right, right
    thing, left work, left home, left it, left over, one left, i left, whats left, left off, have left,
    left the house, nothing left, left early, left late, time left, left out, only one left, left me,
    leave it, left in me, left alone, days left, weeks left, did not, did well, did ok, did fine, did
    good, did great, did me in, did my best, well done, get done, done in, done for, over and done with,
    done and dusted, done my back in, did my back in, done with, am i done, did too much, did a lot, did
    loads, did sleep, did walk, did feel, did you, did have, did hurt, got to go, got a, got the, got
    some, got my, got no, got stuck, got wet, got home, got the flu, got caught, got so, got really, got
    into, got out, got over, got enough, lots to do, nothing to do, things to do, work to do, stuff to do,
    much to do, what to do,
    how to do, finished work, finished early, finished late, finished my shift,
    managed to, did get, i do think, do feel, do have, do think, do want, do need, do get, do it
    again, do more, do less, do well, do better, do ok, do i need, do this, do that, do what, do so, do
    with, do know, training for, level with, level headed, score sheet, burning rubber, burn out, burnt,
    music score, level crossing, training day, training plan, good level, high level, low level, from
    work, from home, from now on, from time to time, after a while, like that, as i, as it, as well, as
    well as, as soon as, as long as, as much, as far, like this, like i, over the, over it, after all
    that, since i, since we, since then, before i, before we, before work, after i, after we, before that,
    as if, until i, from here, from there, like normal, like usual, over there, before anything, after
    that i, over done, as good as, as good as new
  `,
} satisfies Partial<LexiconData['cues']>
