import type { LexiconSource } from '../shape.ts'

/** Thoughts of self-harm, told apart from the turns of phrase of pain and fatigue. */
export const mind: LexiconSource['words'] = {
  'harm-noun': `
    suicidio, pensamientos suicidas, ideas suicidas, ideas de suicidio, ideas de muerte, pensamientos de
    muerte, autolesion, autolesiones, intento de suicidio, pensamientos oscuros`,
  harm: `
    (ojala/quisiera/prefiero/preferiria/quiero) no (despertar/despertarme/despertara/estar vivo/estar viva/vivir/existir/haber nacido),
    (mejor/seria mejor/mejor seria) (no/) (estar vivo/estar viva/vivir/existir/estar muerto/estar muerta/haber nacido),
    no tiene sentido (vivir/seguir viviendo/la vida/mi vida/estar aqui),
    la vida no (tiene sentido/vale la pena),
    mejor si yo no (estuviera/existiera/estoy), mejor si no (estuviera/existiera), no quiero (seguir/seguir
    adelante/continuar/seguir mas/despertarme manana/levantarme nunca mas), (me voy a/voy a/quiero/pienso)
    (tirar/tirarme/lanzar/lanzarme/ahorcar/colgar/cortar las venas) (por la ventana/del puente/al tren/al
    vacio/por el balcon/a las vias/), tirar por la ventana, para que (seguir/vivir/seguir aqui/estar
    aqui/existo), (terminar/acabar) con (esto/mi dolor) de una vez por todas, (no/ya no) (merezco/merece)
    vivir, (seria/es/estaria) mejor (morir/morirme/no estar/no existir/si no estuviera/si me muero/si no
    existiera/desaparecer), (nadie/no) me (necesita/quiere) (vivo/viva/aqui), pensando en (la
    muerte/morir/matarme/suicidarme/hacerme dano), pienso en (morir/la muerte/matarme/hacerme dano), (ganas
    de) (morir/morirme/no vivir/no despertar/dejar de vivir), (he intentado/intente/intento)
    (matarme/suicidarme/quitarme la vida), no le encuentro sentido a (la vida/nada/vivir/seguir), me tomaria
    todas las pastillas, me da igual (vivir/morir/morirme/vivir o morir), suicida, suicidarme, suicidarse,
    suicidar, (me quiero/quiero/queria/quisiera/me gustaria/prefiero/preferiria/deseo/pienso en/he pensado
    en/ganas de/pensando en/mejor/ojala me/voy a/me voy a/me dan ganas de/tengo ganas de/pense en/planeo)
    (morir/morirme/matarme/matar/desaparecer/desaparecer para siempre/dejar de vivir/dejar de existir/no
    existir/no vivir/no estar aqui/estar muerto/estar muerta/acabar con todo/terminar con todo/no
    despertar/hacerme dano/cortarme/tirarme por/tirarme/lanzarme/ahorcarme/colgarme/quitarme de en medio/la
    muerte/no seguir/dormir y no despertar), quitarme la vida, me quito la vida, quitarme de en medio, acabar
    con mi vida, terminar con mi vida, acabar con mi sufrimiento, ponerle fin a mi vida, poner fin a mi vida,
    acabar con todo, terminar con todo, matarme, me mato, hacerme dano, me hago dano a proposito, me corto,
    (hacer/hacerme/hice/hago/haciendo/haciendome/hecho) cortes (en/en los/en las/en el/en la) (brazos/brazo/piernas/pierna/munecas/muneca/muslos/muslo/antebrazo/barriga/piel),
    (he vuelto/volvi/vuelvo/vuelto) a (cortar/cortarme), (pastillas/las pastillas/unas pastillas) (guardadas/juntadas/preparadas/listas) (para cuando/por si), (guardando/juntando/ahorrando) (las/unas/) pastillas,
    cortarme las venas, me corte las venas, autolesionarme, me autolesiono, no (quiero/quisiera/me
    apetece/deseo/tengo ganas de/me interesa) (vivir/seguir viviendo/seguir vivo/seguir viva/seguir
    aqui/seguir asi/estar aqui/estar vivo/estar viva/existir/seguir adelante/despertar/despertarme/continuar
    viviendo) (mas/asi/manana/), ya no quiero (vivir/seguir/estar aqui/nada/existir/seguir viviendo), no
    (vale/merece) la pena (vivir/seguir/seguir viviendo/la vida/nada), la vida no (vale/tiene sentido/merece),
    mi vida no tiene sentido, nada tiene sentido, (sin/no tengo/no hay/no encuentro/no veo)
    (razones/razon/motivos/motivo/ganas) (para/de) (vivir/seguir/seguir viviendo/levantarme),
    (estarian/estaran/estariais/viviran/todos estarian/estaria todo el mundo) (todos/) mejor sin mi, mejor sin
    mi, mejor muerto, mejor muerta, ojala (me muriera/me muera/no despertara/no despierte/no
    despertase/estuviera muerto/estuviera muerta/no hubiera nacido/no existiera/me hubiera muerto), cansado de
    vivir, cansada de vivir, harto de vivir, harta de vivir, harto de la vida, harta de la vida, no despertar
    (mas/manana/nunca), nadie me echaria de menos, nadie me extranaria, soy una carga para (todos/mi
    familia/ellos), tomarme todas las pastillas, todas las pastillas, me tome todas las pastillas, sobredosis,
    tirarme (al tren/a las vias/por la ventana/del puente/por el balcon), carta de despedida, nota de
    despedida, despedirme de todos, no le veo sentido a (la vida/vivir/seguir), para que (vivir/seguir
    viviendo/sigo vivo)`,
  /** No finding in name, so that what it holds ("un tren") is not taken for what happened. */
  'harm-if': `
    (no me importaria/me daria igual/me da igual/ojala) (que/si) (me/) (atropellara/atropella/atropelle/arrollara/matara/pillara/llevara por delante) (un/una/el/la) (coche/carro/auto/tren/camion/bus/autobus/rayo/metro),
    si me (atropellara/atropella/atropellase/arrollara/arrolla/llevara por delante/pillara/pilla/matara/aplastara/cogiera) (un/una/el/la/algun) (bus/autobus/coche/carro/auto/tren/camion/metro/micro/rayo/tranvia)`,
  'harm-not': `
    (cansado/cansada/harto/harta) de todo (el/lo/la/este/esta/un), (solo/solamente) quiero parar (los/el/las/la/un/una/de/dos),
    no quiero (seguir/continuar) con (el/los/este/estos/esta/la/las/mi/tus/tu/) (programa/plan/mensajes/bot/app/curso/estudio/avisos/preguntas/seguimiento/recordatorios/aplicacion/coaching/chequeos),
    (quiero/quisiera) (acabar/terminar) con (el/los/este/estos/mi) (programa/plan/mensajes/bot/curso/estudio/seguimiento)`,
  'harm-maybe': `
    mentiria si (dijera/digo/dijese) que (quiero/tengo ganas de) (estar/estar aqui/vivir/seguir), (no/ya no) (quiero/tengo ganas de) (estar aqui/seguir aqui),
    me (corte/corto/he cortado/estoy cortando/corto en) (los brazos/las munecas/la muneca/los muslos/el antebrazo/los antebrazos/las piernas/las venas),
    (soy/me siento/me veo como) (un/una) (estorbo/carga/lastre/desperdicio/inutil/fracaso/peso para todos/problema para todos/mierda de persona), no sirvo (para nada/para nadie/ni para), no valgo (nada/para nada),
    no me veo (aqui/vivo/viva/llegando/viviendo/cumpliendo/envejeciendo/dentro de/el ano que viene/en navidad), no (tengo/hay/queda/me queda) (ya/) nada por (lo que/que) (seguir/vivir/luchar/levantarme), no (veo/tengo) (ningun/mi/un/) futuro,
    (ojala/quisiera/quiero/me gustaria/pudiera/ganas de) (pudiera/poder/) (desaparecer/esfumarme/evaporarme/dejar de existir/no existir/no estar/irme para siempre), (irme/ir/marcharme/fuera/fuese) (de este mundo/para siempre/del mundo),
    (seria/es/seria como/quizas es/seria todo) (un alivio/una liberacion/un descanso) (morir/morirme/estar muerto/estar muerta/no estar/no despertar/desaparecer/si no/que todo),
    (mi propio/mi) (entierro/funeral/muerte), (maneras/formas/metodos/modos) (de/para) (morir/morirme/no sufrir al morir/suicidarse/matarme/acabar/irse/irme/hacerlo),
    (puente/balcon/azotea/vias/acantilado) mirando (abajo/hacia abajo/el vacio/el agua/los trenes/al vacio), (una hora/rato/parado/parada/estuve/quede) (en/sobre/junto a) (el/las/la) (vias/azotea/barandilla/cornisa/borde del puente),
    (tengo/tenia/deje/he dejado) (las/mis/todas las) pastillas (preparadas/listas/a mano/contadas/en la mesa/al lado), (casi/por poco) (lo hago/me tiro/salto/me las tomo/acabo con todo/lo hice) (anoche/otra vez),
    (anoche/ayer/hoy/el viernes/el sabado/el domingo) (casi/por poco) (lo hago/me tiro/salto/me las tomo/lo hice),
    no (hay/tengo/veo/queda) (motivo/motivos/razon/razones/ningun motivo/ninguna razon) (para/de) (quedarme/seguir/estar/levantarme/continuar/vivir),
    (no/ya no) puedo (vivir/seguir viviendo/seguir) (con este dolor/con este/asi/mas),
    me (hago/hice/he hecho/he estado haciendo/estoy haciendo/sigo haciendo/vuelvo a hacer) dano (para/adrede/yo mismo/yo misma/a mi/queriendo/a proposito/otra vez/por las noches/cuando), me he estado haciendo dano, me estoy haciendo dano a, me (arano/rasco/muerdo/golpeo/quemo) (los brazos/las piernas/la piel/las munecas/los muslos) (hasta/para),
    (bajo tierra/en una caja/tres metros bajo tierra/criando malvas), (salirme/salir/irme/tirarme/estrellarme/estamparme) (de la carretera/con el coche/contra un arbol/contra un muro/contra un camion) (con/contra/adrede/),
    me da miedo (lo que/de lo que) (pueda/pudiera/puedo/voy a) hacer, (no estoy/no me siento/no me veo) (seguro/segura/a salvo) (solo/sola/conmigo/a solas), no me fio de mi,
    (mis hijos/mi familia/mi mujer/mi marido/mi pareja/todos/ellos) (estarian/estaria/estaran/estara/vivirian/viviria/serian/seria) (mejor/mas feliz/mas felices/mas tranquilos/libres/libre) (sin mi/con otra/con otro/con otra persona/si yo no/si no),
    me (despedi/he despedido/estoy despidiendo) (de/del/de la/de mis/de mi) (perro/perra/gato/hijos/familia/todos/mujer/marido/mundo), (este/sera/es) (es/sera/) mi ultimo (mensaje/parte/aviso/adios),
    pensando (en/) lo facil que (seria/es/resultaria), (al borde/en el borde/en la orilla) (del/de la/de un) (muelle/puente/tejado/acantilado/balcon/anden/azotea/barranco) (pensando/mirando),
    (se me quitaron/se me han quitado/se me fueron/se me han ido/se me acabaron/se me pasaron/me quede sin/me he quedado sin/me faltan/me quedan pocas/pocas/perdi/he perdido/perdiendo/sin/no tengo/ya no tengo) (las/) ganas de (vivir/seguir/seguir viviendo/todo/estar aqui/levantarme), se acabo todo para mi, (cansado/cansada/harto/harta) de (todo/luchar/sufrir/existir/seguir/esta vida), ojala (todo/esto/) (se/) (acabara/acabe/acabase/terminara/termine) (ya/todo/todo esto/pronto/),
    no (puedo/aguanto) (ya/mas/) (con/) (mi/esta) vida, (solo/solamente) quiero (parar/que pare/que esto pare/descansar de todo/descansar para siempre/que todo pare),
    no le (veo/encuentro/hallo) (ya/) (sentido/el sentido/gracia) a (despertarme/despertar/levantarme/nada/todo/esto/todo esto/estar/estar aqui/seguir/seguir asi/mi vida),
    (mirado/mirando/buscado/buscando/calculado/calculando/contado/contando/pensado/pensando) (en/) cuantas (pastillas/medicinas), (guardado/guardando/ahorrado/juntado/juntando/escondido) (las/mis/unas/todas las/) (pastillas/medicinas),
    (pensar/pienso/pensando/pense/pensado/sonando/sueno) (mucho/a veces/todo el rato/todo el dia/) en (el/los/la/las/un/una) (puente del/puente de/puente sobre/vias/vias del tren/azotea/balcon/acantilado/soga),
    me quedo mirando (el/los/la/las) (vias/azotea/balcon/acantilado/pastillas/vacio),
    (dormirme/dormir/acostarme/cerrar los ojos/quedarme dormido/quedarme dormida) y (que ya este/ya esta/no despertar/no despertarme/que se acabe/listo/que todo acabe/que todo se acabe/no volver/que se termine/no abrirlos/no abrirlos mas),
    (no/ya no) (aguanto/soporto/quiero/puedo con) (mas/) (esta/mi) vida, (no/ya no) (aguanto/soporto) vivir,
    me da (igual/lo mismo) (si/que/) (manana/) (no despierto/no despertar/no me despierto/no amanezco/me muero/morir/despertar o no/vivir o no/no estoy/seguir o no/estar o no),
    si (manana/) no (despierto/me despierto/amanezco/despertara/amaneciera) (manana/) (mejor/no pasa nada/da igual/nadie/me da igual/tampoco),
    (planeo/planeado/planear/pienso/pensado/imagino/imaginado/ensayo/se) (como/bien como/ya como) (hacerlo/lo haria/lo hare/acabar/terminar/quitarme de en medio),
    (vale/merece) la pena (seguir/vivir/todo esto/continuar/levantarse/levantarme/estar aqui),
    (mas facil/mejor/mas tranquilo/mas sencillo/un alivio) para (todos/mi familia/ellos/mis hijos/los mios/todo el mundo) (si/sin),
    no (estare/voy a estar) aqui (manana/la semana que viene/mucho/por mucho tiempo/mucho tiempo/en navidad), (cuida/cuiden/cuidad) de mis (hijos/hijas/perros/gatos/padres) (cuando/si) (no/ya no/falte),
    (despedirme/me despido) de (todos/vosotros/ustedes/ti/la vida), cuando yo (no este/falte/ya no este), si yo falto, si yo faltase,
    nadie (lo notaria/se daria cuenta/se enteraria/me buscaria) (si/),
    si yo (muriera/muriese/me muero/no estuviera/no estuviese/no existiera/no existiese/desapareciera/desapareciese/dejara de existir/faltara), si (yo/) (me muriera/me muriese/me matara/me matase/no despertara/no me despertara),
    no puedo mas, ya no puedo mas, no aguanto mas, ya no aguanto mas, no doy mas, no lo aguanto mas, no puedo
    seguir asi, no puedo seguir, estoy desesperado, estoy desesperada, desesperado, desesperada, sin
    esperanza, no tengo esperanza, no veo salida, sin salida, todo me da igual, hundido, hundida, tocado
    fondo, toque fondo, me rindo, quiero rendirme, morirme, me quiero morir, morir, que sentido tiene, que
    sentido tiene todo, no sirvo para nada, odio mi vida, quiero que todo acabe, quiero que todo termine,
    quiero que se acabe todo, una carga, muy deprimido, muy deprimida, quiero desaparecer, acabar de una vez`,
}
