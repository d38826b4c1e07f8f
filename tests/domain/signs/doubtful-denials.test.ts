import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

describe('what reads like a denial and may tell the sign', () => {
  it.each([
    ['en', 'feeling when I wipe: none', 'saddle-numbness'],
    ['en', 'feel the paper? no', 'saddle-numbness'],
    ['en', 'no pain or feeling down there', 'saddle-numbness'],
    ['en', 'nor can i pee', 'bladder-change'],
    ['en', 'bladder control: none', 'bladder-change'],
    ['en', 'neither pee nor poo will come out', 'bowel-change'],
    ['en', 'erections: none', 'sexual-change'],
    ['en', 'numb not painful down there', 'saddle-numbness'],
    ['en', 'numb but no pain down there', 'saddle-numbness'],
    ['en', 'wee normal: no', 'bladder-change'],
    ['en', 'neither my bladder nor my bowels work', 'bladder-change'],
    ['en', 'never once could I stand on my toes', 'leg-weakness'],
    ['en', 'not a single feeling down there', 'saddle-numbness'],
    ['en', 'stand on toes: no', 'leg-weakness'],
    ['en', '2 calf 4, lift foot: no', 'leg-weakness'],
    ['en', 'tiptoes no', 'leg-weakness'],
    ['en', 'can I stand on my heels? no', 'leg-weakness'],
    ['en', 'everything ok, bladder not', 'bladder-change'],
    ['en', 'sex fine, wee fine, poo not', 'bowel-change'],
    ['en', 'nothing down there', 'saddle-numbness'],
    ['en', 'everything ok but not my bowels', 'bowel-change'],
    ['en', '2 calf 4 but bladder no', 'bladder-change'],
    ['en', 'strength yes, bladder no', 'bladder-change'],
    ['en', 'bladder no, rest fine', 'bladder-change'],
    ['en', 'right foot up: no', 'leg-weakness'],
    ['en', 'on heels: no', 'leg-weakness'],
    ['en', 'holding on: no', 'bladder-change'],
    ['en', 'want to live: no', 'self-harm'],
    ['en', 'reasons to live? zero', 'self-harm'],
    ['es', 'todo bien pero vejiga no', 'bladder-change'],
    ['es', 'fuerza sí, vejiga no', 'bladder-change'],
    ['es', 'talones: no', 'leg-weakness'],
    ['es', 'pie arriba: no', 'leg-weakness'],
    ['es', 'entre piernas: nada', 'saddle-numbness'],
    ['es', 'aguantarme: no', 'bladder-change'],
    ['es', 'seguir viviendo? no', 'self-harm'],
    ['es', 'motivos para seguir: ninguno', 'self-harm'],
    ['en', '2 calf 4 nothing down there', 'saddle-numbness'],
    ['en', 'wee: nothing', 'bladder-change'],
    ['es', 'de puntillas no', 'leg-weakness'],
    ['es', 'levantar el pie: no', 'leg-weakness'],
    ['es', 'piernas bien, vejiga no', 'bladder-change'],
    ['es', 'pipí: nada', 'bladder-change'],
    ['es', 'ahí abajo nada', 'saddle-numbness'],
    ['es', 'ninguna sensación ahí abajo', 'saddle-numbness'],
    ['es', 'ni orinar puedo', 'bladder-change'],
    ['es', '¿puedo orinar? no', 'bladder-change'],
    ['es', 'no tengo fiebre ni puedo orinar', 'bladder-change'],
    ['es', 'sensibilidad al limpiarme, ninguna', 'saddle-numbness'],
    ['es', 'no tengo dolor ni sensibilidad en la entrepierna', 'saddle-numbness'],
    ['es', 'ni pis ni caca me salen', 'bowel-change'],
    ['es', 'erecciones: cero', 'sexual-change'],
  ] as const)('%s: %s is asked about', (locale, text, sign) => {
    const { signs, denied } = screen(text, locale)
    expect(signs).toContain(sign)
    expect(denied).not.toContain(sign)
  })

  it.each([
    ['en', 'leaking pee: no', 'bladder-change'],
    ['en', 'no numbness, nothing down there', 'saddle-numbness'],
    ['en', 'nothing odd down there', 'saddle-numbness'],
    ['en', 'bladder no, bowels no', 'bladder-change'],
    ['en', 'bladder trouble: nothing', 'bladder-change'],
    ['es', 'adormecimiento no, pis no, caca no', 'bladder-change'],
    ['es', 'pies normales, sin hormigueo, entrepierna nada', 'saddle-numbness'],
    ['en', 'sore but no numbness down there', 'saddle-numbness'],
    ['en', 'neither my bladder nor my bowels bother me', 'bladder-change'],
    ['en', 'no problems with bladder control', 'bladder-change'],
    ['en', "haven't felt any numbness down there", 'saddle-numbness'],
    ['en', 'no, I can feel everything when I wipe', 'saddle-numbness'],
    ['es', 'problemas de control de la orina ninguno', 'bladder-change'],
    ['es', 'sensacion rara al limpiarme, ninguna', 'saddle-numbness'],
    ['es', 'no tengo dolor ni hormigueo en la entrepierna', 'saddle-numbness'],
    ['es', 'ni pis ni caca se me escapan', 'bladder-change'],
  ] as const)('%s: %s stays a denial', (locale, text, sign) => {
    const { signs, denied } = screen(text, locale)
    expect(signs).toEqual([])
    expect(denied).toContain(sign)
  })
})
