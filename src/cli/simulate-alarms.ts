import { readFileSync } from 'node:fs'
import { z } from 'zod'
import { ALARMS, type Alarms } from '../domain/diaries/table-rules.ts'

const Sum = z.strictObject({
  k: z.number().min(0).max(10),
  h: z.number().positive().max(100),
  need: z.number().int().min(1).max(60),
})
const Usual = z.strictObject({
  days: z.number().int().min(1).max(60),
  gap: z.number().int().min(1).max(60),
})
const File = z.strictObject({
  pain: Sum.partial().default({}),
  reach: Sum.partial().default({}),
  usual: Usual.partial().default({}),
})

function jsonOf(path: string): unknown {
  let text: string
  try {
    text = readFileSync(path, 'utf8')
  } catch {
    throw new Error(`--rules: "${path}" cannot be read: name a file that exists`)
  }
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new Error(`--rules: "${path}" is not JSON (${(error as Error).message})`)
  }
}

/** Without what was left undefined, so that the rules' own value stands in. */
function given<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}

/**
 * Parameters of the two alarms from a file; what it leaves out is as in the rules.
 * @throws Error that tells the mend where the file cannot be used
 */
export function alarmsFrom(path: string): Alarms {
  const parsed = File.safeParse(jsonOf(path))
  if (!parsed.success) {
    const [issue] = parsed.error.issues
    throw new Error(`--rules: ${issue?.path.join('.') || 'the file'}: ${issue?.message ?? 'not understood'}`)
  }
  const { pain, reach, usual } = parsed.data
  return {
    pain: { ...ALARMS.pain, ...given(pain) },
    reach: { ...ALARMS.reach, ...given(reach) },
    usual: { ...ALARMS.usual, ...given(usual) },
  }
}
