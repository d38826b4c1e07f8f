import { recordText } from '../coach/record-text.ts'
import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'

/** Questions shown, the latest: the file holds them all. */
const QUESTIONS_SHOWN = 5

/** What is kept of the client, as they read it: two weeks, how to change it, and the way to all of it. */
export function ownRecord(draft: Draft): { text: string; buttons: Button[] } {
  const { ownData } = draft.texts
  const text = [recordText(draft, draft.texts), ...questionLines(draft), ownData.how].join('\n')
  return { text, buttons: [{ name: 'my-data', label: ownData.button, act: { do: 'my-data' } }] }
}

const questionLines = ({ file, texts }: Draft): string[] =>
  file.questions
    .slice(-QUESTIONS_SHOWN)
    .map(({ words, answer }) => texts.course.mine(words.slice(0, 200), answer))

/** "My data", "my record": asked for in words, and nothing else said. */
export function asksForRecord({ texts }: Draft, text: string): boolean {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[.!?]+$/, '')
  return texts.ownData.asked.includes(said)
}
