import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PhoneLine, REGION_CODES, type Region, regionOf } from '../../src/domain/region.ts'

const regions = REGION_CODES.map((code) => regionOf(code)!)
const of = (code: string): Region => regionOf(code)!
const lines = (region: Region): PhoneLine[] =>
  [region.emergency, ...region.alsoEmergency, region.outOfHours, region.crisis, region.crisisText].filter(
    (line) => line !== null,
  )
const digits = (text: string): string => text.replace(/\D/g, '')

describe('emergency numbers', () => {
  // services' own pages, or press and memory where the table says so
  it.each([
    ['PT', '112'],
    ['IE', '112'],
    ['HR', '112'],
    ['GB', '999'],
    ['US', '911'],
    ['CA', '911'],
    ['MX', '911'],
    ['AU', '000'],
    ['NZ', '111'],
    ['IN', '112'],
    ['JP', '119'],
    ['BR', '192'],
    ['ZA', '10177'],
    ['CH', '144'],
    ['NO', '113'],
    ['IS', '112'],
    ['SG', '995'],
  ])('%s: %s', (code, number) => {
    expect(of(code).emergency.number).toBe(number)
  })

  it('hold all 27 states of the Union at 112', () => {
    const union = 'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(
      ' ',
    )
    expect(union).toHaveLength(27)
    for (const code of union) expect(of(code).emergency.number, code).toBe('112')
  })

  it('name 112 in Australia and South Africa only beside the first number, for mobiles', () => {
    for (const code of ['AU', 'ZA'])
      expect(of(code).alsoEmergency).toEqual([expect.objectContaining({ number: '112', mobileOnly: true })])
  })
})

describe('the traps: one number, two meanings', () => {
  it('111 is the ambulance in New Zealand and nowhere else; in Britain it is advice', () => {
    const with111 = regions.filter((region) =>
      [region.emergency, ...region.alsoEmergency].some((line) => line.number === '111'),
    )
    expect(with111.map((region) => region.code)).toEqual(['NZ'])
    expect(of('GB').outOfHours?.number).toBe('111')
    expect(of('GB').traps).toContainEqual({ number: '111', reaches: 'advice' })
    expect(of('NZ').outOfHours).toBeNull()
  })

  it('112 reaches the police in Norway and Switzerland and is never an ambulance line there', () => {
    for (const code of ['NO', 'CH']) {
      expect(lines(of(code)).map((line) => line.number)).not.toContain('112')
      expect(of(code).traps).toContainEqual({ number: '112', reaches: 'police' })
    }
  })

  it('113 is the ambulance in Norway only, and a crisis line in the Netherlands, whose free number is given', () => {
    const with113 = regions.filter((region) => region.emergency.number === '113')
    expect(with113.map((region) => region.code)).toEqual(['NO'])
    expect(of('NL').emergency.number).toBe('112')
    expect(of('NL').crisis?.number).toBe('0800-0113')
    expect(of('NL').traps).toContainEqual({ number: '113', reaches: 'crisis line' })
  })

  it('116117 (a doctor) and 116 123 (a crisis line) are never taken for one another', () => {
    for (const region of regions) {
      expect(digits(region.crisis?.number ?? ''), region.code).not.toBe('116117')
      expect(digits(region.outOfHours?.number ?? ''), region.code).not.toBe('116123')
      expect(['116117', '116123'], region.code).not.toContain(digits(region.emergency.number))
    }
    expect(of('NO').outOfHours?.number).toBe('116117')
    expect(of('GB').crisis?.number).toBe('116 123')
  })

  it('116 123 is not given for a state of the Union where it is not known to answer', () => {
    for (const code of ['PT', 'BG', 'LV']) expect(of(code).crisis, code).toBeNull()
  })

  it('no number listed as a trap is offered as an ambulance in the same region', () => {
    for (const region of regions)
      for (const trap of region.traps)
        expect([region.emergency, ...region.alsoEmergency].map((line) => line.number)).not.toContain(
          trap.number,
        )
  })

  it('a British client in New Zealand gets 111, and 999 at home', () => {
    expect([of('GB'), of('NZ')].map((region) => region.emergency.number)).toEqual(['999', '111'])
  })
})

describe('crisis lines', () => {
  it.each([
    ['US', '988'],
    ['CA', '988'],
    ['AU', '13 11 14'],
    ['NZ', '1737'],
    ['IN', '14416'],
    ['BR', '188'],
    ['FR', '3114'],
    ['ES', '024'],
    ['NO', '113'],
    ['GB-NIR', '0808 808 8000'],
  ])('%s: %s', (code, number) => {
    expect(of(code).crisis?.number).toBe(number)
  })
})

describe('the table', () => {
  it('gives each number a source and how it was seen', () => {
    for (const region of regions)
      for (const line of lines(region)) {
        expect(line.source.trim(), region.code).not.toBe('')
        expect(['T', 'E', 'M']).toContain(line.seen)
        expect(line.source === 'from memory', `${region.code} ${line.number}`).toBe(line.seen === 'M')
        expect(line.number).toMatch(/^[0-9][0-9 -]*$/)
      }
  })

  it('has each code once, and only real ones', () => {
    expect(new Set(REGION_CODES).size).toBe(REGION_CODES.length)
    const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' })
    for (const code of REGION_CODES) expect(names.of(code.slice(0, 2)), code).toBeDefined()
  })
})

describe('looking up', () => {
  it('reads either case, and UK as people write it', () => {
    expect(regionOf('nz')).toBe(regionOf('NZ'))
    expect(regionOf(' pt ')).toBe(regionOf('PT'))
    expect(regionOf('UK')).toBe(regionOf('GB'))
  })

  it.each(['', 'XX', 'ZZ', 'KE', 'EU', 'Norway', 'NOR', '47', '112', '__proto__', 'constructor'])(
    'gives null and no digits for %j',
    (code) => {
      expect(regionOf(code)).toBeNull()
    },
  )

  it('never throws, and never answers for a code that is not in the table', () => {
    fc.assert(
      fc.property(fc.string(), (code) => {
        const found = regionOf(code)
        expect(found === null || code.trim().toUpperCase() === found.code || /^\s*uk\s*$/i.test(code)).toBe(
          true,
        )
      }),
    )
  })
})
