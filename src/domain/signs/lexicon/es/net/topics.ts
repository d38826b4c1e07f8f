import type { NetSource } from '../../shape.ts'

/** Where and with what: parts of the body, and the everyday things by which people notice that one fails. */
export const topics: NetSource['words'] = {
  leg: `
    pierna(/s), pie(/s), pata(/s), rodilla(/s), tobillo(/s), talon, talones, dedo gordo, dedos de los pies,
    dedos del pie, dedo del pie, punta del pie, puntera, empeine, planta del pie, muslo(/s), pantorrilla(/s),
    gemelo(/s), canilla(/s), cuadriceps, corva, pinrel(/es), remos, gamba(/s), extremidades inferiores,
    la derecha, la izquierda, dedos gordos`,
  'one-leg': `
    pierna, pie, pata, tobillo, talon, dedo gordo, dedo chico, dedo menique, dedos del pie, dedos de los pies,
    planta, planta del pie, empeine, muslo, pantorrilla, gemelo, canilla, espinilla, corva, gamba, rodilla,
    borde del pie, lado del pie`,
  footwear: `
    zapato(/s), zapatilla(/s), chancla(/s), chancleta(/s), ojota(/s), sandalia(/s), pantufla(/s), bota(/s),
    suela(/s), tacon, tacones, calcetin, calcetines, media, medias, zueco(/s), tenis, playera(/s),
    huarache(/s), tennis`,
  ground: `
    bordillo(/s), escalon, escalones, cordon de la vereda, vereda, banqueta, acera, baldosa(/s), peldano(/s),
    alfombra(/s), felpudo, umbral, escalera(/s), grada(/s), rampa, tapete, cuneta, adoquin, adoquines,
    piedrita(/s), suelo, piso, pasillo, pantalan, muelle, embarcadero, raiz, raices, en llano, en plano,
    arena, grava, cesped, desnivel`,
  pedal: `embrague, freno, acelerador, pedal(/es), clutch, gas, estribo`,
  private: `
    labios (de abajo/menores/vaginales/intimos), (lo/parte/la parte/las partes/los labios) de (abajo/ahi
    abajo/alla abajo/atras/delante), (ahi/alla/alli) (atras/detras/delante/mismo abajo), zona de abajo, zona
    (noble/sensible/prohibida/privada), mi sexo, el sexo, organos sexuales, cosita, florecita, cosas de
    hombre, cosas de mujer, mis cosas, mi cosa, la cosa, el paquete, paquete, las joyas, joyas de la familia,
    la raya, el canalillo de atras, debajo de los huevos, entre el ano y, donde me siento, donde apoyo para
    sentarme, lo que apoyo al sentarme, la base del culo, las posaderas, asentaderas, la almeja, el conejo,
    conejo, papaya, cosa, pepa, pepe, cachucha, minga, regazo, entrepierna, entre las
    (piernas/nalgas/gluteos/patas), entre mis (piernas/nalgas), (ahi/alla/alli) abajo, mis partes, las partes,
    partes (intimas/nobles/bajas/privadas/pudendas/de abajo), genital(/es), perine, perineo, pene, pito,
    polla, verga, pija, picha, pinga, poronga, chota, miembro, testiculo(/s), huevos, cojones, pelotas, bolas,
    escroto, glande, vagina, vulva, labios mayores, clitoris, concha, chocho, cuca, toto, panocha, chucha,
    ano, ojete, esfinter, raja, ingles, ingle, pubis, suelo pelvico, piso pelvico, culo, trasero, cola,
    pompis, pompas, nalgas, gluteos, posaderas, traste, poto, pandero, coxis, rabadilla, sentaderas, nalga,
    cara interna de los muslos, interior de los muslos, parte interna de los muslos, zona
    (intima/genital/anal/perineal/baja/de la silla/del sillin/de montar/pelvica/del panal), la parte intima,
    mis bajos, los bajos, bajos, cachete(/s) del (culo/trasero), isquiones, orto, hueso de sentarme, pompa,
    pelvis, bajo vientre, silla de montar, region (intima/genital)`,
  sitting: `
    sillin, asiento, silla, taza, tapa del (vater/inodoro/wc), inodoro, vater, wc, retrete, excusado, banco,
    banqueta, sofa, sillon, butaca, bide, banera, tina, taburete, cojin, montura, carrito, poltrona, banquito`,
  wiping: `
    papel, papel higienico, toallita(/s), limpiarme, me limpio, limpio, limpiar, me limpie, limpie, secarme,
    me seco, me seque, jabon, esponja, ducha, ducharme, duchandome, me ducho, bide, lavarme, me lavo, me lave,
    asearme, enjabonarme, me enjabono, crema, depilarme, depilo, afeitarme, agua, chorro del bide, manguera,
    toalla, cera, tampon, copa menstrual, compresa`,
  touch: `
    me (toco/toque/rasco/rasque/pincho/pinche/pellizco/pellizque/rozo/roce/acaricio/aprieto/paso la mano/paso
    los dedos/pase la mano/tocan/toca/toco yo), tocarme, rascarme, pellizcarme, pincharme, al tocar, al
    tocarme, al tocarlo, al tocarla, al rozar, si me (tocan/toco/pincho/pellizco), rozarme, tocandome, tocar,
    acariciarme`,
  'vague-place': `
    ahi, alli, alla, ahi abajo, por ahi, por alla, abajo, eso, aquello, la zona, esa zona, esa parte, esas
    partes, por abajo, por debajo, ahi detras, por detras, por delante`,
  underwear: `
    calzoncillo(/s), calzon, calzones, braga(/s), bombacha(/s), tanga, ropa interior, la ropa interior,
    ropa de abajo, pantalon,
    pantalones, pijama, mallas, leggings, calzas, jeans, vaqueros, boxer, boxers, slip, trusa(/s),
    pantaleta(/s), chones, cuadros, short(/s), licra, culotte, banador, biquini`,
  pee: `
    pis, pipi, pichi, orina, orines, orin, orinar, orinando, mear, meando, vejiga, chorro, meada, meadas,
    miccion, micciones, hacer del uno, hacer aguas, aguas menores, chis, chichi, hacer de las aguas, desbeber,
    cambiar el agua, descargar, vaciar(/me/la), mi vejiga, la vegiga, vegiga, caneria, las canerias`,
  void: `
    orinar(/me), mear(/me), miccionar, vaciar(/me/la), hacer (pis/pipi/pichi/chis/del uno/aguas/chichi),
    desaguar, desbeber, soltar (el pis/la orina/el chorro), arrancar a (mear/orinar), echar (una meada/el pis)`,
  'wet-self': `
    me (mee/mie/meo/meaba/orine/orino/moje/mojo/hice/hago/he hecho/hacia/he meado/he orinado/he
    mojado/hize/ise/iba meando/estoy meando/estaba meando/estoy haciendo/habia meado/habia hecho) (encima/toda
    encima/todo encima/pis encima/pipi encima/pis/pipi/en la cama/en los pantalones/entera/entero/toda/todo/en
    clase/dormido/dormida), meado encima, meada encima, orinado encima, mearme encima, hacerme (pis/pipi)
    (encima/), me lo hago encima, me lo hice encima, encima en (clase/el trabajo/el bus/la calle/el coche)`,
  toilet: `
    bano, aseo, servicio, lavabo, water, vater, wc, inodoro, retrete, taza, excusado, urinario, mingitorio,
    orinal, cuna, toilette, sanitario, banos`,
  'wet-thing': `
    calzoncillo(/s), calzon, calzones, braga(/s), bombacha(/s), tanga, ropa interior, pantalon, pantalones,
    pijama, cama, sabana(/s), colchon, mallas, leggings, calzas, jeans, vaqueros, boxer, boxers, slip,
    trusa(/s), falda, pollera, vestido, asiento, sofa, sillon, silla, panal, panales, compresa(/s), salvaslip,
    protector, protectores, toallita(/s), toallas higienicas, la ropa, la ropa interior, entrepierna,
    el coche, el piso, el
    suelo`,
  poo: `
    el recto, mi recto, lo gordo, de lo gordo, lo serio, lo solido, solido, numero dos, el dos, lo de atras,
    de atras, por atras, detras, ahi detras, la puerta de atras, puerta trasera, cagalera, cagar(/la/me/lo),
    cagando, cago, cague, caquita, popis, pupu, zurullo, mojon, el cuerpo, de cuerpo, ir al bano a lo grande,
    pedete, pedito, cuescos, cuesco, plasta, mondongo, caca, popo, cacas, heces, mierda, cagar, cagada, hacer
    del dos, del dos, defecar, evacuar, ir de vientre, ir de cuerpo, vientre, intestino(/s), esfinter,
    esfinteres, ano, por detras, el de atras, pedo, pedos, gases, gas, flato, ventosidad(/es), peo, peos,
    deposicion, deposiciones, culo, orto, materia fecal, fecal, excremento(/s), diarrea, lo otro, lo grande,
    aguas mayores, de vientre, cagarme`,
  stained: `
    manchado, manchada, manchados, manchadas, mancha, manchas, manchita, manche, sucio, sucia, sucios, sucias,
    ensuciado, ensucie, palomino(/s), restos, rastro, marron, cafe, embarrado, caca, huele mal, frenazo`,
  mishap: `
    accidente(/s), percance, tuve que (tirar/tirarlo/tirarla/lavar/lavarlo/cambiarme/cambiar), me tuve que
    (cambiar/lavar/duchar), a la basura, lavadora, cambiarme de, estropeado, desastre`,
  sex: `
    sexo, sexual, relaciones, intimidad, en la cama, hacer el amor, haciendo el amor, coger, follar, follando,
    cogiendo, culear, tirar, polvo, pareja, mi mujer, mi marido, mi novio, mi novia, mi esposa, mi esposo, mi
    chico, mi chica, mi pareja, masturbarme, masturbandome, pajearme, masturbacion, ereccion, erecciones,
    orgasmo(/s), eyacular, eyaculacion, correrme, venirme, acabar, libido, excitado, excitada, excitacion,
    pene, pito, polla, verga, pija, picha, pinga, poronga, chota, miembro, pilila, vagina, clitoris, vulva,
    erectil, empalmarme, empalme, empalmado, soldadito, mi amigo, amiguito, aparato, ahi abajo, intimamente,
    tener sexo, encuentro intimo, romantico, lubricacion, parada`,
  both: `
    las dos piernas, los dos pies, ambas piernas, ambos pies, los dos lados, ambos lados, una y otra, la otra,
    el otro, la otra pierna, el otro pie, otra pierna, otro pie, la buena, la sana, la que estaba bien, pierna
    buena, pierna sana, el bueno, en paralelo, simetrico, por igual, piernas, pies, gemelos, pantorrillas,
    plantas, plantas de los pies, muslos, patas, bilateral, de la cintura para abajo, cintura para abajo, de
    cintura para abajo, de la cintura hacia abajo, medio cuerpo para abajo, izquierda y derecha, derecha y
    izquierda, derecha e izquierda, el derecho y el izquierdo, el izquierdo y el derecho, izquierdo y derecho,
    derecho y izquierdo, tanto la derecha como la izquierda, tanto la izquierda como la derecha`,
  'bare-two': `
    las dos, los dos, ambas, ambos, las 2, los 2, en las dos, en ambas, en los dos, por las dos, a las dos,
    las dos las`,
  left: `izquierda, izquierdo, zurda, zurdo, izq, izda, izqda, siniestra`,
  right: `derecha, derecho, diestra, diestro, der, dcha`,
  'two-legs': `
    las dos piernas, los dos pies, ambas piernas, ambos pies, en las dos, en ambas, la otra, el otro, la otra
    pierna, el otro pie, otra pierna, otro pie, la buena, la sana, pierna buena, pierna sana, la que estaba
    bien, la que no me dolia, la contraria, el contrario`,
  face: `
    cara, rostro, boca, labio(/s), mejilla, mejillas, parpado(/s), ceja, sonrisa, sonreir, sonrio, comisura,
    cachete, moflete, mandibula, lengua, medio rostro, jeta, gesto, espejo, selfie, baba`,
  arm: `
    brazo(/s), mano(/s), muneca, codo, hombro, antebrazo, dedos, dedo(/s) de la mano, pulgar, taza, vaso,
    tenedor, cuchara, cuchillo, llaves, llave, boli, boligrafo, lapiz, lapicero, movil, celular, telefono,
    boton, botones, mate, cepillo, cepillo de dientes, plato, botella, teclado, remo, control remoto, mando,
    peine, mando a distancia, sarten, volante, cuaderno, letra`,
  hand: `mano(/s), muneca, brazo(/s), dedos, dedos de la mano, pulgar`,
  speech: `
    habla, hablar, hablo, hablaba, hablando, palabra, palabras, voz, frase, frases, lengua, decir, digo,
    pronunciar, nombres, nombre, leer, escribir, mensaje, entender, conversacion, discurso, articular,
    vocalizar, habl(e/aba), charlar, llamada`,
  sight: `
    vista, vision, ver, veo, veia, ojo(/s), mirar, leer, pantalla, medio campo, campo visual, izquierda del
    ojo, imagen, letras, campo de vision`,
  balance: `
    equilibrio, andar, caminar, camino, caminando, andando, ando, pasillo, de pie, coordinacion, recto, en
    linea recta, tumbos`,
  chest: `
    pecho, corazon, esternon, torax, caja toracica, costillas, pulmon, pulmones, bobo, brazo izquierdo,
    mandibula`,
  breath: `
    aire, aliento, respirar, respiracion, respiro, oxigeno, resuello, ahogo, respirando, inspirar, coger aire,
    tomar aire, agarrar aire`,
  cough: `
    tos, toser, toso, tosi, tosiendo, esputo(/s), flema(/s), escupir, escupi, escupo, saliva, gargajo,
    panuelo, garganta, carraspeo, mocos`,
  trunk: `
    barriga, vientre, abdomen, panza, estomago, tripa, tripas, guata, ombligo, pecho, espalda, lomo, lumbar,
    costado, adentro, dentro, flanco, timba, entre los omoplatos, paletillas, omoplatos, rinones, entranas,
    por dentro`,
  belly: `
    barriga, vientre, abdomen, panza, estomago, tripa, tripas, guata, ombligo, boca del estomago, timba`,
  fall: `
    se me (vino/vinieron/cayo/cayeron) encima, me (aplasto/aplastaron/aplastado/atrapo/prenso/cayo
    encima/cayeron encima), (me/nos) (pego/dieron/dio/golpeo/embistio/choco/arrollo/llevo por
    delante/pegaron/sacaron de la carretera) (un/una/el/la/por detras/de atras/por el lado), me di una hostia,
    un pinazo, me pegue, cai, caido, caida, caidas, caerme, me cai, precipite, resbale, resbalo, resbalon,
    rode, volque, volcamos, volcado, choque, choco, chocamos, chocaron, estrelle, estrellamos, atropello,
    atropellaron, atropellado, atropellada, embistio, embistieron, arrollo, arrollaron, golpe, golpee, golpeo,
    golpazo, porrazo, batacazo, trompazo, costalazo, tumbo, derribo, aplasto, aplastado, accidente, impacte,
    colision, colisione, hostiazo, guamazo, guantazo, putazo, madrazo, revolcon, revolco, me pego, me
    embistio, se me vino encima, catapultado, catapultada, desbarranque, desbarrancamos, patinazo, derrape,
    vuelco`,
  crush: `
    se me (vino/vinieron/cayo/cayeron) encima (un/una/el/la/los/las), me (aplasto/aplastaron/atrapo/prenso)
    (un/una/el/la/contra), me cayo encima, nos (pego/dio/golpeo/embistio/choco) (un/una)`,
  fell: `
    se me (cayo/cayeron/vino/vinieron/desplomo/volco/echo), me (cayo/cayeron/vino/volco), cayo, cayeron,
    desplomo, derrumbo`,
  heavy: `
    viga, ropero, armario, nevera, refrigerador, frigorifico, heladera, lavadora, mueble, sofa, saco, sacos,
    caja, cajas, palet, bidon, moto, motor, piedra, roca, tronco, arbol, rama, pesa, pesas, barra, mancuerna,
    disco, ladrillos, ladrillo, puerta, porton, escalera, tablon, maquina, bote, barca, remo, botavara,
    mastil, estanteria, televisor, tele, piano, cristal, techo, muro, pared`,
  'on-me': `encima, encima mio, encima de mi, sobre mi, me aplasto, aplastandome`,
  'light-thing': `
    cafe, agua, vaso, sopa, libro, movil, telefono, celular, te, leche, cerveza, comida, plato, pis, pipi,
    noche, sueno, trabajo, mundo, marron, fiesta, examen, responsabilidad`,
  height: `
    autopista, carretera, ropero, armario, nevera, refrigerador, frigorifico, heladera, mueble, mudanza, viga,
    saco, sacos, palet, bidon, motor, remolque, bote, barco, escalera(/s), escalones, tejado, techo, azotea,
    balcon, arbol, andamio, muro, tapia, barranco, altura, metros, piso, segundo piso, primer piso, caballo,
    yegua, moto, motocicleta, bici, bicicleta, coche, auto, carro, camion, camioneta, furgoneta, autobus, bus,
    tren, patinete, monopatin, litera, ventana, terraplen, cabina, tractor, toro, vaca, quad, scooter, esquis,
    esquiando, tabla, tabla de snow, snowboard, columpio, cama elastica, trampolin, grada(/s), muelle,
    pantalan, embarcadero, cobertizo, desvan, altillo, tapanco, barandilla, puente, zanja, pozo, foso,
    alcantarilla, barra, mancuerna, pesa, ascensor, elevador, cornisa, taxi, semaforo, paso de cebra, kayak,
    de espaldas`,
  core: `
    espalda, columna, cabeza, nuca, lumbar, lumbares, rinones, coxis, cuello, pelvis, sacro, rabadilla,
    cintura`,
  blow: `
    golpe, golpazo, me golpee, me golpeo, golpeo, porrazo, batacazo, trompazo, costalazo, guamazo, madrazo,
    putazo, hostion, trancazo, me pego, me dio de lleno`,
  calf: `
    pantorrilla(/s), gemelo(/s), pierna, tobillo, pie, muslo, corva, canilla, batata, chamorro, camote,
    espinilla, pata, calcetin, bota, zapato`,
  night: `
    noche, noches, madrugada, cama, dormir, duermo, dormido, dormida, sueno, tres de la manana, cuatro de la
    manana, despierto, despierta, desperte, me desvelo, desvela, acostado, acostada, de dormir`,
  sheets: `
    sabana(/s), pijama, cama, almohada, camiseta, camison, colchon, remera, playera, polera, ropa de cama,
    edredon, funda, noche, noches, madrugada`,
  weight: `
    peso, kilo(/s), kg, libra(/s), pantalon, pantalones, cinturon, ropa, talla, tallas, bascula, balanza,
    pesa, pese, anillo`,
  'harm-means': `
    balcon, puente, vias, tren, ventana, azotea, pastillas, cuchilla, cuchillo, soga, cuerda, metro,
    acantilado, escopeta, pistola, veneno, navaja, rio, carretera, camion, arbol, viga, terraza, medicinas,
    medicacion, frasco, altura`,
}
