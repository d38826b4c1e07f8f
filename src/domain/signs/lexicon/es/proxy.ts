const RELATIONS =
  'marido/mujer/esposo/esposa/pareja/hijo/hija/madre/padre/mama/papa/hermano/hermana/amigo/amiga/novio/novia/vecino/vecina/companero/companera/cuidador/cuidadora/nieto/nieta/abuelo/abuela/sobrino/sobrina/tio/tia/primo/prima/suegro/suegra/cunado/cunada/yerno/nuera/senora/compi/companero de remo'
const THEIR = `mi ${RELATIONS.replaceAll('/', '/mi ')}/ella/el`

/** Somebody else writes for the client: who they say they are, that they write for another, that the other did the drills. */
export const proxy = `
  (soy/aqui/habla/escribe/le escribe/te escribe/les escribe) (su/la/el/) (${RELATIONS}),
  (su/la/el/mi) (${RELATIONS}) (escribiendo/escribe/al habla/quien escribe/usa esta cuenta/le escribe/te escribe/usando/dicta/me dicta/me dice que le escriba),
  (escribo/escribiendo/te escribo/le escribo/contesto/respondo/lo pongo/le pongo/mando/mando esto) (por/de parte de/en nombre de/desde el telefono de/desde el movil de/desde el celular de/para) (${THEIR}/),
  (escribo/te escribo/contesto/respondo/lo escribo/lo pongo) yo, (ella/el) (dicta/me dicta/me pide/no puede escribir/hizo/ha hecho/hace los ejercicios/hace sus ejercicios),
  (me pide/me ha pedido/me pidio/me dijo/me dice/quiere) que (ponga/escriba/le escriba/te escriba/avise/diga/te diga/le diga/conteste/responda/mande),
  (en nombre/de parte) de (${THEIR}), (desde/con) (el/su) (telefono/movil/celular/cuenta/numero) (de/) (${THEIR}/), usa esta cuenta, (me da/me dio/me deja) su (movil/telefono/celular),
  (no puede/no quiere/no es capaz de) (escribir/contestar/coger el movil/agarrar el celular/sostener el telefono), (hace/sigue) (sus/tus/vuestros/los) (ejercicios/drills) (contigo/con vosotros/con ustedes/con usted), (es/era) (su/vuestro/vuestra) (cliente/clienta/paciente),
  (le da/le dan) (verguenza/pena/apuro/miedo/corte) (escribir/escribirlo/decir/decirlo/contar/contarlo/preguntar), (no quiere/no lo quiere/no se atreve a) (contar/contarlo/decir/decirlo/escribir/escribirlo), (el/ella) (pone/dice que ponga) (1/2/3/4/0/una/dos), no es (el/ella) soy, (usa/lleva/esta en) (este chat/esta app/este bot/vuestro programa),
  (hizo/ha hecho/completo) (una/dos/tres/cuatro/ninguna/ningun/media/1/2/3/4/0/sus/los/las) (sesion/sesiones/drill/drills/ejercicio/ejercicios)`
