import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

type Cues = LexiconData['cues']

const places = {
  leg: `
    pierna, toda la pierna, por la pierna, pata, pierna abajo, la pierna entera, ciatica, el ciatico, ciatico,
    nervio ciatico, extremidad, por toda la pierna, a lo largo de la pierna, lado de la pierna
  `,
  legs: 'piernas, patas, extremidades',
  arm: `
    brazo, brazos, mano, manos, hombro, hombros, cuello, muneca, munecas, codo, codos, dedos de la mano, dedo
    de la mano, pulgar, cara, ojo, ojos, oreja, costilla, costillas, pecho, barriga, panza, estomago, cabeza,
    mandibula, dorsal, espalda alta, parte alta de la espalda
  `,
  place: 'alcance, zona, lugar, sitio, hasta donde, donde, ubicacion',
  sideNoun: 'lado, costado',
  otherSide:
    'la otra, el otro, otra, otro, la otra pierna, otra pierna, otro lado, el otro lado, la contraria, contraria',
  above:
    'encima de, justo encima de, por encima de, justo por encima de, un poco por encima de, arriba de, justo arriba de, un poco arriba de',
  below: 'debajo de, por debajo de, abajo de, mas abajo de, bajo',
  just: 'justo debajo de, justo por debajo de, justo abajo de, un poco debajo de, tantito abajo de, tantito debajo de, un poco por debajo de, un poco abajo de',
  beyond: 'mas alla de, pasada, pasado, pasando',
  partOf: `
    detras de, detras del, detras, parte de, parte de atras de, parte de atras del, parte trasera, parte
    delantera, parte posterior, parte anterior, parte interna, parte externa, atras de, cara interna, cara
    externa, interior, exterior, centro, mitad de la, mitad del, punta, borde, musculo, lado de, lado del
  `,
  inside: `
    se fue hasta, se fue hasta el, se fue hasta la, se me fue hasta, se me fue hasta el, se me fue hasta la,
    se va hasta, se va hasta el, se va hasta la, se me va hasta, se me va hasta el, se me va hasta la, se fue a
    la, se fue al, se va al, se va a la, corre hasta, corre hasta el, corre hasta la, viaja hasta, en, en el, en la, en los, en las, en mi, hasta, hasta el, hasta la, hasta los, hasta mi, llega a, llega
    al, llega hasta, llego a, llego al, llego hasta, llega hasta el, llega hasta la, llego hasta el, llego
    hasta la, me llega a, me llega al, me llega hasta, me llego hasta, baja a, baja al, baja hasta, me baja
    hasta, me baja a, me baja al, por el, por la, por, hacia, al, a la, hacia el, hacia la, baja por,
    alrededor de, cerca de, dentro de, desde, del, desde la, desde el
  `,
  exercise:
    'estiramiento, elevacion, elevaciones, extension, extensiones, ejercicio, puente, flexion, flexiones, masaje',
} satisfies Partial<Cues>

const nowhere = each(
  'sin molestias/sin dolor/sin dolores/no me duele/no duele/sin nada/nada de dolor',
  'en ningun sitio/en ningun lado/en ningun lugar/en ninguna parte/en ninguna zona',
)

