import type { ClassifierSource } from '../classifier.ts'
import type { WeightsSource } from '../weights.ts'
import { bladder } from './en/bladder.ts'
import { bowelsAndSex } from './en/bowels-and-sex.ts'
import { circumstances } from './en/circumstances.ts'
import classifier from './en/classifier.json' with { type: 'json' }
import { cues } from './en/cues.ts'
import { events } from './en/events.ts'
import { everyday } from './en/everyday.ts'
import { harm } from './en/harm.ts'
import { helpers } from './en/helpers.ts'
import { idioms } from './en/idioms.ts'
import { illness } from './en/illness.ts'
import { lookalikes } from './en/lookalikes.ts'
import { mind } from './en/mind.ts'
import { mine } from './en/mine.ts'
import { net } from './en/net/index.ts'
import { oblique } from './en/oblique.ts'
import { ordinary, skipped } from './en/ordinary.ts'
import { patterns } from './en/patterns.ts'
import { places } from './en/places.ts'
import { sensations } from './en/sensations.ts'
import { spellings } from './en/spellings.ts'
import { strength } from './en/strength.ts'
import weights from './en/weights.json' with { type: 'json' }
import type { LexiconSource } from './shape.ts'
import { versionOf } from './version.ts'

/** English, British and American, polite and not. */
export const en: LexiconSource = {
  locale: 'en',
  version: versionOf('en'),
  words: {
    ...cues,
    ...places,
    ...sensations,
    ...bladder,
    ...bowelsAndSex,
    ...idioms,
    ...illness,
    ...strength,
    ...events,
    ...mind,
    ...harm,
    ...helpers,
    ...oblique,
  },
  circumstances: { ...circumstances, ...everyday },
  groups: {
    place: [
      'saddle',
      'groin',
      'seat',
      'wipe',
      'leg',
      'legs',
      'breath',
      'both-legs',
      'left-leg',
      'right-leg',
      'both-sides',
      'other-leg',
      'arm',
      'face',
      'eye',
      'calf',
      'belly',
      'chest',
      'back',
      'head',
    ],
    topic: ['bladder', 'pee', 'loo', 'bowel', 'poo', 'wind', 'erection', 'sex', 'elsewhere'],
    odd: ['odd-word'],
    gone: ['gone-finding'],
    works: ['works-word', 'can-pee', 'can-stand'],
    task: ['leg-task', 'can-stand', 'leg-up'],
    shielded: ['on-purpose', 'spread', 'leg-too', 'also-word', 'actual'],
    'arm-calm': ['slow', 'arm-work'],
    'arm-plain': ['arm-calm', 'from-cold'],
    'leg-side': ['leg', 'left-leg', 'right-leg', 'side-name'],
    'fall-plain': ['fall-idiom', 'thing-slipped'],
    symptom: ['numb', 'numb-noun', 'tingle', 'tingle-noun', 'weak-noun', 'swollen', 'felt-word'],
    thing: [
      'numb-noun',
      'tingle-noun',
      'trouble',
      'loss',
      'weak-noun',
      'leak',
      'pain',

      'swell-strong',

      'cancer',
      'constipated',
      'harm-noun',

      'thing-word',
    ],
    gerund: ['gerund-word', 'tingle', 'leaking', 'swollen'],
    finding: [
      'clench',
      'blood',
      'need-to-go',
      'breath-bad',
      'lost',
      'crash',
      'swollen-soft',
      'coughing',
      'muddle',
      'trip-verb',
      'numb',
      'numb-noun',
      'tingle',
      'tingle-noun',
      'odd-word',
      'trouble',
      'loss',
      'pain',
      'slow-start',
      'strong',
      'cant-hold',
      'cant-go',
      'leak',
      'leaking',
      'often',
      'no-feel',
      'bowel-strong',
      'constipated',
      'sex-fail',
      'sex-strong',

      'weak',
      'weak-noun',
      'weak-verb',
      'cant-see',
      'cant-come',
      'fail',
      'soaked',
      'weak-alone',
      'tripping',
      'leg-task',
      'walk',
      'jelly',
      'tight',
      'chest-strong',
      'chest-maybe',
      'droop',
      'arm-fail',
      'arm-tingle',
      'stroke-strong',
      'blur',
      'eye-strong',
      'balance',
      'tear',
      'tear-strong',
      'fall',
      'fall-minor',
      'crash-strong',
      'fever',
      'unwell',
      'swollen',
      'swell-strong',
      'severe',
      'constant',
      'wakes',
      'wakes-strong',
      'weight',
      'lose',
      'sweats',
      'cancer',
      'lump',
      'harm',
      'harm-noun',
      'harm-maybe',
      'harm-done',
      'harm-means',
      'sore',
      'cant',
    ],
  },
  patterns,
  mine,
  net,
  weights: weights as WeightsSource,
  classifier: classifier as ClassifierSource,
  subjects: {
    saddle: 'saddle-numbness',
    wipe: 'saddle-numbness',
    bladder: 'bladder-change',
    pee: 'bladder-change',
    'can-pee': 'bladder-change',
    'can-stand': 'leg-weakness',
    bowel: 'bowel-change',
    poo: 'bowel-change',
    erection: 'sexual-change',
    'sex-fine': 'sexual-change',
  },
  spellings,
  skipped,
  answers: {
    words: 'no, nope, nah, naw, nay, noo',
    before: `
      i, i'm, im, i've, ive, i'd, id, i'll, my, still, it's, its, there's, theres, no, not, never, nothing,
      can't, cant, cannot, couldn't, couldnt, don't, dont, didn't, didnt, haven't, havent, hasn't, hasnt, won't, wont, isn't, isnt`,
    behind: 'but, though, tho, then, well, cos, because',
  },
  courtesies: 'thanks, thank, thx, ty, cheers, ta, please, pls, plz',
  chatter: `
    thanks, thank, thank you, thx, ty, cheers, please, pls, plz, gracias, hi, hello, hey, hiya,
    haha, ha ha, hahaha, hahahaha, hehe, lol, lmao, rofl`,
  plain: {
    words: `
      zero, one, two, three, four, five, six, seven, eight, session, sessions, sesh, pain, reach, did, done,
      completed, finished, managed, all, and, the, in, at, of, a, about, around, to, only, just, today, morning, evening,
      afternoon, thanks, thank, you, thx, ta, cheers, coach, hi, hello, p, s, x`,
    zones: 'calf, shin, knee, thigh, hamstring, back, buttock, glute, hip, bum, foot, ankle, heel, toe',
    pairs: 'both',
  },
  ordinary: `${ordinary}, ${lookalikes}`,
}
