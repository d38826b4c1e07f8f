import { byId } from './dom.js'

const SHOWN_MOST = 12

/** Under a line in which a command is typed: which there are, or what this one takes. */
export function hintsFor(line, hint, { commands, by }) {
  line.addEventListener('input', () => {
    hint.textContent = hintOf(line.value, commands(), by)
  })
}
export const clearHint = (id) => {
  byId(id).textContent = ''
}

function hintOf(typed, all, by) {
  if (!typed.startsWith('/')) return ''
  const [, name, more] = /^\/([^\s]*)(\s?)/.exec(typed)
  const mine = all.filter((one) => one.by === by)
  const fitting = mine.filter((one) => one.name.startsWith(name))
  if (fitting.length === 0) return `There is no command ${typed.split(/\s/)[0]} here.`
  const isWhole = more !== '' && fitting.some((one) => one.name === name)
  if (fitting.length > 1 && !isWhole) {
    const names = fitting.slice(0, SHOWN_MOST).map((one) => `/${one.name}`)
    return `${names.join('  ')}${fitting.length > SHOWN_MOST ? '  …' : ''}`
  }
  const found = isWhole ? fitting.find((one) => one.name === name) : fitting[0]
  const options = found.options
    // rooms and the role are filled in by the rehearsal
    .filter(({ kind }) => kind !== 'channel' && kind !== 'role')
    .map(({ name: option, about, required, choices }) => {
      const given = choices.length > 0 && choices.length < 8 ? choices.join(' or ') : about
      return `${option}:${required ? '' : ' (may be left out)'} ${given}`
    })
  return [`/${found.name}: ${found.about}`, ...options].join(' · ')
}
