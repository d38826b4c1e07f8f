/** "he i, she i": each word, or two, and the last what stands for it. */
export const pairsIn = (text: string): Record<string, string> =>
  Object.fromEntries(
    text
      .trim()
      .split(/\s*,\s*/)
      .map((pair) => {
        const at = pair.lastIndexOf(' ')
        return [pair.slice(0, at), pair.slice(at + 1)]
      }),
  )
