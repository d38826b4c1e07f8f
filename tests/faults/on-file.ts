import { openStore } from '../../src/store/open.ts'
import * as samples from '../store/samples.ts'

interface OnFile {
  readonly guild: string
  readonly role: string
  readonly alerts: string
  readonly coach: string
  readonly heron: string
}

/** Writes the boathouse and heron, who is in the coach's care, into a database; `ledger` as openStore takes it. */
export async function putOnFile(
  url: string,
  { guild, role, alerts, coach, heron }: OnFile,
  ledger?: null,
): Promise<void> {
  const { store, close } = await openStore(url, ledger)
  const practice = { ...samples.practice, guild, coachRole: role, coachChannel: null, alertChannel: alerts }
  const client = samples.client('heron', { user: heron, region: 'PT', coach: `<@${coach}>` })
  await store.transaction((tx) =>
    tx.apply(samples.outcome([samples.put('practice', practice), samples.put('client', client)])),
  )
  await close()
}
