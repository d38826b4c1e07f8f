export type Theme = 'light' | 'dark'

/**
 * Colours of one theme. Words keep a contrast of at least 4.5 to the card and lines that carry meaning 3
 * (WCAG 2.2, 1.4.3 and 1.4.11). Colour only decorates: every series has its own panel, every mark its shape.
 */
export interface Palette {
  readonly card: string
  readonly rim: string
  readonly ink: string
  readonly quiet: string
  readonly grid: string
  readonly weekLine: string
  readonly hatch: string
  readonly reachFill: string
  readonly reach: string
  readonly pain: string
  readonly sessions: string
  readonly alarm: string
}

export const PALETTES: Readonly<Record<Theme, Palette>> = {
  light: {
    card: '#f8f6f0',
    rim: '#c9c4b6',
    ink: '#1d2930',
    quiet: '#4c585f',
    grid: '#dedacd',
    weekLine: '#a9a596',
    hatch: '#b3ae9f',
    reachFill: '#a9cdc4',
    reach: '#155550',
    pain: '#8f3a0e',
    sessions: '#44568a',
    alarm: '#8a1c1c',
  },
  dark: {
    card: '#1a2228',
    rim: '#46535b',
    ink: '#f0f2ec',
    quiet: '#b9c3c5',
    grid: '#333f46',
    weekLine: '#66747c',
    hatch: '#59666d',
    reachFill: '#2f5f59',
    reach: '#93dccd',
    pain: '#f2ad76',
    sessions: '#aebcf0',
    alarm: '#ffab9e',
  },
}
