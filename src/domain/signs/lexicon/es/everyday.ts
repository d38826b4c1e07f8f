import type { LexiconSource } from '../shape.ts'

const EXERTION = `
    despues de (las/subir/subir las/unas/tantas) escaleras, baja forma,
    despues de correr, corriendo, remando, despues de remar, subiendo la cuesta, cuesta, intervalos, carrera,
    entrenando, despues del entreno, al entrenar, en el remo, ergometro, esfuerzo, de risa`

/** What makes a word harmless: exercise, travel, everyday life. */
export const everyday: LexiconSource['circumstances'] = {
  muscle: `
    (de/despues de/por) (spinning/la sentadilla/nadar), del hip thrust, nadando,
    (tras/despues de) (las/unas/tantas/hacer/) (sentadillas/zancadas/cuestas/escaleras/burpees/series), tras (correr/remar/el entreno/el gimnasio/la carrera/el partido/nadar),
    agujetas, despues de remar, de remar, por remar, despues de correr, de correr, despues de las sentadillas,
    de las sentadillas, del gimnasio, despues del gimnasio, despues del entrenamiento, del entrenamiento,
    cansadas, cansados, cargadas, cargados, rigidas, tiesas, despues de caminar, de la caminata, muscular`,
  /** Said of muscles alone. */
  doms: `agujetas, dolor muscular, musculos cargados`,
  exertion: EXERTION,
  /** Out of breath where anybody would be: asked about, not told at once. */
  exerted: `
    ${EXERTION}, subir las escaleras, escaleras, pisos, piso andando, piso a pie, globos, natacion, largos, piscina, nadando, bailando,
    corri, corriendo al, sprint, padel, futbol, spinning, press banca, press, flexiones, subida, de reir, monte, andando con la compra`,
  settles: `
    me (acomodo/giro/doy la vuelta/cambio de postura) y (se pasa/me duermo/sigo durmiendo/se me pasa), me
    vuelvo a dormir, se pasa al cambiar, pero se me pasa, se calma cuando, se calma al`,
  'on-purpose': `
    a proposito, dieta para, a dieta, con dieta, haciendo dieta, como queria, objetivo, contento, contenta,
    por fin, (con/gracias a/por) (el reto/la dieta/el gimnasio/el plan/la nutricionista/el entreno), comiendo (sano/limpio/mejor/menos), como menos, cenar poco, que era el plan, lo celebro, me he puesto a dieta, plan de, barra, mancuerna, pesas, adrede, queriendo`,
  gym: `
    plancha, ejercicio, postura, posicion, banda, peso, repeticiones, segundos, barra, estiramiento,
    respiracion`,
  'walk-there': `papel, escaleras, caminar al bano, escribo luego, luego, estoy en`,
  'not-me-leak': `
    banda, grifo, barco, bote, techo, tuberia, casa, mano, perro, gato, autobus, bus, tren, hora, tiempo,
    risa, toalla, caldera, tema, gallo, suspiro, lagrima, comentario, palabrota`,
  'only-pain': `
    por el dolor, del dolor, por dolor, sin dolor, porque me duele, me duele mucho al, mas de, lejos, mucho
    rato, tanto`,
  travel: `viaje, vacaciones`,
  'place-else': `precio, numero, baja la`,
  'balance-drill': `ejercicio, ejercicio de equilibrio, tabla, una pierna, drill`,
  'arm-work': `
    dormir encima, dormi encima, dormi sobre, dormir sobre, mala postura,remar, agujetas, por remar, guantes, de remar, frio, ampollas, ampolla`,
  /** Pressed or pinched for a while, as happens to anybody; heard all the same where it lasts. */
  'slept-on': `
    por (sentarme/estar sentado/estar sentada) encima, encima de (el/ella/la pierna/el pie), (por/de) (estar/) (arrodillado/arrodillada), arrodillado, arrodillada, de rodillas, en cuclillas,
    sobre los talones, piernas cruzadas, cruzar las piernas, en (la/el) postura de, por la bota, por las botas, los esquis, el cordon, el arnes, anestesico, hielo, la picadura, medusa, en misa`,
  lasting: `
    no se (me/) (pasa/quita/ha pasado/ha quitado/va/fue/despierta), no (despierta/revive/vuelve/volvio/ha vuelto/reacciona/recupera/despierto), no lo recupero, no la recupero, y nada, y sigue, sigue, siguen, todavia, aun,
    desde, horas, dias, semanas, toda la noche, todo el dia, cada vez, peor, y ahi sigue, ya van, otra vez, de nuevo, sin motivo, nunca antes, no es normal,
    como (si/cuando/en/con/de/del), parece, parecia, igual que, sensacion de`,
  'arm-calm': `
    (de/por) (dormir con/apoyarme/apoyar el codo/cargar/escribir/agarrar/firmar/coser/conducir), escribir a mano, firmando, con la cabeza de, (la/el) (mochila/almohada/sacudo/sacudi), sacudirla, sacudirlo, agarro el volante, tunel carpiano,
    boca abajo con la mano, durmio el nino encima, con el nino encima, dormir encima, dormi encima, dormi sobre, dormir sobre, mala postura, agujetas, remar, ampollas`,
  'going-place': `
    al gimnasio, gimnasio, trabajo, manana, de viaje, al parque, a entrenar, a remar, lunes, a correr, al
    medico, cita`,
  'saddle-plain': `
    contraer, contraigo, contraccion, matrona, apretones, kegel, kegels, laser, vecinos, montar a caballo, pantalon se, gustito,
    pelota, banda, cojin, toalla, ejercicio, estiramiento, estirar, aprieto, almohada, bici, rodillo, bloque,
    apretar, hacer los, hice`,
  leaving: `
    (terminar/acabar/dejar/salir/salirme/parar/abandonar/cancelar/seguir/irme/darme de baja) (con/de/del/) (el/este/los/estos/esta/la/las/mi/) (programa/plan/seguimiento/bot/app/aplicacion/curso/estudio/mensajes/avisos/recordatorios/preguntas/chat/grupo)`,
  'pee-plain': `
    gato, gata, cachorro, cachorra, bebe, elefante, esparrago, huele, bosque, ajeno, una vez a, (cola/fila) (en el/del) bano, canas, cervezas, cafecito, litro, que alivio,
    (doc/doctor/doctora/medico/medica/fisio) (me/) pregunto si, le dije (si a todo/que no),
    (mucha/bastante/demasiada/litros de/tanta) agua, infusiones,
    antes de (la/mi/cada/las) (sesion/sesiones), despues de (la/mi/cada/las) (sesion/sesiones),
    antes de empezar, antes de entrenar, fui, voy a, fui a, pausa, parar a, pare a, me levante
    a, me levanto a, perro, mas agua, perra, descanso, luego`,
  compared: `
    perfecta, perfecto, esta bien, operada, sana, mejor que, mas fuerte que, luego la otra, cambio a la otra,
    y luego, luego el otro, repeticiones, rep, reps, hice, serie, series, estiro, estiramiento`,
  'legs-plain': `
    cinta, mido, medi, toque, iguales, igual, raspadas, quemadas, quemados, mosquitos, mosquito, zancudos, picaron, pican, picadura, picaduras, varices, titanio, playa,
    al aire, al sol, molidos, tacones, zapatos, zapatillas, tenis, jalan, masajista, peli, pelicula, cine, al pecho, segundos, seg, aguanto, equilibrio, misma,
    carne viva, perros, perro, pies izquierdos, pasodoble,
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
    press, rodillas, agujetas, mariposas, granito, depile, marco de la puerta, congestionado mi, oso,
    levanto, levantar, boca abajo, bien, normal, gimnasio`,
  'leg-odd-plain': `otro dia, ejercicio, mejor, dolor, bien, distinto ejercicio`,
  'fall-plain': `
    me agarre, me sujete, no me cai, ni me cai, no cai, no me golpee, ni me golpee, ni llegue a caer, ni llegue a caerme, sin caerme, sin caida,
    sin un rasguno, ni un rasguno, banda, telefono, movil, lapiz, bien, enamorado, gracia, toalla, dormido,
    de sueno, genial, cuenta`,
  'fall-idiom': `de sueno, bien, gracia, cuenta, de risa`,
  'lift-talk': `banda debil, punto debil, mas floja la banda, banda floja, punto flaco`,
}
