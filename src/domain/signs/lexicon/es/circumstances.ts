import type { LexiconSource } from '../shape.ts'
import { proxy } from './proxy.ts'

const NUMBERS =
  'dos/tres/cuatro/cinco/seis/siete/ocho/nueve/diez/once/doce/quince/veinte/varios/muchos/unos/2/3/4/5/6/7/8/9/10/11/12/15/20/30'
const DAYS =
  'ayer/anoche/hoy/esta manana/esta tarde/esta noche/el lunes/el martes/el miercoles/el jueves/el viernes/el sabado/el domingo/el fin de semana/hace'

/** When, since when, how suddenly, doing what: told beside the finding, and never hiding it. */
export const circumstances: LexiconSource['circumstances'] = {
  proxy,
  third: `puede, no puede, pudo, tiene, siente, nota, logra, consigue, hizo, se hizo, se cayo (de/por/del/desde/en la/en el/y), arrastra, pierde, perdio, orina, mea, respira, se desmayo, se tomo, se trago, se corta, se quiere, quiere morirse, se va a, se le, su pierna, sus piernas, su pie`,
  /** With these a denial of such thoughts is no denial: "no quiero morir, solo que esto pare", "nunca ... hasta hoy". */
  'harm-turn': `
    con (este/tanto/mi) dolor, sufrir, ni en (ninguna/ninguno/ningun/otra/otro), pero, aunque, salvo, excepto, menos, hasta, a veces, de vez en cuando, siempre, todo el (rato/tiempo/dia), cada (dia/vez/noche), solo que, sino,
    (y/y es que) (hoy/ahora/ayer/anoche/ultimamente), ultimamente, antes, (quiero/quisiera/necesito/solo) (parar/que/dormir/descansar/dejar/desaparecer/irme/paz/acabar/huir),
    (pare/acabe/termine/se acabe), dejar de, descansar, desaparecer, despertar, solo no, prefiero, preferiria, mejor no, irme, dormirme, apagarme, esfumarme, terminar, no (puedo/aguanto/veo/se/tengo/quiero seguir/quiero estar), asi, tampoco, seguir, sola, solo por, miedo, tanto, mucho, de verdad, del todo`,
  presents: `soy, aqui, habla, escribe, le habla, le escribe, te escribe, les escribe, te habla, me llamo, mi nombre es, (le/te/les) saluda`,
  plea: `ayuda, ayudenme, ayudeme, ayudadme, auxilio, socorro, (que/q) (hago/hacemos/debo hacer/debemos hacer/puedo hacer/podemos hacer/tenemos que hacer), urgente, (llamo/llamamos/llamar) (a/al) (emergencias/ambulancia/la ambulancia/una ambulancia/112/911/123/medico), es (urgente/una emergencia)`,
  old: `
    a los (5/6/7/8/9/10/11/12/13/14/15/16/17/18/19/20/25/30) anos, (cuando tenia/teniendo) (5/6/7/8/9/10/11/12/13/14/15/16/17/18/19/20) anos,
    el ano pasado, ano pasado, hace un ano, hace anos, hace meses, hace (${NUMBERS}) (anos/meses), (anos/meses) atras, hace
    (siete/ocho/nueve/diez/doce/7/8/9/10/11/12/14/15/16/20) semanas, cuando era
    (joven/nino/nina/pequeno/pequena/chico/chica/mas joven/adolescente), de (joven/nino/nina/pequeno/chico),
    en mi (juventud/infancia/adolescencia), en el embarazo, cuando estaba embarazada, el verano pasado,
    el invierno pasado,
    en la universidad, en su dia, en el pasado, antiguamente, hace decadas, el episodio anterior, solia, de adolescente, en la mili, (ya/) (paso/pasaron) (un/dos/tres/varios) (ano/anos),
    antes del parto`,
  past: `
    (la primera semana/el primer dia/los primeros dias/el primer mes/al principio/al inicio/cuando me dio por primera vez), la vez anterior, la vez pasada, antes de (la operacion/operarme/la cirugia), tras el parto, despues del
    parto, hace (tiempo/mucho/mucho tiempo), la ultima vez que`,
  'weeks-ago': `semanas atras`,
  ongoing: `
    hace (un ano/anos/meses/mucho/tiempo/mucho tiempo/semanas) que
    (no/se/me/tengo/siento/noto/ando/voy/estoy), no (puedo/consigo/logro/siento/noto/aguanto/controlo/me
    aguanto/me responde/me responden/me sostiene/me sostienen/me sale/sale/responde/se me para/se me
    levanta/llego), se me
    (dobla/doblan/va/van/duerme/duermen/escapa/escapan/sale/afloja/aflojan/vence/cae/engancha/traba/adormece),
    me (falla/fallan/cuesta/caigo/tropiezo/meo/hago pis/orino/ahogo/falta), arrastro, arrastrando, tropiezo,
    tropezando, cojeo, tengo, estoy, siento, noto, me esta, se me esta, desde, sigue, siguen, sigo, todavia,
    aun, otra vez, de nuevo, ahora, hoy, ayer, esta manana, anoche, peor, volvio, ha vuelto, vuelve, empezo,
    ultimamente, como el ano pasado, llevo, tomo, estos dias, esta semana, actualmente`,
  over: `desde entonces (todo/muy/) (bien/normal/perfecto/nada), (todo/muy/) (bien/normal/perfecto) desde entonces, nunca mas`,
  'gone-finding': `
    ya no (tengo/hay/siento/noto) (adormecimiento/entumecimiento/hormigueo/hormigueos/fiebre/hinchazon/calambres/escalofrios),
    ya no (me/se me/) (despierta/despierto/despertaba/hormiguea/hormiguean/duerme/duermen/adormece/hincha/suda/sudo/mareo/marea)`,
  gone: `
    pero ya no, y ya no, ya no me duele, ya no lo siento mal, ahora ya no, (ya/) se me (paso/ha
    pasado/quito/ha quitado/fue/ha ido), (ya/) se (paso/quito/fue/ha ido/ha pasado/resolvio/calmo/arreglo), ya
    paso, ya ha pasado, ya no (tengo/me duele/hay/esta/lo tengo/la tengo/me pasa/se me duerme/se me duermen/lo
    noto/lo siento), desaparecio, ha desaparecido, ya esta bien, ya estoy bien, ya todo bien, ya bien, ya
    normal, resuelto, superado, curado, ya me paso, me duro (un rato/poco/unos minutos/cinco minutos/un
    momento), duro (un rato/poco/unos minutos/cinco minutos/un momento/diez minutos), fue un momento, fue un
    rato, volvio a la normalidad, todo normal ya, ahora (bien/normal/ya bien), cesado, recuperado`,
  ended: `ya no`,
  shield: `
    ya no (cabe/me cabe/entra/me entra/me llega/llega/me aprieta/es como/se si/me obedece/me sujeta/me
    levanta/levanto/subo/muevo/me entero/me empalmo/me excito/distingo/retengo/me aguanto/hay manera/hay
    forma/me obedecen/me responden/me sostienen/la siento/lo siento/las siento/los siento/la noto/lo noto/la
    muevo/lo muevo/lo controlo/la controlo), ya no (siento/noto/me
    siento/puedo/aguanto/controlo/consigo/logro/responde/me responde/me sostiene/sale/me sale/se me levanta/se
    me para/llego/quiero/funciona/me funciona/tengo fuerza/tengo fuerzas/tengo sensibilidad/tengo
    erecciones/tengo ereccion/tengo control/es solo/solo/es), se me (fue/ha ido) (la/el)
    (fuerza/sensibilidad/pierna/voz/vista/habla/pie/rodilla/equilibrio), no se me (paso/ha
    pasado/quita/quito/fue/ha quitado), no se (paso/quito/fue/calmo), no ha desaparecido, no desaparecio`,
  always: `
    como siempre, de siempre, desde siempre, lo de siempre, la de siempre, igual que siempre, el de siempre,
    desde (el colegio/la escuela/nino/nina/chico/chica/joven/pequeno/pequena/adolescente/los 12/los 15/los 20/hace decadas), (de/desde) nacimiento, lo tipico mio,
    desde el principio, cronico, cronica, de toda la vida, toda la vida, sin cambios, igual que antes, como
    antes, como al principio, habitual, lo habitual, desde hace anos, hace anos que, ya lo sabes, ya lo sabe,
    el medico ya lo sabe, conocido, conocida, nada nuevo, no es nuevo, no es nueva, igual que ayer, mismo de
    siempre`,
  doubt: `
    jaja, jajaja, jajajaja, jajajajaja, jeje, jejeje,
    (era/fue/va de/de/en) broma, (jaja/jajaja/jajajaja) es broma, es broma (jaja/vivo/no te asustes/tranquilo/tranquila/tranquilos/coach), bromeo, bromeando, es un decir, es una forma de hablar, es una exageracion, no se si, quizas, quiza, tal vez, a lo mejor, puede que, capaz que, no estoy seguro, no estoy segura, sera
    que, es normal que, sera normal, es normal, seran, no se bien, imaginaciones mias, igual es, me parece
    que, no se`,
  'new': `
    nuevo, nueva, nuevos, nuevas, de repente, de golpe, de pronto, subito, repentino, desde (${DAYS}),
    empezo, empece, ha empezado, hoy, ahora, ayer, anoche, esta manana, esta tarde, esta noche, esta semana,
    peor, mas, por primera vez, primera vez, nunca me habia pasado, antes no, aumentando, ultimamente, cada
    vez, desde la lesion, perdi, he perdido, subiendo, bajando, extendiendo, desde hace, ultimos dias`,
  spread: `
    (bajo/ha bajado/bajando/llego/ha llegado/se corrio/se ha corrido/se extendio/paso/ha pasado) (al/hasta el/hasta la/a la/a los/hasta los/hasta),
    nuevo, nueva, nuevos, nuevas, de repente, de golpe, de pronto, desde (${DAYS}), empezo, ha empezado, por
    primera vez, primera vez, nunca me habia pasado, antes no, peor, cada vez (mas/peor/mas abajo/mas
    fuerte), se (extiende/esta extendiendo/ha extendido/extendio), extendiendose, bajando, va bajando,
    aumenta, aumentando, mas (fuerte/abajo/zona/intenso/extenso), ha bajado al pie, llega mas abajo, ha
    llegado, va a mas`,
  sudden: `
    de repente, de golpe, de pronto, subito, subita, repentino, repentina, subitamente, repentinamente, de un
    momento a otro, de la nada, hace (un rato/una hora/media hora/diez minutos/cinco minutos/poco/un
    momento/unos minutos), ahora mismo`,
  slow: `
    poco a poco, a veces, de vez en cuando, lentamente, leve, un poquito, va y viene, desde hace semanas, hace
    semanas, gradualmente`,
  'sudden-belly': `
    de golpe, de repente, brutal, repentino, subito, tremendo, horrible, terrible, insoportable, fuertisimo,
    muy fuerte, intenso, atroz, de pronto, feroz`,
  faintish: `
    mareo, mareado, mareada, casi me desmayo, desmayo, sudor frio, palido, palida, me desmaye, sudando,
    sudores frios, mareos`,
  worsened: `
    peor, desde entonces, mucho peor, empeorado, mas dolor, me duele mas, mucho dolor, horrible, fatal, desde
    la caida, no puedo moverme, dolor fuerte`,
  toilet: `
    bano, pis, pipi, orina, orinar, mear, pee, vejiga, caca, popo, water, ganas, inodoro, chorro, ganas de ir,
    aseo`,
  'bowel-only': `caca, popo, heces, gases, pedos, pedo, vientre, cagar, mierda, atras, detras`,
  long: `desde, todo el dia, toda la noche, horas, ayer, anoche, bien, mucho, nada, dias`,
  'spreading-to': `limpiarme, genitales, papel, bano, entrepierna, partes, orinar, hacer pis, pis`,
  'need-loo': `bano, ganas, ganas de ir, vejiga`,
  'loo-odd': `
    no me sale, no sale, raro, distinto, problema, problemas, a cada rato, cada rato, cada dos por tres, no
    llego, urgencia, casi nada, gotas, no puedo, me cuesta, tarda, tardo, apretar, fuerza, no siento, no noto,
    escapa, no aguanto, corriendo, mojado, de mas, muchas veces, no se si, horas`,
  again: `otra vez, de nuevo, vuelve, vuelvo, volvio, volvi, vuelto, igual, lo mismo, tambien, ahora me pasa, me vuelve`,
  organ: `
    pene, pito, polla, verga, clitoris, vagina, vulva, pija, testiculos, huevos, miembro, genitales, picha`,
  anal: `culo, ano, trasero, recto, cola, atras`,
  too: `
    tambien, tb, tmb, ahora, igual, empezo, ha empezado, nuevo, desde, ademas, paso a, pasado a, ha pasado`,
  joined: `
    (ahora/y/y ahora/pero ahora/luego) (tambien/) (la/en la/el/en el/a la)
    (derecha/izquierda/derecho/izquierdo/otra/otro), tambien (la/en la/el/en el/a la)
    (derecha/izquierda/derecho/izquierdo/otra/otro), (la/en la/el/en el) (derecha/izquierda/otra) tambien,
    paso a la otra, ha pasado a la otra, en la otra tambien`,
  'also-word': `tambien, tb, tmb, ademas`,
  'now-both': `
    ahora en (las dos/ambas/los dos/ambos), ahora las dos, ahora los dos, ya son las dos, en las dos, en ambas`,
  'in-both': `en las dos, en los dos, en ambas, en ambos, por las dos, por ambas, ahora`,
  'both-once': `antes (era/solo/solo era/era solo) (una/la izquierda/la derecha), antes en una`,
  'move-word': `
    mover, levantar, doblar, estirar, apoyar, controlar, subir, caminar, andar, pisar, sostener, usar,
    flexionar, cargar, alzar, empujar`,
  'walking-word': `
    caminar, andar, al caminar, al andar, escaleras, caminando, andando, paso, pasos, pisar, suelo, caigo,
    bajar, subir, cai`,
  'cant-said': `
    ahora (ninguna/ninguno/cero/ni una/ni uno/nada), (cero/ninguna/ni una/nada) (en/con/de) (la/el) (mala/malo/izquierda/derecha/izquierdo/derecho/otra/otro/afectada),
    no (hubo/habia/ha habido/hay) (manera/forma/modo), ni modo, sin exito, en vano, y nada,
    no puedo, no pude, no consigo, no logro, imposible, no podia, me cuesta, incapaz, apenas puedo, no me
    sale, no alcanzo, ya no puedo, no he podido`,
  'without-trying': `
    sin querer, sin dieta, sin hacer dieta, sin proponermelo, sin intentarlo, sin motivo, sin razon, no se por
    que, sin saber por que, sin explicacion, sin hacer nada`,
  'bed-word': `
    noche, cama, sabanas, dormir, levanto, levante, pijama, despierto, desperte, madrugada, noches, amanezco,
    amaneci`,
  bones: `
    osteoporosis, osteopenia, huesos debiles, huesos fragiles, cortisona, corticoides, corticoide, prednisona,
    prednisolona, esteroides, dexametasona, hueso debil, descalcificacion`,
  actual: `
    ya no, sigue, todavia, ahora mismo, no puedo, llevo, desde (${DAYS}), me esta pasando, me pasa desde,
    hoy, esta manana, anoche`,
}
