import type { NetSource } from '../../shape.ts'

/** Everyday ways in which legs, heart, brain, an injury and illness show themselves. */
export const otherWays: NetSource['words'] = {
  both: `en estereo, por partida doble, por duplicado, de a dos, a pares`,
  shift: `antes, ayer, ahora, ya, primero, empezo, empieza, al principio, la semana pasada, siempre, anteayer`,
  'today-two': `
    (hoy/ahora/ya/ya son/hoy son/ahora son) (las/los) (dos/2),
    (hoy/ahora/ya) (ambas/ambos/en ambas/en ambos/en las
    dos/en los dos/en las 2), los 2 lados, (las/los) dos (igual/por igual/a la vez)`,
  downward: `
    (de/desde) (la/las/los/el/) (rodilla/rodillas/cadera/caderas/muslo/muslos/nalga/nalgas/cintura/gluteos/tobillos)
    (para/hacia/pa/hasta) (abajo/el pie/los pies/las plantas)`,
  crossed: `
    ya no es (solo/solamente/) (una/la izquierda/la derecha) (pierna/), (ahora/ya) son (las dos/ambas) (piernas/patas/),
    (se me/se me ha/se ha/se/me ha/me) (cruzo/cruzado/corrio/corrido/paso/pasado/mudo/mudado/salto/saltado/brinco/contagio/contagiado/extendio/extendido/movio/traslado/fue/ido)
    (a/al/hacia/para/tambien a/pa) (la/mi/el/) (otra/otro/otra pierna/otro lado/otro pie/sana/buena/pierna sana/pierna
    buena/lado bueno/lado sano/contraria/izquierda/derecha), contagi(o/a/ado) (a/) (la/mi/el)
    (sana/buena/otra/otro/pierna sana/pierna buena), la de al lado, ya ni la (buena/sana),
    (la/el) (buena/sana/otra/otro)
    se (suma/sumo/apunta/apunto)`,
  'waist-down': `
    (de/desde) (la/) cintura (para/hacia/pa) abajo, (medio/media) (cuerpo/parte) (de/para) abajo,
    la parte de abajo
    del cuerpo, mitad de abajo, (mis/las/ambas) piernas, (mis/los/ambos) pies, todo lo de abajo`,
  'both-run': `
    (por/en) (ambos/los dos/los 2) (lados/costados), (por/en) (ambas/las dos) (partes/piernas/nalgas),
    por un lado y
    (por/) (el/) otro, primero una y luego la otra,
    por la (derecha/izquierda) y (luego/despues/tambien/) por la
    (izquierda/derecha)`,
  downs: `bajando, baja, bajo, recorre, rayo, latigazo, corriente, electricidad, calambre, a la vez, dolor, hormigueo`,
  leg: `
    patita(/s), piernita(/s), piecito, piececito, patica, piernota, rodillita, zanca, tobillito, isquios,
    femoral,
    tibial, sóleo, soleo, pantorrillas, juanete`,
  footwear: `alpargata(/s), crocs, aleta, patucos, babucha(/s), cholas, cholitas`,
  'lose-shoe': `
    pierdo, perdi, perdiendo, se me (sale/salio/salen/queda/quedo/cae/caen/cayo/va/fue),
    no la (agarra/sujeta/sujeto/engancho),
    se me queda atras, gasto, gaste, gastada, gastado, desgast(o/a/ada/ado), solo la punta, mas que el otro`,
  'leg-fail': `
    la pierna se (fue/va), se me (chueca/chueco/ladea/ladeo/desvia/va de lado/va para/cruza/apaga/desinfla),
    no se
    (levanta/mueve/despega), tiembla sola, se quedo sin (fuerza/pilas), sin pilas, a medio gas,
    floj(isima/isimo),
    flojea, flojean, flojeo, flojeando, endeble, enclenque, mal apoyo, peso de mas, se niega a, cada vez menos
    fuerza, ha perdido fuerza, perdio fuerza, pierde fuerza, se encoge, de lana, no la levanto,
    enganch(a/o/ado/ando),
    patinando`,
  'leg-wont': `
    no (se/me/) (dispara/contrae/activa/enciende/prende/jala/chuta/rinde/impulsa/amortigua/frena/agarra/tensa/enrosca/articula),
    no me da, no da mas de si, no (la/lo) (elevo/despego/enderezo/subo/muevo), ni (con ayuda/a la de tres),
    no la siento
    firme, le cuesta (subir/levantarse/avanzar), le mando`,
  'limp-said': `
    no me (sostiene/sostienen/tengo en pie/tengo de pie/tenia en pie), le (mando/ordeno/digo) (que/y) (no/se)
    (se mueve/mueva/responde/hace caso), le mando y no, le doy la orden, (gasto/gaste/desgasto) la suela,
    (levanto/levantar/subo/subir/muevo/mover/meto/meter/saco/sacar/cruzo/cruzar/coloco/colocar/llevo/ayudo) (la pierna/el pie/la
    rodilla/la pata/el muslo) (al coche/a la cama/al auto/al carro/del coche/) (con la mano/con las manos/a pulso/con los brazos/tirando/con
    ayuda), (con la mano/con las manos) (me/) (levanto/subo/muevo/ayudo) (la/el) (pierna/pie), (levantar/levanto/levantando/subir/subo/alzar/alzo)
    (mucho/mas/demasiado/bien alto/alto) (la/las/el/los) (rodilla/rodillas/pie/pies/pierna),
    sin empujar con las manos, sin
    (ayudarme/apoyarme/empujarme) (con/en) (las manos/los brazos/la mano), empujandome con los brazos,
    trepar por mis muslos,
    no (es/era) (por/de/por el) dolor, no por dolor, no es dolor, no es que duela, no por el dolor`,
  'drive-act': `frenar, embragar, pisar el (freno/embrague/acelerador), acelerar, patear, chutar, pedalear, dar pedales`,
  'toe-act': `levantar, subir, mover, estirar, alzar, doblar, encoger`,
  toes: `los dedos, dedos, dedo gordo, el gordo, los deditos`,
  'breath-fail': `
    cortit(o/a/os/as), a sorbos, a bocanadas, superficial, rapidito, como (perro/pez/locomotora), no me da, me
    canso de respirar, entrecortad(o/a), a medias, no lleno`,
  puff: `
    agit(o/e/ado/ada/adisimo/adisima/a), jade(o/ando/ante), ahog(o/ado/ada/andome/aba/ue/a),
    sofoc(o/ado/ada/a),
    asfixi(o/ado/ada/a), sin (aliento/aire/resuello/fuelle), resopl(o/ando), falta el aire, bufando,
    fatig(o/ado/ada)`,
  'at-rest': `
    con nada, por nada, sin (moverme/hacer nada/esfuerzo), en reposo, quiet(o/a), sentad(o/a), acostad(o/a),
    tumbad(o/a), al (hablar/vestirme/comer/atarme/agacharme/ducharme), hablando, un piso, un tramo, dos pasos,
    tres
    escalones, escalones, escaleras, ducha, cordones, (de/a) la cama, por la noche, de noche, cuatro pasos,
    cualquier cosa`,
  pause: `parar, pararme, paro, pare, descansar, descanso, sentarme, me siento, detenerme, me detengo, recostarme`,
  breathe: `(para/a/pa) (respirar/coger aire/tomar aire/agarrar aire/recuperar el aire/recuperar aliento/recuperar el aliento/que me entre aire)`,
  'went-down': `
    me fui al (piso/suelo), cai, me cai, me desplome, en el suelo, en el piso, tirado, tirada, amaneci en`,
  blackout: `
    no (recuerdo/me acuerdo/recordaba/supe/se que paso),
    (se me/se) (nublo/apago/oscurecio/fue) (todo/la vista/la
    luz/el mundo/la cabeza), todo negro, (vi/veia) (negro/estrellas/todo negro/borroso), laguna, en blanco, me dio
    un (bajon/vahido/mareo)`,
  'chest-fail': `prensa, faja, corse, yunque, losa, piedra, garra, torniquete, tenaza(/s), bloque, ladrillo, pie encima, pisara, pisaran, pisando`,
  drool: `babeo, babeando, babear, babeaba, se me sale la (saliva/sopa), se me cae (el/la) (agua/cafe/sopa/saliva) de la boca`,
  'drool-plain': `almohada, dormid(o/a), siesta, durmiendo, hambre, sofa`,
  'speech-said': `
    digo una (cosa/palabra) por otra, (quiero/queria/quise) decir (una cosa/algo/una palabra) y (me/)
    (sale/salio/digo/dije) otra, balbuc(eo/eaba/eando/eé), tartamud(eo/eaba/eando/ee), farfull(o/aba/ando),
    afasia, lengua
    (como/de/hecha un) (trapo/estropajo/corcho/suela/plomo),
    (hablo/hablaba/hable/hablando) (raro/enredado/pastoso/como
    borracho/como un borracho/gangoso/trabado/arrastrado/arrastrando), no (me/) (salen/encuentro/vienen/salian) las
    palabras, las palabras no (me/) (salen/vienen/salian), no (doy/daba) con las palabras,
    me (como/comia) (las/)
    (silabas/palabras), no entiendo lo que (me dicen/leo/oigo), letras sin sentido`,
  'eye-said': `
    se me (fue/apago/cerro/nublo/oscurecio/borro/ha ido/ha apagado) (un/este/el/ese/medio) ojo,
    (cortina/velo/persiana/telon/sombra/mancha)
    (negra/negro/gris/oscura/oscuro/) (en/por/delante de) (el/un/mi/los) (ojo/ojos), deje de ver,
    veo (solo/) (la/) mitad, un
    ojo (se me/) (apago/fue/quedo), (un ojo/el ojo) (a oscuras/en negro)`,
  thunder: `peor, explosivo, explosiva, trueno, brutal, de golpe, de repente, jamas, nunca asi, estallido, martillazo`,
  headache: `cefalea, dolor de cabeza, jaqueca, migrana, dolor en la nuca`,
  'limp-arm': `
    me cuelga, cuelga, colgando, de trapo, no me responde, no responde, paralizad(o/a), muert(o/a),
    no lo (levanto/muevo/subo),
    no la (levanto/muevo/subo/cierro), no revive, no despierta, inerte`,
  'arm-limb': `brazo(/s), mano(/s)`,
  'hand-task': `
    abroch(ar/arme/arle), aboton(ar/arme), desabrochar(/me), escribir, firmar, teclear, peinarme, cepillarme,
    atarme, sujetar el, coger
    el, agarrar el, sostener (el/la/un/una), enhebrar, girar la llave, meter la llave, marcar el numero,
    cortar la carne`,
  'face-act': `
    silbar, inflar los (cachetes/mofletes/carrillos), sonreir, cerrar el (ojo/parpado), enjuagarme, soplar,
    fruncir,
    mover (la boca/los labios/media cara), beber sin`,
  suddenly: `desde (esta manana/anoche/hoy/hace/ayer/este mediodia), hace una hora, sin mas, desde que me desperte, desde la siesta`,
  'side-body': `
    (medio/la mitad del/la mitad de mi/un lado del/el lado izquierdo del/el lado derecho del/lado izquierdo del/lado derecho del/todo
    un lado del/el lado de mi) cuerpo, media cara, mitad de la cara, todo un lado, todo el lado
    (izquierdo/derecho), un lado de la cara`,
  'side-fail': `
    paraliz(o/ado/ada/a), dormid(o/a), no responde, muert(o/a), sin fuerza, adormecid(o/a), entumid(o/a),
    acorchad(o/a),
    debil, caid(o/a), tonto, tonta, colgando, no (lo/la) siento, entumecid(o/a), hormigue(o/a), apagad(o/a)`,
  pale: `
    palid(o/a), blanc(o/a) (como/), sudor frio, sudores frios, sudando frio, a punto de desmayarme,
    casi me desmayo,
    me desmaye, vi estrellas, mareo, maread(o/a), casi pierdo el conocimiento, me doblo en dos`,
  threw: `
    me (tiro/tumbo/lanzo/derribo/embistio/pateo/coceo/arrastro/despidio/revolco/atropello/llevo puesto/arrollo/empujo/solto/desmonto),
    nos (tiro/tumbo/embistio/volco/sacaron), me (tiraron/tumbaron/empujaron/placaron/derribaron),
    (sali/salimos/salgo)
    (volando/despedido/despedida/disparado/disparada/rodando), me fui (de la/del/contra/abajo/por el/por la),
    me lleve puesto, me
    estamp(e/o), me estrell(e/o),
    me (saque/hice) (la/mierda/bolsa/pelota/pomada/pure/polvo) (cresta/mierda/chucha/madre/mugre/), me
    di (un/una) (palo/golpe/hostia/pina/leche/castanazo/tortazo/madrazo/mamporro/trastazo/piñazo/piton/lenazo/talegazo/costalada/culada/panzazo/buena/ostia),
    me (rompi/parti/mate/descalabre/descrisme), cai, me cai, caigo, salte, aterrice, me tire, coz, una patada,
    pego (un/una)
    (bote/salto/frenazo/ola), me (cayo/pillo/alcanzo/engancho)`,
  'from-what': `
    bici, bicicleta, moto, coche, carro, auto, camion, camioneta, bus, taxi, patinete, patin(/es), caballo,
    yegua, potro,
    vaca, toro, mula, burro, escalera(/s), techo, tejado, arbol, muro, valla, tapia, hueco, poste, roca,
    balcon, andamio,
    tarima, escenario, litera, grada(/s), muelle, pantalan, lancha, trampolin, columpio, tobogan, altillo,
    barranco,
    quad, tractor, trineo, esquis, snow, ola, scooter, remolque, ventana, cerro, acantilado, terraza, pozo,
    zanja,
    cabeza, espaldas, rugby, judo`,
  saved: `me agarre, me sujete, no me cai, no llegue a caer, me cogieron, no me hice nada`,
  'fever-whole': `38, 39, 40`,
  'fever-when': `anoche, de noche, por la noche, de temperatura, marcaba, esta manana, de madrugada`,
  'fall-calm': `
    me agarre, me sujete, no me cai, de viaje, serie, series, caja, cajon, burpees, comba, cuerda, ejercicio,
    ejercicios, gimnasio`,
  dive: `(me tire/me lance/salte/me tiro/zambulli/me zambulli) (al agua/a la piscina/al rio/) de (cabeza/cabezazo), clavado, toque fondo con, di con la cabeza en el fondo`,
  'fever-num': `
    37.6, 37.7, 37.8, 37.9, 38.1, 38.2, 38.3, 38.4, 38.5, 38.6, 38.7, 38.8, 38.9, 39.1, 39.2, 39.3, 39.4,
    39.5, 39.6,
    39.7, 39.8, 40.1, 40.2, 38 y medio, 39 y medio`,
  'weigh-word': `kg, kilo(/s), peso, km, kilometros, minutos, segundos`,
  chill: `
    cuerpo cortado, el cuerpo cortado, mal cuerpo, sudando frio, tirit(o/ando/ona/aba),
    castanete(o/an/ando/ar), destemplad(o/a),
    escalofrio(/s), febril, febricula, calenturient(o/a), quebrantad(o/a), trancazo, afiebrad(o/a),
    con fiebrita, estoy ardiendo, ardo de calor`,
  'swell-hard': `hinchad(o/a/os/as), colorad(o/a), hinchazon, inflamad(o/a), enrojecid(o/a), amoratad(o/a), roj(o/a), morad(o/a)`,
  'swell-with': `dur(o/a), caliente, duele, al tocar, tirante, brillante, no me (entra/cabe/cierra), calor, tens(o/a), quema, arde, que la otra, que el otro, roja, colorada, marca, gord(o/a)`,
  'no-posture': `
    no (encuentro/se/hallo/hay) (como/forma de/manera de) (ponerme/acomodarme/sentarme/acostarme/colocarme),
    no (encuentro/hay/hallo) (postura/posicion/acomodo), no se (me/)
    (quita/va/calma/alivia/pasa) (con/ni con) (nada/pastillas/calor/reposo),
    ni (tumbado/acostado/sentado/parado/tumbada/acostada/sentada/echado/echada) ni (de
    pie/sentado/parado/acostado/tumbado/sentada/parada/caminando), me ponga como me ponga, en ninguna (postura/posicion), haga lo que haga, ninguna (postura/posicion) me (alivia/calma/sirve/ayuda)`,
  brittle: `
    osteoporosis, osteopenia, huesos (debiles/fragiles/de cristal), corticoide(/s), cortisona, prednisona,
    dexametasona,
    descalcificad(o/a), descalcificacion, esteroides`,
  tumble: `cai, caida, caerme, tropece, tropezon, resbale, resbalon, me sente de golpe, golpe, traspie, me fui al suelo, culada, golpee`,
  unrelieved: `
    no se (me/) (calma/pasa/quita/va/alivia) (cambiando/girando/moviendome/aunque/ni/de/con), ninguna postura,
    no hay postura, haga
    lo que haga, ponga como me ponga, por mas que, aunque (cambie/me gire/me mueva),
    cambi(o/e/ar/ando) de (postura/lado/posicion)`,
  'thin-said': `
    me (sobra/baila/bailan/sobran) (el/la/los/) (cinturon/pantalon/pantalones/ropa),
    (bascula/balanza) (baja/bajando) (sola/y baja/sin), se me
    (caen/cae) los pantalones, agujero(/s) (mas/) (al/del/en el) cinturon,
    me estoy quedando (en los huesos/sin carne), en los huesos`,
  'wet-bed': `almohada, sabana(/s), pijama, camison, colchon, cama`,
  sweat: `sudo a mares, sudar, sudon, chorre(o/ando/a), transpirar, empapad(o/a/os/as)`,
  asleep: `dormid(o/a), durmiendo, de noche, por la noche, por las noches, de madrugada, noche, noches, amanezco, amaneci, me despierto`,
  tumour: `biopsia, ganglio(/s), metastasis, maligno, maligna, oncolog(o/a/ia), marcadores, mamografia, quimio, radioterapia, bultito`,
  'tumour-bad': `mal, malo, mala, salio, maligno, positiv(o/a), malas noticias, me (dieron/encontraron/detectaron/hicieron/toca), nuevo, alterad(o/a), sospechos(o/a)`,
  // leave-takings: each by itself is ordinary, two together are asked about
  'given-away': `
    (regale/regalo/regalando/he regalado/doy/di/dando/he dado/repartiendo/reparti) (toda/todas/todo/todos/) (mi/mis/la/el) (guitarra/bici/bicicleta/bote/barca/remos/herramientas/discos/libros/reloj/anillo/anillos/joyas/ropa/camara/piano/violin/coche/carro/auto/moto/computadora/ordenador/coleccion/medallas/canas/plantas/muebles/perro/perra/gato/gata/cosas),
    (busque/buscando/encontre/buscado/encontrado/busco) (una casa/casa/quien se quede/familia) (a/para/con) (mi/mis/el/la) (perro/perra/gato/gata/perros/gatos/gallinas)`,
  'left-in-order': `
    (deje/dejo/dejando/he dejado/anote/apunte/escribi/ordene/arregle/arreglando/le di/le pase) (anotadas/escritas/listas/a mano/) (a mi hermana/a mi hermano/a mi mama/a mi hijo/a mi hija/) (todas/todos/) (mis/las/el/mi/los/la) (claves/contrasenas/testamento/cuentas/papeles/seguro/pension/escrituras/entierro/funeral),
    (claves/contrasenas/papeles/testamento/cuentas/seguro) (ya/) (estan/esta/quedaron/quedan) (listas/listos/listo/anotadas/arreglado/arreglados/en orden/en un sobre/en el cajon/en la mesa),
    (deje/dejando/puse/he dejado/he puesto/puesto) (mis/las/todas mis/mis papeles y) (cosas/papeles/cuentas) en orden, pague (el/mi) (entierro/funeral/nicho)`,
  farewell: `
    (escribi/le escribi/les escribi/escribiendo/he escrito/deje/les deje/le deje/dejando) (a/) (cada uno/cada una/) (una carta/unas cartas/cartas/una nota/notas/una tarjeta/tarjetas) (a/para) (mi/mis/mama/papa/cada/todos/ellos/ellas/los/las),
    (escribi/le escribi/les escribi/he escrito) (a/) (mi mama/mi papa/mama/papa/mi mujer/mi marido/mis hijos/mis hijas/los ninos/los nenes/mi hermana/mi hermano/todos) (una carta/unas cartas/una nota/una tarjeta),
    (me despedi/despedirme/despidiendome/me he despedido) (de) (todos/todas/mi/mis/los/las/cada),
    (abrace/bese/llame) (a) (todos/mis hijos/los ninos/cada uno) por ultima vez`,
  'no-sense': `no le (veo/encuentro/hallo) (el/) sentido a (nada/esto/la vida/seguir), nada tiene sentido, para que seguir, sin ganas de vivir, (se acabo/quiero que se acabe) todo`,
}
