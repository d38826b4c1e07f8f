// The package ships its schemas without types: this names those that we use.
declare module 'discord-api-spec/zod' {
  import type { ZodMiniType } from 'zod/mini'

  type Schema = ZodMiniType<unknown>
  export const ApplicationCommandAutocompleteCallbackRequestSchema: Schema
  export const ApplicationCommandCreateRequestSchema: Schema
  export const ApplicationCommandPatchRequestPartialSchema: Schema
  export const ApplicationCommandResponseSchema: Schema
  export const ApplicationCommandUpdateRequestSchema: Schema
  export const CreateGuildChannelRequestSchema: Schema
  export const CreateMessageInteractionCallbackRequestSchema: Schema
  export const CreatePrivateChannelRequestSchema: Schema
  export const GatewayBotResponseSchema: Schema
  export const GuildChannelResponseSchema: Schema
  export const GuildMemberResponseSchema: Schema
  export const GuildRoleResponseSchema: Schema
  export const GuildWithCountsResponseSchema: Schema
  export const IncomingWebhookRequestPartialSchema: Schema
  export const IncomingWebhookUpdateRequestPartialSchema: Schema
  export const InteractionCallbackResponseSchema: Schema
  export const LaunchActivityInteractionCallbackRequestSchema: Schema
  export const MessageCreateRequestSchema: Schema
  export const MessageEditRequestPartialSchema: Schema
  export const MessageResponseSchema: Schema
  export const ModalInteractionCallbackRequestSchema: Schema
  export const PongInteractionCallbackRequestSchema: Schema
  export const PrivateApplicationResponseSchema: Schema
  export const PrivateChannelResponseSchema: Schema
  export const UpdateMessageInteractionCallbackRequestSchema: Schema
  export const UserPIIResponseSchema: Schema
  export const UserResponseSchema: Schema
}
