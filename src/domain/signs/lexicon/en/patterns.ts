import type { LexiconSource } from '../shape.ts'

const NUMB = 'numb|numb-noun'
const FEELING = 'numb|numb-noun|tingle|tingle-noun|odd|odd-word'
const WEAK = 'weak|weak-noun'

/** Which combinations tell of which sign. The wider a pattern, the more often it asks instead of telling. */
export const patterns: LexiconSource['patterns'] = [
  // saddle
  ['saddle-numbness', `saddle & ${NUMB}|tingle|tingle-noun`, { within: 5, across: 'comma' }],
  ['saddle-numbness', 'saddle & odd|odd-word|trouble', { within: 4, unsure: true, sure: 'new' }],
  ['saddle-numbness', 'saddle & no-feel', { within: 4, across: 'comma' }],
  [
    'saddle-numbness',
    `wipe & ${NUMB}|no-feel|tingle|tingle-noun|odd|odd-word`,
    { within: 5, across: 'comma' },
  ],
  [
    'saddle-numbness',
    `seat & ${NUMB}|no-feel|tingle|tingle-noun`,
    { within: 4, across: 'comma', unsure: true, sure: 'spreading-to' },
  ],
  ['saddle-numbness', 'seat & odd|odd-word', { within: 2, unsure: true }],
  ['saddle-numbness', `groin & ${NUMB}|no-feel`, { within: 3, across: 'comma', unsure: true }],
  ['saddle-numbness', 'saddle yes', { within: 1, across: 'comma' }],
  ['saddle-numbness', 'saddle-word', { alone: true, unsure: true }],
  // bladder
  ['bladder-change', 'strong', {}],
  ['bladder-change', 'cant-hold', { unsure: true, sure: 'toilet', unless: 'gym' }],
  ['bladder-change', 'cant-go', { unsure: true, sure: 'toilet', unless: 'going-place' }],
  ['bladder-change', 'cant-go', { needs: 'need-loo' }],
  [
    'bladder-change',
    'bladder|pee & cant|slow-start|no-feel|loss|cant-go|cant-hold|leak|leaking',
    { within: 4, across: 'comma' },
  ],
  [
    'bladder-change',
    'bladder|pee & trouble|odd|odd-word|often|numb',
    { within: 4, across: 'comma', unsure: true, sure: 'new' },
  ],
  ['bladder-change', 'bladder weak|weak-noun|pain|numb|numb-noun', { within: 1, unsure: true }],
  ['bladder-change', 'weak|weak-noun|numb bladder', { within: 0, unsure: true }],
  [
    'bladder-change',
    'loo & cant|no-feel|loss|leak|odd|odd-word|trouble',
    { within: 4, across: 'comma', unsure: true, unless: 'walk-there' },
  ],
  ['bladder-change', 'no-feel need-to-go', { within: 3 }],
  ['bladder-change', 'not pee', { within: 3, isNegative: true, needs: 'long' }],
  ['bladder-change', 'leaking-word', { alone: true, unsure: true, unless: 'not-me-leak' }],
  ['bladder-change', 'slow-start & stream-word', { within: 3 }],
  ['bladder-change', 'loss', { alone: true, unsure: true }],
  ['bladder-change', 'bladder yes', { within: 1, across: 'comma' }],
  ['bladder-change', 'bladder', { alone: true, unsure: true }],
  // bowel
  ['bowel-change', 'bowel-strong', {}],
  [
    'bowel-change',
    'bowel|poo|wind & cant|no-feel|loss|cant-go|cant-hold|leak|leaking',
    { within: 4, across: 'comma' },
  ],
  [
    'bowel-change',
    'bowel|poo & trouble|odd|odd-word|numb|numb-noun|often|weak|slow-start',
    { within: 4, across: 'comma', unsure: true, sure: 'new' },
  ],
  ['bowel-change', 'constipated', { unsure: true }],
  ['bowel-change', 'not poo', { within: 3, isNegative: true, unsure: true }],
  ['bowel-change', 'cant-hold', { needs: 'bowel-only' }],
  ['bowel-change', 'saddle & leak|leaking|loss', { within: 3, unsure: true }],
  ['bowel-change', 'bowel yes', { within: 1, across: 'comma' }],
  ['bowel-change', 'bowel', { alone: true, unsure: true }],
  // sexual
  ['sexual-change', 'sex-strong', {}],
  ['sexual-change', 'erection & sex-fail|trouble|cant|odd|odd-word|loss', { within: 4, across: 'comma' }],
  ['sexual-change', 'no|not|nil erection', { within: 4, isNegative: true, unless: 'trouble' }],
  [
    'sexual-change',
    'sex & sex-fail|numb|numb-noun|no-feel|loss|odd|odd-word',
    { within: 4, across: 'comma' },
  ],
  ['sexual-change', 'sex & trouble|cant', { within: 3, unsure: true }],
  ['sexual-change', 'saddle & sex-dead', { within: 4, across: 'comma', unsure: true }],
  ['sexual-change', 'sex-fine', { isDenial: true }],
  ['sexual-change', 'erection', { alone: true, unsure: true }],
  // both legs
  [
    'both-legs',
    `both-legs & ${FEELING}|pain|${WEAK}|no-feel|trouble`,
    { within: 4, across: 'comma', unless: 'muscle' },
  ],
  ['both-legs', `both-legs & ${FEELING}|pain|${WEAK}|sore`, { within: 4, across: 'comma', unsure: true }],
  ['both-legs', `legs & ${NUMB}|tingle|tingle-noun|no-feel`, { within: 3, across: 'comma', unsure: true }],
  ['both-legs', `legs & ${WEAK}`, { within: 3, unsure: true }],
  ['both-legs', 'legs & pain', { within: 3, unsure: true, unless: 'muscle' }],
  [
    'both-legs',
    `both-sides & ${NUMB}|tingle|tingle-noun|pain|${WEAK}`,
    { within: 4, across: 'comma', unsure: true, unless: 'back' },
  ],
  [
    'both-legs',
    `other-leg & ${FEELING}|pain|${WEAK}|started-too`,
    { within: 5, across: 'comma', unsure: true, sure: 'too' },
  ],
  ['both-legs', `other-leg too`, { within: 2, unsure: true }],
  ['both-legs', `leg & leg-too`, { within: 3, across: 'comma', unsure: true }],
  ['both-legs', 'both-legs yes', { within: 1, across: 'comma' }],
  ['both-legs', 'both-legs', { alone: true, needs: 'in-both', unsure: true }],
  // weakness
  ['leg-weakness', 'weak-alone', {}],
  [
    'leg-weakness',
    `leg|legs|both-legs|other-leg & ${WEAK}`,
    { within: 4, across: 'comma', unless: 'lift-talk' },
  ],
  ['leg-weakness', 'cant leg-task', { within: 2, unless: 'only-pain' }],
  ['leg-weakness', 'cant leg-task', { within: 2, unsure: true }],
  ['leg-weakness', 'cant walk', { within: 2, unless: 'only-pain' }],
  ['leg-weakness', 'cant walk|walk-far', { within: 2, unsure: true }],
  ['leg-weakness', 'leg & cant', { within: 2, across: 'comma', unsure: true, needs: 'move-word' }],
  ['leg-weakness', 'tripping', { unsure: true, unless: 'travel' }],
  ['leg-weakness', 'weak-verb', { alone: true, unsure: true }],
  ['leg-weakness', 'leg|legs|both-legs & jelly', { within: 3, unsure: true, unless: 'muscle' }],
  ['leg-weakness', 'weak-noun', { alone: true, unsure: true, sure: 'new' }],
  ['leg-weakness', 'weak-word', { alone: true, unsure: true }],
  // numbness of one leg
  [
    'new-numbness',
    `leg|other-leg & ${NUMB}|no-feel`,
    { within: 4, across: 'comma', unsure: true, sure: 'spread' },
  ],
  ['new-numbness', 'leg|other-leg & tingle|tingle-noun', { within: 4, across: 'comma', needs: 'spread' }],
  ['new-numbness', 'tingle|tingle-noun', { alone: true, needs: 'spread' }],
  ['new-numbness', `numb-noun`, { alone: true, unsure: true, sure: 'spread' }],
  ['new-numbness', 'numb-word', { alone: true, unsure: true, sure: 'spread' }],
  ['new-numbness', 'tingle|tingle-noun', { alone: true, denialOnly: true }],
  // chest, breath
  ['chest-breath', 'chest-strong', { unless: 'exertion' }],
  ['chest-breath', 'chest-strong', { unsure: true }],
  ['chest-breath', 'chest & tight', { within: 4, across: 'comma', unless: 'exertion' }],
  ['chest-breath', 'chest & tight', { within: 4, across: 'comma', unsure: true }],
  ['chest-breath', 'chest-maybe', { unsure: true, unless: 'exertion' }],
  // stroke
  ['stroke-signs', 'stroke-strong', {}],
  ['stroke-signs', 'face & droop', { within: 4, across: 'comma', unless: 'place-else' }],
  ['stroke-signs', 'face & arm-fail', { within: 4, across: 'comma', unsure: true, sure: 'sudden' }],
  [
    'stroke-signs',
    'arm & arm-fail',
    { within: 4, across: 'comma', unsure: true, sure: 'sudden', unless: 'slow' },
  ],
  ['stroke-signs', 'arm & arm-fail', { within: 4, across: 'comma', needs: 'sudden' }],
  [
    'stroke-signs',
    'arm|face & arm-tingle',
    { within: 4, across: 'comma', unsure: true, needs: 'new', sure: 'sudden', unless: 'slow' },
  ],
  [
    'stroke-signs',
    'eye & blur',
    { within: 3, across: 'comma', unsure: true, needs: 'new', sure: 'sudden', unless: 'slow' },
  ],
  ['stroke-signs', 'eye-strong|balance', { unsure: true, needs: 'new', sure: 'sudden', unless: 'slow' }],
  // elsewhere
  ['new-symptoms-elsewhere', 'arm & arm-fail', { within: 4, across: 'comma' }],
  ['new-symptoms-elsewhere', 'arm & arm-tingle', { within: 4, across: 'comma', unless: 'arm-work' }],
  ['new-symptoms-elsewhere', 'face & arm-fail|arm-tingle', { within: 4, across: 'comma' }],
  ['new-symptoms-elsewhere', 'eye & blur', { within: 3, across: 'comma' }],
  ['new-symptoms-elsewhere', 'eye-strong', {}],
  ['new-symptoms-elsewhere', 'balance', { unless: 'balance-drill' }],
  // tearing
  ['tearing-pain', 'tear-strong', {}],
  ['tearing-pain', 'belly|chest|back & tear', { within: 4, across: 'comma' }],
  ['tearing-pain', 'pain & tear', { within: 3, unsure: true }],
  ['tearing-pain', 'belly & pain & sudden-belly', { within: 4, across: 'comma' }],
  ['tearing-pain', 'belly & pain', { within: 4, needs: 'faintish' }],
  [
    'tearing-pain',
    'back|pain & faintish',
    { within: 6, across: 'comma', needs: 'sudden-belly', unsure: true },
  ],
  ['tearing-pain', 'belly & pain', { within: 3, unsure: true }],
  // injury
  ['major-injury', 'crash-strong', {}],
  ['major-injury', 'fall height', { within: 5 }],
  ['major-injury', 'fall-minor|fall', { needs: 'worsened', unless: 'fall-idiom' }],
  ['minor-injury-risk', 'fall-minor|fall', { anywhere: 'bones', unless: 'fall-idiom' }],
  ['minor-injury-risk', 'fall-minor', { unsure: true, unless: 'fall-idiom' }],
  // fever, clot
  ['fever-unwell', 'fever', {}],
  ['fever-unwell', 'unwell', { unsure: true, sure: 'back' }],
  ['calf-swelling', 'calf & swollen', { within: 4, across: 'comma' }],
  ['calf-swelling', 'legs|both-legs & swollen', { within: 3, across: 'comma', unsure: true }],
  ['calf-swelling', 'swell-strong', {}],
  // pain beyond measure
  ['severe-unrelenting', 'severe', {}],
  ['severe-unrelenting', 'constant & pain', { within: 4, unsure: true }],
  ['severe-unrelenting', 'pain cant-hold', { within: 3, unsure: true }],
  // slow signs
  ['night-pain', 'wakes-strong', { unless: 'settles' }],
  ['night-pain', 'wakes & pain|back|leg|legs|sore', { within: 5, across: 'comma', unless: 'settles' }],
  ['weight-loss', 'weight', { unless: 'on-purpose' }],
  ['weight-loss', 'weight', { unsure: true, needs: 'without-trying' }],
  ['weight-loss', 'lose weight-count', { within: 2, unless: 'on-purpose' }],
  ['night-sweats', 'sweats', {}],
  ['cancer-history', 'cancer', {}],
  ['cancer-history', 'lump', { unsure: true }],
  // self-harm
  ['self-harm', 'harm', {}],
  ['self-harm', 'harm-noun', {}],
  ['self-harm', 'harm-maybe', { unsure: true }],
]

