import type { LexiconSource } from '../shape.ts'

const PEE =
  'orinar/mear/hacer pis/hacer pipi/hacer del uno/hacer chichi/miccionar/vaciar la vejiga/hacer aguas menores/hacer aguas/orinarme/hacer de las aguas/desaguar/hacer pichi'
const POO =
  'cagar/hacer caca/hacer popo/hacer pupu/hacer del dos/defecar/evacuar/ir de vientre/hacer de vientre/ir de cuerpo/hacer de cuerpo/obrar/hacer aguas mayores/dar del cuerpo/hacer del cuerpo'
const PEED =
  'me (meo/mee/meaba/he meado/orino/orine/he orinado/orinaba/hago pis/hago pipi/hice pis/hice pipi/hice pichi/he hecho pis/he hecho pipi/moje/he mojado)'

/** Passing water, bowels and sex: the function, and the ways it fails. */
export const functions: LexiconSource['words'] = {
  bladder: `vejiga, orina, urinario, urinaria, urinarios, miccion, aguas menores, la vegiga, vegiga`,
  pee: `
    ${PEE.replaceAll('/', ', ')}, orino, orinando, orinado, meo, meando, meado, pis, pipi, mee, orine,
    chorro, el chorro, chorro de orina, hago pis, hago pipi, haciendo pis, haciendo pipi, hice pis, hice
    pipi, orinas, orinaba, meaba, pichi`,
  loo: `bano, al bano, aseo, wc, inodoro, vater, excusado, retrete, el water, orinal`,
  cant: `
    (apenas/mal/malamente/a duras penas/peor) controlo, controlo (apenas/mal/peor/poco/menos), no (hubo/habia/ha habido) (manera/forma/modo) (de/),
    (no/ya no/apenas/casi no) (me/lo/la/los/las/se me/me lo/me la/te) (puedo/podia/pude/consigo/logro/logre/consegui/he podido),
    no hay quien, no (puede/pudo/logra/consigue/ha podido), no puedo, no podia, no pude, no he podido, no podes, ya no puedo, no consigo, no logro, no
    logre, no consegui, me cuesta, me costo, me esta costando, cuesta, imposible, es imposible, soy incapaz
    de, incapaz de, apenas puedo, casi no puedo, no me sale, no me salia, no me salio, no sale, no salia, no
    salio, no hay manera de, no hay forma de, no alcanzo a, dificultad para, dificultades para, problemas
    para, problema para, trabajo para, me da trabajo, no soy capaz de, ya no consigo, ya no logro, no me deja,
    no me es posible, no puedo ni, no puedo casi, sin poder, no poder, no me puedo, no se puede, no lo puedo,
    no controlo, no aguanto, ya no controlo, no retengo, no siento ganas de, no me vienen ganas de, no tengo
    ganas de`,
  'slow-start': `
    (gotita/gotica/gotitas/goticas/poquito/poquitos) a (gotita/gotica/poquito), debil, flojo, cortado, entrecortado, a gotas, gota a gota, gotas, goteo, goteando, retencion, retencion de
    orina, tarda, tardo, tardo mucho, tardo en, apretar, hacer fuerza, empujar, esfuerzo, (mucha/harta/mas/bastante/tanta/demasiada) fuerza, no arranca, no
    empieza, no me viene, esperar, espero, lento, lenta, poca fuerza, sin fuerza, atascado, bloqueada, no
    vacio, no se vacia, no termino, empezar a, a medias, cuatro gotas, dos gotas, unas gotas, sonda, forzar,
    no fluye, a chorritos, dejo de salir`,
  'trickle-word': `chorrito, chorritos, hilito, hilillo, un hilo, goteo, gotitas, cuatro gotas, dos gotas, unas gotas, ni gota, ni una gota`,
  'stream-word': `chorro, al orinar, al mear, para orinar`,
  strong: `
    desde (nino/nina/pequeno/pequena/chico/chica) no me (meaba/orinaba/hacia pis/mojaba),
    (hora/dia/turno/manana/camino) mojado hasta los calzoncillos (sin/de pis/de orina/y no/no se),
    (me tuve que/tuve que/tuvieron que/me tuvieron que/he tenido que/me han tenido que) (sondar/sondarme/autosondar/autosondarme/poner una sonda/poner sonda/vaciarme con sonda), me (sonde/sondaron/sondo/he sondado/han sondado), autosondaje,
    me (mee/orine/he meado/he orinado/hice pis/hice pipi/hice pichi/he hecho pis/he hecho pipi),
    (se me/me) (moja/mojan/mojo/humedece/mojaba/empapa/mojaron) (la/el/los/las) (ropa/ropa interior/braga/bragas/calzon/calzones/calzoncillo/calzoncillos/pantalon/pantalones/pijama/cama/entrepierna/trusa/bombacha),
    (no tengo/sin/nada de/poco/poca/pierdo/perdi/he perdido/falta de/perdida de/menos/apenas tengo) (el/la/) (control/sensibilidad/sensacion/funcion) (de/en) (la/) (vejiga/orina/pis),
    (no he tenido/no tuve/no tenia/no he sentido/no senti/no me han dado/no me dieron/no me vienen/no me han venido/no me ha venido/no siento/no noto/no he notado/llevo sin/sigo sin) (ganas/las ganas/la necesidad/necesidad/sensacion/ninguna gana) de (orinar/mear/hacer pis/hacer pipi/ir al bano/ir),
    (no tengo/ya no tengo/nunca tengo/no me dan/no me entran/ni/cero/sin) ganas de (orinar/mear/hacer pis/hacer pipi),
    (tengo/tuve/con) (escapes/un escape), escapes de (orina/pis/pipi), goteo sin (querer/darme cuenta/parar),
    (tuve/he tenido/tengo) (un/unos/) (accidente/accidentes/percance/percances) (en el bano/camino al bano/con el pis/con la orina/con el pipi),
    cama mojada, cama meada, pantalon mojado, pantalones mojados, (amaneci/amanezco/me levante/me
    despierto/me desperte) (mojado/mojada/meado/meada/orinado/orinada/toda mojada/todo mojado), (me/)
    (habia/habian) (meado/orinado/hecho pis/hecho pipi) (encima/), me hago encima, hacerme pis encima,
    hacerme encima, mearme encima, orinarme encima, meada encima, charco, (estoy/voy/quede)
    (meado/meada/orinado/orinada) (encima/), no (me/) (enteré/entere/doy cuenta/di cuenta) (de que/que) (me/)
    (meo/orino/mee/orine/hago pis), me (mojo/moje/he mojado/mojaba/orine/meo) (los pantalones/la cama/la
    ropa/el pantalon/las bragas/los calzoncillos/entero/entera), (${PEED}) (encima/en la cama/en los
    pantalones/sin darme cuenta/sin querer/sin sentir/sin notarlo/sin enterarme/las bragas/los
    calzoncillos/los pantalones/la cama/en cama/dormido/dormida/toda/todo/de noche/en el coche), se me
    (escapa/escapo/ha escapado/escapaba/sale/salio/va/fue/escapan/gotea) (el pis/el pipi/la orina/la
    meada/pis/pipi/orina/el chorro/el uno/gotas/unas gotas/la pis/la pipi/solo el pis),
    (perdida/perdidas/escape/escapes/fugas) de (orina/pis/pipi), incontinencia, incontinencia urinaria,
    incontinente, retencion urinaria, retencion de orina, uso panales, con panales, uso compresas para el
    pis, uso panal, no (siento/noto) (cuando/las/si) (tengo ganas/necesito/quiero/tengo que/ganas) (de/)
    (ir/mear/orinar/hacer pis/hacer pipi/ir al bano/), no (siento/noto) (ganas/las ganas/la necesidad) de
    (mear/orinar/hacer pis/hacer pipi/ir al bano), no (siento/noto) (cuando/si/que/al) (hago pis/hago
    pipi/orino/meo/orinar/mear/estoy orinando/hacer pis/me sale/sale), no (siento/noto) (la orina/el pis/el
    pipi/el chorro), no llego (a tiempo/) al (bano/water/aseo/vater), no alcanzo a llegar al bano, no me da
    tiempo (de/a) llegar al bano, amaneci mojado, amaneci mojada, me desperte mojado, me desperte mojada,
    calzoncillos mojados, bragas mojadas, ropa interior mojada, moje la cama, (no he/no)
    (orinado/meado/orine/mee/hecho pis/hago pis/hice pis/meo/orino/hecho pipi/hago pipi) desde
    (ayer/anoche/hace/esta manana/el/la), (no/sin) (he/) (orinado/meado/orinar/mear/hacer pis/hacer pipi) (en
    todo el dia/todo el dia/desde ayer/desde anoche/en horas), llevo (horas/todo el dia/un dia) sin
    (orinar/mear/hacer pis/hacer pipi), no controlo (la orina/el pis/la vejiga/mi vejiga/los esfinteres/el
    pipi), perdi el control de la (vejiga/orina)`,
  'cant-hold': `
    no controlo, ya no controlo, no controlaba, no lo controlo, no la controlo, no (me/lo/la/) aguanto, no
    aguanto las ganas, no me aguanto las ganas, no puedo aguantar, no puedo aguantarme, no puedo aguantarlo,
    no lo retengo, no puedo retener, no puedo contener, no contengo`,
  'cant-go': `
    no puedo ir, no puedo hacer nada en el bano, no me sale nada, no sale nada, no me viene nada, no sale ni
    gota, no me sale ni una gota, no me sale casi nada, no sale casi nada`,
  leak: `escape, escapes, fuga, fugas, goteo, perdidas de gotas`,
  leaking: `
    se me escapa, se me escapan, se me escapo, se escapa, se me sale, se me salio, se me salen, se escapan,
    encima, mojado, mojada, gotea, se me ha escapado, goteando, se me va`,
  'leaking-word': `incontinencia, se me escapa, se me escapo, se me escapan`,
  loss: `
    perdida de control, perdi el control, he perdido el control, pierdo el control, descontrol, perdida del
    control`,
  often: `
    a cada rato, cada rato, cada dos por tres, cada diez minutos, cada hora, cada media hora, urgencia, muchas
    veces, escuece, arde, sangre, todo el tiempo, constantemente`,
  'need-to-go': `
    ganas de ir, ganas de ir al bano, ganas de mear, ganas de orinar, ganas de hacer pis, ganas de hacer pipi,
    ganas`,
  'pad-word': `panal, panales, compresa, sabanas, calzoncillos, bragas, pantalon, pantalones`,
  'wet-word': `mojado, mojada, mojados, mojadas, humedo, empapado de orina, mancha, manchado`,
  'can-pee': `
    (puedo/pude) (${PEE}), (orino/meo/hago pis/hago pipi) (bien/normal/sin problema/sin
    problemas/perfectamente/como siempre)`,
  bowel: `
    el recto, mi recto, del recto, intestino, intestinos, esfinter, esfinteres, evacuacion, evacuaciones,
    deposicion, deposiciones, heces, intestinal, aguas mayores, vientre suelto`,
  poo: `
    ${POO.replaceAll('/', ', ')}, caca, popo, cago, cagando, cague, hago caca, hago popo, hice caca, mierda,
    defeco, evacuo, voy de cuerpo, voy de vientre, pupu, del dos`,
  wind: `gases, pedos, pedo, los gases, ventosidades, peos`,
  'bowel-strong': `
    (se me/se le) (salio/sale/escapo) todo (y/sin), (me di cuenta/lo note/lo supe) por el olor, (ensuciar/ensucio/ensucie/manchar/manche) la ropa interior,
    (ensucio/ensucie/ensuciaba/ensuciando/he ensuciado/mancho/manche/manchando) (la/el/las/los/mi/mis/) (ropa/ropa interior/calzon/calzones/calzoncillo/calzoncillos/braga/bragas/bombacha/trusa/cama/sabanas/pantalon/pantalones) (sin/y no/dormido/dormida/de noche),
    (me/) (hice/hago/he hecho/hacia) (del cuerpo/de vientre/del dos/de cuerpo) (dormido/dormida/en la cama/en el carro/en los pantalones/de noche/anoche),
    (pense/creia/crei/pensaba/parecia) (que/) (era/seria/fuera/iba a ser) (un/solo un/nomas un/) (pedo/gas/aire/peo) y (no/no era/era/salio/fue),
    me (manche/mancho/he manchado/manchaba) (encima/sin/y no/atras/por detras/el calzon/los calzones/el calzoncillo/la braga/las bragas/la ropa interior),
    (no tengo/sin/nada de/poco/poca/pierdo/perdi/he perdido/falta de/perdida de/menos/apenas tengo) (el/la/) (control/sensibilidad/sensacion/fuerza) (de/del/de los/en el) (intestino/intestinos/esfinter/esfinteres/recto/ano/vientre),
    (hago/hice/haciendo/he hecho) (del cuerpo/del dos/de vientre) (sin sentir/sin sentirlo/encima/sin darme cuenta/sin querer/sin notarlo),
    me (ensucio/ensucie/ensuciaba) encima, (me/) (habia) (cagado/hecho caca/hecho popo/ensuciado) (encima/), cagarme encima, hacerme caca, hacerme
    popo, hacerme caca encima, (estoy/quede) (cagado/cagada) (encima), caca en (la ropa/los calzoncillos/las
    bragas/la cama/el pantalon), accidente con la caca, calzoncillos sucios, bragas sucias, (no distingo/no
    diferencio) (gases/pedo/si es), me (cago/cague/he cagado/cagaba/hago caca/hice caca/hago popo/hice
    popo/he hecho caca/he hecho popo/hice del dos/ensucie/he ensuciado/hice/defeco/defeque/zurre) (encima/en
    la cama/en los pantalones/sin darme cuenta/sin querer/sin sentir/sin enterarme/toda/todo), se me
    (escapa/escapo/escapan/ha escapado/sale/salio/va/salen) (la caca/caca/la popo/el popo/popo/las
    heces/heces/los gases/los pedos/pedos/gases/la mierda/por atras/por detras), incontinencia fecal, ensucie
    (la ropa/la ropa interior/los calzoncillos/la cama/las bragas), mancho (la ropa interior/los
    calzoncillos/las bragas), manche (los calzoncillos/las bragas/la ropa interior), no controlo (los
    esfinteres/el esfinter/la caca/el intestino/las heces/los gases), no me aguanto (la caca/las heces/los
    gases/el popo), no (siento/noto) (cuando/las/si) (tengo/necesito/quiero/ganas) (que/ganas/ganas de/de/)
    (${POO}), no (siento/noto) (ganas/las ganas) de (${POO}), perdi el control (del intestino/de los
    esfinteres/del esfinter/de los intestinos)`,
  constipated: `
    estrenido, estrenida, estrenimiento, (llevo/hace) (dos/tres/cuatro/cinco/seis/siete/varios/2/3/4/5/6/7)
    dias (sin/que no) (${POO}/hago caca/voy de vientre/cago/hago popo/voy de cuerpo)`,
  erection: `
    ereccion, erecciones, empalmarme, empalmo, empalme, se me para, parada, trempera, ponerse dura, erectil,
    eyacular, eyaculo, eyaculacion, orgasmo, orgasmos, libido, correrme, venirme, acabar en la cama`,
  sex: `
    sexo, sexual, sexuales, relaciones, relaciones sexuales, relaciones intimas, en la cama con (mi/), en la
    intimidad, intimidad, hacer el amor, haciendo el amor, follar, follando, coger con mi, masturbarme,
    masturbo, con mi pareja en la cama, vida sexual`,
  'sex-fail': `
    no siento nada, no siento, no noto nada, ya no siento, no noto, nada, no funciona, no funciono, no me
    funciona, no puedo, no consigo, no logro, ya no tengo, sin sensibilidad, perdi, he perdido, perdida,
    fallo, falla, me falla, no responde, no me responde, problemas, dificultad, no llego, ya no, dormido,
    raro, disfuncion, menos, no tengo, me cuesta, no siente, imposible, floja, sin ganas`,
  'sex-strong': `
    (ya/) no (siento/tengo/noto) (el/) (placer/gusto), no puedo (correrme/venirme/acabar en la cama), sin (ereccion/erecciones/orgasmo/orgasmos/placer),
    no (se pone/se me pone/me pone) (dura/duro/tiesa), ya no se pone dura, se me baja enseguida, no siento
    (placer/el orgasmo/los orgasmos), no llego al (orgasmo/final), no lubrico, no me mojo, impotencia,
    impotente, disfuncion erectil, no se me (levanta/para/pone dura/empalma/endurece/levanto/paro), ya no se
    me (levanta/para/pone dura), no (me empalmo/puedo empalmarme/tengo erecciones/tengo ereccion/consigo una
    ereccion/logro una ereccion/logro tener una ereccion/consigo tener una ereccion), ya no (tengo
    erecciones/tengo ereccion/me empalmo), no puedo (eyacular/correrme/venirme/llegar al orgasmo/tener un
    orgasmo/tener erecciones/tener una ereccion), problemas de ereccion, gatillazo, gatillazos, no me funciona
    el pene, gatillazo siempre`,
  'sex-fine': `
    sin (problemas/problema) (de/en el/con el/con la) (ereccion/sexo/sexuales), no tengo problemas
    (sexuales/de ereccion)`,
}
