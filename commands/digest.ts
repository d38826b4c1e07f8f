import { isoWeekOf, mondayBefore } from '../src/domain/iso-week.ts'
import { dayAt } from '../src/domain/local-time.ts'
import { plain } from '../src/engine/answer.ts'
import { cardOf, digest as digestOf } from '../src/engine/coach/digest.ts'
import { digestAgain, digestOfWeek } from '../src/engine/coach/digest-again.ts'
import { weekWished } from '../src/engine/coach/record-page.ts'
import type { Desk, PracticeCommand } from '../src/engine/command.ts'
import type { Answer } from '../src/engine/message.ts'
import type { ClientFile } from '../src/engine/ports.ts'

/** The digest asked for beside the weekly one: as of now or of any week, of all clients or of one. */
export const digest: PracticeCommand = {
  name: 'digest',
  who: 'coach-practice',
  options: [
    { name: 'week', kind: 'text', required: false },
    { name: 'client', kind: 'client', required: false },
  ],
  async run(desk, { id, options }) {
    const { tx, practice, now, texts } = desk
    if (!practice!.coachChannel) return plain(texts.commands.notSetUpChannel, null)
    const ref = options.client === undefined ? null : String(options.client)
    const files = await filesWished(desk, ref)
    if (files.length === 0 && ref !== null)
      return plain(texts.coach.unknownClient(ref, await tx.refs(practice!.id)), null)
    if (options.week === undefined) return present(desk, files, ref, id)
    const monday = weekWished(String(options.week))
    if (monday === null) return plain(texts.record.badWeek(String(options.week)), null)
    const again = digestOfWeek(practice!, monday, id)
    if (monday > mondayBefore(dayAt(now, practice!.zone)))
      return plain(texts.digestAgain.futureWeek(again.week), null)
    // a week whose digest is still to come is told as it stands now
    if (again.at > now) return present(desk, files, ref, id)
    const postings = await digestAgain(desk, files, again, ref === null)
    if (postings.length === 0) return plain(texts.digestAgain.nobody(isoWeekOf(monday)), ref)
    await tx.apply({ changes: [], postings })
    return said(desk, texts.digestAgain.week(again.week), ref)
  },
}

async function filesWished({ tx, practice }: Desk, ref: string | null): Promise<ClientFile[]> {
  if (ref === null) return tx.roster(practice!.id)
  const file = await tx.clientByRef(practice!.id, ref)
  return file ? [file] : []
}

async function present(
  desk: Desk,
  files: readonly ClientFile[],
  ref: string | null,
  cause: string,
): Promise<Answer> {
  const { tx, practice, now, texts } = desk
  const postings =
    ref === null
      ? digestOf(practice!, files, now, desk, cause)
      : files.flatMap((file) => cardOf(file, now, desk, cause).postings)
  await tx.apply({ changes: [], postings })
  return said(desk, texts.digestAgain.present, ref)
}

const said = ({ texts }: Desk, what: string, ref: string | null): Answer =>
  plain(texts.digestAgain.posted(ref === null ? what : texts.digestAgain.ofClient(what, ref)), ref)
