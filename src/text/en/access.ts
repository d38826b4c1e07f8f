/** Who may do what, and what to do instead. */
export const access = {
  unknownCommand: (name: string): string => `There is no command “/${name}”. Try /help.`,
  oddOption: (name: string): string =>
    `I cannot read what stands under “${name}”. Choose or type it again; nothing was changed.`,
  onlyInServer: 'This one is for the coach, in the practice’s server.',
  onlyKeeper: 'Only somebody who may manage the server can set the bot up.',
  onlyCoach: 'This one is for people with the coach role.',
  setUpFirst: 'The bot is not set up here yet. Somebody who may manage the server runs /set-up.',
}