const sessions = {
  all: `
    ninguna me salte, no me salte ni una, no falle ninguna, no falte a ni una,
    todas, todos, todo, todo hecho, todas hechas, hice todo, hice todas, todas las sesiones, las hice todas,
    todos los ejercicios, lo hice todo, todo lo planeado, hice todo lo planeado, todo completo, completas,
    todas completadas, todo completado, toda la rutina, todo el plan, el plan completo, he hecho todo, tdo,
    todas las tandas, todo el programa
  `,
  both: 'manana y tarde hechas, manana y noche hechas, doble sesion, una doble sesion, una por la manana y otra por la tarde, una por la manana y otra por la noche, una por la manana y una por la tarde, una por la manana y una por la noche, una en la manana y otra en la tarde, una en la manana y otra en la noche, no falte a ninguna, no me salte ninguna, las dos, ambas, ambos, los dos, las dos hechas, hice las dos, las dos sesiones, ambas sesiones, hice ambas, las dos tandas',
  oneSession: `
    la primera, la segunda, la tercera, la ultima, la de la manana, la de la tarde, la de la noche, la de la
    madrugada, la del mediodia, la de hoy, la primera sesion, la segunda sesion, la sesion de la manana, la sesion de la
    tarde, la sesion de la noche, la de manana temprano, la de antes de comer, la de despues de comer, la tanda
    de la manana, la tanda de la tarde, la tanda de la noche
  `,
  dayOff:
    'hoy descanso, descanso hoy, hoy toca descanso, hoy tocaba descanso, dia de reposo, hoy reposo, hoy libre, hoy libro, hoy no toca',
  half: 'media, medio, la mitad, mitad, hice la mitad',
  nothing: 'nada de nada, ninguna, ninguno, nada, ningun, nadita',
  noSession: `
    falte a las dos, falte a ambas, falte a todas, me perdi las dos, me perdi ambas, me salte ambas, no hice ninguna de las dos, no pude con ninguna,
    no hice nada, no hice ninguna, no hice ninguno, no hice las sesiones, no hice los ejercicios, no hice
    ejercicios, no hice ejercicio, no hice sesiones, no hice ninguna sesion, ninguna sesion, ninguna hecha, no
    entrene, no he entrenado, no he podido entrenar, no pude entrenar, no pude hacer nada, no pude hacer
    ninguna, no he hecho nada, no he hecho ninguna, no he hecho los ejercicios, no he hecho ninguna sesion,
    dia de descanso, dia libre, descanse, sin sesiones, sin entrenar, me salte todo, me salte las dos, me
    salte todas, me las salte, nada hecho, no las hice, no lo hice, no los hice, no pude hacerlas, no pude
    hacerlo, no hice na, cero hechas, ni una, ni una sola, no hice ni una, hoy nada, nada hoy, hoy ninguna,
    ninguna hoy, no me dio tiempo a nada, no me dio tiempo, no hicimos nada, hice nada
  `,
  missed:
    'todas menos, todo menos, todas salvo, todas excepto, las dos menos, deje de hacer, me olvide de, me olvide, se me olvido, se me olvidaron, olvide, se me paso, se me pasaron, falte a, me perdi, me salte, me falto, me faltaron, falto, faltaron, saltada, deje, menos, salvo',
  vagueCount: `
    casi las dos, casi ambas, casi los dos, menos de la mitad, mas de la mitad, como la mitad, casi la mitad, media sesion, sesion y media, una y media, una sesion y media, algunas, algunos, alguna, un par,
    un par de, varias, casi todas, casi todo, casi todos, la
    mayoria, parte, una parte, en parte, unas cuantas, unas pocas, pocas, no todas, no todo, no hice todas,
    no hice las dos, no pude hacer las dos, no pude hacer todas, no pude con todas, no termine, no acabe, lo que pude, hice lo que
    pude, hice los ejercicios, hice mis ejercicios, hice las sesiones, hice mis sesiones, ya las hice, las
    hice, lo hice, ya lo hice, entrene, un poco de todo
  `,
  notYet:
    'todavia no, aun no, me falta, me faltan, todavia me falta, aun me falta, falta, faltan, por hacer, pendiente, pendientes, quedan, me quedan, me queda, queda',
  session: `
    sesion, sesiones, sesioncita, sesioncitas, sesones, veces, vez, tanda, tandas, entrenamiento,
    entrenamientos, rutina, rutinas, entrenos,
    entreno, ejercicios, practicas, ses, rondas, ronda, de ellas, de las dos, de las tres, sesiones hechas,
    sesiones completadas, seciones, secion, sesions
  `,
  did: 'no pude hacer mas que, no pude hacer mas de, no hice mas que, no hice mas de, no pude mas que con, alcance a hacer, alcance a completar, llegue a hacer, pude completar, hice, echo, eche, he hecho, hicimos, hise, ice, hago, logre, pude hacer, consegui hacer, consegui, complete, he completado, termine, acabe, realice, solo hice, hice solo',
  done: 'hecha, echas, echa, echos, hechas, hecho, hechos, completada, completadas, completado, terminadas, terminada, listas, lista, cumplidas, realizadas',
  sessionLetter: 's, x',
} satisfies Partial<Cues>

