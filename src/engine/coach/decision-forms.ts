import type { Draft } from '../draft.ts'
import type { Button, Form } from '../message.ts'

/** A decision with a line of reason, and whether the client may read it. */
export function reasonForm(
  draft: Draft,
  possible: readonly ('advance' | 'hold' | 'ease-back' | 'refer' | 'stop')[],
): Form {
  const { coach, decisions } = draft.forCoach
  const { field } = decisions
  return {
    name: 'decide',
    title: decisions.formTitle(draft.client.ref),
    fields: [
      {
        name: 'decision',
        label: field.decision,
        kind: 'one',
        options: possible.map((value) => ({ value, label: coach.decision[value] })),
        required: true,
      },
      { name: 'reason', label: field.reason, kind: 'line', required: true },
      {
        name: 'show',
        label: field.show,
        kind: 'one',
        options: [
          { value: 'no', label: decisions.showNo },
          { value: 'yes', label: decisions.showYes },
        ],
        required: false,
      },
    ],
  }
}

/** Who has seen a locked client, and when: what a clearance needs. */
export const clearButton = (draft: Draft): Button => {
  const { decisions } = draft.forCoach
  const { field } = decisions
  return {
    name: 'clear',
    label: decisions.clear,
    act: { do: 'clear' },
    form: {
      name: 'clear',
      title: decisions.clearTitle(draft.client.ref),
      fields: [
        { name: 'by', label: field.by, kind: 'line', required: true },
        { name: 'on', label: field.on, kind: 'line', required: true },
        { name: 'reason', label: field.reason, kind: 'line', required: false },
      ],
    },
  }
}
