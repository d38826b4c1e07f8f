import type { RuleId } from '../../domain/rules/assessment.ts'

/** What the coach hears of a rule, in one line. */
export const COACH: Readonly<Record<RuleId, string>> = {
  sign: 'Hay una señal de alarma abierta: los ejercicios paran (o nada avanza) hasta el visto bueno o hasta que se anote.',
  'reach-spread':
    'El alcance se aleja de la espalda: la última escalera que avanzó baja un peldaño. Un motivo para aflojar, no un desastre: en el único ensayo conocido, a estas personas les fue casi igual al final.',
  'below-knee': 'Primer día por debajo de la rodilla: nada avanza; míralo el mismo día.',
  'pain-up': 'El dolor está por encima de lo habitual: nada avanza.',
  'pain-severe': 'Dolor de 8 o más dos veces seguidas: nada avanza; míralo el mismo día.',
  flare: 'Un brote tras las sesiones no había cedido al día siguiente: mantén la escalera.',
  'trend-pain': 'El dolor tiene una dirección en cuatro semanas.',
  'trend-reach': 'El alcance tiene una dirección en cuatro semanas.',
  meaningful: 'Mejor que al inicio, por más que el menor cambio que importa.',
  adherence: 'Se hicieron pocas de las sesiones del plan: se pregunta al cliente qué lo impide.',
  quiet: 'Sin respuestas: un recordatorio tras 3 días, te aviso tras 5, pausa tras 14.',
  plateau: 'Seis semanas sin un cambio que importe: piensa en derivar.',
  gate: 'Se cumple todo: puede venir el peldaño siguiente, si estás de acuerdo.',
  regain: 'Por debajo de la rodilla dos días, tras dos semanas o más por encima: mira el peldaño.',
}

/** What the client hears of a rule; null where it is for the coach alone. */
export const CLIENT: Readonly<Record<RuleId, string | null>> = {
  sign: null,
  'reach-spread':
    'Lo que notas se ha alejado de tu espalda más de lo habitual en ti. Es motivo para aflojar unos días, no más. Tu coach recibió el aviso. Si hay adormecimiento nuevo o debilidad, escríbelo al momento.',
  'below-knee':
    'Lo notas más abajo en la pierna de lo habitual en ti. Tus pasos siguen como están por ahora, y tu coach recibió el aviso. Si hay adormecimiento nuevo o debilidad, escríbelo al momento.',
  'pain-up': 'Tu dolor ha estado por encima de lo habitual. Tus pasos siguen como están por ahora.',
  'pain-severe':
    'Tu dolor ha sido muy fuerte dos veces seguidas. Si ninguna postura lo alivia, o si empeora, ve hoy al médico. Tu coach recibió el aviso.',
  flare: 'Gracias. Tus pasos siguen como están hasta que ceda.',
  'trend-pain': null,
  'trend-reach': null,
  meaningful: null,
  adherence: 'Últimamente faltaron sesiones. ¿Qué lo impide?',
  quiet: 'Llevamos unos días sin hablar. Una línea corta basta, cuando te venga bien.',
  plateau: null,
  gate: null,
  regain:
    'Lo has notado por debajo de la rodilla más de un día. Tus pasos siguen como están mientras tu coach lo mira. Si hay adormecimiento nuevo o debilidad, escríbelo al momento.',
}
