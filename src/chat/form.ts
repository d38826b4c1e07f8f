import {
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  type APIStringSelectComponent,
  type APITextInputComponent,
  ComponentType,
  type ModalSubmitFields,
  TextInputStyle,
} from 'discord.js'
import type { Filled } from '../engine/event.ts'
import type { Field, Form } from '../engine/message.ts'
import { chosenOf, optionsOf } from './components.ts'
import { cut, cutInTwo } from './cut.ts'

// Limits of the platform (its documentation, "Component Reference": Label, Text Input).
const TITLE_MOST = 45
const LABEL_MOST = 45
const HINT_MOST = 100
const FIELDS_MOST = 5
const OPTIONS_MOST = 25
// Ours: one line is a date or a few words; as many characters as the reader of replies reads.
const LINE_MOST = 200
const LINES_MOST = 2000

/**
 * A form as the platform shows it. Nothing is filled in beforehand.
 * @throws RangeError where it has more fields, or a field more options, than the platform can show
 */
export function renderForm(customId: string, form: Form): APIModalInteractionResponseCallbackData {
  if (form.fields.length > FIELDS_MOST)
    throw new RangeError(`form ${form.name} has more than ${FIELDS_MOST} fields`)
  return { custom_id: customId, title: cut(form.title, TITLE_MOST), components: form.fields.map(labelled) }
}

function labelled(field: Field): APILabelComponent {
  const [label, rest] = cutInTwo(field.label, LABEL_MOST, HINT_MOST)
  const hint = cut([rest, field.hint].filter(Boolean).join(' '), HINT_MOST)
  const isText = field.kind === 'line' || field.kind === 'lines'
  return {
    type: ComponentType.Label,
    label,
    ...(hint ? { description: hint } : {}),
    component: isText ? textInput(field) : select(field),
  }
}

function textInput(field: Field): APITextInputComponent {
  const short = field.kind === 'line'
  return {
    type: ComponentType.TextInput,
    custom_id: field.name,
    style: short ? TextInputStyle.Short : TextInputStyle.Paragraph,
    max_length: short ? LINE_MOST : LINES_MOST,
    required: field.required,
  }
}

function select(field: Field): APIStringSelectComponent {
  const options = field.options ?? []
  if (options.length > OPTIONS_MOST)
    throw new RangeError(`field ${field.name} has more than ${OPTIONS_MOST} options`)
  return {
    type: ComponentType.StringSelect,
    custom_id: field.name,
    options: optionsOf(options),
    min_values: field.required ? 1 : 0,
    max_values: field.kind === 'many' ? options.length : 1,
    required: field.required,
  }
}

/**
 * What was filled in, by field name: one text or value, or the list of a multiple choice. Empty ones are left out, and
 * so is what the form does not ask: the rest may hold a sign. Null where a field holds what it could not be given.
 */
export function readForm(form: Form, fields: ModalSubmitFields): Filled | null {
  const filled: Record<string, string | readonly string[]> = {}
  for (const field of form.fields) {
    const value = readField(field, fields.fields.get(field.name))
    if (value === null) return null
    if (value.length > 0) filled[field.name] = value
  }
  return filled
}

type Given = ReturnType<ModalSubmitFields['fields']['get']>

/** Empty where nothing was filled in; null where it is of another kind than the field, or was not offered. */
function readField({ kind, options = [] }: Field, given: Given): string | readonly string[] | null {
  if (!given) return ''
  if (kind === 'line' || kind === 'lines') {
    if (given.type !== ComponentType.TextInput || typeof given.value !== 'string') return null
    return given.value.slice(0, kind === 'line' ? LINE_MOST : LINES_MOST)
  }
  if (given.type !== ComponentType.StringSelect) return null
  const chosen = chosenOf(options, given.values, kind === 'many' ? options.length : 1)
  if (!chosen) return null
  return kind === 'many' ? given.values : (given.values[0] ?? '')
}
