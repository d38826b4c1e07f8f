import type { LexiconSource } from '../shape.ts'
import { figures } from './figures.ts'
import { letBe } from './let-be.ts'

/** How Spanish denies, doubts, supposes and turns a sentence. Accents are folded away, so "sí" and "si" are one. */
export const cues: LexiconSource['words'] = {
  no: `
    sin (sentir/notar) nada (raro/rara/distinto/extrano/anormal/malo/nuevo) (en/al/), (ninguna/ni una/ni una sola/sin/cero) sensacion (de/rara/extrana/distinta/nueva) (en/al/con/por/), (no/tampoco) (tengo/hay/he tenido/tuve) nada, no, sin, ni, tampoco, ningun, ninguna, ninguno, nada de,
    cero, niega, niego, jamas, nunca, libre de, (no/tampoco/nunca) (tengo/hay/tuve/he tenido/habia/tenia)
    (ningun/ninguna/ninguno/nada de/ni/mas/nada raro en), (no/tampoco/nunca) (noto/siento)
    (ningun/ninguna/ninguno/nada de/mas/nada raro en), (no/tampoco/nunca) (tengo/hay/tuve/he tenido),
    (no/tampoco/nunca) (noto/siento/veo/he notado/he sentido/hay/tengo/note/senti) nada (raro/rara/extrano/nuevo/malo/distinto/anormal/diferente/preocupante) (en/por/con/al/de/), sin
    (ningun/ninguna/nada de/rastro de/senales de/signos de), sin
    (problema/problemas/dificultad/dificultades/molestias/cambios/cambio) (para/con/de/en/al), ni
    (siquiera/hay/tengo), no tengo (problema/problemas/dificultad/dificultades/cambios/molestias)
    (para/con/de/en/al), ausencia de, nada nuevo en, (ni/sin/) nada (raro/rara/extrano/malo/anormal/distinto) (en/al/con/por/), (ni/sin) nada nuevo (en/al/con/por/),
    sin nada (en/por), (nada de/sin/ni/no tengo/no hay) (sensaciones/cosas) (raras/extranas) (en/al/), negativo (a/en/de)`,
  not: `en ningun momento, ni una vez, ni una sola vez, no es que (tenga/sienta/note/haya), no estoy, no esta, no estan, no es, no son, no he, no ha, no han`,
  nil: `(no/tampoco) me (duele/duelen/molesta/molestan), no, nada, nunca, ninguno, ninguna, negativo, nop, nope, para nada, en absoluto, ausente, nel`,
  double: `ni, sin, ni siquiera, nada de`,
  unsaid: `
    no (solo/solamente/es que/es solo/se que/se por que/se porque/se xq/mejora/mejoro/ha
    mejorado/cambia/cambio/ayuda/ayudo/sirve/es broma/miento/exagero), no (se me/se/me)
    (quita/pasa/va/calma/ha quitado/ha pasado/quito/paso/ayuda), no desaparece, no para, no deja de, no
    (quiero/quisiera/queria) (alarmar/molestar/preocupar/asustar/decirlo/ser exagerado), no te
    (preocupes/asustes), no me gusta decirlo, no se como decirlo, no te lo (dije/he dicho), no dije nada, no
    lo habia dicho, no veas, de la nada, no (muy/tan/como antes/obstante), no (dormi/duermo/he dormido),
    no es lo mismo, no (bien/muy bien/tan bien/hoy/mucho), ninguna (hoy/sesion/hecha/todavia), (no/nunca) (me) (paso/habia pasado/ha pasado/pasaba) (nunca/jamas/esto/antes/algo asi/), nunca (tuve/senti/he tenido/he sentido/habia tenido) (esto/algo asi/nada igual/nada asi),
    no esperaba, no me lo esperaba, no sabes, sin (darme
    cuenta/enterarme/querer/sentirlo/notarlo/avisar/parar/embargo/sentir/dormir/cambios/mejoria/mejorar/duda/ganas),
    no (puedes/podes) (creer/imaginar), no hay duda, sin duda, sin lugar a dudas, sin (problema/problemas) con (los/mis/las/) (ejercicios/sesiones/series/flexiones), sin (energia/energias/tiempo/quejas/novedad/novedades), no hay (gimnasio/gym/sesion/sesiones/clase/entreno/entrenamiento), ninguna hecha, nada especial, no me dolio, sin (motivo/razon/motivos/causa/explicacion/exagerar/mentir) (alguno/alguna/aparente/ninguno/ninguna/), nada mas, no me imagino, nada mejor`,
  unfelt: `
    (no/tampoco/ni/nunca) (siento/noto/note/senti/sentia/notaba/he sentido/he notado/percibo/aprecio/observo/veo/vi/he visto) (ningun/ninguna/nada de/mas/)`,
  'felt-word': `
    hinchazon, hinchazones, escape, escapes, fuga, fugas, goteo, goteos, fiebre, escalofrios, mareo, mareos, debilidad, perdida de fuerza, falta de fuerza, flojera, corriente, corrientes, descarga, descargas,
    enrojecimiento, calor, problemas, problema, dificultad, dificultades, cambios, cambio, alteracion, alteraciones`,
  'deny-all': `
    (no/tampoco/) (tengo/hay/he tenido/tuve/he notado/noto/siento/he sentido/me pasa/me ha pasado/me paso/me ocurre/presento/sufro/veo/) (nada/ninguno/ninguna/ni uno/ni una) de (todo/) (eso/esto/ello/ellos/ellas/esos/esas/estos/estas/esas cosas/estas cosas/esas cosas raras/esos sintomas/los sintomas/las cosas/las senales/esas senales/lo anterior/los anteriores/las anteriores/la lista/lo demas),
    (no/tampoco/) (tengo/hay/he tenido/he notado/noto/siento/me pasa/) (nada/ninguno/ninguna) de (lo/las cosas/los sintomas/las senales/todo lo) que (preguntas/dices/pones/mencionas/nombras/describes/me preguntas/me dices/pone/pregunta/dice/has puesto/has dicho/preguntais/preguntan) (ahi/aqui/arriba/),
    (no/negativo/nada/ninguna/respuesta no/un no) a (todo/todas/todos/cada una/cada uno/lo demas) (eso/esto/ellas/ellos/esas/esos/las preguntas/lo que preguntas/las senales/),
    a (todo/todas/todos) (eso/ellas/las preguntas/) (que/digo/respondo/contesto/le digo/) no, (todo/todas/todos) (negativo/negativas/negativos), (todo/todas/todos) que no, de (todo/) (eso/esto/ello) (nada/ninguna/cero),
    ninguna cosa de (esas/estas), no me pasa ninguna,
    (ninguna/ninguno/ningun) de (esas/esos/estas/estos/ellas/ellos/ello/eso/las anteriores/los anteriores/la
    lista/las senales/los signos/los sintomas/lo anterior/esas cosas/esos sintomas/esas senales), nada de (lo otro/lo demas/todo eso/todo
    lo demas/todo lo otro/lo que preguntan/lo que dices), (de/) (todo eso/todo esto/lo otro/lo demas/todo lo demas/lo de
    la lista) (nada/ninguna/ninguno/cero/todo normal/todo bien/normal/negativo), nada de
    (eso/esto/ello/lo anterior/la lista/lo de la lista/lo que preguntas/esas cosas), sin
    (senales/signos/sintomas/senal/banderas rojas), sin (senales/signos/sintomas) de
    (alarma/alerta/urgencia/peligro), (ninguna/ningun/cero/no hay/no tengo/no hay ninguna/no tengo ninguna/no
    tengo ningun/no hay ningun) (senal/senales/signo/signos/sintoma/sintomas) (de/)
    (alarma/alerta/urgencia/peligro/), (no tengo/no hay/no/tampoco tengo) (nada de eso/nada de esto/ninguno de
    esos/ninguna de esas/ninguno de estos/ninguna de estas/ninguno de ellos/ninguna de ellas/nada de la
    lista), (no/no tengo/no hay) (ningun/ninguno/ninguna) de (los/las/esos/esas/estos/estas)
    (sintomas/senales/signos/cosas), no a todo, todo no, todo negativo, todas no, senales no, senales ninguna,
    ni una (senal/de esas), ni uno de (esos/estos)`,
  contrast: `
    pero, excepto, salvo, aunque, sin embargo, en cambio, no obstante, solo que, salvo que, excepto que, eso si, lo unico, lo
    unico es que, nomas que, no mas que, sino, por desgracia, lamentablemente, a pesar de, pro, xo, lo que si, ahora bien, lo malo es
    que, lo raro es que`,
  ender: `
    porque, xq, pq, porq, ya que, desde, cuando, cdo, mientras, hasta, antes, despues, luego, entonces, que,
    q, ahora, ademas, tambien, tb, tmb, de repente, de golpe, empezo, ha empezado, hay, si, solo, donde`,
  and: `y, e, mas, ademas de, asi como, tanto, junto con`,
  restart: `
    (me/se me/se me ha/me ha) (hormiguea/hormiguean/cosquillea/cosquillean/duele/duelen/arde/arden/quema/queman/falla/fallan/duerme/duermen/escapa/escapan/sale/va/cae/dobla/afloja/aflojan/cuesta/falta/aprieta), noto, siento, tengo, estoy, yo, me, se me, no puedo, no noto,
    no siento, controlo, lo controlo, la controlo, meo, orino, cago, hago, voy, llevo, ando, ahora, hoy, desde, perdi, he, cuando`,
  verb: `
    hago pis, hago pipi, hago caca, hago popo, hice pis, hice pipi, hice caca, orino, orine, meo, mee, cago, cague, se paro, se para, se ha parado,
    duele, duelen, arde, arden, quema, queman, pica, pican, late, laten, hormiguea, hormiguean, cosquillea, cosquillean,
    me (duele/duelen/arde/arden/quema/queman/pica/pican/hormiguea/hormiguean/cosquillea/cosquillean/tiembla/tiemblan),
    empezo, ha empezado, empiezan, empieza, empezaron, se hincha, tiembla, tiemblan, es, son, esta, estan, llega,
    llegan, sale, salen, va, van, era, eran, estaba, estaban, se va, se queda, queda, quedo, cuesta, tarda, se corta`,
  or: `ni, o, u, ni tampoco, o bien`,
  except: `excepto, salvo, menos, aparte de, quitando, fuera de, a excepcion de`,
  filler: `
    (es/seria/sera/) normal (que/el/tener/sentir),
    como si (hubiera/hubiese/tuviera/sintiera/notara/perdiera/pasara/empezara/llegara), el, la, los, las, un,
    una, unos, unas, lo, al, del, de, a, en, por, para, con, se, me, te, es, son, esta, estan, estoy, era,
    sigue, siguen, ha, he, han, hay, tengo, tiene, tuve, siento, noto, muy, mas, bastante, algo, un poco,
    poco, poquito, tan, todo, toda, todos, todas, raro y, medio, como, hacia, sobre, alrededor, zona, parte
    de, parte, lado, izquierdo, izquierda, derecho, derecha, nuevo, nueva, nuevos, nuevas, ya, esa, ese, eso,
    este, esto, ese lado, hoy, ahi, alli, aqui, ningun, ninguna, ningun tipo de, tipo de, control de, control,
    funcion, ir, hacer, tener, siendo, sigo, nocturno, completamente, totalmente, realmente, ultimamente,
    funciona, funcionan, va, van, cada, vez, otro, otra, algun, alguna`,
  fine: `
    bien, normal, normales, ok, okey, okay, oki, perfecto, perfecta, perfectos, perfectas, perfectamente, todo
    bien, sin problema, sin problemas, como siempre, todo normal, en orden, sano, sana, genial, estupendo, de
    maravilla, igual que siempre, bajo control, controlo, controlo bien, lo controlo, las controlo, los controlo, la controlo, con normalidad, normalmente, sin novedad, sin novedades, sin
    cambios, sin cambio, correcto, correctamente, al 100, joya, chevere, de lujo, intacto, intacta, igual, geniales, fenomenal, fenomenales, estupendas, estupendos, de diez, 👍`,
  rest: `(todo/) (lo demas/lo otro), el resto (de cosas/), (las/los) demas (cosas/senales/), todo el resto, por lo demas`,
  manner: `bien, normal, normalmente, del todo, como siempre, correctamente, como antes, con normalidad`,
  odd: ``,
  me: `
    mejor si yo no, mejor sin mi, (estarian/estaran/estaria) mejor sin mi, mejor si yo no
    (estuviera/existiera/estoy), casi me, casi me caigo, me caigo, me cai, se me, no duermo, lo arrastro,
    ando, hago, he dejado, deje, yo, mi, mis, me, mio, mia, conmigo, tengo, siento, noto, estoy, a mi, llevo,
    tuve, sufro, no puedo, no siento, no noto, no me siento, perdi, arrastro (el pie/la pierna/los pies), no
    aguanto, no consigo, no logro, he, tropiezo, pierdo`,
  own: `mi, mis, mio, mia, tengo, siento, noto, llevo, estoy, yo`,
  person: `
    (a/de/con/) (mi/mis/un/una/el/la/los/las/su/al/otro/otra/tu/nuestro/nuestra)
    (portero/arbitro/notario/torero/delantero/elefante/abuelos/nietos/sobrinos/padres/suegros/clientes/alumnos/companeros/vecinos/bb/sobri/pana/roomie/comadre/compadre/yayo/yaya/abue/papi/mami/yerno/nuera/ahijado/ahijada/cachorro/cachorra/perrito/perrita/gatito/gatita/peque/peques/nene/nena/crio/crios/padre/madre/papa/mama/hermano/hermana/hermanos/hijo/hija/hijos/marido/mujer/esposo/esposa/novio/novia/amigo/amiga/amigos/vecino/vecina/abuelo/abuela/tio/tia/primo/prima/jefe/jefa/companero/companera/colega/suegro/suegra/cunado/cunada/sobrino/sobrina/nieto/nieta/perro/perra/gato/gata/pareja/chico/chica/cliente/clienta/senor/senora/nino/nina/bebe/viejo/vieja/ex/conocido/conocida/pololo/polola/timonel/presidente/profesor/profesora/alumno/alumna/entrenador/entrenadora/remero/remera/compa/camarero/camarera/medico/enfermera/profe),
    (una/un/mi/el/la) (clienta/cliente/amiga/amigo/vecina/vecino/companera/companero/prima/primo/tia/tio/colega/senora/chica/conocida/conocido) me (conto/dijo/ha contado/explico) que (tuvo/tenia/perdio/no podia/se le/estuvo),
    alguien, otra persona, otras personas, otra gente, la gente, mi viejo, mi vieja`,
  third: `
    que (su/la dejo/lo dejo/le dejo/le paso/le dio/tuvo/ella/el tiene/el no/le duele/le operaron/la
    operaron/lo operaron), ella, ellos, ellas`,
  report: `
    (tropece/tropiezo/choque/me tropece/tropezar/enrede/me enrede/me resbale/jugando/jugue/corriendo) con
    (el/la/mi/un/una) (perro/perra/gato/gata/nino/nina/bebe/hijo/hija/nieto/nieta),
    (saco/saque/sacando/sacar/paseo/pasee/paseando/pasear/llevo/lleve/llevar/llevando/cargo/cargue/cargar/cargando/levanto/levante/levantar/alzo/alce/alzar/alzando/cojo/coger/cogi/recojo/recoger/recogi/cuido/cuidar/cuidando/visito/visitar/llamo/llamar/llame/pido/pedi/pedirle/ayudo/ayudar/acompano/persigo/perseguir/beso/abrazo/jugando
    con/juego con/por culpa de/gracias a/delante de/ayuda de/sujeto de/apoyado en/apoyada en/agarrado
    a/agarrada a) (a/al/a la/del/el/la/) (mi/mis/un/una/el/la/)
    (padre/madre/papa/mama/hermano/hermana/hijo/hija/hijos/marido/mujer/esposo/esposa/novio/novia/amigo/amiga/amigos/vecino/vecina/abuelo/abuela/suegro/suegra/sobrino/sobrina/nieto/nieta/nene/nena/perro/perra/gato/gata/pareja/chico/chica/nino/nina/bebe/viejo/vieja/pololo/polola),
    me (llamo/pregunta/pregunto/mira/miro/vio/ve/dice/dijo/comenta/comento/senalo/ayudo/ayuda/aviso/avisa/ha
    dicho/han dicho/ha visto/encontro/recogio/cogio/trajo/llevo/lleva/sujeta/sujeto), noto que, nota que, se
    dio cuenta, comenta, comento, jura, asegura, ve que, vio que, ha notado, han notado, se fijo, senala, ha
    visto, me rie, se rie, tiene que (ayudarme/sujetarme/levantarme/cargarme), con la ayuda de, con
    (mi/mis/un/una/el/la)
    (padre/madre/papa/mama/hermano/hermana/hijo/hija/marido/mujer/esposo/esposa/novio/novia/amigo/amiga/companero/companera/pareja/familia),
    a casa de mi
    (padre/madre/papa/mama/hermano/hermana/hijo/hija/marido/mujer/esposo/esposa/novio/novia/amigo/amiga/companero/companera/pareja/familia),
    en casa de mi
    (padre/madre/papa/mama/hermano/hermana/hijo/hija/marido/mujer/esposo/esposa/novio/novia/amigo/amiga/companero/companera/pareja/familia),
    dice, dicen, dijo, dijeron, cree, piensa, opina, me dice, me dijo, me ve, me vio, me noto, notaron, vio,
    me pregunta, pregunto, insiste, (tuvo/tiene/tuvieron/tienen) que (cambiar/lavar/limpiar/cambiarme/lavarme/limpiarme/secar/recoger), tuvo que ayudarme, me ayuda, me ayudo, me llevo, me trajo, me encontro`,
  'my-turn': `(le paso/le pasa/tuvo/tenia/tiene/le ocurrio/le dio) (lo mismo/esto/eso/algo parecido/igual) y, (y/pero/asi que) (ahora/hoy/ultimamente/de repente/desde)`,
  like: `
    igual que, como a, lo mismo que, como mi, contarle, decirle, le dije, le conte, decirselo, contarselo`,
  supposed: `
    (que/cuales) (sintomas/senales/signos/cosas) (de vejiga/de la vejiga/) (tendria/tenia/tengo/debo/deberia/hay/habia/habria) (que/) (vigilar/mirar/avisar/preocuparme/tener en cuenta), (tendria/habria) que (vigilar/estar atento/estar atenta/fijarme en/preocuparme por),
    (que/) (vigilara/vigilase/vigile/vigilemos/observara/este atento a/este atenta a/estuviera atento a/estuviera atenta a/me fijara en/me fije en) (si/),
    como (se/sabria/puedo saber/podria saber) si, (puede/pueden/podria/podrian) (ir/afectar/pasar/dar/causar/llegar/provocar/producir),
    si (se me/me) (duerme/durmiera/durmiese/adormece/entumece/hormiguea) (el/la/los/las/un/una),
    pongamos que, supon que, suponiendo que, algun dia, el dia que, si un dia, llegado el caso, si algun dia,
    por si (un dia/algun dia/alguna vez/me pasa/me
    pasara/pasa/pasara/aparece/apareciera/pierdo/perdiera/empiezo/empezara), en que (debo/deberia/tengo
    que/hay que/me tengo que) fijarme, en que me (fijo/tengo que fijar/debo fijar), fijarme (en/si), de que
    (debo/deberia/tengo que) (estar/preocuparme/cuidarme), a que (debo/deberia/tengo que) estar, (que/y que/q)
    (pasa/pasaria/hago/hacer/debo hacer/tengo que hacer/haria/ocurre/sucede) (si/cuando),
    (preocuparme/preocuparse/alarmarme/avisar/avisarte/aviso/avise/llamar/llamo/escribir/preocupar/ir al
    medico/ir a urgencias/atento/atenta/pendiente) (si/por si/a si/de si/cuando), si (algun dia/alguna
    vez/llego a/llegara a/llegase a/empiezo
    a/empezara/empezase/pierdo/perdiera/tuviera/notara/sintiera/aparece/aparecen/apareciera/me
    pasara/pasara/hubiera), en caso de, en el caso de, hipoteticamente, supongamos, podria llegar a, debo
    (vigilar/estar atento/estar atenta/estar pendiente/mirar/preocuparme por), tengo que (vigilar/estar atento
    a/estar atenta a), estar (atento/atenta/pendiente) (a/de/por), estare (atento/atenta/pendiente) (a/de), te
    (aviso/avisare/avisaria) si, cuando (debo/deberia) (llamar/preocuparme/ir), no vaya a ser, no sea que`,
  worried: `
    me (preocupa/asusta/da miedo/aterra/angustia/preocuparia) (perder/tener/acabar/quedarme/llegar a/no
    poder/que pueda/que pueda perder/que vaya a/que llegue/que me pase/que pase/que se me pase/que
    aparezca/que me quede/terminar/hacerme/volver a), (preocupado/preocupada) (por/de)
    (perder/tener/acabar/quedarme/si/lo que lei/lo que he leido), miedo (a/de) (perder/tener/que pueda/que
    me/que se me/quedarme/acabar/no poder/hacerme/volver/que pase/que vaya/que llegue), temo
    (perder/tener/acabar/quedarme/que pueda), dicen que (puede/pueden/podria), que son (los/las)
    (senales/sintomas/signos/banderas), que es (la/el/lo) (silla de montar/cauda equina/cola de
    caballo/sindrome/pie caido/incontinencia/retencion), (es verdad/es cierto) que (puede/pueden/se
    puede/podria/uno), imagina, imaginate, imaginemos, me preocuparia (que/), temo, temor a, lei que, lei
    sobre, lei, he leido (que/sobre/), leyendo sobre, vi un video, vi en internet, escuche que, oi que, que
    significa, que quiere decir, a que te refieres con, riesgo de, peligro de, puede
    (causar/provocar/producir/dar), puede llevar a, podria causar, evitar, prevenir, me preguntaste (ayer/hoy/antes/el otro dia/)
    (por/si/sobre), (por que/pq/xq) (preguntais/preguntan/preguntas/me preguntas) por, (lista/folleto) (que me disteis/esa) habla de, preguntas por, preguntas si, pregunta sobre, pregunta por, pregunta de, el formulario, la
    lista, folleto, articulo, google`,
  uneasy: `
    si no (puedo/consigo/logro),
    me (preocupa/asusta/da miedo/angustia/aterra/inquieta/alarma), (preocupado/preocupada) (por/de), tengo
    miedo (de que/que), miedo (de que/a que)`,
  asking: `
    que (significa/quiere decir), por que (preguntas/me preguntas/preguntais/preguntan/hay que), para que
    preguntas, (puede/pueden/podria/podrian)
    (causar/provocar/producir/dar/afectar/ser/llegar/esto/el/la/una/un), (como/cuando) (se/sabria/sabre/puedo
    saber/debo/deberia/hay que), (puedo/podria) (perder/acabar/quedarme/tener/terminar), y si, y q si, debo,
    deberia, cual, cuales, se puede, sirve`,
  admitted: `
    (es/eso es/justo/es justo/exactamente/es exactamente) lo que (me esta pasando/me pasa/me ocurre/siento/tengo/noto),
    yo (tambien/lo tengo/tengo lo mismo/igual), a mi (tambien me pasa/me pasa/me pasa lo mismo), y (lo
    tengo/tengo lo mismo/tengo eso/eso tengo/me pasa), es lo que (tengo/me pasa), me pasa (lo mismo/eso/a mi),
    tengo (lo mismo/eso/eso mismo), (pues/la respuesta es/le dije que/dije que/conteste que) si, y asi es, ahora yo, justo lo que me pasa`,
  idiom: `
    me da flojera (pero/hoy/entrenar/levantarme/ir), se me olvida respirar (en la plancha/cuando hago fuerza/al levantar), me rindo con (el trafico/el video/la banda), ya no quiero mas (lluvia/cafe/remo/frio/calor/tarea/trafico), ya no aguanto a mi (jefe/jefa/vecino/suegra/hermano),
    (voy a/quiero) tirar la (colchoneta/esterilla/silla) vieja, los talones van (pegados/juntos/apoyados), el pecho va (abierto/cerrado/hacia afuera/hacia arriba), chocamos los botes, (fue/estuvo) de infarto,
    deje las pastillas hace, me despedi de la oficina,
    (no quiero/no queremos/no pienso/no aguanto) (vivir/convivir) con mi (suegra/suegro/suegros/ex/cunado/cunada),
    (irme/irnos/me voy/nos vamos) de (vacaciones/viaje/fiesta/camping/excursion/finde/fin de semana/compras/copas), la de la (madrugada/tarde/manana),
    ${figures},
    ${letBe},
    se me cayo (un/una/el/la/mi) (plato/vaso/taza/movil/telefono/celular/libro/botella/caja/mando/huevo/pan/pesa/mancuerna) al (suelo/piso/agua),
    (accidente/choque) (de/en) (la/el) (autopista/carretera/autovia/ronda/avenida/puente/calle/periferico/m30) (me hizo/hizo/retraso/me retraso/provoco/causo/nos retraso/tenia/corto),
    (carrera/marcha/dia/lucha/asociacion/gala/campana/charla/investigacion) (contra el/del/de la lucha contra el/sobre el/mundial contra el/mundial del) cancer,
    (carta/cita/prueba/pruebas/invitacion/kit/cribado/screening/revision) (del/de/para el) (cribado/screening/deteccion/prevencion) (del/de/de la/) (cancer/cancer de colon/cancer de mama),
    (cribado/prueba/pruebas/screening/deteccion/prevencion) (del/de) (cancer/cancer de colon/cancer de mama/cancer de cuello/cancer de prostata),
    (mareado/mareada) de (dar vueltas/tanto girar/tanta vuelta/la risa/leer/la noria/jugar/la montana rusa/bailar),
    dolor de (barriga/tripa/estomago/panza/guata) (por/de/tras/despues de) (comer/cenar/tanto/tanta/demasiado/demasiada/un atracon/empacho/la cena/la comida/el picante/cenar/beber),
    (banda/cinta/correa/sensor/goma) (del/de/para el) pecho, me cago en (la/el/los/las/todo/diez/dios/mi/tu/la leche/la mar),
    (tobillo/rodilla) (flojo/floja/debil/inestable) (de/por/desde) (un/una/el/la/aquel/aquella) (esguince/torcedura/lesion) (viejo/vieja/antiguo/antigua/de hace anos),
    (estoy/estaba/estar/estuve/estando/rato/horas/tiempo/quede/quedo/quedarme/paso/pase) parada (en/de pie/frente/delante/mucho/todo/esperando/junto/al/a la/con/sin), de estar parada,
    (horas/rato/dia/manana/tarde/noche/turno/tiempo) (de pie/) parada, parada (de/del) (bus/autobus/metro/tren/tranvia/taxi/guagua/colectivo/micro),
    se me (cae/cayo/caia/caera) la cara de (verguenza/pena),
    (me/se me/le/nos) (rompe/rompio/parte/partio/rompia/partia/encoge/encogio) el (corazon/alma),
    fiebre (del/de los/de/por el/por los/por) (sabado/sabado noche/viernes/oro/compras/rebajas/mundial/carnaval/futbol),
    pulso (del/en el/de mi/con el/que marca el) reloj, pulso en reposo, por el pulso, (tomar/tome/tomo/medir/midio/mide/medi) el pulso,
    (a/por la/en la) mitad (del/de la/de un/de una/de) (video/camino/sesion/ejercicio/pelicula/partido/entreno/entrenamiento/serie/clase/semana/turno/reunion/rutina/comida/capitulo),
    (siento/noto) (todo/bien/todo bien/perfectamente) (ahi abajo/alla abajo/por ahi abajo/ahi/al limpiarme),
    piernas (cansadas/cargadas/pesadas) de (caminar/andar/correr/remar/pedalear/trabajar/subir/bailar/estar de pie),
    (por/de) (dormir/apoyarme/dormirme/acostarme/tumbarme/apoyar) (encima/sobre el/sobre la/sobre/en mala postura),
    se me duerme (el pie/la pierna) (si/cuando) me siento encima, (me caigo/me cai/cai/caigo/caimos/cayendo) de (la/) risa,
    (por/al/de/de tanto/) (cruzar/cruce/cruzaba/cruzando) las piernas, (con las/las/) piernas cruzadas,
    (ya no/no) (siento/tengo/noto) (nada de/ningun/apenas/mas) dolor,
    hace (30/31/32/33/34/35/36/37/38/39/40/41/42/43) grados,
    piernas (cansadas/cargadas/pesadas) (del/de la/por el/tras el/despues del) (turno/partido/trabajo/dia/paseo/viaje/gimnasio/caminata/excursion/baile/futbol),
    corazon a mil (con/por/viendo/en/de), (35/36/37/38/39/40/41/42) grados (en la calle/a la sombra/fuera/afuera/de calor), (duele/dolia/dolio/duelen) (la/el) (tripa/barriga/costado/pecho/estomago) de (tanto/la/) (reir/reirme/risa),
    (rei/reia/rio/reir/risa) (tanto/mucho) (que/) me (duele/dolia/dolio) (el/la) (pecho/tripa/barriga/costado), (dolor/dolores) de (la/) regla,
    (rio/reia/reimos/rei/risa/reir) (tanto/tan fuerte/mucho) que (casi/por poco) me (hago pis/meo/hago pipi/orino/hice pis/mee),
    (casi/por poco) me (hago pis/meo/hago pipi/orino) (de la risa/de risa/riendo),
    piernas (cansadas/cargadas) (del/de/por/tras/despues de) (la/el/las/los/tanto/remar/correr/andar/nadar/entrenar),
    corazon (contento/alegre/roto/partido/lleno), se me (va/baja/corre) (por la/la) pierna (abajo/entera), (se me/me) va pierna abajo,
    me di un bano, bano (caliente/de agua/de agua caliente/de sol/turco/de espuma),
    no (encuentro/tengo) (las/) palabras
    para, no tengo palabras, no (veo/abre/puedo ver/pude ver/vi/encuentro)
    (el/los/tu/su/la) (video/videos/enlace/boton/mensaje/correo/link/ejercicio/foto/archivo/app/plan),
    se me fue la luz,
    (casi/) me (meo/mee/meaba/orine/he meado) de (la/) (risa/miedo), vacuna de la gripe, dia de pecho, cuesta menos, me cuesta menos,
    me quiero morir de (la/)
    (verguenza/risa/hambre/sueno/calor/pena/envidia),
    no aguanto mas (el trabajo/a mi jefe/el calor/el frio/a los
    ninos/la oficina/el trafico), me sento mal (el/la/algo/del estomago/al estomago), cafe me sento mal, (con/por la/sin)
    anestesia, rodilla (suena/cruje), me (suena/suenan/cruje/crujen) (la/las/los)
    (rodilla/rodillas/huesos/tobillos),
    (vi/vimos/hubo/habia/paso/presencie) un (accidente/choque/golpe/atropello), no (noto/siento)
    (mucha/mucho/gran/ninguna/ningun/casi/apenas/tanta)
    (diferencia/mejoria/mejora/cambio/cambios/avance/alivio), (me
    muero/muero/muerto/muerta/muertos/morir/morirme/morirse/me morire/me moria/muriendo/muriendome) de
    (risa/hambre/sed/sueno/cansancio/verguenza/calor/frio/ganas/envidia/aburrimiento/miedo/la
    risa/pena/nervios/gusto/amor/curiosidad), estoy muerto, estoy muerta, (me/nos/te) (mata/matan/mato/estas
    matando/esta matando), este dolor me mata, dolor me esta matando, me mata de, me vas a matar, me va a
    matar, para matarme, (el/del/este/un/cada/otro) ano (pasado/que
    viene/nuevo/proximo/anterior/entero/siguiente), este ano, un ano, del ano pasado, cada ano, fin de ano, me
    (quede/he quedado/quedo) (dormido/dormida), dormido en el sofa, medio dormido, medio dormida, sigo
    dormido, recien levantado, peso muerto, punto muerto, pecho (al suelo/pegado/apoyado/en el
    suelo/abajo/arriba/abierto), el pecho (al suelo/pegado/apoyado/en el suelo), rodillas al pecho, rodilla al
    pecho, abrir el pecho, pie de la letra, boca abajo, boca arriba, cara a cara, cuesta arriba, cuesta abajo,
    echar una mano, mano a mano, segunda mano, vista previa, hasta la vista, la vista al frente, me
    (caigo/cai) de (sueno/cansancio), me cae bien, me cayo bien, se me cae la baba, se me cayo el
    (movil/telefono/celular), me parto el culo, romperme el culo, hacer cola, haciendo cola, de paso, se me
    fue el santo, se me fue el (tiempo/dia/finde/rato), se me fue la hora, no puedo (manana/hoy/el lunes/el martes/el
    miercoles/el jueves/el viernes/el sabado/el domingo/esta tarde/esta noche/esta
    semana/ahora/ir/quejarme/ayer), no pude (hacer/hoy/ayer/entrenar/ir/completar/terminar), no puedo mas de
    (contento/contenta/alegria), no puedo (hacer/entrenar/quedar/hablar ahora), no me siento con ganas, no
    (siento/noto) (dolor/dolores/molestia/molestias/diferencia/cambio/cambios/mejora/mejoria), no siento (mucho/apenas/nada de) dolor, sin sentir dolor`,
}
