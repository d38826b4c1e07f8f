import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

type Cues = LexiconData['cues']

/** "no, none of those": what answers the question of the signs, and tells nothing of sessions or pain. */
const DENIALS = [
  each(
    'nada de/ninguna de/ninguno de/no tengo nada de/no tengo ninguna de/no tengo ninguno de/no hay nada de/no he tenido nada de/no he notado nada de/no noto nada de/no noto ninguna de/no siento nada de/no siento ninguna de/no me pasa nada de/no me pasa ninguna de/no me ha pasado nada de/no presento ninguno de/ni una de/ni uno de',
    'eso/esto/todo eso/todo esto/lo anterior/todo lo anterior/las anteriores/los anteriores/esas cosas/estas cosas/esas cosas raras/esos sintomas/estos sintomas/los sintomas/las senales/esos/esas/estos/estas/lo que dices/lo que preguntas/lo que pones/lo que mencionas/lo que me preguntas/todo lo que preguntas/lo que pones ahi/las cosas que preguntas/las cosas que dices',
  ),
  each(
    'no a/un no a/respuesta no a/negativo a',
    'todo/todas/todos/todo eso/todas esas/todas las preguntas/cada una/todas ellas',
  ),
  each('a todo/a todas/a todo eso', 'no/que no/digo que no'),
  'todo no, todas no, todos no, todo que no, todas que no, todos que no, todo negativo, todas negativas, todos negativos, de eso nada, de todo eso nada, de esto nada, ningun sintoma de esos, ningun sintoma de estos, ninguna cosa de esas',
].join(', ')

const scope = {
  compare:
    'que, que el, que la, comparado con, que lo de, respecto a, como, antes, antes de, despues, despues de, por culpa de, debido a',
  noBeyond: `
    no pasa de la, no pasa del, no paso de la, no paso del, no baja de la, no baja del, no me baja de la, no me pasa
    de la, no me pasa del, nada por debajo de la, nada por debajo del, nada debajo de la, nada debajo del, nada mas
    abajo de la, nada mas abajo del, nada mas alla de la, nada mas alla del, no mas abajo de la, no mas abajo del, no
    va mas alla de la, no va mas alla del, sin pasar de la, sin pasar del, sin nada por debajo de la
  `,
  no: `
    ${each('ya no lo siento/ya no la siento/no lo siento/ya no lo noto/no lo noto/ya no la noto/ya no me baja/ya no baja/ya no me llega/ya no me duele/ya no se me va', 'en el/en la/en los/en las/al/a la/a los/hasta el/hasta la')},
    ${each('me golpee/me torci/me raspe/me pele/me corte/me queme/rozadura en/ampolla en/ampollas en/me pise', 'el/la/un/una/los')},
    sin hormigueo, no hay hormigueo, no tengo hormigueo, nada de hormigueo, sin nada de hormigueo, ni hormigueo, sin ningun hormigueo, sin hormigueos, no hay hormigueos, no tengo hormigueos, nada de hormigueos, sin nada de hormigueos, ni hormigueos, sin ningun hormigueos, sin calambres, no hay calambres, no tengo calambres, nada de calambres, sin nada de calambres, ni calambres, sin ningun calambres, sin calambre, no hay calambre, no tengo calambre, nada de calambre, sin nada de calambre, ni calambre, sin ningun calambre, sin ardor, no hay ardor, no tengo ardor, nada de ardor, sin nada de ardor, ni ardor, sin ningun ardor, sin quemazon, no hay quemazon, no tengo quemazon, nada de quemazon, sin nada de quemazon, ni quemazon, sin ningun quemazon, sin pinchazos, no hay pinchazos, no tengo pinchazos, nada de pinchazos, sin nada de pinchazos, ni pinchazos, sin ningun pinchazos, sin punzadas, no hay punzadas, no tengo punzadas, nada de punzadas, sin nada de punzadas, ni punzadas, sin ningun punzadas, sin calambrazos, no hay calambrazos, no tengo calambrazos, nada de calambrazos, sin nada de calambrazos, ni calambrazos, sin ningun calambrazos,
    no, no en el, no en la, ni, ni en el, ni en la, sin, nunca, jamas, nada en, nada en el, nada en la, nada
    en los, nada por debajo de, nada debajo de, no llega, no llega al, no llega a, no me llega al, no me llega
    a, ya no llega al, ya no llega a, no llega hasta, ya no me llega al, ya no me llega a, no llego al, no
    llego a, sin dolor en, sin dolor en el, sin dolor en la, no me duele el, no me duele la, no me duelen los,
    no me duelen las, no duele el, no duele la, no tengo dolor en el, no tengo dolor en la, no hay dolor en
    el, no hay dolor en la, ya no en el, ya no en la, ya no me duele el, ya no me duele la, ningun dolor en
    el, ningun dolor en la, ya no, tampoco, sin molestias en el, sin molestias en la, no baja al, no baja a,
    en lugar de, en vez de, no siento nada en el, no siento nada en la
  `,
  clear:
    'no noto nada, no siento nada, no tengo nada, no hay nada, ya no noto nada, ya no siento nada, bien, perfecto, perfecta, ok, sano, normal, libre, limpio, limpia, tranquilo, tranquila, mejorado, sin problema, sin problemas, se fue, desaparecio, ya esta bien, esta bien',
  was: 'estaba, era, fue, estuvo, eran, tenia, tuve, habia',
  now: 'ahora, ahorita, actualmente, en este momento, ya, ahora mismo',
  only: 'solo, solamente, solo en el, solo en la, solo el, solo la, unicamente, nomas, nada mas, se queda en, se queda en la, se queda en el, hasta ahi, solo hasta, solo a',
  past: `antes era, la semana pasada, hace semanas, hace una semana, hace dos semanas, hace tres semanas, hace meses, hace un mes, el mes pasado, el ano pasado, hace un ano, hace anos, hace tiempo, al empezar, cuando empece, solia, el fin de semana, la ultima vez, antiguamente, ${each('antes/antes me/antes lo/antes la/antes se me', 'bajaba/llegaba/dolia/sentia/notaba/tenia/iba/estaba/molestaba/irradiaba/corria')}`,
  but: 'pero, aunque, sin embargo, mientras que, peroo',
  except:
    'excepto, excepto en el, excepto en la, salvo en el, salvo en la, menos en el, menos en la, aparte de',
} satisfies Partial<Cues>

