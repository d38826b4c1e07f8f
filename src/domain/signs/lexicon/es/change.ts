const list = (words: string): readonly string[] => words.trim().split(/\s*,\s*/)

/** Words that tell of a change of old trouble, words that deny one, and words that call it the same. */
export const change = {
  changed: list(`
    peor, peores, empeora, empeoro, empeorado, empeorando, cambio, cambia, cambiado, cambiando, cambios,
    distinto, distinta, diferente,
    nuevo, nueva, nuevos, nuevas, repente, golpe, pronto, subito, mas, fuerte, debil, aumenta, aumento,
    aumentado, aumentando, extiende,
    extendido, extendiendo, completamente, totalmente, mal, empezo, empezado, empieza, mojado, mojada, puedo, nada, nunca, ya`),
  /** So do these, unless the same clause calls it the same: "como siempre hoy". */
  fresh: list('ahora, hoy, ayer, anoche, manana, tarde, noche, otra, vez'),
  denied: list('no, sin, ni, tampoco, ningun, ninguna, nada'),
  same: list(
    'siempre, igual, mismo, misma, estable, habitual, normal, conocido, conocida, antes, cronico, cronica',
  ),
  /** A clause about one of these says nothing of the trouble named in another. */
  others: list(
    'dolor, espalda, pierna, pantorrilla, pie, rodilla, muslo, nalga, gluteo, sueno, sesion, sesiones, ejercicio, ejercicios',
  ),
  turns: list('pero, aunque, salvo, excepto, solo'),
} as const
