import { harmless } from '../harmless.ts'

/** What the keeper reads at set-up: every setting, what is missing and how to mend it. */
export interface Settings {
  readonly coachRole: string | null
  readonly coachChannel: string | null
  readonly alertChannel: string | null
  readonly deputy: string | null
  readonly zone: string
  readonly digest: string
  readonly region: string | null
  readonly regions: readonly string[]
  readonly language: string
  readonly retentionDays: number
  /** Minutes over which prompts may be spread. */
  readonly window: number
  readonly name: string
  readonly quote: boolean
  readonly policyConfirmed: string | null
  /** The emergency number of the region, where it is known. */
  readonly emergency: string | null
}

export const setUp = {
  done: 'Set up, nothing is missing. Invite a client with /enrol.',
  notDone: 'Something is still missing: see below.',
  unchanged: 'Nothing was changed.',
  stillMissing: '**Still missing**',
  worthALook: '**Worth a look**',
  settings: (s: Settings): string[] => [
    `name: ${harmless(s.name, 60)}`,
    `coach-role: ${s.coachRole ? `<@&${s.coachRole}>` : 'none yet'}`,
    `coach-channel: ${s.coachChannel ? `<#${s.coachChannel}>` : 'none yet'}`,
    `alert-channel: ${s.alertChannel ? `<#${s.alertChannel}>` : 'the coach channel'}`,
    `deputy: ${s.deputy ? `<@${s.deputy}>` : 'nobody'}`,
    `zone: ${s.zone}`,
    `digest: ${s.digest}`,
    `region: ${s.region ? `${s.region}, emergency number ${s.emergency ?? 'not known'}` : 'none yet'}`,
    `regions: ${s.regions.length > 0 ? s.regions.join(' ') : 'not limited'}`,
    `language: ${s.language}`,
    `retention: ${s.retentionDays} days after the end`,
    `window: ${s.window} minutes`,
    `quote: ${s.quote ? 'on, the client’s own words are shown to the coach' : 'off, the client’s own words are left out'}`,
    `policy-settled: ${s.policyConfirmed ? `confirmed on ${s.policyConfirmed}` : 'not confirmed'}`,
  ],
  lacksRole: 'coach-role: name the role of the coaches with /set-up coach-role.',
  lacksChannel: 'coach-channel: name a private channel with /set-up coach-channel.',
  roleGone:
    'The coach role is gone from this server, so nobody can see client records. Name another with /set-up coach-role.',
  everyoneNoCoach: 'The coach role cannot be everyone: make a role for the coaches and name that.',
  policyOpen:
    'policy-settled: the chat service’s developer policy limits what apps may do with health information. Settle that for your practice, then run /set-up policy-settled: True. Until then nobody can be invited.',
  channelGone: (option: string): string =>
    `I cannot find the channel for “${option}”: it is gone, or I lack “View Channel” there. Let me see it, or name another with /set-up ${option}.`,
  channelOpen: (option: string): string =>
    `Everyone on this server can read the channel for “${option}”. Take “View Channel” away from @everyone there, or name another with /set-up ${option}.`,
  channelLacks: (option: string, lacks: readonly string[]): string =>
    `In the channel for “${option}” I lack: ${lacks.join(', ')}. Grant these to my role there, or name another with /set-up ${option}.`,
  readers: (option: string, roles: readonly string[]): string =>
    `These roles can read the channel for “${option}” too: ${roles.map((id) => `<@&${id}>`).join(', ')}. If they are not coaches, take “View Channel” away from them there.`,
  cannotCall:
    'I cannot call the coach role by name when an alert widens: allow anyone to mention that role, or grant me “Mention @everyone, @here, and All Roles” in the alert channel.',
  noRegion:
    'Without a region I can only say “your local emergency number”. Name the country with /set-up region, like PT.',
  fromMemory: (region: string): string =>
    `The emergency number of ${region} was written down from memory: check it with an official page before you go live.`,
  cannotPost: (which: 'coach' | 'alert', reason: string): string => {
    const why =
      reason === 'gone'
        ? 'it is gone'
        : reason === 'open'
          ? 'everyone on the server can read it'
          : 'I may not post there'
    return `I cannot post in the ${which} channel: ${why}. Somebody who may manage the server runs /set-up.`
  },
  lostThere: 'What was meant for it did not arrive; /digest and /roster show how things stand.',
  alertInPrivate: (ref: string): string =>
    `An alert about ${ref} comes to you here because I cannot post in the practice’s channels. Please reach them now, then use /take-up in the server.`,
  trouble: (server: string): string =>
    `Something has changed on the server ${server}, and I cannot work there as before:`,
  enrolNeedsPolicy:
    'Nobody can be invited yet. The chat service’s developer policy limits what apps may do with health information: somebody who may manage the server settles that, then runs /set-up policy-settled: True.',
}
