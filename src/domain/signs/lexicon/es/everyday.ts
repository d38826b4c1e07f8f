import type { LexiconSource } from '../shape.ts'

/** What makes a word harmless: exercise, travel, everyday life. */
export const everyday: LexiconSource['circumstances'] = {
  muscle: `
    (tras/despues de) (las/unas/tantas/hacer/) (sentadillas/zancadas/cuestas/escaleras/burpees/series), tras (correr/remar/el entreno/el gimnasio/la carrera/el partido/nadar),
    agujetas, despues de remar, de remar, por remar, despues de correr, de correr, despues de las sentadillas,
    de las sentadillas, del gimnasio, despues del gimnasio, despues del entrenamiento, del entrenamiento,
    cansadas, cansados, cargadas, cargados, rigidas, tiesas, despues de caminar, de la caminata, muscular`,
  /** Said of muscles alone. */
  doms: `agujetas, dolor muscular, musculos cargados`,
  exertion: `
    despues de (las/subir/subir las/unas/tantas) escaleras, baja forma,
    despues de correr, corriendo, remando, despues de remar, subiendo la cuesta, cuesta, intervalos, carrera,
    entrenando, despues del entreno, al entrenar, en el remo, ergometro, esfuerzo, de risa`,
  settles: `
    me (acomodo/giro/doy la vuelta/cambio de postura) y (se pasa/me duermo/sigo durmiendo/se me pasa), me
    vuelvo a dormir, se pasa al cambiar, pero se me pasa, se calma cuando, se calma al`,
  'on-purpose': `
    a proposito, dieta para, a dieta, con dieta, haciendo dieta, como queria, objetivo, contento, contenta,
    por fin, plan de, barra, mancuerna, pesas, adrede, queriendo`,
  gym: `
    plancha, ejercicio, postura, posicion, banda, peso, repeticiones, segundos, barra, estiramiento,
    respiracion`,
  'walk-there': `papel, escaleras, caminar al bano, escribo luego, luego, estoy en`,
  'not-me-leak': `
    banda, grifo, barco, bote, techo, tuberia, casa, mano, perro, gato, autobus, bus, tren, hora, tiempo,
    risa, toalla, caldera, tema`,
  'only-pain': `
    por el dolor, del dolor, por dolor, sin dolor, porque me duele, me duele mucho al, mas de, lejos, mucho
    rato, tanto`,
  travel: `viaje, vacaciones`,
  'place-else': `precio, numero, baja la`,
  'balance-drill': `ejercicio, ejercicio de equilibrio, tabla, una pierna, drill`,
  'arm-work': `
    dormir encima, dormi encima, dormi sobre, dormir sobre, mala postura,remar, agujetas, por remar, guantes, de remar, frio, ampollas, ampolla`,
  'arm-calm': `dormir encima, dormi encima, dormi sobre, dormir sobre, mala postura, agujetas, remar, ampollas`,
  'going-place': `
    al gimnasio, gimnasio, trabajo, manana, de viaje, al parque, a entrenar, a remar, lunes, a correr, al
    medico, cita`,
  'saddle-plain': `
    pelota, banda, cojin, toalla, ejercicio, estiramiento, estirar, aprieto, almohada, bici, rodillo, bloque,
    apretar, hacer los, hice`,
  leaving: `
    (terminar/acabar/dejar/salir/salirme/parar/abandonar/cancelar/seguir/irme/darme de baja) (con/de/del/) (el/este/los/estos/esta/la/las/mi/) (programa/plan/seguimiento/bot/app/aplicacion/curso/estudio/mensajes/avisos/recordatorios/preguntas/chat/grupo)`,
  'pee-plain': `
    (mucha/bastante/demasiada/litros de/tanta) agua, infusiones,
    antes de (la/mi/cada/las) (sesion/sesiones), despues de (la/mi/cada/las) (sesion/sesiones),
    antes de empezar, antes de entrenar, fui, voy a, fui a, pausa, parar a, pare a, me levante
    a, me levanto a, perro, mas agua, perra, descanso, luego`,
  compared: `
    perfecta, perfecto, esta bien, operada, sana, mejor que, mas fuerte que, luego la otra, cambio a la otra,
    y luego, luego el otro, repeticiones, rep, reps, hice, serie, series, estiro, estiramiento`,
  'legs-plain': `
    estire, estiro, estirando, rodillo, masaje, afeite, depile,
    se hace, se hacen, apoyadas, apoyados, cuanto tiempo, cuantos segundos, o solo (con/) la mala,
    ejercicio, ejercicios, pongo, poner, estirar, estiradas, estiramiento, dobladas, flexionadas, juntas,
    separadas, arriba, abiertas, cansadas, cansados, rigidas, fuertes, hice, hacer, hechas,
    series, serie, pared, suelo, puente, sentadillas, peso, cruzadas, agujetas, sesiones, veces, entrenos, sin
    problema, banda, dia, repeticiones, fuerte, mejor, sesion`,
  'wont-plain': `duele, molesta, dolio`,
  'swell-calm': `bano, ducha, sol, musculos, jaja, calcetines, calentar, sauna, banda, calentamiento`,
  'breath-plain': `
    ejercicio, ejercicios, profunda, hondo, profundo, respiraciones, aguanto, aguantar la respiracion, remo,
    correr, cuesta, postura, estiramiento, diez, cinco, boca abajo`,
  'chest-plain': `
    suelo, ejercicio, banda, plancha, abrir, estirar, estiramiento, cinta, apoyado, pegado, flexiones, prensa,
    press, rodillas, agujetas, levanto, levantar, boca abajo, bien, normal, gimnasio`,
  'leg-odd-plain': `otro dia, ejercicio, mejor, dolor, bien, distinto ejercicio`,
  'fall-plain': `
    me agarre, me sujete, no me cai, banda, telefono, movil, lapiz, bien, enamorado, gracia, toalla, dormido,
    de sueno, genial, cuenta`,
  'fall-idiom': `de sueno, bien, gracia, cuenta, de risa`,
  'lift-talk': `banda debil, punto debil, mas floja la banda, banda floja, punto flaco`,
}
