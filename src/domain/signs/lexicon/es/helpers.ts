import type { LexiconSource } from '../shape.ts'
import { NO_WEAK } from './let-be.ts'

/** Small classes of patterns and cues. */
export const helpers: LexiconSource['words'] = {
  /** Of `no`: what denies in one phrase that something is amiss. */
  well: `
    sin (problema/problemas/dificultad/dificultades/molestias/cambios/cambio) (para/con/de/en/al),
    no tengo (problema/problemas/dificultad/dificultades/cambios/molestias) (para/con/de/en/al),
    (ni/sin/) nada (raro/rara/extrano/malo/anormal/distinto) (en/al/con/por/)`,
  /** Answered with no these tell a weak leg, no hold, no wish to live. */
  'leg-up': `
    (pie/dedo gordo/dedos/punta/puntas/talon/tobillo/pierna/pie derecho/pie izquierdo/talon derecho/talon izquierdo) arriba,
    dedo gordo, talones, (en/sobre/de) (los talones/las puntas/puntas/talones), rodilla estirada`,
  holding: 'aguantar, aguantarme, aguantarla, siento al orinar, siento al mear',
  living: `
    vivir, seguir (viviendo/aqui/vivo/viva), (quiero/querer) (vivir/seguir), (motivos/razones/ganas) (para/de) (vivir/seguir/seguir viviendo),
    despertarme, a salvo conmigo`,
  /** By itself beside a place: nothing to tell, or nothing felt. */
  nothing: 'nada, nadita, cero',
  /** What ought to work, and doing it: whoever denies these tells a sign. */
  'works-word': `
    gana de, ganas de, ganas de orinar, control de, controlo el, controlo la, intento, intente, intentar, trato, trate,
    quiero, quise, pujo, aprieto,
    puedo, podia, pude, podemos, poder, pueda, podido, logro, logre, logrado, consigo, consegui, conseguido, alcanzo,
    siento, sentia, senti, sentir, sentido, noto, notaba, note, notar, notado, percibo, percibir, aguanto, aguantar,
    controlo, controlar, retengo, retener, sensibilidad, sensacion, tacto, control, gana, ganas, fuerza, fuerzas,
    ereccion, erecciones, chorro, orino, orine, orinaba, meo, mee, meaba, hago, hice, hacia, sale, salen, salio, responde,
    responden, se me para, se me levanta`,
  elsewhere: `
    ejercicio, ejercicios, sesion, sesiones, sueno, trabajo, animo, energia, apetito, plan, familia,
    entrenamiento, gimnasio, banda, video, enlace, boton`,
  'child-wet': `
    (de/cuando era) (nino/nina/pequeno/pequena/chico/chica/crio/cria/chiquito/chiquita/bebe) (yo/) me (hacia/meaba/orinaba) (pis/pipi/encima/) (en la cama/encima/),
    me (hacia/meaba/orinaba) (pis/pipi/) (en la cama/encima) (de/cuando era) (nino/nina/pequeno/pequena/chico/chica/crio/cria/chiquito/chiquita),
    (de/cuando era) (nino/nina/pequeno/pequena/chico/chica/crio/cria/chiquito/chiquita) mojaba la cama, mojaba la cama (de/cuando era) (nino/nina/pequeno/pequena/chico/chica/crio/cria/chiquito/chiquita)`,
  'thing-word': `
    problemas para, problema para, dificultad para, dificultades para,
    dolor de pecho, dolor en el pecho, dolores en el pecho, opresion en el pecho, falta de aire, dificultad
    para respirar, perdida de peso, sudores nocturnos, sudoracion nocturna, sudor nocturno, dolor nocturno,
    vision doble, vision borrosa, mareos, mareo, hinchazon, fiebre, escalofrios, tiritona, temperatura,
    perdida de orina, perdidas de orina, escapes de orina, incontinencia, desmayos, caidas, tropiezos,
    dificultades, sangre, inflamacion, retencion de orina, malestar, palpitaciones, calambres, ahogos, pie
    caido, coagulos, trombosis, falta de fuerza, perdida de fuerza, perdida de sensibilidad, problemas de
    equilibrio`,
  'no-numb': `
    nada (dormido/dormida/adormecido/adormecida/entumecido/entumecida/acorchado/acorchada/insensible),
    (no/tampoco) (noto/siento/he notado) que se me (duerma/duerman/adormezca/adormezcan) (nada/),
    no se me (duerme/duermen/adormece/adormecen) (nada/la pierna/el pie/las piernas/los
    pies/)`,
  'no-weak': `
    ${NO_WEAK},
    no (arrastro/se me va/se me
    dobla) (el pie/la pierna/la rodilla/los pies/), no me (falla/fallan) (la pierna/las piernas/la rodilla/el
    pie/nada/), tengo fuerza, la misma fuerza, fuerza normal`,
  'no-pee': `
    (no/aun no/todavia no/sin) (he/) (orinado/orinar/orino/orine/meado/meo/mee/mear/hago pis/hice pis/hecho
    pis/hacer pis/hago pipi/hice pipi/hecho pipi/hacer pipi/hacer pichi/hago pichi/hice pichi/hacer del uno/hacer chis)`,
  'no-poo': `
    (no/aun no/todavia no/sin) (he/voy/) (cagado/cagar/cago/cague/evacuar/evacuado/evacuo/defecar/defecado/ir de vientre/de vientre/de cuerpo/ir de
    cuerpo/hacer caca/hago caca/hecho caca/hacer popo/hago popo/hecho popo/hacer del dos/obrar/ir al bano de lo
    grande)`,
  'not-wet': `
    no me (hago/hice/he hecho/hago mas) (pis/pipi/caca/popo) (encima/), no me (meo/orino/cago) encima`,
  hours: `desde, horas, todo el dia, toda la noche, dias, semana, semanas, hs, hrs, hora, anoche, ayer, en todo el dia, desde ayer`,
}
