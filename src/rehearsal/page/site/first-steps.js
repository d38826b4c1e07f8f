import { el } from './dom.js'

const SAYS = {
  'set-up': 'First the practice: its rooms, its time zone, the hour of the digest.',
  client: 'Now somebody who comes to the boathouse. Give them a name above the phone.',
  enrol: 'Invite them. They get a private message and say yes or no.',
  consent: 'Be the client: read the invitation on the left and answer it.',
  screening: 'Still as the client: the first questions, in a few forms.',
  plan: 'Back to the coach: set the plan. What speaks against it is said first.',
  go: 'All is ready. Let time pass to the first prompt.',
  done: null,
}
const ORDER = Object.keys(SAYS)

/** Leads an empty practice by the hand, a step at a time. */
export function showFirstSteps(box, { firstSteps, session }, doing) {
  const key = JSON.stringify([session, firstSteps])
  if (box.dataset.key === key) return
  box.dataset.key = key
  box.hidden = firstSteps === null || firstSteps.step === 'done'
  if (box.hidden) return box.replaceChildren()
  const { step, line } = firstSteps
  const order = el('input', { id: 'first-line', value: line ?? '', autocomplete: 'off' })
  const send = (event) => {
    event.preventDefault()
    doing({ do: 'command', as: 'coach', line: order.value })
  }
  box.replaceChildren(
    el('p', {}, el('strong', {}, `Step ${ORDER.indexOf(step) + 1} of ${ORDER.length - 1}. `), SAYS[step]),
    ...(line === null
      ? []
      : [
          el(
            'form',
            { class: 'pair', onsubmit: send },
            el('label', { for: 'first-line' }, 'As the coach'),
            order,
            el('button', { class: 'main' }, 'Send'),
          ),
        ]),
    ...(step === 'go'
      ? [
          el(
            'button',
            { class: 'main', onclick: () => doing({ do: 'time', to: 'event' }) },
            'To the first prompt',
          ),
        ]
      : []),
  )
}
