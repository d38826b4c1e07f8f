import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

/** Zones in people's own words, of Spain and of the Americas; hip counts as buttock, groin as thigh, shin as calf. */
export const zones: LexiconData['zones'] = {
  none: `${each('no noto nada/no siento nada/no tengo nada/no hay nada/no me duele nada/no lo siento/no lo noto', 'en ningun lado/en ningun sitio/en ninguna parte/en ningun lugar/por ningun lado/por ningun sitio/por ninguna parte')}, nada en ningun lado, nada en ningun sitio, nada en ninguna parte, nada por ningun lado, en ningun sitio, en ningun lado, en ninguna parte, ningun sitio, ningun lado, ninguna parte, por ningun lado`,
  back: `
    espalda, espalda baja, baja espalda, parte baja de la espalda, zona baja de la espalda, lumbar, lumbares,
    zona lumbar, la lumbar, lumbago, columna, cintura, rinones, sacro, espinazo, lomo, solo espalda
  `,
  buttock: `
    nalga, nalgas, gluteo, gluteos, culo, pompi, pompis, trasero, cadera, caderas, cachete, cachetes, cola, pompa,
    pompas, nachas, poto, coxis, rabadilla, piramidal, piriforme, posaderas, isquion, nalguita, nalguitas, colita
  `,
  thigh: `
    muslo, muslos, ingle, ingles, isquio, isquios, isquiotibial, isquiotibiales, cuadriceps, femoral,
    femorales, aductor, aductores, biceps femoral, parte alta de la pierna, pierna superior
  `,
  knee: `
    rodilla, rodillas, corva, corvas, rotula, detras de la rodilla, hueco popliteo, parte de atras de la
    rodilla, popliteo
  `,
  calf: `
    pantorrilla, pantorrillas, gemelo, gemelos, espinilla, espinillas, canilla, canillas, chamorro, chamorros,
    tibia, soleo, batata, batatas, pantorilla, parte baja de la pierna, pierna inferior, camote
  `,
  foot: `
    pie, pies, tobillo, tobillos, talon, talones, dedos del pie, dedo del pie, dedos de los pies, dedo gordo,
    dedo gordo del pie, dedo pequeno, dedo chico, dedo chiquito, dedos de pie, planta del pie, planta de los
    pies, planta, plantas, empeine, empeines, aquiles, dedos, dedo, menique del pie, la planta del pie
  `,
}

export const pairs: LexiconData['pairs'] =
  'nalgas, gluteos, caderas, muslos, ingles, isquios, rodillas, corvas, pantorrillas, gemelos, espinillas, canillas, pies, tobillos, talones, plantas'

export const numbers: LexiconData['numbers'] = {
  0: 'cero',
  1: 'una, uno, una sola, una sola vez',
  2: 'dos',
  3: 'tres',
  4: 'cuatro, cuatr',
  5: 'cinco, sinco',
  6: 'seis',
  7: 'siete',
  8: 'ocho',
  9: 'nueve',
  10: 'diez, dies',
  11: 'once',
  12: 'doce',
  13: 'trece',
  15: 'quince',
  20: 'veinte',
}

export const counts: LexiconData['counts'] = {
  1: `
    una vez, solo la de la manana, solo la de la tarde, solo la de la noche, solo la de la mediodia, solo
    la de la madrugada, solamente la de la manana, solamente la de la tarde, solamente la de la noche,
    solamente la de la mediodia, solamente la de la madrugada, nada mas la de la manana, nada mas la de la
    tarde, nada mas la de la noche, nada mas la de la mediodia, nada mas la de la madrugada, nomas la de
    la manana, nomas la de la tarde, nomas la de la noche, nomas la de la mediodia, nomas la de la
    madrugada, unicamente la de la manana, unicamente la de la tarde, unicamente la de la noche,
    unicamente la de la mediodia, unicamente la de la madrugada, solo la primera, solamente la primera,
    nomas la primera, nada mas la primera
  `,
  2: 'dos veces',
  3: 'tres veces',
}

export const sides: LexiconData['sides'] = {
  left: 'izquierda, izquierdo, izquierdas, izquierdos, izq, izqda, izqdo, zurda, izda, izdo',
  right: 'derecha, derecho, derechas, derechos, dcha, dcho, der, drcha, diestra',
}

export const daysBack: LexiconData['daysBack'] = {
  0: 'hoy, hoy nada mas, hoy nomas, el de hoy, lo de hoy, dia de hoy',
  1: 'ayer, lo de ayer, el de ayer, el dia de ayer',
  2: 'anteayer, antier, antes de ayer, antes ayer, antiayer, antesdeayer',
}
export const weekdays: LexiconData['weekdays'] = {
  1: 'lunes, el lunes, lun',
  2: 'martes, el martes',
  3: 'miercoles, el miercoles, mie',
  4: 'jueves, el jueves, jue',
  5: 'viernes, el viernes, vie',
  6: 'sabado, el sabado, sab',
  7: 'domingo, el domingo, dom',
}
export const months: LexiconData['months'] = {
  1: 'enero, ene',
  2: 'febrero, feb',
  3: 'marzo',
  4: 'abril, abr',
  5: 'mayo',
  6: 'junio, jun',
  7: 'julio, jul',
  8: 'agosto, ago',
  9: 'septiembre, setiembre, sept',
  10: 'octubre, oct',
  11: 'noviembre, nov',
  12: 'diciembre, dic',
}
