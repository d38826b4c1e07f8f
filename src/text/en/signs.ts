import { isCaudaEquina, type SignId } from '../../domain/signs/catalogue.ts'

/** The words of one urgent sign. */
export interface SignWords {
  /** For an option of a list, at most 90 characters. */
  readonly label: string
  /** For asking back with yes and no, in plain words, as new or changed. */
  readonly question: string
  /** For the coach: a few words. */
  readonly short: string
}

export const SIGN_WORDS: Readonly<Record<SignId, SignWords>> = {
  'saddle-numbness': {
    label: 'Numb, tingling or odd feeling between my legs, around the back passage, or when I wipe',
    question:
      'Is anything new or changed between your legs that feels numb, tingling or odd? Say yes for your private parts, the back passage, the inner buttocks, or an odd feeling when you wipe.',
    short: 'saddle numbness or tingling',
  },
  'bladder-change': {
    label: 'Hard to start to pee, weak flow, cannot feel it or cannot go, or new leaks',
    question:
      'Is anything new or changed with your pee? Say yes if it is hard to start, weak or leaks, or if you cannot feel it or cannot go.',
    short: 'bladder change',
  },
  'bowel-change': {
    label: 'Losing control of my bowels, or cannot feel when I need to go',
    question:
      'Is anything new or changed with your bowels? Say yes if you lose control, or cannot feel when you need to go.',
    short: 'bowel change',
  },
  'sexual-change': {
    label: 'New loss of feeling or function in my private parts or during sex',
    question:
      'Is there any new or changed loss of feeling or function in your private parts, such as during sex?',
    short: 'loss of sexual feeling or function',
  },
  'both-legs': {
    label: 'Pain, tingling, numbness or weakness in both legs',
    question:
      'Is there new or changed pain, tingling, numbness or weakness in both legs, even if one is only mild?',
    short: 'symptoms in both legs',
  },
  'leg-weakness': {
    label: 'A weak leg or foot: drags, slaps, gives way, trips, cannot stand on toes or heels',
    question:
      'Is a leg or foot weak in a new or changed way? Say yes if it drags, slaps, trips you or gives way, or if you cannot walk, or stand on your toes or heels.',
    short: 'leg or foot weakness',
  },
  'chest-breath': {
    label: 'Chest pain, short of breath, coughing up blood, or collapsed',
    question:
      'Do you have new or changed chest pain, or trouble with your breath? Say yes too if you coughed up blood or had a collapse.',
    short: 'chest pain, breathlessness, blood or collapse',
  },
  'stroke-signs': {
    label: 'Face drops, arm weak or numb, slurred speech, sudden loss of sight or balance',
    question:
      'Has anything new come on suddenly? Say yes for a face that drops on one side, an arm that is weak or numb, slurred speech, or a loss of sight or balance.',
    short: 'possible stroke signs',
  },
  'tearing-pain': {
    label: 'Sudden tearing pain in belly, chest or back, a pulsing belly, or fainting with it',
    question:
      'Do you have new, sudden pain in your belly, chest or back that tears or rips? Say yes too for a pulse you can feel in your belly, or if you fainted with it.',
    short: 'sudden tearing pain',
  },
  'major-injury': {
    label: 'A bad fall, crash or heavy blow, and worse since then',
    question: 'Did you have a bad fall, a crash or a heavy blow, with new or changed symptoms since then?',
    short: 'worse since a major injury',
  },
  'self-harm': {
    label: 'Thoughts of hurting myself, or of not wanting to live',
    question: 'Are you having thoughts of hurting yourself, or of not wanting to live?',
    short: 'thoughts of self-harm',
  },
  'fever-unwell': {
    label: 'Fever, chills, or feeling ill along with the back pain',
    question: 'Do you have a new fever, chills, or a new feeling of being ill along with your back pain?',
    short: 'fever or unwell',
  },
  'calf-swelling': {
    label: 'One calf swollen, hot, red or sore to touch',
    question: 'Is one calf newly swollen, hot, red or sore to touch?',
    short: 'one calf hot or swollen',
  },
  'new-numbness': {
    label: 'New or spreading numbness, or pins and needles, in one leg or foot',
    question:
      'Do you have numbness or pins and needles in one leg or foot that is new, has changed or has spread?',
    short: 'new or spreading numbness, one leg',
  },
  'severe-unrelenting': {
    label: 'Pain of 9 or 10, or pain that no position eases',
    question: 'Is it new or changed that no position eases your pain, not even for a while?',
    short: 'severe pain, no position eases it',
  },
  'minor-injury-risk': {
    label: 'A small fall or knock, and I have thin bones or long use of steroids',
    question:
      'Have you had a new fall or knock, even a small one, and do you have thin bones or long use of steroids?',
    short: 'lesser fall, thin bones or steroids',
  },
  'night-pain': {
    label: 'Pain wakes me at night and does not settle when I change position',
    question:
      'Is it new or changed that pain wakes you at night and does not settle when you change position?',
    short: 'night pain that does not settle',
  },
  'weight-loss': {
    label: 'Losing weight without trying',
    question: 'Is it new that you are losing weight without trying?',
    short: 'weight loss without trying',
  },
  'night-sweats': {
    label: 'Sweats at night that soak my clothes or sheets',
    question: 'Do you have new sweats at night that soak your clothes or sheets?',
    short: 'night sweats',
  },
  'cancer-history': {
    label: 'I have or had cancer, and have not told you before',
    question: 'Do you have cancer, or have you ever had it, and is that new to us (not told at the start)?',
    short: 'cancer, newly told',
  },
  'new-symptoms-elsewhere': {
    label: 'New symptoms somewhere else: arms, face, eyes, balance, or the other leg',
    question:
      'Are there new or changed symptoms somewhere else, such as arms, face, eyes, balance or the other leg?',
    short: 'new symptoms elsewhere',
  },
}

/** What to say on the telephone or at the desk, for the five signs of the cauda equina. Not a finding: a question for them. */
export const SAY_CAUDA_EQUINA =
  'Say there: "possible cauda equina", and tell them what you have just told me.'
const SAY_WORDS = 'Say there what you have just told me, and since when.'

/** The sentence what to say at the emergency department, for the signs of one event. */
export const sayThere = (signs: readonly SignId[]): string =>
  signs.some(isCaudaEquina) ? SAY_CAUDA_EQUINA : SAY_WORDS
