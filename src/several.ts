import type { Logger } from 'pino'
import { PER_SECOND } from './chat/client.ts'
import { KEPT_FREE, KEPT_FREE_URGENT, URGENT_MS } from './chat/delivery-pace.ts'
import type { SharedBudget } from './engine/several.ts'
import { safeError } from './safe-error.ts'
import type { Jobs } from './schedule/jobs.ts'
import { serverProblem } from './store/postgresql.ts'
import { codeOf, StoreProblem } from './store/problem.ts'

/** What the processes of one PostgreSQL database share, beside what stands in its tables. */
export interface Several {
  readonly jobs: Jobs
  readonly budget: SharedBudget
}

/** By this name the server knows the process with the gateway. */
const WITH_GATEWAY = 'ebbline jobs'

/**
 * @param perSecond requests a second that the platform allows all of them together
 * @param name by which the server knows this process
 * @throws StoreProblem where the database cannot be used for it
 */
export async function openSeveral(
  { url, server }: { readonly url: string; readonly server: string },
  log: Logger,
  perSecond = PER_SECOND,
  name = WITH_GATEWAY,
): Promise<Several> {
  // only here: on SQLite nothing loads the engine of jobs
  const [{ openJobs }, { sharedBudget }] = await Promise.all([
    import('./schedule/jobs.ts'),
    import('./schedule/shared-budget.ts'),
  ])
  try {
    const jobs = await openJobs(url, name, (error) =>
      log.warn({ error: safeError(error) }, 'the engine of jobs reports an error; it goes on'),
    )
    const spacing = (kept: number): number => 1_000 / (perSecond * (1 - kept))
    const budget = sharedBudget(jobs, {
      ...{ usually: spacing(KEPT_FREE), afterUrgent: spacing(KEPT_FREE_URGENT), urgentMs: URGENT_MS },
    })
    return { jobs, budget }
  } catch (error) {
    if (codeOf(error) !== '42501') throw serverProblem(error, server)
    throw new StoreProblem(
      `PostgreSQL at ${server} does not let this user make the schema of jobs: GRANT CREATE ON DATABASE to it.`,
      { cause: error },
    )
  }
}
