import type { NetSource } from '../../shape.ts'

/** How passing water, bowels and sex fail. */
export const functions: NetSource['words'] = {
  'pee-fail': `
    (perdi/he perdido/pierdo/perdiendo/perder) (el/) control, sale sola, sale solo, cuando quiere, sin
    permiso, simplemente sale, se afloja, cada vez que, a traicion, se (me/)
    (escapa/escapan/escapo/escaparon/escapaba/ha escapado/han escapado/sale/salen/salio/salia/ha
    salido/va/van/fue/iba/ha
    ido/cae/cayo/gotea/chorrea/corta/cortaba/corto/atasca/atranca/para/paro/descarga/derrama/olvida/bloqueo/bloquea/viene/vino),
    escapo, escapar, escape(/s), escapadita, escapando, escapandose, fuga(/s), perdida(/s), gotea, goteo,
    goteando, goteras, gotera, gotita(/s), gota, gotas, a gotas, gota a gota, cuentagotas, chorrito,
    chorritos, hilo, hilillo, hilito, chorrea, moja, mojo, moje, mojado, mojada, mojados, mojadas, me mojo, me
    moje, mojando, humedo, humeda, humedad, empapado, empapada, empape, empapo, charco, charquito, mancha,
    manchado, manchada, manche, accidente, encima, incontinencia, incontinente, descontrol, descontrolado,
    retencion, atascado, atascada, atranque, bloqueado, bloqueada, obstruido, cortado, entrecortado,
    intermitente, debil, flojo, floja, poca presion, sin presion, sin fuerza, poca fuerza, lento, lenta,
    tarda, tardo, tardaba, tardando, tarde, eternidad, siglos, horas, rato, ratos, minutos, media hora,
    esperar, espero, esperando, esperaba, espere, empujar, empujo, empujando, apretar, aprieto, apretando,
    forzar, forzando, fuerzo, presionar, presiono, presionando, esfuerzo, pujar, pujo, pujando, hacer fuerza,
    haciendo fuerza, abrir el grifo, abro el grifo, abrir la llave, abro la llave, con el grifo abierto,
    parado delante, parado frente, parada, plantado, sentado, sentada, de pie, nada, ni gota, ni una gota, ni
    una, a medias, se queda, quedan, queda, quedo, sobra, resto, lleno, llena, llenisima, hinchada, globo, a
    reventar, reventar, estallar, a punto de, cada (rato/diez minutos/cinco minutos/media hora/hora/dos por
    tres/veinte minutos/poco/quince minutos), a cada rato, todo el tiempo, constantemente, de urgencia,
    urgencia, urgente, corriendo, correr, sprint, volando, no me da tiempo, no llego, no llegue, no llegaba,
    no alcanzo, no alcance, no aguanto, no me aguanto, no la aguanto, no lo aguanto, no aguante, no controlo,
    no lo controlo, no la controlo, no retengo, sin control, sin avisar, sin aviso, sin ganas, sin querer, de
    golpe, por sorpresa, sola, solo, solito, solita, panal, compresa, salvaslip, panales, sonda, despierta
    mojad, dormido, dormida, raro, rara, distinto, distinta, diferente, no es normal, tos, toser, toso,
    estornudo, estornudar, estornude, al reirme, me rio, al saltar, alarma, reloj, recordatorio, por rutina,
    problema, problemas, lios, cuesta, trabajo, rebelde, vaga, perezosa, huelga, de huelga, apagada, muerta,
    desconectada, estropeada, averiada, tonta, sorda, muda`,
  strain: `
    al (toser/estornudar/reirme/reir/saltar/levantar peso/agacharme/levantarme/correr/hacer fuerza), cuando
    (toso/estornudo/me rio/salto/levanto peso/me agacho/corro/hago fuerza), con la (tos/risa), toso,
    estornudo, estornude`,
  slip: `
    se me (escapa/escapan/escapo/sale/salen/salio/va/ha escapado/ha salido), se (escapa/sale/salio), mojo,
    moje, me mojo, gotea, gotas, gotitas`,
  drops: `gota(/s), gotita(/s), chorrito(/s), pis, pipi, orina, liquido, agua`,
  unaware: `
    sin (enterarme/darme cuenta/querer/sentir/notar/sentirlo/notarlo/avisar), ni me entero, no me entero, no
    me doy cuenta, no me di cuenta, ni me di cuenta, ni cuenta me doy, solas, solitas, solo, sola, sin
    control, pierdo, perdi, estoy perdiendo, he perdido`,
  tap: `
    (abrir/abro/abriendo/abri/dejar/dejo/con) (el/la) (grifo/llave/canilla/ducha/agua)
    (abierto/abierta/corriendo/), oir (el/correr el) agua, ruido del agua, sonda, sondaje, sondarme, sondado,
    sondada, cateter, cateterismo`,
  'tap-why': `
    para que (salga/empiece/arranque/baje/venga/me salga), para (mear/orinar/hacer pis/hacer
    pipi/empezar/arrancar), y esperar, esperar, espero, me pusieron, me tuvieron, ponerme, poner, vaciarme,
    urgencias, hospital`,
  'pee-wont': `
    no (me/se me/se/)
    (sale/salen/salia/salio/viene/vienen/vino/venia/arranca/arrancaba/empieza/baja/bajaba/avisa/avisan/avisaba/da
    la senal/da aviso/da ganas/dan ganas/entran
    ganas/vacia/vacio/vaciaba/obedece/responde/funciona/abre/corta/para/fluye/corre/termina de salir/acaba de
    salir/sale casi/cae/cierra/aguanta/despierta), no (termino/termine/acabo/acabe/vacio/he
    terminado/hago/hice/he hecho/meo/orino/mee/orine/he meado/he
    orinado/controlo/contengo/retengo/aguanto/sujeto/freno/paro/tengo ganas/tenia ganas/me vienen ganas/me
    entran ganas/siento ganas/noto ganas/llego/llegue/llegaba/alcanzo/alcance), ni (sale/gota/ganas/arranca),
    sin (terminar/acabar/mear/orinar/hacer pis/hacer pipi/ir al bano/que salga/ganas/que baje), aun sin, llevo
    sin, dejo de salir, ya no (sale/viene/baja/aviso/avisa), nunca termina, nunca acaba, nunca termino, nunca
    acabo`,
  'pee-act': `
    orinar, mear, hacer pis, hacer pipi, hacer pichi, miccionar, vaciar(/la/me), empezar, arrancar,
    aguantar(/me/lo/la), retener(/lo/la), contener(/me/lo/la), controlar(/lo/la/me), ir, hacer, parar(/lo),
    cortar(/lo), terminar, acabar, soltar, desaguar, sacar, expulsar, frenar, cerrar, llegar, sujetar, pis,
    pipi, hacer nada, iniciar, relajar, notar, sentir, saber, distinguir`,
  'wet-bad': `
    mojado, mojada, mojados, mojadas, mojo, moje, humedo, humeda, humedos, empapado, empapada, empapados,
    empapadas, meado, meada, meados, charco, charquito, mancha, manchas, pis, pipi, orina, orines, huele a,
    olor a, gotas, gotitas, calorcito, calentito`,
  'poo-fail': `
    (perdi/he perdido/pierdo/perdiendo/perder) (el/) control, simplemente sale, sale solo, sale sola, sale
    cuando quiere, cuando quiere, sin permiso, se afloja, se abre, no se cierra, se (me/)
    (escapa/escapan/escapo/escaparon/escapaba/ha escapado/han escapado/sale/salen/salio/salia/ha
    salido/va/fue/iba/ha ido/cae/cayo/ensucia/mancha/queda/quedo), escape(/s), escapar, escapando, fuga(/s),
    perdida(/s), ensucie, ensucio, ensuciado, ensuciada, sucio, sucia, sucios, sucias, suciedad, mancho,
    manche, mancha, manchas, manchado, manchada, manchados, manchadas, palomino(/s), rastro, rastros, restos,
    accidente, accidentes, encima, sin querer, sin control, sin avisar, sin aviso, de golpe, sorpresa, solo,
    sola, solos, incontinencia, incontinente, descontrol, no aguanto, no me aguanto, no lo aguanto, no
    aguante, no controlo, no lo controlo, no llego, no llegue, no alcance, no alcanzo, no retengo, no
    distingo, no diferencio, dormido, dormida, flojo, floja, abierto, abierta, blando, blanda, suelto, suelta,
    debil, no cierra, no aprieta, no responde, no avisa, no me avisa, panal, panales, lavar la ropa, con los
    guantes, con el dedo, atascado, atascada, dias sin, raro, rara, distinto, distinta, no es normal,
    urgencia, corriendo, empapado, no me da tiempo`,
  'poo-act': `
    aguantar(/me/lo/la), retener(/lo/la/me), contener(/me/lo/la), controlar(/lo/la/los/me), apretar(/lo),
    cerrar(/lo), empujar, sujetar(/lo), llegar, notar, sentir, saber, distinguir, cagar, hacer caca, hacer
    popo, hacer del dos, evacuar, defecar, ir, hacer`,
  'sex-fail': `
    no
    (siento/noto/senti/note/sentia/notaba/funciona/funciono/responde/respondia/respondio/reacciona/reacciono/levanta/despierta/arranca/llego/llegue/logro/consigo/puedo/pude/me
    entero/me entere/da senales/da/sirve/sube/crece/endurece/aguanta/se mantiene/lubrico/mojo/me
    mojo/termino/acabo/disfruto/siente/enterarme/hubo/tuve/se inmuta/se entera/se empina/empalma/se para/se
    pone), no se me (para/levanta/pone/empalma/empina/paro/levanto/puso/endurece), no me
    (funciona/responde/empalmo/excito/corro/vengo/mojo/sirve/reacciona), ni (se levanta/se inmuta/se
    entera/responde/siento/se para/cosquillas/fu ni fa/reacciona/pizca), ya no (responde/funciona/siento/se me
    para/se me levanta/reacciona/hay), se (baja/bajo/cae/cayo/afloja/duerme/me baja/me bajo/queda a medias),
    dormido, dormida, muerto, muerta, apagado, apagada, flacido, flacida, flojo, floja, blando, blanda, frio,
    fria, seco, seca, insensible, anestesiado, anestesiada, corcho, carton, plastico, goma, madera, raro,
    rara, distinto, distinta, diferente, sin
    (sensibilidad/sensacion/respuesta/reaccion/placer/sentir/exito/fuerza/fuerzas/erecciones/ereccion/notar/enterarme),
    perdi, he perdido, perdida, desaparecido, desaparecio, disfuncion, impotente, impotencia, gatillazo(/s),
    fallo, falla, fallando, fallos, problemas, problema, dificultad, dificultades, cuesta, imposible, nada,
    nada de nada, a medias, menos, mal, encoge, encogido, de vacaciones, de huelga, jubilado, se ha ido, se
    fue, no es lo mismo, no es como antes, como si fuera de otro, como si nada, ni me entero`,
  climax: `
    no (acabo/termino/llego/me corro/me vengo/consigo acabar/logro acabar/consigo terminar/logro
    terminar/puedo acabar/puedo terminar), correrme, venirme, acabar, eyacular, orgasmo`,
  'no-pleasure': `
    (no/ni/ya no/apenas/casi no/tampoco) (da/dan/siento/noto/hay/me da/me dan/tengo/encuentro)
    (placer/gusto/gustito/cosquillas/morbo/excitacion/deseo/sensacion/ganas), (sin/cero/nada
    de/poco/menos/falta de) (placer/gusto/morbo/excitacion/sensacion/sensaciones/deseo), (ni/no) me llega la
    sensacion, no se siente rico, desconectado, desconectada, desconectados, desconectaron, apagado, apagada,
    ni fu ni fa, ni placer, no me llega`,
}
