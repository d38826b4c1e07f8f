import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'
import { plainWishes } from '../wishes.ts'

/** "quiero terminar con este programa": who wants out, and of what. */
const leaving =
  'quiero terminar con, quiero terminar, quiero acabar con, quiero acabar, quiero dejar, quiero salir de, quiero salirme de, quiero parar, quiero abandonar, quiero cancelar, quiero irme de, dejar de recibir, no quiero recibir, no quiero seguir con, no quiero mas, cancela, cancelar, salirme de, darme de baja de, me salgo de, dejo, abandono'
const left =
  'programa, plan, seguimiento, bot, app, aplicacion, curso, estudio, mensajes, avisos, recordatorios, preguntas'
const leavingIt = leaving
  .split(', ')
  .flatMap((verb) =>
    left
      .split(', ')
      .flatMap((what) =>
        ['', 'el ', 'este ', 'los ', 'estos ', 'la ', 'esta ', 'las ', 'mi ', 'tus '].map(
          (of) => `${verb} ${of}${what}`,
        ),
      ),
  )
  .join(', ')

export const intents: LexiconData['intents'] = {
  leave: {
    within: `
      ${leavingIt}, ${plainWishes.en.leave}, quiero irme, quiero terminar aqui, no quiero participar, no quiero participar mas,
      darme de baja, me doy de baja, dame de baja, quiero la baja, borra mis datos, borrar mis datos,
      borren mis
      datos, elimina mis datos, eliminar mis datos, borra todo, borrame, eliminame, borra mi cuenta, no quiero
      mas mensajes, no mas mensajes, no me escribas mas, no me escriban mas, deja de escribirme, dejen de
      escribirme, deja de mandarme, no me mandes mas, quiero dejarlo, quiero salir, quiero dejar el programa,
      dejar el programa, me salgo, me retiro, quiero cancelar, cancela todo, abandono, no quiero seguir, no
      quiero continuar, ya no quiero esto, olvidame, sacame de, quiero terminar con esto
    `,
    whole: `${plainWishes.en.wordOfLeave}, baja, salir, cancelar, me voy, adios para siempre, stop, fin, parar, basta, dejar, terminar, eliminar`,
  },
  pause: {
    within: `
      ${plainWishes.en.pause}, una pausa, hacer pausa, pausa de, pausa hasta, pausar, en pausa, de vacaciones, vacaciones,
      un descanso de,
      tomar un descanso, tomarme un descanso, necesito un descanso, necesito descansar unos, unos dias libres,
      estare fuera, voy a estar fuera, me voy de viaje, de viaje, me voy fuera, no estare, fuera hasta,
      parar unos
      dias, parar una semana, no me escribas hasta, no me escribas durante, semana libre, ponme en pausa
    `,
    whole: `${plainWishes.en.wordOfPause}, pausa, descanso, vacaciones, pausa por favor, de viaje, fuera`,
  },
  resume: {
    within: `
      ${plainWishes.en.resume}, ya volvi, he vuelto, ya regrese, volvi, he regresado, ya estoy de vuelta, estoy de vuelta, de vuelta,
      reanudar,
      retomar, retomo, quiero volver, quiero continuar, quiero seguir, empezar de nuevo, volver a empezar,
      vuelvo
      a empezar, listo para seguir, lista para seguir, listo para empezar, lista para empezar, quita la pausa,
      termina la pausa, se acabo la pausa, ya vuelvo, vuelvo a estar, ya estoy aqui
    `,
    whole: 'vuelvo, continuar, seguir, empezar, sigo, volver, continuo, regreso',
  },
  today: {
    within: `
      que toca hoy, que me toca hoy, que me toca, que toca, que tengo hoy, que hay hoy, que hago hoy,
      que ejercicios
      tengo, que ejercicios, cuales son mis ejercicios, cuales son los ejercicios, plan de hoy,
      ejercicios de hoy,
      sesiones de hoy, sesion de hoy, mi plan de hoy, que tengo que hacer hoy, muestrame el plan,
      muestrame mi plan,
      ensename el plan, muestrame los ejercicios, pasame los ejercicios, mandame los ejercicios, ver mi plan,
      ver el
      plan, ver los ejercicios, cuantas sesiones tengo hoy, recuerdame los ejercicios, que habia que hacer,
      k toca
      hoy, q toca hoy, que debo hacer hoy, cual es el plan, cual es mi plan
    `,
    whole:
      'hoy, plan, mi plan, el plan, ejercicios, mis ejercicios, los ejercicios, programa, rutina, mi rutina',
  },
  help: {
    within: `
      ${plainWishes.en.help}, como borro, como puedo borrar, como elimino, como puedo eliminar, como me voy, como me salgo, como salgo
      de, como puedo salir, como puedo dejarlo, como lo dejo, como me doy de baja, como puedo darme de baja,
      como funciona, como va esto, como se usa, no entiendo, no lo entiendo, que tengo que escribir,
      que escribo, que
      pongo, que debo escribir, que digo, que puedo decir, como respondo, como contesto, necesito ayuda,
      ayudame,
      ayuda por favor, me ayudas, puedes ayudarme, instrucciones, comandos, que es esto, quien eres,
      eres un bot, un
      ejemplo, que opciones hay, que significa alcance, estoy perdido, estoy perdida, que quieres que
    `,
    whole: 'ayuda, que, como, eh, info, comandos, opciones, instrucciones, ejemplo, help, menu',
  },
  correct: {
    within: `
      me equivoque, me he equivocado, esta mal, eso no es, eso esta mal, quiero corregir, corregir, cambiar mi
      respuesta, puse mal, lo puse mal, escribi mal, era otro numero, numero equivocado, hay un error,
      fue un error,
      cometi un error, no es lo que dije, no era eso, entendiste mal, has entendido mal
    `,
    whole: 'mal, error, correccion, corrige, incorrecto, cambiar, no es eso, deshacer',
  },
  question: {
    within: `
      huso horario, zona horaria, cambio de horario, jet lag, estoy en, ahora estoy en, estamos en, acabo de llegar a, me mude a, me he mudado a, me voy a mudar, viajo a, volando a,
      pregunta para el coach, pregunta para el entrenador, pregunta para la entrenadora, preguntale al,
      dile al, dile
      a la, dile a mi, pregunta al coach, hablar con el, hablar con la, hablar con mi, hablar con alguien,
      que me
      llame, llamame, tengo una pregunta, una pregunta, tengo una duda, una duda, quiero saber,
      quisiera saber, me
      gustaria saber, es normal, es malo, puedo, podria, deberia, que pasa si, cuanto tiempo, cuantas veces,
      cuantas
      repeticiones, por que me, cada cuanto, me pregunto si, algun consejo
    `,
    whole: 'pregunta, coach, entrenador, entrenadora, por que, cuando, duda',
  },
  thanks: {
    within: 'eres el mejor, eres la mejor, que amable, muy amable, de gran ayuda',
    whole:
      'ok, vale, perfecto, genial, bien, muy bien, entendido, de acuerdo, listo, guay, excelente, bueno, dale, ok perfecto, va, estupendo, chevere, recibido, super, okey, buenisimo, ok vale',
  },
}

