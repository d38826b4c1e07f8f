/** Things that stand by themselves, work, or break: what is said of them is said of no body. */
const MACHINE =
  'moto/coche/carro/auto/camion/motor/bateria/impresora/lavadora/aspiradora/taladro/bomba/manguera/regadera/ventilador/patinete/tren/barco/aparato/movil/celular/telefono/compu/computadora/ordenador/tablet/wifi/internet/tele'
const FOR_FUN = 'verguenza/risa/la risa/envidia/emocion/alegria/felicidad/ternura'
const FOR_WANT = `${FOR_FUN}/aburrimiento/hambre/sed/sueno/calor/frio/ganas/curiosidad/tedio/pereza/asco`
const WET_BY =
  'el agua/agua/la lluvia/lluvia/el mate/mate/el cafe/cafe/la cerveza/cerveza/la sopa/el jugo/el zumo/la manguera/el vaso/un vaso/el riego/la piscina/la playa/el mar/barro/la nieve/nieve/espuma/la espuma/las olas/la ola'
const PLACES_TO_LIVE =
  'con mi suegra/con mis suegros/con mis padres/con mi ex/con mi roomie/con mi hermano/con mi hermana/en esta casa/en este piso/en esta ciudad/en este barrio/en este pueblo/en este edificio/en ese piso/en esa casa/en otro barrio/en otro piso/en otra ciudad'

/** Who wants to move house; heard as a doubt where more is said with it. */
export const NOT_LIVE_HERE = `(no quiero/ya no quiero) vivir (mas/) (${PLACES_TO_LIVE})`

/** A limb of which it is denied that it fails: "la pierna no se me dobla", beside "la pierna no se dobla", which tells. */
export const NO_WEAK = `
  (la/el/mi/esta/esa/la otra) (pierna/rodilla/pie/tobillo/pierna derecha/pierna izquierda/pie derecho/pie izquierdo) no se me (dobla/va/afloja/vence/engancha/cae/tuerce/ha doblado/ha ido/escapa),
  ya no (arrastro el pie/arrastro la pierna/me falla la pierna/me falla el pie/se me va la pierna/se me dobla la rodilla/se me dobla la pierna/cojeo), (pierna/rodilla/pie/pierna mala/pierna izquierda/pierna derecha) ya no (me falla/falla/se me va/se me dobla/flaquea/me flaquea),
  (la/el/mi) (pierna/rodilla/pie) no (me falla/me fallan/lo arrastro/la arrastro/se arrastra), (debil/floja/flojo) no (estoy/esta/la noto/lo noto/la siento/lo siento)`

/**
 * What names a sign and tells none, by theme: jokes and hyperbole, things and weather, the heart as a word, and plain
 * denials that hold their sign. Read so by both layers. A phrase holds all that makes it harmless, so that the same
 * words told otherwise are heard: "se me mojo el pantalon con el mate", never "se me mojo el pantalon".
 * What takes a phrase back ("fiebre no he tenido hasta hoy") is a longer phrase of its sign, begun at the same word.
 */
