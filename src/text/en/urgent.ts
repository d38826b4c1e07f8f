import type { Care } from '../../domain/care.ts'
import { SAY_CAUDA_EQUINA } from './signs.ts'

const STOPPED = 'Stop all your drills now; they stay stopped until somebody medical has seen you.'
const NOT_WAIT = 'Do not wait for your coach.'

interface Numbers {
  readonly emergency: string | null
}
const call = ({ emergency }: Numbers): string =>
  emergency ? `call ${emergency}` : 'call your local emergency number'

/** As what follows a yes says, so that nobody is sent to a doctor today and then in the next days. */
function ifYes(care: Care, emergency: string | null): string {
  if (care === 'soon')
    return 'have a doctor or nurse look at it in the next days, sooner if it gets worse fast.'
  return `stop, and ${care === 'emergency' ? `${call({ emergency })} or go to an emergency department` : 'see a doctor today'} – do not wait for me.`
}

/** What a client hears when a sign is there or hinted at. Short; what to do comes first. */
export const urgent = {
  emergency: ({ emergency, cauda }: Numbers & { cauda: boolean }): string =>
    `**This needs care right now.** Please ${call({ emergency })} or go to an emergency department now. Do not drive yourself.\n` +
    `${cauda ? SAY_CAUDA_EQUINA : 'Say there what you have just told me, and since when.'}\n` +
    `${NOT_WAIT} Your coach is told too. ${STOPPED}\nThis is a message from a program, not a medical opinion.`,
  sameDay: ({
    emergency,
    advice,
    outOfHours,
  }: Numbers & { advice: string | null; outOfHours: boolean }): string =>
    `**Please be seen by a doctor or an urgent-care service today.** ${
      outOfHours
        ? `It is late: use the out-of-hours service now${advice ? ` (${advice})` : ''}.`
        : 'Call now for a time today.'
    }\nIf it gets worse, or numbness, weakness or bladder trouble comes, ${call({ emergency })}.\n` +
    `Tell them what you have told me. ${NOT_WAIT} Your coach is told too. ${STOPPED}`,
  selfHarm: ({ emergency, crisis }: Numbers & { crisis: string | null }): string =>
    'I am glad that you wrote this. You do not have to carry it alone.\n' +
    `Please talk to a person now: ${crisis ? `the crisis line on ${crisis}, or ` : ''}${call({ emergency })}. If you might act on it, call right away or go to an emergency department.\n` +
    'Your coach is told and will try to reach you. The drills can wait.',
  leftUrgent:
    '**What you write may need care right now.** Please call your local emergency number or go to an emergency department. Do not drive yourself.\nYou have left this bot: nothing is kept, and your coach is not told. Please do not wait for an answer here.',
  soonBefore:
    'What you write should be looked at by a doctor or nurse in the next days. If it gets worse fast, go sooner.',
  strangerUrgent:
    '**What you write may need care right now.** Please call your local emergency number or go to an emergency department. Do not drive yourself.\nThis bot does not know you, and nobody else is told. Please do not wait for an answer here.',
  soon: (signs: readonly string[]): string =>
    `Thank you for telling me about: ${signs.join(', ')}. Please have it looked at by a doctor or nurse in the next days. If it gets worse fast, go sooner. Your coach is told.`,
  severe:
    'That is a lot of pain, two check-ins in a row. Go easy today. If no position helps, or numbness, weakness, bladder or bowel trouble comes, be seen today; at once if it is sudden.',
  hintedSign: (question: string, care: Care, emergency: string | null): string =>
    `I want to be sure I read this right. ${question}\nIf yes: ${ifYes(care, emergency)} If I hear nothing for 10 minutes I take it as yes.`,
  hintedSelfHarm: (question: string): string =>
    `I want to be sure I read this right, and it is good that you write. ${question}\nIf yes: please call a crisis line or your local emergency number now, or go to somebody you trust. If I hear nothing for 10 minutes I take it as yes and tell your coach.`,
  routineSigns:
    'Anything new: numbness between your legs, bladder or bowel trouble, both legs, weakness, new numbness?',
  whichSign:
    'Which of these is it? Stop your drills for now. If it is bad or came on fast, get help now and do not wait for me. If I hear nothing for 10 minutes I take it as urgent.',
  pickSigns: 'Choose all that apply',
  noneOfThese: 'None of these',
  oneOfThese: 'One of these',
  ticked: 'chose it in the form',
  notNamed: 'said “one of these” and did not say which',
  otherLegNamed: 'named the other leg and did not answer which',
  signsNone:
    'Noted. If numbness between the legs, bladder or bowel trouble, weakness or trouble in both legs comes, get help at once.',
  signsSome: 'Thank you for saying so.',
  signsKept: 'Thank you for telling me. Please read my message about it now.',
  signsHeard: 'Thank you for telling me.',
  signOpen:
    'I have it written down already, and what I wrote about it still holds. If it gets worse, get help at once.',
  signKnown: 'Noted as before. If it changes in any way, get help at once and tell me.',
  formKept: 'Your form is kept.',
  signNo: 'Noted. If it does come, get help at once and do not wait for me.',
  alreadyAnswered: 'This is answered already. Write to me if something has changed.',
  drillsStopped: 'Your drills are stopped for now.',
  drillsLocked:
    'No drills for now: they stay stopped until a medical person has seen you and your coach has noted it. Please get care if you have not yet.',
  drillsWait: 'No drills until my question about warning signs is answered. Please answer it first.',
  parkedWait: 'No drills yet: a doctor or another clinician should agree first, and your coach notes it.',
  changesLater:
    'Your coach and I have looked at your steps. What changes stands in your next prompt. Until then, rest from them.',
  stillLocked:
    'I have written it down. Your drills stay stopped until a medical person has seen you and your coach has noted it. Please get care if you have not yet.',
  heardLocked: (emergency: string | null): string =>
    `I have passed your words on to your coach. Your drills stay stopped until a medical person has seen you and your coach has noted it. If anything gets worse, ${call({ emergency })}.`,
  careFirst:
    'Your drills are still stopped. Please get care if you have not yet; do not wait for anybody here.',
  notTold: 'Thank you. I cannot tell from that how it is, so I ask again.',
  onTheWay: 'Are you on your way to get care? Please do not wait for anybody here.',
  onTheWayYes: 'Yes, or there already',
  onTheWayNo: 'Not yet',
  onTheWayThanks: 'Good that you seek help. Please do not put it off, and say there what you told me.',
  goNow: (emergency: string | null): string =>
    `Please go now, or ${call({ emergency })}. Ask somebody to take you. Do not drive yourself.`,
  untaken:
    'Nobody has answered the alert to your coach yet. Please do not wait for us: get care now if you have not.',
  takenUp:
    'A coach has seen your message and has taken it up. Please still get care as I wrote; do not wait for a call.',
  morning:
    'Good morning. Your drills stay stopped until your coach has noted who saw you. Have you been seen by a doctor or a hospital? And is anything new: numbness between the legs, bladder, bowels, both legs, weakness?',
  morningSelfHarm:
    'Good morning. I hope you have talked to somebody. If the thoughts are still there, please call the crisis line or your emergency number now. Has anything else changed: numbness, bladder, bowels, legs?',
  withSomebody: 'Are you with somebody, or talking to somebody, now? Please do not stay alone with it.',
  seenYes: 'I was seen',
  seenNo: 'Not yet',
  nothingNew: 'Nothing new',
  somethingNew: 'Something new',
  seenThanks: 'Thank you. Your coach will ask who saw you, and opens your plan again after that.',
  seenNotYet: (emergency: string | null): string =>
    `Please be seen now. If it is worse, ${call({ emergency })}.`,
  cleared: (prompt: string | null, easier: boolean): string =>
    [
      'Your coach has noted that a medical person has seen you and agrees that you go on.',
      easier ? 'We start one step easier.' : '',
      prompt ? `Your next prompt comes at ${prompt}; please answer its question on warning signs.` : '',
      'If anything new comes, stop and get help at once.',
    ]
      .filter((part) => part !== '')
      .join(' '),
  clearedSpoken: (prompt: string | null): string =>
    `Your coach has noted that you have spoken. ${prompt ? `Your next prompt comes at ${prompt}. ` : ''}If the thoughts come back, call the crisis line or your emergency number at once, and tell somebody.`,
  releasedLocked:
    'Your coach has noted that a clinician agrees with gentle drills. They stay stopped until the warning sign you told me of is cleared too. Please be seen if you have not been.',
  released: 'Your coach has noted that a clinician agrees with gentle drills. We can go on.',
}
