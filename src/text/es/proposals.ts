import { isOverruled, proposalsOf, type TakenUp } from '../../domain/rules/taken-up.ts'
import type { Texts } from '../index.ts'
import { RULE } from './digest.ts'

const share = (counts: TakenUp): string => `${Math.round((100 * counts.taken) / proposalsOf(counts))} %`

function line(counts: TakenUp): string {
  const { rule, taken, down, nothing } = counts
  return `• ${RULE[rule]}: ${taken} de ${proposalsOf(counts)} aceptadas (${share(counts)}), ${down} rechazadas, ${nothing} sin respuesta`
}

const overruled = (counts: TakenUp): string =>
  `**${RULE[counts.rule]}**: de ${proposalsOf(counts)} propuestas desde el principio se aceptaron ${counts.taken}. Una regla que casi nunca se sigue puede no servir para tus clientes: mira por qué y díselo a quien cuida el bot.`

const block = (title: string, all: readonly TakenUp[]): string =>
  [`**${title}**`, ...(all.length === 0 ? ['• ninguna decidida o terminada aún'] : all.map(line))].join('\n')

/** What became of what the rules proposed: lately, since the beginning, and which rule is hardly ever followed. */
export const proposals: Texts['proposals'] = {
  takenUp: (lately, ever) =>
    [
      'Qué pasó con las propuestas, regla por regla. Mantener o aflojar se hace sin ti, así que “sin respuesta” lo deja como está.',
      block('Últimos 90 días', lately),
      block('Desde el principio', ever),
      ...ever.filter(isOverruled).map(overruled),
    ].join('\n\n'),
}
