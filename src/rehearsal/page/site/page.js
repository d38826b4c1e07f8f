import { brokenWords, showBreaks, showFiles, showTime } from './bars.js'
import { createColumn } from './cards.js'
import { byId, dateWords, el, timeWords } from './dom.js'
import { showFirstSteps } from './first-steps.js'
import { openForm } from './forms.js'
import { clearHint, hintsFor } from './hints.js'
import { createRibbon } from './ribbon.js'
import { act, follow, get } from './server.js'

/** What the server last said; the page keeps no state of its own beside what is being typed. */
let state = null
let leave = () => {}
/** Acts that are not answered yet. */
let waiting = 0
let toldTrouble = null
const showBusy = () =>
  document.body.classList.toggle('busy', waiting > 0 || state.busy || state.playing !== null)

const tell = (text, isProblem = false) => {
  byId('status').textContent = text
  byId('status').classList.toggle('problem', isProblem)
}

const ONWARD = ['say', 'command', 'time', 'play']
/** Does something, and says in a sentence where it could not be done. */
async function doing(action) {
  // whoever goes on wants to see what comes of it, wherever they have looked before; a card is used where it lies
  if (ONWARD.includes(action.do)) for (const column of Object.values(columns)) column.toEnd()
  waiting += 1
  showBusy()
  try {
    const done = await act(action)
    if (done.form)
      openForm(done.form, (fields) => doing({ do: 'submit', as: action.as, form: done.form.form, fields }))
    return done
  } catch (error) {
    tell(error.message, true)
    return null
  } finally {
    waiting -= 1
    showBusy()
  }
}

const me = () => state?.who ?? null
const columns = {
  client: createColumn(byId('client-cards'), {
    as: me,
    doing,
    get,
    more: () => more('client'),
    empty: 'Nothing has come to this phone yet.',
  }),
  coach: createColumn(byId('coach-cards'), {
    as: () => 'coach',
    doing,
    get,
    more: () => more('coach'),
    empty: 'Nothing has come to the coach’s rooms yet.',
  }),
}
const ribbon = createRibbon(byId('ribbon'), {
  show: (day) => showDay(day),
  goTo: (day) => doing({ do: 'time', to: 'date', day }),
})

async function more(side) {
  const first = columns[side].firstId()
  if (!state.more[side] || first === null) return false
  const who = side === 'coach' ? 'coach' : me()
  const older = await get(`cards?who=${encodeURIComponent(who)}&before=${encodeURIComponent(first)}`)
  state.more = { ...state.more, [side]: older.more }
  columns[side].putBefore(older.cards, older.more)
  return older.cards.length > 0
}

/** Both columns at a day: what was sent then, or the last before it. */
async function showDay(day) {
  for (const side of ['client', 'coach']) {
    while (columns[side].firstDay() !== null && columns[side].firstDay() > day && (await more(side)));
    columns[side].scrollToDay(day)
  }
  tell(`Day ${day} is shown.`)
}

function takeSnapshot(given) {
  state = given
  tell(
    given.who === null
      ? ''
      : `You are ${given.who} on the left and the coach on the right: write, press what was sent, or let time pass.`,
  )
  byId('title').textContent = given.title
  for (const side of ['client', 'coach'])
    columns[side].begin(
      given.cards.filter((card) => card.side === side),
      given.more[side],
    )
  ribbon.begin(given.days)
  showAll()
}

function takeChange(given) {
  if (given.anew) return takeSnapshot(given.anew)
  const { cards = [], gone = [], days = [], ...rest } = given
  state = { ...state, ...rest }
  for (const side of ['client', 'coach']) {
    columns[side].put(cards.filter((card) => card.side === side && isMine(card)))
    columns[side].drop(gone)
  }
  if (days.length > 0) ribbon.put(days)
  const news = cards.filter((card) => card.from === 'bot' && isMine(card))
  if (news.length > 0) tell(newsIn(news))
  showAll()
}

const isMine = (card) => card.side === 'coach' || card.place === `client:${me()}`

function newsIn(cards) {
  const many = (n, where) => (n === 0 ? null : `${n} new ${n === 1 ? 'message' : 'messages'} ${where}`)
  const mine = cards.filter(({ side }) => side === 'client').length
  const parts = [many(mine, `on ${me()}’s phone`), many(cards.length - mine, 'in the coach’s rooms')]
  return `${parts.filter(Boolean).join(', ')}.`
}

