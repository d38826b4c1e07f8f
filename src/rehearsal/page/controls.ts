import { type Component, ComponentType, type Modal } from '../platform/index.ts'
import type { SelectOption } from '../platform/wire.ts'
import type { Choice, Control, FormField, OpenForm } from './wire.ts'

// Numbers of the platform's protocol (its documentation, "Component Reference").
const MAIN = 1
const DANGER = 4
const ONE_LINE = 1

/** What can be used on a message, row by row as it was sent. */
export function controlsOf(rows: readonly Component[], opensForm: (id: string) => boolean): Control[][] {
  return rows
    .map((row) => (row.components ?? []).flatMap((one) => controlOf(one, opensForm) ?? []))
    .filter((row) => row.length > 0)
}

function controlOf(one: Component, opensForm: (id: string) => boolean): Control | null {
  const id = one.custom_id
  if (!id || one.disabled) return null
  if (one.type === ComponentType.button) {
    const style = one.style === MAIN ? 'main' : one.style === DANGER ? 'danger' : 'plain'
    return { type: 'button', id, label: one.label ?? '', style, opensForm: opensForm(id) }
  }
  if (one.type !== ComponentType.stringSelect) return null
  const [least, most] = [one.min_values ?? 1, one.max_values ?? 1]
  return { type: 'list', id, label: one.placeholder ?? '', options: choices(one.options), least, most }
}

/** A form as the bot opened it. */
export function formOf(form: string, { title, components }: Modal): OpenForm {
  return { form, title, fields: components.flatMap((label) => fieldOf(label) ?? []) }
}

function fieldOf({ label, component, ...rest }: Component & { description?: string }): FormField | null {
  if (!component?.custom_id) return null
  const isText = component.type === ComponentType.textInput
  return {
    name: component.custom_id,
    label: label ?? '',
    hint: rest.description ?? null,
    kind: isText ? (component.style === ONE_LINE ? 'line' : 'lines') : 'list',
    required: component.required !== false,
    longest: component.max_length ?? null,
    least: component.min_values ?? (isText ? 0 : 1),
    most: component.max_values ?? 1,
    options: choices(component.options),
  }
}

const choices = (options: readonly SelectOption[] = []): Choice[] =>
  options.map(({ value, label, description }) => ({ value, label, more: description ?? null }))