export const letBe = `
  (me voy a/voy a/casi me/casi) (morir/morirme/muero) de (${FOR_WANT}), (me quiero/me quise/quiero/quise/queria) (morir/morirme) de (${FOR_FUN}),
  hablando de morir de amor, morir de amor, no me (rindo/rendi/rendire/voy a rendir), me rindo con (el/este/ese) (ejercicio/estiramiento/video/puente),
  (cortar/cortarme/cortarse) las venas con (una/la/un) (galleta/lechuga/cuchara/papel), (pienso/pensando/pense) en la muerte de mi (perro/perra/gato/gata/abuelo/abuela/tio/tia/mascota),
  (me dan/tengo/que/) ganas de matar (al/a la/a los/a las) (del/de la/de los/vecino/vecina/vecinos/jefe/jefa/arbitro/taladro), (chiste/escena/rescate/pelicula/peli) (del/de un/de/con un) suicida, suicidio de un (escritor/cantante/actor/poeta/personaje),
  (el peluquero/la peluquera/el barbero/la barbera) me (corto/ha cortado), me (corto/corte/he cortado) (yo misma/yo mismo/) (el pelo/el flequillo/las unas/las puntas/la barba/la melena/afeitandome/pelando/cocinando/al afeitarme),
  (se me/se) (corto/corta/ha cortado) (la llamada/la luz/la conexion/el internet/internet/la leche/la mayonesa/el video/el agua/la cobertura/el wifi),
  (no puedo/no aguanto/ya no aguanto/no soporto) (mas/) (con el/con la/al/a la/a este/a ese/el) (vecino/vecina/tipo/ruido/taladro/perro del vecino/trafico/grupo/jefe),

  (partido/final/tanda/acabo/precio/precios/penaltis/vistas/susto) de infarto, (casi/por poco) (me da/me dio/nos da) un infarto (con/al ver/viendo), me va a dar un (infarto/ictus/ataque) con (este/esta/estos/el precio/el partido/mi hijo/mi hija), (taquicardia/sudor frio/mareo) me (dio/da) (la cuenta/la oferta/el precio/la factura),
  (a lo hecho/saque/sacando/doy/le doy/darle) pecho, (tomo/tome/tomar/tomando/tomarse/tomarme) a pecho, a pecho descubierto, (nado/nadar/nadando/nade) a pecho, (barbilla/menton) al pecho,
  (estiro/estire/estirar/estirando/depile/depilo/abro/abri) el pecho, corta de pecho, (banda/correa) (pectoral/al pecho), pecho orgulloso, (no noto/no siento/ni) nada en el pecho,
  corazon (caliente/de melon/enamorado/feliz/perfecto), con el corazon en la mano, (rompieron/robo/robaron/roban/gano/ganaron) el corazon, dolor de pecho me da (ver/verlo/verla/el precio/la nota), duele el corazon (de amor/de ver/por amor), dolor en el pecho de (alegria/amor/emocion), mal de amores me duele el corazon,
  (late/latia) por mi equipo, se me sale el corazon (viendo el partido/viendo la final/viendo los penaltis/viendo el gol/viendo la peli/con los penaltis/con el partido/con el gol), (reviso/revisaron/miro/miraron) el corazon, (eco/ecografia/chequeo/revision) del corazon,
  (me ahogue/casi me ahogo/me atragante/casi me atraganto) con (la pipa/una pipa/una tortilla/la tortilla/un hueso/el hueso/un caramelo/una aceituna/una espina),
  (sin aire/sin aliento) (de reir/de la risa/de risa/de tanto reir/por la risa), (sin aire/sin aliento/sin respiracion) con (el paisaje/las vistas/la noticia/el abrazo/el final/la faja/la corbata),
  ahogo de (corbata/faja/mascarilla), asfixia de (camiseta/camisa/corbata/mascarilla/calor/autobus/metro),
  (inflando/inflar/infle/inflo/hinchando/hincho) (globos/el globo/los globos/la colchoneta/el colchon) (me/y me/) (quede/quedo/he quedado) sin aire, (rueda/ruedas/balon/pelota/colchoneta/colchon/bandoneon/flotador/globo) (se me quedo/se quedo/esta/quedo) sin aire,

  me (meo/cago) (de risa/de la risa), me meo con (este/ese/el) (grupo/chiste/video/audio), me (cague/cago) en (todo cuando vi/todo cuando perdimos/todo cuando perdio/todo cuando suena/todo cuando sono/todo cuando se fue/todo lo que se menea/todo lo que se mueve/diez/la leche/la mar), no meo fuera del tiesto, meando como un caballo,
  (moje/mojo) la cama con (${WET_BY}), (se me/me) (mojo/moje/mojaron/ha mojado) (el pantalon/los pantalones/la ropa/la camisa/la falda/las zapatillas/los zapatos/la cama) con (${WET_BY}),
  (calzoncillos/bragas/pantalon/pantalones/ropa interior/ropa/calcetines/zapatillas) (mojado/mojados/mojada/mojadas/empapados/empapadas) (de/por/con) (la/el/) (${WET_BY}/sudor),
  (mojado/mojada/empapado/empapada/calado/calada) (de/por/con) (la/el/) (${WET_BY}), (se me cayo/me cayo) (el agua/agua/el cafe/la cerveza/el mate/la sopa) (encima/del techo),
  (hora/dia/turno/manana/camino) mojado hasta los calzoncillos, (derrame/derramo/derramar) (el/la/un/una/los/mi/todo el/un poco de) (cafe/te/agua/vino/leche/sopa/vaso/mate/jugo/zumo/cerveza/aceite/tinto),
  (termo/grifo/ducha/caldera/regadera/techo/canilla/boiler/calentador/nevera/lavadora/lavavajillas) (pierde/perdia/suelta/gotea) (agua/gota a gota/agua gota a gota),
  (pis/pipi/caca/popo) (del/de la/de mi/de un/de) (gato/gata/perro/perra/cachorro/cachorra/nino/nina/bebe/nene/nena/conejo), (cambio/cambie/cambiar/cambiando) panales (de adultos/a los abuelos/en la residencia/a mi hijo/a mi hija/al bebe), (compre/comprar/compro) panales (para/a/xa) (el bebe/la bebe/mi bebe/mi hijo/mi hija/mi nieto/mi nieta/mi sobri/mi sobrino/mi sobrina), bolsa de pis del,
  ni (una/) gota (de pis/de orina/de pipi/) se me (escapa/escapo/ha escapado), ni (una/) gota de (pis/orina/pipi) (se escapa/perdida),
  (chorro/chorros) (de agua/del spa/del jacuzzi/del ventilador), spa con chorros, (en la/a la/de la/la) parada, paradas, (que en/durante) todo el ano, (trabajo/sol/abierto) todo el ano, (en/de) que ano, saber (en/) que ano,

  (silla/sillas/banco/mesa/taburete) de (plastico/madera/cuero/paja), pelota de goma, tapon de cera, (se me/se) (rajo/rompio/rasgo) (el pantalon/los pantalones),
  (mi/el/un/su/tu) punto (debil/flojo), soy (debil/flojo/floja) (con/para), (contrasena/senal/cafe/luz/excusa/argumento/conexion) (debil/floja/flojo), (flojo/floja/flojera) de ganas, nomas flojera, q flojera (da/hoy/me da), banda (muy/mas/) floja, floja (la/el) (banda/goma/tele/serie/peli/grapa/gelatina), adoquin flojo,
  (la/mi/una/esta/esa/el/un/este/ese) (${MACHINE}) (del coche/de la moto/ya/casi/) (no tiene/no tenia/se quedo sin/se me quedo sin/esta sin/anda sin/quedo sin/perdio/sin tener) (fuerza/potencia/presion/resistencia),
  bateria (del coche/del carro/de la moto/) sin fuerza, motor (sin compresion/) sin fuerza, sin compresion, (wifi/internet/senal) (caido/caida/muerto/muerta),
  la (burra/vaca/yegua/oveja/cabra) arrastra (la/una/su) (pata/pierna), hizo de (zombi/zombie) arrastrando la pierna,
  (salto/saltando) a la pata coja (para/con/y), a la pata coja (aguanto/aguante), pata coja mi (silla/mesa/cama), pirata pata palo, pata dura (soy/para), pie de atleta, (dos/2) pies izquierdos, (me pongo/piso) las pilas,
  se me doblo (el pie/el tobillo/el pie izquierdo/el pie derecho) (con/en) (un adoquin/el adoquin/un bache/una piedra/la piedra/una raiz/un hoyo/un agujero/los tacos/los tacones/una rama),
  se me fue el pie al (acelerador/freno/pedal), se me fue el alma (al piso/al suelo/a los pies), (se me fue/se me pasa/se me paso) (media hora/una hora/el rato/la picadura),

  me (mareo/maree/marea) con (tanto/tanta/tantos/tantas) (nombre/nombres/numero/numeros/papel/papeles/mensaje/mensajes/video/videos/factura/facturas), (mareado/mareada) (de/con) (tantos/tantas/tanto/tanta) (facturas/papeles/nombres/numeros/mensajes/papeleo/cuentas),
  (mareo/mareos/mareado/mareada/me maree/nos mareamos) (en el/del/en la/en/por el/con el) (ferry/barco/lancha/crucero/velero/noria/tiovivo), me maree (en el bus/en el coche/en el carro/en el autobus/) por leer, la (gente/tripulacion) mareada,
  no veo (la hora/las horas/el dia/el momento) de, no veo (nada/bien/un pimiento/ni torta/) (sin gafas/sin lentes/sin las gafas/sin mis gafas), deje de ver (las noticias/series/el futbol), (pierdo/perdi) de vista (el movil/el telefono/el balon/la pelota/el perro/la app/la rutina/el plan/el objetivo/el grupo/el mensaje/el video/a los ninos/a los demas/a los del grupo/a los companeros), vi doble arcoiris,
  (se me/le/nos) (va/fue) la mano con (la sal/el azucar/el picante/el aceite/el chile/el vino), (perdi/pierdo) (el/en/) equilibrio (haciendo/en) (el arbol/el yoga/yoga/la postura), pierdo en equilibrio contra,
  hablo (raro/mal/asi) (porque llevo/por llevar/con) (la/una/el/los) (ferula/brackets/aparato/mascarilla), se me trabo la lengua (leyendo/con/diciendo) (trabalenguas/un trabalenguas/el trabalenguas/los trabalenguas), me voy de la lengua,
  (a esa hora/ahora/hoy/de noche/tengo visita y) no puedo (contestar/responder/hablar por telefono), no puedo (contestar/responder) (a esa hora/ahora/hasta/hoy/en el trabajo/los mensajes), lengua de trapo de mi (hijo/hija/nieto/nieta/sobrino/sobrina),

  calentura (en el labio/del labio), me ha salido una calentura, me (dieron/da/dan/dio) escalofrios (pensar/de pensar/solo de pensar/con la final/con la peli/con la pelicula/con la cancion/la peli/el himno/de la emocion), escalofrios (me da/me dan) (pensar/de pensar), escalofrios (cuando/de/con) (la tiza/la peli/la cancion/la pelicula/la final/el himno),
  tiritones todos en (la/el), (mareado/mareada) de (tanta/tantas) (vuelta/vueltas) (con el papeleo/con los papeles/en la noria/en el tiovivo/en la rotonda), (tiritando/tirito/temblando/tiritamos) (de frio/) (en la parada/en la grada/en la cola/esperando el bus), (tirito/tiritando) (en la ducha/en casa/) porque no hay (gas/calefaccion/agua caliente),
  fiebre (de/de los/por los) (examenes/viernes/rebajas/compras/padel), que fiebre les dio a todos con, (38/39/40/41/42) grados (afuera/fuera/a la sombra/en el jardin/en la calle/en la terraza/en el patio/en el coche/en cordoba/en sevilla),
  (tengo/con/cumplo/llevo/yo con) (38/39/40) (anos/tacos/primaveras/de casados/de casada/de casado/de albanil/de profe/de maestra/de maestro/de camarero),
  estoy insoportable, (esta/ese/este/un) (tipo/serie/radio/tio) (es/) (insoportable/inaguantable), es un (10/diez) (en/de) (pesado/pesada/majo/maja/simpatia/cocina/paciencia/mates),
  (roja/rojo/rojas/rojos/colorada/coloradas/quemada/quemadas) (de/del/por/por el) (la depilacion/depilacion/depilarme/sol/cera/la cera/la banda/banda/la goma/calcetin/frio/la playa), marca (roja/de la banda/del calcetin/de los calcetines), (barriga/tripa/panza/vientre/estoy/me siento/ando/super/toda/todo) (hinchado/hinchada) (de/por) (comer/comer tanto/sal/la sal/lentejas/las lentejas/la cena/gases/los gases), hinchada de mi equipo, (hinchado/hinchada) como un globo de comer, (hincado/hincada) (en el rosario/en misa/en la iglesia/en el altar/en el suelo/en la arena/en la tierra/en la silla/en el sillon/de rodillas),
  (cancer/cancer de piel/cancer de mama/cancer de colon/tumor/quimio/bulto/melanoma) (de/del) (mi papa/mi mama/mi padre/mi madre/mi hermana/mi hermano/mi abuela/mi abuelo/mi tia/mi tio/mi suegra/mi suegro/mi vecina/mi amiga),
  (me/casi me) (ahogo/ahogue) (en papeles/en un vaso de agua/de trabajo/en correos/en trabajo/en deberes/en facturas/de risa/de la risa), no quiero seguir con (este/el/ese) (ejercicio/estiramiento/video),
  no quiero despertar (tan temprano/a nadie/a los ninos/al bebe/al nino/a la nina/a mi marido/a mi mujer), desaparecer del (grupo/chat/whatsapp),
  se me (traba/trabo) la lengua con (la th/los nombres/los nombres de los/los nombres raros/los nombres rusos/el ingles/el frances/el aleman/las erres/el nombre del/el nombre de la), no me salen las palabras (de agradecimiento/en frances/en ingles/en aleman), hablo mal (el/) (ingles/frances/aleman/espanol/castellano),
  (escalofrio/escalofrios) de emocion, casi me desmayo (del precio/de tedio/de aburrimiento/de la emocion/de hambre), (la/que) impotencia (que da/de ver/de no poder/me da) (ver/verlo/verla/no/ayudar/el/la/eso/esto/remar/correr/entrenar/ir/trabajar/que), con pies de plomo, me dio flojera (salir/hacerlo/levantarme/moverme), no siento ganas de (entrenar/moverme/salir/cocinar/trabajar),
  fiebre tiene (mi/la/el) (hijo/hija/nena/nene/nieto/nieta/marido/mujer/bebe/pequeno/pequena), no me tengo en pie de (sueno/cansancio), no puedo (caminar/andar) con estos (tacones/zapatos/botas), no (pude/puedo) (caminar/andar) (hoy/ayer/) porque (llovia/llueve/nieva/nevaba),
  (grifo/ducha/manguera/canilla) (sale con/tiene/tiene un/con/con un/da un) (el/) chorro (flojo/debil), (silla/mesa/silla del comedor/mesa del comedor) (tiene/con) una pata (floja/coja/rota), corazon (me iba/iba/va/me va) a mil (al ver/viendo/con el gol/con el partido),
  (cede/cedio/ceden/cedia) (al/cuando/cuando me/si me/con/con el/con la/tras) (tumbarme/tumbo/acostarme/acuesto/echarme/estirar/estirarme/estiro/estirando/estiramiento/descansar/descanso/reposo/calor/hielo/pastilla/ibuprofeno/paracetamol), (con estirar/al tumbarme/con calor/con reposo) (cede/cedio),
  (no puedo/no pude/no podia/no he podido) salir a (caminar/andar/correr/pasear/trotar), no (puedo/pude/me deja/me dejan) dormir (por el/del/con el/por los/por la/con los) (calor/ruido/nervios/mosquitos/tos/vecinos/fiesta/musica/alergia),
  (las dos/las cuatro/las/la/) (pata/patas) (de la/del/de mi) (mesa/silla/sofa/cama/sillon/banco/taburete), (naturaleza/pantalla) muerta, (caballo/insecto/bicho/escarabajo/perro) muerto, hojas caidas,
  con fiebre (la/el) (nena/nene/nino/nina/bebe/peque) no, (tiene/tuvo) (fiebre/calentura) (la/el/mi) (nena/nene/nino/nina/bebe/peque/pequeno/pequena/hijo/hija/marido/mujer/hermano/hermana/perro/gato), calentura mi (hermano/hermana/cunado/jefe),
  se desmayo (el/la/un/una/mi) (novio/novia/senora/senor/companera/companero/nina/nino/profe/actriz/cantante/suegra/cunado),
  (empapado/empapada/banado/banada) (en/de) sudor (del/de la/de/en el/tras el/despues del/despues de) (gimnasio/gym/entreno/partido/correr/entrenar/bici/clase/carrera/spinning/padel),
  por (tonto/tonta), (duda/pregunta) tonta, me dio flato, flato (corriendo/al correr), un ojo de la cara, me (mordi/queme) la lengua (comiendo/con la sopa/con el cafe/con la pizza/con el te/sin querer),
  me siento mal por (no haber/haber/no poder/no contestar), malestar (general/) en la (empresa/oficina/plantilla), (desgarrador/desgarradora) (el final/la peli/la novela/la noticia/la pelicula/el libro), parto de risa, partido de risa,
  me duele (la barriga/la tripa/la panza/el estomago) de (comer/tanto comer/reir/reirme/las planchas/los abdominales/hacer abdominales),
  me quede sin (aire/aliento/respiracion) (con/al ver) (el paisaje/las vistas/la noticia/el precio/la factura/el final/el abrazo), entrar en calor,
  coger (la caja/una caja/las cajas/en brazos/a mi hijo/a mi hija/a mi nieto/a mi nieta/al nino/a la nina/el bus/el metro/frio/sitio/peso), (me mato/matarme/me matare) a (abdominales/planchas/sentadillas/series/correr), (no me/ni me) mato (en el gym/en el gimnasio/entrenando/corriendo),
  (cancer/fiebre/caidas/desmayos/mareos/sudores/escalofrios) no (he tenido/tengo/hay/tuve/hubo), dolor de noche no (tengo/hay/he tenido/tuve/hubo/de dia si), no me (dolio/ha dolido) (el pecho/la cabeza/la barriga),
  me cai de la silla (de la impresion/de risa/al ver el/al ver la/al ver los/al ver las/al ver que/al ver tu/al ver mi/al ver eso/al ver esto/al ver lo/cuando vi el/cuando vi la/cuando vi los/cuando vi las/cuando vi tu/cuando vi que/al leer), me cai del (ranking/podio/guindo), sueno que me caigo,
  (hormigueo/hormigueos/adormecimiento/acorchamiento) (0/cero/nulo), (hormigueo/adormecimiento/acorchamiento) (va/esta/sigue/) (bajando/baja) (de/en) intensidad, (no se/no) (ha extendido/extendio/extiende/se extendio) (el/la/) (hormigueo/adormecimiento/acorchamiento)`
