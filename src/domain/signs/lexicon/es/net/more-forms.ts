import type { NetSource } from '../../shape.ts'

/** Further places, verbs and images, by the way in which a sign shows itself. */
export const moreForms: NetSource['words'] = {
  both: `ninguna pierna, ningun pie, una y otra pierna`,
  'waist-down': `ninguna pierna, ningun pie`,
  private: `
    (la/esa/mi/) parte de (sentarme/sentarse/debajo/en medio),
    (lo/la parte/parte) de dentro (del muslo/de los muslos/de las nalgas),
    hacia el medio, donde termina la espalda, donde se juntan las piernas, donde empiezan las piernas,
    entre ano y, entre los testiculos y el ano, el
    canal, canalillo, el tesoro, la flor, ahi mismo abajo, la zona del bikini, zona del slip,
    zona de la braga, zona del calzoncillo, zona bikini`,
  sitting: `la tapa, tapa, bancada, carro del bote, banca, asiento del coche, sillita, pupitre, cuero del asiento, madera del banco`,
  numb: `acolchad(o/a), enguatad(o/a), forrad(o/a), con espuma, como con espuma, encerad(o/a), plastificad(o/a), embalsamad(o/a), engomad(o/a), atrofiad(o/a), petrificad(o/a), congelad(o/a)`,
  trickle: `
    no (baja/sale/cae/viene/echo/suelto) (ni una/ni/casi/) (gota/gotas/nada), ni (una/media/) gota,
    (horas/rato) de ganas y nada, ganas y nada`,
  pee: `hacer aguas, achicar, la meadera, hacer la primera, mi pis, de pis, lo liquido, el uno`,
  'pee-fail': `
    esfuerzo, eternizo, me eternizo, (rato/ratos) largo(/s), un siglo, mil anos, como grifo (roto/cerrado),
    se resiste, vergonzos(o/a),
    timid(o/a), tanda(/s), plazos, en dos veces, cuesta que salga, con retraso, va cuando quiere,
    por su cuenta, sin que yo, no obedece, sin sentirlo`,
  poo: `el cuerpo no avisa, mi cuerpo no avisa, lo de cagar, estomago suelto, cagaleras, tripa suelta, la cosa gorda, hacer lo gordo, las tripas`,
  'poo-fail': `se me va todo, todo afuera, todo fuera, no avisa, sin pedir permiso, se me (cae/cayo/caen), huelo, apesto, me ensucio, me (he/) manchado, chorrea, por la pierna, pierna abajo`,
  'soil-self': `me (he/) manchado (de caca/por detras/por atras/dos veces/tres veces/varias veces), me ensucie (durmiendo/dormido/sin), me he (ensuciado/cagado/zurrado)`,
  'sex-said': `
    no (siento/noto) a mi (marido/mujer/novio/novia/pareja/esposo/esposa/chico/chica) (dentro/cuando/en/al),
    sin orgasmo(/s), ya no tengo orgasmo(/s), no hay ereccion,
    (cuesta/costando/no logro/no consigo) mantener (la/una) ereccion, el deseo (se fue/murio),
    falta de (ereccion/erecciones/deseo/sensibilidad en el pene)`,
  'leg-fail': `
    (dando/dar/da/doy/pegando/pego/pega) (golpes/palmadas/golpe/zapatazos/manotazos) (con el/en el/al/contra el),
    a golpes, se hunde, se hundio, hundiendo, se me
    (dobla/va/fue) (hacia/para), sin fuelle, no me (carga/carga bien/aguanta el peso), se me acaba la fuerza,
    se queda sin fuerza, ni un segundo, se queda en el aire, rengue(o/ando), paso corto, tirando de
    ella, de adorno`,
  'sinks-said': `
    (me apoyo/apoyo/piso/cargo/al apoyar/al pisar/al cargar) (y/) (se/me/) (hunde/va/dobla/vence/cede/cae/afloja/falla),
    casi me (mato/caigo) porque, (tropiezo/tropece) con (nada/el aire/mi propio pie/mis pies/mi pie/el suelo)`,
  'breathe-act': `llenar (los pulmones/el pecho/de aire), inspirar, respirar, coger aire, tomar aire, agarrar aire, inflar, suspirar, bostezar, subir sin, tumbarme, acostarme`,
  'breathe-plain': `nariz, mascara, mascarilla, mocos, resfriado, alergia, agua, gafas, dolor, resfrio, catarro`,
  'tongue-said': `
    (lengua/boca) (como/de/hecha/) (trapo/dormida/gorda/pesada/trabada/corcho),
    (patina/resbala/enreda/traba/pesa/duerme/atasca) la lengua,
    la lengua (se/me/la tengo/no) (me/como/) (patina/traba/enreda/pesa/duerme/obedece/trapo/dormida)`,
  'arm-fail': `no (agarra/aprieta/coge/sujeta/pellizca/pincha), floja de agarre, sin agarre, sin pinza, no le llega fuerza, se me desliza, se le caen`,
  threw: `patine, derrape, volque, me (escurri/deslice/despene/precipite/descolgue/golpee/golpeo/aplasto/prenso), al asfalto, a la cuneta, por los aires, di vueltas de campana, vuelta de campana, frenazo brutal`,
  'swell-with': `cm, centimetros, mide, medi, el doble, pesada, estirada, piel`,
  'swell-hard': `me mide, mide, cm mas, el doble, engordo, engordada, abultada, gorda, gordo, inflada, inflado`,
  'eye-said': `(ojo/vista) (se me/se/) (quedo/puso/fue) (en/a) (negro/oscuras/blanco), (en negro/a oscuras) (unos/un/diez/cinco), ceguera (un/de/por), (no veo/veo mal) (del/por el/con el) (ojo/lado), veo la mitad`,
  tearing: `partiera, se partiera, abrieran, quemara por dentro, se soltara, desgarrara, me puse blanc(o/a), blanco como`,
  'chest-fail': `losa, piedra, clavo, hierro, se me sale, no me deja respirar, infarto, corta la respiracion, encogid(o/a), agarrotad(o/a), ardiendo`,
  puff: `sin aire, sin fuelle, ahogadit(o/a), acelerad(o/a), falta de aire, sin oxigeno, me falta aire`,
  'at-rest': `hablar, vestirme, al telefono, leyendo, viendo la tele, sin correr, caminar, un metro, la cuesta del garaje, hasta para`,
  hurt: `quema tambien, quemazon, revienta, me mata, tirante, chispazos, pinchazo`,
}