const feeling = {
  painLetter: 'd, p',
  pain: `
    dolor, dolores, dolor de, nivel de dolor, nivel, nivel de, duele, duelen, me duele, me duelen, dolia, me
    dolia, me dolio, dolio, doliendo, m duele, molestia, molestias, ardor, quemazon, hormigueo, calambre,
    calambres, pinchazo, pinchazos, punzada, punzadas, intensidad, puntuacion, escala, diria que un, diria, yo
    diria, le doy un, pongo un, molesta, me molesta, peor dolor, dolo, dlor, ay, calambrazo, adolorido
  `,
  painFree: `
    sin dolor, sin ningun dolor, sin nada de dolor, nada de dolor, ningun dolor, cero dolor, no duele, no me
    duele, no me duele nada, no duele nada, no tengo dolor, no hay dolor, no hubo dolor, no tuve dolor, no me
    dolio, no me ha dolido, sin dolores, libre de dolor, sin molestias, no siento dolor, dolor ninguno, dolor
    nulo, indoloro, sin dolor hoy, no me duele mas, no senti dolor, ya no duele, ya no me duele
  `,
  noSymptoms: `sin sintomas, ningun sintoma, no tengo sintomas, sin ningun sintoma, no hay sintomas, ${nowhere}`,
  painVague: `
    nada mal, no esta nada mal, fuerte, leve, leves, suave, mucho dolor, poco dolor, un poco de dolor, algo de dolor,
    bastante dolor, moderado, horrible, terrible, insoportable, fatal, mal, me duele un poco, me
    duele mucho, me duele bastante, me duele algo, duele un poco, duele mucho, duele un monton,
    me duele un monton, duele bastante, regular,
    tolerable, soportable, intenso, agudo, ligero, dolorido, dolorida, rigido, rigida, tieso, tiesa, casi sin
    dolor, apenas dolor, apenas duele, apenas me duele, tremendo, brutal, no mucho dolor, poquito
  `,
  hardly: 'apenas, casi, casi nada, practicamente',
  times: `
    casi siempre, la mayoria del tiempo,
    la mayor parte del dia, casi todo el dia, todo el dia, la mayor parte, normalmente, de media, a ratos, a
    veces, en el peor momento, lo peor, peor momento, el peor, pico, picos, de pico, al sentarme, al caminar,
    al conducir, al manejar, al levantarme, al agacharme, al despertar, al estar sentado, despues de conducir,
    despues de manejar, despues de caminar, despues de estar sentado, despues de trabajar,
    despues del trabajo,
    despues de entrenar, dsps d entrenar, despues de remar, despues de comer, tras conducir, sentado, sentada,
    caminando, conduciendo, manejando, acostado, acostada, tumbado, tumbada, en reposo, en la cama, en el
    coche, en el carro, en el trabajo, al principio, al final, en general, en promedio, promedio
  `,
  dayPart: `
    esta manana, por la manana, en la manana, esta tarde, por la tarde, en la tarde, esta noche, por la noche,
    en la noche, de noche, anoche, de madrugada, al mediodia, a mediodia, mas temprano, temprano,
    al despertarme,
    de dia, a media tarde, a media manana, la noche, la tarde, la manana, x la noche, x la manana, x la tarde
  `,
  better:
    'mejor, peor, mejoro, empeoro, mejorando, empeorando, aliviado, menos dolor, mas dolor, algo mejor, algo peor, un poco mejor, un poco peor, aumento, disminuyo, ha mejorado, ha empeorado, mucho mejor, mucho peor, mas leve, mas fuerte',
  moved:
    'mas arriba, mas abajo, subiendo, bajando, ha subido, ha bajado, se extiende, extendiendose, mas lejos, mas cerca de la columna, centralizando, se movio',
  same: 'lo de siempre, como de costumbre, lo habitual, lo acostumbrado, igual, igual que, igual que siempre, lo mismo, lo mismo que, lo mismo de, mismo, misma, el mismo, la misma, sin cambios, como siempre, sin cambio, no ha cambiado, idem, igualito, como antes, sigue igual, todo igual',
} satisfies Partial<Cues>

export const cuesOfSlots = { ...places, ...sessions, ...feeling }
