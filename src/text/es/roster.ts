import type { AttentionGroup, RollCallEntry } from '../../domain/digest/attention.ts'
import type { WeekFacts } from '../../domain/digest/facts.ts'
import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date, number } from './dates.ts'
import { attentionWords, DIRECTION, takenWords } from './digest.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { words } from './words.ts'

const HEADING: Readonly<Record<AttentionGroup, string>> = {
  needs: '**Te necesita**',
  move: '**Puede avanzar**',
  rest: '**Los demás**',
}

/** "6/7 respuestas, pantorrilla, dolor 4, estable": the week in a few words. */
function week({ replies, reach, pain }: WeekFacts): string {
  const zone = reach.path.at(-1) ?? null
  return [
    `${replies.answered}/${replies.days} respuestas`,
    zone === null ? '' : REACH[zone],
    pain.now === null ? '' : `dolor ${number(pain.now)}`,
    reach.direction === 'unclear' ? '' : DIRECTION[reach.direction].split(',')[0]!,
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function said(entry: RollCallEntry): string {
  const { facts, group } = entry
  if (group === 'needs') return attentionWords(entry)
  const standing = facts.standing === 'active' ? '' : words.status(facts.standing)
  const planless = facts.standing === 'active' && facts.rungs.length === 0 ? 'aún sin plan' : ''
  const step =
    group === 'move' && facts.ladder ? `siguiente paso en ${harmless(ladderName(facts.ladder), 30)}` : ''
  const begun = facts.rungs.length > 0 && !['discharged', 'left'].includes(facts.standing)
  return [step, standing, planless, begun ? week(facts) : '', ...takenWords(facts)].filter(Boolean).join('; ')
}

/** The roster that a coach asks for, in private. */
export const roster: Texts['roster'] = {
  head: ({ needs, move, rest }, on, page) => {
    const pages = page.of > 1 ? ` · página ${page.number} de ${page.of}` : ''
    return `**Lista, ${date(on)}** · ${needs} ${needs === 1 ? 'te necesita' : 'te necesitan'}, ${move} ${move === 1 ? 'puede' : 'pueden'} avanzar, ${rest} más${pages}`
  },
  heading: (group) => HEADING[group],
  line: (entry) => `• **${harmless(entry.facts.ref)}**: ${said(entry) || 'nada nuevo'}`,
  previous: '◀ Anterior',
  next: 'Siguiente ▶',
  open: 'Abrir un registro',
  gone: 'Ese cliente ya no está aquí. Usa /roster otra vez.',
}
