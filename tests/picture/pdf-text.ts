import { inflateSync } from 'node:zlib'

/** What a reader of a PDF finds: its pages, whether its type is embedded, and its words as they are copied out. */
export function readPdf(data: Uint8Array): { pages: number; embedded: number; text: string } {
  const raw = Buffer.from(data).toString('latin1')
  const objects = [...raw.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => ({
    id: id!,
    head: body!.split('stream\n')[0]!,
    stream: streamOf(body!),
  }))
  const font = new Map<string, Map<string, string>>()
  for (const { head } of objects)
    for (const [, name, id] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const unicode = /\/ToUnicode (\d+) 0 R/.exec(objects.find((one) => one.id === id)?.head ?? '')?.[1]
      const map = objects.find((one) => one.id === unicode)?.stream
      if (map) font.set(name!, lettersOf(map))
    }
  const words = objects.flatMap(({ stream }) => (stream?.includes(' Tf') ? shownIn(stream, font) : []))
  return {
    pages: objects.filter(({ head }) => /\/Type \/Page\b/.test(head)).length,
    embedded: objects.filter(({ head }) => head.includes('/FontFile2')).length,
    text: words.join('\n'),
  }
}

function streamOf(body: string): string | null {
  const at = body.indexOf('stream\n')
  if (at < 0) return null
  const bytes = Buffer.from(body.slice(at + 7, body.lastIndexOf('\nendstream')), 'latin1')
  if (!body.slice(0, at).includes('/FlateDecode') || body.slice(0, at).includes('/Subtype /Image')) return ''
  return inflateSync(bytes).toString('latin1')
}

/** Glyph numbers to letters, from the font's own map ("ToUnicode CMap", ISO 32000-1, 9.10.3). */
function lettersOf(map: string): Map<string, string> {
  const letters = new Map<string, string>()
  for (const [, from, list] of map.matchAll(/<(\w{4})> <\w{4}> \[([^\]]*)\]/g))
    for (const [n, [, code]] of [...list!.matchAll(/<(\w*(?: \w+)*)>/g)].entries())
      letters.set(
        (Number.parseInt(from!, 16) + n).toString(16).padStart(4, '0'),
        Buffer.from(code!.replaceAll(' ', ''), 'hex').swap16().toString('utf16le'),
      )
  return letters
}

function shownIn(stream: string, font: ReadonlyMap<string, ReadonlyMap<string, string>>): string[] {
  let letters: ReadonlyMap<string, string> = new Map()
  const lines: string[] = []
  for (const [, name, shown] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
    if (name) letters = font.get(name) ?? new Map()
    else
      lines.push(
        [...shown!.matchAll(/<(\w+)>/g)]
          .flatMap(([, hex]) => hex!.match(/.{4}/g) ?? [])
          .map((glyph) => letters.get(glyph) ?? '?')
          .join(''),
      )
  }
  return lines
}
