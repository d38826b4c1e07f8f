import { entryOf } from './card.js'
import { dateWords, el } from './dom.js'
import { createEnd } from './end.js'

/** One column of cards, in order of time. */
export function createColumn(box, { as, doing, get, more, empty }) {
  const list = el('ol', { class: 'list' })
  const none = el('p', { class: 'empty' }, empty)
  const older = el('button', { class: 'older', hidden: true, onclick: () => more() }, 'Earlier messages')
  box.append(none, older, list)
  const items = new Map()
  const cards = () => [...items.values()].map(({ card }) => card)
  const end = createEnd(box, list)

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
      end.goTo()
    },
    put(given) {
      if (given.length === 0) return
      const follows = end.isThere()
      const fresh = given.filter(({ id }) => !items.has(id))
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
      if (!follows) return
      end.goTo()
      // what else a day brings must not carry an urgent card out of sight
      const urgent = fresh.find(({ care }) => care === 'emergency')
      if (urgent && fresh.at(-1).day === fresh[0].day) end.keepInSight(items.get(urgent.id).item)
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
    toEnd: end.goTo,
    firstId: () => cards()[0]?.id ?? null,
    firstDay: () => cards()[0]?.day ?? null,
    scrollToDay(day) {
      const of = cards().find((card) => card.day >= day) ?? cards().at(-1)
      if (of) end.leaveFor(items.get(of.id).item)
    },
  }
}
