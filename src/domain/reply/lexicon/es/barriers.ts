import type { LexiconData } from '../schema.ts'

/** What got in the way of a session, as an answer to that question. */
export const barriers: LexiconData['barriers'] = {
  time: 'tiempo, sin tiempo, falta de tiempo, no tengo tiempo, no tuve tiempo, trabajo, demasiado trabajo, ocupado, ocupada, ninos, familia, viaje, viajes, horario, reuniones, turnos, prisa, prisas',
  pain: 'dolor, me duele, me dolia, demasiado dolor, duele, duele mucho, dolorido, dolorida, empeora, me empeora, por el dolor',
  'unsure-how':
    'no se como, no se como se hace, no sabia como, no entiendo, no entendi, dudas, tecnica, no lo tengo claro, confuso, confundido, confundida, como se hace, no se hacerlo, insegura, inseguro',
  'no-kit':
    'sin banda, banda, no tengo banda, no tengo la banda, material, sin material, sin equipo, equipo, esterilla, sin esterilla, colchoneta, sin espacio, no tengo espacio, no tengo donde, se rompio la banda, goma, liga',
  other:
    'otra cosa, otro, otra, otro motivo, otra razon, otros, cansado, cansada, cansancio, pereza, flojera, olvide, se me olvido, me olvide, enfermo, enferma, gripe, resfriado, ninguna de estas, sin ganas, motivacion, animo, desanimo',
}
