import type { DrillProse } from '../../domain/ladder/ladders.ts'

const SETTLE_CAUTION =
  'Que el apoyo suba el pecho, no tu espalda. ¿Embarazo? Pide una forma de hacerlo de lado.'
const LIE_STOP = 'Para si la espalda o la pierna duele más cuanto más tiempo pasas así.'
const PRESS_CAUTION = 'Que trabajen los brazos y la espalda quede suelta. Sube solo hasta donde sea fácil.'
const PRESS_STOP = 'Para si la espalda duele más con cada subida, o si duele una muñeca o un hombro.'
const BAND_LEGS = 'Banda fuerte, sobre tela, no justo detrás de las rodillas. La cara fuera de su línea.'
const BAND_HIP = 'La banda va sobre tela, no en la ingle. La cara fuera de su línea.'
const BAND_STOP = 'Para si los pies hormiguean o se enfrían, o si el anclaje se mueve.'
const NEW_HIP =
  'Que el estiramiento sea suave y la cola quede en el suelo. Con una prótesis de cadera, pregunta antes a tu médico.'
const HIP_STOP = 'Para si duele la ingle o la rodilla, o si la pierna hormiguea.'
const LOW_BACK_STOP = 'Para si te pincha la zona baja de la espalda o se acalambra el muslo.'
const LIFT_CAUTION = 'Muévete despacio, con el peso cerca, y suelta el aire al subir.'
const LIFT_STOP = 'Para si la espalda se curva y no puedes mantenerla larga.'