const numbersAndJoints = {
  or: 'o, u, o quizas, o tal vez, o a lo mejor, o asi',
  and: 'y, e, mas, ademas, tambien, tb, tmb',
  to: 'a, a un, pasando a, subiendo a, bajando a',
  from: 'de un, empezo en, empezo con, partiendo de',
  change:
    'paso del, ha pasado del, subio del, ha subido del, bajo del, ha bajado del, se movio del, se movio de, se fue del, salio del, ya salio del, se retiro del, retrocedio del, bajo de, bajo de un, subio de, subio de un, paso de, paso de un, ha bajado de, ha subido de, ha pasado de, cambio de, disminuyo de, aumento de, mejoro de, empeoro de',
  wasOf: 'fue de, fue de un, fue d',
  between: 'entre, entre un, entre el, oscila entre, varia entre',
  outOf: 'sobre, sobre un total de, de un total de, de un maximo de',
  of: 'de',
  point: 'coma, punto',
  andPart: 'y pico, y algo, y un poco, y un cuarto, y un poquito',
  percent: 'por ciento, porciento',
  atMost:
    'maximo, como mucho, como mucho un, como maximo, como maximo un, maximo de, un maximo de, maximo un, no mas de, no mas de un, no paso de, no pasa de, nunca paso de, nunca mas de, no supera el, no supero el, llego a un, llega a un, subio a, subio a un, sube a, sube a un, hasta un, hasta llegar a un, pico de, el peor fue',
  limit:
    'menos de, menos de un, mas de, mas de un, al menos, al menos un, por lo menos, por lo menos un, minimo, mayor que, menor que, superior a, inferior a',
  maybe:
    'quizas, quiza, tal vez, a lo mejor, puede que, quizas un, quiza un, tal vez un, puede ser, a veces un, talvez',
} satisfies Partial<Cues>

