import { harmless } from '../harmless.ts'

/** Invitation, consent and screening, as a client reads them. */
export const enrol = {
  welcome: (practice: string, days: number): string =>
    `Hello! Your coach at ${harmless(practice, 40)} would like you to check in here once a day.\n` +
    '**What it is:** I ask about your sessions, how far down you feel it, your pain and a few warning signs. Your coach reads it and sets your plan.\n' +
    '**What it is not:** I am a program. I do not diagnose, and I do not stand in for a doctor.\n' +
    `**What is kept:** your answers, until ${days} days after the end. Only your coach’s team sees them. The chat service keeps its own copies, out of our reach.\n` +
    '**To leave:** write “leave” at any time. With /erase-me it all goes.\nDo you agree?',
  consentYes: 'Yes, I agree',
  consentNo: 'No, thank you',
  consentUnclear: 'Please answer yes or no: shall I ask you once a day and keep your answers for your coach?',
  consented: 'Thank you. A few questions first.',
  declined: 'That is all right. No answers of yours are kept, only that you said no. Your coach is told.',
  screeningIntro:
    'Before any plan, a few questions. It takes about five minutes, and you can stop and go on later.',
  screened: 'Thank you, that is all. Your coach looks at it and sends you your plan.',
  parked:
    'Thank you, that is all. One of your answers means that a doctor or another clinician should agree first. Please ask them; your coach notes it, and then we begin.',
  minor:
    'I am sorry: I may only work with people of 18 and over. Nothing more is asked. Please talk to your coach.',
}

/** The form before any plan. */
export const screening = {
  title: (step: number, steps: number): string => `First questions, part ${step} of ${steps}`,
  fillIn: 'Press the button to fill in the next part.',
  again: (labels: readonly string[]): string =>
    `I could not read the answer to ${labels.map((label) => `“${label}”`).join(', ')}. Please answer again.`,
  label: {
    signs: 'Is any of these new or changed?',
    age: 'Your age in years',
    onset: 'When did this episode begin?',
    earlier: 'Earlier episodes or surgery?',
    seen: 'Has a clinician seen you about it?',
    risks: 'Do any of these apply to you?',
    known: 'Old, unchanged, known to a doctor',
    reach: 'How far from the spine do you feel it?',
    pain: 'Worst pain since yesterday, 0 to 10',
    side: 'Which leg?',
    eases: 'What eases it?',
    activities: 'Three things that matter, 0-10 each',
    lift: 'The lift you want back',
  } as Readonly<Record<string, string>>,
  question: {
    signs: 'Is any of these new or changed? Answer with the numbers.',
    age: 'How old are you, in years?',
    onset: 'When did this episode begin? A date like 2026-02-10, or in words.',
    earlier: 'Did you have earlier episodes or back surgery?',
    seen: 'Has a doctor or another clinician seen you about it?',
    risks: 'Do any of these apply to you? Answer with the numbers.',
    known: 'Are any of these old, unchanged and known to your doctor? Answer with the numbers.',
    reach: 'How far from the spine do you feel it?',
    pain: 'Your worst pain since yesterday, from 0 (none) to 10?',
    side: 'Which leg is it?',
    eases: 'What eases it?',
    activities:
      'Which things matter to you, and how hard is each from 0 (easy) to 10? Like: rowing 7, sitting 5.',
    lift: 'Which lift do you want to get back to? Write “none” if no lift.',
  } as Readonly<Record<string, string>>,
  earlier: { no: 'No', episode: 'Yes, an earlier episode', surgery: 'Yes, with surgery' },
  seen: { yes: 'Yes', no: 'No' },
  risk: {
    cancer: 'Cancer now or before',
    osteoporosis: 'Thin bones (osteoporosis)',
    'long-steroids': 'Steroid tablets for months',
    immune: 'Weak immune system',
    pregnancy: 'Pregnant',
    'recent-fall': 'A fall or crash of late',
    anticoagulants: 'Blood thinners',
  } as Readonly<Record<string, string>>,
  eases: { flexion: 'Bending forward', extension: 'Arching back', neither: 'Neither' },
}
