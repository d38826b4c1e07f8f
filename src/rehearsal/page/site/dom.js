/** An element with attributes, listeners (`onclick`) and children; text is always text, never markup. */
export function el(tag, given = {}, ...children) {
  const made = document.createElement(tag)
  for (const [name, value] of Object.entries(given)) {
    if (value === null || value === undefined || value === false) continue
    if (name.startsWith('on')) made.addEventListener(name.slice(2), value)
    else if (name === 'value' || name === 'checked' || name === 'disabled' || name === 'selected')
      made[name] = value
    else made.setAttribute(name, value === true ? '' : String(value))
  }
  made.append(...children.flat(9).filter((child) => child !== null && child !== undefined && child !== ''))
  return made
}

export const byId = (id) => document.getElementById(id)

/** The platform's light marks: `**bold**`, and lines that begin with `> ` for what is quoted; nothing else. */
export const marked = (text) =>
  text
    .split(/((?:^> .*(?:\n|$))+)/gm)
    .map((part, n) =>
      n % 2 === 1 ? el('blockquote', {}, bold(part.replace(/^> /gm, '').trimEnd())) : bold(part),
    )
const bold = (text) =>
  text.split(/\*\*(.+?)\*\*/gs).map((part, n) => (n % 2 === 1 ? el('strong', {}, part) : part))

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat']
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** "Sun 8 Mar" of "2026-03-08" or of "2026-03-08T08:00". */
export function dateWords(local) {
  const [year, month, day] = local.slice(0, 10).split('-').map(Number)
  const weekday = new Date(Date.UTC(year, month - 1, day)).getUTCDay()
  return `${DAYS[weekday]} ${day} ${MONTHS[month - 1]}`
}
export const timeWords = (local) => local.slice(11, 16)
