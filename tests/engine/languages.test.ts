import { afterEach, describe, expect, it } from 'vitest'
import type { Message } from '../../src/engine/message.ts'
import { textsFor } from '../../src/text/index.ts'
import { openPractice, type Practice } from './practice.ts'

const es = textsFor('es')
const en = textsFor('en')
const ENGLISH =
  /\b(the|you|your|and|please|drills?|pain|since|with|what|yes|none|sign|signs|urgent|week|reach|sessions?|replies)\b/i
const SPANISH =
  /\b(tu|el|la|los|las|que|con|por|dolor|señal|señales|ejercicios|sesiones|espalda|muslo|pie|sí)\b/i

/** Everything of a message that somebody reads, without quotations, titles of papers and names of commands. */
const read = ({ text, buttons, pick }: Message): string =>
  [
    ...text.split('\n').filter((line) => !/^(>|Por qué cuenta|Why it counts)/.test(line)),
    ...buttons.map(({ label }) => label),
    ...buttons.flatMap(({ form }) =>
      form
        ? [form.title, ...form.fields.flatMap((f) => [f.label, ...(f.options ?? []).map((o) => o.label)])]
        : [],
    ),
    ...(pick ? [pick.label, ...pick.options.map(({ label }) => label)] : []),
  ]
    .join('\n')
    .replace(/“[^”]*”/g, '')
    .replace(/\/[a-z-]+/g, '')
    .replace(/\([A-Z][^)]*\d{4}[^)]*\)/g, '')

let practice: Practice
afterEach(() => practice.close())

const none = (messages: readonly Message[], words: RegExp): void => {
  for (const message of messages) expect(read(message), message.key).not.toMatch(words)
}

describe('a client who reads Spanish, with a coach who reads English', () => {
  it('has a whole day, an urgent sign with it, each in their own language', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    const prompt = practice.to('heron').findLast(({ kind }) => kind === 'prompt')
    expect(prompt?.text).toContain('¿Cómo te ha ido')
    expect(prompt?.text).toContain('Apoyo en los antebrazos')
    const [receipt] = await practice.say('heron', '2 pantorrilla 4, sin señales')
    expect(receipt?.text).toContain('Anotado: 2 sesiones, pantorrilla, dolor 4.')

    const said = await practice.say('heron', 'no siento nada entre las piernas')
    const urgent = said.find(({ kind }) => kind === 'urgent')
    expect(urgent?.text).toContain('llama al 112')
    expect(urgent?.text).toContain('posible síndrome de cauda equina')
    expect(urgent?.care).toBe('emergency')
    const alert = practice.toAlerts().at(-1)!
    expect(alert.text).toContain('Urgent sign: heron')
    expect(alert.text).toContain('“no siento nada entre las piernas”')

    await practice.coachPress('heron', 'take-up')
    expect(practice.to('heron').at(-1)?.text).toBe(es.client.takenUp)
    await practice.until('2026-03-04', '09:00')
    expect(practice.to('heron').some(({ text }) => text.includes('Tus ejercicios siguen parados'))).toBe(true)
    await practice.command('clear', { client: 'heron', by: 'emergency physician', on: '2026-03-03' })
    await practice.until('2026-03-08', '19:00')

    none(practice.to('heron'), ENGLISH)
    none([...practice.toCoach(), ...practice.toAlerts()], SPANISH)
    const card = practice.toCoach().findLast(({ kind }) => kind === 'digest')
    expect(card?.picture?.language).toBe('en')
  })

  it('has what was ticked and what was not answered told to the coach in English', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    await practice.fill('heron', 'check-in', {
      sessions: '2',
      reach: 'calf',
      pain: '4',
      signs: ['leg-weakness'],
    })
    expect(practice.toAlerts().at(-1)?.text).toContain(`“${en.client.ticked}`)
    none(practice.toAlerts(), SPANISH)
  })

  it('is asked, answers and is understood without a button', async () => {
    practice = await openPractice('2026-03-02')
    await practice.invite('dipper', { language: 'es', 'in-words': true })
    const answers: [string, string][] = [
      ['sí', 'screening'],
      ['no', 'screening'],
      ['ninguna', 'screening'],
      ['41', 'screening'],
      ['hace tres semanas', 'screening'],
      ['no', 'screening'],
      ['si', 'screening'],
      ['ninguna de estas', 'screening'],
      ['nada', 'screening'],
      ['pantorrilla', 'screening'],
      ['6', 'screening'],
      ['izquierda', 'screening'],
      ['ninguno', 'screening'],
      ['remar 7, sentarme 5', 'screening'],
      ['ninguno', 'active'],
    ]
    for (const [words, status] of answers) {
      await practice.say('dipper', words)
      expect(await practice.status('dipper'), words).toBe(status)
    }
    const { answers: kept } = (await practice.file('dipper')).screening!
    expect(kept).toMatchObject({
      signs: [],
      age: 41,
      earlier: 'no',
      seen: 'yes',
      risks: [],
      reach: 'calf',
      side: 'left',
      eases: 'neither',
      activities: { remar: 7, sentarme: 5 },
    })
    none(practice.to('dipper'), ENGLISH)
    none(practice.toCoach(), SPANISH)
  })
})

describe('somebody unknown', () => {
  it('is answered in the language of the sign', async () => {
    practice = await openPractice('2026-03-02')
    const [spanish] = await practice.say('stranger', 'no siento nada entre las piernas')
    expect(spanish?.text).toBe(es.client.strangerUrgent)
    const [english] = await practice.say('stranger', 'I am numb between my legs')
    expect(english?.text).toBe(en.client.strangerUrgent)
  })
})

