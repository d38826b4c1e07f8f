import { isOverruled, proposalsOf, type TakenUp } from '../../domain/rules/taken-up.ts'
import { RULE } from './digest.ts'

const share = (counts: TakenUp): string => `${Math.round((100 * counts.taken) / proposalsOf(counts))} %`

function line(counts: TakenUp): string {
  const { rule, taken, down, nothing } = counts
  return `• ${RULE[rule]}: ${taken} of ${proposalsOf(counts)} taken up (${share(counts)}), ${down} turned down, nothing done on ${nothing}`
}

const overruled = (counts: TakenUp): string =>
  `**${RULE[counts.rule]}**: of ${proposalsOf(counts)} proposals since the beginning ${counts.taken} were taken up. A rule that is hardly ever followed may be wrong for your clients: look at why, and tell whoever keeps the bot.`

const block = (title: string, all: readonly TakenUp[]): string =>
  [`**${title}**`, ...(all.length === 0 ? ['• none decided or over yet'] : all.map(line))].join('\n')

/** What became of what the rules proposed: lately, since the beginning, and which rule is hardly ever followed. */
function takenUpText(lately: readonly TakenUp[], ever: readonly TakenUp[]): string {
  const blocks = [
    'What became of the proposals, rule by rule. A hold or an easing back acts without you, so “nothing done” lets it stand.',
    block('Last 90 days', lately),
    block('Since the beginning', ever),
    ...ever.filter(isOverruled).map(overruled),
  ]
  return blocks.join('\n\n')
}

export const proposals = { takenUp: takenUpText }
