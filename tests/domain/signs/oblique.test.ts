import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

describe('signs told by a picture', () => {
  it.each([
    ['en', 'feels like im sitting on a sponge even standing up', 'saddle-numbness'],
    ['en', 'if someone kicked me in the crotch i wouldnt know', 'saddle-numbness'],
    ['en', 'drank loads all day and not gone', 'bladder-change'],
    ['en', 'always more left in there after i go', 'bladder-change'],
    ['en', 'my left has caught it from the right', 'both-legs'],
    ['en', 'leg power is half what it was', 'leg-weakness'],
    ['en', "won't be around much longer", 'self-harm'],
    ['en', 'that leg just quit on me in the shower', 'leg-weakness'],
    ['en', 'that leg just quit, no pain, nothing there', 'leg-weakness'],
    ['en', 'giving my guitar away, sorted the passwords for my sister, wrote mum a card', 'self-harm'],
    ['es', 'es como si estuviera sentado en una nube', 'saddle-numbness'],
    ['es', 'se me queda el pis dentro', 'bladder-change'],
    ['es', 'la buena ya tampoco', 'both-legs'],
    ['es', 'me tuvieron que levantar, la pierna no tiraba', 'leg-weakness'],
    ['es', 'caí redondo en la cocina', 'chest-breath'],
    ['es', 'se me sale el agua por un lado', 'stroke-signs'],
    ['es', 'ya no seré una carga', 'self-harm'],
    [
      'es',
      'regalé mi guitarra, le dejé las claves a mi hermana y le escribí una tarjeta a mamá',
      'self-harm',
    ],
    ['es', 'adivine quien se cayo de la escalera podando el mango, de bien alto', 'major-injury'],
  ] as const)('%s: %s', (locale, text, sign) => expect(screen(text, locale).signs).toContain(sign))

  it.each([
    ['en', 'sat on a foam block for the drill'],
    ['en', 'the good leg is good'],
    ['en', '2 calf 4, my laptop quit on me'],
    ['en', 'my calf quit hurting halfway through'],
    ['en', 'gave my old bike away, wrote mum a birthday card. 2 calf 3'],
    ['en', 'sorted the bills and the passwords for the new laptop'],
    ['en', 'more in the tank today, both done'],
    ['es', 'sentado en una pelota para el ejercicio'],
    ['es', 'la pierna buena está bien'],
    ['es', 'ordené las cuentas y las claves de la compu nueva'],
    ['es', 'se me cae la baba con mi nieto'],
    ['es', 'me quedan dos sesiones'],
  ])('%s: not %s', (locale, text) => expect(screen(text, locale).signs).toEqual([]))
})
