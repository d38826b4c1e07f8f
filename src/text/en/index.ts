import { access } from './access.ts'
import { alerts, backAgain } from './alerts.ts'
import { away } from './away.ts'
import { chat } from './chat.ts'
import { client } from './client.ts'
import { coach } from './coach.ts'
import { commands } from './commands.ts'
import { course, courseForCoach } from './course.ts'
import { decided, decisions } from './decisions.ts'
import { digestCard, rollCallText } from './digest.ts'
import { digestAgain } from './digest-again.ts'
import { digestAlt, pictureWords } from './digest-picture.ts'
import { screening } from './enrol.ts'
import { ownData, ownDataForCoach } from './own-data.ts'
import { plan } from './plan.ts'
import { proposals } from './proposals.ts'
import { questions, questionsForCoach } from './questions.ts'
import { record } from './record.ts'
import { rehearsal } from './rehearsal.ts'
import { report } from './report.ts'
import { roster } from './roster.ts'
import { ruleTexts } from './rules.ts'
import { setUp } from './set-up.ts'
import { SIGN_WORDS } from './signs.ts'
import { words } from './words.ts'

export const en = {
  language: 'en',
  words,
  client,
  screening,
  rehearsal,
  course: { ...course, ...questions },
  coach,
  courseForCoach: { ...courseForCoach, ...questionsForCoach },
  commands,
  ownData,
  ownDataForCoach,
  plan,
  proposals,
  alerts,
  away,
  backAgain,
  digestAgain,
  decided,
  decisions,
  roster,
  record,
  report,
  access,
  setUp,
  chat,
  signs: SIGN_WORDS,
  rules: ruleTexts,
  digest: { card: digestCard, rollCall: rollCallText, alt: digestAlt, picture: pictureWords },
}
