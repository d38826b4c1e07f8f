import type { LexiconSource } from '../shape.ts'
import { NOT_LIVE_HERE } from './let-be.ts'

const PILLS =
  'pastillas/pildoras/comprimidos/tabletas/capsulas/paracetamol/paracetamoles/ibuprofeno/tramadol/somniferos/calmantes/ansioliticos/medicinas/analgesicos'
const SOME =
  '15/20/24/25/30/40/50/60/100/quince/veinte/treinta/cuarenta/cincuenta/muchas/muchos/demasiadas/demasiados/un monton de/una caja de/dos cajas de/media caja de/la caja de/un bote de/un bote entero de/el bote de/un punado de/un puno de'
const DEED = 'morir/morirme/matarme/suicidarme/hacerme dano/quitarme la vida/suicidio'
const SELF =
  'matar/suicidar/quitar la vida/ahorcar/cortar las venas/tirar al rio/tirar al tren/tirar por el puente/tirar desde/lanzar al vacio'

/** Means at hand, a plan, a goodbye, what was done already, and what another tells of the client. */
export const harm: LexiconSource['words'] = {
  'harm-place': NOT_LIVE_HERE,
  /** Denied for good and all; no finding in name, so that what it holds is not heard beside it. */
  'harm-denied': `
    (no/ni/nunca/jamas) (pienso/pensaria/he pensado/pense/pensare) (nunca/jamas/ni/) en (${DEED}/el suicidio/hacer una locura),
    (nunca/jamas) me (haria dano/mataria/suicidaria), (${DEED}) (nunca/jamas/ni hablar/ni loco/ni loca/ni en broma/para nada/eso no/no verdad),
    (nunca/jamas) (${DEED}), no (soy/estoy/ando) suicida, (no/nunca/jamas) (tengo/hay/he tenido/tuve) (ganas/ideas/pensamientos/intencion) de (${DEED}),
    no (me/) (quiero/quisiera/deseo) (morir/morirme/matarme/suicidarme)`,
  'harm-done': `
    (me he/me e/se ha/me ha) (tomado/tragado) (${SOME}) (${PILLS}), (me tome/me trague/me bebi/he bebido/tome/tomo) (veneno/lejia/veneno de ratas/el veneno/raticida), (me pase/se paso) con las pastillas (adrede/a proposito/y),
    (me/se) (voy a/va a/quiero/quiere) quitar (de enmedio/del medio/de en medio), me quito (del medio/de en medio/de enmedio), (quiero/querer/quiere/voy a/va a/pienso/necesito) (terminar/acabar) (mi vida/con mi vida/su vida), (valor/fuerzas/coraje/cobarde) para (matarme/tirarme/matarse), (cuenta/importaria/pasa/pasaria) si me mato, si me mato, (me dice/me dicen/dicen/diciendo) que me (tire/mate/muera/corte), que me mate, que me muera,
    (me rasco/me pincho/me arano/me quemo/me pego/me corto/se corta) (hasta/para castigarme/a proposito/los brazos), para castigarme, (pegarme/pegarse) un tiro, (intente/intento) (ahorcarme/ahorcarse/matarme/suicidarme/colgarme), (pensamientos/ideas/los) de no querer vivir, ya no quiere vivir, no quiero subirla, quiero bajarme aqui,
    (me voy a/me quiero/me quisiera/me querria/me pienso/me gustaria/me podria/me deberia/me tengo que/me acabare/me he intentado/me intente) (${SELF}),
    (se quiere/se quisiera/se va a/se ha intentado/se intento/se queria/se piensa) (${SELF}),
    (quiere/queria/prefiere/preferiria/desea/piensa en/amenaza con/intento/ha intentado/va a/hablando de/habla de) (morirse/morir/matarse/suicidarse/quitarse la vida/quitarse de en medio/no despertar/dejar de vivir/acabar con todo/acabar con su vida/hacerse dano/cortarse/tirarse),
    (me tome/me he tomado/tome/he tomado/me trague/me he tragado/se tomo/se ha tomado/se trago/me acabo de tomar/acabo de tomarme) (${SOME}) (${PILLS}),
    sobredosis, (cortes/heridas) en (las munecas/los brazos/las piernas/los muslos) (y/que/dice), (se corta/se ha cortado/se corto/me he cortado/me estoy cortando) (los/las/en los/en las) (brazos/munecas/piernas/muslos/venas), (soga/cuerda/cinturon) (al/en el) cuello`,
  'harm-means': `
    suicidio de un (escritor/cantante/actor/poeta/personaje) me (da/dio/daba) (ideas/envidia/ganas),
    se me fue la mano con (las pastillas/el tramadol/los calmantes/el paracetamol/los somniferos/las pildoras/la medicacion), se me fue la mano con el vino y (las/unas) pastillas,
    me siento mal por haber nacido, por haber nacido, me (corte/corto/he cortado) yo (misma/mismo) (la pierna/las piernas/los brazos/el brazo/las munecas/la muneca/el muslo/los muslos/adrede/a proposito),
    me (corto/corte/he cortado) (cocinando/afeitandome/pelando) (adrede/a proposito/queriendo), no siento ganas de (entrenar/moverme/salir/cocinar/trabajar) (ni/ni siquiera/y tampoco/tampoco) de (vivir/seguir),
    (quiero/quisiera/ganas de) desaparecer del (mapa/mundo/planeta), no me mato en el (gym/gimnasio) pero,
    (cargue/cargo/he cargado) (la/una) (pistola/escopeta), la tuve en la boca, (escondi/he escondido/escondo) los cuchillos (de mi/para no), (calcule/calculo/calculando/he calculado) la altura, idea de no (volver/regresar),
    (la/una) (nota/carta) para mi familia, quisiera ser yo el (de la caja/muerto/que murio), (ideas/pensamientos) (feas/feos/negras/negros/oscuras), no querer (vivir/seguir viviendo/seguir/despertar/estar aqui),
    (sueno/fantaseo) con estar (muerto/muerta), me (clave/clavo/he clavado) (un/una/el/la/unas) (tenedor/cuchillo/aguja/agujas/tijera/tijeras/boli/cuchilla) (en la mano/en el brazo/en la pierna/en el muslo) (adrede/a proposito/queriendo),
    he abierto el gas, (me tome/me he tomado/me trague/ya me tome) (todas/todas las pastillas/todo ya/los relajantes todos), con agujas para castigarme, me (voy a/quiero) colgar,
    (una hora/un rato/horas/mucho rato/media hora) (parado/parada/sentado/sentada/mirando) (en/desde/junto a) (el puente/la presa/las vias/la azotea/el muelle/el borde),
    (escribi/he escrito/deje/tengo escritas) (las/unas/mis) cartas (para/a), despedida esta escrita, me despido (de todos/ya/de ti/de usted/para siempre), (estoy/esta/sentado/sentada/parado/parada) en (el puente/la azotea/el tejado/la cornisa/el borde/la barandilla) (y/escribiendo/del/sin/ahora/pensando), (escopeta/pistola/arma/cuerda/soga/cuchilla) (de mi padre/encima/cargada/comprada/en el bolsillo/en casa/ya esta), (tengo/tiene) un arma, la he cargado, (la cuerda/una cuerda/la soga/una soga) ya,
    (ultima vez/ultimo mensaje) que (escribo/os escribo/te escribo/mando), (mis cosas/el perro/la gata/el gato/mis llaves/las llaves) (se las dejo/se los dejo/a mi vecina/y el gato), (dado/regalado/regalo) (el perro/la gata/su ropa/mi ropa/mis cosas), (papeles/cosas/todo) en orden ya, el domingo es el dia, (nadie/no) me va a echar de menos, (pido/pide/le pido) a dios que me lleve, que me lleve ya,
    (soltar/suelto) el volante, (dejarme hundir/hundirme) y, ya me habre ido, cuando leas esto, hoy se acaba (todo/), (opioides/pastillas) (uno/te) (se muere/mueres), sin enterarse es para mi, la muerte (me parece/es) un (descanso/alivio), (la estoy esperando/la busco) (y/si/a la muerte), (cruzo/cruzar) sin mirar, dormir para siempre, (unica/sola) salida (es/seria) (la ventana/el puente/el balcon/morir), mirar (el balcon/la ventana/las vias), (me asusto/miedo) de mi (mismo/misma), casi salto, (firme/hice) el testamento, no volvere nadie tiene la culpa, nadie tiene la culpa, miedo de hacerme algo, hacerme algo (esta noche/malo/a mi),
    hasta aqui llegue, no me llamen, (voy a/va a) llegar a la noche, (dile/decile/diganle/diles) a mi (hijo/hija/madre/padre/mujer/marido) que (lo/la/le/los) (quise/quiero/siento), dile a mi madre que lo siento, coche en el garaje cerrado, (las que/lo que) necesito para irme, (me quiero ir/quiero irme/irme) con (el/ella/mi marido/mi mujer/mi esposo/mi esposa), tengo con que, hice un nudo, (pregunto/pregunta) para que todo, nada me importa, yo el primero, mejor sin ella, mejor sin el, (no va a/no voy a) estar mas, dice que salta, se va a tirar, junta las pastillas, son para irse, deje la insulina a proposito, me muero antes, no me busqueis,
    (pastillas/cuchillo/cuchilla/navaja/soga/cuerda/cinturon/pistola/escopeta/frasco/bote) (en la mano/en las manos/en mi mano/delante/preparada/preparado/preparadas/lista/listo/listas/a mi lado/al lado/en la mesilla),
    (tengo/tiene/compre/he comprado/busque/saque) (la/una/las/el/un) (soga/cuerda/pastillas preparadas/pistola/escopeta/cuchilla) (preparada/lista/ya/para/en),
    (la/una) (carta/nota) (esta/ya esta/escrita/hecha/de despedida/lista), (deje/he dejado/escribi/he escrito/ya deje) (la/una/mi) (carta/nota) (escrita/de despedida/para mis/para mi/),
    (tengo/tiene) (un/el) plan, (pienso/piensa/pensando/pienso mucho) en (tirarme/tirarse/colgarme/colgarse/ahorcarme/quedarme ahi/las vias/el puente/el rio/no estar/como hacerlo/desaparecer), idea de (colgarme/matarme/tirarme/irme/morirme/desaparecer/quitarme),
    como hacerlo para que, (sabe/se/ya se) como (hacerlo/lo haria/lo hare), si me (tiro/tirase/tirara/lanzo/tomo todas) (al/del/por/desde/las), (0/cero/ningunas/nada de/sin/pocas/ni) ganas de (vivir/seguir vivo/seguir viva/estar aqui/despertar/despertarme),
    (me voy/marcharme/irme/me marcho/me despido) (para siempre/de verdad/de este mundo/del todo/para no volver), no me (esperen/espereis/espere/busquen/busqueis) (manana/mas/ni/ya), (adios/chao/hasta siempre) (a todos/para siempre/mundo/y gracias/a todas/amigos/gracias por todo), gracias por todo (adios/y adios/hasta siempre),
    (sueno/planeo/fantaseo/suenio) con (no estar/no despertar/morir/morirme/irme/desaparecer/acabar), (muerto/muerta) por dentro, (me golpeo/me pego/me quemo/me arano/me muerdo) (la cabeza/contra/hasta/con/a proposito/los brazos), (no llegare/no llegar) a (manana/navidad/fin de ano), cuando (yo/) no este, (que/alguien) me (pare/paren/detenga), prefiere morirse, no voy a (contestar/estar/volver) (manana/mas/nunca) (ni/nunca/)`,
}