/** Small classes that only the patterns use. */
export const helpers: LexiconSource['words'] = {
  elsewhere: `drill, drills, session, sessions, exercise, exercises, sleep, app, bot, form, rung, work, job, mood, energy, appetite, walking, sitting, standing, driving, rowing, plan, prompt, link, button, video, stretch, stretches, band, sliders, glide, press, press up, half press, weather, family, training, gym, message, reply`,
  'thing-word': `difficulty, pins, swelling, swellings, redness, dizziness, giving way, tripping, blurred vision, slurred speech, shortness of breath, chest pain, dragging, slapping, stumbling`,
  'gerund-word': `tripping, dragging, slapping, stumbling, falling, buckling, wetting, dribbling, straining, drooping, hesitancy, giving way, hot, red, swelling, swollen`,
  yes: `yes, yep, yeah, yup, aye, present, positive, affirmative, y, tick, ✓, ✅, true`,
  'leaking-word': `leaking, leaked, leaks, leak, leakage, leakages, dribbling, dribbles, incontinence, accident, accidents`,
  'stream-word': `stream, flow, my stream, my flow, urine flow, urine stream, the stream, to go, come out, get going, when i go, on the loo, on the toilet, to start`,
  'sex-dead': `nothing happens, nothing happened, not working, doesn't work, doesnt work, won't work, wont work, stopped working, floppy, limp, soft, dead, failing, no response, not responding, unresponsive, won't stand, not interested, no joy, no reaction, lost interest, nothing going on, no life`,
  'weak-word': `weak, weaker, weakened, no strength, no power, lost strength, lost power, paralysed, paralyzed`,
  'numb-word': `numb, numbed, numbish, gone numb, went numb, goes numb, going numb, no feeling, no sensation, lost feeling, lost the feeling, lost sensation, losing feeling`,
  'saddle-word': `saddle area, private parts, privates, genitals, down below, down there, back passage, undercarriage, nether regions, perineum, crotch, genital area, intimate area, saddle region`,
  'started-too': `too, as well, aswell, also, started, starting, joined in, joining in, kicking off, playing up, copying, spread, spreading, spread to, gone into, moved into, crossed over, moved across, catching it, catching up, begun, same thing, same story, got it`,
  'lift-talk': `weak spot, weak link, weak point, weak coffee, weak tea, weak signal, weak wifi, drop set, drop sets, dropped the, drag factor, drag race, dragged on, dragging on, drags on, day dragged, band drops`,
}
