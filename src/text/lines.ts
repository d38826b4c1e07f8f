/** The platform takes 2,000 characters a message; here is room to spare. */
const MOST = 1_800
const ROW_MOST = 6

/** Lines in messages of at most 1,800 characters. */
export function paged(lines: readonly string[]): string[] {
  const pages: string[] = []
  for (const line of lines) {
    const last = pages.at(-1)
    if (last === undefined || last.length + 1 + line.length > MOST) pages.push(line)
    else pages[pages.length - 1] = `${last}\n${line}`
  }
  return pages
}

/** Keeps the first lines and the last; what lies between is cut where one message cannot hold it. */
export function cutLines(lines: readonly string[]): string {
  const kept = [...lines]
  while (kept.length > 2 && kept.join('\n').length > MOST) kept.splice(-2, 1)
  return kept.join('\n')
}

/** Names side by side, a few a line, so that a long list is read without scrolling. */
export function rows(names: readonly string[]): string[] {
  const lines: string[] = []
  for (let at = 0; at < names.length; at += ROW_MOST)
    lines.push(`• ${names.slice(at, at + ROW_MOST).join(', ')}`)
  return lines
}
