import { harmless } from '../harmless.ts'
import type { Texts } from '../index.ts'
import { date } from './dates.ts'

const names = (refs: readonly string[]): string => refs.map((ref) => `**${harmless(ref)}**`).join(', ')

export const away: Texts['away'] = {
  back: (day, time, hours) =>
    `Estuve fuera desde el ${date(day)}, ${time} (${hours} ${hours === 1 ? 'hora' : 'horas'}), y ya he vuelto. Lo que se escribió mientras lo leo ahora, lo más antiguo primero.`,
  prompted: (refs) => `En ese tiempo no llegó ningún aviso, y puede que hayan esperado: ${names(refs)}.`,
  alerts: (refs) =>
    `**Hay una señal urgente abierta que nadie ha tomado: ${names(refs)}.** Contacta ahora, por favor.`,
  noPrompts: (ref) =>
    `**${harmless(ref)}** lleva dos días sin aviso: ninguno se pudo entregar. Escríbele por otra vía, por favor, y pide a quien me mantiene que mire “ebb doctor”.`,
}
