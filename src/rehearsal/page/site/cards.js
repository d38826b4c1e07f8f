import { entryOf } from './card.js'
import { dateWords, el } from './dom.js'

const NEAR_END_PX = 160

/** One column of cards, in order of time. */
export function createColumn(box, { as, doing, get, more, empty }) {
  const list = el('ol', { class: 'list' })
  const none = el('p', { class: 'empty' }, empty)
  const older = el('button', { class: 'older', hidden: true, onclick: () => more() }, 'Earlier messages')
  box.append(none, older, list)
  const items = new Map()
  const cards = () => [...items.values()].map(({ card }) => card)

  // at its end a column stays there, also while pictures come in; wherever else its reader has put it, it stays too
  let stays = true
  let top = 0
  const toEnd = () => {
    stays = true
    box.scrollTop = box.scrollHeight
    top = box.scrollTop
  }
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
    const item = entryOf(card, { as, doing, get })
    items.set(card.id, { card, item })
    return item
  }
  const count = () => {
    none.hidden = items.size > 0
  }
  /** The date stands over a day's first card. */
  function mark() {
    let day = null
    for (const { card, item } of items.values()) {
      const date = card.local.slice(0, 10)
      const isFirst = date !== day
      day = date
      const before = item.firstElementChild.className === 'day' ? item.firstElementChild : null
      if (isFirst === (before !== null)) continue
      if (before) before.remove()
      else item.prepend(el('p', { class: 'day' }, `${dateWords(card.local)}, day ${card.day}`))
    }
  }

  return {
    begin(given, hasMore) {
      items.clear()
      list.replaceChildren(...given.map(make))
      older.hidden = !hasMore
      count()
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
      count()
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
      if (ids.length === 0) return
      count()
      mark()
    },
    toEnd,
    firstId: () => cards()[0]?.id ?? null,
    firstDay: () => cards()[0]?.day ?? null,
    scrollToDay(day) {
      const of = cards().find((card) => card.day >= day) ?? cards().at(-1)
      stays = false
      if (of) items.get(of.id).item.scrollIntoView({ block: 'start' })
    },
  }
}
