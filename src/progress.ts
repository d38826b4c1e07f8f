const WIDTH = 30

/** A bar on standard error where that is a terminal, drawn again only when a percent is full; else nothing. */
export function progressBar(stream: NodeJS.WriteStream = process.stderr): (done: number, of: number) => void {
  let shown = -1
  return (done, of) => {
    const percent = of === 0 ? 100 : Math.floor((100 * done) / of)
    if (!stream.isTTY || percent === shown) return
    shown = percent
    const full = Math.round((WIDTH * percent) / 100)
    // back to the start of the line; the last one clears it, so that nothing of the bar is left
    const bar = `[${'#'.repeat(full)}${'.'.repeat(WIDTH - full)}] ${String(percent).padStart(3)} %`
    stream.write(percent === 100 ? `\r${' '.repeat(bar.length)}\r` : `\r${bar}`)
  }
}
