import type { NetSource } from '../../shape.ts'

/** How face, arm, speech, sight, heart and breath fail. */
export const upperBody: NetSource['words'] = {
  droop: `
    torcido, torcida, torcio, torce, tuerce, se me
    (tuerce/torcio/cae/cayo/va/fue/desvia/desvio/duerme/durmio/paraliza/descuelga/ladea/ha ido/ha caido/ha
    torcido/ha dormido/ha quedado), se (tuerce/torcio/cae/cayo/va de lado/desvia/me va), caido, caida,
    colgando, cuelga, colgado, colgada, descolgado, descolgada, chueco, chueca, desviado, desviada, ladeado,
    ladeada, de lado, de un lado, de un solo lado, un solo lado, a un lado, para un lado, por un lado, por la
    comisura, paralizado, paralizada, paralisis, dormido, dormida, adormecido, adormecida, acorchado,
    acorchada, entumecido, entumecida, anestesiado, anestesiada, dentista, tieso, tiesa, rigida, rigido,
    inmovil, no se mueve, no responde, no sube, no cierra, no se cierra, a medias, desigual, asimetrica,
    asimetrico, derretida, derretido, media, mitad, medio lado, raro, rara, babeo, baba, babeando, se me sale
    (el/la) (agua/sopa/cafe/bebida/saliva/baba), se me escapa (el/la) (agua/sopa/cafe/bebida/saliva/baba),
    floja, flojo, hormiguea, hormigueo, distinta, distinto, de plomo, pesada`,
  'arm-fail': `
    no (la/lo)
    (cierro/cerraba/abro/abria/movia/sentia/levantaba/controlaba/podia/puedo/cierra/abre/domino/gobierno), no
    (cerraba/agarraba/respondia/obedecia/subia/cogia/sujetaba/sostenia/cierra/agarra/coge), se me
    (cae/caen/cayo/cayeron/caia/ha caido/han
    caido/resbala/resbalo/escapa/escapo/escurre/escurrio/va/fue/duerme/durmio/durmieron/duermen/ha dormido/ha
    quedado/queda/afloja/aflojo/suelta/solto/desploma), se cae, se cayo, debil, debiles, debilidad, flojo,
    floja, sin fuerza(/s), no tiene fuerza, no tengo fuerza(/s), perdi (la/) fuerza, perdida de fuerza, perdio
    (la/) fuerza, muerto, muerta, muertos, de trapo, trapo, plomo, de plomo, pesado, pesada, inutil, torpe,
    tonta, tonto, paralizado, paralizada, colgando, cuelga, dormido, dormida, dormidos, dormidas, adormecido,
    adormecida, adormecidos, acorchado, acorchada, acorchados, entumecido, entumecida, entumecidos,
    anestesiada, anestesiado, no (me/)
    (responde/responden/respondia/respondio/obedece/obedecen/obedecia/siento/noto/hace caso/hacia caso/hacen
    caso/coordino/atino/acierto/atinaba/acertaba/agarra/aprieta/sube/sirve/cierra/abre/es mia/es
    mio/coge/sostiene/levanta), no la (siento/noto/muevo/controlo), no lo (siento/noto/muevo/controlo),
    hormigueo(/s), hormiguea, hormiguean, cosquilleo, garabato(/s), ilegible, como de otro, ajeno, ajena, va
    por su cuenta, raro, rara, rendido, tiembla, calambres, corcho, de corcho`,
  'lose-hold': `
    se me (cae/caen/cayo/cayeron/resbala/resbalo/resbalan/escapa/escurre/escurren/suelta) (de/todo/todo de/las
    cosas/el/la/los/las), se me cae todo, no lo puedo (agarrar/coger/sostener/sujetar), no atino, no acierto`,
  'hand-act': `
    abrochar, abrocharme, coger, agarrar, sujetar, escribir, sostener, teclear, cerrar, abrir, mover, levantar`,
  'arm-act': `
    mover(/lo/la), levantar(/lo/la), alzar(/lo/la), subir(/lo/la), coger, agarrar, sujetar, sostener, apretar,
    abrir, cerrar, escribir, usar(/la/lo), abrochar(/me), controlar(/la/lo), meter, sentir, notar, peinarme,
    teclear, girar, doblar, firmar`,
  suddenly: `
    de repente, de pronto, de golpe, subito, subita, repentino, repentina, ahora mismo, hace (un rato/una
    hora/media hora/diez minutos/cinco minutos/poco/un momento/unos minutos/veinte minutos/dos horas), hace
    nada, de la nada, en seco, esta manana, hoy, esta tarde, anoche, ahora, desayunando, cenando, comiendo, al
    despertar, al despertarme, al levantarme, desperte, amaneci, amanecio, me he despertado, me levante, de un
    momento a otro, en mitad, a mitad, en medio de, durante (unos/un/cinco/diez), izquierdo, izquierda,
    derecho, derecha, de un lado, todo el lado, desde hace (un rato/una hora/media hora)`,
  'speech-fail': `
    enredado, enredada, se me
    (traba/traban/trabo/trababa/enreda/enredan/enredo/enredaba/atasca/atasco/lia/lian/va/van/olvidan/atropellan/escapan/borran/quedan),
    trabado, trabada, trabo, trabandome, pastoso, pastosa, gangoso, gangosa, arrastrado, arrastrada, arrastro,
    arrastrando, arrastraba, borracho, borracha, bebido, bebida, copas, tomado, tomada, mezclo, mezclaba,
    mezcladas, cambio, cambiadas, cambiaba, confundo, confundia, al reves, raro, rara, raras, sin sentido,
    incoherente, incoherencias, torpe, hinchada, gorda, dormida, pesada, de trapo, estropajosa, estropajo,
    balbuceo, balbuceaba, balbuceando, tartamudeo, tartamudeaba, mudo, muda, no (me/)
    (sale/salen/salia/salian/salio/salieron/entienden/entendian/entendieron/entiende/entendia/entendio/sale
    bien/vienen/viene/venian/encuentro/encontraba/obedece), no
    (acierto/atino/logro/consigo/puedo/podia/sabia/pude), en blanco, me quedo en blanco, jerigonza, chino,
    mal, desordenadas, revueltas, sopa, papa en la boca, patata en la boca, tropiezo`,
  'speech-act': `
    hablar, decir(/lo), pronunciar, articular, vocalizar, encontrar, leer, entender, escribir, sacar,
    terminar, formar`,
  'sight-fail': `
    sin (ver/vista/vision), borroso, borrosa, borrosos, doble, nublado, nublada, nublo, nubla, negro, negra,
    negras, oscuro, oscura, oscurecio, oscurecido, apago, apaga, apagado, apagada, gris, cortina, telon,
    niebla, humo, sombra, sombras, mancha, manchas, moscas, destellos, luces, relampagos, mitad, media, medio,
    agujero, hueco, ciego, ciega, ceguera, tunel, fundio, se me (va/fue/ha
    ido/nubla/nublo/nublaba/apaga/apago/pone/puso/oscurece/oscurecio/emborrona/borra/borro), perdi, he
    perdido, perdida, perdiendo, no (veo/veia/vi/puedo ver/podia ver/distingo/distinguia/enfoco/enfocaba/puedo
    enfocar), raro, rara, falta, faltan, desaparecio, desaparecen, dos imagenes, dos lineas, bailan, se
    mueven, mal, dobles`,
  'eye-lost': `
    se me (fue/ha ido/apago/apaga/nublo/oscurecio/borro/puso negro) (la/el/todo)
    (vista/vision/ojo/imagen/mundo/un ojo), (perdi/he perdido/pierdo/me quede sin) (la/) (vista/vision), sin
    ver, (no veo/no veia/deje de ver/dejo de ver) (nada/por/con/del/de un/la mitad/por el/con el), ciego,
    ciega, ceguera, vi doble, veo doble`,
  'balance-fail': `
    daba vueltas, daban vueltas, vueltas, todo gira, giraba, se movia, recto, en linea recta, sin equilibrio,
    sin coordinacion, pierdo, perdi, perdido, perdiendo, perdida, falla, fallo, fatal, borracho, borracha,
    barco, me voy (de lado/para los lados/a los lados/hacia un lado/hacia la/a la/para un lado/contra), me
    vence, da vueltas, dando vueltas, gira, girando, se mueve, tambaleo, tambaleando, tambaleandome, en
    zigzag, zigzag, mareado, inestable, tumbos, choco, chocando, chocandome, se inclina, me caigo, agarrado a,
    agarrandome, haciendo eses, eses, mal`,
  spin: `
    todo (da/daba/me da/me daba/gira/giraba) (vueltas/), la habitacion (gira/giraba/da vueltas/daba vueltas/se
    mueve/se movia), el suelo se (mueve/movia/inclina/inclinaba), vertigo, vertigos, no (podia/puedo/pude)
    (andar/caminar/ir) recto, no (ando/camino) recto`,
  'chest-fail': `
    dolor(/es), duele, dolia, dolio, doliendo, aprieta, aprieto, apreton, apretado, presion, presiona, oprime,
    opresion, oprimido, peso, losa, piedra, elefante, ladrillo, yunque, sentado encima, pisando, pinchazo(/s),
    punzada(/s), pincha, quema, ardor, arde, quemazon, punal, punalada, estruja, estrujando, estrujan,
    cinturon, faja, nudo, garra, agarrado, cerrado, se me
    (cierra/cerro/sale/para/paro/salta/acelera/acelero/desboca/desboco/va a salir/encoge), acelerado, acelera,
    desbocado, galope, galopa, saltos, saltones, a mil, taquicardia, palpitaciones, palpita, raro, rara, mal,
    calambre`,
  'breath-fail': `
    me falta, falta, faltaba, falto, no (me/) (llega/llegaba/entra/entraba/entra
    bien/alcanza/alcanzaba/pasa/basta/baja/cojo/tomo/agarro/consigo/puedo/podia/lleno/llego/respiro/termino/acabo),
    sin, corto, corta, cortado, cortada, corto de, entrecortada, entrecortado, agitado, agitada, acelerada,
    ahogo, ahogandome, ahogado, ahogada, boqueando, boqueo, cuesta, costando, dificil, dificultad, duele,
    dolor, pincha, pinchazo, punzada, silba, silbido, pita, pitidos, corriendo sin correr, quedo sin, no llego`,
  choke: `
    me (ahogo/ahogue/ahogaba/asfixio/sofoco/estoy ahogando/falta el aire/falta aire/faltaba el aire),
    ahogandome, ahogada, ahogado, asfixiado, asfixiada, jadeo, jadeando, jadeante, boqueando, como pez fuera
    del agua, respiro como, respirando como, (acabo/termino/digo/puedo/llego) (una frase/frases/la frase) (sin
    parar/sin coger aire/sin tomar aire/seguida/completa/entera), dormir (sentado/sentada/incorporado), duermo
    (sentado/sentada/incorporado), se me (cierra/cierran/cerro) (el pecho/la garganta/los bronquios/los
    pulmones), sin aire (al/subiendo/en/sentado/sentada), me quedo sin (aire/aliento/resuello/respiracion), me
    quede sin (aire/aliento/resuello/respiracion), sin resuello`,
  'air-stop': `
    (parar/pararme/pare/paro/descansar/sentarme/sente) (a/para/dos veces a/tres veces a/varias veces a/dos
    veces para/tres veces para/cada rato a/en cada escalon a/cada diez pasos a)
    (coger/tomar/agarrar/recuperar/buscar) (aire/aliento/el aire/el aliento/resuello), tres veces a coger
    aire, (coger/tomar/agarrar) aire (cada/a cada/en cada), para (coger/recuperar/tomar) (el/) (aire/aliento)`,
  faint: `
    me (desmaye/desmayo/he desmayado/desmayaba/desplome/desvaneci/desvanezco/desperte en el suelo/desperte en
    el piso/encontre en el suelo/vi en el suelo/fui al suelo/fui a negro/quede inconsciente/quede sin
    sentido/caigo redondo/cai redondo/cai redonda/recogieron del suelo/dio un desmayo/dio un
    vahido/desplomo/encontraron en el suelo/encontraron tirado/encontraron tirada),
    (perdi/perdido/pierdo/perder) (el/la) (conocimiento/conciencia/consciencia/sentido), sin conocimiento,
    inconsciente, desmayo(/s), desmayado, desmayada, sincope, casi me (desmayo/desvanezco/desplomo/voy al
    suelo), a punto de (desmayarme/perder), se me (fue/va/iba) (la cabeza/el mundo/la luz), se me
    (apago/apaga) (la luz/todo), vi (todo/) negro, lo vi todo negro, me dio un
    (patatus/yuyu/soponcio/telele/jamacuco/vahido/vaguido/sincope/infarto/ataque), me (dio/da) un patatus,
    patatus, soponcio, jamacuco`,
  blood: `
    sangre, ensangrentado, ensangrentada, rojo, roja, rojizo, rojiza, rosado, rosada, hilillos, hilos rojos,
    oxido`,
}
