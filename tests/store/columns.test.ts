import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { KINDS } from '../../src/store/columns.ts'

const MODELS = readFileSync(new URL('../../prisma/models/models.prisma', import.meta.url), 'utf8')

/** The columns of a model that are of this type, as the models say. */
function columnsOf(model: string, type: string): string[] {
  const body = new RegExp(`^model ${model} \\{\\n([\\s\\S]*?)^\\}`, 'm').exec(MODELS)![1]!
  return [...body.matchAll(/^ {2}(\w+)\s+(\w+)\??(?:\s|$)/gm)]
    .filter(([, , of]) => of === type)
    .map(([, name]) => name!)
}

it.each(Object.entries(KINDS))('%s: instants, flags and JSON are those of the models', (model, kinds) => {
  expect([...kinds.instants].sort()).toEqual(columnsOf(model, 'DateTime').sort())
  expect([...kinds.flags].sort()).toEqual(columnsOf(model, 'Boolean').sort())
  expect([...kinds.json].sort()).toEqual(columnsOf(model, 'Json').sort())
})
