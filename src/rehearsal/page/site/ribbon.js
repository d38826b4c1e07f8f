import { dateWords, el } from './dom.js'

const KINDS = ['prompt', 'reply', 'flag', 'alert', 'decision']

/** The days from the first to today, each a button with its marks. */
export function createRibbon(box, { show, goTo }) {
  const list = el('ol', { class: 'days' })
  const day = el('input', { id: 'go-day', type: 'number', min: 1, max: 999, size: 4, required: true })
  const go = (event) => {
    event.preventDefault()
    goTo(Number(day.value))
  }
  const jump = el(
    'form',
    { class: 'bar jump', onsubmit: go },
    el('label', { for: 'go-day' }, 'Let time pass to the morning of day'),
    day,
    el('button', {}, 'Go'),
  )
  const legend = el(
    'p',
    { class: 'legend' },
    KINDS.map((kind) => el('span', {}, el('i', { class: kind }), kind)),
  )
  box.replaceChildren(list, el('div', { class: 'below' }, legend, jump))
  const buttons = new Map()
  let current = null

  function make({ day: number, date, marks }) {
    const counts = KINDS.map((kind) => [kind, marks.filter((mark) => mark.kind === kind)]).filter(
      ([, found]) => found.length > 0,
    )
    const words = counts.map(
      ([kind, found]) =>
        `${found.length} ${kind === 'reply' && found.length > 1 ? 'replies' : kind + (found.length > 1 ? 's' : '')}`,
    )
    const told = counts.flatMap(([, found]) =>
      found.filter(({ what }) => what !== null).map(({ about, what }) => `${about}: ${what}`),
    )
    const button = el(
      'button',
      {
        title: [...words, ...told].join('\n'),
        'aria-label': `Day ${number}, ${dateWords(date)}: ${words.join(', ') || 'nothing'}`,
        onclick: () => show(number),
      },
      el('span', { class: 'number' }, String(number)),
      el(
        'span',
        { class: 'marks', 'aria-hidden': 'true' },
        KINDS.map((kind) => el('i', { class: counts.some(([one]) => one === kind) ? kind : 'none' })),
      ),
    )
    const item = el('li', {}, button)
    buttons.set(number, { item, button })
    return item
  }

  return {
    begin(days) {
      buttons.clear()
      list.replaceChildren(...days.map(make))
      current = null
    },
    put(days) {
      for (const one of days) {
        const before = buttons.get(one.day)
        if (before) before.item.replaceWith(make(one))
        else list.append(make(one))
      }
      current = null
    },
    today(number) {
      if (number === current) return
      current = number
      for (const [n, { button }] of buttons)
        if (n === number) {
          button.setAttribute('aria-current', 'date')
          list.scrollLeft = list.scrollWidth
        } else button.removeAttribute('aria-current')
    },
  }
}
