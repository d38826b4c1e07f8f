import type { Draft } from '../draft.ts'
import type { Answer, Button } from '../message.ts'
import { openAlerts } from '../urgent/alert.ts'
import { endWay, startRetention, stopRetention } from './end.ts'
import { carryScreening, nextScreeningStep } from './screening.ts'
import { remindOfScreening } from './screening-waits.ts'

/** Version of the text that a client says yes to; it grows whenever that text changes. */
const CONSENT_VERSION = '2'

/** The invitation: what this is and is not, what is stored and for how long, how to leave; yes or no. */
export function invite(draft: Draft): void {
  const { client } = draft.texts
  const buttons: Button[] = [
    { name: 'consent-yes', label: client.consentYes, act: { do: 'consent', value: 'yes' }, style: 'main' },
    { name: 'consent-no', label: client.consentNo, act: { do: 'consent', value: 'no' } },
  ]
  draft.put('asked', {
    id: draft.id('asked', 'consent'),
    clientId: draft.client.id,
    ask: 'consent',
    day: draft.today,
    at: draft.now,
    message: draft.cause,
    pressing: false,
    options: buttons.map(({ name, label, act }) => ({ name, label, act })),
  })
  draft.toClient({
    kind: 'welcome',
    asks: 'consent',
    text: client.welcome(draft.file.practice.name, draft.file.practice.retentionDays),
    buttons,
  })
  startRetention(draft)
}

/** Yes opens the screening. No: the invitation is all that was kept, and it goes. */
export function consent(draft: Draft, yes: boolean): Answer['text'] {
  draft.drop('asked', draft.id('asked', 'consent'))
  draft.put('consent', {
    id: draft.id('consent'),
    clientId: draft.client.id,
    answer: yes ? 'yes' : 'no',
    at: draft.now,
    version: CONSENT_VERSION,
    sexualQuestions: false,
  })
  if (!yes) {
    // an alert about a sign told of before goes on until somebody has it
    for (const due of draft.file.dues)
      if (due.kind !== 'alert-step' && due.kind !== 'untaken') draft.drop('due', due.id)
    endWay(draft, 'left')
    const { coach, alerts } = draft.forCoach
    const open = openAlerts(draft).some((alert) => alert.takenBy === null) ? `\n${alerts.declinedOpen}` : ''
    draft.toCoach({ kind: 'notice', text: coach.declined(draft.client.ref) + open })
    return draft.texts.client.declined
  }
  stopRetention(draft)
  draft.put('client', { ...draft.client, stage: 'screening' })
  draft.put('screening', {
    id: draft.id('screening'),
    clientId: draft.client.id,
    answers: {},
    startedAt: draft.now,
    doneAt: null,
  })
  remindOfScreening(draft)
  const step = nextScreeningStep(draft)
  if (step !== null) carryScreening(draft, step, '')
  return draft.texts.client.consented
}
