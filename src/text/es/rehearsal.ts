import type { Texts } from '../index.ts'
import { count } from './dates.ts'
import { DIRECTION } from './digest.ts'
import { words } from './words.ts'

/** What the rehearsal says of what it played. */
export const rehearsal: Texts['rehearsal'] = {
  begins: (title, clients, weeks) =>
    `Ensayo, sin cuenta ni token: “${title}”\n${count(clients, 'cliente')}, ${count(weeks, 'semana')}, con el bot real, el cliente de chat real y un doble local de la plataforma de chat.\n`,
  client: (c) =>
    [
      `${c.ref}: ${words.status(c.status)}`,
      `  ${count(c.prompts, 'mensaje diario', 'mensajes diarios')}, ${count(c.answered, 'día')} en el registro${c.direction ? `; alcance ${DIRECTION[c.direction]}` : ''}`,
      c.urgent > 0
        ? `  ${count(c.urgent, 'señal urgente', 'señales urgentes')}: aviso inmediato de parar y buscar atención, alerta al coach ${count(c.alerts, 'vez', 'veces')}`
        : '',
      `  coach: ${count(c.proposals, 'propuesta')}, ${count(c.digests, 'ficha')} de resumen; avisos de ${count(c.decisions, 'cambio')} del plan`,
      c.flags.length > 0 ? `  abierto al final: ${c.flags.join(', ')}` : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  where: (folder, pictures, seconds) =>
    `\nDuró ${Math.round(seconds)} s. Para leer y mirar:\n  ${folder}/transcript.txt   todo lo que se dijo, por día\n  ${folder}/pictures         ${count(pictures, 'imagen', 'imágenes')} del resumen\n  ${folder}/messages.jsonl   lo mismo, para programas`,
}
