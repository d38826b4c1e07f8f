import { isCaudaEquina, type SignId } from '../../domain/signs/catalogue.ts'
import type { SignWords } from '../en/signs.ts'

export const SIGN_WORDS: Readonly<Record<SignId, SignWords>> = {
  'saddle-numbness': {
    label: 'Adormecido, con hormigueo o raro entre las piernas, en el ano o al limpiarme',
    question:
      '¿Notas algo nuevo o distinto entre las piernas: adormecido, con hormigueo o raro? Di sí si es en los genitales, en el ano, por dentro de las nalgas, o una sensación rara al limpiarte.',
    short: 'zona de la silla adormecida o con hormigueo',
  },
  'bladder-change': {
    label: 'Cuesta empezar a orinar, chorro débil, no lo siento o no puedo, o escapes nuevos',
    question:
      '¿Hay algo nuevo o distinto al orinar? Di sí si te cuesta empezar, si el chorro es débil, si se te escapa, si no lo sientes o si no puedes.',
    short: 'cambio al orinar',
  },
  'bowel-change': {
    label: 'Pierdo el control al hacer caca, o no siento cuándo tengo ganas',
    question:
      '¿Hay algo nuevo o distinto al hacer caca? Di sí si pierdes el control, o si no sientes cuándo tienes ganas.',
    short: 'cambio del intestino',
  },
  'sexual-change': {
    label: 'Pérdida nueva de sensación o función en los genitales o en el sexo',
    question:
      '¿Hay una pérdida nueva o distinta de sensación o de función en los genitales, por ejemplo en el sexo?',
    short: 'pérdida de sensación o función sexual',
  },
  'both-legs': {
    label: 'Dolor, hormigueo, adormecimiento o debilidad en las dos piernas',
    question:
      '¿Hay dolor, hormigueo, adormecimiento o debilidad, nuevos o distintos, en las dos piernas, aunque en una sea leve?',
    short: 'síntomas en las dos piernas',
  },
  'leg-weakness': {
    label: 'Pierna o pie débil: arrastra, golpea, falla, tropieza, no aguanta de puntas o talones',
    question:
      '¿Tienes una pierna o un pie débil, de forma nueva o distinta? Di sí si arrastra, golpea al pisar, te hace tropezar o te falla. Di sí si no puedes andar, o estar de puntas o de talones.',
    short: 'debilidad de pierna o pie',
  },
  'chest-breath': {
    label: 'Dolor en el pecho, falta de aire, tos con sangre, o un desmayo',
    question:
      '¿Tienes dolor en el pecho o falta de aire, nuevos o distintos? Di sí también si has tosido sangre o te has desmayado.',
    short: 'dolor de pecho, falta de aire, sangre o desmayo',
  },
  'stroke-signs': {
    label: 'Cara caída, brazo débil o dormido, habla rara, de golpe no veo o pierdo el equilibrio',
    question:
      '¿Ha llegado algo nuevo de golpe? Di sí si la cara cae de un lado, si un brazo está débil o dormido, si hablas raro, o si pierdes la vista o el equilibrio.',
    short: 'posibles signos de ictus',
  },
  'tearing-pain': {
    label: 'Dolor súbito que desgarra en vientre, pecho o espalda, vientre que late, o desmayo',
    question:
      '¿Tienes un dolor nuevo y súbito que desgarra, en el vientre, el pecho o la espalda? Di sí también si notas un latido en el vientre, o si te has desmayado.',
    short: 'dolor súbito que desgarra',
  },
  'major-injury': {
    label: 'Una mala caída, un choque o un golpe fuerte, y peor desde entonces',
    question:
      '¿Has tenido una mala caída, un choque o un golpe fuerte, con síntomas nuevos o distintos desde entonces?',
    short: 'peor desde un golpe grave',
  },
  'self-harm': {
    label: 'Pensamientos de hacerme daño, o de no querer vivir',
    question: '¿Piensas en hacerte daño, o en no querer vivir?',
    short: 'pensamientos de hacerse daño',
  },
  'fever-unwell': {
    label: 'Fiebre, escalofríos, o me siento mal junto con el dolor de espalda',
    question:
      '¿Tienes fiebre, escalofríos o un malestar nuevo, como de enfermedad, junto con el dolor de espalda?',
    short: 'fiebre o malestar',
  },
  'calf-swelling': {
    label: 'Una pantorrilla hinchada, caliente, roja o sensible al tocar',
    question: '¿Tienes una pantorrilla hinchada, caliente, roja o sensible al tocar, y es nuevo?',
    short: 'una pantorrilla caliente o hinchada',
  },
  'new-numbness': {
    label: 'Adormecimiento u hormigueo nuevo, o que se extiende, en una pierna o un pie',
    question:
      '¿Tienes adormecimiento u hormigueo en una pierna o un pie que sea nuevo, haya cambiado o se extienda?',
    short: 'adormecimiento nuevo o que se extiende, una pierna',
  },
  'severe-unrelenting': {
    label: 'Dolor de 9 o 10, o dolor que ninguna postura alivia',
    question: '¿Es nuevo o distinto que ninguna postura te alivie el dolor, ni por un rato?',
    short: 'dolor fuerte, ninguna postura alivia',
  },
  'minor-injury-risk': {
    label: 'Una caída o golpe pequeño, y tengo huesos frágiles o uso largo de corticoides',
    question:
      '¿Has tenido una caída o un golpe, aunque sea pequeño, y tienes huesos frágiles o tomas corticoides desde hace tiempo?',
    short: 'golpe menor, huesos frágiles o corticoides',
  },
  'night-pain': {
    label: 'El dolor me despierta de noche y no cede al cambiar de postura',
    question: '¿Es nuevo o distinto que el dolor te despierte de noche y no ceda al cambiar de postura?',
    short: 'dolor de noche que no cede',
  },
  'weight-loss': {
    label: 'Pierdo peso sin buscarlo',
    question: '¿Es nuevo que pierdas peso sin buscarlo?',
    short: 'pérdida de peso sin buscarla',
  },
  'night-sweats': {
    label: 'Sudor de noche que empapa la ropa o las sábanas',
    question: '¿Tienes un sudor de noche nuevo, que te empapa la ropa o las sábanas?',
    short: 'sudor de noche',
  },
  'cancer-history': {
    label: 'Tengo o tuve cáncer, y no lo había dicho antes',
    question: '¿Tienes o has tenido cáncer, y es nuevo para nosotros (no lo dijiste al inicio)?',
    short: 'cáncer, dicho ahora',
  },
  'new-symptoms-elsewhere': {
    label: 'Síntomas nuevos en otro lugar: brazos, cara, ojos, equilibrio o la otra pierna',
    question:
      '¿Hay síntomas nuevos o distintos en otro lugar, como brazos, cara, ojos, equilibrio o la otra pierna?',
    short: 'síntomas nuevos en otro lugar',
  },
}

/** What to say on the telephone or at the desk, for the five signs of the cauda equina. Not a finding: a question for them. */
export const SAY_CAUDA_EQUINA =
  'Di allí: “posible síndrome de cauda equina”, y cuenta lo que me acabas de decir.'
const SAY_WORDS = 'Di allí lo que me acabas de contar, y desde cuándo.'

/** The sentence what to say at the emergency department, for the signs of one event. */
export const sayThere = (signs: readonly SignId[]): string =>
  signs.some(isCaudaEquina) ? SAY_CAUDA_EQUINA : SAY_WORDS
