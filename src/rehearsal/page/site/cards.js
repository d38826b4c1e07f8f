import { dateWords, el, marked, timeWords } from './dom.js'

const FROM = { bot: 'Ebbline', client: 'client', coach: 'coach' }
const PLACE = {
  alerts: 'alert channel',
  hall: 'hall',
  'coach-private': 'to you alone',
  coach: 'coach channel',
}
const NEAR_END_PX = 160

/** One column of cards, in order of time. */
export function createColumn(box, { as, doing, get, more }) {
  const list = el('ol', { class: 'list' })
  const older = el('button', { class: 'older', hidden: true, onclick: () => more() }, 'Earlier messages')
  box.append(older, list)
  const items = new Map()
  const cards = () => [...items.values()].map(({ card }) => card)

  // at its end a column stays there, also while pictures come in; wherever else its reader has put it, it stays too
  let stays = true
  const toEnd = () => {
    stays = true
    box.scrollTop = box.scrollHeight
  }
  let top = 0
  box.addEventListener('scroll', () => {
    const isNear = box.scrollHeight - box.scrollTop - box.clientHeight < NEAR_END_PX
    // a reader has left the end only where the column went up: what comes below moves nothing
    if (isNear) stays = true
    else if (box.scrollTop < top) stays = false
    top = box.scrollTop
  })
  const grown = new ResizeObserver(() => stays && toEnd())
  grown.observe(list)
  grown.observe(box)
  function make(card) {
    const item = el(
      'li',
      { class: classOf(card), id: `card-${card.id}` },
      ...partsOf(card, { as, doing, get }),
    )
    items.set(card.id, { card, item })
    return item
  }
  /** A day's first card carries its date. */
  function mark() {
    let day = null
    for (const { card, item } of items.values()) {
      const isFirst = card.local.slice(0, 10) !== day
      day = card.local.slice(0, 10)
      item.querySelector(':scope > .day')?.remove()
      if (isFirst) item.prepend(el('p', { class: 'day' }, `${dateWords(card.local)} · day ${card.day}`))
    }
  }

  return {
    begin(given, hasMore) {
      items.clear()
      list.replaceChildren(...given.map(make))
      older.hidden = !hasMore
      mark()
      toEnd()
    },
    put(given) {
      if (given.length === 0) return
      const follows = stays
      for (const card of given) {
        const before = items.get(card.id)
        const focused = before?.item.contains(document.activeElement)
          ? document.activeElement.dataset?.control
          : null
        if (before) before.item.replaceWith(make(card))
        else list.append(make(card))
        if (focused)
          items
            .get(card.id)
            .item.querySelector(`[data-control="${CSS.escape(focused)}"]`)
            ?.focus()
      }
      mark()
      if (follows) toEnd()
    },
    putBefore(given, hasMore) {
      const height = box.scrollHeight
      const known = [...items]
      items.clear()
      const made = given.map(make)
      for (const [id, one] of known) items.set(id, one)
      list.prepend(...made)
      older.hidden = !hasMore
      mark()
      box.scrollTop += box.scrollHeight - height
    },
    drop(ids) {
      for (const id of ids) {
        items.get(id)?.item.remove()
        items.delete(id)
      }
      if (ids.length > 0) mark()
    },
    firstId: () => cards()[0]?.id ?? null,
    firstDay: () => cards()[0]?.day ?? null,
    scrollToDay(day) {
      const of = cards().find((card) => card.day >= day) ?? cards().at(-1)
      stays = false
      if (of) items.get(of.id).item.scrollIntoView({ block: 'start' })
    },
  }
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

function partsOf(card, { as, doing, get }) {
  // what the coach did was done wherever the message lies that it was done to
  const isDeed = card.kind === 'act'
  const where = card.side === 'coach' && !isDeed ? (PLACE[card.place] ?? card.place) : null
  const head = [
    card.from === 'client' && card.about ? card.about : FROM[card.from],
    card.kind === 'words' || card.kind === 'act' || card.kind === 'reply'
      ? null
      : card.kind.replaceAll('-', ' '),
    card.side === 'coach' && card.about ? card.about : null,
    where,
    timeWords(card.local),
    card.edited === null ? null : 'changed',
    card.isPrivate ? 'only you see this' : null,
  ].filter(Boolean)
  return [
    el('p', { class: 'head' }, head.join(' · ')),
    el('div', { class: 'text', dir: 'auto' }, marked(card.text)),
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

/** The reasons with their figures, and how a reply was read; fetched when it is opened. */
function whyOf(card, get) {
  const inside = el('div', { class: 'why' })
  const open = async ({ target }) => {
    if (!target.open || inside.childElementCount > 0) return
    try {
      inside.replaceChildren(...explained(await get(`explain?card=${encodeURIComponent(card.id)}`)))
    } catch (error) {
      inside.replaceChildren(el('p', {}, error.message))
    }
  }
  return el(
    'details',
    { ontoggle: open },
    el('summary', {}, card.from === 'bot' ? 'Why' : 'How it was read'),
    inside,
  )
}

function explained({ reasons, proposal, reading }) {
  const parts = []
  if (reading) parts.push(...readingOf(reading))
  for (const { rule, level, day, text, figures, source } of reasons) {
    parts.push(el('p', {}, el('strong', {}, rule), ` (${level}, since ${dateWords(day)}): ${text}`))
    if (figures.length > 0)
      parts.push(
        el('p', { class: 'figures' }, figures.map(({ name, value }) => `${name} ${value}`).join(' · ')),
      )
    parts.push(el('p', { class: 'quiet' }, source))
  }
  if (proposal !== null) parts.push(el('p', {}, `Proposed: ${proposal}`))
  return parts.length > 0 ? parts : [el('p', {}, 'No rule had anything to say.')]
}

function readingOf({ day, slots, signs, denied, missing, unsure, intent }) {
  const quoted = (words) => (words === null ? '' : ` from “${words}”`)
  const lines = [
    `Taken as: ${intent}${day === null ? '' : `, for ${dateWords(day)}`}`,
    ...slots.map(({ slot, value, words }) => `${slot}: ${value}${quoted(words)}`),
    ...signs.map(
      ({ name, care, words, unsure: asked }) =>
        `sign: ${name} (${care}${asked ? ', asked back' : ''})${quoted(words)}`,
    ),
    denied.length > 0 ? `denied: ${denied.join(', ')}` : null,
    missing.length > 0 ? `still missing: ${missing.join(', ')}` : null,
    unsure.length > 0 ? `asked back: ${unsure.join(', ')}` : null,
  ].filter(Boolean)
  return [
    el(
      'ul',
      {},
      lines.map((line) => el('li', {}, line)),
    ),
  ]
}
