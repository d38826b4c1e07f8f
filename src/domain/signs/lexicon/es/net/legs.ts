import type { NetSource } from '../../shape.ts'

/** How legs fail: verbs and images of a leg that does not do its part, and what it should do. */
export const legs: NetSource['words'] = {
  'leg-fail': `
    hace (cloc/plaf/plas/plof/clac/chas/clap/pum/tac/ruido/chof/flap), cloc, clac, chas, flap, se (me/)
    (hizo/hace/hacen/hicieron/pone/puso/vuelve/volvio) (agua/gelatina/de agua/de trapo/de gelatina/un trapo/un
    flan/de goma/mantequilla/de mantequilla/blanda/plastilina/chicle/de chicle/lana/de
    lana/papilla/pure/fideos), se (me/) (fue/va/iba) (para/hacia/pa)
    (atras/delante/adentro/afuera/dentro/fuera/un lado/el lado), se fue sola, se fue de golpe, se (me/)
    (enrolla/enrollo/mete/metio/voltea/volteo/gira sola/sale del/sale de la/sale sola/escurre), (la puntera/la
    punta/el pie/la pierna/los pies/la rodilla) (se/se me/me/) (cae/caen/cuelga/vence/cayo/vencio), puntera
    (cae/arrastra/raspa/engancha), me (deja/dejo) tirado, me (deja/dejo) tirada, da de si, se niega, no
    quiere, ya no quiere, no da de si, se rinde, se rindio, vencida, vencido, rendida, hecha polvo, se me
    dobla solo, patina, patino, me patina, (gaste/gasto/gastando/desgaste/desgasto) (la/una) suela, la suela
    gastada, se me (queda/quedo)
    (atras/enganchada/enganchado/colgada/colgado/pegada/pegado/clavada/clavado/corta/corto/muerta/dormida/tiesa),
    se (me/te/le/nos/) (dobla/doblan/doblo/doblaron/doblaba/doblaban/ha
    doblado/vence/vencen/vencio/vencieron/vencia/ha
    vencido/afloja/aflojan/aflojo/aflojaba/cae/caen/cayo/caia/engancha/enganchan/engancho/enganchaba/enreda/enredan/enredo/traba/traban/trabo/tuerce/tuercen/torcio/torcia/desploma/desplomo/desarma/desarmo/quiebra/quiebran/quebro/tambalea/tambaleaba/apaga/apago/rinde/rindio/hunde/hundio/va
    sola/pliega/plego/arruga/escapa/escapo/sale/salen/salio/salia/pone de
    trapo/resbala/resbalo/atora/atoro/atranca/bloquea/bloqueo/descuelga/derrite/cruza/abre), se me
    (va/van/fue/fueron/iba/ha ido), doblandoseme, doblandose, (me/nos/)
    (falla/fallan/fallo/fallaron/fallaba/fallaban/ha fallado/fallando/traiciona/traiciono/abandona/abandono),
    (cede/ceden/cedio/cedieron/cedia/ha cedido/cediendo), (flaquea/flaquean/flaqueo/flaqueaba/flaqueando),
    flojera, flaqueza, debil(/es/idad), debilita, debilitando, debilito, flojo, floja, flojos, flojas, fofa,
    fofo, blando, blanda, (arrastro/arrastra/arrastran/arrastraba/arrastre/arrastrando/arrastrar/arrastras),
    rastras, a rastras, raspa, raspo, raspando, rozando, roza el suelo, rozo, barriendo, barre, gasto la,
    gasta, gastada, gastadas, gastado, gastados, desgastada, desgastado, desgasto, me como, cuelga, cuelgan,
    colgando, colgaba, colgado, colgada, pendulo, caido, caida, inerte, muerto, muerta, de plomo, como plomo,
    pesa, pesan, pesado, pesada, pesadas, pesados, tonelada, de trapo, trapo, de goma, de gelatina, gelatina,
    flan, de flan, mantequilla, de chicle, chicle, plastilina, fideo, fideos, espagueti, algodon, de corcho,
    de madera, palo, de palo, tabla, de lana, de cera, de papel, de carton, ladrillo, cemento, de hule,
    aguada, aguado, marioneta, muneco, muneca de trapo, peso muerto, saco, golpea, golpeando, azota, azotando,
    chancletea, cachetea, cachetada, plaf, plas, plof, palmada, palmadas, manotazo, aleta, pato, chapotea,
    bofetada, zapatazo, retumba, hace ruido, suena, sonando, sonido, ruido al caer, aterriza, tropiezo,
    tropiezos, tropezando, tropezon, tropezones, tropeze, tropece, tropezar, me trastabillo, trastabillo,
    trastabillando, trompico(/n/nes), trompicones, tambaleo, tambaleando, tambaleandome, me voy al suelo, me
    fui al suelo, me voy de bruces, casi me mato, casi me caigo, casi caigo, me caigo, me he caido, cojeo,
    cojeando, cojera, rengueo, renqueo, renqueando, rengueando, rengo, renga, cojo, coja, chueco, paralizado,
    paralizada, paralisis, paraliza, paralizo, inmovil, tiesa como, sin fuerza(/s), sin potencia, sin vida,
    sin mando, fuerza cero, cero fuerza, ni fuerza, menos fuerza, poca fuerza, falta de fuerza(/s), perdi
    (la/) fuerza, perdida de fuerza, perdiendo fuerza, sin tono, sin musculo, atrofia, atrofiado, atrofiada,
    mas (flaca/delgada/fina/flaco/delgado) que, va por (libre/su cuenta/su lado/otro lado/donde quiere), hace
    lo que quiere, se desconecta, se desconecto, desconectada, desconectado, desenchufada, desenchufado,
    apagada, apagado, torpe, inutil, tonta, tonto, vaga, vago, de huelga, en huelga, perezosa, perezoso,
    lenta, tarda en, retrasada, dormida al andar, temblando, tiembla, tiemblan, tembleque, temblona, bailotea,
    baila, bailan, insegura, inestable, con la mano, con las manos, con ambas manos, agarrandome el, como un
    robot, marcho como, levantando mucho la rodilla, subo mucho la rodilla, de un lado a otro`,
  'leg-wont': `
    no (me/le/se/se me/)
    (responde/responden/respondia/respondio/respondieron/obedece/obedecen/obedecio/sostiene/sostienen/sostuvo/sostenia/sujeta/sujetan/sujeto/aguanta/aguantan/aguanto/aguantaba/soporta/soportan/sigue/siguen/hace
    caso/hacen caso/hacia
    caso/reacciona/reaccionan/reacciono/sube/suben/subia/subio/levanta/levantan/levantaba/mueve/mueven/movia/movio/acompana/carga/cargan/empuja/empujan/tira/dobla/apoya/apoyan/pisa/despega/despegan/entiende/funciona/funcionan/da/dan/tiene
    fuerza/tienen fuerza/tengo fuerza/hay
    fuerza/coopera/colabora/flexiona/contesta/gira/avanza/endereza/estira/sirve/sirven/despierta), no la
    (muevo/levanto/controlo/puedo/domino/gobierno/subo/siento mia/mando/despego), no lo
    (muevo/levanto/controlo/puedo/domino/gobierno/subo/despego/mando), no las (muevo/controlo/puedo/domino),
    no los (muevo/controlo/puedo/domino), (no/ya no)
    (levanto/muevo/controlo/subo/despego/flexiono/gobierno/empujo/mando/doblo/apoyo), ni (responde/se
    mueve/sube/se levanta/me responde), deja de responder, dejo de responder, dejan de responder, dejo de
    funcionar, dejaron de responder, sin responder, no tiene (fuerza/fuelle/potencia), sin que responda`,
  'leg-act': `
    apretar, hundir, presionar, levantar(/la/lo/las/los/me), mover(/la/lo/las/los/me), subir(/la/lo/me),
    bajar, alzar(/la/lo), elevar, doblar(/la/lo), flexionar, estirar, apoyar(/la/lo/me), cargar,
    sostener(/me), mantener(/me/la), controlar(/la/lo), pisar, caminar, andar, empujar, despegar, girar,
    mantenerme, pararme, ponerme de pie, ponerme en pie, estar de pie, andar de, ponerme de puntillas, ponerme
    de talones, puntillas, de puntillas, puntitas, puntas de pie, talones, incorporarme, saltar, correr, dar
    un paso, dar pasos, meter, sacar, embragar, frenar, acelerar, cruzar, tirar, mandar, encoger, calzar(/me),
    pararme en, dar la patada, patear, agarrar con, coger con, separar`,
  stand: `
   
    (ponerme/pararme/andar/caminar/estar/subirme/sostenerme/apoyarme/mantenerme/levantarme/aguantar/quedarme/alzarme/aguantarme)
    (de/en/sobre/a/con) (puntillas/puntitas/puntas/punta/punta de pie/puntas de pie/puntas de los pies/las
    puntas/los talones/talones/el talon/la punta/la pata coja/un pie/una pierna/esa pierna/ese pie/el pie/la
    pierna), mantenerme (en pie/de pie), ponerme (en pie/de pie), sostenerme, tenerme en pie, aguantarme de
    pie, levantarme (de/del) (la silla/sofa/suelo/inodoro/vater/water/la taza/la
    cama/sillon/piso/asiento/coche), incorporarme, salir (del coche/de la banera/del carro/del auto/de la
    tina/del bote), subir (las escaleras/escaleras/la escalera/un escalon/el escalon/escalones/el bordillo/al
    bus/al autobus/al coche/al carro/al tren/gradas), dar (un paso/dos pasos/pasos/tres pasos), caminar,
    andar, puntillas, de puntillas, en puntillas, los talones, de talones, subirme al`,
  cling: `
   
    (agarrandome/agarrado/agarrada/sujetandome/apoyandome/apoyado/apoyada/agarrarme/sujetarme/apoyarme/aferrado/aferrada/aferrandome/sostenerme/sosteniendome/colgado/colgada/me
    agarro/me sujeto/me apoyo/me apoye/me agarre) (a/de/en/del/por/al/con) (las/la/los/el/)
    (pared/paredes/muebles/barandilla/baranda/pasamanos/mesa/encimera/marco/puerta/silla/sillas/alguien/mi
    mujer/mi marido/mi hijo/mi hija/carrito/barra), a gatas, gateando, a cuatro patas, de culo por, subo
    sentado, subo sentada, necesito (muletas/baston/andador/un baston/dos manos/ayuda para levantarme/ayuda
    para caminar), con (muletas/baston/andador/burrito), (tienen/tuvieron/tuvo/tiene) que
    (levantarme/sujetarme/cargarme/sostenerme/llevarme en brazos/ayudarme a levantarme), me
    (sujetan/sujeto/cargan/cargaron/llevaron en brazos), me llevan en (brazos/silla), en silla de ruedas`,
  'leg-gone': `
    se me escapo el pie, me abandona, dejo de funcionar, se desconecto, se apago, me quede clavado, me quede
    clavada, no arranca`,
  hurt: `
    dolor(/es), duele, duelen, dolia, dolian, dolio, doliendo, calambrazo(/s), punzada(/s), pinchazo(/s),
    pincha, pinchan, ciatica, molesta, molestan, latigazo(/s), tira, tiran, arde, arden, pesa, pesan, pesadas,
    pesados, hormigueo(/s), hormiguea, hormiguean, cosquilleo(/s), dormidas, dormidos, dormida, dormido, se me
    (duermen/duerme/doblan/aflojan/van/vencen/acorchan/durmio/durmieron), debiles, flojas, flojos, debilidad,
    acorchadas, acorchados, entumecidas, entumecidos, entumidas, entumidos, tiemblan, temblando, fallan, no me
    (sostienen/responden/aguantan/obedecen), raras, raros, adormecidas, adormecidos, sintomas, calambres,
    gelatina, flan, corcho, trapo, plomo, no (siento/noto), muertas, muertos`,
  'hurt-two': `
    duelen, dolian, molestan, arden, pesan, tiran, hormiguean, cosquillean, pinchan, queman, dormidas,
    dormidos, se me (duermen/doblan/aflojan/van/vencen/acorchan/durmieron/adormecen/entumecen/cargan/hinchan),
    debiles, flojas, flojos, acorchadas, acorchados, entumecidas, entumecidos, entumidas, entumidos,
    adormecidas, adormecidos, tiemblan, fallan, no (me/) (sostienen/responden/aguantan/obedecen/siento/noto),
    muertas, muertos, raras, cansadas, pesadas, hormigueo, debilidad, sin fuerza`,
  'once-one': `
    antes (era/solo era/solo/era solo/nomas/nada mas/solo me dolia/me dolia) (una/la izquierda/la derecha/el
    izquierdo/el derecho/un/de un lado/en una/en la izquierda/en la derecha/un lado), antes (la/el)
    (izquierda/derecha/izquierdo/derecho/otra/una), era (solo/nomas) (una/la/el/en la/en el/un), empezo en
    (una/la/el/un), empezo (solo/por) (una/la/el/un/en la), ya no es (solo/solamente) (una/la/el/en la/un), no
    (es/era) solo (una/la/el/en la/un), ya (son/van) (las/los) dos, ahora (son/van) (las/los) dos, ahora las
    dos, ahora los dos, ahora ambas, ahora tambien la otra`,
  'one-by-one': `
    tambien, tb, tmb, ademas, primero, luego, despues, igual, lo mismo, misma historia, misma cosa, y ahora,
    ahora, ya, se suma, se sumo, se unio, siguio, le siguio, siguiente`,
  joins: `
    tambien, tb, tmb, tambn, ademas, ahora, igual, ya, empezo, ha empezado, empieza, empezando, se ha sumado,
    se suma, se sumo, se le sumo, se apunta, se ha apuntado, se ha unido, se une, se unio, ha pasado, paso a,
    se paso, pasado a, cruzo, ha cruzado, se contagio, se ha contagiado, contagiado, copia, imita, lo mismo,
    mismo, misma, idem, se extendio, se ha extendido, extendido, a la vez, al mismo tiempo, las dos, los dos,
    desde ayer, desde hoy, desde esta, esta manana, hoy, antes solo, antes era, antes, ya son, por igual, se
    me esta poniendo, va por el mismo camino, no era una, las tengo, los tengo, despierto, amaneci, amanezco,
    hasta, incluso, de golpe, de repente`,
  gait: `
    camino, caminar, ando, andar, caminando, andando, marcha, pisada, piso, pisar, forma de andar, forma de
    caminar, paso`,
  'gait-odd': `
    raro, rara, distinto, chueco, de lado, torcido, cojo, coja, como (pato/robot/borracho/borracha/un pato/un
    robot/un zombi/zombi/pinguino), tirando (la/de la), echando (la/el), levantando (mucho/la rodilla),
    arrastrando, a saltos, a tropezones, patoso, balanceandome, con la pierna tiesa`,
}
