import type { NetSource } from '../../shape.ts'

/** What is felt or no longer felt. */
export const feeling: NetSource['words'] = {
  numb: `
    dormido, dormida, dormidos, dormidas, dormidito, dormidita, se me
    (duerme/duermen/durmio/durmieron/dormia/ha dormido/han
    dormido/adormece/adormecen/adormecio/acorcha/acorchan/entumece/entumecen/entume/va durmiendo/queda
    dormido/queda dormida), se (duerme/duermen/adormece/acorcha/entumece), adormecido, adormecida,
    adormecidos, adormecidas, adormilado, adormilada, adormecimiento, durmiendo, adormeciendo, acorchado,
    acorchada, acorchados, acorchadas, acorchamiento, acorchandose, acorchando, entumecido, entumecida,
    entumecidos, entumecidas, entumido, entumida, entumidos, entumidas, entumecimiento, engarrotado,
    anestesiado, anestesiada, anestesiados, anestesiadas, anestesia, dentista, insensible, insensibles,
    insensibilizado, insensibilidad, muerto, muerta, muertos, muertas, como corcho, corcho, de corcho, carton,
    como carton, de carton, de madera, madera, de goma, goma, de plastico, plastico, de cera, cera, de tela,
    esparto, lija, trapo, algodon, algodones, guata, borra, plastilina, silicona, maniqui, muneco, cuero,
    suela, prestado, prestada, postizo, postiza, ajeno, ajena, de otro, de otra persona, de otra, a otro, a
    otra, no (es/fuera/fuese/son/fueran/fuesen) (mio/mia/mios/mias), no me pertenece, como si no
    (estuviera/estuviese/existiera/existiese/la tuviera/lo tuviera/fuera), como si
    (llevara/llevase/tuviera/tuviese/fuera/hubiera/pisara/pisase/tocara/tocase/limpiara/limpiase/hubiese/estuviera
    sentad/le perteneciera), sobre (algodon/algodones/nubes/espuma/una nube/un cojin/esponja/arena), pisando
    (algodon/algodones/nubes/espuma/esponja/arena/cojines), capa, guante, funda, desaparecido, desaparecida,
    desaparecio, ausente, apagado, apagada, desconectado, desconectada, en blanco, hueco, hueca, vacio,
    borrado, borrada, fantasma, perdi (la/) (sensibilidad/sensacion), he perdido (la/)
    (sensibilidad/sensacion/tacto), perdida de (sensibilidad/sensacion), perdiendo (sensibilidad/la
    sensibilidad/sensacion), pierdo (sensibilidad/la sensibilidad), menos (sensibilidad/sensacion/tacto), poca
    (sensibilidad/sensacion), sin (sensibilidad/sensacion/tacto/sensaciones), cero (sensibilidad/sensacion),
    nada de (sensibilidad/sensacion), (falta/falto) (sensibilidad/sensacion/tacto), medio
    (dormido/dormida/dormidos/dormidas/tonto/tonta/ido), tonto, tonta, embotado, embotada, atontado, atontada,
    lejano, lejana, lejos, ni frio ni calor, ni fu ni fa, un parche,
    (pellizco/pellizque/pincho/pinche/pellizcarme/pinchar/pellizca/toco/rasco) (y/) (ni/nada/no)`,
  unreal: `
    tocar (plastico/goma/madera/corcho/carton/otra cosa/a otro/una pared/un muneco), plastico, congelado,
    congelada, congelados, hielo, maniqui, muneco, silicona, cera, piedra, cuero, plastilina, inexistente,
    ausente, desaparecido, desaparecida, vacio, hueco, nada de nada, y nada, ni nada, como si
    (hubiera/hubiese/no hubiera/estuviera/no estuviera/llevara/no fuera/fuera de/fuese/tuviera/no tuviera),
    como si me (hubieran/hubiesen), no (es/fuera/fuese/parece) (mio/mia), de otro, de otra, a otro, a otra,
    ajeno, ajena, postizo, corcho, carton, acorchado, acorchada, anestesia, anestesiado, anestesiada, guata,
    algodon, de goma, muerto, muerta, de otra persona`,
  'no-feel': `
    a no (notar/sentir), no (notar/sentir), dejar de (notar/sentir), empece a no, (he/)
    (empezado/empezando/empece/empiezo) a no (notar/sentir), no (percibia/percibi/notaria/sintiese/notase/me
    avisa/me da senal/hay senal), (no/ni) (percibo/registro), nada de nada, (no/ya no/apenas/casi
    no/ni/nunca/tampoco/no me/ya no me/apenas me/ni me/casi ni/casi no me/a penas) (lo/la/los/las/)
    (siento/noto/sentia/notaba/senti/note/sintiera/notara/siente/nota/sienten/notan/percibo/distingo/he
    notado/he sentido/sentimos/entero/entere/enteraba/doy cuenta/di
    cuenta/reconozco/acierto/sintio/capto/distinguia), sin (sentir/notar/enterarme/darme
    cuenta/sentirlo/sentirla/notarlo/notarla/percibir), no (se siente/se nota/se sienten/se notan/hay
    sensacion/hay sensibilidad/tengo sensibilidad/tengo sensacion/tengo tacto/me dice nada/me transmite/me
    entero/me percato/me doy por enterado/se si), no (puedo/consigo/logro)
    (sentir/notar/sentirlo/notarlo/distinguir/saber), deje de (sentir/notar), he dejado de (sentir/notar),
    dejo de (sentir/notar), no (sabria decir/sabria/sabia) (si/donde/), ni (enterarme/me entero/me
    entere/cuenta/frio), ni cuenta me doy, no (queda/quedan) (sensibilidad/sensacion), no se donde
    (empieza/acaba/esta/piso), me entero (por/porque), tengo que mirar, (hasta que/porque) (lo/la/)
    (miro/mire/veo/vi)`,
  idiom: `
    hace (30/31/32/33/34/35/36/37/38/39/40/41/42/43) grados, (cruzar/cruce/cruzaba/cruzando) las piernas, piernas cruzadas,
    de lo otro, lo otro, de lo demas, lo demas, de todo lo demas, por lo demas, de cafe, con cafe, el cafe,
    de pintura, de grasa,
    de barro, de vino, de chocolate, la ropa limpia,
    (casi/por poco) me (meo/hago pis/hago pipi/orino/cago), me (meo/meaba/mee/hago pis/hacia pis) de (risa/la
    risa), me meo de risa, sin (problema/problemas/esfuerzo/molestias/dificultad/novedad/cambios), no noto
    mucha diferencia, no noto mejoria, (no/ya no/apenas/casi no/ni) (siento/noto/sentia/notaba/note/senti/he
    notado/hay/veo) (mucha/mucho/ninguna/ningun/gran/casi/nada de/mas/tanto/tanta/ni/)
    (diferencia/mejoria/mejora/cambio/cambios/dolor/dolores/molestia/molestias/nada raro/nada nuevo/nada
    malo/nada extrano/avance/avances/alivio/tension/tirantez), sin (notar/sentir)
    (dolor/molestia/molestias/nada raro/mejoria), no lo noto mejor, no siento que mejore`,
  tingle: `
    hormigueo(/s), hormiguea, hormiguean, hormigueando, hormigueaba, cosquilleo(/s), cosquillea, cosquillean,
    cosquillas, hormigas, hormiguitas, hormiguero, alfileres, alfilerazos, agujas, agujitas, agujetas
    electricas, pinchitos, pica, picor, picazon, electricidad, electrico, corriente, corrientes, corrientazo,
    corrientazos, calambre(/s), chispas, chispazos, burbujas, burbujeo, gaseosa, champan, champana, vibra,
    vibracion, vibrando, zumbido, zumba, parestesia(/s), ortigas, descarga(/s), enchufe, quemazon, quema,
    queman, arde, arden, ardor`,
  spread: `
    ha bajado, me ha bajado, bajo hasta, me baja, va bajando, bajando, baja ya, ya baja, ahora
    (llega/baja/va/me llega/me baja/sube/ha bajado/tambien), ha llegado, llego hasta, ya llega, ya me llega,
    se (extiende/esta extendiendo/ha extendido/extendio), va a mas, va subiendo, sube, cada vez (mas/peor/mas
    abajo), (desde/de) (ayer/hoy/anoche/el lunes/el martes/el miercoles/el jueves/el viernes/el sabado/el
    domingo/esta manana/hace), nuevo, nueva, nuevos, antes no, antes solo, antes era, antes llegaba, primera
    vez`,
  odd: `
    raro, rara, raros, raras, rarisimo, rarisima, extrano, extrana, extranas, extranisimo, distinto, distinta,
    distintos, distintas, diferente, diferentes, anormal, cambiado, cambiada, no va bien, no van bien, no anda
    bien, no es normal, no es lo mismo, no es como antes, otra cosa, inusual, curioso, curiosa,
    extraterrestre, mal, no esta bien, no estan bien, no se siente igual, no siento igual, no lo siento igual,
    no la siento igual, menos que antes, no noto igual`,
}
