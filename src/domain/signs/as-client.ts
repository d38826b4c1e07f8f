import type { Token } from '../reply/tokens.ts'
import type { Mine } from './lexicon/shape.ts'

/** How far a verb may stand from its subject ("she still just can't"). */
const BETWEEN = 3

/** The words by which a language speaks of the client as of another, made ready for looking up. */
export class AsClient {
  private readonly people: ReadonlySet<string>
  private readonly lead: ReadonlySet<string>
  private readonly words: ReadonlyMap<string, string>
  private readonly verbs: ReadonlyMap<string, string>

  constructor(private readonly mine: Mine) {
    this.people = new Set(mine.people)
    this.lead = new Set(mine.lead)
    this.words = new Map(Object.entries(mine.words))
    this.verbs = new Map(Object.entries(mine.verbs))
  }

  /** The message as the client would have written it ("she can't feel her foot" -> "i can't feel my foot"). */
  said(tokens: readonly Token[]): Token[] {
    const told: Token[] = []
    let subject = 0
    for (let i = 0; i < tokens.length; i++) {
      const token = tokens[i]!
      const next = tokens[i + 1]?.text ?? ''
      // "my husband" is one subject
      if (this.lead.has(token.text) && this.isPerson(next)) continue
      const text = this.turned(token.text, next, subject > 0)
      subject = this.isSubject(token.text) ? BETWEEN : subject - 1
      told.push(text === token.text ? token : { ...token, text })
    }
    return told
  }

  private turned(text: string, next: string, isOfSubject: boolean): string {
    if (this.people.has(text)) return this.mine.subject
    if (this.isPerson(text)) return this.mine.owner
    const word = this.words.get(`${text} ${next}`) ?? this.words.get(text)
    if (word !== undefined) return word
    const verb = this.mine.dropsSubject || isOfSubject ? this.verbs.get(text) : undefined
    if (verb !== undefined) return verb
    const { ending } = this.mine
    return ending && text.endsWith(ending[0]) ? text.slice(0, -ending[0].length) + ending[1] : text
  }

  private isPerson(text: string): boolean {
    return this.people.has(text) || (text.endsWith("'s") && this.people.has(text.slice(0, -2)))
  }

  private isSubject(text: string): boolean {
    return this.people.has(text) || this.words.get(text) === this.mine.subject
  }
}
