import type { ClientExport } from './facts.ts'

/** The document as JSON, indented so that a person can read it too; keys in the order of `ClientExport`. */
export const exportJson = (facts: ClientExport): string => `${JSON.stringify(facts, null, 2)}\n`