const smallWords = {
  article: `
    numero, un numero, el numero, un, el, la, los, las, lo, mi, mis, unos, unas, su, sus, este, esta, unos cuantos, aproximadamente, aprox,
    casi un, como un, como una, mas o menos, mas o menos un, unos, sobre un, con, con un, para,
    alrededor de un, digamos, cosa de, algo asi como un, dl, una especie de, en total, total, exactamente,
    de unos, en un, a nivel, calculo, calculo que un, creo que un, creo
  `,
  be: `${each('lo siento/la siento/lo noto/la noto/me queda/se me queda/queda/me quedo/se me quedo', 'en/en el/en la/en los/en las/por el/por la')}, queda un poquito, queda un poco, queda algo, me queda un poquito, me queda un poco, me queda algo, es, esta en, son, estoy, estoy en, siento, sigue, sigue en, sigo con, sigo en, anda, anda en, anda por, tengo, tengo un, tengo el, hay, ha sido, es de, era de, estan, queda en, se siente, noto, sigue siendo, estamos`,
  soft: `
    ${each('se me olvido/se me paso/me olvide de/me olvide/olvide', 'escribir/escribirte/contestar/contestarte/responder/apuntar/apuntarlo/anotar/anotarlo/reportar/mandar/mandarlo/avisar/registrar/registrarlo/enviarlo/decirte')},
    no pude mas, no puedo mas, ya no pude mas, ya no puedo mas, no doy mas, no di para mas, no daba mas,
    pelado, raspado, clavado, justito, redondo, eh, ehh, mmm, mm, o sea, osea, deje de,
    sola, solita, solito,
    me, te, se, yo, muy, mucho, muchisimo, bastante, tan, pues, bueno, buenas, hola, ola, holi, hey, oye, ey,
    buenos dias, buen dia, buenas tardes, buenas noches, k tal, q tal, que tal, coach, entrenador,
    entrenadora, profe, jaja, jajaja, jajajaja, jeje, bro, bros, wey, guey, hermano, maestro, crack, jefe, loco, patatero, pelotero, xd, xdd, xddd, lol, uf, uff, pff, pf, ntp, la verdad, por favor, porfa, xfa,
    todavia, aun, asi, aqui, ahi, alli, tio, amigo, che, compa, resultado, reporte, informe, registro,
    parte diario, en fin, luego, entonces, en resumen, resumen, hoy dia, eso, eso es, es todo,
    nada mas que decir, sintomas, sintoma, todo bien, todo ok, todo tranquilo, un poco, poco, poquito a poco,
    algo, porque, xq, xk, pq, tmbn, vamos, venga, hoy x hoy, tranqui, entumecido, adormecido, sobre todo, q,
    k, m, quejarme, pues nada, y nada, hoy toco, adormecimiento, signos, senales
  `,
} satisfies Partial<Cues>

const turnsOfTalk = {
  correction: `
    bueno no, mejor no, ay no, uy no, ah no, no miento, miento, no mentira, quise decir, queria decir, quiero decir, digo, correccion, corrijo, rectifico, mejor dicho, me equivoque,
    me he equivocado, error, es decir, no espera, espera no, espera, no perdon, perdon quise decir, ups, uy,
    cambialo a, cambia a, corrige a, deberia ser, deberia haber sido, ponle
  `,
  sorry: 'perdon, perdona, lo siento, disculpa, disculpe, en realidad, sorry',
  later: `
    manana, voy a, voy a hacer, vamos a, hare, tratare, intentare, pienso hacer, pienso, planeo, espero hacer,
    quiero hacer, tengo que hacer, proximo, proxima, mas tarde hare, luego hare, objetivo, mi objetivo, meta,
    la meta, pasado manana, me gustaria, deberia hacer, debo hacer
  `,
  someone:
    'mi padre, mi madre, mi papa, mi mama, mi mujer, mi esposa, mi marido, mi esposo, mi hermano, mi hermana, mi hijo, mi hija, mi amigo, mi amiga, un amigo, una amiga, mi pareja, mi novio, mi novia, mi abuelo, mi abuela, mi jefe, mi tio, mi tia, mi vecino, mi vecina, mi perro, mi medico, mi companero',
  ask: 'puedo, podria, debo, deberia, tengo que, es normal, es malo, es bueno, cual, cuales, cuanto, cuanta, cuantas, cuantos, cuando, por que, qual, que hago, que pasa si, como hago, como se, hay que, que significa, sera, que debo, una pregunta, pregunta, tengo una pregunta, se puede, crees que',
} satisfies Partial<Cues>

