import { fileURLToPath } from 'node:url'
import { LADDERS } from '../../../src/domain/ladder/ladders.ts'
import { DEFAULT_GATE } from '../../../src/domain/ladder/plan.ts'
import { RULES } from '../../../src/domain/rules/table.ts'
import { careOf, isCaudaEquina, SIGN_IDS, SIGNS } from '../../../src/domain/signs/catalogue.ts'
import { DRILLS, KIT, LADDER_NAMES, STOP_RULE } from '../../../src/text/en/drills.ts'
import { SIGN_WORDS } from '../../../src/text/en/signs.ts'

/** A page in the folder whose data it shows, made from that data by `npm run pages`. */
export interface Page {
  readonly path: string
  readonly text: string
}

const MADE = 'Made from the code by `npm run pages`; a test holds it to what the code says.'

const at = (path: string): string => fileURLToPath(new URL(`../../../src/domain/${path}`, import.meta.url))

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ')
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n')

function rules(): Page {
  const rows = RULES.map((rule) => [
    `\`${rule.id}\``,
    rule.title,
    `${rule.looksAt} (${Number.isFinite(rule.looksBack) ? `${rule.looksBack} days` : 'all days'})`,
    rule.condition,
    rule.level,
    rule.falseAlarms === null ? '' : String(rule.falseAlarms),
    rule.source,
  ])
  return {
    path: at('rules/README.md'),
    text: `# The rules

${MADE}

Levels: \`note\` informs, \`hold\` keeps every ladder where it is, \`ease-back\` proposes a rung lower, \`same-day\` and \`emergency\` stop all drills until a clinician has cleared the sign. The rest is the coach's to decide. The last figure is how often a rule speaks on made-up diaries of people who neither get better nor worse, in episodes a client and month (\`ebb simulate\`); where there is none, such diaries cannot set it off.

${table(['rule', 'says', 'looks at', 'when', 'level at most', 'on stable diaries', 'source'], rows)}
`,
  }
}

function signs(): Page {
  const rows = SIGN_IDS.map((id) => [
    `\`${id}\``,
    careOf(id) + (isCaudaEquina(id) ? ', possible cauda equina' : ''),
    SIGN_WORDS[id].label,
    SIGN_WORDS[id].question,
    SIGNS[id].source,
  ])
  return {
    path: at('signs/README.md'),
    text: `# The urgent signs

${MADE}

Care: \`emergency\` and \`same-day\` stop all drills at once and alert the coach until somebody takes it up; \`soon\` is told to client and coach, to be looked at by a clinician in the next days. Nothing here is a diagnosis: a sign says who must look, not what it is.

${table(['sign', 'care', 'in the form', 'asked as', 'source'], rows)}
`,
  }
}

function ladders(): Page {
  const { checkIns, days, share, painAtMost } = DEFAULT_GATE
  const parts = LADDERS.map(({ id, number, rungs }) => {
    const rows = rungs.map((drill, index) => {
      const { reps, holdSeconds, easeSeconds, sets, timesADay } = drill.dose
      const prose = DRILLS[drill.id]
      if (!prose) throw new Error(`no words for the drill ${drill.id}`)
      const hold = holdSeconds > 0 ? `, held ${holdSeconds} s` : ''
      const ease = easeSeconds > 0 ? `, ${easeSeconds} s of ease` : ''
      return [
        String(index + 1),
        prose.name,
        `${sets} × ${reps}${hold}${ease}; at most ${timesADay} a day`,
        drill.kit.map((one) => KIT[one as keyof typeof KIT]).join(', '),
        prose.how,
        `${prose.cautions} ${prose.stopIf}`,
      ]
    })
    const name = LADDER_NAMES[id] ?? id
    return `## ${number}. ${name} (\`${id}\`)\n\n${table(['rung', 'drill', 'dose', 'with', 'how', 'cautions'], rows)}`
  })
  return {
    path: at('ladder/README.md'),
    text: `# The ladders

${MADE} Doses are common practice; a coach's own word goes before them. A practice may add its own ladders (\`EBBLINE_LADDERS\`).

A rung may be left for the next after ${checkIns} check-ins on at least ${days} days of it, ${share * 100} % of the sessions done, pain at most ${painAtMost}, the reach no further down than at the start of the rung, and no open hold; the coach may set other numbers, and decides.

Said below every list of drills: “${STOP_RULE}”

${parts.join('\n\n')}
`,
  }
}

export const PAGES: readonly Page[] = [rules(), signs(), ladders()]
