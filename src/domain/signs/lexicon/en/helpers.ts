import type { LexiconSource } from '../shape.ts'

/** Small classes that only the patterns use. */
export const helpers: LexiconSource['words'] = {
  elsewhere: `
    drill, drills, session, sessions, exercise, exercises, sleep, app, bot, form, rung, work, job, mood,
    energy, appetite, walking, sitting, standing, driving, rowing, plan, prompt, link, button, video,
    stretch, stretches, band, sliders, glide, press, press up, half press, weather, family, training, gym,
    message, reply`,
  /** Seats, so that their name is taken for nothing else. */
  'seat-thing': `
    (on/in) (the/my/a) (sofa/armchair/settee/couch),
    on a (high/bar/kitchen/low/wooden/) stool, the saddle stool, (bar/high/kitchen/saddle/foot/piano/milking/step/shower/camping/fishing/wooden/folding/two legged/three legged) (stool/stools),
    (sat/sit/sitting/stood/stand/standing/perched/perch/foot) (up/) on (a/my/the bar/the kitchen/the milking) (stool/stools), footstool, footstools,
    (drum/drummer's/lab/shop/office/work/counter/music/pub/practice/desk/camp) (stool/stools), (there are/there's/have/had/got/with/only/bring) (stools/high stools), the stool (has/had/with/without/they/at the)`,
  'thing-word': `
    difficulty, pins, swelling, swellings, redness, dizziness, giving way, tripping, blurred vision,
    slurred speech, shortness of breath, chest pain, dragging, slapping, stumbling, chest pains,
    breathlessness, breath (trouble/problems/difficulty/issues), breathing (difficulty/difficulties/problems/trouble), chest tightness, blackouts,
    weight loss, night sweats, night pain, facial droop, face droop, double vision,
    (vision/balance/speech/eyesight/sight) (problems/trouble/issues/changes),
    loss of (vision/sight/balance/consciousness/appetite), falls, injury, fever, fevers, chills,
    temperature, high temperature, shivers, dizzy spells, headache, headaches, accidents, leaks`,
  'gerund-word': `
    tripping, dragging, slapping, stumbling, falling, buckling, wetting, dribbling, straining, drooping,
    hesitancy, giving way, hot, red, swelling, swollen`,
  yes: `yes, yep, yeah, yup, aye, present, positive, affirmative, y, tick, ✓, ✅, true`,
  'child-wet': `
    (as a/when i was a/when a/as a small/as a little) (kid/child/boy/girl/toddler/bairn/nipper/youngster) (i/) (used to/would/) (wet/pee/peed/wee/weed) (the/my/in the/in my/) (bed/pants/myself/),
    (i/) (used to/would/) (wet/pee/peed/wee/weed) (the/my/in the/in my/) (bed/pants/myself) (as a/when i was a/as a small/as a little/when i was) (kid/child/boy/girl/toddler/bairn/nipper/youngster/little/small)`,
  'wish-lift': `
    (wish/wished/if only) (i/) could (still/) (lift/raise/move/wiggle/bend) (my/the) (left/right/) (foot/feet/toes/toe/big toe/leg/ankle)`,
  'wish-pee': `(wish/wished/if only) (i/) could (just/still/) (pee/wee/have a wee/empty my bladder/feel myself pee)`,
  'foot-asleep': `(foot/leg/toe/toes/calf/shin) (fell/has fallen/is fast/stayed/is still/went/has gone) asleep`,
  'leaking-word': `
    i dribble, a drip, more of a drip, just drip, only drip,
    leaking, leaked, leaks, leak, leakage, leakages, dribbling, dribbles, incontinence, accident,
    accidents`,
  /** Said of nothing that is named: most likely of the bladder. */
  'nothing-out': `
    not a (drop/single drop/dribble/trickle), (in/drunk/drank) (and/but) (none/nothing) (came/comes/coming/) out,
    nothing (comes/came/will come/is coming/coming/would come) (out/),
    (never/not/isn't/isnt/don't feel/dont feel/never feel/doesn't feel/doesnt feel/not feeling) (quite/fully/completely/properly/totally/) (empty/emptied),
    (don't/dont/never/doesn't/doesnt/no longer) feel (full/fullness), urge (comes/came/is) (too late/late),
    (only/just) (notice/noticed/realise/realised/find out/found out) (i'm/im/i was/i am/that i'm/that i was) (wet/damp/soaked), (notice/noticed/realise/realised) (i'm/im/i was/i am) (wet/damp)`,
  'stream-word': `
    stream, flow, my stream, my flow, urine flow, urine stream, the stream, to go, come out, get going,
    when i go, on the loo, on the toilet, to start`,
  'sex-dead': `
    nothing happens, nothing happened, not working, doesn't work, doesnt work, won't work, wont work,
    stopped working, floppy, limp, soft, dead, failing, no response, not responding, unresponsive,
    won't stand, not interested, no joy, no reaction, lost interest, nothing going on, no life`,
  'weak-word': `
    weak, weaker, weakened, no strength, no power, lost strength, lost power, paralysed, paralyzed`,
  'numb-word': `
    numb, numbed, numbish, gone numb, went numb, goes numb, going numb, no feeling, no sensation,
    (not a/not a single/not one/not one single/not the slightest/zero/nil) (feeling/sensation),
    lost feeling, lost the feeling, lost sensation, losing feeling`,
  'at-it': `(at/doing) it (too/as well/aswell/also/now), acting up too, playing up too, kicking off too`,
  'started-too': `
    too, as well, aswell, also, started, starting, joined in, joining in, kicking off, playing up, copying,
    spread, spreading, spread to, gone into, moved into, crossed over, moved across, catching it,
    catching up, begun, same thing, same story, got it`,
  'lift-talk': `
    ripped (my/the) (jeans/trousers/shorts/shirt/leggings/pants/top),
    slept like a (log/brick/baby/rock/stone), sleep like a (log/brick/baby/rock/stone),
    sleeping like a (log/brick/baby),
    (driving/drives/drove) me nuts, saturday night fever, (kill/killed) for (a/some/one), i'd kill for,
    id kill for,
    weak spot, weak link, weak point, weak coffee, weak tea, weak signal, weak wifi, drop set, drop sets,
    dropped the, drag factor, drag race, dragged on, dragging on, drags on, day dragged, band drops`,
}
