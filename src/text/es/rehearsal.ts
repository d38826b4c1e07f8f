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
      `  coach: ${count(c.digests, 'ficha')} de resumen, ${count(c.proposals, 'propuesta')} entre ellas; avisos de ${count(c.decisions, 'cambio')} del plan`,
      c.flags.length > 0 ? `  abierto al final: ${c.flags.join(', ')}` : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  where: (folder, pictures, seconds) =>
    `\nDuró ${Math.round(seconds)} s. Para leer y mirar:\n  ${folder}/transcript.txt   todo lo que se dijo, por día\n  ${folder}/pictures         ${count(pictures, 'imagen', 'imágenes')} del resumen\n  ${folder}/messages.jsonl   lo mismo, para programas`,
  page: {
    link: (url) => `\nPara vivirlo (solo en esta máquina, hasta pulsar Ctrl+C):\n  ${url}\n`,
    pressed: (label) => `pulsa “${label}”`,
    chose: (labels) => `elige ${labels}`,
    filled: (title) => `rellena “${title}”`,
    notAsked: 'Esto no es ninguna acción de la página: vuelve a cargarla.',
    unknownWho: 'No hay nadie con ese nombre: añade primero al cliente.',
    taken: 'Ese alias ya existe o no vale: letras, cifras y guiones, 30 como mucho.',
    gone: 'Ese mensaje ya no está: mira los últimos.',
    formGone: 'Ese formulario está cerrado: pulsa otra vez su botón.',
    cannot: 'El chat no dejaría hacer esto aquí: usa lo que ofrece el último mensaje.',
    notSent: (why: string): string => `No se ha enviado: ${why}.`,
    reported: (what: string): string => `El bot avisa: ${what}`,
    nothingDue: 'No queda nada previsto: haz algo o deja pasar un día.',
    past: 'Ese día ya pasó: vuelve a empezar para llegar a él.',
    noClocks: 'En esta zona horaria la hora no cambia durante el próximo año.',
    noClient: 'Todavía no hay nada que guardar: añade primero un cliente.',
    noScenario: 'No hay ninguna escena con ese nombre: elige una de la lista.',
    speed: 'Da una velocidad de 60 a 604800 segundos por segundo.',
    hours: 'Da de 1 a 12 horas, con un menos para ir hacia atrás.',
    isOn: 'Ya está así.',
    busy: 'El ensayo no pudo hacerlo; lo anterior se mantiene. Prueba otra vez o vuelve a empezar.',
  },
}
