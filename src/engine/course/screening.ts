import type { Side } from '../../domain/checkin.ts'
import { saysNone } from '../../domain/reply/says-none.ts'
import { isSignId } from '../../domain/signs/catalogue.ts'
import { carry } from '../check-in/asked.ts'
import { unaccented } from '../check-in/choose-by-words.ts'
import { nextQuestion } from '../check-in/next-question.ts'
import { trail } from '../check-in/record.ts'
import { screenWords } from '../check-in/screen-words.ts'
import type { Draft } from '../draft.ts'
import type { Filled } from '../event.ts'
import { knownSigns, liftWanted } from '../history.ts'
import type { Field, Option } from '../message.ts'
import { isLocked, isPressing } from '../status.ts'
import { isLeftOut } from '../urgent/listed-signs.ts'
import { askSexual, asksSexual } from '../urgent/sexual-question.ts'
import { setKnownApart, takeSigns } from '../urgent/sign-reading.ts'
import { raiseSigns } from '../urgent/urgent.ts'
import { withCare } from '../urgent/with-care.ts'
import { closeWay } from './leave.ts'
import { ADULT, questionOf, type ScreeningQuestion, STEPS } from './screening-questions.ts'

const NUMBER = /^\s*\d{1,3}\s*$/
/** "3", "1, 4", "2 and 5" or "2 y 5". */
const NUMBERS = /^\d{1,2}(\s*(,|;|\+|&|and|y|\s)\s*\d{1,2})*$/

/** The first form that still lacks an answer, or null where all is there. */
export function nextScreeningStep(draft: Draft): number | null {
  const answers = draft.file.screening?.answers ?? {}
  const step = STEPS.findIndex((questions) => questions.some((q) => answers[q.id] === undefined))
  return step < 0 ? null : step
}

/** What a question offers this client. */
const optionsOf = (draft: Draft, question: ScreeningQuestion): readonly Option[] =>
  question.options(draft.texts).filter(({ value }) => !isLeftOut(draft.file, value))

const field = (draft: Draft, question: ScreeningQuestion): Field => ({
  name: question.id,
  label: draft.texts.screening.label[question.id] ?? question.id,
  kind: question.kind,
  options: optionsOf(draft, question),
  required: question.required,
})

/** Sends the next part: a form of up to five questions, or one question in words. */
export function carryScreening(draft: Draft, step: number, intro: string): void {
  if (asksSexual(draft)) return askSexual(draft, intro)
  const { screening } = draft.texts
  const open = STEPS[step]!.filter((q) => draft.file.screening?.answers[q.id] === undefined)
  const first = open[0]!
  const options = optionsOf(draft, first).map((option) => ({
    name: option.value,
    label: option.label,
    act: { do: 'screening', step, question: first.id, value: option.value },
  }))
  draft.put('asked', {
    id: draft.id('asked', 'screening'),
    clientId: draft.client.id,
    ask: `screening:${first.id}`,
    day: draft.today,
    at: draft.now,
    message: draft.cause,
    pressing: false,
    options,
  })
  const title = screening.title(step + 1, STEPS.length)
  draft.toClient({
    kind: 'screening',
    asks: `screening:${first.id}`,
    text: draft.client.wordsOnly
      ? questionInWords(draft, first, intro)
      : [intro, screening.fillIn].filter(Boolean).join('\n'),
    buttons: draft.client.wordsOnly
      ? []
      : [
          {
            name: 'fill-in',
            label: title,
            act: { do: 'screening', step },
            style: 'main',
            form: { name: `screening-${step}`, title, fields: open.map((q) => field(draft, q)) },
          },
        ],
  })
}

function questionInWords(draft: Draft, question: ScreeningQuestion, intro: string): string {
  const { screening, client } = draft.texts
  const options = optionsOf(draft, question)
  // numbers stand for themselves: a numbered list of them would mislead
  const labels = options.every(({ value }) => /^\d+$/.test(value)) ? [] : options.map(({ label }) => label)
  const list =
    labels.length > 0
      ? `\n${question.kind === 'many' ? client.chooseSeveral(labels) : client.chooseByNumber(labels)}`
      : ''
  return `${intro ? `${intro}\n\n` : ''}${screening.question[question.id] ?? screening.label[question.id]}${list}`
}

/** A filled form: what can be read is kept, what cannot is asked again. */
export function screeningForm(draft: Draft, filled: Filled): void {
  const again: string[] = []
  // what may be left empty and was counts as answered: otherwise the same part would come again for ever
  const step = nextScreeningStep(draft)
  for (const question of step === null ? [] : STEPS[step]!)
    if (!question.required && filled[question.id] === undefined) keep(draft, question, '')
  for (const [id, given] of Object.entries(filled)) {
    const question = questionOf(id)
    // a line that tells of a sign is asked again once that is cleared up, as in words
    if (!question || (question.kind === 'line' && takesSign(draft, String(given)))) continue
    if (!keep(draft, question, given)) again.push(id)
  }
  goOn(draft, again)
}

