import type { Token } from '../reply/tokens.ts'

/** Numbers differ only where they tell a sign: a pain of 9 or 10, a temperature in °C or °F. */
export function numberWord(tokens: readonly Token[], i: number): string {
  const value = valueAt(tokens, i)
  if (value === 9 || value === 10) return '#pain'
  if ((value >= 37.8 && value <= 42.5) || (value >= 100.4 && value <= 107)) return '#fever'
  return '#'
}

/** "38,4" with the comma that many write for a decimal point. */
function valueAt(tokens: readonly Token[], i: number): number {
  const [token, mark, decimals] = [tokens[i]!, tokens[i + 1], tokens[i + 2]]
  const whole = token.value ?? 0
  if (mark?.text !== ',' || mark.start !== token.end || decimals?.start !== mark.end) return whole
  return decimals.kind === 'number' && decimals.end - decimals.start === 1
    ? whole + (decimals.value ?? 0) / 10
    : whole
}
