import { describe, expect, it } from 'vitest'
import { saysChanged } from '../../../src/domain/signs/changed.ts'

describe('words about known trouble tell of a change', () => {
  it.each([
    ['bladder worse today', 'en', ['bladder']],
    ['it leaks more than it did', 'en', ['leaks']],
    ['la vejiga está peor hoy', 'es', ['vejiga']],
    ['se me escapa más que antes', 'es', ['escapa']],
    ['de repente no puedo orinar', 'es', ['orinar']],
  ])('%s', (text, locale, about) => expect(saysChanged(text, locale, about)).toBe(true))

  it.each([
    ['bladder as always, pain worse', 'en', ['bladder']],
    ['la vejiga como siempre, peor el dolor', 'es', ['vejiga']],
    ['la vejiga igual, sin cambios', 'es', ['vejiga']],
  ])('or of none: %s', (text, locale, about) => expect(saysChanged(text, locale, about)).toBe(false))
})
