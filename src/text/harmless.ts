/** Words from data that can neither format, link nor call anybody in a chat message; one line, cut to `most`. */
export function harmless(words: string, most = 60): string {
  const line = words.replace(/[\p{C}\p{Zl}\p{Zp}\s]+/gu, ' ').trim()
  const letters = [...line]
  const cut = letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : line
  return cut.replace(/[\\*_~`|<>[\]()#:]/g, '\\$&').replaceAll('@', '@\u200b')
}
