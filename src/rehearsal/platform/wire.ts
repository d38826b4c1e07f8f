// Shapes as they travel: fields keep the platform's own names.

/** A part of a message or form: button, select, text input, row, label. */
export interface Component {
  type: number
  id?: number
  custom_id?: string | null
  label?: string | null
  emoji?: unknown
  url?: string | null
  style?: number
  disabled?: boolean | null
  content?: string
  value?: string | null
  placeholder?: string | null
  required?: boolean | null
  min_values?: number | null
  max_values?: number | null
  min_length?: number | null
  max_length?: number | null
  options?: SelectOption[]
  components?: Component[]
  component?: Component
  accessory?: Component
}

/** One entry of a select, radio group or checkbox group. */
export interface SelectOption {
  label: string
  value: string
  description?: string | null
  default?: boolean | null
}

/** A rich embed; only what the stand-in looks at is spelt out. */
export interface Embed {
  type?: string
  title?: string | null
  description?: string | null
  url?: string | null
  image?: { url?: string } | null
  thumbnail?: { url?: string } | null
  footer?: { text?: string } | null
  author?: { name?: string } | null
  fields?: { name: string; value: string; inline?: boolean }[] | null
  [more: string]: unknown
}

export interface WireUser {
  id: string
  username: string
  discriminator: string
  global_name: string | null
  avatar: string | null
  bot: boolean
  public_flags: number
  flags: number
  primary_guild: null
}

export interface WireAttachment {
  id: string
  filename: string
  size: number
  url: string
  proxy_url: string
  content_type?: string
  description?: string
  title?: string
  duration_secs?: number
  waveform?: string
  ephemeral?: boolean
}

export interface WireMessage {
  id: string
  type: number
  channel_id: string
  author: WireUser
  content: string
  timestamp: string
  edited_timestamp: string | null
  tts: boolean
  mention_everyone: boolean
  mentions: WireUser[]
  mention_roles: string[]
  attachments: WireAttachment[]
  embeds: Embed[]
  components: Component[]
  pinned: boolean
  flags: number
  nonce?: string | number
  application_id?: string
  webhook_id?: string
  sticker_items?: { id: string; name: string; format_type: number }[]
  message_reference?: unknown
  interaction_metadata?: unknown
}

/** What a request body may say of a message (already checked against the published schema). */
export interface MessageBody {
  content?: string | null
  embeds?: Embed[] | null
  components?: Component[] | null
  attachments?: AttachmentBody[] | null
  flags?: number | null
  nonce?: string | number | null
  enforce_nonce?: boolean | null
  sticker_ids?: string[] | null
  message_reference?: { message_id?: string; fail_if_not_exists?: boolean } | null
  allowed_mentions?: { parse?: string[] | null; users?: string[] | null; roles?: string[] | null } | null
  poll?: unknown
  tts?: boolean | null
}

export interface AttachmentBody {
  id: string | number
  filename?: string | null
  description?: string | null
  title?: string | null
  duration_secs?: number | null
  waveform?: string | null
}

/** A declared option of a chat command. */
export interface CommandOption {
  type: number
  name: string
  description: string
  required?: boolean
  autocomplete?: boolean
  choices?: { name: string; value: string | number }[]
  options?: CommandOption[]
  min_value?: number
  max_value?: number
  min_length?: number
  max_length?: number
}

/** A chat command as registered. */
export interface Command {
  id: string
  application_id: string
  version: string
  type: number
  name: string
  description: string
  options?: CommandOption[]
  guild_id?: string
  contexts?: number[] | null
  dm_permission?: boolean | null
  default_member_permissions: string | null
  nsfw: boolean
}

/** Walks components and all that they hold, outermost first. */
export function walkComponents(
  components: readonly Component[],
  visit: (component: Component) => void,
): void {
  for (const component of components) {
    visit(component)
    walkComponents(component.components ?? [], visit)
    if (component.component) walkComponents([component.component], visit)
    if (component.accessory) walkComponents([component.accessory], visit)
  }
}
