import { el, marked, timeWords } from './dom.js'
import { whyOf } from './why.js'

const FROM = { bot: 'Ebbline', client: 'client', coach: 'coach' }
const PLACE = {
  alerts: 'alert channel',
  hall: 'hall',
  'coach-private': 'to you alone',
  coach: 'coach channel',
}

/** A card with its time beside it; what somebody did otherwise than by words is a line alone. */
export function entryOf(card, { as, doing, get }) {
  return el(
    'li',
    { class: 'entry', id: `card-${card.id}` },
    el('time', { class: 'at', datetime: card.at }, timeWords(card.local)),
    el('div', { class: classOf(card) }, ...partsOf(card, { as, doing, get })),
  )
}

const classOf = ({ from, care, kind }) =>
  [
    'card',
    from === 'bot' ? 'bot' : 'person',
    care === 'none' ? '' : `care-${care}`,
    kind === 'act' ? 'deed' : '',
  ]
    .filter(Boolean)
    .join(' ')

function headOf(card) {
  // what the coach did was done wherever the message lies that it was done to
  const where = card.side === 'coach' && card.kind !== 'act' ? (PLACE[card.place] ?? card.place) : null
  return [
    card.from === 'client' && card.about ? card.about : FROM[card.from],
    card.kind === 'words'
      ? 'writes'
      : card.kind === 'act' || card.kind === 'reply'
        ? null
        : card.kind.replaceAll('-', ' '),
    card.side === 'coach' && card.about ? `about ${card.about}` : null,
    where,
    card.edited === null ? null : 'changed since',
    card.isPrivate ? 'only you see this' : null,
  ]
    .filter(Boolean)
    .join(' · ')
}

function partsOf(card, { as, doing, get }) {
  return [
    el('p', { class: 'head' }, headOf(card)),
    el('div', { class: 'text', dir: 'auto' }, card.from === 'bot' ? marked(card.text) : card.text),
    card.pictures.map(({ url, alt, width, height }) =>
      el(
        'a',
        { href: url, target: '_blank', rel: 'noreferrer' },
        el('img', { src: url, alt, width, height, loading: 'lazy' }),
      ),
    ),
    card.files.map(({ url, name }) => el('p', {}, el('a', { href: url, download: name }, name))),
    card.rows.map((row) =>
      el(
        'div',
        { class: 'bar' },
        row.map((control) => controlOf(card, control, { as, doing })),
      ),
    ),
    card.explains ? whyOf(card, get) : null,
  ]
}

function controlOf(card, control, { as, doing }) {
  const base = { as: as(), card: card.id, control: control.id }
  if (control.type === 'button')
    return el(
      'button',
      { class: control.style, 'data-control': control.id, onclick: () => doing({ do: 'press', ...base }) },
      control.label,
    )
  const id = `list-${card.id}-${control.id}`
  if (control.most === 1) {
    const options = control.options.map(({ value, label, more }) =>
      el('option', { value }, more === null ? label : `${label} (${more})`),
    )
    const pick = el('select', { id, 'data-control': control.id }, el('option', { value: '' }, '…'), options)
    return el(
      'span',
      { class: 'pair' },
      el('label', { for: id }, control.label),
      pick,
      el(
        'button',
        { onclick: () => pick.value && doing({ do: 'choose', ...base, values: [pick.value] }) },
        'Choose',
      ),
    )
  }
  const boxes = control.options.map(({ value, label }) =>
    el('label', { class: 'tick' }, el('input', { type: 'checkbox', value }), label),
  )
  const send = () =>
    doing({
      do: 'choose',
      ...base,
      values: boxes
        .map((one) => one.querySelector('input'))
        .filter((one) => one.checked)
        .map((one) => one.value),
    })
  return el('fieldset', {}, el('legend', {}, control.label), boxes, el('button', { onclick: send }, 'Choose'))
}
