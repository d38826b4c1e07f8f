import type { ChatTexts } from '../text/en/chat.ts'
import type { ChatParts } from './parts.ts'

type Said = Pick<ChatParts, 'texts' | 'otherTexts'>

/** The chat's own sentences in the language to which somebody has set the platform, else in the first one. */
export const textsIn = ({ texts, otherTexts = {} }: Said, locale: string): ChatTexts =>
  otherTexts[locale] ?? texts

/** A sentence in all languages, one below the other: where nothing tells which is read. */
export const inAll = ({ texts, otherTexts = {} }: Said, say: (texts: ChatTexts) => string): string =>
  [...new Set([texts, ...Object.values(otherTexts)].map(say))].join('\n\n')