export const aside: LexiconData['aside'] = [
  each(
    'una pausa/un descanso/pausa/descanso/hacer pausa/tomar un descanso/un descanso de/pausa de/una pausa de',
    'entre/entre las/de un minuto/de dos minutos/de minuto/minutos/minuto/segundos/cafe/para comer/en el trabajo/despues de cada/tras cada',
  ),
  each(
    'estoy en/estamos en/ahora estoy en',
    'una reunion/reunion/reuniones/casa/la oficina/clase/el trabajo/el coche/el carro/el bus/la cama/cama/el gimnasio/el medico/la playa/la calle/el centro/misa/mitad/forma/ello/eso',
  ),
  each(
    'me equivoque de/me he equivocado de/perdon me equivoque de',
    'chat/grupo/persona/conversacion/numero de telefono/ventana/contacto',
  ),
  each(
    'necesito ayuda/ayudame',
    'con las compras/con la compra/con los calcetines/con los zapatos/con los ninos/para vestirme/para levantarme/en casa',
  ),
  each(
    'dejo/quiero dejar',
    'el coche/la casa/el trabajo/de fumar/de tomar/una nota/un mensaje/de trabajar/de correr',
  ),
].join(', ')

export const refusals: LexiconData['refusals'] =
  'no, no me, nunca, jamas, tampoco, no es que, yo no, no voy a, nunca dije que, no dije que, no digo que, no se si, no estoy seguro de si, no estoy segura de si'

export const things: LexiconData['things'] =
  'trabajo, clima, trafico, sueno, jefe, noticias, pelicula, comida, cena, cafe, wifi, internet, tren, bus, vuelo, reunion, examen, examenes, escuela, regata, partido, lluvia, viento, animo, hotel, turno, tiempo'

export const gotIt: LexiconData['gotIt'] = 'ok, k, okey, vale, de acuerdo, bueno, entendido'
