type Attributes = Readonly<Record<string, string | number | null>>

// XML 1.0 allows no other control characters; direction overrides would turn the words around them
const FORBIDDEN = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]|[\u202A-\u202E\u2066-\u2069]/gu

/** Text as XML content or attribute value; characters that XML forbids are left out. */
export const escapeXml = (text: string): string =>
  text
    .replace(FORBIDDEN, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;')

/** One element; attributes that are null are left out, children are markup already. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(([key, value]) => ` ${key}="${escapeXml(typeof value === 'number' ? short(value) : value!)}"`)
    .join('')
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`
}

export const text = (words: string, attributes: Attributes): string =>
  element('text', attributes, escapeXml(words))

export const title = (words: string): string => element('title', {}, escapeXml(words))

/** A number with two decimals at most: the same bytes on every machine. */
export const short = (value: number): string => String(Math.round(value * 100) / 100)

export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes): string =>
  element('line', { x1, y1, x2, y2, ...attributes })

export const rect = (x: number, y: number, width: number, height: number, attributes: Attributes): string =>
  element('rect', { x, y, width, height, ...attributes })
