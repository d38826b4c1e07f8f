import type { LexiconSource } from '../shape.ts'

/** Heart, breath, stroke, injury, infection, clot, and the slow signs. */
export const events: LexiconSource['words'] = {
  tight: `
    dolor, duele, me duele, dolia, presion, opresion, apretado, aprieta, me aprieta, oprime, me oprime,
    pesadez, peso, ardor, punzada, punzadas, pinchazo, pinchazos, molestia, quema, palpitaciones, acelerado,
    se me acelera, dolores, nudo`,
  'chest-strong': `
    me (quedo/quede/he quedado/estoy quedando) (sin) (aire/aliento/respiracion), me dio un
    (desmayo/sincope/infarto), no me llega el oxigeno, no cojo aire, no agarro aire, (sangre) en (la saliva/el
    esputo/la flema/el panuelo al toser), saliva con sangre, se me (cierra/cerro) el pecho, dolor al respirar,
    me duele al respirar, cai desmayado, cai desmayada, me fui al suelo sin conocimiento,
    (dolor/dolores/presion/opresion/pinchazos/punzadas/pinchazo/punzada) (de/en el/en) pecho, opresion
    toracica, dolor toracico, me (duele/aprieta/oprime) el pecho, infarto, angina, me ahogo, me estoy
    ahogando, me ahogaba, ahogo, ahogos, me asfixio, asfixia, me falta (el aire/aire/la respiracion/el
    aliento), me faltaba (el aire/aire), falta de (aire/aliento/respiracion), sin aire, sin aliento en reposo,
    disnea, no me entra (el aire/aire), no me llega (el aire/aire), corta de aire, corto de aire, (no puedo/me
    cuesta/no podia/apenas puedo/casi no puedo/no consigo/dificultad para/dificultades para/dificultad
    al/duele al/me duele al/dolor al/imposible) respirar, (no/ya no) (puedo/) (respiro/respirar) (bien/bn/apenas/), no (me/) entra (el/) aire, respiro mal, respirar me
    duele, (escupi/escupo/tosi/toso/he tosido/he escupido/echo/eche/escupiendo/tosiendo/esputo con/esputos
    con/flema con/flemas con/vomite/expectore) sangre, sangre al toser, tos con sangre, me (desmaye/desmayo/he
    desmayado/desplome/desvaneci), desmayo, desmayos, desmayado, desmayada, perdi (el conocimiento/la
    conciencia/el sentido/la consciencia), perdida de (conocimiento/conciencia/consciencia), sincope, embolia,
    embolia pulmonar, quede inconsciente`,
  breath: `respiracion, aliento, respirar, respiro`,
  'breath-bad': `
    corta, entrecortada, agitada, agitado, falta, me falta, cuesta, me cuesta, dificil, mal, rapida, rapido,
    duele, me duele`,
  coughing: `tos, toser, toso, tosi, tosiendo, esputo, flema, saliva, escupir`,
  blood: `sangre, ensangrentado, con sangre`,
  'chest-maybe': `
    no me (dolio/ha dolido) el pecho (hasta/pero/me oprimio/me oprime/sino/solo/me apreto), me falto (una/dos/tres/1/2/3) (vez/veces) el (aire/aliento), (desmayos/mareos) no (he tenido/tenia/tuve/hubo) hasta,
    nada en el pecho (solo/sino/salvo/excepto/mas que) (presion/opresion/una presion/una opresion/un peso/un pinchazo/punzadas),
    (no/) (noto/siento) nada en el pecho (solo/sino/salvo/excepto/mas que) (presion/opresion/una presion/una opresion/un peso/un pinchazo/punzadas),
    (inflando/inflar/infle/inflo/hinchando/hincho) (globos/el globo/los globos/la colchoneta/el colchon) (me/y me/) (quede/quedo/he quedado) sin aire (y/ya/y ya/y aun/y todavia) (no se me/no me/sigo/me duele),
    (quede/quedo) sin (aire/aliento) (con/al ver) (el/la/las) (paisaje/vistas/noticia/precio/factura/final/abrazo) y (sigo/no se me/aun/todavia/no me), corazon (va/me va/iba/me iba) a mil (sentado/sentada/en reposo/acostado/acostada/tumbado/tumbada),
    palpitaciones, mareo, me maree, mareado, mareada, mareos, casi me desmayo, a punto de desmayarme, sudor frio,
    sudores frios, taquicardia, me voy a desmayar, jadeo, se me fue la cabeza, desvanecimiento, sofoco,
    sofocado`,
  droop: `
    caida, caido, se me cae, se cae, torcida, torcido, se me torcio, se me tuerce, torcio, paralizada,
    paralizado, colgando, ladeada, chueca, chueco, se me cayo, no se mueve, descolgada, se me ha caido, se me
    ha torcido, inmovil, se me paralizo`,
  'arm-fail': `
    torpe, torpes, torpeza, torpeza en,
    debil, sin fuerza, no tiene (nada de/) fuerza, no tengo fuerza, perdi fuerza, perdi la fuerza, no me responde, no responde, no puedo
    mover, no puedo levantar, dormido, dormida, dormidos, dormidas, adormecido, adormecida, adormecidos,
    adormecidas, entumecido, entumecida, acorchado, acorchada, acorchadas, se me duerme, se me duermen, se me
    durmio, se me ha dormido, se me durmieron, se me adormece, se me adormecen, no siento, no me siento,
    pesado, pesada, se me caen las cosas, se me caen cosas, se me caen (objetos/los objetos/los platos/las llaves/los vasos), debilidad, adormecimiento, entumecimiento, torpe, muerto, muerta, no
    puedo, paralizado, floja, flojo`,
  'arm-tingle': `
    hormigueo, hormigueos, cosquilleo, calambre, calambres, hormiguea, hormiguean, me hormiguea, me
    hormiguean, pinchazos, raro, rara, dolor, ardor, quemazon, parestesias, agujas`,
  'stroke-strong': `
    me (mordi/muerdo/queme) la lengua (comiendo/con la sopa/con el cafe/con la pizza/con el te/sin querer/) (porque/y/) no (la/me la/) (siento/senti/note/noto),
    (la boca/la cara/el labio) se me (fue/va/ha ido/torcio/cayo/cae/ha torcido/ha caido/duerme/durmio)
    (para/a/hacia/de) (un lado/el lado/lado), (la boca/la cara) se me (torcio/cayo/ha caido/ha
    torcido/paraliza), no me salen (bien/) las palabras, no (articulo/pronuncio) (bien/), no vocalizo,
    (digo/decia) palabras raras, (no entiendo/no entendia) lo que me dicen, se me (cierra/cerro) el parpado,
    medio lado dormido, vi todo negro, veo todo negro, se me (cae/cayo/ha caido/torcio/tuerce/ha
    torcido/paraliza/paralizo/durmio/duerme/desvio/va) (media cara/la cara/la boca/el parpado/un lado de la
    cara/la mitad de la cara/la comisura/el labio/la cara de un lado), (cara/boca)
    (torcida/caida/chueca/paralizada/de lado/desviada), (mitad de la cara/media cara/lado de la cara)
    (paralizada/caida), no me (sale/salen/salia/salian/salio) (el habla/las palabras/la voz/palabras/la
    palabra), no (puedo/podia/logro/consigo) (hablar/articular/pronunciar) (bien/palabra/), me cuesta
    (hablar/pronunciar/encontrar las palabras), hablo (raro/mal/como borracho/como
    borracha/enredado/pastoso/trabado), habla (rara/pastosa/trabada/enredada/arrastrada), arrastro las
    palabras, arrastrando las palabras, se me (traba/trabo/enreda/enredo) la lengua, lengua trabada, se me
    traban las palabras, derrame, ictus, derrame cerebral, acv, trombosis cerebral, paralisis facial,
    (perdi/he perdido/pierdo) (la vista/la vision/el habla/vision/vista), perdida de (vision/vista/habla), no
    veo (nada/por un ojo/de un ojo/del ojo/con el ojo), me quede ciego, me quede ciega, ciego de un ojo,
    (mitad/medio lado/un lado/lado izquierdo/lado derecho/media parte) del cuerpo, medio cuerpo, el peor dolor
    de cabeza, dolor de cabeza (brutal/repentino/subito/explosivo/de golpe/de repente), se me cae la baba de
    un lado, no puedo tragar`,
  speech: `habla, hablar, hablo, palabras, voz, pronunciar, lengua`,
  muddle: `
    enredadas, trabado, trabada, raro, rara, mal, no me salen, confundo, me confundo, pastosa, torpe, trabo`,
  'cant-see': `no veo, no puedo ver, casi no veo, no veo bien, deje de ver, apenas veo`,
  blur: `
    borroso, borrosa, doble, nublado, nublada, nubla, se me nubla, manchas, sombra, raro, rara, mal,
    destellos, empanada, perdi, he perdido, pierdo, se me fue`,
  'eye-strong': `
    no veo (nada/bien) sin (gafas/lentes/las gafas/mis gafas) (ni/y) (ni/) con (gafas/ellas/lentes/las gafas/mis gafas), se me (corto/fue/apago) la luz (de un/del) ojo, (pierdo/perdi) de vista (el/un) lado,
    (viendo/veo) (mas/algo/un poco/medio/cada vez mas) (borroso/doble/nublado/mal/turbio), veo (turbio/todo
    borroso/todo doble), (viendo/veia/ver/he visto/vi) (borroso/doble/nublado/manchas/sombras), veo
    (borroso/doble/mal/nublado/raro/manchas/sombras/luces), vision (doble/borrosa/nublada), vista
    (borrosa/nublada/doble), se me nubla la vista, se me nublo la vista`,
  balance: `
    equilibrio (algo/un poco/mucho/cada vez/bastante/muy/mas/esta/lo noto/) (peor/raro/fatal/regular/malo), (peor/mal/poco/menos) (de/el) equilibrio,
    mareo, mareos, mareado, mareada, me maree, me mareo, me marea todo, vahido, vahidos,
    (perdi/pierdo/perdiendo/he perdido/sin/perdida de/perdida del/falta de/problemas de/problemas con el/no
    tengo/no mantengo) (el/) equilibrio, equilibrio mal, me voy de lado, me voy para los lados, camino como
    borracho, camino como borracha`,
  'tear-strong': `
    dolor (desgarrador/lacerante), punzada desgarradora, desgarrador, (se me/me/como si se me)
    (rasgara/desgarrara/rasgo/desgarro/rompiera/rasgaba/desgarra/desgarraba/rajara/abriera/arrancara)
    (la/el/por/algo) (espalda/pecho/barriga/vientre/abdomen/dentro), como si me
    (rasgaran/desgarraran/rajaran/partieran/abrieran/arrancaran), me late (la barriga/el vientre/la panza/el
    abdomen/la tripa/el estomago), (barriga/vientre/abdomen/panza) (que late/latiendo/que me
    late/palpita/pulsa), latido en (la barriga/el vientre/el abdomen/la panza/la tripa)`,
  tear: `desgarro, desgarra, desgarrando, rasga, rasgar, desgarrador, desgarradora, late, latidos, palpita, rasgado`,
  'crash-strong': `
    me vine abajo (del techo/de la escalera/del arbol/del andamio), me saque la (cresta/mierda/chucha/madre), me meti un (castanazo/porrazo/trancazo), me cai de la mata, rode (cerro/escaleras/monte) abajo,
    (nos/me) (pegaron/dieron/chocaron/embistieron) (por el lado/por detras/por atras/de lado/de frente) (en/con/y/), (di/dimos/choque) contra (la valla/el muro/un muro/un arbol/un poste/el guardarrail/la mediana), me sacaron de la carretera,
    (pelotazo/palazo/palo/patada/rodillazo/codazo) (en/en plena/en la/en toda la) (columna/espalda),
    me (vole/volaba/he volado) (de/por encima de) (la/el/mi) (bici/bicicleta/moto/patinete/scooter/caballo/yegua/manillar/manubrio),
    (sali/salgo/he salido/salia) (volando/despedido/despedida/disparado/disparada/lanzado/lanzada) (de/por encima de/contra/por) (la/el/mi/un/una/) (bici/bicicleta/moto/patinete/scooter/caballo/yegua/manillar/manubrio/coche/carro/auto/arbol/muro/pared),
    (me/) (tiro/tumbo/derribo/lanzo) (el/un) (caballo/coche/toro), (me/) (tiro/derribo) una ola,
    (tuve/tuvimos/he tenido/sufri) un (choque/accidente/golpe fuerte/atropello/accidente grave), me
    (estrelle/he estrellado/estampe/la pegue/di contra/volque) (con/contra/en/) (la/el/un/una/)
    (bici/moto/coche/auto/carro/arbol/muro/pared/farola/), chocamos, nos chocaron, me chocaron, me pego un
    coche, (caida/cai/caida de) (de/desde) (dos/tres/cuatro/2/3/4/5) metros, accidente de
    (coche/auto/carro/moto/trafico/transito/bici/bicicleta/automovil), me (atropello/atropellaron/han
    atropellado/ha atropellado/choco un/choque/chocaron/embistio), (choque/chocamos/choco/he chocado)
    (con/contra) (el coche/la moto/el auto/el carro/otro coche/un coche/un arbol/la bici), atropello, me
    (cai/caigo/he caido) (del tejado/del techo/de un tejado/de un techo/de una escalera/de la escalera/por las
    escaleras/escaleras abajo/de un arbol/desde/de un andamio/del caballo/de la moto/de la bici/de un muro/de
    un balcon/por un barranco/de altura/de una altura), caida (desde/de) (altura/una escalera/un tejado/la
    moto/del caballo), volque, volco el coche, golpe (fuerte/muy fuerte/tremendo) en la
    (espalda/columna/cabeza)`,
  vehicle: `coche, auto, carro, moto, bici, bicicleta, camion, autobus`,
  crash: `choque, choco, accidente, chocamos, atropello, golpeo, colision, volcamos`,
  fall: `caida, golpe, me pegue un golpe, porrazo, trompazo`,
  'fall-minor': `
    golpecito, golpecillo, un golpe leve, golpe tonto, caida tonta, resbalon, tropezon, culada, culetazo,
    me di un
    (costalazo/porrazo/golpe/culazo/batacazo/trompazo/senton/tortazo/guarrazo/talegazo/guamazo/golpazo),
    senton, culada, culazo, costalazo, me fui de (culo/hocico/jeta/morros/bruces/espaldas/boca/lado), (acabe/termine/quede) en el
    (suelo/piso), di con el culo en el suelo, me fui al piso, cai al piso, cai en el, me cai en, cai sentado,
    cai sentada, me cai sentada, me cai sentado, cai de culo, me cai de culo, me tropece, tropece y cai,
    tropece y me cai, me fui al suelo, cai al suelo, me cai al suelo, me di contra, aterrice de culo, me
    resbalo, me cai, me he caido, me caigo, me resbale, resbale, resbalon, me tropece y cai, me pegue un
    golpe, me di un golpe, me golpee`,
  height: `metros, altura, tejado, techo, escalera, arbol, andamio, balcon, caballo, muro, barranco`,
  fever: `
    me ha salido una calentura (de 38/de 39/de 40/alta/muy alta/con), fiebre no (he tenido/tenia/tuve/hubo) hasta, escalofrios no (he tenido/tenia/tuve/hubo) hasta,
    (tengo/tuve/sigo con/estoy con) fiebre (del/de los/de) (viernes/sabado), (la/mi) fiebre (del/de los/de) (viernes/sabado) (no/sigue/me/ha),
    (tiene/tuvo) (fiebre/calentura) (la/el/mi) (nena/nene/nino/nina/bebe/peque/hijo/hija/marido/mujer/hermano/hermana) y (ahora/) (yo/tambien yo),
    (tengo/estoy con/con/estoy a/he tenido/subi a/llegue a/temperatura/temperatura de/termometro/marca/marco)
    (38/39/40/37.5/37.8/38.5/39.5/treinta y ocho/treinta y nueve), (treinta y ocho/treinta y nueve) de,
    fiebrecita, (tiritar/tiritando/temblando/tiemblo) de (frio/fiebre), sudores y escalofrios, me subio la
    fiebre, fiebre, fiebres, febricula, fiebron, calentura, febril, escalofrio, escalofrios, tiritona,
    tiritonas, tiritones, tiritando, tirito, temblores de frio, destemplado, destemplada, temperatura alta, grados de
    fiebre, tengo temperatura, con temperatura, de temperatura, 38 de temperatura, 39 de temperatura, decimas,
    tiritera, castaneteo`,
  shaky: `tiemblo, temblando, temblor, temblores`,
  'hot-cold': `frio, calor, sudor, sudando, ardiendo, helado`,
  unwell: `
    me siento (mal/fatal/enfermo/enferma/malisimo/malita/malito), me encuentro (mal/fatal/enfermo), estoy
    (enfermo/enferma/malo/mala/malito/malita/fatal), malestar general, malestar, infeccion, vomito, vomitos,
    vomitando, con gripe, gripe, como enfermo, como enferma, me siento muy mal`,
  swollen: `
    hincado, hincada, hincados, hincadas,
    hinchado, hinchada, hinchados, hinchadas, hinchazon, inflamado, inflamada, inflamacion, se me hincho, se
    me hincha, se me ha hinchado, hincho, mas gorda que, mas gordo que, mas gruesa que, mas grande que la
    otra, roja y caliente, caliente y roja, caliente y duro, caliente y dura, rojo y caliente, caliente y
    rojo, edema, amoratada, se me inflamo, se me ha inflamado`,
  'swollen-soft': `
    roja, rojo, caliente, ardiendo, morada, morado, enrojecida, tirante, rojas, dura y caliente`,
  'swell-strong': `trombosis, trombo, coagulo, coagulos, tvp, flebitis`,
  /** A name of the scale as well, where its number is told. */
  'worst-pain': 'peor dolor, el peor dolor',
  score: 'cero, uno, dos, tres, cuatro, cinco, seis, siete, ocho',
  severe: `
    estoy insoportable (de/del/con el/con este/por el/el) (dolor/dolores), dolor de noche no (me deja/me dejo/se quita/se me quita/se calma/cede/para/se pasa/se me pasa/afloja),
    (9/10/nueve/diez) de dolor, (dolor/molestia) (es/esta/fue/llega/llego/sube/subio/anda) (en/a/de/) (un/) (9/10/nueve/diez), (le doy/le pongo/diria/pongo) (un/) (9/10/nueve/diez), (es un/un) (10/diez), (9/10) (de/sobre/en) 10, no cesa, (el dolor/) no cesa, no me da tregua, no me deja vivir,
    no puedo con (este/el/tanto/mas) dolor, dolor (de/) 10, un 10 de dolor, dolor diez, nada (me/)
    (ayuda/funciona/sirve/hace efecto/lo alivia/lo calma/lo quita), no hay (forma/manera) de
    (calmarlo/aliviarlo/estar), no hay quien lo aguante, dolor
    (horrible/brutal/tremendo/bestial/inhumano/extremo), no me puedo mover del dolor, no puedo moverme del
    dolor, imposible de aguantar, me hace gritar, grito de dolor, insoportable, inaguantable, insufrible,
    intolerable, (el/) peor dolor (de mi vida/imaginable/posible/que he tenido/que he sentido/que recuerdo/que tuve nunca/jamas), dolor atroz, atroz, no
    (aguanto/soporto/resisto) (mas/) (el/este/tanto) dolor, no aguanto mas del dolor, no puedo mas del dolor,
    no puedo mas con el dolor, no puedo con el dolor, llorando de dolor, lloro de dolor, llorando del dolor,
    gritando de dolor, nada (me/) (quita/alivia/calma/baja/ayuda con) (el dolor/), ni con
    (morfina/pastillas/calmantes/nada), (no hay/no encuentro/ninguna/sin/no tengo) (postura/posicion/postura
    comoda/posicion comoda) (que me alivie/que alivie/que me calme/me alivia/alivia/que ayude/comoda/buena/),
    en ninguna (postura/posicion), me (retuerzo/estoy retorciendo) de dolor, muero de dolor, me muero del
    dolor, me muero de dolor, once sobre diez, 11 de 10, agonia, un suplicio, una tortura`,
  constant: `
    constante, no para, no cesa, todo el dia y toda la noche, dia y noche, sin parar, continuo, permanente, no
    se quita con nada, 24 horas`,
  soaked: `empapado, empapada, sudado, sudada, sudando, chorreando`,
  'wakes-strong': `
    me (levanto/levante/despierto/desperte) (de noche/por la noche/de madrugada/a media noche/varias veces)
    (del/con/por el/con el/de/por) dolor, (me/) desvela el dolor, el dolor me desvela, (por la noche/de noche)
    (el dolor/me duele) (es peor/me despierta/mas), (otra vez/de nuevo/desde las tres/desde las cuatro/sigo/toda la noche) (despierto/despierta/desvelado/desvelada/en vela) (por el/del/con/de/con el/por) dolor, (despierto/despierta) (toda la noche) (por el/del/con)
    dolor, dolor por las noches, dolor de noche, el dolor me (levanta/saca de la cama/despierta/desperto), no
    (duermo/puedo dormir/consigo dormir/logro dormir/he dormido/dormi/pude dormir) (nada/casi nada/bien/) (por
    el/del/por/por culpa del/con el/de) dolor, sin dormir por el dolor, me levanto por el dolor, me
    (despierta/desperto/ha despertado/levanta/despertaba) (el dolor/del dolor/de noche/por la noche/en la
    noche/por las noches/de madrugada/en la madrugada/cada noche/todas las noches/la espalda/la pierna), me
    (despierto/desperte/he despertado) (por el/del/con/de/con el/por) dolor, el dolor (no me deja/me impide)
    dormir, no me deja dormir, no puedo dormir (del/por el/por) dolor, dolor nocturno, dolores nocturnos`,
  wakes: `me despierta, me desperto, me despierto, me desperte, despierta, despierto, despertarme, despertandome`,
  weight: `
    la ropa me queda (grande/enorme/holgada/suelta/ancha/floja),
    (mas/tan) (flaco/flaca/delgado/delgada/chupado/chupada) (y/) sin (motivo/razon/querer/dieta/hacer dieta/saber por que), (flaco/flaca/delgado/delgada) sin (motivo/razon/querer),
    (bajando/bajado/perdiendo/perdido) (de) peso, se me caen los pantalones de delgado, he perdido peso, perdi
    peso, adelgazo, adelgazo sin, estoy mas flaco, estoy mas flaca, he perdido el apetito y peso,
    (he/estoy/voy/) (bajado/bajando/perdido/perdiendo/adelgazado/baje/perdi/bajo/pierdo) (de/mucho/bastante/)
    peso, perdida de peso, adelgace, he adelgazado, adelgazando, estoy adelgazando, (baje/perdi/he perdido/he
    bajado/he adelgazado/adelgace) (como/unos/casi/)
    (dos/tres/cuatro/cinco/seis/siete/ocho/nueve/diez/doce/2/3/4/5/6/7/8/9/10/11/12/13/14/15)
    (kilos/kg/kgs/libras), pierdo peso, bajo de peso, la ropa me queda grande`,
  lose: `he perdido, perdi, baje, he bajado`,
  'weight-count': `kilos, kg, libras`,
  sweats: `
    (sudo/sudaba/sudando) (un monton/muchisimo/tanto/demasiado) (por la noche/de noche/por las noches/mientras
    duermo/dormido), amanezco (empapado/empapada/sudado/sudada), me despierto
    (empapado/empapada/sudado/sudada/sudando), camiseta empapada por la noche, sudor nocturno, sudores
    nocturnos, sudoracion nocturna, sudoraciones nocturnas, (sudores/sudor/sudo/sudando) (mucho/) (por la
    noche/de noche/en la noche/por las noches/de madrugada/toda la noche/cada noche),
    (empapado/empapada/banado/banada) (en/de) sudor, cambiar las sabanas (por el/del) sudor, empapo (las
    sabanas/la cama/el pijama), sabanas empapadas, pijama empapado`,
  cancer: `
    (cancer/tumor/melanoma) (de mama/de colon/de piel/) de mi (papa/mama/padre/madre/hermana/hermano/abuela/abuelo/tia/tio) y (yo/ahora yo/el mio/ahora el mio/de mi/a mi/ahora a mi/tambien yo/tambien el mio),
    cancer, tumor, tumores, metastasis, linfoma, leucemia, melanoma, mieloma, carcinoma, sarcoma, quimio,
    quimioterapia, radioterapia, oncologo, oncologa, oncologia, maligno, maligna, cancer de
    (mama/prostata/colon/piel/pulmon/vejiga/testiculo/utero/ovario)`,
  lump: `bulto, un bulto, nodulo`,
}
