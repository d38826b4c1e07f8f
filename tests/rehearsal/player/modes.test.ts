import { describe, expect, it } from 'vitest'
import { playText } from './playing.ts'

const MIXED = `title: A bit of everything in five days
practice: { zone: Europe/Lisbon, digest: "Thu 18:00", region: PT }
start: 2026-03-02
days: 5
clients:
  - ref: heron
    prompt: "08:00"
    reminder: "19:00"
    side: left
    plan: { sessions: 2, rungs: { extension: 2 } }
    answers: { signs: none, comfort: yes }
    days:
      1: [ "2 calf", { after: 2m, press: pain-4 } ]
      2: { form: { sessions: 2, reach: calf, pain: 4, side: left, signs: [] } }
      3: [ "2 calf 4", { after: 5m, edit: "2 calf 5" }, { after: 5m, delete: true }, { after: 5m, command: "/today" } ]
      4: { at: "09:00", press: one-of-these }
      5: { at: "08:05", press: seen-no }
  - ref: plover
    hands: words
    zone: America/New_York
    region: US
    prompt: "08:00"
    side: right
    plan: { sessions: 1, rungs: { glide: 1 } }
    answers: { signs: none, comfort: no }
    days:
      1: "1 thigh 3"
      2: { form: { sessions: 1, reach: thigh, pain: 3, signs: [] } }
      3: { press: take-a-break }
      4: "I am back"
      5: { at: "24:20", say: "1 thigh 3, no signs" }
coach:
  2: [ { decide: { client: heron, ladder: extension, do: hold } }, { command: "/roster" } ]
  4: [ { at: "09:25", take-up: heron }, { at: "10:00", note: { client: heron, text: "Called." } } ]
  5: { clear: { client: heron, by: surgeon, on: 2026-03-06 } }
expect:
  - { day: 4, to: "client:heron", kind: urgent, count: 1 }
  - { day: 4, to: alerts, kind: alert, about: heron, count: 1 }
  - { day: 4, to: coach, kind: digest, count: 2 }
  - { end: heron, status: active }
  - { end: plover, status: active }
`

describe('a play', () => {
  it('gives the same messages, ends and pictures through the chat and without it', async () => {
    const chat = await playText(MIXED, 'chat')
    const direct = await playText(MIXED)
    expect(chat.checks.failed).toEqual([])
    expect(JSON.stringify(chat.messages, null, 1)).toBe(JSON.stringify(direct.messages, null, 1))
    expect(chat.clients).toEqual(direct.clients)
    expect(chat.messages.filter((message) => message.picture !== null)).toHaveLength(2)
  }, 120_000)

  it('lists each message with its keys in the order of the format', async () => {
    const { messages } = await playText(MIXED)
    const keys = 'at local day to about kind asks care text drills buttons picture'.split(' ')
    for (const message of messages) expect(Object.keys(message)).toEqual(keys)
    const prompt = messages.find(({ kind, to }) => kind === 'prompt' && to === 'client:plover')
    expect(prompt).toMatchObject({
      at: '2026-03-02T13:00:00.000Z',
      local: '2026-03-02T08:00',
      day: '2026-03-02',
      about: 'plover',
      drills: ['glide:1'],
      buttons: [],
    })
  }, 60_000)
})
