import { ButtonStyle, ComponentType, MessageFlag } from './codes.ts'
import { invalidField, refuse } from './refusal.ts'
import { type Component, type Embed, type MessageBody, walkComponents } from './wire.ts'

// What the platform refuses beyond its published schemas (Discord documentation: "Create Message",
// "Component Reference", "Embed limits").

const CONTENT_MAX = 2000
const EMBED_TEXT_MAX = 6000
const TOP_ROWS_MAX = 5
const COMPONENTS_MAX = 40

/** Refuses a message body that breaks a rule the schema does not hold. */
export function checkMessage(body: MessageBody, files: number, kind: 'create' | 'edit'): void {
  const modern = ((body.flags ?? 0) & MessageFlag.componentsV2) !== 0
  if ((body.content ?? '').length > CONTENT_MAX) {
    throw invalidField('content', 'BASE_TYPE_MAX_LENGTH', `Must be ${CONTENT_MAX} or fewer in length.`)
  }
  if (modern && (body.content || body.embeds?.length)) {
    throw invalidField(
      'flags',
      'MESSAGE_CANNOT_USE_LEGACY_FIELDS',
      'Content and embeds do not go with components V2',
    )
  }
  if (kind === 'create' && isEmpty(body, files)) throw refuse.emptyMessage()
  if (embedText(body.embeds ?? []) > EMBED_TEXT_MAX) {
    throw invalidField(
      'embeds',
      'MAX_EMBED_SIZE_EXCEEDED',
      `Embed size exceeds maximum size of ${EMBED_TEXT_MAX}`,
    )
  }
  checkComponents(body.components ?? [], kind === 'edit' || modern)
}

/** Refuses a form whose parts break a rule the schema does not hold. */
export function checkForm(components: readonly Component[]): void {
  if (components.length > TOP_ROWS_MAX) {
    throw invalidField(
      'data.components',
      'BASE_TYPE_BAD_LENGTH',
      `Must be between 1 and ${TOP_ROWS_MAX} in length.`,
    )
  }
  checkIds(components)
  walkComponents(components, checkOptions)
}

function isEmpty(body: MessageBody, files: number): boolean {
  const parts = [body.embeds, body.components, body.sticker_ids]
  return !body.content?.trim() && files === 0 && !body.poll && parts.every((part) => !part?.length)
}

function embedText(embeds: readonly Embed[]): number {
  const size = (text?: string | null) => (text ?? '').length
  return embeds.reduce((total, embed) => {
    const fields = (embed.fields ?? []).reduce((sum, f) => sum + size(f.name) + size(f.value), 0)
    const around = size(embed.footer?.text) + size(embed.author?.name)
    return total + size(embed.title) + size(embed.description) + around + fields
  }, 0)
}

function checkComponents(components: readonly Component[], modern: boolean): void {
  const tooMany = `Must be ${TOP_ROWS_MAX} or fewer in length.`
  const onlyRows = components.every((c) => c.type === ComponentType.row)
  if (onlyRows && components.length > TOP_ROWS_MAX)
    throw invalidField('components', 'BASE_TYPE_MAX_LENGTH', tooMany)
  if (!modern && !onlyRows)
    throw invalidField('components', 'UNION_TYPE_CHOICES', 'Value of field "type" must be 1.')
  let count = 0
  walkComponents(components, (component) => {
    count += 1
    checkRow(component)
    checkButton(component)
    checkOptions(component)
  })
  if (count > COMPONENTS_MAX) throw invalidField('components', 'COMPONENT_MAX_TOTAL', 'Too many components')
  checkIds(components)
}

function checkIds(components: readonly Component[]): void {
  const seen = new Set<string>()
  walkComponents(components, ({ custom_id: id }) => {
    if (!id) return
    if (seen.has(id)) {
      throw invalidField(
        'components',
        'COMPONENT_CUSTOM_ID_DUPLICATED',
        'Component custom id cannot be duplicated',
      )
    }
    seen.add(id)
  })
}

function checkRow(row: Component): void {
  if (row.type !== ComponentType.row) return
  const inside = row.components ?? []
  if (inside.length > 1 && inside.some((c) => c.type !== ComponentType.button)) {
    throw invalidField('components', 'COMPONENT_LAYOUT_WIDTH_EXCEEDED', 'A select fills its row')
  }
}

function checkButton(button: Component): void {
  if (button.type !== ComponentType.button || button.style === ButtonStyle.premium) return
  const link = button.style === ButtonStyle.link
  if (link !== Boolean(button.url) || link === Boolean(button.custom_id)) {
    throw invalidField(
      'components',
      'BUTTON_COMPONENT_INVALID',
      'A link button needs a url, any other a custom id',
    )
  }
  if (!button.label && !button.emoji) {
    throw invalidField('components', 'BUTTON_COMPONENT_INVALID', 'A button needs a label or an emoji')
  }
}

function checkOptions(component: Component): void {
  const options = component.options
  if (!options) return
  const values = new Set(options.map((option) => option.value))
  if (values.size !== options.length) {
    throw invalidField(
      'components',
      'SELECT_COMPONENT_OPTION_VALUE_DUPLICATED',
      'Option values must be unique',
    )
  }
  if ((component.min_values ?? 1) > options.length || (component.max_values ?? 1) > options.length) {
    throw invalidField(
      'components',
      'COMPONENT_INVALID_VALUES',
      'More values are asked for than there are options',
    )
  }
  if (options.filter((option) => option.default).length > (component.max_values ?? options.length)) {
    throw invalidField(
      'components',
      'SELECT_COMPONENT_TOO_MANY_DEFAULTS',
      'More defaults than values may be chosen',
    )
  }
}
