import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rowsOf } from '../../src/chat/components.ts'
import { customId, readCustomId } from '../../src/chat/custom-id.ts'
import { cut, splitText } from '../../src/chat/cut.ts'
import type { Sendable } from '../../src/chat/files.ts'
import { renderForm } from '../../src/chat/form.ts'
import { renderMessage } from '../../src/chat/render.ts'
import type { Button, Field } from '../../src/engine/message.ts'
import { message } from './outbox.ts'

// half a character does not survive UTF-8
const wellFormed = (text: string): boolean => Buffer.from(text).toString() === text

const ID = 'a1b2c3d4e5f6a7b8c9d0'
const button = (n: number): Button => ({
  name: `b-${n}`,
  label: `Button ${n}`,
  act: { do: 'answer', value: n },
})
const file = (name: string, description: string | null = null): Sendable => ({
  name,
  data: Buffer.from('x'),
  contentType: 'image/png',
  description,
})
const bodiesOf = (...given: Parameters<typeof renderMessage>) =>
  renderMessage(...given).map(({ body }) => body)
const buttons = (count: number): Button[] => Array.from({ length: count }, (_, n) => button(n))

describe('a message for the platform', () => {
  it('carries nonce, words and nothing that calls anybody', () => {
    expect(bodiesOf(ID, message({ text: 'Hello @everyone' }))).toEqual([
      {
        content: 'Hello @everyone',
        components: [],
        nonce: ID,
        enforce_nonce: true,
        allowed_mentions: { parse: [], roles: [], users: [] },
      },
    ])
  })

  it('calls only whom the message means to call, at its head', () => {
    const [body] = bodiesOf(ID, message({ text: 'Alert', mentions: { roles: ['7'], users: ['8'] } }))
    expect(body?.content).toBe('<@&7> <@8> Alert')
    expect(body?.allowed_mentions).toEqual({ parse: [], roles: ['7'], users: ['8'] })
  })

  it('splits a long text on its lines, with picture and components on the last part', () => {
    const lines = Array.from({ length: 60 }, (_, n) => `${n}: ${'word '.repeat(15)}`.trim())
    const text = lines.join('\n')
    const bodies = bodiesOf(ID, message({ text, buttons: buttons(2) }), [[file('heron.png', 'pain fell')]])
    expect(bodies.length).toBeGreaterThan(1)
    expect(bodies.map((body) => body.content).join('\n')).toBe(text)
    expect(bodies.map((body) => body.components?.length)).toEqual([...bodies.slice(1).map(() => 0), 1])
    expect(bodies.at(-1)?.attachments).toEqual([{ id: '0', filename: 'heron.png', description: 'pain fell' }])
    expect(new Set(bodies.map((body) => body.nonce)).size).toBe(bodies.length)
    for (const body of bodies) expect(String(body.nonce).length).toBeLessThanOrEqual(25)
  })

  it('puts five buttons in a row, and what a message cannot hold in the next', () => {
    const bodies = bodiesOf(ID, message({ buttons: buttons(27) }))
    expect(bodies.map((body) => body.components?.length)).toEqual([5, 1])
    expect(bodies[1]?.content).toBe('')
  })

  it('sends more files than a message holds in the next', () => {
    const parts = renderMessage(ID, message(), [[file('a.png'), file('b.csv')], [file('c.csv')]])
    expect(parts.map(({ body }) => body.attachments)).toEqual([
      [
        { id: '0', filename: 'a.png' },
        { id: '1', filename: 'b.csv' },
      ],
      [{ id: '0', filename: 'c.csv' }],
    ])
    expect(parts.map(({ body }) => body.content)).toEqual(['Good morning.', ''])
  })

  it('holds no health data in custom ids', () => {
    const act = { do: 'answer', ask: 'signs', value: 'saddle-numbness' }
    const pick = { name: 'which', label: 'Which?', options: [{ value: 'a', label: 'A' }], most: 1, act }
    const rows = rowsOf(ID, { buttons: [{ name: 'signs', label: 'Yes', act }], pick })
    expect(rows.map((row) => row.components[0]?.custom_id)).toEqual([`${ID}.p`, `${ID}.0`])
  })

  it('shows a list longer than 25 in several', () => {
    const options = Array.from({ length: 30 }, (_, n) => ({ value: `v${n}`, label: `Value ${n}` }))
    const rows = rowsOf(ID, {
      buttons: [],
      pick: { name: 'x', label: 'X', options, most: 30, act: { do: 'x' } },
    })
    const lists = rows.map((row) => row.components[0] as { custom_id: string; max_values: number })
    expect(lists.map((list) => [list.custom_id, list.max_values])).toEqual([
      [`${ID}.p`, 25],
      [`${ID}.p1`, 5],
    ])
  })
})