/** A sign written where something else was asked; an age of 41 is no fever. */
function takesSign(draft: Draft, text: string): boolean {
  const heard = NUMBER.test(text) ? null : screenWords(draft, text)
  if (!heard || heard.signs.length === 0) return false
  trail(draft, 'form', text, draft.today, heard)
  takeSigns(draft, setKnownApart(draft, { ...heard, denied: [] }, text), draft.today, text)
  return isLocked(draft.file) || isPressing(draft.file)
}

/** One answer in words: a number of the list, several of them, or the words themselves. */
export function screeningWords(draft: Draft, questionId: string, text: string): void {
  const question = questionOf(questionId)
  if (!question) return
  const given = question.kind === 'line' ? text : chosenValues(draft, text, question)
  goOn(draft, keep(draft, question, given) ? [] : [questionId])
}

/** The values chosen: a label or value in words, "none", or the numbers of the list. Empty where it is no choice. */
export function chosenValues(draft: Draft, text: string, question: ScreeningQuestion): string[] {
  const options = optionsOf(draft, question)
  const lower = unaccented(text.trim()).replace(/[.!]+$/, '')
  const byWord = options.find((o) => unaccented(o.label) === lower || o.value === lower)
  if (byWord) return [byWord.value]
  if (question.kind === 'many' && saysNone(text, draft.client.language)) return ['none']
  const firstWord = options.filter((o) => unaccented(o.label).split(/[ ,(]/)[0] === lower)
  if (firstWord.length === 1) return [firstWord[0]!.value]
  if (!NUMBERS.test(lower)) return []
  return (lower.match(/\d+/g) ?? []).flatMap((n) => options[Number(n) - 1]?.value ?? [])
}

function keep(draft: Draft, question: ScreeningQuestion, given: string | readonly string[]): boolean {
  const value = question.read(given, draft.texts)
  const empty = given.length === 0 && !question.required
  if (value === null && !empty) return false
  const screening = draft.file.screening!
  draft.put('screening', { ...screening, answers: { ...screening.answers, [question.id]: value ?? '' } })
  return true
}

/** An urgent answer goes the urgent way at once; a minor is refused; else the next part, or the end. */
function goOn(draft: Draft, again: readonly string[]): void {
  const { client, screening } = draft.texts
  const answers = draft.file.screening!.answers
  const age = answers.age
  // before the age is looked at: a sign of somebody under age is one all the same
  raiseScreened(draft)
  if (typeof age === 'number' && age < ADULT) {
    draft.drop('asked', draft.id('asked', 'screening'))
    closeWay(draft, 'left')
    draft.toClient({ kind: 'notice', text: withCare(draft, client.minor) })
    draft.toCoach({ kind: 'notice', text: draft.forCoach.coach.minor(draft.client.ref) })
    return
  }
  // somebody who has just been told to seek care is asked no more; it goes on after the clearance
  if (isLocked(draft.file)) return draft.drop('asked', draft.id('asked', 'screening'))
  const hint = isPressing(draft.file) ? nextQuestion(draft, draft.today, []) : null
  if (hint) {
    draft.drop('asked', draft.id('asked', 'screening'))
    return void draft.toClient({ kind: 'ask', text: hint.text, ...carry(draft, hint) })
  }
  const step = nextScreeningStep(draft)
  if (step === null) return finish(draft)
  const intro = again.length > 0 ? screening.again(again.map((id) => screening.label[id] ?? id)) : ''
  carryScreening(draft, step, intro)
}

function raiseScreened(draft: Draft): void {
  const signs = draft.file.screening!.answers.signs
  if (!Array.isArray(signs)) return
  const raised = new Set(draft.file.signs.map((row) => row.sign))
  const fresh = signs.filter(isSignId).filter((sign) => !raised.has(sign))
  if (fresh.length > 0) raiseSigns(draft, fresh, draft.today, draft.forCoach.client.ticked)
}

/** All is there: a risk answer parks the client until a clinician has agreed; the coach is told either way. */
function finish(draft: Draft): void {
  const screening = draft.file.screening!
  draft.put('screening', { ...screening, doneAt: draft.now })
  draft.drop('asked', draft.id('asked', 'screening'))
  const side = screening.answers.side
  draft.put('client', {
    ...draft.client,
    stage: 'enrolled',
    side: (side as Side | undefined) ?? draft.client.side,
  })
  const risks = riskAnswers(draft)
  if (risks.length > 0) {
    draft.put('hold', {
      id: draft.id('hold', 'park', draft.cause),
      clientId: draft.client.id,
      kind: 'park',
      ladder: null,
      reason: risks.join(' '),
      by: 'rules',
      at: draft.now,
      day: draft.today,
      endedAt: null,
      endedBy: null,
    })
  }
  draft.toClient({
    kind: 'screening',
    text: risks.length > 0 ? draft.texts.client.parked : draft.texts.client.screened,
  })
  draft.toCoach({
    kind: 'notice',
    text: draft.forCoach.coach.screened(
      draft.client.ref,
      { ...screening.answers, lift: liftWanted(draft.file) ?? '' },
      risks,
      knownSigns(draft.file).map((sign) => draft.forCoach.signs[sign].short),
    ),
  })
}

function riskAnswers(draft: Draft): string[] {
  const answers = draft.file.screening!.answers
  const risks = Array.isArray(answers.risks) ? answers.risks : []
  return risks.map((risk) => draft.forCoach.screening.risk[risk] ?? risk)
}
