import type { Texts } from '../index.ts'
import { nameOfDrill } from './drills.ts'
import { ladderName } from './names.ts'

const drillName = (ladder: string, rung: number): string =>
  nameOfDrill(`${ladder}:${rung}`) ?? `${ladderName(ladder)} ${rung}`
const FURTHER = 'Lo notas más abajo de lo que es habitual en ti. Eso pasa, y es motivo para aflojar.'
const IF_MORE =
  'Si sigue bajando, o si llega adormecimiento o debilidad, para y busca ayuda. Tu coach recibe el aviso.'

/** What a client reads when a step changes or is asked about. */
export const steps = {
  askComfort: (ladder, rung) => `Una cosa más: ¿te resulta cómodo ya “${drillName(ladder, rung)}”?`,
  eased: (ladder, rung) =>
    `${FURTHER} Desde ahora, en vez del paso más difícil: **${drillName(ladder, rung)}**. ${IF_MORE}`,
  rests: (ladder) => `${FURTHER} “${ladderName(ladder)}” descansa por ahora. ${IF_MORE}`,
  allRestNow:
    'Aún no se ha acercado a la espalda, así que todos tus ejercicios descansan por ahora. Tu coach lo mira y decide. Si llega adormecimiento o debilidad, busca ayuda al momento.',
  allButCalmRest:
    'Aún no se ha acercado a la espalda, así que todo menos la respiración en calma descansa por ahora. Tu coach lo mira y decide. Si llega adormecimiento o debilidad, busca ayuda al momento.',
  restOver: (ladders) =>
    ladders.length === 1
      ? `${ladderName(ladders[0]!)} puede volver, en el mismo paso que antes.`
      : `${ladders.map(ladderName).join(' y ')} pueden volver, en el mismo paso que antes.`,
  undone: (ladders) => `Tu coach ha devuelto el paso anterior a: ${ladders.map(ladderName).join(', ')}.`,
  advanced: (ladder, rung) =>
    `Buenas noticias de tu coach: desde mañana, el siguiente paso de “${ladderName(ladder)}” es **${drillName(ladder, rung)}**.`,
  easedByCoach: (ladder, rung) =>
    `Tu coach lo pone un paso más fácil: desde mañana, en “${ladderName(ladder)}” es **${drillName(ladder, rung)}**.`,
  easedAtRest: (ladder) =>
    `Tu coach pone “${ladderName(ladder)}” un paso más fácil. Sigue en descanso; te aviso cuando vuelva.`,
} satisfies Partial<Texts['client']>
