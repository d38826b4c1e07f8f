import { pairsIn } from '../pairs.ts'
import type { LexiconSource } from '../shape.ts'

/** "No siente el pie": how others speak of the client, as the client would say it. */
export const mine: LexiconSource['mine'] = {
  people: `
    marido, mujer, esposo, esposa, pareja, hijo, hija, madre, padre, mama, papa, hermano, hermana, novio, novia, abuelo,
    abuela, tio, tia, primo, prima, suegro, suegra, cunado, cunada, sobrino, sobrina, nieto, nieta, amigo, amiga, companero,
    companera, compa, vecino, vecina, viejo, vieja, chico, chica, chaval, chavala, senor, senora, yerno, nuera`,
  lead: 'a, al, mi, su, el, la, tu, nuestro, nuestra, un, una',
  subject: 'yo',
  owner: 'mi',
  words: pairsIn(`
    ella yo, su mi, sus mis, se le se, se les se, se me, le me, esta sangrando estoy, esta orinando estoy,
    esta en estoy, esta mareado estoy, esta mareada estoy, consigo conmigo`),
  verbs: pairsIn(`
    puede puedo, pudo pude, tiene tengo, tuvo tuve, siente siento, sintio senti, nota noto, noto note,
    logra logro, consigue consigo, quiere quiero, hizo hice, hace hago, cayo cai, cae caigo, arrastra arrastro,
    tropieza tropiezo, tropezo tropece, pierde pierdo, perdio perdi, orina orino, orino orine, mea meo,
    meo mee, moja mojo, mojo moje, aguanta aguanto, aguanto aguante, respira respiro, lleva llevo,
    camina camino, anda ando, levanta levanto, mueve muevo, apoya apoyo, tomo tome, toma tomo, trago trague,
    corta corto, corto corte, intento intente, tose toso, tosio tosi, escupe escupo, escupio escupi, ve veo,
    habla hablo, entera entero, entero entere, ahoga ahogo, ahogo ahogue, desmayo desmaye, desplomo desplome,
    ha he, limpia limpio, sienta siento, ensucia ensucio, ensucio ensucie, caga cago, cago cague,
    vomita vomito, sabe se, golpeo golpee, choco choque, resbalo resbale, rodo rode, quedo quede, queda quedo,
    sostiene sostengo, va voy, piensa pienso, prefiere prefiero, desea deseo, entiende entiendo, dejo deje,
    suda sudo, tiembla tiemblo, da doy`),
  dropsSubject: true,
  ending: ['rse', 'rme'],
}
