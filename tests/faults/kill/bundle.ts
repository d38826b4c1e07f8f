import { bundle } from '../../bundle.ts'

const CHILD = 'tests/faults/kill/child.ts'

export interface ChildBundle {
  readonly path: string
  remove(): void
}

/** The bot and what stands around it. */
export async function bundleChild(): Promise<ChildBundle> {
  const made = await bundle('kill', [CHILD])
  return { path: made.of(CHILD), remove: made.remove }
}
