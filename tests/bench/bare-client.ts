import { Client, Events, GatewayIntentBits, Partials } from 'discord.js'

/** The chat library alone, with the intents of the bot: says so when it is ready, and answers whoever writes. */
const client = new Client({
  intents: [GatewayIntentBits.Guilds, GatewayIntentBits.DirectMessages],
  partials: [Partials.Channel],
  rest: { api: process.env.DISCORD_API! },
})
client.once(Events.ClientReady, () => console.log('ready'))
client.on(Events.MessageCreate, (message) => {
  if (!message.author.bot && message.channel.isSendable()) void message.channel.send('Thank you.')
})
await client.login(process.env.DISCORD_TOKEN)
