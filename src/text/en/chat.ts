/** What the chat itself says: to whoever pressed something, and to the keeper who starts the bot. */
export const chat = {
  failed:
    'Sorry, that did not work, and I may not have kept it. Please send it again in a minute. If something feels new or wrong in your body, do not wait for me: call your local emergency number.',
  keptForLater:
    'Thank you. I cannot write this down properly just now, so I have put it aside and answer as soon as I can: please do not send it again. If something feels new or wrong in your body, do not wait for me: call your local emergency number.',
  alertInPerson:
    'The alert channel refuses my messages, so this comes to you alone. Take it up in the server with /take-up, and please have the channel looked at.',
  failedPress:
    'Sorry, that did not work. Please press it again in a minute, or tell me in words. If something feels new or wrong in your body, do not wait for me: call your local emergency number.',
  expired:
    'This does nothing any more, and nothing was kept. Please tell me in your own words instead. If something feels new or wrong in your body, do not wait for me: call your local emergency number.',
  pressAgain: 'Sorry, that took me too long. Please press it again, or tell me in words.',
  permissions: {
    ViewChannel: 'View Channel',
    SendMessages: 'Send Messages',
    AttachFiles: 'Attach Files',
  },
  problem: {
    token:
      'The chat platform refuses the token: copy the bot token anew from the developer portal into DISCORD_TOKEN.',
    intents:
      'The chat platform refuses what the bot wants to hear: in the developer portal, check that the application is a bot and not suspended.',
    unreachable: (where: string): string =>
      `The chat platform cannot be reached at ${where}: check the network and try again.`,
    lost: 'The chat platform closed the connection for good: check the bot token and the application in the developer portal, then start again.',
  },
}

export type ChatTexts = typeof chat
