import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'

export const SEXUAL_ASK = 'screening:sexual'

/** True where the yes or no to the question about sexual function is still to come. */
export const asksSexual = (draft: Draft): boolean =>
  draft.file.consent !== null && draft.file.screening?.answers.sexual === undefined

/** A yes of its own, before any form: what is left out of the forms then hangs on it. */
export function askSexual(draft: Draft, intro: string): void {
  const { course, words } = draft.texts
  const buttons: Button[] = [
    { name: 'sexual-yes', label: words.yes, act: { do: 'sexual', value: 'yes' }, style: 'main' },
    { name: 'sexual-no', label: words.no, act: { do: 'sexual', value: 'no' } },
  ]
  draft.put('asked', {
    id: draft.id('asked', 'screening'),
    clientId: draft.client.id,
    ask: SEXUAL_ASK,
    day: draft.today,
    at: draft.now,
    message: draft.cause,
    pressing: false,
    options: buttons.map(({ name, label, act }) => ({ name, label, act })),
  })
  const text = [intro, course.sexual].filter(Boolean).join('\n\n')
  draft.toClient({ kind: 'screening', asks: SEXUAL_ASK, text, buttons })
}

/** Keeps the answer beside the consent; gives what the client hears. */
export function keepSexual(draft: Draft, yes: boolean): string {
  const { consent, screening } = draft.file
  draft.put('consent', { ...consent!, sexualQuestions: yes })
  draft.put('screening', { ...screening!, answers: { ...screening!.answers, sexual: yes ? 'yes' : 'no' } })
  return draft.texts.course.sexualNoted(yes)
}
