import { el } from './dom.js'

/** Made anew only where it would look otherwise, so that the focus stays where it is. */
const shown = new WeakMap()
function show(box, key, make) {
  const text = JSON.stringify(key)
  if (shown.get(box) === text) return
  const focused = box.contains(document.activeElement) ? document.activeElement.dataset.name : null
  shown.set(box, text)
  box.replaceChildren(...make())
  if (focused) box.querySelector(`[data-name="${focused}"]`)?.focus()
}
const button = (name, label, onclick, more = {}) =>
  el('button', { 'data-name': name, onclick, ...more }, label)

const SPEEDS = [
  [3_600, 'an hour a second'],
  [21_600, 'six hours a second'],
  [86_400, 'a day a second'],
]

/** Time's buttons; while somebody is led by the hand, none of them stands out. */
export function showTime(box, { playing, hasScript, firstSteps }, doing) {
  show(box, [playing !== null, hasScript, firstSteps], () => {
    const to = (name, label, more) => button(name, label, () => doing({ do: 'time', to: name }), more)
    const isLed = firstSteps !== null && firstSteps.step !== 'done'
    const speed = el(
      'select',
      { id: 'speed', 'data-name': 'speed' },
      SPEEDS.map(([value, label]) => el('option', { value }, label)),
    )
    return [
      to('event', 'Next event', { class: isLed ? null : 'main' }),
      to('day', 'Next day'),
      to('week', 'Next week'),
      ...(hasScript ? [to('end', 'To the end of the scenario')] : []),
      el(
        'span',
        { class: 'together' },
        playing === null
          ? button('play', 'Play', () => doing({ do: 'play', speed: Number(speed.value) }))
          : button('play', 'Pause', () => doing({ do: 'pause' })),
        el('label', { for: 'speed' }, 'at'),
        speed,
      ),
      to('clocks', 'To summer or winter time', {
        title: 'To noon before the night in which the clocks change next',
      }),
    ]
  })
}

export function showBreaks(box, { faults }, doing) {
  show(box, faults, () => {
    const flip = (what, label, on) =>
      button(what, on ? `${label}: mend it` : label, () => doing({ do: 'break', what, on: !on }), {
        'aria-pressed': String(on),
      })
    const hours = el(
      'select',
      { id: 'hours', 'data-name': 'hours' },
      [1, -1, 2, -2].map((n) => el('option', { value: n }, `${n > 0 ? '+' : '−'}${Math.abs(n)} h`)),
    )
    return [
      flip('chat', 'Chat down', faults.chatDown),
      flip('database', 'Database locked', faults.databaseLocked),
      button('kill', 'Kill the bot and start it again', () => doing({ do: 'break', what: 'kill' })),
      el(
        'span',
        { class: 'together' },
        el('label', { for: 'hours' }, 'The machine’s clock jumps at 03:00 by'),
        hours,
        button(
          'clock',
          faults.clockChangeTonight ? 'It waits for tonight' : 'Tonight',
          () => doing({ do: 'break', what: 'clock', hours: Number(hours.value) }),
          { disabled: faults.clockChangeTonight },
        ),
      ),
    ]
  })
}

/** What is broken now, and what that means for who writes. */
export const brokenWords = ({ chatDown, databaseLocked, clockChangeTonight, clockAheadMinutes: ahead }) =>
  [
    chatDown && 'The chat is down: nothing reaches anybody until it is mended.',
    databaseLocked &&
      'The database is locked: urgent signs are answered all the same; the rest waits until it is mended.',
    clockChangeTonight && 'The machine’s clock jumps at 03:00.',
    ahead !== 0 && `The machine’s clock is ${Math.abs(ahead)} minutes ${ahead > 0 ? 'fast' : 'slow'}.`,
  ]
    .filter(Boolean)
    .join(' ')

export function showFiles(box, { scenarios, session }, doing) {
  show(box, [session, scenarios], () => {
    const pick = el(
      'select',
      { id: 'scenario', 'data-name': 'scenario' },
      el('option', { value: '' }, 'an empty practice'),
      scenarios.map(({ name, title }) => el('option', { value: name }, title)),
    )
    const file = el('input', { id: 'file', type: 'file', accept: '.yaml,.yml', 'data-name': 'file' })
    const open = async () => {
      const [chosen] = file.files
      if (chosen) await doing({ do: 'open', name: chosen.name, yaml: await chosen.text(), at: 'end' })
    }
    return [
      el('a', { class: 'like-button', href: 'scenario', download: 'rehearsal.yaml' }, 'Save as a scenario'),
      el(
        'span',
        { class: 'together' },
        el('label', { for: 'scenario' }, 'Start again with'),
        pick,
        button('start', 'Start', () =>
          doing({ do: 'start', scenario: pick.value === '' ? null : pick.value }),
        ),
      ),
      el(
        'span',
        { class: 'together' },
        el('label', { for: 'file' }, 'Open a saved one'),
        file,
        button('open', 'Open', open),
      ),
    ]
  })
}