describe('another language', () => {
  it('is had by a line that asks for it, before any yes', async () => {
    practice = await openPractice('2026-03-02')
    await practice.invite('wren')
    await practice.say('wren', 'En español, por favor')
    expect(practice.to('wren').at(-1)).toMatchObject({ kind: 'welcome', asks: 'consent' })
    expect(practice.to('wren').at(-1)?.text).toContain('¿Aceptas?')
    await practice.say('wren', 'sí')
    expect(await practice.status('wren')).toBe('screening')
    none(practice.to('wren').slice(1), ENGLISH)
  })

  it('puts a question about a sign once more, and its ten minutes go on', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('wren')
    await practice.until('2026-03-03', '09:00')
    await practice.say('wren', '2 calf 9')
    await practice.wait(6)
    const said = await practice.say('wren', 'en español')
    expect(said.map(({ text }) => text)).toEqual([
      es.course.language,
      es.client.hintedSign(es.signs['severe-unrelenting'].question, 'same-day', null),
    ])
    await practice.wait(5)
    expect(practice.to('wren').at(-1)?.text).toContain('haz que te vea hoy')
  })

  it('is had by /my-times, and left again in words', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('wren')
    const answer = await practice.command('my-times', { language: 'es' }, 'wren')
    expect(answer?.text).toContain(es.course.language)
    await practice.until('2026-03-03', '09:00')
    expect(practice.to('wren').at(-1)?.text).toContain('¿Cómo te ha ido')
    const [said] = await practice.say('wren', 'in English')
    expect(said?.text).toBe(en.course.language)
    await practice.until('2026-03-04', '09:00')
    expect(practice.to('wren').at(-1)?.text).toContain('How did it go')
  })
})

describe('a practice in Spanish', () => {
  it('has its coach read Spanish, and its clients too unless otherwise said', async () => {
    practice = await openPractice('2026-03-02', { language: 'es', region: 'ES' })
    await practice.enrol('plover')
    await practice.until('2026-03-03', '09:00')
    await practice.say('plover', '2 gemelo 4')
    await practice.until('2026-03-04', '09:00')
    await practice.say('plover', 'ayer 2 pie 8')
    await practice.say('plover', 'se me escapa la orina desde ayer')
    await practice.coachPress('plover', 'take-up')
    const roster = await practice.command('roster')
    expect(roster?.text).toContain('**Lista, mié 4 mar**')
    const why = await practice.command('why', { client: 'plover' })
    expect(why?.text).toContain('parar: hay una señal urgente abierta')
    await practice.until('2026-03-08', '19:00')
    const card = practice.toCoach().findLast(({ kind }) => kind === 'digest')
    expect(card?.picture?.language).toBe('es')
    expect(card?.text).toContain('**plover** · semana 1, lun 2 mar a dom 8 mar')
    none([...practice.toCoach(), ...practice.toAlerts(), ...practice.to('plover')], ENGLISH)
  })
})

describe('a client who changed language, and still knows the words of the one before', () => {
  it('is read where the words make a whole check-in there', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    const [receipt] = await practice.say('heron', '2 knee 4, no signs')
    expect(receipt?.text).toContain('Anotado: 2 sesiones, rodilla, dolor 4.')
  })

  it('is asked about a sign that is only hinted at in the other language', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    const [question] = await practice.say('heron', 'leg feels like jelly')
    expect(question?.kind).toBe('ask')
    expect(question?.text).toContain(es.signs['leg-weakness'].question)
  })

  it('is let go by the word that the invitation named, also under a question', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', '2 rodilla')
    await practice.say('heron', 'leave')
    expect(await practice.status('heron')).toBe('left')
  })

  it('stays where a longer text only sounds like another language', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', 'my boss wants me to leave work early')
    expect(await practice.status('heron')).toBe('active')
  })

  it.each([
    ['en', 'im out of bands'],
    ['en', 'i quit smoking last week'],
    ['en', 'cancel my session today, boss'],
    ['en', 'I want to stop rowing'],
    ['es', 'quiero dejarlo por hoy'],
  ])('%s: “%s” sounds like going and ends nothing; the word that does is named', async (language, text) => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron', { language })
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', text)
    expect(await practice.status('heron')).toBe('active')
    expect(practice.to('heron').at(-1)?.text).not.toBe((language === 'es' ? es : en).client.left(30, false))
    await practice.say('heron', language === 'es' ? 'salir' : 'Leave.')
    expect(await practice.status('heron')).toBe('left')
  })

  it('is not gone by asking how to go, and hears how', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron')
    await practice.enrol('dipper', { language: 'es' })
    await practice.until('2026-03-03', '09:00')
    const [answer] = await practice.say('heron', 'how do i delete all this')
    expect(answer?.text).toBe(en.client.help)
    expect(answer?.text).toContain('/erase-me')
    const [respuesta] = await practice.say('dipper', '¿cómo borro todo?')
    expect(respuesta?.text).toBe(es.client.help)
    expect(await practice.status('heron')).toBe('active')
    const [how] = await practice.say('heron', 'please delete all my data')
    expect(how?.text).toBe(en.client.leaveHow)
    expect(how?.text).toContain('/erase-me')
  })

  it('asks a coach nothing by question marks alone', async () => {
    practice = await openPractice('2026-03-02')
    await practice.enrol('heron')
    await practice.until('2026-03-03', '09:00')
    const [answer] = await practice.say('heron', '???')
    expect(answer?.text).toBe(en.client.notUnderstood)
  })
})