/** The words of every drill of the house, by drill id. All sentences are our own. */
export const DRILLS: Readonly<Record<string, DrillProse>> = {
  'settle:1': {
    name: 'Respirar boca abajo, frente en el suelo',
    how: 'Túmbate boca abajo con la frente en el suelo. Toma aire por la nariz y nota cómo el vientre empuja hacia abajo. Suelta el aire despacio y deja la espalda floja.',
    cautions:
      'Pon las manos bajo la frente si el cuello está rígido. ¿Embarazo? Pide una forma de hacerlo de lado.',
    stopIf: LIE_STOP,
  },
  'settle:2': {
    name: 'Respirar boca abajo, apoyo bajo',
    how: 'Túmbate boca abajo con una toalla doblada bajo el pecho. Toma aire por la nariz, hasta el vientre. Suelta el aire despacio y deja caer la cadera.',
    cautions: SETTLE_CAUTION,
    stopIf: LIE_STOP,
  },
  'settle:3': {
    name: 'Respirar boca abajo, apoyo más alto',
    how: 'Túmbate boca abajo con una almohada firme bajo el pecho. Toma aire por la nariz, hasta el vientre. Suelta el aire despacio y deja caer la cadera.',
    cautions: SETTLE_CAUTION,
    stopIf: 'Para si te pincha la espalda. Vuelve al apoyo bajo.',
  },
  'extension:1': {
    name: 'Apoyo en los antebrazos',
    how: 'Túmbate boca abajo con los codos bajo los hombros. Apóyate en los antebrazos para que el pecho suba y la cadera quede abajo. Aguanta, baja y descansa.',
    cautions: 'El cuello largo y la espalda suelta. ¿Embarazo? Pide una forma de hacerlo de pie.',
    stopIf: 'Para si la espalda duele más con cada subida.',
  },
  'extension:2': {
    name: 'Media subida de brazos',
    how: 'Túmbate boca abajo con las manos bajo los hombros. Sube a medias, con los codos aún doblados, y deja la cadera pesada en el suelo. Baja despacio y descansa.',
    cautions: PRESS_CAUTION,
    stopIf: PRESS_STOP,
  },
  'extension:3': {
    name: 'Subida de brazos entera, cadera pesada',
    how: 'Túmbate boca abajo con las manos bajo los hombros. Sube hasta estirar los brazos, o hasta donde la cadera pueda quedar pesada. Suelta el aire arriba y baja despacio.',
    cautions: PRESS_CAUTION,
    stopIf: PRESS_STOP,
  },
  'unload:1': {
    name: 'Banda bajo los muslos, pies abajo',
    how: 'Túmbate boca arriba, los pies planos, el anclaje sobre las rodillas. Deja los dos muslos en la banda; lleva parte de su peso. Para salir, vuelve despacio por el mismo camino: peso en los pies, quita la banda, gira de lado, descansa.',
    cautions: BAND_LEGS,
    stopIf: BAND_STOP,
  },
  'unload:2': {
    name: 'Banda bajo las piernas',
    how: 'Túmbate boca arriba, el anclaje sobre las rodillas. Deja una pantorrilla en la banda y luego la otra, con las rodillas como en una silla. Para salir, vuelve despacio por el mismo camino: un pie abajo, luego el otro, gira de lado, descansa.',
    cautions: BAND_LEGS,
    stopIf: BAND_STOP,
  },
  'glide:1': {
    name: 'Deslizar el nervio boca arriba',
    how: 'Túmbate boca arriba, sin arquear ni aplastar la espalda. Sujeta la pierna que duele por detrás del muslo, para que apunte arriba. Estira la rodilla solo hasta el primer tirón leve y dóblala otra vez al momento.',
    cautions: 'No aguantes nunca el tirón ni empujes más allá. Deja los dedos del pie sueltos.',
    stopIf: 'Para si el hormigueo sigue con la pierna ya abajo.',
  },
  'glide:2': {
    name: 'Deslizar el nervio con banda',
    how: 'Pon la banda en lo alto del muslo que duele, con un tirón leve hacia los pies. Sujeta el muslo arriba y estira la rodilla solo hasta el primer tirón leve. Dóblala otra vez al momento.',
    cautions: `No aguantes nunca el tirón. ${BAND_HIP}`,
    stopIf: 'Para si el hormigueo sigue con la pierna ya abajo.',
  },
  'open:1': {
    name: 'Mecer hacia atrás, rodillas abiertas',
    how: 'Ponte a cuatro patas con las rodillas abiertas. Con la espalda larga, lleva la cadera despacio hacia los talones. Vuelve adelante antes de que la espalda empiece a curvarse.',
    cautions: 'Pon algo blando bajo las rodillas. Un camino corto hacia atrás basta.',
    stopIf: 'Para si te pincha una rodilla o el frente de la cadera.',
  },
  'open:2': {
    name: 'Presión en silla, rodillas abiertas',
    how: 'Siéntate con la espalda alta, los pies planos y las rodillas abiertas. Aprieta las rodillas hacia fuera contra las manos, sin que nada se mueva. Suelta del todo antes de la siguiente.',
    cautions:
      'Al principio aprieta poco y sigue respirando. Cuando eso sea fácil, puedes aguantar hasta 10 segundos.',
    stopIf: 'Para si se acalambra la cadera o la ingle.',
  },
  'rotator:1': {
    name: 'Estirar la cadera en la pared',
    how: 'Túmbate boca arriba con el otro pie en la pared y la rodilla doblada. Cruza el tobillo de la pierna que duele sobre esa rodilla. Quédate donde notes un estiramiento suave en el fondo de la nalga.',
    cautions: NEW_HIP,
    stopIf: HIP_STOP,
  },
  'rotator:2': {
    name: 'Estirar la cadera, pie hacia el suelo',
    how: 'Túmbate boca arriba y cruza el tobillo de la pierna que duele sobre la otra rodilla. Lleva las dos piernas despacio al otro lado, con el pie cruzado hacia el suelo. Ve solo hasta donde los dos hombros queden abajo.',
    cautions:
      'Que el estiramiento sea suave, sin forzar el giro. Con una prótesis de cadera, pregunta antes a tu médico.',
    stopIf: 'Para si duele la espalda, la ingle o la rodilla, o si la pierna hormiguea.',
  },
  'rotator:3': {
    name: 'Estirar la cadera con banda',
    how: 'Pon la banda en lo alto del muslo que duele, con un tirón leve hacia fuera. Boca arriba, cruza ese tobillo sobre la otra rodilla. Quédate en un estiramiento suave.',
    cautions: `${BAND_HIP} ¿Prótesis de cadera? Pregunta a tu médico.`,
    stopIf: HIP_STOP,
  },
  'extend-hip:1': {
    name: 'Elevar la cadera, rodilla doblada',
    how: 'Túmbate boca abajo con la frente en las manos. Dobla una rodilla, aprieta esa nalga y sube un poco el muslo. Aguanta y baja despacio.',
    cautions: 'Los dos huesos de la cadera quedan en el suelo. Basta la altura de un dedo.',
    stopIf: LOW_BACK_STOP,
  },
  'extend-hip:2': {
    name: 'Elevar la cadera, pierna recta',
    how: 'Túmbate boca abajo con la frente en las manos. Aprieta una nalga y sube un poco esa pierna, con la rodilla recta. Aguanta y baja despacio.',
    cautions: 'Los dos huesos de la cadera quedan en el suelo. Basta la altura de una mano.',
    stopIf: LOW_BACK_STOP,
  },
  'extend-hip:3': {
    name: 'Elevar la cadera con giro',
    how: 'Túmbate boca abajo y sube un poco una pierna recta. Gira la punta del pie despacio hacia fuera y hacia dentro, con la pierna arriba. Luego baja despacio.',
    cautions: 'El giro sale de la cadera; los dos huesos de la cadera quedan en el suelo.',
    stopIf: LOW_BACK_STOP,
  },
  'lift:1': {
    name: 'Bisagra de cadera, sin peso',
    how: 'Ponte de pie a un pie de la pared, de espaldas a ella. Lleva la cadera atrás hasta la pared, con las rodillas sueltas y la espalda larga. Aprieta las nalgas y vuelve a estar de pie.',
    cautions: 'Empieza con un camino corto hacia abajo. Suelta el aire al subir.',
    stopIf: LIFT_STOP,
  },
  'lift:2': {
    name: 'Llevar un peso ligero',
    how: 'Toma un peso ligero con la bisagra y llévalo cerca del cuerpo. Anda despacio y con la espalda alta, con pasos iguales. Déjalo en el suelo del mismo modo.',
    cautions: 'Antes despeja el camino. No aguantes el aire.',
    stopIf: 'Para si te inclinas, cojeas o no puedes seguir con la espalda alta.',
  },
  'lift:3': {
    name: 'Bisagra con media carga',
    how: 'Tu coach pone la mitad de la última carga que iba bien. Empieza con el peso a la altura de la rodilla, lleva la cadera atrás y deja la espalda larga. Ponte de pie y déjalo del mismo modo.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
  'lift:4': {
    name: 'Bisagra, paso a paso',
    how: 'Haz la misma bisagra que en el peldaño de antes. La carga sube un paso por semana y no más rápido. Si un paso pesa mucho, vuelve al de antes.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
  'lift:5': {
    name: 'El levantamiento que quieres',
    how: 'Haz el levantamiento elegido con tu coach. Calienta antes con una serie ligera. Termina cada serie cuando aún podrías hacer dos más.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
}
