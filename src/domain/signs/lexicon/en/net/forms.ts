const VOWELS = 'aeiou'
const HISSES = ['s', 'x', 'z', 'ch', 'sh']

/** The forms of a regular English verb; a short one ("drag", "open") both with and without its doubled letter. */
function formsOf(verb: string): string[] {
  const last = verb.at(-1)!
  if (last === 'e') return [verb, `${verb}s`, `${verb}d`, `${verb.slice(0, -1)}ing`]
  if (HISSES.some((hiss) => verb.endsWith(hiss))) return [verb, `${verb}es`, `${verb}ed`, `${verb}ing`]
  const before = verb.at(-2)!
  if (last === 'y' && !VOWELS.includes(before)) {
    const stem = verb.slice(0, -1)
    return [verb, `${stem}ies`, `${stem}ied`, `${verb}ing`]
  }
  const plain = [verb, `${verb}s`, `${verb}ed`, `${verb}ing`]
  const isShort = VOWELS.includes(before) && !VOWELS.includes(last)
  return isShort ? [...plain, `${verb}${last}ed`, `${verb}${last}ing`] : plain
}

/** "drag*" stands for the verb in all its forms: "drag, drags, dragged, dragging". */
export const inflected = (text: string): string =>
  text.replace(/([a-z]+)\*/g, (_, verb: string) => `(${formsOf(verb).join('/')})`)
