import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { playText, toClient } from './playing.ts'

// Invariant 7: with an urgent sign open no message contains an exercise.
it('no message between the urgent sign and the clearance tells of an exercise', async () => {
  const play = await playText(readFileSync('scenarios/urgent-second-week.yaml', 'utf8'))
  expect(play.checks.failed).toEqual([])
  const mine = toClient(play, 'dipper')
  const from = mine.findIndex(({ kind }) => kind === 'urgent')
  const to = mine.findIndex(({ kind }) => kind === 'cleared')
  expect(from).toBeGreaterThan(0)
  expect(to).toBeGreaterThan(from + 5)
  for (const message of mine.slice(from, to + 1)) {
    expect(message.drills).toEqual([])
    expect(message.text).not.toMatch(/press-up|slider|forearms|reps|breathing/i)
    expect(message.text).not.toMatch(/\bsafe\b|all clear|you are fine/i)
  }
  expect(mine.slice(0, from).some(({ drills }) => drills.length > 0)).toBe(true)
  expect(mine.slice(to).some(({ drills }) => drills.length > 0)).toBe(true)
}, 120_000)