/** All that is small enough to be made anew each time. */
function showAll() {
  const { now, troubles, faults } = state
  const next =
    now.next === null ? 'nothing more is due' : `due next: ${dateWords(now.next)} ${timeWords(now.next)}`
  byId('clock').textContent =
    `${dateWords(now.local)}, ${timeWords(now.local)} · day ${now.day} · ${now.zone} · ${next}`
  byId('broken').textContent = brokenWords(faults)
  showBusy()
  // once: what is done afterwards has more to say
  const trouble = troubles.at(-1) ?? null
  if (trouble !== null && trouble !== toldTrouble) tell(trouble, true)
  toldTrouble = trouble
  ribbon.today(now.day)
  showWho()
  showTime(byId('time'), state, doing)
  showBreaks(byId('breaks'), state, doing)
  showFiles(byId('files'), state, doing)
  showFirstSteps(byId('first-steps'), state, doing)
}

const STATUS = {
  screening: 'first questions',
  parked: 'waits for a yes from their doctor',
  locked: 'plan locked',
  paused: 'on a break',
}
const statusWords = (status) => (status === null ? 'not invited yet' : (STATUS[status] ?? status))

let shownWho = ''
function showWho() {
  const { clients, who } = state
  const owner = clients.find(({ ref }) => ref === who)
  byId('say-label').textContent =
    who === null ? 'Nobody has a phone here yet' : `Write as ${who}, such as “2 calf 4”, or type a command`
  byId('say-fields').disabled = who === null
  byId('client-head').textContent = owner
    ? `${owner.ref}’s phone, ${dateWords(owner.local)} ${timeWords(owner.local)}`
    : 'The client’s phone'
  const key = JSON.stringify([who, clients.map(({ ref, status }) => [ref, status])])
  if (key === shownWho) return
  shownWho = key
  const options = clients.map(({ ref, status }) =>
    el('option', { value: ref, selected: ref === who }, `${ref}, ${statusWords(status)}`),
  )
  const pick = el('select', { id: 'whose', onchange: ({ target }) => be(target.value) }, options)
  const name = el('input', {
    id: 'new-name',
    size: 10,
    maxlength: 30,
    pattern: '[\\p{L}\\d\\-]+',
    title: 'Letters, digits and hyphens',
    required: true,
    autocomplete: 'off',
  })
  const add = async (event) => {
    event.preventDefault()
    const ref = name.value.trim()
    if (await doing({ do: 'add-client', ref })) be(ref)
  }
  byId('who').replaceChildren(
    ...(clients.length > 0 ? [el('label', { for: 'whose' }, 'Be'), pick] : []),
    el(
      'form',
      { class: 'bar', onsubmit: add },
      el('label', { for: 'new-name' }, 'New client'),
      name,
      el('button', {}, 'Add'),
    ),
  )
}

function be(who) {
  leave()
  leave = follow(who, {
    snapshot: takeSnapshot,
    change: takeChange,
    lost: (forGood) =>
      tell(
        forGood
          ? 'The rehearsal has ended. Start it again with npm start.'
          : 'The rehearsal does not answer; trying again.',
      ),
  })
}

byId('say').addEventListener('submit', async (event) => {
  event.preventDefault()
  const line = byId('say-line')
  const text = line.value
  if (text.trim() === '' || me() === null) return
  const done = await doing(
    text.startsWith('/') ? { do: 'command', as: me(), line: text } : { do: 'say', as: me(), text },
  )
  if (!done || line.value !== text) return
  line.value = ''
  clearHint('say-hint')
})
byId('order').addEventListener('submit', async (event) => {
  event.preventDefault()
  const line = byId('order-line')
  const text = line.value.trim()
  if (text === '') return
  const done = await doing({ do: 'command', as: 'coach', line: text.startsWith('/') ? text : `/${text}` })
  if (!done || line.value.trim() !== text) return
  line.value = ''
  clearHint('order-hint')
})

for (const [name, by] of [
  ['say', 'client'],
  ['order', 'coach'],
])
  hintsFor(byId(`${name}-line`), byId(`${name}-hint`), { commands: () => state.commands, by })

be(null)
