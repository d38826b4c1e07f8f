import type { NetSource } from '../../shape.ts'

/** Everyday ways in which the saddle, bladder, bowels and sex show that they fail. */
export const bodyWays: NetSource['words'] = {
  private: `
    abajito, ahi abajito, alla abajito, por abajito, (la/) zona del medio, (por/en) el (centro/medio),
    nacha(/s),
    cachas, partecitas, colita, culito, potito, traserito, pompi(/s), nalguita(/s), pililla, pirulin, pitilin,
    pichula, pico, tula, nabo, pajarito, choro, chorito, rajita, totona, cuchara, almorrana(/s),
    hemorroide(/s),
    donde (va/apoya/apoyo/toca/roza) (el/en el/la/) (sillin/asiento/silla/montura/panal/culo), lo de sentarse,
    lo
    mio, de (la/) cintura para abajo, zona de sentarme, debajo del todo, cara interna, por entre las piernas,
    alrededor del (ano/culo), cachete(/s), ingles`,
  'saddle-said': `
    (asiento/sillin/culo/trasero) (dormido/entumido/adormecido/acorchado/anestesiado/muerto), como si
    (llevara/llevase/tuviera/tuviese/trajera/hubiera) (puesto/puesta/metido/metida/)
    (un/una/el/la) (panal/compresa/toalla/trapo/almohadilla/cojin/pelota/algodon/corcho/gasa/tela),
    (sensacion/sensacion
    como) de (llevar/tener/traer/estar sobre/sentarme en/ir sentado en/ir sentada en/estar sentado en/estar
    sentada en/estar sentado sobre) (un/una/el/la/) (panal/compresa/toalla/trapo/cojin/pelota/bola/globo/algodon/corcho/nube/gasa),
    (como/parece que voy/parece que estoy/como si fuera/como si estuviera/como si me sentara) (sentado/sentada/)
    (en/sobre/encima de) (una/un) (pelota/bola/globo/cojin/nube/corcho/piedra/flotador/hielo/colchon), trapo
    (metido/entre), me siento (en/sobre) (el vacio/la nada), flotando al sentarme`,
  inserted: `
    tampon, copa, supositorio(/s), termometro, enema, lavativa, vibrador, ovulo, penetracion, penetra,
    exploracion, tacto rectal, citologia, la sonda, el dedo`,
  wax: `depil(arme/ar/o/e/acion/aron), cera, (me/) afeit(e/o/arme), cera brasilena, laser`,
  'no-pain': `
    no (me/) (dolio/duele/dolia/ardio/tiro/molesto/picó) (nada/ni/), ni (un tiron/dolor/me dolio/me queje/un
    pinchazo), sin dolor`,
  underwear: `vaquero, costura(/s), elastico, goma del calzon, chandal, licras, calzas`,
  unreal: `
    no (es/era/parece/parecia/fuera/fuese) (la/el) (mia/mio), no (hay/habia) nadie en casa, como (tocar/si
    tocara/tocarle) (a/) (otro/otra/madera/un mueble/la pared/una tabla), epidural, raquidea, novocaina,
    lidocaina, como de muela`,
  numb: `
    epidural, raquidea, novocaina, lidocaina, anestesia de muela, dormidit(o/a/os/as), adormecidit(o/a/os/as),
    entumidit(o/a), acorchadit(o/a), amodorrad(o/a), alelad(o/a), zonz(o/a), abombad(o/a), paspad(o/a),
    atolondrad(o/a), no se despierta, no despierta,
    se me (quedo/quedaron/queda/quedan) (dormid/tont/muert/ida),
    encalambrad(o/a/os/as), apelmazad(o/a), esponja, escayola, yeso, media puesta, calcetin puesto, calcetines
    puestos, un calcetin, una media, un guante, vendado, vendada`,
  'no-feel': `
    (no/ni/ya no/apenas) (hay/habia/tengo/tenia/tiene/queda/me queda) (casi/)
    (tacto/sensacion/sensaciones/sensibilidad/sentido), (no/ni) (capto/aprecio/apreciaba/adverti/advierto), no
    (me/) (llega/llegan) (la senal/senal/las sensaciones/sensacion/nada), cero
    (tacto/sensacion/sensibilidad/sensaciones), nada de tacto,
    ni (me/lo) (entero/entere/noto/note/siento/senti), y
    (cero/nada/como si nada), ni (dolor/cosquillas/las unas/el frio/el calor/el agua), no (me/) (quema/quemo)`,
  push: `
    empuj(o/ar/ando/e/arle), apret(ar/arme/arle/ando/e), aprieto, presion(o/ar/ando), hago fuerza,
    hacer fuerza,
    haciendo fuerza, puj(o/ar/ando), fuerzo, forzar, masaje, masajear(/me), con la mano, con el puno,
    inclinarme`,
  'so-out': `
    (para/pa) (que/q) (me/) (salga/empiece/arranque/baje/venga/vacie/caiga), (para/pa)
    (vaciar/vaciarme/vaciarla/mear/orinar/soltarlo/hacer pis/hacer pipi/expulsar/sacar/sacarla/sacarlo),
    y (apenas/solo/) (sale/salen) (un/unas/tres/cuatro/dos/) (hilito/hilillo/hilo/gotas/gotitas/chorrito),
    y no sale,
    como para parir, como si pariera, como de parto`,
  'out-thing': `bote, barco, coche, carro, auto, banda, aire, sudor, bici, moto, voz`,
  trickle: `
    (sale/salen/salio/salieron/echo/suelto/me sale/me salen/caen/cae) (solo/apenas/nomas/nada mas que/) (un/unas/dos/tres/cuatro/cinco/) (hilo/hilito/hilillo/chorrito/gotas/gotitas/gota),
    (solo/apenas/puras/nomas) (unas/un/cuatro/dos/tres/)
    (gotitas/gotas/hilito/hilillo/chorrito), gota a gota, nunca (se/me) (vacia/vacio/termino), otra vez
    (ganas/con ganas), ganas otra vez,
    (a golpes/a tirones/a trompicones/a chorritos/a cuentagotas/en tandas/por
    partes/a tandas)`,
  dripping: `vaso, se llena, cubo, gotero, suero, grifo, llave, cafe, cafetera, ducha, nariz, techo, ojos, colirio, limon, aceite, lluvia, sudor`,
  'no-urge': `
    ganas (no tengo/ni tengo/ninguna/cero/ni una), no tengo ganas, ni ganas, sin (tener/) ganas, no me
    (dan/vienen/entran/han dado/da) (ni/) (ganas/la gana/las ganas),
    por (costumbre/rutina/reloj/horario/obligacion/si
    acaso), porque toca, con alarma, mirando el reloj, ganas desde, ni me (da/dio/dan) (la/) gana(/s), no me pide,
    no pide, no avisa`,
  pads: `
    panal(/es), compresa(/s), salvaslip(/s), toalla femenina, toallas femeninas, toallita femenina,
    empapador(/es),
    absorbente(/s), proteccion, panales de adulto, panal de adulto, protector de cama, hule en la cama`,
  'pads-why': `
    compre, compro, comprar, comprado, uso, usar, usando, llevo, llevar, llevando, llevaba, ponerme, me pongo,
    me
    puse, pongo, puesto, necesito, tengo que, tuve que, de adulto, goteo, por si, duermo con, salgo con,
    dormir con,
    voy con, ando con, cambio, cambiar`,
  childhood: `(de/cuando era) (nino/nina/pequeno/pequena/chico/chica/crio/cria/chiquito/chiquita)`,
  baby: `
    bebe, hijo, hija, nieto, nieta, nene, nena, regla, menstruacion, periodo, sobrino, sobrina, crio, cria,
    recien
    nacido, peque, sangrado, guagua, nino, nina, padre, madre, abuelo, abuela`,
  undies: `
    calzoncillo(/s), calzon, calzones, braga(/s), bombacha(/s), tanga, ropa interior, la ropa interior,
    calzonarios, cuadros, boxer,
    slip, trusa, pantaleta(/s), chones, muda`,
  'change-often': `
    (me/) cambi(e/o/ado/ando/arme/ar) (de/) (dos/tres/cuatro/varias/muchas/cada) (veces/rato),
    (dos/tres/cuatro/varias)
    veces, (cambie/cambio/cambiar/cambiarme/cambiado) (de/el/la/las/los/), lavar, lave, tire, tirar,
    a la basura,
    mojad(o/a/os/as), humed(o/a/os/as), amarill(o/a/os/as), huele(/n), olor`,
  rush: `
    apreton, apretones, el apuro, la urgencia, retortijon, antes de
    (llegar/abrir/sentarme/bajarme/bajarme los/quitarme/alcanzar/entrar), por el camino, a medio camino,
    en la puerta,
    en el pasillo, ya es tarde, llego tarde, no llego, no llegue, no alcance`,
  slip: `
    se me (va/fue/iba/ha ido/sale/salio/salia/ha salido/escapa/escapo/escapaba/ha escapado/cae/cayo/vino/suelta/solto),
    sale (directo/directa/solo/sola/sin avisar/antes), me (mojo/moje/ensucio/ensucie/mancho/manche)`,
  catheter: `
    sondaron, sondado, sondada, sondaje, sondarme, (me/) (pusieron/poner/puso/colocaron) (una/la/) sonda,
    con sonda,
    cateter, me vaciaron la vejiga, vaciaron la vejiga,
    (sacaron/sacado/drenaron) (casi/mas de/) (un litro/litro y
    medio/medio litro/800/700/900/mil)`,
  'hold-short': `
    (no/ya no/ni) (me/) (puedo/aguanto/logro/consigo) (aguantar/aguantarme/retener/) (ni/mas de) (un
    minuto/un segundo/dos minutos/cinco minutos/medio minuto/nada)`,
  unaware: `perdiendo, voy perdiendo, voy dejando, dejo, dejando, goteando, sin saber, sin saber por que`,
  pee: `pichi, pichin, pipicito, la vejija, bejiga, pipi, uretra, el caño, miccionar, el liquido, aguita`,
  brown: `
    marron, embarrad(o/a/os/as), palomino(/s), zurraspa(/s), regalito, frenazo, liquido marron, cafecito,
    agua sucia,
    plasta, pastel, frenada, sucio, sucia, zurrad(o/a), cagad(o/a), popote`,
  'soil-self': `
    me (obro/obre/zurro/zurre/zurraba/ensucio/evacuo/evacue/defeco/defeque/hice/hago/he hecho/vacie/fui/voy)
    (toda/todo/de cuerpo/) (encima/en los pantalones/en la cama/en la ropa/patas abajo), patas abajo,
    me fui de
    (vientre/cuerpo/varas), me ensucie, me ensucio, obro encima, zurrad(o/a)`,
  woke: `amaneci, amanezco, desperte, me desperte, me levante, me despierto, despierto`,
  smell: `huele, huelen, olia, olor, apesta, peste`,
  behind: `atras, detras, por atras, por detras, ahi atras, abajo, ahi abajo`,
  effort: `para hacer, vater, heces, caca`,
  finger: `con (el dedo/los dedos/un dedo/guante/guantes/la mano), manual, ayudarme, ayudandome`,
  poo: `apreton, apretones, retortijon, el recto, obrar, obro, zurullo, popis, sacar la caca, desahogarme, atracito`,
  'poo-act': `cerrar, empujar, apretar, aguantar, expulsar, sacar(/la/lo)`,
  unable: `
    no (tengo/hay/me queda/tenia/siento) (la/) fuerza(/s) (ahi/alli/) (para/de/pa), sin fuerza(/s) (para/pa),
    no me
    (da/dan) (la/) fuerza(/s) (para/de/pa), no tengo como, no (atino/llego/alcanzo/acierto) a, no me (es
    posible/sale), se me hace (imposible/dificil), se me (dificulta/complica), no doy para`,
  sex: `
    mananera, morcillona, soldado, mi soldado, el amigo, mi amigo, amiguito, penetracion, semen, lefa,
    excit(o/arme/aba),
    calentarme, caliento, eyaculo, hacemos el amor, hicimos el amor, hacerlo con, lo hacemos, lo hicimos,
    intentamos, encamarnos, garchar, garchando, culiando, cachar, singar, coito, acto sexual, faena,
    en plena accion,
    al penetrar, preliminares, besos, intimar, los cariños, morbo, mi vieja, ganas de sexo, vigor`,
  'sex-fail': `
    desaparecio, no (entra/penetro/penetra/sale/prende/enciende/calienta/apetece/llega/me llega/hay forma/hay
    manera/hubo manera/hubo forma), ni que entra, ni pizca, cero, sin fuelle, morcillona, como tocar madera, epidural,
    ni con (pastilla/viagra/ayuda), muert(o/a), se muere, se viene abajo, no aprieto, no aprieta, ni fu,
    de pena, no es
    el mismo, fatal`,
  'sex-said': `
    disfuncion, disfuncion erectil, impotencia, impotente, gatillazo(/s), morcillona, anorgasmia, (no/ya no)
    (la/se/se me) (mantengo/mantiene/aguanta/queda/pone/sostiene/para) (dura/tiesa/firme/parada/tieso/duro/erecta),
    (no/ya
    no) me (excito/caliento/prendo/empalmo/mojo/lubrico/corro), no (siento/noto) (la penetracion/que entra/cuando
    entra/ni que entra), no me (prende/enciende/excita/calienta/pone) nada, no (me/) sale semen, sin (ereccion/erecciones/semen)`,
  climaxing: `acabo, acabe, acabar, termino, me vengo, me vine, me corro, me corri, eyaculo, orgasmo(/s), corrida, venida`,
  'no-joy': `
    sin (placer/gusto/sentir/sentirlo/notarlo/sensacion), apagad(o/a), ni fu ni fa`,
}
