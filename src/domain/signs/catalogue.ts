import type { Care } from '../care.ts'

/**
 * The urgent signs: what exercise must not touch. Levels follow the strictest of the services read, since
 * a message cannot grade strength or feel a pulse. The plain questions stand in text/, the phrases in the lexicon.
 */
interface SignEntry {
  readonly care: Exclude<Care, 'none'>
  /** One of the five for which the client is told to say "possible cauda equina". */
  readonly caudaEquina?: true
  readonly source: string
}

const CES =
  'NHS Lothian and Royal Free patient leaflets (any one sign: emergency department now); Dionne 2019, Musculoskelet Sci Pract 42:125 (sensitivity of single signs 0.19-0.43)'

export const SIGNS = {
  'saddle-numbness': { care: 'emergency', caudaEquina: true, source: CES },
  'bladder-change': { care: 'emergency', caudaEquina: true, source: CES },
  'bowel-change': { care: 'emergency', caudaEquina: true, source: CES },
  'sexual-change': { care: 'emergency', caudaEquina: true, source: CES },
  'both-legs': { care: 'emergency', caudaEquina: true, source: CES },
  'leg-weakness': {
    care: 'emergency',
    source:
      'NHS Lothian (early opinion essential); Thome 2022, Neurosurgery 90:347; one level stricter here, a message cannot grade strength',
  },
  'chest-breath': {
    care: 'emergency',
    source: 'NHS DVT page (with breathlessness or chest pain: ambulance)',
  },
  'stroke-signs': { care: 'emergency', source: 'common practice (face, arms, speech, time)' },
  'tearing-pain': {
    care: 'emergency',
    source: 'NHS text on burst abdominal aneurysm (sudden severe belly or low-back pain, faint: ambulance)',
  },
  'major-injury': {
    care: 'emergency',
    source: 'Downie 2013, BMJ 347:f7095 (fracture after severe trauma 11 %)',
  },
  'self-harm': { care: 'emergency', source: 'common practice: crisis line of the region, a person at once' },
  'fever-unwell': {
    care: 'same-day',
    source:
      'pyogenic spinal infection cohort, Am J Emerg Med 2019 (fever in only 19.7 % of epidural abscess)',
  },
  'calf-swelling': {
    care: 'same-day',
    source: 'NHS DVT page; NICE table of Wells 2003, NEJM 349:1227 (not scored here)',
  },
  'new-numbness': { care: 'same-day', source: 'common practice; worsening deficit listed by NHS Lothian' },
  'severe-unrelenting': { care: 'same-day', source: 'Finucane 2020 (IFOMPT), JOSPT 50:350; common practice' },
  'minor-injury-risk': {
    care: 'same-day',
    source: 'Downie 2013, BMJ 347:f7095 (fracture: steroid use 33 %)',
  },
  'night-pain': { care: 'soon', source: 'Harding, Spine 2005 (213 of 482 had it, none serious)' },
  'weight-loss': { care: 'soon', source: 'Finucane 2020 (IFOMPT), JOSPT 50:350' },
  'night-sweats': { care: 'soon', source: 'Finucane 2020 (IFOMPT), JOSPT 50:350' },
  'cancer-history': {
    care: 'soon',
    source: 'Downie 2013, BMJ 347:f7095 (malignancy: history of cancer 33 %)',
  },
  'new-symptoms-elsewhere': { care: 'soon', source: 'common practice' },
} as const satisfies Record<string, SignEntry>

export type SignId = keyof typeof SIGNS
export const SIGN_IDS = Object.keys(SIGNS) as SignId[]
/** Signs in the order of the catalogue, each once. */
export const inTheirOrder = (signs: readonly SignId[]): SignId[] =>
  signs.length === 0 ? [] : SIGN_IDS.filter((sign) => signs.includes(sign))
export const isSignId = (id: string): id is SignId => Object.hasOwn(SIGNS, id)
export const careOf = (id: SignId): Exclude<Care, 'none'> => SIGNS[id].care
export const isCaudaEquina = (id: SignId): boolean => (SIGNS[id] as SignEntry).caudaEquina === true