describe('custom ids', () => {
  it('are read back as they were made, and nothing else is read', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('button', 'pick', 'form'),
        fc.integer({ min: 0, max: 99 }),
        (part, index) => {
          const ref = { outbox: ID, part, index } as const
          expect(readCustomId(customId(ref))).toEqual(ref)
        },
      ),
    )
    for (const id of ['', 'x', `${ID}.`, `${ID}.f`, `${ID}.q1`, `${ID}.1.2`, `${'x'.repeat(26)}.1`]) {
      expect(readCustomId(id)).toBeNull()
    }
  })
})

describe('splitting and cutting', () => {
  it('loses no word and keeps the limit', () => {
    const word = fc.string({ minLength: 1, maxLength: 12, unit: fc.constantFrom('a', 'é', '😀', '-') })
    fc.assert(
      fc.property(fc.array(fc.tuple(word, fc.constantFrom(' ', '\n', '\n\n'))), (parts) => {
        const text = parts.flat().join('').trim()
        const pieces = splitText(text, 60)
        for (const piece of pieces) expect(piece.length).toBeLessThanOrEqual(60)
        const words = (given: string) => given.split(/\s+/).filter(Boolean)
        expect(words(pieces.join(' '))).toEqual(words(text))
      }),
    )
  })

  it('never cuts a character in two', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('😀', 'a', ' ') }),
        fc.integer({ min: 2, max: 20 }),
        (text, most) => {
          const short = cut(text, most)
          expect(short.length).toBeLessThanOrEqual(most)
          expect(wellFormed(short)).toBe(true)
          expect(splitText(text, most).every((piece) => wellFormed(piece) && piece.length <= most)).toBe(true)
        },
      ),
    )
  })
})

describe('a form for the platform', () => {
  const field = (more: Partial<Field>): Field => ({
    name: 'x',
    label: 'X',
    kind: 'line',
    required: false,
    ...more,
  })

  it('carries on a long label in the line below, with the hint', () => {
    const label = 'Since when have you had this episode of back or leg trouble, roughly?'
    const modal = renderForm('id', {
      name: 'f',
      title: 'T',
      fields: [field({ label, hint: 'Like 2026-02-10' })],
    })
    expect(modal.components[0]).toMatchObject({
      label: 'Since when have you had this episode of back…',
      description: '…or leg trouble, roughly? Like 2026-02-10',
      component: { style: 1, required: false },
    })
  })

  it('lets several be chosen, none of them beforehand', () => {
    const options = [
      { value: 'none', label: 'None of these' },
      { value: 'a', label: `${'A'.repeat(50)} ${'b'.repeat(60)}` },
    ]
    const modal = renderForm('id', {
      name: 'f',
      title: 'T'.repeat(60),
      fields: [field({ kind: 'many', options })],
    })
    expect(modal.title).toHaveLength(45)
    expect(modal.components[0]).toMatchObject({
      component: { min_values: 0, max_values: 2, required: false },
    })
    const [, second] = (
      modal.components[0] as { component: { options: { label: string; description?: string }[] } }
    ).component.options
    expect(second?.label.length).toBeLessThanOrEqual(100)
    expect(second?.description).toBe(`…${'b'.repeat(60)}`)
  })

  it('refuses more than the platform shows', () => {
    const fields = Array.from({ length: 6 }, (_, n) => field({ name: `f${n}` }))
    expect(() => renderForm('id', { name: 'long', title: 'T', fields })).toThrow(
      'form long has more than 5 fields',
    )
  })
})
