/** How a fact was come by: page text read (T), an excerpt or secondary page (E), from memory (M). */
export type Seen = 'T' | 'E' | 'M'

/** A number as it is dialled there, with its source. The keeper confirms the practice's own at set-up. */
export interface PhoneLine {
  readonly number: string
  readonly source: string
  readonly seen: Seen
  /** True where only a mobile telephone reaches it. */
  readonly mobileOnly?: true
}

/** A number that means an ambulance or help in another country, and something else in this one. */
export interface Trap {
  readonly number: string
  readonly reaches: 'police' | 'advice' | 'crisis line' | 'doctor'
}

export interface Region {
  /** ISO 3166-1 alpha-2 (one ISO 3166-2 subdivision: GB-NIR, whose crisis line is its own). */
  readonly code: string
  readonly emergency: PhoneLine
  /** Further numbers that reach an ambulance. */
  readonly alsoEmergency: readonly PhoneLine[]
  /** Out-of-hours doctor or advice by telephone; null where not known. */
  readonly outOfHours: PhoneLine | null
  /** Crisis line; null where not known: then the emergency number stands in. */
  readonly crisis: PhoneLine | null
  /** Where the crisis line takes text messages. */
  readonly crisisText: PhoneLine | null
  readonly traps: readonly Trap[]
}

const line = (number: string, source: string, seen: Seen): PhoneLine => ({ number, source, seen })
const memory = (number: string): PhoneLine => line(number, 'from memory', 'M')
const mobile = (found: PhoneLine): PhoneLine => ({ ...found, mobileOnly: true })

type Extras = Partial<Omit<Region, 'code' | 'emergency'>>
const region = (code: string, emergency: PhoneLine, extras: Extras = {}): Region => ({
  code,
  emergency,
  alsoEmergency: [],
  outOfHours: null,
  crisis: null,
  crisisText: null,
  traps: [],
  ...extras,
})

const EU = line('112', 'European Commission page on 112 (old copy)', 'E')
// 116 123 is reserved in the whole Union (Decision 2007/116/EC) but not in service in every state: named only where known.
const EU_EXTRAS: Readonly<Record<string, Extras>> = {
  AT: { alsoEmergency: [memory('144')] },
  BE: {},
  BG: {},
  CY: {},
  CZ: {},
  DE: { crisis: memory('116 123') },
  DK: {},
  EE: {},
  ES: { crisis: line('024', 'Boletín Oficial del Estado, via press', 'E') },
  FI: {},
  FR: { alsoEmergency: [memory('15')], crisis: line('3114', 'French Health Ministry, via press', 'E') },
  GR: {},
  HU: {},
  IE: { alsoEmergency: [memory('999')], crisis: memory('116 123') },
  IT: { alsoEmergency: [memory('118')] },
  LT: {},
  LU: {},
  LV: {},
  MT: {},
  NL: {
    crisis: line('0800-0113', '113 suicide prevention foundation; press', 'E'),
    traps: [{ number: '113', reaches: 'crisis line' }],
  },
  PL: {},
  PT: {},
  RO: {},
  SE: {},
  SI: {},
  SK: {},
}

const BRITAIN: Extras = {
  alsoEmergency: [memory('112')],
  traps: [{ number: '111', reaches: 'advice' }],
}
const AMBULANCE_999 = line('999', 'West Midlands Ambulance Service', 'T')

const REGIONS: readonly Region[] = [
  ...Object.entries(EU_EXTRAS).map(([code, extras]) => region(code, EU, extras)),
  region('HR', memory('112')),
  region('GB', AMBULANCE_999, {
    ...BRITAIN,
    outOfHours: line('111', 'West Midlands Ambulance Service', 'T'),
    crisis: line('116 123', 'Devon safeguarding page', 'T'),
  }),
  // 111 is not offered here: whether Northern Ireland has it was not seen.
  region('GB-NIR', AMBULANCE_999, {
    ...BRITAIN,
    crisis: line('0808 808 8000', 'Public Health Agency, Northern Ireland', 'T'),
  }),
  region('US', line('911', 'Federal Communications Commission, via press', 'E'), {
    crisis: line('988', 'Wyoming Department of Health', 'T'),
    crisisText: line('988', 'Wyoming Department of Health', 'T'),
  }),
  region('CA', line('911', 'Government of Alberta', 'E'), {
    crisis: line('988', 'Government of Canada, 2023', 'T'),
    crisisText: line('988', 'Government of Canada, 2023', 'T'),
  }),
  region('AU', line('000', 'ACMA; triplezero.gov.au', 'T'), {
    alsoEmergency: [mobile(line('112', 'ACMA', 'T'))],
    crisis: line('13 11 14', 'Life in Mind', 'T'),
    crisisText: line('0477 13 11 14', 'Life in Mind', 'T'),
  }),
  region('NZ', line('111', 'Ministry of Health, New Zealand', 'T'), { crisis: line('1737', 'press', 'E') }),
  region('IN', line('112', 'Home Ministry, via press', 'E'), {
    alsoEmergency: [line('108', 'Home Ministry, via press', 'E')],
    crisis: line('14416', 'Health Ministry, via press', 'E'),
  }),
  region('JP', line('119', 'emergencyjapan', 'E')),
  region('BR', line('192', 'Ministério da Saúde', 'T'), { crisis: line('188', 'press', 'E') }),
  region('ZA', line('10177', 'Eastern Cape Department of Health, via press', 'E'), {
    alsoEmergency: [mobile(line('112', 'Eastern Cape Department of Health, via press', 'E'))],
    crisis: memory('0800 567 567'),
  }),
  region('MX', line('911', 'Interior Ministry, via press', 'E')),
  region('CH', line('144', 'Canton of Graubünden; SRF', 'T'), {
    crisis: memory('143'),
    traps: [{ number: '112', reaches: 'police' }],
  }),
  region('NO', line('113', 'Helsenorge', 'T'), {
    outOfHours: line('116117', 'Helsenorge; press', 'E'),
    crisis: line('113', 'Helsenorge (where it is acute)', 'T'),
    traps: [
      { number: '112', reaches: 'police' },
      { number: '116117', reaches: 'doctor' },
    ],
  }),
  region('IS', memory('112')),
  region('TR', memory('112')),
  region('CN', memory('120')),
  region('KR', memory('119')),
  region('SG', memory('995')),
  region('HK', memory('999')),
  region('IL', memory('101')),
  region('AE', memory('998')),
  region('AR', memory('107')),
  region('CL', memory('131')),
]

const BY_CODE = new Map(REGIONS.map((entry) => [entry.code, entry]))
// Reserved in ISO 3166-1 for the United Kingdom, and what people there write.
const ALIASES: Readonly<Record<string, string>> = { UK: 'GB' }

/** All codes of the table, in its order. */
export const REGION_CODES: readonly string[] = REGIONS.map((entry) => entry.code)

/**
 * The numbers of a region by its ISO 3166-1 alpha-2 code, in either case. Null for a region that is not in the
 * table: then people are told "your local emergency number", and no digits are guessed.
 */
export function regionOf(code: string): Region | null {
  const key = code.trim().toUpperCase()
  return BY_CODE.get(ALIASES[key] ?? key) ?? null
}

/** The emergency number where somebody is; null where that is not known. */
export const emergencyNumber = ({ region }: { readonly region: string | null }): string | null =>
  region ? (regionOf(region)?.emergency.number ?? null) : null
