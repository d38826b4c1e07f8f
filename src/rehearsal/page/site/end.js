const NEAR_END_PX = 160

/** Keeps a column at its end, also while pictures come in; wherever else its reader has put it, it stays too. */
export function createEnd(box, list) {
  let stays = true
  let top = 0
  const goTo = () => {
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
  const grown = new ResizeObserver(() => stays && goTo())
  grown.observe(list)
  grown.observe(box)

  const leaveFor = (item) => {
    stays = false
    item.scrollIntoView({ block: 'start' })
  }
  return {
    isThere: () => stays,
    goTo,
    leaveFor,
    /** At the end, unless the item begins above what is in sight then. */
    keepInSight(item) {
      if (item.getBoundingClientRect().top < box.getBoundingClientRect().top) leaveFor(item)
    },
  }
}
