import type { NetSource } from '../../shape.ts'

/** Which topics and troubles, near each other, are asked about as which sign. */
export const frames: NetSource['frames'] = [
  // legs
  ['leg-weakness', 'limb & leg-fail|-leg-act', { unless: 'drill' }],
  ['leg-weakness', 'footwear & leg-fail', { within: 5 }],
  ['leg-weakness', 'ground & leg-fail', { within: 4, unless: 'drill' }],
  ['leg-weakness', 'pedal|climb & leg-fail|-leg-act', { within: 5, unless: 'drill' }],
  ['leg-weakness', 'cling', {}],
  ['new-numbness', 'one-leg & numb|-feel', { within: 5 }],
  ['new-numbness', 'one-leg & spreading & tingle', { within: 6 }],
  ['both-legs', 'two-legs & numb|tingle|hurt|leg-fail|odd|-feel', { within: 6, unless: 'drill|effort' }],
  [
    'both-legs',
    'other-side & numb|tingle|hurt|leg-fail|odd|joins|-feel',
    { within: 7, unless: 'drill|effort' },
  ],
  // saddle
  ['saddle-numbness', 'saddle|sitting|wiping|clothing & numb|-feel', { within: 6 }],
  ['saddle-numbness', 'saddle & tingle|odd', { within: 5 }],
  ['saddle-numbness', 'wiping & odd', { within: 4 }],
  // bladder, bowel, sex
  ['bladder-change', 'pee & pee-fail|-pee-act', { within: 6, unless: 'thing' }],
  ['bladder-change', 'toilet & pee-fail|-pee-act', { within: 6, unless: 'thing' }],
  ['bladder-change', 'wet-thing & wet-bad', { within: 5, unless: 'thing|weather' }],
  ['bowel-change', 'poo & poo-fail|-poo-act', { within: 6, unless: 'thing' }],
  ['bladder-change', 'pad-buy', { needs: 'spreading', unless: 'drill' }],
  ['bowel-change', 'soiling & poo', { within: 4, unless: 'thing' }],
  ['sexual-change', 'sex & sex-fail|-sex-act', { within: 6 }],
  // face, arm, speech, sight, balance
  ['stroke-signs', 'face & droop', { within: 5 }],
  ['stroke-signs', 'arm & suddenly & arm-fail|-arm-act', { within: 7, unless: 'drill|calm' }],
  ['stroke-signs', 'held & arm|suddenly & arm-fail|-arm-act', { within: 5, unless: 'drill|calm' }],
  ['stroke-signs', 'arm|suddenly & dropped-thing', { within: 7, unless: 'drill|calm' }],
  ['stroke-signs', 'speech & speech-fail|-speech-act', { within: 5 }],
  ['stroke-signs', 'sight & suddenly & sight-fail', { within: 6, unless: 'calm' }],
  ['stroke-signs', 'balance & suddenly & balance-fail', { within: 6, unless: 'drill|calm' }],
  ['new-symptoms-elsewhere', 'arm & arm-fail|tingle', { within: 4, unless: 'drill' }],
  ['new-symptoms-elsewhere', 'face & numb|tingle', { within: 4 }],
  ['new-symptoms-elsewhere', 'sight & sight-fail', { within: 4 }],
  ['new-symptoms-elsewhere', 'balance & balance-fail', { within: 5, unless: 'drill' }],
  // chest, belly, back
  ['chest-breath', 'chest & press', { within: 5, unless: 'drill' }],
  ['chest-breath', 'breath & breath-fail|-breath-act', { within: 5, unless: 'drill|effort' }],
  ['chest-breath', 'faint', {}],
  ['chest-breath', 'cough & blood', { within: 6 }],
  ['tearing-pain', 'trunk & tear', { within: 6, unless: 'drill' }],
  ['tearing-pain', 'belly & pulse', { within: 5 }],
  ['tearing-pain', 'belly & hurt & fierce', { within: 7 }],
  // injury
  ['major-injury', 'heavy-thing & fell', { within: 5 }],
  ['major-injury', 'spine & since & fell', { within: 5 }],
  ['major-injury', 'fell-off', {}],
  ['minor-injury-risk', 'bone & fell', { within: 12 }],
  // illness
  ['fever-unwell', 'hot-cold & shiver', { within: 6, unless: 'drill|weather' }],
  ['severe-unrelenting', 'zone & extreme', { within: 1, unless: 'drill|try' }],
  ['severe-unrelenting', 'zone & no-let-up', { within: 5 }],
  ['night-pain', 'nightly & unsettled & wake', { within: 9, unless: 'soothed' }],
  ['weight-loss', 'clothes & loose', { within: 5 }],
  ['weight-loss', 'scale & drops', { within: 5, unless: 'on-purpose' }],
  ['weight-loss', 'scale & not-diet & drops', { within: 9 }],
  ['self-harm', 'pills & counting', { within: 5 }],
  ['calf-swelling', 'one-calf & swollen', { within: 5, unless: 'drill' }],
]
