// Loaded before a program: sends it SIGKILL just before its nth statement on a SQLite file. A text of several
// statements is run one by one, so that each of them is a step. Prints how many there were where none was the nth.
import SqliteDatabase from 'better-sqlite3'

const nth = Number(process.env.KILL_AT)
let n = 0
const step = () => {
  n += 1
  if (n === nth) process.kill(process.pid, 'SIGKILL')
}

const { exec, pragma, prepare } = SqliteDatabase.prototype
SqliteDatabase.prototype.exec = function (text) {
  const withoutComments = text.replaceAll(/^--.*$/gm, '')
  for (const statement of withoutComments.split(/;\s*$/m).filter((part) => part.trim() !== '')) {
    step()
    exec.call(this, statement)
  }
  return this
}
SqliteDatabase.prototype.pragma = function (...given) {
  step()
  return pragma.apply(this, given)
}
SqliteDatabase.prototype.prepare = function (...given) {
  step()
  return prepare.apply(this, given)
}
process.on('exit', () => process.stdout.write(String(n)))
