/** What the keeper reads of `ebb doctor`, a line a check: how it stands, and the mend where it does not. */
const MB = 2 ** 20

export const doctor = {
  setToken: 'set DISCORD_TOKEN',
  needsToken: 'the token comes first',
  needsDatabase: 'the database comes first',
  // the machine
  node: (version: string): string => `version ${version}`,
  nodeOther: (version: string, lines: string): string =>
    `version ${version} is not one that the bot is made for: install the latest Node.js ${lines}`,
  zonesAgree: (version: string): string => `time-zone data ${version}; the clock changes of 2026 are right`,
  zonesDiffer: (zone: string): string =>
    `the clock change of 2026 in ${zone} is wrong: install a newer Node.js with full ICU data`,
  noLadders: 'no file named; the eight of the house are offered',
  ladders: (count: number): string => `${count} of the practice’s own`,
  // the platform
  token: (name: string): string => `valid; the bot is called ${name}`,
  tokenRefused:
    'the platform refuses it: copy the bot token anew from the developer portal into DISCORD_TOKEN',
  unreachable: (host: string): string => `the platform cannot be reached at ${host}: check the network`,
  answered: (host: string, status: number): string =>
    `the platform at ${host} answered ${status}: try again in a few minutes`,
  intents: 'servers and direct messages; neither has to be switched on',
  clock: (seconds: number): string => `${Math.abs(seconds)} s from the platform’s`,
  clockOff: (seconds: number): string =>
    `${Math.abs(seconds)} s ${seconds > 0 ? 'ahead of' : 'behind'} the platform’s: let this machine set its clock by NTP`,
  noClock: 'the platform told no time: check the clock of this machine by hand',
  notInServer:
    'the bot is not in this server: invite it again; all that is kept of the practice is still there',
  // the database
  open: 'opens',
  sound: 'rows and pages hang together',
  broken: 'it is damaged: stop the bot and put back the latest backup with ebb restore FILE --replace',
  migrated: 'the tables are up to date',
  pending: (count: number): string =>
    `${count} change${count === 1 ? '' : 's'} of the tables to be made: make a backup, then start the bot once`,
  writable: 'can be written',
  readOnly: 'cannot be written: give this user write access to the file and its folder',
  space: (bytes: number): string => `${Math.floor(bytes / MB)} MB left`,
  spaceLow: (bytes: number, least: number): string =>
    `${Math.floor(bytes / MB)} MB left, ${least / MB} MB are needed: free some space`,
  serversOwn: 'the disk is the server’s own; look there',
  backupNever: (days: number): string =>
    `none by ebb backup is known; by EBBLINE_BACKUP_DAYS backups are kept for ${days} days`,
  backupAt: (at: string, days: number): string =>
    `the latest by ebb backup is of ${at.slice(0, 16)}Z; by EBBLINE_BACKUP_DAYS they are kept for ${days} days`,
  backupOld: (at: string, days: number): string =>
    `the latest by ebb backup is of ${at.slice(0, 16)}Z, longer ago than the ${days} days of EBBLINE_BACKUP_DAYS: run ebb backup FILE`,
  backupServer: (days: number): string =>
    `those of pg_dump are not known here; by EBBLINE_BACKUP_DAYS they are kept for ${days} days`,
  wordsPlain: 'what people write is kept as it is; to seal it, name a key in EBBLINE_KEY_FILE',
  wordsSealed: (key: string): string => `what people write is sealed with key ${key}`,
  wordsPartly: (key: string, rows: number): string =>
    `${rows} row${rows === 1 ? '' : 's'} of earlier words ${rows === 1 ? 'is' : 'are'} not sealed with key ${key} yet: stop the bot, run ebb rekey, start it again`,
  // whether it works now
  neverBeat: 'the bot has not run on this database yet: start it with npm start',
  beats: (seconds: number): string => `the bot works; its latest beat is ${seconds} s ago`,
  still: (at: string): string =>
    `the bot does not work: its latest beat was at ${at.slice(0, 19)}Z. Start it with npm start, or look at its log`,
  noneWaits: 'none waits longer than it should',
  waitsSince: (at: string): string =>
    `one waits since ${at.slice(0, 19)}Z: look at the token and the network with ebb doctor`,
  // several processes on one database
  processes: (standingBy: number, working: number): string =>
    `one has the gateway, ${standingBy} stand${standingBy === 1 ? 's' : ''} by, ${working} work${working === 1 ? 's' : ''} beside it`,
  takingOver: (standingBy: number, working: number): string =>
    `none has the gateway at this moment, ${standingBy} stand${standingBy === 1 ? 's' : ''} by and will take it, ${working} work${working === 1 ? 's' : ''}`,
  nobodyLeads: (working: number): string =>
    `${working} work${working === 1 ? 's' : ''}, but none has the gateway: nobody hears the clients. Start the bot with npm start`,
  nobodyUp: 'none is up; the bot is started with npm start',
  jobs: { due: 'jobs of what is due', deliver: 'jobs of delivery' },
  noneAside: 'none is put aside',
  aside: (tasks: number, at: string): string =>
    `${tasks} failed at every try, the first at ${at.slice(0, 19)}Z, and ${tasks === 1 ? 'is' : 'are'} tried again a quarter of an hour later, again and again: look in the logs for “something failed” and mend what it names; nothing is lost`,
  // the practices
  noPractice: 'none is set up: invite the bot to a server and run /set-up there',
  inOrder: 'roles, channels and rights are in order',
  policy: (day: string): string => `confirmed on ${day}`,
  emergency: (region: string, number: string, source: string): string =>
    `${region}: ${number}, seen: ${source}`,
  fromMemory: (region: string, number: string): string =>
    `${region}: ${number}, from memory: check it with an official page before you go live`,
}
