import { el } from './dom.js'

const SAYS = {
  'set-up':
    'You are the coach. First the practice: its time zone, the hour of the digest, the region for emergency numbers. The command is ready: send it, or change it first.',
  client:
    'Now somebody to coach: type an alias such as “heron” under “New client” on the left, and add them.',
  enrol: 'As the coach, invite them: they get a private message and say yes or no.',
  consent: 'Be the client: read the invitation on the left and answer it with its buttons.',
  screening:
    'Still as the client: answer the first questions with the buttons under the newest message on the left. Some open a form.',
  plan: 'Back to the coach: set the plan. Where something speaks against it, the answer on the right says so, and how to go on.',
  go: 'All is ready. Let time pass until the client is asked for the first time.',
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
