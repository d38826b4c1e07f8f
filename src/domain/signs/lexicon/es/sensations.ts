import type { LexiconSource } from '../shape.ts'

const DEAD =
  'dormido/dormida/dormidos/dormidas/adormecido/adormecida/adormecidos/adormecidas/acorchado/acorchada/acorchados/acorchadas/entumecido/entumecida/entumecidos/entumecidas/entumida/entumido/entumidos/entumidas/anestesiado/anestesiada/anestesiados/anestesiadas/insensible/insensibles/adormilado/adormilada'
const WEAK_LEG = 'la pierna/el pie/la rodilla/el tobillo/las piernas/la pata/los pies/las rodillas'

/** What is felt, and how strength fails. */
export const sensations: LexiconSource['words'] = {
  'numb-noun': `
    adormecimiento, entumecimiento, acorchamiento, anestesia, insensibilidad, perdida de sensibilidad, falta
    de sensibilidad, perdida de sensacion, menos sensibilidad, cambio de sensibilidad, hipoestesia,
    parestesia, parestesias, adormecimientos, entumecimientos, sensacion de corcho, sensacion de anestesia,
    sensibilidad reducida, sensibilidad disminuida`,
  numb: `
    sin nada de (sensibilidad/sensacion/tacto),
    se me (empezo a/empieza a/esta empezando a/empiezan a/empezaron a/vuelve a/volvio a/suele/suelen)
    (dormir/adormecer/dormirse/entumecer/acorchar), ${DEAD.replaceAll('/', ', ')},
    (bien/muy/super/re/como/medio/todo/toda) (${DEAD}), como (corcho/carton/de corcho/de carton/de madera/de
    goma/anestesia/con anestesia/algodon), como si no fuera (mia/mio/mias/mios), como en el dentista, se me
    (duerme/duermen/durmio/durmieron/adormece/adormecen/adormecio/adormecieron/entumece/entumecen/entumecio/acorcha/acorchan/acorcho/entume/entumen),
    se me (ha/han/esta/estan)
    (dormido/dormida/adormecido/adormecida/entumecido/acorchado/durmiendo/adormeciendo/quedado
    dormido/quedado dormida/quedado dormidas/quedado dormidos), se
    (duerme/duermen/durmio/adormece/adormecen/entumece), (perdi/he perdido/pierdo/perdiendo/perdio/perdido)
    (la/) (sensibilidad/sensacion), (no hay/no tengo/sin/ya no tengo/casi no tengo/tengo menos/poca/nada
    de/menos) (sensibilidad/sensacion/tacto), muerta, muerto, no se siente, no se sienten, dormirse,
    (quedo/quedaron/queda/quedan) (dormido/dormida/dormidas/dormidos)`,
  'numb-word': `
    adormecido, adormecida, adormecidos, adormecidas, entumecido, entumecida, acorchado, acorchada, perdida
    de sensibilidad, (perdi/he perdido/pierdo) (la/) sensibilidad, no tengo sensibilidad, sin sensibilidad,
    (ninguna/ni una/ni una sola/ni la menor/ni la mas minima/ni pizca de/ni gota de/nada de/cero/nula) (sensacion/sensibilidad),
    se me duerme, se me duermen`,
  'tingle-noun': `
    hormigueo, hormigueos, ormigueo, cosquilleo, cosquilleos, hormiguitas, hormigas, alfileres, agujas,
    pinchazos como agujas, hormigeo`,
  tingle: `
    hormiguea, hormiguean, me hormiguea, me hormiguean, cosquillea, cosquillean, hormigueando, me cosquillea`,
  'odd-word': `
    raro, rara, raros, raras, extrano, extrana, extranos, extranas, distinto, distinta, distintas, diferente,
    diferentes, mal, anormal, cosa rara, no va bien, no van bien, no es normal, sensacion rara, sensacion
    extrana, fatal, hinchazon rara, no son normales, no funciona, no funcionan, no me funciona`,
  trouble: `
    problema, problemas, dificultad, dificultades, trastorno, cambio, cambios, lio, lios, alteracion,
    alteraciones, urgencia, molestia al`,
  pain: `
    dolor, dolores, duele, duelen, me duele, me duelen, dolia, dolian, doliendo, dolorida, dolorido,
    calambre, calambres, calambrazo, calambrazos, ardor, quemazon, punzada, punzadas, pinchazo, pinchazos, me
    ha dolido`,
  sore: `molestia, molestias, resentidas, cargadas`,
  'no-feel': `
    (no consigo/no logro/no puedo/no alcanzo a/no llego a/no soy capaz de/incapaz de/soy incapaz de/no me deja/es imposible) (sentir/notar) nada,
    (no/ya no/nunca) (tengo/hay/tener/queda/me queda) (ninguna/nada de/mas) (sensibilidad/tacto),
    no ciento,
    (apenas/casi no/ya ni/ni siquiera) (siento/noto), (no/ya no/apenas/casi no/nunca/no me/ya no me/apenas
    me/casi ni/casi no me/ni/ni me) (siento/noto/sentia/notaba/senti/note/he sentido/he notado/entero/doy
    cuenta) (nada/bien/mucho/casi/lo/), no (logro/consigo/puedo) (sentir/notar), no se si (ya/) (termine/he
    terminado/acabe/he acabado/estoy orinando/orine), no (distingo/percibo/tengo sensacion de), dejo de
    sentir, deje de sentir, sin sentir nada, no lo (siento/noto/senti), no la (siento/noto), no los
    (siento/noto), no las (siento/noto), no sentir, sin (sentir/notar) (nada/), no me entero, no tengo
    sensacion`,
  'feeling-word': `sensibilidad, sensacion, tacto`,
  lost: `
    perdi, he perdido, perdido, perdida, pierdo, perdiendo, se me fue, se me ha ido, desaparecio, disminuida`,
  yes: `si, sip, sii, siii, afirmativo, positivo, presente, ✓, ✅`,
  'weak-noun': `
    debilidad, falta de fuerza, perdida de fuerza, pie caido, pie equino, caida del pie, paralisis, flojera,
    (que/vaya/pura) flojera (en/de) (la/las/el/los/mi/mis/esta/ambas) (pierna/piernas/pie/pies/rodilla/rodillas/gemelo/pantorrilla/muslo/tobillo),
    falta de fuerzas, perdida de fuerzas`,
  weak: `
    sin nada de (fuerza/fuerzas),
    caido, caida, caidos, caidas, cuelga, cuelgan, colgado, colgada, de plomo, se me tuerce, se me engancha,
    se engancha, se me enreda, no puedo apoyar, no puedo cargar, no apoya, sin tono, atrofiada, mas delgada,
    mas flaca, no me da, no da, no me obedece, menos fuerza, menos fuerzas, poca fuerza, perdiendo fuerza,
    perdiendo la fuerza, cedio, cedieron, cede, ceden, me cedio, lo arrastro, la arrastro, arrastro,
    arrastra, arrastrando, no lo levanto, no la levanto, vencio, flaqueo, flaquea, no me sigue, no tira,
    debil, debiles, floja, flojo, flojas, flojos, (sin/no tengo/no tiene/no tienen/no hay/perdi/he
    perdido/pierdo/perdio/ha perdido/menos/poca/ya no tengo/ya no tiene/apenas tengo/casi no tengo/tengo
    menos/tengo poca/pierde/no me queda/estoy perdiendo) (la/) (fuerza/fuerzas), (no/ya no/apenas) (me/)
    (sostiene/sostienen/aguanta/aguantan/responde/responden/obedece/obedecen/soporta/soportan/sujeta/sujetan/mueve/mueven/carga),
    no se (mueve/mueven/levanta), paralizada, paralizado, paralizadas, de trapo, como de trapo, como un
    trapo, inutil, colgando, muerta al andar, me (falla/fallan/fallo/fallaron/ha fallado/fallo/traiciona), se
    me (va/fue/ha ido/dobla/doblan/doblo/doblaron/ha doblado/vence/vencen/vencio/afloja/aflojan/aflojo/queda
    atras/cae el pie/iba/doblaba/quiebra), se me va sola, falla, fallan, cede, me cede, debilitando, cojeo,
    renqueo`,
  'weak-verb': `se me dobla, se me doblan, me falla, me fallan, se me vence`,
  'weak-word': `sin fuerza, debil, perdi fuerza, he perdido fuerza, perdi la fuerza`,
  'weak-alone': `
    se me callo (el/mi) pie,
    (que/vaya/pura/mucha/nomas/hoy/hoy fue/fue/neta/q) flojera (total/hoy/mortal/nivel/) (en/de/) (la/las/el/los/mi/mis/ambas/) (dos/) (piernas/pies/rodillas),
    (siento/noto/tengo) (las piernas/los pies/la pierna) (con/como) pies de plomo,
    (pierdo/perdi/perdiendo/he perdido/voy perdiendo) (la/) fuerza (en la pierna/en el pie/en las piernas/en la rodilla/),
    (pie/pierna/punta/punta del pie/dedo gordo) (derecho/izquierdo/derecha/izquierda/) no (me/se/)
    (sube/levanta/reacciona/dobla/flexiona), (se me engancha/se engancha/engancho/enganchando) (la punta/la
    punta del pie/el pie/los dedos), no me (tengo/sostengo/mantengo) (en pie/de pie), no me
    (sostienen/aguantan) las piernas, (me/) (caigo/voy cayendo) (todo el rato/mucho/cada dos por tres),
    pierna de trapo, pie de trapo, pie muerto, (no subo/no puedo subir) la punta, pie caido, pie equino,
    caida del pie, (arrastro/arrastrando/arrastra/arrastrar/arrastre/voy arrastrando/arrastraba) (el pie/la
    pierna/los pies/la punta del pie/el pie izquierdo/el pie derecho/un pie/las piernas/la pata), se me
    (va/fue/ha ido/dobla/doblo/ha doblado/vence/vencio/afloja/aflojo/cae/queda) (${WEAK_LEG}), (${WEAK_LEG})
    se me (va/fue/dobla/doblo/vence/vencio/afloja/cae/doblan/aflojan), me (falla/fallo/fallan/ha fallado)
    (${WEAK_LEG}), (tropiezo/tropezando/me tropiezo/tropece) (todo el rato/todo el
    tiempo/mucho/constantemente/a cada rato/con la punta del pie/con la punta/con el pie/con mi pie/con mis
    pies/con los dedos/con mis propios pies), la punta del pie se me (engancha/queda/cae), el pie (me/)
    (golpea/cachetea/azota/chancletea) (el/contra el/al) (suelo/piso/andar), pie (cuelga/chancletea), el pie
    me cuelga, se me cae el pie, se me cae la punta, no levanto (el pie/la punta/los dedos), pierdo la
    chancla, ando como pato`,
  tripping: `tropiezo, me tropiezo, tropezones, tropezando, me tambaleo`,
  'leg-task': `
    (elevacion/elevaciones/subida/subidas/levantamiento/levantamientos/alzadas) de (talon/talones/puntillas/gemelo/gemelos/pantorrilla/puntera/punteras),
    (poner/parar/poner de/subir/sostener/apoyar/levantar) (de/en/sobre) (puntillas/puntitas/puntas/punta de pie/puntas de pie/puntas de los pies/las puntas/los talones/talones/el talon/la punta),
    (ponerme/pararme/andar/caminar/estar/subirme/ponerse/sostenerme/apoyarme) (de/en/sobre)
    (puntillas/puntitas/puntas/punta de pie/puntas de pie/puntas de los pies/las puntas/los
    talones/talones/el talon/la punta), puntillas, de puntillas, de talones, en puntas de pie, en puntitas,
    (levantar/mover/subir/alzar/elevar/doblar/flexionar/estirar) (el/la/los/las/mi/bien el/bien la/)
    (pie/punta/punta del pie/dedo gordo/dedos/dedos del
    pie/talon/pierna/talones/puntas/tobillo/piernas/pies/rodilla/pie derecho/pie izquierdo/pierna
    derecha/pierna izquierda), (apoyar/cargar) (el/la/peso en/) (pie/pierna/peso), subir (las/) escaleras,
    subir escalones, pisar el (pedal/embrague/freno), sostenerme en (una/la) pierna`,
  walk: `
    poner de pie, parar de pie, mantener en pie, mantener de pie, sostener de pie,
    caminar, andar, ponerme de pie, estar de pie, pararme, mantenerme en pie, mantenerme de pie, dar un paso,
    sostenerme, tenerme en pie`,
  jelly: `de gelatina, como gelatina, de mantequilla, de goma, temblorosas, me tiemblan`,
  'strength-word': `fuerza, fuerzas`,
  fail: `
    cedio, me cedio, arrastro, arrastra, lo arrastro, la arrastro, me falla, me fallan, se me va, se me van,
    se me dobla, no responde, no me responde, cede, falla, flaquea, flaquean, torpe`,
}
