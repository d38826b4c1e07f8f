import { byId, el } from './dom.js'

/** Shows a form that the bot opened; `send` gets the fields, and gives null where they were refused. */
export function openForm(form, send) {
  const box = byId('form')
  const fields = form.fields.map(fieldOf)
  const close = () => box.close()
  const submit = async (event) => {
    event.preventDefault()
    const wrong = fields.find(({ problem }) => problem() !== null)
    note.textContent = wrong ? wrong.problem() : ''
    if (wrong) return
    const values = Object.fromEntries(fields.map(({ name, value }) => [name, value()]))
    // the form stays as it is filled in where the bot could not take it
    if (await send(values)) close()
    else note.textContent = byId('status').textContent
  }
  const note = el('p', { class: 'problem', role: 'alert' })
  box.replaceChildren(
    el('h2', { id: 'form-title' }, form.title),
    el(
      'form',
      { onsubmit: submit },
      fields.map(({ part }) => part),
      note,
      el(
        'div',
        { class: 'bar actions' },
        el('button', { class: 'main' }, 'Send'),
        el('button', { type: 'button', onclick: close }, 'Not now'),
      ),
    ),
  )
  box.showModal()
}

function fieldOf(field) {
  const id = `field-${field.name}`
  const hint = field.hint === null ? null : el('p', { class: 'quiet', id: `${id}-hint` }, field.hint)
  const label = `${field.label}${field.required ? '' : ' (may be left out)'}`
  const described = field.hint === null ? null : `${id}-hint`
  if (field.kind === 'list') return listOf(field, { label, hint, described })
  const given = {
    id,
    name: field.name,
    required: field.required,
    maxlength: field.longest,
    'aria-describedby': described,
  }
  const input =
    field.kind === 'line'
      ? el('input', { ...given, autocomplete: 'off' })
      : el('textarea', { ...given, rows: 4 })
  return {
    name: field.name,
    value: () => input.value,
    problem: () => null,
    part: el('div', { class: 'field' }, el('label', { for: id }, label), hint, input),
  }
}

/** A list of numbers or of single words stands side by side. */
const isShort = ({ options }) => options.every(({ label, more }) => more === null && label.length <= 8)

/** Nothing is ticked before the client has ticked it. */
function listOf(field, { label, hint, described }) {
  const type = field.most === 1 ? 'radio' : 'checkbox'
  const ticks = field.options.map(({ value, label: words, more }) =>
    el(
      'label',
      { class: 'tick' },
      el('input', { type, name: field.name, value }),
      more === null ? words : `${words}: ${more}`,
    ),
  )
  const chosen = () =>
    ticks
      .map((one) => one.querySelector('input'))
      .filter((one) => one.checked)
      .map((one) => one.value)
  const least = field.required ? Math.max(1, field.least) : field.least
  return {
    name: field.name,
    value: chosen,
    problem() {
      const n = chosen().length
      if (n < least && (field.required || n > 0)) return `${field.label}: choose at least ${least}.`
      return n > field.most ? `${field.label}: choose at most ${field.most}.` : null
    },
    part: el(
      'fieldset',
      { class: isShort(field) ? 'short' : null, 'aria-describedby': described },
      el('legend', {}, label),
      hint,
      ticks,
    ),
  }
}
