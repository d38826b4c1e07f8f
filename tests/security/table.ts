import { COLUMNS, type Column } from './tries.ts'

/**
 * Who may do what: every command, and every kind of button, list and form that stands on a message of the bot.
 *
 * - done: it is theirs to do
 * - own: it is done on what is their own; nobody of the practice is touched or shown
 * - role, keeper: only with the coach role; only for whoever may manage the server
 * - alias: there is nobody of that name in their practice
 * - stranger: the bot does not know them
 * - not-yours: they are in the channel, and the press is refused by the engine
 * - expired: refused by the chat, before the engine hears of it
 * - unheard: no answer at all
 */
const TEXT = `
|                      | client    | other client | coach    | coach elsewhere | keeper    | stranger  | bot     | webhook |
| /answer              | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /check-in            | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /clear               | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /client-record       | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /cover               | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /decide              | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /digest              | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /discharge           | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /enrol               | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /erase-client        | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /erase-me            | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /export-client       | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /hand-over           | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /help                | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /leave               | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /move-client         | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /my-data             | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /my-record           | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /my-times            | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /note                | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /noted               | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /pause               | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /pause-client        | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /plan                | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /plan-history        | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /proposals           | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /questions           | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /release             | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /report              | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /resume              | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /resume-client       | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /roster              | role      | role         | done     | own             | role      | role      | unheard | unheard |
| /set-up              | keeper    | keeper       | keeper   | keeper          | done      | keeper    | unheard | unheard |
| /spoken-with         | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /take-up             | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| /today               | done      | own          | stranger | stranger        | stranger  | stranger  | unheard | unheard |
| /why                 | role      | role         | done     | alias           | role      | role      | unheard | unheard |
| activities form      | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer barrier       | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer comfort       | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer day           | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer pain          | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer reach         | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer sessions      | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer settled       | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer side          | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer signs         | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| answer-question form | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| check-in form        | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| clear form           | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| come-back            | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| consent              | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| decide               | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| decide form          | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| my-data              | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| noted                | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| on-the-way           | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| open-record          | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| outcome              | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| pause                | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| plan-change          | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| plan-save            | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| put-right form       | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| record               | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| remind               | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| report               | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| roster               | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
| same                 | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| screening form       | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| seen                 | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| sexual               | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| sign                 | done      | expired      | expired  | expired         | expired   | expired   | unheard | unheard |
| take-over            | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| take-up              | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| undo                 | not-yours | not-yours    | done     | not-yours       | not-yours | not-yours | unheard | unheard |
| why                  | expired   | expired      | done     | expired         | expired   | expired   | unheard | unheard |
`

/** What leaves no row but the note that it was applied. */
export const REFUSED: readonly string[] = [
  ...['role', 'keeper', 'alias', 'stranger', 'not-yours'],
  ...['expired', 'unheard'],
]

/** Outcomes by what is done and who does it. */
export const TABLE: ReadonlyMap<string, ReadonlyMap<Column, string>> = read()

function read(): Map<string, Map<Column, string>> {
  const [, ...lines] = TEXT.trim().split('\n')
  return new Map(
    lines.map((line) => {
      const [name = '', ...cells] = line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim())
      return [name, new Map(COLUMNS.map((column, n) => [column, cells[n] ?? '']))]
    }),
  )
}
