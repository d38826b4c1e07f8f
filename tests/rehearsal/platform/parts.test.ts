import { describe, expect, test } from 'vitest'
import { fillForm } from '../../../src/rehearsal/platform/fill.ts'
import { Refusal } from '../../../src/rehearsal/platform/refusal.ts'
import { checkForm, checkMessage } from '../../../src/rehearsal/platform/rules.ts'
import { checkRequest, findOperation } from '../../../src/rehearsal/platform/validate.ts'
import type { Component, MessageBody } from '../../../src/rehearsal/platform/wire.ts'

// Limits: Discord developer documentation, "Component Reference" and "Embed Limits".

const row = (...components: Component[]): Component => ({ type: 1, components })
const button = (id: string): Component => ({ type: 2, style: 1, label: id, custom_id: id })
const select = (id: string, more: Partial<Component> = {}): Component => ({
  type: 3,
  custom_id: id,
  options: ['a', 'b', 'c'].map((value) => ({ label: value, value })),
  ...more,
})

function reasonFor(body: MessageBody): string {
  try {
    checkMessage(body, 0, 'create')
    return 'accepted'
  } catch (error) {
    return error instanceof Refusal ? JSON.stringify(error.errors) : String(error)
  }
}

describe('components that the schemas allow and the platform does not', () => {
  const refused: [string, Component[], string][] = [
    ['six rows', ['1', '2', '3', '4', '5', '6'].map((id) => row(button(id))), '5 or fewer'],
    ['the same custom id twice', [row(button('a')), row(button('a'))], 'duplicated'],
    ['a select beside a button', [row(select('s'), button('a'))], 'fills its row'],
    ['a link that is no link', [row({ type: 2, style: 5, label: 'a', custom_id: 'a' })], 'url'],
    ['a button without words', [row({ type: 2, style: 1, custom_id: 'a' })], 'label'],
    ['more values than options', [row(select('s', { max_values: 4 }))], 'than there are options'],
    ['text without the flag for it', [{ type: 10, content: 'x' }], 'must be 1'],
  ]
  test.each(refused)('%s', (_name, components, reason) => {
    expect(reasonFor({ content: 'x', components })).toContain(reason)
  })

  test('the plain case passes', () => {
    expect(reasonFor({ content: 'x', components: [row(button('a'), button('b')), row(select('s'))] })).toBe(
      'accepted',
    )
  })

  test('embeds of more than 6000 letters together', () => {
    const embed = { description: 'x'.repeat(3001) }
    expect(reasonFor({ embeds: [embed] })).toBe('accepted')
    expect(reasonFor({ embeds: [embed, embed] })).toContain('6000')
  })

  test('a form of six parts', () => {
    const part = (id: string): Component => ({
      type: 18,
      label: id,
      component: { type: 4, style: 1, custom_id: id },
    })
    expect(() => checkForm(['1', '2', '3', '4', '5'].map(part))).not.toThrow()
    expect(() => checkForm(['1', '2', '3', '4', '5', '6'].map(part))).toThrow(Refusal)
  })
})

describe('filling in a form', () => {
  const label = (component: Component): Component => ({ type: 18, label: 'part', component })

  test('groups of choices, a tick, and text that begins with something', () => {
    const options = ['a', 'b'].map((value) => ({ label: value, value }))
    const form = [
      label({ type: 21, custom_id: 'one', options }),
      label({ type: 22, custom_id: 'some', options, min_values: 0, max_values: 2, required: false }),
      label({ type: 23, custom_id: 'tick' }),
      label({ type: 4, custom_id: 'text', style: 1, value: 'begun' }),
      { type: 10, content: 'words only' },
    ]
    expect(fillForm(form, { one: 'b', some: ['a', 'b'], tick: true }).map((part) => part.component)).toEqual([
      { type: 21, id: 2, custom_id: 'one', value: 'b' },
      { type: 22, id: 4, custom_id: 'some', values: ['a', 'b'] },
      { type: 23, id: 6, custom_id: 'tick', value: true },
      { type: 4, id: 8, custom_id: 'text', value: 'begun' },
      undefined,
    ])
  })

  test('presets are sent where nothing is chosen; limits and unknown fields are minded', () => {
    const preset = select('boat')
    preset.options![1]!.default = true
    expect(fillForm([label(preset)], {})[0]!.component).toMatchObject({ values: ['b'] })
    expect(() => fillForm([label(select('boat'))], {})).toThrow('needs at least 1')
    expect(() => fillForm([label(select('boat'))], { boat: ['a', 'b'] })).toThrow('at most 1')
    expect(() => fillForm([label(select('boat'))], { ship: 'a' })).toThrow('no field ship')
    const text = label({ type: 4, custom_id: 'note', style: 1, max_length: 3 })
    expect(() => fillForm([text], { note: 'four' })).toThrow('too long')
    expect(() => fillForm([text], {})).toThrow('needs note')
  })
})

describe('a body that the published schemas do not allow', () => {
  const wrongWith = (method: string, path: string, body: unknown): string => {
    try {
      checkRequest(findOperation(method, path)!, body)
      return 'accepted'
    } catch (error) {
      return error instanceof Refusal ? JSON.stringify(error.errors) : String(error)
    }
  }
  const long = { ...button('a'), custom_id: 'a'.repeat(101) }

  test('is told by the field that is wrong, also deep inside', () => {
    const told = wrongWith('POST', '/channels/1/messages', { components: [row(long)] })
    expect(told).toContain('"components.0.components.0.custom_id"')
    expect(told).toContain('maximum 100')
    expect(wrongWith('POST', '/interactions/1/t/callback', { type: 4, data: { content: 5 } })).toContain(
      '"data.content"',
    )
  })

  test('paths are read percent-encoded, literal parts before placeholders', () => {
    const original = findOperation('PATCH', '/webhooks/1/t/messages/%40original')
    expect(original?.name).toBe('PATCH /webhooks/{webhook_id}/{webhook_token}/messages/@original')
    expect(wrongWith('PATCH', '/webhooks/1/t/messages/%40original', { content: 3 })).toContain('expected')
    expect(wrongWith('PATCH', '/webhooks/1/t/messages/oar', { content: 'x' })).toContain('not snowflake')
    expect(findOperation('GET', '/oars')).toBeNull()
  })
})
