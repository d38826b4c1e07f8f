// Numbers of the platform's protocol (Discord developer documentation, API v10), under names.

/** Flags of a message. */
export const MessageFlag = {
  ephemeral: 1 << 6,
  loading: 1 << 7,
  voice: 1 << 13,
  componentsV2: 1 << 15,
} as const

/** What a gateway session may ask to hear. */
export const Intent = {
  guilds: 1 << 0,
  guildMembers: 1 << 1,
  guildPresences: 1 << 8,
  guildMessages: 1 << 9,
  directMessages: 1 << 12,
  messageContent: 1 << 15,
} as const

/** Intents that must be switched on for the application first; asking for them otherwise closes with 4014. */
export const PRIVILEGED_INTENTS = Intent.guildMembers | Intent.guildPresences | Intent.messageContent

export const Opcode = {
  dispatch: 0,
  heartbeat: 1,
  identify: 2,
  presence: 3,
  resume: 6,
  reconnect: 7,
  requestMembers: 8,
  invalidSession: 9,
  hello: 10,
  heartbeatAck: 11,
} as const

export const CloseCode = {
  unknownOpcode: 4001,
  decodeError: 4002,
  notAuthenticated: 4003,
  authenticationFailed: 4004,
  alreadyAuthenticated: 4005,
  disallowedIntents: 4014,
} as const

export const InteractionType = { command: 2, component: 3, autocomplete: 4, modal: 5 } as const

/** How an interaction may be answered. */
export const Callback = {
  message: 4,
  deferredMessage: 5,
  deferredUpdate: 6,
  update: 7,
  choices: 8,
  modal: 9,
} as const

export const ComponentType = {
  row: 1,
  button: 2,
  stringSelect: 3,
  textInput: 4,
  radioGroup: 21,
  checkbox: 23,
} as const

export const OptionType = {
  subcommand: 1,
  subcommandGroup: 2,
  integer: 4,
  boolean: 5,
  user: 6,
  number: 10,
} as const

export const ButtonStyle = { link: 5, premium: 6 } as const
export const ChannelType = { text: 0, dm: 1 } as const
