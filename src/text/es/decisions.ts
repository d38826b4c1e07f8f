import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'
import { DECISION, ladderName, PROPOSAL_IN_FULL } from './names.ts'

const name = (ref: string): string => `**${harmless(ref)}**`
const DONE: Readonly<Record<string, string>> = {
  ...DECISION,
  refer: 'derivar a un profesional de salud',
  stop: 'parar todos los ejercicios',
}

function what(decision: string, ladder: string | null): string {
  const done = DONE[decision] ?? decision
  const about = decision === 'advance' || decision === 'ease-back'
  return ladder !== null && about ? `${done} en ${ladderName(ladder)}` : done
}

/** What a coach reads about decisions. */
export const decisions: Texts['decisions'] = {
  withReason: 'Con un motivo…',
  formTitle: (ref) => `Decidir para ${ref}`,
  field: {
    decision: 'Decisión',
    reason: 'Tu motivo, en una línea',
    show: '¿Mostrar el motivo al cliente?',
    by: 'Quién le ha visto: la profesión',
    on: 'En qué fecha, como 2026-03-13',
  },
  showYes: 'Sí, palabra por palabra',
  showNo: 'No, solo para el registro',
  startAgain: 'Empezar otra vez',
  clear: 'Registrar un visto bueno…',
  clearTitle: (ref) => `Visto bueno para ${ref}`,
  decided: ({ ref, decision, ladder, by, reason, shown, started }) => {
    const told = shown ? 'El cliente recibió el aviso, con el motivo.' : 'El cliente recibió el aviso.'
    const kept =
      reason === '' ? '' : ` Motivo: ${harmless(reason, 300)}${shown ? '' : ' (sin mostrar al cliente)'}.`
    const stopped =
      decision === 'stop'
        ? ' Siguen parados hasta que alguien decida otra vez: mantener los inicia donde estaban.'
        : ''
    return `Decidido para ${name(ref)}: ${what(decision, ladder)}, por ${by}.${started ? ' Los ejercicios empiezan otra vez.' : ''}${stopped}${kept} ${told}`
  },
  already: ({ ref, decision, ladder, by, at }) =>
    `${by} ya ha decidido para ${name(ref)}, ${at}: ${what(decision, ladder)}. Ahora no se ha cambiado nada.`,
  stale: ({ ref, day, values, proposal, same }) =>
    `Desde entonces llegó una respuesta nueva de ${name(ref)} (${date(day)}: ${values || 'sin números'}). La propuesta ${same ? 'es la misma' : 'es ahora'}: ${PROPOSAL_IN_FULL[proposal]}. Aún no se ha cambiado nada.`,
  allTheSame: (decision, ladder) => `Aun así: ${what(decision, ladder)}`,
  stoppedAlready: (ref) =>
    `Los ejercicios de ${name(ref)} ya están parados. Mantener los inicia otra vez donde estaban.`,
  noReason: 'Al formulario le falta la decisión. No se ha cambiado nada.',
}

/** What a client hears of them. */
export const decided: Texts['decided'] = {
  stopped:
    'Tu coach ha parado todos tus ejercicios por ahora. No hagas ninguno hasta que tu coach te diga, por favor. Sigue contándome cómo vas. Si llega una señal de alarma, busca ayuda al momento y no nos esperes.',
  stoppedWork: 'Sin ejercicios por ahora: tu coach los ha parado y te va a decir cuándo empiezas otra vez.',
  startedAgain: 'Tu coach inicia otra vez tus ejercicios, en los mismos pasos que antes.',
  again: 'Tu coach inicia otra vez tus ejercicios.',
  referredStopped:
    'Tu coach quiere que un médico u otro profesional lo mire contigo, y te va a escribir sobre eso. Tus ejercicios siguen parados hasta entonces.',
  reason: (text) => `Tu coach añade: “${harmless(text, 300)}”`,
}
