import type { LexiconSource } from '../shape.ts'

const PILLS =
  'pastillas/pildoras/comprimidos/tabletas/capsulas/paracetamol/paracetamoles/ibuprofeno/tramadol/somniferos/calmantes/ansioliticos/medicinas/analgesicos'
const SOME = '10/12/15/20/24/25/30/40/50/60/100/diez/doce/quince/veinte/treinta/cuarenta/cincuenta/muchas/muchos/demasiadas/demasiados/un monton de/una caja de/todas las/todas mis/todos los/todo el/dos cajas de/media caja de/la caja de/un bote de/el bote de/un punado de/un puno de/unas cuantas'
const SELF = 'matar/suicidar/quitar la vida/colgar/ahorcar/cortar las venas/tirar al rio/tirar al tren/tirar por el puente/tirar desde/lanzar al vacio'

/** Means at hand, a plan, a goodbye, what was done already, and what another tells of the client. */
export const harm: LexiconSource['words'] = {
  'harm-done': `
    (me voy a/me quiero/me quisiera/me querria/me pienso/me gustaria/me podria/me deberia/me tengo que/me acabare/me he intentado/me intente) (${SELF}),
    (se quiere/se quisiera/se va a/se ha intentado/se intento/se queria/se piensa) (${SELF}),
    (quiere/queria/prefiere/preferiria/desea/piensa en/amenaza con/intento/ha intentado/va a/hablando de/habla de) (morirse/morir/matarse/suicidarse/quitarse la vida/quitarse de en medio/no despertar/dejar de vivir/acabar con todo/acabar con su vida/hacerse dano/cortarse/tirarse),
    (me tome/me he tomado/tome/he tomado/me trague/me he tragado/se tomo/se ha tomado/se trago/me acabo de tomar/acabo de tomarme) (${SOME}) (${PILLS}),
    sobredosis, (cortes/heridas) en (las munecas/los brazos/las piernas/los muslos) (y/que/dice), (se corta/se ha cortado/se corto/me he cortado/me estoy cortando) (los/las/en los/en las) (brazos/munecas/piernas/muslos/venas), (soga/cuerda/cinturon) (al/en el) cuello`,
  'harm-means': `
    (pastillas/cuchillo/cuchilla/navaja/soga/cuerda/cinturon/pistola/escopeta/frasco/bote) (en la mano/en las manos/en mi mano/delante/preparada/preparado/preparadas/lista/listo/listas/a mi lado/al lado/en la mesilla),
    (tengo/tiene/compre/he comprado/busque/saque) (la/una/las/el/un) (soga/cuerda/pastillas preparadas/pistola/escopeta/cuchilla) (preparada/lista/ya/para/en),
    (la/una) (carta/nota) (esta/ya esta/escrita/hecha/de despedida/lista), (deje/he dejado/escribi/he escrito/ya deje) (la/una/mi) (carta/nota) (escrita/de despedida/para mis/para mi/),
    (tengo/tiene) (un/el) plan, (pienso/piensa/pensando/pienso mucho) en (tirarme/tirarse/colgarme/colgarse/ahorcarme/quedarme ahi/las vias/el puente/el rio/no estar/irme/como hacerlo/hacerlo/desaparecer), idea de (colgarme/matarme/tirarme/irme/morirme/desaparecer/quitarme),
    como hacerlo para que, (sabe/se/ya se) como (hacerlo/lo haria/lo hare), si me (tiro/tirase/tirara/lanzo/tomo todas) (al/del/por/desde/las), (0/cero/ningunas/nada de/sin/pocas/ni) ganas de (vivir/seguir vivo/seguir viva/estar aqui/despertar/despertarme),
    (me voy/marcharme/irme/me marcho/me despido) (para siempre/de verdad/de este mundo/del todo/para no volver), no me (esperen/espereis/espere/busquen/busqueis) (manana/mas/ni/ya), (adios/chao/hasta siempre) (a todos/para siempre/mundo/y gracias/a todas/amigos/gracias por todo), gracias por todo (adios/y adios/hasta siempre),
    (sueno/planeo/fantaseo/suenio) con (no estar/no despertar/morir/morirme/irme/desaparecer/acabar), (muerto/muerta) por dentro, (me golpeo/me pego/me quemo/me arano/me muerdo) (la cabeza/contra/hasta/con/a proposito/los brazos), (no llegare/no llegar) a (manana/navidad/fin de ano), cuando (yo/) no este, (que/alguien) me (pare/paren/detenga), prefiere morirse, no voy a (contestar/estar/volver) (manana/mas/nunca) (ni/nunca/)`,
}
