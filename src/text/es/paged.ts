/** The platform takes 2,000 characters a message; here is room to spare. */
const MOST = 1_800

/** Lines in messages of at most so many characters. */
export function paged(lines: readonly string[]): string[] {
  const pages: string[] = []
  for (const line of lines) {
    const last = pages.at(-1)
    if (last === undefined || last.length + 1 + line.length > MOST) pages.push(line)
    else pages[pages.length - 1] = `${last}\n${line}`
  }
  return pages
}
