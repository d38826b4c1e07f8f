import type { LexiconSource } from '../shape.ts'

/** Signs told by a picture, where no word names them; each is asked about. */
export const oblique: LexiconSource['words'] = {
  'oblique-saddle': `
    (verijas/los companeros de abajo) (dormidas/dormidos/dormido), se me (durmieron/duermen) (las verijas/los companeros de abajo), (el bajo/el culete) dormido,
    (abajo/ahi abajo) nada siento, (nada/mas nada/ya nada) siento (al limpiarme/ahi abajo/abajo/en mis partes), siento todo (menos/excepto/salvo) (el culo/la entrepierna/mis partes/ahi abajo/entre las piernas),
    (como/como si/parece que/es como) (si/) (estuviera/estuviese/estoy/estar) (sentado/sentada) (en/sobre) (una/un/) (nube/almohada/cojin/esponja/algodon/globo/corcho/aire/nada/gomaespuma),
    (me/) (toco/toque/lavo/lave/seco/limpio) (ahi/ahi abajo/por ahi/mis partes) y (nada/no noto/no siento/como si nada),
    (almohadon/cojin/almohada) que no existe, (fondillo/culo/trasero/nalga/nalgas/ano) no (siente/sienten) (la mano/nada/el agua/el papel), me toco y (como si nada/nada/no siento), (notaba/sentia) todo (al limpiarme/ahi abajo) hasta (ayer/anoche/hoy/el lunes)`,
  'oblique-bladder': `
    no puedo hacer (del uno/de las aguas), (ya no/no) (hago/sale) (chichi/del uno), el (chorrito/chorro) sale (flojito/flojo/debil), goteo todo el dia,
    pujo y nada, (intento/trato de/quiero) (orinar/mear/hacer pis/hacer pipi) y (nada/no), (antes orinaba/antes meaba) (bien/normal) (y/) ahora nada, (solia/antes) (notar/notaba) cuando tenia ganas y (ya/ahora) no,
    me meo de (risa/la risa) (literal/literalmente/de verdad/y de tos/y de la tos/y se me/y tambien/y no lo), se me (escapa/sale) (al/cuando) (coger/cojo/levantar/levanto/cargar/cargo/alzar/alzo) (a/al/el/la/un/una/en/peso/cajas),
    no siento ganas de (entrenar/moverme/salir/cocinar/trabajar) (ni/y tampoco/tampoco/ni tampoco/ni siquiera) de (orinar/mear/hacer pis/ir al bano),
    pierdo (cuando/al/si) (toso/toser/me rio/reir/reirme/estornudo/estornudar/salto/saltar/me agacho/agacharme/me levanto/levantarme/camino/caminar), (de noche/por la noche/andando/caminando) pierdo y,
    se me (sale/escapa) (apenas me/al/cuando me/cuando) (paro/levanto/levantarme/pararme/toso/toser/rio/reir/reirme/agacho), (salto/duermo/camino) y se (me/) escapa, me chorreo (al/cuando/de/encima), me (hice/he hecho/hago) todo encima,
    solo camino y (moja/mojo/me mojo), se me ha salido (en plena/en medio/sin),
    (caneria/canerias/tuberia/tuberias/grifo/fontaneria/manguera/desague) (ya/) no (va/van/funciona/funcionan/tira/tiran/corre/corren/abre/arranca/suelta),
    (minutos/rato/horas/media hora/siglos/un buen rato/una eternidad) (sentado/sentada/de pie/parado/parada/) (en el/delante del/frente al) (bano/vater/inodoro/aseo/wc/urinario) y (nada/no sale/no sale nada/ni gota),
    (siempre/siento que/como que/noto que) (me/se me/) queda (algo/mas/pis/pipi/orina) (dentro/por salir/ahi), se me queda (el/la) (pis/pipi/orina) dentro,
    nunca (termino/acabo) de (orinar/mear/vaciar/hacer pis/hacer pipi), (no/nunca) (vacio/se vacia/se me vacia) (la vejiga/del todo),
    (minutos/rato/hora/horas) en el (inodoro/bano/vater/water/wc/retrete) (y/) (nada/ni gota), me (hice/hago) encima, casi no voy al bano, (ya no/no) llego (seca/seco), para no tener accidentes, ganas no me vienen,
    no hay pis, pis (nada/cero/tampoco/ninguno)`,
  'oblique-bowel': `
    no (tengo fuerza/puedo/logro) (para/) pujar, no controlo el ojete, se me va por las patas,
    ni los (gases/pedos) (controlo/aguanto/retengo), (la caca/las heces/el culo) ni (la/lo/las) (noto/siento/controlo),
    me cago de (risa/la risa) (y se/literal/literalmente/de verdad/y de),
    me (cague/cago) en (todo lo que llevaba/toda la ropa), me (cague/cago) en la leche (se me/que se),
    (voy/ando) (suelto/suelta) y no (retengo/aguanto/llego), no (siento/noto) si (ya/) (salio/ha salido), me (hice/he hecho/hago) todo encima, lo de mayores, aguas mayores,
    me (hice/hago) (popis/popo/caca/del dos) (caminando/en/al/sin), (pedacito/trocito/cachito) en (la sabana/el calzon/la ropa/la cama), se me vino todo, no lo pude (sostener/aguantar/retener), me voy ensuciando, me sale (y ya/sin mas/solo/sola) (y/), ganas no me vienen, me (hice/hago) encima, se me (fue/va) (un poco/algo/poquito/un poquito) en (la ropa interior/los calzones/el calzon/la trusa/las bragas)`,
  'oblique-sex': `
    seca y sin ganas, (fracase/fracaso/no funciono/no funcione) con mi (senora/esposa/mujer/novia/marido/pareja), se me murio el (companero/amigo/amiguito/pajarito/muchacho), no cumplo (como hombre/con mi/en la cama), me toco y (como si nada/nada)`,
  'oblique-both': `
    (hoy/ahora) (son/) las dos piernas, me bajo a la otra,
    (ninguna/ninguno) de las dos (piernas/) (me responde/responde/me aguanta/me sostiene/siento/la siento), ninguno de los dos pies (siento/me responde/responde/levanto), ninguna pierna (me responde/responde/me aguanta/me sostiene/siento), ningun pie (me sube/sube/me responde/siento/levanto), en ninguna pierna tengo fuerza, ni la (derecha ni la izquierda/izquierda ni la derecha) (me responde/me responden/responden/las siento/siento/aguantan/me aguantan), nada de fuerza en las dos piernas,
    ni una pierna ni (la/) otra, no (la/lo/las/los/me/) (siento/noto/senti/note) (en/con) (ninguno/ninguna) de (los/las) dos,
    (la/mi) (pierna/) buena (ya/ahora/) (tampoco/no es buena/no esta bien/no esta/ya no/empieza/empezo), (la/mi) (pierna/) sana (ya/ahora/) (tampoco/no esta/ya no/empieza/empezo)`,
  'oblique-weakness': `
    (no tengo/sin/no hay/perdi) fuersa (en/la/el),
    (nada de/ninguna/cero/ni pizca de/ni gota de) fuerza (en/tengo/me queda), fuerza (ninguna/nula/poca o nula) (en/tengo/), fuerza en (el/la/los) (pie/pierna/tobillo/rodilla/dedos/talon/punta) (ninguna/nula/cero/poca o nula),
    (apenas/poco/malamente/a duras penas) (levanto/muevo) (el/la punta del/los dedos del/los dedos de) (pie/tobillo), (pie/pierna/tobillo) (apenas/poco) (sube/se levanta/se mueve/me responde), el pie lo (muevo/levanto) (poco o nada/poco y nada/apenas), (muevo/levanto) (poco o nada/poco y nada) (el pie/los dedos),
    ni (el pie/los dedos/los dedos del pie/la punta del pie) (levanto/muevo/puedo mover/me responde/me responden), ni (mover/levantar) (el pie/los dedos) puedo, ni (puntas/talones) (ni talones/ni puntas/) puedo, ni el pie ni (los dedos/el tobillo) (levanto/muevo/siento/me responden), quiero (mover/levantar) (el pie/los dedos/los dedos del pie) y (nada/no),
    (ni de broma/ni en pedo/ni loco/ni loca/ni agarrado/ni agarrada) (me pongo/me paro/camino/ando) (de/en) (puntillas/puntas/talones), (puedo/hago) todo (menos/excepto/salvo) ponerme de (puntas/puntillas/talones), antes levantaba el pie (y/) ahora nada,
    (que/vaya/pura/mucha/nomas/hoy/hoy fue/fue/neta/q) flojera (total/hoy/mortal/nivel/) (en/de/) (la/las/el/los/mi/mis/esta/ambas) (pierna/piernas/pie/pies/rodilla/rodillas/gemelo/pantorrilla/muslo/tobillo),
    (camino/ando/caminando/andando) (como/como con/como un/como una/como si llevara) (aletas/robot/pinguino/zombi/ciguena/pato/muneco/marioneta/borracho de piernas/chancletas),
    (la/mi/esa) (pierna/rodilla/pantorrilla) (derecha/izquierda/mala/) (no estaba/ya no estaba/no esta ahi/no estaba ahi/desaparecio/dejo de estar),
    (para no/por no) (tropezar/tropezarme/engancharme/arrastrar/arrastrarla) (con/) (la punta/el pie/los dedos/el suelo), (levanto/levantando/subo/subiendo) (mucho/) (la/la otra/) rodilla para (no/que),
    (me/) (tuvieron/tienen/tuvo/tiene) que (levantar/levantarme/sujetar/sujetarme/alzar/alzarme/cargar/cargarme/ayudar a levantar/ayudarme a levantar),
    (la/mi/esa) (pierna/rodilla) no (iba/va/tira/tiraba/anda/andaba/funciona/funcionaba/jala/coopera/hace caso/me hace caso),
    (el/mi/ese) (pie/tobillo) no (iba/va/tira/tiraba/agarra/funciona/funcionaba/coopera/hace caso/me hace caso),
    (sueno/hago) (plof plof/plaf plaf/plas plas/clap clap/chancla) (cuando/al) (camino/ando/caminar/andar), (por el/el/oye el/escucha el) golpe que doy con el pie, (de/la) fuerza (0/cero) (tambien/en), fuerza (0/cero) en (el/ese/la/esa) (pie/pierna)`,
  'oblique-chest': `
    ni respirar puedo, ni aire me entra, apenas me entra (el/) aire, no (doy/camino/subo/hago/ando) (ni/) (dos/tres/diez/veinte/cuatro) (pasos/metros/escalones/peldanos) sin (ahogarme/asfixiarme/quedarme sin aire), (no digo/ni) (ni/) dos palabras (digo/) sin (ahogarme/asfixiarme),
    (cai/me cai/caigo/cayo) (redondo/redonda/a plomo/desplomado/desplomada), me desplome, me he desplomado,
    no jalo aire, (cuajitos/cuajos) (colorados/rojos), se (me/) apago (la luz/luz) (en mi cabeza/en la cabeza), (desperte/despertar/me desperte/amaneci) en (el suelo/suelo/el piso/piso)`,
  'oblique-stroke': `
    (no me acuerdo/no recuerdo/no se) (de/) (donde estoy/que dia es/mi nombre/como me llamo), me confundo y no se, (estoy/ando) (como/todo/) (desorientado/desorientada), no reconozco (mi casa/a mi hija/a mi hijo/a mi mujer/a mi marido/a nadie/mi calle), no me acuerdo de nada de repente,
    (brazo/mano) ni (lo/la) (siento/noto) ni (lo/la) muevo, media cara ni la (siento/noto), no consigo mover nada (el brazo/la mano),
    se me (traba/trabo) la lengua con (los nombres/el nombre) (de repente/desde/de golpe/hoy/de mi/de mis/ahora), (por/de) la comisura, (no me salen las palabras) en (frances/ingles/aleman) ni en (espanol/castellano/mi idioma), hablo mal (el/) (espanol/castellano) (desde/hoy/de repente/de golpe/ahora), me atraganto con (la tortilla/la comida) y con,
    no mano no responde,
    (no/si/listo/hola/gracias/bien/vale/oye/buenas) mano (derecha/izquierda) (dormida/floja/debil/no responde/sin fuerza/torpe/muerta),
    me cai de la silla (al ver/cuando vi) (doble/borroso/negro/todo negro/todo borroso),
    me (atraganto/atragante) (hasta/) con (el agua/la saliva/todo/cualquier cosa),
    se me (cae/escapa/sale) (la baba/el agua/el cafe/la bebida/la comida/el mate/la sopa) (por/de) (un lado/el lado/un costado/una esquina), (babeo/babeando) (por/de) (un lado/un costado),
    (hablo/hablando/sueno) (como/como un/como una/como si estuviera) (borracho/borracha),
    (viendo/veo/veia/vi) solo (la mitad/media), me fui de lado (como/y/al), (pregunto/preguntaron/pregunta) si (habia/estaba/he/venia) (tomado/bebido/bebida/borracho/borracha/tomando)`,
  'oblique-harm': `
    cuiden (a/de) (mi perro/mi gato/mis hijos/mi hija/mi hijo/mi mama) cuando (no este/falte/me vaya), hoy es mi ultimo dia perdon, (ya/) para que vivo, me voy a aventar (al/a la/de/del), yo (ya/) no vuelvo perdon, nadie me va a extranar,
    (ya ni/ni) vivir quiero, ni quiero vivir, ni seguir (viviendo/vivo/viva/aqui) quiero, ninguna gana de (vivir/seguir viviendo/seguir aqui/seguir vivo), (ninguna/ni una) razon para (vivir/seguir viviendo/seguir vivo/seguir viva/seguir aqui/seguir), ningun motivo para (vivir/seguir), nada me ata a (la vida/este mundo/aqui),
    no (voy a/quiero) (molestar/molestarte/molestarles/estorbar/dar guerra/dar la lata) (mas/mucho mas/por mucho tiempo/mucho tiempo mas), (ya no/no) (molestare/sere una carga/estorbare),
    (pronto/ya) (dejare/voy a dejar) de (molestar/ser una carga/estorbar/dar guerra),
    (mire/mirando/mirar) (mucho rato/un rato largo/un buen rato/largo rato) (el puente/las vias/al vacio/el balcon), (de esta semana no paso/no paso de esta semana/de hoy no paso), si no llego (tampoco pasa nada/da igual/mejor), (adonde/a donde/donde) (voy/me voy) no (los/las/lo/la/me) (necesito/hara falta/haran falta), si manana no (contesto/respondo/escribo), que se (acordaran/acuerden) de mi, (he/ya) (vivi/vivido/he vivido) bastante, me tome (diez/doce/quince/veinte/treinta/todas/un monton/unas cuantas) de golpe, me pense lo de volver, (pronto/ya) me dejo a mi, que ampolla (coger/tomar/usar), de vivir no, ganas de vivir (no/ninguna/ya no)`,
}
