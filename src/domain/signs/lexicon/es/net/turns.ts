import type { NetSource } from '../../shape.ts'

/** Denial, what cannot be done, and what makes a word harmless. */
export const turns: NetSource['words'] = {
  deny: `
    nada (dormido/dormida/adormecido/adormecida/entumecido/entumecida), no, sin, ni, tampoco, nunca, jamas, ningun, ninguna, ninguno, nada de, cero, niego, no hay, no tengo, no
    he tenido, no tuve, no me, no se me, no se, ya no, no es que, descarto`,
  unable: `
    no (puedo/podia/pude/he podido/podes/consigo/conseguia/consegui/logro/lograba/logre/alcanzo a/soy capaz
    de/fui capaz de/era capaz de/hay manera de/hay forma de/me deja/me dejan/atino a/acierto a/llego a), ya no
    (puedo/consigo/logro/soy capaz de/alcanzo a), (apenas/casi no/a duras penas/dificilmente)
    (puedo/consigo/logro/llego a/), me cuesta (trabajo/horrores/mucho/un mundo/la vida/un monton/), me
    (costo/costaba/ha costado/esta costando), cuesta, imposible, incapaz de, me es imposible, dificultad(/es)
    (para/al/de/en), problema(/s) para, trabajo para, sin poder, no poder, no hay quien, no se puede, batallo
    para, me las veo negras para, sudo para, tengo que pensar para, sudo tinta para, peleo para, lucho para,
    ni puedo, ni consigo, intento, intentando, trato de, tratando de, quise, quiero y no`,
  stop: `
    (es/) normal (que/el), y, porque, xq, pq, que, q, cuando, mientras, si, desde, ahora, luego, despues, entonces, hasta, solo,
    pero, excepto, salvo, quitando, menos que, aunque, asi que, para, por, ademas, de repente, de golpe`,
  calm: `
    el suelo con las manos, subo el pecho, bajo el pecho, pecho al suelo, paso de baile, agujetas, entreno,
    entrenando, entrenamiento, sentadilla, spinning, hip thrust, silla contra la pared, ejercicio, ejercicios, sentadillas, estiramiento(/s),
    estirar, estirado, banda, pesas, mancuernas, serie, series, repeticiones, remar, remo, ergometro, plancha,
    puente, gimnasio, gym, postura del, yoga, pilates, peli, pelicula, libro, chiste, futbol, video`,
  /** As in the first layer: pressed for a while, and where it lasts heard all the same. */
  'slept-on': `
    sentarme encima, encima de, arrodillado, arrodillada, de rodillas, en cuclillas, sobre los talones, cruzadas, la bota, las botas, los esquis,
    cordon, arnes, anestesico, anestesica, hielo, medusa, en misa`,
  lasting: `desde, sigue, siguen, todavia, aun, horas, dias, semanas, peor`,
  idiom: `sin (dolor/opresion) (de/en el) pecho`,
  session: `
    sesion, sesiones, hice, hecho, hecha, hechas, hechos, hicimos, complete, completadas, completada, cumpli,
    salte, termine, hago, tandas, rutinas, ejercicios, veces, seciones, sesones, echas, series`,
  'only-pain': `
    por el dolor, del dolor, por dolor, de dolor, duele al, me duele al, por la lumbar, por molestias`,
  well: `
    bien, normal, sin problema, sin problemas, perfecto, perfectamente, como siempre, a la primera, de sobra,
    mejor, fuerte, fuertes`,
}
