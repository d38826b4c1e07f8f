import { type ChildProcess, fork } from 'node:child_process'
import type { Ask, Question, Told } from './protocol.ts'

/** The process was killed before it could answer. */
export class Died extends Error {}

interface Waiting {
  resolve(value: unknown): void
  reject(error: Error): void
}

/** The bot in a process of its own. */
export class BotProcess {
  /** Loaded, and waiting to be told to start. */
  readonly ready: Promise<void>
  /** Resolves when it has ended. */
  readonly over: Promise<void>
  isAlive = true
  onSent: (told: Told & { told: 'sent' }) => void = () => {}
  onHandled: (told: Told & { told: 'handled' }) => void = () => {}
  private readonly child: ChildProcess
  private readonly waiting = new Map<number, Waiting>()
  private said = ''
  private last = 0

  constructor(file: string) {
    this.child = fork(file, {
      execArgv: [],
      env: { PATH: process.env.PATH },
      serialization: 'advanced',
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    })
    for (const stream of [this.child.stdout!, this.child.stderr!])
      stream.setEncoding('utf8').on('data', (text: string) => {
        this.said += text
      })
    this.over = new Promise((resolve) => this.child.once('exit', () => resolve()))
    void this.over.then(() => this.end())
    this.ready = new Promise((resolve, reject) => {
      this.waiting.set(0, { resolve: () => resolve(), reject })
    })
    this.ready.catch(() => {})
    this.child.on('message', (told: Told) => this.hear(told))
  }

  /** @throws Died where it ends before it has answered */
  async ask(now: Date, ask: Ask): Promise<unknown> {
    await this.ready
    if (!this.isAlive) throw new Died()
    this.last += 1
    const question: Question = { ...ask, id: this.last, now: now.getTime() }
    return new Promise((resolve, reject) => {
      this.waiting.set(question.id, { resolve, reject })
      this.child.send(question, (error) => error && this.waiting.delete(question.id) && reject(new Died()))
    })
  }

  kill(): void {
    this.child.kill('SIGKILL')
  }

  private hear(told: Told): void {
    if (told.told === 'sent') return this.onSent(told)
    if (told.told === 'handled') return this.onHandled(told)
    const id = told.told === 'ready' ? 0 : told.id
    const waiting = this.waiting.get(id)
    this.waiting.delete(id)
    if (told.told === 'failed') waiting?.reject(new Error(told.error))
    else waiting?.resolve(told.told === 'answer' ? told.value : undefined)
  }

  private end(): void {
    this.isAlive = false
    if (this.child.signalCode !== 'SIGKILL' && this.child.exitCode !== 0) process.stderr.write(this.said)
    for (const { reject } of this.waiting.values()) reject(new Died())
    this.waiting.clear()
  }
}
