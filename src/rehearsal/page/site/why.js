import { dateWords, el } from './dom.js'

/** The reasons with their figures, and how a reply was read; fetched when it is opened. */
export function whyOf(card, get) {
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
    el('summary', {}, card.from === 'bot' ? 'What stood behind it' : 'How it was read'),
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
