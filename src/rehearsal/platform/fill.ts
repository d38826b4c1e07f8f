import { ComponentType } from './codes.ts'
import { type Component, walkComponents } from './wire.ts'

/** What a person puts into a form, by custom id: text, one value, several, or a tick. */
export type FieldValues = Record<string, string | readonly string[] | boolean>

/**
 * A filled form as a person's app sends it, after the checks that the app makes itself.
 * @throws Error where a field is unknown, required and empty, or outside what the form allows
 */
export function fillForm(components: readonly Component[], values: FieldValues): Component[] {
  const known = new Set<string>()
  walkComponents(components, (c) => c.custom_id && known.add(c.custom_id))
  for (const id of Object.keys(values)) if (!known.has(id)) throw new Error(`the form has no field ${id}`)
  let number = 0
  const fill = (component: Component): Component => {
    number += 1
    const base = { type: component.type, id: component.id || number }
    if (component.components) return { ...base, components: component.components.map(fill) }
    if (component.component) return { ...base, component: fill(component.component) }
    if (!component.custom_id) return base
    return { ...base, custom_id: component.custom_id, ...fillField(component, values[component.custom_id]) }
  }
  return components.map(fill)
}

function fillField(field: Component, given: FieldValues[string] | undefined): object {
  switch (field.type) {
    case ComponentType.textInput:
      return { value: fillText(field, given) }
    case ComponentType.checkbox:
      return { value: given === true }
    case ComponentType.radioGroup:
      return { value: fillChoices(field, given, { min: 1, max: 1 })[0] ?? null }
    default:
      return { values: fillChoices(field, given, { min: field.min_values ?? 1, max: field.max_values ?? 1 }) }
  }
}

function fillText(field: Component, given: FieldValues[string] | undefined): string {
  const text = typeof given === 'string' ? given : (field.value ?? '')
  if (text === '' && field.required !== false) throw new Error(`the form needs ${field.custom_id}`)
  if (text !== '' && text.length < (field.min_length ?? 0)) throw new Error(`${field.custom_id} is too short`)
  if (text.length > (field.max_length ?? 4000)) throw new Error(`${field.custom_id} is too long`)
  return text
}

function fillChoices(
  field: Component,
  given: FieldValues[string] | undefined,
  range: { min: number; max: number },
) {
  const preset = (field.options ?? []).filter((o) => o.default).map((o) => o.value)
  const chosen = given === undefined || typeof given === 'boolean' ? preset : [given].flat()
  checkChoices(field, chosen, range, field.required !== false)
  return chosen
}

/** Refuses values that a select does not offer, or too few or many of them. */
export function checkChoices(
  field: Component,
  chosen: readonly string[],
  range: { min: number; max: number },
  required: boolean,
): void {
  const offered = new Set(field.options?.map((o) => o.value))
  const strange = field.options ? chosen.find((value) => !offered.has(value)) : undefined
  if (strange !== undefined) throw new Error(`${field.custom_id} does not offer ${strange}`)
  if (chosen.length > range.max) throw new Error(`${field.custom_id} takes at most ${range.max}`)
  const enough = chosen.length >= range.min || (!required && chosen.length === 0)
  if (!enough) throw new Error(`${field.custom_id} needs at least ${range.min}`)
}