const otherNumbers = {
  unit: `
    minutos, minuto, min, mins, horas, hora, hrs, hs, h, segundos, seg, semanas, meses, mes, anos,
    ano, km, kms, kilometros, kilometro, metros, metro, kg, kilos, kilo, mg, ml, litros, pastillas, pastilla,
    paracetamol, ibuprofeno, ibuprofenos, paracetamoles, tabletas, pasos, repeticiones, reps, series,
    escalones, pisos, personas, hijos, cafes, cervezas, perros, veces al dia, veces por semana, grados, cm,
    vueltas, largos, am, pm, euros, pesos, dolares, reuniones, turnos, noches, calmantes, analgesicos,
    comprimidos, cojines, almohadas, horas de sueno, veces anoche, remadas
  `,
  unitBefore: `${each('dolor de/dolores de/me duele la', 'cabeza/regla/muelas/cuello/hombro/barriga/estomago/panza/garganta/oido')}, dolor menstrual, semana, semana numero, ejercicio numero, sesion numero, dia numero, etapa numero, energia, estres, sueno, calidad de sueno, esfuerzo, animo, fatiga, motivacion, edad, fase, etapa, paso numero, autobus, bus, tome, tomo, l, version, pagina, capitulo, habitacion, peldano, sem, bebi, sali con`,
  setsOf: 'series de, repeticiones de, tandas de, vueltas de',
  clock:
    'trabaje hasta las, trabajando hasta las, trabajo hasta las, en el trabajo hasta las, despierto hasta las, despierta hasta las, fuera hasta las, ocupado hasta las, ocupada hasta las, nos vemos a las, a las, a la una y, desde las, hasta las, sobre las, son las, hacia las, dormi, duermo, camine, corri, reme, conduje, maneje, pedalee, nade, a eso de las, trabaje',
} satisfies Partial<Cues>

const answers = {
  yes: 'si, si claro, sii, sip, claro, por supuesto, vale si, afirmativo, desde luego, una de estas, alguna de estas, yes, efectivamente, si senor, siii, claro que si, exacto',
  nope: `${DENIALS}, ninguna de las senales, ninguna de las de la lista, ninguna de la lista, nada de la lista, nada de esas senales, ninguna de esas senales, ninguna de tus senales, ninguno de los sintomas, ninguna de las otras, nop, no no, para nada, en absoluto, que va, ninguna de estas, ninguno de estos, ninguna de esas, ninguno de ellos, no la verdad, nada de eso, nada de lo demas, nada de lo otro, nada de todo eso, de las senales nada, de senales nada, de las senales ninguna, negativo, noo, sin senales, ninguna senal`,
  thanks:
    'gracias, muchas gracias, mil gracias, grax, grcs, muchisimas gracias, gracias coach, se agradece, te lo agradezco, saludos, un saludo, adios, chao, chau, hasta manana, hasta luego, nos vemos, un abrazo, abrazos, besos, thanks',
} satisfies Partial<Cues>

const daysTold = {
  ago: 'hace, atras',
  dayUnit: 'dias, dia',
  nth: 'o de, er de',
} satisfies Partial<Cues>

/** Phrases in which a word of ours means something else ("a pie", "media hora"). */
const looksLike = {
  none: `
    y luego nada, luego nada, y despues nada, despues nada, desde entonces nada, no el dolor, no por el dolor, no por dolor, no es el dolor, no es por el dolor, a pie, de pie, en pie, a pie de obra, pie de obra, al pie de la letra, de espaldas, la espalda mojada,
    media
    hora, media manana, y media, media tarde, medio dia, media noche, media jornada, medio tiempo,
    medio dormido,
    medio mal, de nada, nada que decir, nada nuevo, nada mas que anadir, nada grave, nada especial, nada
    raro, sin novedad, sin novedades, no pasa nada, no se, no lo se, no creo, no importa, no entiendo, no hay
    problema, no esta mal, todo el mundo, todo el rato, toda la semana, toda la noche, toda la manana, toda la
    tarde, todos los dias, todo el tiempo, sobre todo esto, una semana, una pena, una cosa, una pregunta mas,
    una hora, una noche, una pasada, una mierda, una locura, una vez mas, otra vez, cada vez, tal vez luego,
    de
    vez en cuando, a la vez, de una vez, para el dolor, pastilla para el dolor, un dia, un dia largo, buen
    dia largo, al lado, a la derecha de, derecho a, a mano derecha, mano derecha, mano izquierda,
    no hice caso,
    hecho polvo, hecha polvo, de hecho, eso hice, hice la compra, hice la cena, hice la comida, hice mal, hice
    bien, es una, hay una, mas que nada, antes que nada, mil cosas, cola de, haciendo cola, dedos
    cruzados, cruzo los dedos, culo inquieto, mala pata, meter la pata, meti la pata, por lo demas, por si
    acaso, lista de, segunda vez, primera vez, de rodillas, boca abajo, boca arriba, poco a poco, a por ello
  `,
} satisfies Partial<Cues>

export const cuesOfGrammar = {
  ...scope,
  ...numbersAndJoints,
  ...smallWords,
  ...turnsOfTalk,
  ...otherNumbers,
  ...answers,
  ...daysTold,
  ...looksLike,
}
