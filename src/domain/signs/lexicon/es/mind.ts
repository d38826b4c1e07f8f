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
  'harm-not': `
    no quiero seguir con (el/los/este/estos/la/las/mi) (programa/plan/mensajes/bot/app/curso/estudio/avisos/preguntas/seguimiento/recordatorios),
    (quiero/quisiera) (acabar/terminar) con (el/los/este/estos/mi) (programa/plan/mensajes/bot/curso/estudio/seguimiento)`,
  'harm-maybe': `
    nadie (lo notaria/se daria cuenta/se enteraria/me buscaria) (si/),
    si yo (muriera/muriese/me muero/no estuviera/no estuviese/no existiera/no existiese/desapareciera/desapareciese/dejara de existir/faltara), si (yo/) (me muriera/me muriese/me matara/me matase/no despertara/no me despertara),
    no puedo mas, ya no puedo mas, no aguanto mas, ya no aguanto mas, no doy mas, no lo aguanto mas, no puedo
    seguir asi, no puedo seguir, estoy desesperado, estoy desesperada, desesperado, desesperada, sin
    esperanza, no tengo esperanza, no veo salida, sin salida, todo me da igual, hundido, hundida, tocado
    fondo, toque fondo, me rindo, quiero rendirme, morirme, me quiero morir, morir, que sentido tiene, que
    sentido tiene todo, no sirvo para nada, odio mi vida, quiero que todo acabe, quiero que todo termine,
    quiero que se acabe todo, una carga, muy deprimido, muy deprimida, quiero desaparecer, acabar de una vez`,
}
