import type { NetSource } from '../../shape.ts'

/** Injury, tearing, infection, clot, pain beyond measure, and the slow signs. */
export const events: NetSource['words'] = {
  tearing: `
    descosi(era/o/endo/a/eran), descose, deshac(e/ia/iendo), desprendi(o/era/endo), desprende, solto algo, se
    solto, soltara, quebrara, quebro, trizaron, rompieran, partieran, desgarraran, rasgaran, cortaran,
    cortara, cortando por dentro, por la mitad, en canal, abrieran, clavaran, clavaron, clavado, atravesara,
    atraviesa, atraveso, atravesado, lanza, lanzazo, espada, apunalara, apunalado, explosion por dentro,
    martillazo por dentro, bombea, bombeo, bombeando, brinca, brinco, salta, saltar, saltando, retumba,
    desgarr(o/a/aba/ando/ado/on/ador/e/ara/ase), desgarrandome, rasg(o/a/aba/ando/ado/on/ara/ase),
    raj(o/a/aba/ando/ado/aran/ara/asen), rompi(o/a/endo/era/ese), roto, rota, rompe, reventon,
    revent(o/aba/ado/ara/ase), reviento, estall(o/aba/ara/ando), parti(o/a/endo/era/ese), partido, partida,
    parte en dos, en dos, abri(o/endo/era/eran/ese), abierto en, arranc(o/a/aban/ando/aran/ara), cuchillo,
    cuchillada, cuchilladas, punalada, punal, navajazo, hachazo, sierra, crack, crac, chasquido, latigazo,
    late, latia, latido(/s), latiendo, palpita, palpitando, pulso, pulsa, pulsando, pulsatil, corazon en,
    cremallera, tela, se me
    (rompe/rompio/rompia/raja/rajo/rasga/rasgo/desgarra/desgarro/abre/abrio/parte/partio),
    explot(o/a/aba/ando/ara), desgarrador`,
  worse: `
    desde entonces, desde eso, desde la caida, desde el golpe, desde el accidente, peor, empeorado, no puedo
    (moverme/levantarme/caminar/andar/sentarme/girar/apoyar/enderezarme/estar), mas dolor, mucho dolor,
    muchisimo, me duele (mas/mucho/un monton/horrores/todo/toda), dolor(/es), duele, horrible, fatal, brutal,
    terrible, insoportable, crujido, crujio, crack, crac, doblado, doblada, no me (puedo/pude)
    (mover/levantar/enderezar), tieso, tiesa, no hay quien`,
  swell: `
    hinchad(o/a/os/as), hinchazon, hincho, hincha, se me (hincha/hincho/ha
    hinchado/inflo/inflama/inflamo/puso/ha puesto/pone), inflamad(o/a), inflad(o/a), inflo, roja, rojo,
    rojiza, colorada, colorado, enrojecida, enrojecido, caliente, calor, ardiendo, ardia, hirviendo, quema,
    quemando, morada, morado, amoratada, violacea, azulada, brillante, tirante, tensa, dura, duro, gorda,
    gordo, gruesa, grueso, ancha, el doble, mas (grande/gruesa/gorda/ancha) que, globo, bota, salchicha,
    jamon, tronco, elefante, no me (cabe/entra/cierra/entraba/cabia), marca(/s), fovea, edema, vena(/s),
    centimetros mas, cm mas, aprieta, apretado`,
  sore: `
    que la (izquierda/derecha/otra), que el (izquierdo/derecho/otro), el doble, solo la, solo el, sin golpe,
    sin motivo, de repente, desde ayer, desde hoy, esta manana, dolor, duele, duele al tocar, dolorida,
    dolorido, al tocar, sensible, al tocarla, un lado, una sola, solo una, mas que la otra, que la otra, que
    el otro`,
  fever: `
    fiebre, febricula, calentura, fiebron, escalofrio(/s), tirit(o/ando/ona/onas/aba/era), temblando de frio,
    temblores, tiemblo, decimas, termometro, 37.5, 37.8, 37.9, 38, 38.2, 38.5, 38.7, 38.3, 38.4, 38.6, 38.1,
    38.8, 38.9, 39, 39.2, 39.5, 40, treinta y ocho, treinta y nueve, destemplad(o/a), sudando frio, sudor
    frio, castaneteo, castanetean, castaneteando, dientes, ardiendo, mantas, helado, helada, temperatura,
    febril, paracetamol cada`,
  'fever-word': `
    fiebre, febricula, calentura, fiebron, escalofrio(/s), tirit(o/ando/ona/onas/aba/era), temblando de frio,
    37.8, 37.9, 38, 38.1, 38.2, 38.3, 38.4, 38.5, 38.6, 38.7, 38.8, 38.9, 39, 39.1, 39.2, 39.5, 40, treinta y
    ocho, treinta y nueve, destemplad(o/a), castanetean, castaneteando, cuerpo cortado, febril`,
  degrees: `
    fiebre, grados, termometro, temperatura, marco, marca, marcaba, escalofrios, tengo, estoy a, calentura,
    subio a, me subio`,
  tested: `termometro, grados, temperatura, cuerpo, dientes, mantas, manta, cama, espalda, mal, decimas`,
  severe: `
    insoportable, inaguantable, insufrible, inhumano, intolerable, atroz, agonia, agonizando, tortura,
    suplicio, infierno, infernal, bestial, salvaje, horroroso, espantoso, gritar, grito, gritando, aullar,
    aullo, llorar, llorando, lloro, lagrimas, retuerzo, retorciendo, retorciendome, revuelco, vomitar del,
    desmayarme del, reviento, no (puedo/aguanto/soporto/resisto) (mas/), al limite, ni (sentado/de
    pie/tumbado/acostado/sentada/tumbada/acostada/parado/parada/quieto/quieta), ni una postura, ninguna
    (postura/posicion), en ninguna (postura/posicion), no hay (postura/posicion/manera/forma), no encuentro
    (postura/posicion/como ponerme/la postura/acomodo/una postura), no se como ponerme, da igual como me
    ponga, haga lo que haga, me ponga como me ponga, ni con
    (morfina/pastillas/calmantes/nada/tramadol/nolotil/medicacion/ibuprofeno), nada (me/)
    (calma/alivia/quita/ayuda/funciona/hace/hace efecto/lo calma/lo alivia/lo quita/lo baja), no
    (afloja/cede/baja/remite/calma/se calma/da tregua/me da tregua/para) (ni/con/de/un/), sin tregua, sin
    descanso, sin parar, las 24 horas, dia y noche`,
  pain: `dolor(/es), duele, doliendo, dolia, ciatica, espalda, pierna, lumbar`,
  'harm-end': `
    se (acabaria/acaba/acabara/terminaria/termina/terminara) todo, asi se (acabaria/acaba/acabara/terminaria),
    acabar con (todo/esto), terminar con (todo/esto), acabaria, se acabaria, tirarme, me tiro, me tiraria,
    saltar, saltara, tentacion, me llama, pensando en, he pensado en, se me pasa por la cabeza, tomarme(/las)
    todas, me tomo todas, dejar de sufrir, descansar para siempre, descansar de una vez, dormir para siempre,
    no despertar, volantazo, despedirme, desaparecer, morir(/me), matarme, no volver, que todo acabe, que
    acabe todo, que se acabe, y ya, y listo, y se acabo, fin de todo`,
  'end-it': `
    si yo no (estuviera/existiera/estuviese/existiese/estoy), (estarian/estaran/estaria/viviran) mejor sin mi,
    mejor sin mi, si me muriera, si me muero, si no estuviera yo, se acabaria todo, asi se acabaria, (que/para
    que) (todo/esto) (acabe/acabara/termine/terminara/se acabe) de una vez, dejar de existir, dejar de estar,
    no estar aqui, quitarme de en medio, (no/ya no) (quiero/quisiera) (despertar/despertarme/estar
    aqui/existir/vivir/seguir vivo/seguir viva), (nadie/no) me (echaria/echaran/extranaria/extranaran),
    (mejor/seria mejor) (si/que) yo no (este/estuviera/existiera), dormirme y no despertar, acostarme y no
    despertar, hacerme dano, me he hecho cortes, me corto, cortarme, despedidas, carta de despedida, dejar
    todo arreglado, escribi una carta a mi`,
  wake: `
    saca del sueno, sacarme del sueno, me saca del sueno, duermo a (ratitos/ratos/trocitos/cachos), dormir a
    ratos, (me/) interrumpe el sueno, corta el sueno, corta la noche, me levanta, me levanto, no concilio,
    imposible dormir, imposible pegar ojo, despertador, despierta, desperto, despiertan, despertaba, me
    despierto, me desperte, despertandome, desvela, desvelo, desvelado, desvelada, no (me deja/deja/me dejo)
    (dormir/pegar ojo), no (pego/pegue/he pegado) ojo, en vela, sin pegar ojo, saca de la cama, levanta de la
    cama, no duermo, no dormi, no he dormido, no puedo dormir, sin dormir, dando vueltas, pasear por, paseando
    por, caminar de noche`,
  'sleep-lost': `
    saca del sueno, (me/) (despierta/desperto/despertaba/desvela/desvelo), (no me deja/me impide/no deja/sin
    dejarme) dormir, no (duermo/dormi/pego ojo/pegue ojo/puedo dormir/consigo dormir), duermo a
    (ratitos/ratos/cachos), en vela, saca de la cama, levanta de la cama`,
  'not-eased': `
    (cambiar/cambio/cambie/cambiando/girar/moverme) (de/) (postura/posicion/lado/) (no/ni), da igual la
    postura, en ninguna postura, ninguna postura, no se (calma/pasa/quita/va/alivia), no hay postura, haga lo
    que haga, no encuentro postura, por mas que, ponga como me ponga, noche, noches, madrugada, de noche, por
    las noches, sueno, a las (1/2/3/4/5/dos/tres/cuatro/cinco), postura`,
  sweat: `
    transpir(o/ando/acion/e/ada/ado), transpiraba, moja, mojo, escurrir, escurro, goteando, banado, banada,
    nado en sudor, nadando en sudor, remojado, empapad(o/a/os/as), sudando, sudor(/es), sudo, sude,
    sudad(o/a/as/os), chorreando, cambiar(/me), calad(o/a/as), mojad(a/o/as/os), exprimir, hecho una sopa,
    hecha una sopa, sopa, charco`,
  thinner: `
    perdi, he perdido, perdido, perdiendo, baje, bajado, he bajado, bajando, menos, se me caen, me quedan
    grandes, me queda grande, me baila, me bailan, adelgace, adelgazado, adelgazando, agujero(/s), flaco,
    flaca, sin querer, sin dieta, sin hacer nada, sin proponermelo, holgad(o/a), sobra, huesos`,
  'thin-why': `
    sin (querer/dieta/hacer dieta/hacer nada/proponermelo/intentarlo/motivo/razon/explicacion/saber por
    que/cambiar nada/buscarlo), comiendo (igual/lo mismo/como siempre), como (igual/lo mismo), no se por que,
    ni idea, y no hago dieta, no hago dieta, se me caen, me quedan grandes, me queda grande, me baila, me
    bailan, sin esfuerzo, y eso que como`,
}
