import type { LexiconSource } from '../shape.ts'

const LIMB =
  'pierna/pata/pie/pantorrilla/muslo/rodilla/tobillo/gemelo/nalga/gluteo/cadera/canilla/espinilla/talon/planta'
const LIMBS =
  'piernas/patas/pies/pantorrillas/muslos/rodillas/tobillos/gemelos/nalgas/gluteos/caderas/plantas/talones/canillas/extremidades/miembros inferiores'

/** Where on the body, in the words people use (and avoid). */
export const places: LexiconSource['words'] = {
  saddle: `
    el recto, mi recto, entre las piernas, entre piernas, entre mis piernas, entrepierna, entre pierna, en medio de las
    piernas, entremedio de las piernas, entre los muslos, entre las nalgas, entre los gluteos, ahi abajo, alla
    abajo, alli abajo, ay abajo, hay abajo, aya abajo, la zona de abajo, zona de abajo, mis partes, las
    partes, partes, partes intimas, partes nobles, partes privadas, partes bajas, partes pudendas, mis cosas,
    la parte intima, mi parte intima, zona (intima/genital/perineal/perianal/anal/privada/vaginal/de la
    silla/pubica/delicada/baja/en silla de montar/de silla de montar/sacra/del panal), silla de montar, region
    (genital/perineal/anal/perianal/intima), genital, genitales, perine, perineo, pene, pito, pilila, polla,
    verga, pija, picha, pirula, pinga, chota, poronga, miembro, testiculo, testiculos, huevos, huevo
    izquierdo, cojones, pelotas, bolas, escroto, glande, prepucio, vagina, vulva, vaginal, labios vaginales,
    labios mayores, clitoris, concha, cono, chocho, chichi, cuca, toto, panocha, chucha, bajos, mis bajos, los
    bajos, (el/mi/del/al/por el/en el) ano, anal, perianal, ojete, esfinter anal, raja, la raja, raja del
    culo, culo por dentro, agujero del culo, interior de los muslos, cara interna de los muslos, parte interna
    de los muslos, parte interior de los muslos, donde me siento, donde uno se sienta, donde me limpio, pubis,
    suelo pelvico, piso pelvico, zona del pubis, la de abajo, lo de abajo, aparato, mi amigo de abajo,
    cachucha, hasta las partes, abajo entre las piernas, parte de abajo`,
  groin: `ingle, ingles, la ingle, las ingles`,
  seat: `
    culo, trasero, cola, colita, pompis, pompas, nalgas, gluteos, posaderas, traste, poto, pandero, culito,
    ojal, coxis, rabadilla, retaguardia, sentaderas, asentaderas, tujes, orto, upite`,
  wipe: `
    limpiarme, limpio el culo, me limpio, al limpiarme, limpiarse, papel higienico, el papel, papel del bano,
    secarme, me seco despues de, bide, lavarme ahi, al lavarme, al asearme, asearme, limpiandome`,
  leg: `
    ${LIMB.replaceAll('/', ', ')}, (${LIMB})
    (izquierda/izquierdo/derecha/derecho/izq/izqda/izda/der/dcha/mala/malo/afectada), miembro inferior,
    extremidad inferior, una pierna, un pie, dedo gordo, dedo gordo del pie, dedos del pie, dedos de los
    pies, dedos pie, dedo del pie, planta del pie, empeine, punta del pie, isquio, isquios, corva, detras de
    la rodilla, lado izquierdo, lado derecho, el dedo chico, dedo chiquito del pie, tibia, pierna buena,
    femoral, el batata`,
  legs: `${LIMBS.replaceAll('/', ', ')}, plantas de los pies`,
  'both-legs': `
    (en/por/de/) una y (en/por/de/) otra (pierna/pata), una pierna y (en/por/) (la/) otra,
    (las/mis/en las/los/mis/en los) dos (${LIMBS}), (ambas/ambos/en ambas/en ambos) (${LIMBS}), las 2
    (piernas/pantorrillas/rodillas/nalgas), los 2 (pies/muslos/tobillos/gemelos), (una pierna/un pie) y (la
    otra/el otro/otra/otro), (izquierda/izq) y (la/) (derecha/der), (derecha/der) y (la/) (izquierda/izq),
    pierna izquierda y (la/pierna/) derecha, pierna derecha y (la/pierna/) izquierda, pie izquierdo y (el/)
    derecho, pie derecho y (el/) izquierdo, bilateral, cada pierna, cada pie, las piernas las dos, los pies
    los dos, tanto en una pierna como en la otra, tanto la izquierda como la derecha, en las dos, por las
    dos, piernas las 2, de las dos piernas, de los dos pies`,
  'both-sides': `
    en los dos lados, en las dos, por ambos lados, de los dos lados, (en/por/de) una y (en/por/de/) otra pierna,
    ambos lados, los dos lados, a los dos lados, en ambos lados, lado y lado, por los dos lados`,
  'other-leg': `
    (la/a la/en la/por la/mi/) otra (pierna/pantorrilla/rodilla/nalga/pata/cadera), (el/al/en el/por el/mi/)
    otro (pie/muslo/lado/tobillo/gemelo/gluteo), pierna (contraria/buena/sana), lado contrario, lado bueno,
    pie bueno, la otra, el otro`,
  arm: `
    brazo, brazos, mano, manos, muneca, munecas, codo, codos, antebrazo, hombro, hombros, dedo de la mano,
    dedos de la mano, dedos de las manos, pulgar, menique, brazo izquierdo, brazo derecho, mano izquierda,
    mano derecha`,
  face: `
    cara, rostro, boca, labio, labios, mejilla, mitad de la cara, media cara, lado de la cara, parpado,
    lengua, mandibula, sonrisa, comisura, un lado de la cara, cachete`,
  eye: `ojo, ojos, vista, vision, un ojo, ojo izquierdo, ojo derecho`,
  calf: `
    pantorrilla, pantorrilla izquierda, pantorrilla derecha, gemelo, gemelo izquierdo, gemelo derecho, pierna,
    pierna izquierda, pierna derecha, una pierna, una pantorrilla, tobillo, pie, muslo, canilla, espinilla,
    pie izquierdo, pie derecho, batata, chamorro, corva`,
  belly: `barriga, vientre, abdomen, panza, estomago, tripa, tripas, guata, ombligo, abdominal, flanco`,
  chest: `pecho, corazon, esternon, torax, costillas, el pecho`,
  back: `espalda, lumbar, lumbares, zona lumbar, columna, cintura, rinones, lomo, cuello, la espalda baja`,
  head: `cabeza, migrana, jaqueca`,
  'left-leg': `
    la zurda, la izq, (pierna/pantorrilla/rodilla/nalga/cadera) (izquierda/izq/izda),
    (pie/muslo/tobillo/gemelo/gluteo/lado/talon) (izquierdo/izq), la izquierda, el izquierdo`,
  'right-leg': `
    la diestra, la der, (pierna/pantorrilla/rodilla/nalga/cadera) (derecha/der/dcha),
    (pie/muslo/tobillo/gemelo/gluteo/lado/talon) (derecho/der), la derecha, el derecho`,
}
