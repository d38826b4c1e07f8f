import type { Texts } from '../index.ts'

/** What the chat itself says: to whoever pressed something, and to the keeper who starts the bot. */
export const chat: Texts['chat'] = {
  failed:
    'Perdona, no ha funcionado y puede que no lo haya guardado. Envíalo otra vez en un minuto. Si notas algo nuevo o raro en tu cuerpo, no me esperes: llama al número de emergencias local.',
  keptForLater:
    'Gracias. Ahora mismo no puedo anotarlo bien: lo he apartado y respondo en cuanto pueda, así que no lo envíes otra vez. Si notas algo nuevo o raro en tu cuerpo, no me esperes: llama al número de emergencias local.',
  alertInPerson:
    'El canal de alertas rechaza mis mensajes, por eso esto te llega solo a ti. Tómala en el servidor con /take-up, y haz que alguien mire el canal.',
  failedPress:
    'Perdona, no ha funcionado. Pulsa otra vez en un minuto, o dímelo con palabras. Si notas algo nuevo o raro en tu cuerpo, no me esperes: llama al número de emergencias local.',
  expired:
    'Esto ya no hace nada, y no se ha guardado nada. Dímelo con tus palabras, por favor. Si notas algo nuevo o raro en tu cuerpo, no me esperes: llama al número de emergencias local.',
  pressAgain: 'Perdona, he tardado demasiado. Pulsa otra vez, o dímelo con palabras.',
  permissions: {
    ViewChannel: 'Ver canal',
    SendMessages: 'Enviar mensajes',
    AttachFiles: 'Adjuntar archivos',
  },
  problem: {
    token:
      'La plataforma de chat rechaza el token: copia de nuevo el token del bot del portal de desarrolladores a DISCORD_TOKEN.',
    intents:
      'La plataforma de chat rechaza lo que el bot quiere oír: mira en el portal de desarrolladores que la aplicación sea un bot y no esté suspendida.',
    unreachable: (where) => `No se llega a la plataforma de chat en ${where}: mira la red y prueba otra vez.`,
    lost: 'La plataforma de chat ha cerrado la conexión del todo: mira el token del bot y la aplicación en el portal de desarrolladores y arranca otra vez.',
  },
}
