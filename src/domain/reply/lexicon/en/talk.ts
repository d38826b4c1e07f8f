import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'
import { plainWishes } from '../wishes.ts'

/** "don't want to do the check-ins any more", "cancel my plan": who wants out, and of what. */
const leaving = [
  'dont want to do',
  'do not want to do',
  'dont want',
  'dont want any more of',
  'no longer want',
  'no longer want to do',
  'want to stop',
  'like to stop',
  'want to end',
  'like to end',
  'stop taking part in',
  'want out of',
  'quit',
  'cancel',
  'leave',
  'drop out of',
  'dropping out of',
  'withdraw from',
  'get me out of',
  'sign me out of',
]
const left = [
  ...['check ins', 'checkins', 'check in', 'program', 'programme', 'plan', 'coaching', 'messages', 'bot'],
  ...['app', 'study', 'course', 'scheme', 'reminders', 'questions'],
]
const leavingIt = leaving
  .flatMap((verb) =>
    left.flatMap((what) =>
      ['', 'the ', 'this ', 'these ', 'my ', 'your '].map((of) => `${verb} ${of}${what}`),
    ),
  )
  .join(', ')

/** "how do I delete all this": who asks how to go. */
const howToGo = ['how do i', 'how can i', 'how to', 'how would i', 'how does one']
  .flatMap((how) =>
    ['leave', 'quit', 'stop this', 'opt out', 'unsubscribe', 'delete', 'erase', 'remove', 'wipe'].map(
      (verb) => `${how} ${verb}`,
    ),
  )
  .join(', ')

export const intents: LexiconData['intents'] = {
  leave: {
    within: `
      ${leavingIt}, ${plainWishes.es.leave}, stop taking part, dont want to take part, no longer want to take part, want to drop out,
      delete all, erase all, wipe all, remove all my, im out, i am out, delete everything, erase everything, remove everything, unsubscribe, stop messaging me, stop texting
      me, stop contacting me, stop sending me, stop writing to me, delete my data, delete me, delete my
      account, erase me, erase my data, remove me, remove my data, forget me, i want to leave, want to
      leave, id like to leave, i would like to leave, im leaving, i quit, want to quit, id like to quit,
      want out, opt out, opt me out, leave me alone, cancel my, cancel everything, cancel the check ins,
      cancel the checkins, no more messages, dont message me, do not message me, dont text me, i dont want
      this, dont want to do this anymore, dont want to do this any more, dont want to continue, withdraw,
      sign me off, end this, stop the check ins, stop the checkins, stop the messages, take me off, leave
      the programme, leave the program, leaving the programme, quit the programme, quit the program, i
      want to stop this, stop this, i want to stop, leave the study, done with this, im out, want my data
      deleted, wipe my data, never contact me, never message me, dont contact me, do not contact me, stop
      bothering me, want to end this, stop these messages, had enough of this, want to leave at the end, like to leave at the end, dont want any more
      messages, cancel this
    `,
    whole: `
      leave, ${plainWishes.es.wordOfLeave}, stop, quit, cancel, exit, stop it, end, stop all, stop now, i leave, leave now, unsub
    `,
  },
  pause: {
    within: `
      ${plainWishes.es.pause}, stop for, break for, pause me, pause it, pause this, pause the, pause for, pause my, pause until,
      take a break, taking a break, have a break, having a break, need a break, want a break, a break
      please, a short break, on holiday, going on holiday, on vacation, going away, go away for, away for
      a, away for the, away until, away till, away til, away next week, away from tomorrow, be away,
      on a trip, a week off,
      week off, few days off, couple of days off, some time off, time off, stop for a week, stop for a
      while, stop for now, stop for a bit, stop for a few days, no messages for, no messages until, dont
      message me until, dont message me for, do not message me until, put on hold, put me on hold, put
      this on hold, on hold, can i pause, i want to pause, want to pause, like to pause, snooze, break for
      a week, break from this, break from, days break, weeks break, week break, stop until, out of town,
      travelling next week, traveling next week, hit pause, not available until, not available next week,
      not here until, not here next week, skip the next, leave me until, hold off until, hold off for, i
      will be away, im away
    `,
    whole: `
      pause, ${plainWishes.es.wordOfPause}, break, holiday, vacation, pause please, hold, on leave, pausing, away, snooze please, take
      break
    `,
  },
  resume: {
    within: `
      ${plainWishes.es.resume}, resume, unpause, un pause, im back, i am back, back from holiday, back from vacation, back from my,
      start again, starting again, restart, ready to start, ready to go again, carry on again, pick up
      again, pick it up again, begin again, continue please, want to continue, ready to continue, like to
      continue, back home now, start me again, start me up again, turn it back on, switch it back on, end
      the pause, end my pause, stop the pause, back now, start up again, start back up, lets go again,
      lets carry on, can we start again, messages again, checkins again, check ins again, holiday is over,
      break is over, ready again
    `,
    whole: 'back, continue, start, go on, back again, i return, go again, start please, carry on',
  },
  today: {
    within: `
      whats today, what is today, todays plan, todays drills, todays exercises, todays session, todays
      sessions, todays work, todays programme, todays program, todays list, plan for today, drills for
      today, exercises for today, what do i do today, what should i do today, what am i doing today, what
      have i got today, what do i have today, whats on today, whats on for today, what is on today,
      what is my plan, whats my
      plan, whats the plan, what is the plan, show me today, show today, show me the drills, show me my
      drills, show me the plan, show me my plan, show me my exercises, show me the exercises, show my
      plan, show my drills, show plan, show drills, send me my drills, send me the drills, send me the
      exercises, send me my exercises, send me todays, my drills please, my exercises please, my plan
      please, which drills, which exercises, what drills, what exercises, what are my exercises, what are
      my drills, what are the drills, what are the exercises, my exercises for today, list of drills, list
      my drills, list my exercises, list the drills, what was i supposed to do, what am i meant to do,
      what am i supposed to do, what do i need to do today, remind me what to do, remind me of the drills,
      remind me of my drills, remind me of the exercises, remind me of my exercises, remind me what i do,
      what do i do next, what to do today, what i do today, see my plan, see the plan, see my drills, see
      the drills, whats in the plan, forgot what to do, forgot what i have to do, can i see my drills, can
      i see the drills, can i see the plan, can i see my plan, what must i do today, again the drills, the
      drills again, the exercises again, how many sessions today, how many sessions do i have, whats next
    `,
    whole: `
      today, plan, drills, exercises, my plan, the plan, my drills, the drills, my exercises, the
      exercises, today please, todays, plan please, drills please, exercises please, programme, program,
      what today, for today, show, schedule, my sessions, sessions today
    `,
  },
  help: {
    within: `
      ${howToGo}, ${plainWishes.es.help}, how does this work, how do i use, how does it work, what can i say, what do i write, what should i
      write, what do i type, what should i type, what do i say, how do i answer, how do i reply, how do i
      report, how do i check in, how to check in, how to use, how to answer, how to report, how to reply,
      dont understand, do not understand, need help, help me, help please, please help, can you help,
      commands, what are the commands, instructions, what do you want, what do you want me to, what do i
      send, what should i send, how this works, how it works, what are the options, im confused, im lost,
      not sure how to, what do i have to write, what do you need, what does reach mean, what is reach,
      what is this, who are you, are you a bot, what are you, give me an example, example please, how do i
      correct, how do i change, how do i fix, how can i correct, i dont get it, what can you do, format,
      menu
    `,
    whole: `
      help, ${plainWishes.es.wordOfHelp}, what, huh, how, how so, info, commands, what now, options, instructions, example, man, eh
    `,
  },
  correct: {
    within: `
      change my pain, change my sessions, change my reach, change the pain, change the sessions, change the
      reach, change pain to, change sessions to, change reach to, update my pain, update my sessions,
      that was wrong, that is wrong, thats wrong, wrong number, i made a mistake, made a mistake, mistake
      in, want to correct, like to correct, need to correct, need to change, want to change my, like to
      change my, can i change, can i correct, change my answer, correct my, wrong answer, got it wrong,
      got that wrong, you got it wrong, you misunderstood, misunderstood, not what i meant, not what i
      said, thats not right, that is not right, thats not what i, that isnt right, thats incorrect, that
      is incorrect, change yesterdays, undo, need to fix, fix my, typed it wrong, entered it wrong, put it
      wrong, put the wrong, wrong entry, gave the wrong, pressed the wrong, hit the wrong, pushed the
      wrong, clicked the wrong, tapped the wrong, need to edit, want to edit, edit my, redo my
    `,
    whole: `
      wrong, correct, correction, no wrong, mistake, incorrect, change, edit, not right, undo, oops, sorry
      wrong
    `,
  },
  question: {
    within: `
      time zone, timezone, time difference, jet lag, jetlag, jetlagged, im in, i am in, were in, we are in, im back in, i am back in, currently in, now in, just landed in, landed in, arrived in, flew to, flying to, moved to, moving to, im abroad, i am abroad,
      ask the coach, ask coach, ask my coach, question for the coach, question for coach, question for my
      coach, tell the coach, tell coach, tell my coach, talk to the coach, talk to my coach, talk to
      coach, speak to the coach, speak to my coach, speak with, talk with, speak to someone, talk to
      someone, speak to a human, talk to a human, call me, ring me, message for, pass on, i have a
      question, a question, got a question, quick question, let the coach know, get the coach, coach to,
      coach could you, coach can you, advice, wondering, i wonder, want to know, like to know, any idea
      why, any ideas, any tips, is it ok, is it okay, is it normal, is it safe, is it alright, is it bad,
      is it fine, is it allowed, when does, when do, when is, when are, where do, where is, where can, should i, can i, could i, shall i, may i, am i allowed, do i need, do i
      have to, do you think, would you, when will, when can, what if, what about, how many times, how
      often, how long, how hard, how far, how do i do, why does, why do, why is, why am
    `,
    whole: 'coach, question, hey coach, why, when',
  },
  thanks: {
    within: `
      youre the best, you are the best, great help, very helpful, thats helpful, so kind, you rock, youre
      a star, you are a star, legend
    `,
    whole: `
      great, cool, ok, okay, ok cool, got it, perfect, nice, nice one, sounds good, will do, understood,
      noted, brilliant, lovely, good, awesome, super, okey, alright, all right, ok great, no worries, fab,
      wonderful, good to know, roger, okay great, kk, oki, very good, good stuff, excellent
    `,
  },
}

/** What may stand where somebody leaves a place, not the coaching. */
const leavesElsewhere =
  'me a/you a/us a/a note/a message/a comment/a voice note/a review/early/earlier/late/later/work/for work/home/the house/the office/the gym/the boathouse/the hospital/the car/the bike/the band/the kids/the dog/town/for the/at/around/before/by/in the morning/in an hour/in a bit/tomorrow for/on friday for/my/her/him/them/room/space/it at/it to/it for/it there/it with/it out/it here/that/now for'

/** Breaks within a day's work. */
const breaksWithin =
  'between/after each/after every/in between/at work/at lunch/from work/from sitting/from driving/from rowing/from the erg/in the middle/halfway'

/** Where somebody is back who was not away from the coaching. */
const backAtThings =
  'in bed/on the sofa/to normal/to square one/on my feet/from the physio/from the doctor/from the shop/from a walk/from my walk'

export const aside: LexiconData['aside'] = [
  each('leave/leaving', leavesElsewhere),
  each('take a break/taking a break/have a break/having a break/need a break/want a break', breaksWithin),
  each('im back/i am back/back now', backAtThings),
  each(
    'im in/i am in/we are in/were in/now in/currently in',
    'a meeting/meetings/bed/the bath/the car/the office/class/a lesson/a lecture/a hurry/a rush/the middle/the gym/the boat/town/the queue/a queue/two minds/good spirits/a good mood/a bad mood/agony/pain/no pain/no rush/less pain/more pain/so much pain/a lot of pain',
  ),
  each(
    'help me',
    'move/lift/carry/up/dress/get up/get dressed/get out/put/with the shopping/with my socks/with my shoes/with the kids/through',
  ),
  each(
    'need help',
    'with the shopping/with shopping/with my socks/with my shoes/with the kids/getting/to get/putting/at home/around/moving/carrying/tying',
  ),
  each('cant/cannot', 'take a break/have a break'),
  each('i quit/quit', 'smoking/my job/work/rowing/drinking/coffee/sugar/the gym/vaping'),
  each('can you help/could you help', 'me with the/me with my/with the/with my'),
  each('my resume/resume', 'is/was/off/out/to a/and cover'),
  'stop for coffee, stop for lunch, stop for petrol, stop for gas, stop for a coffee, stop for a break, stop for fuel, stop for a red',
].join(', ')

export const refusals: LexiconData['refusals'] = `
  dont, do not, never, wont, will not, wouldnt, would not, didnt, did not, doesnt, not, im not, i am not, not going
  to, dont want to, do not want to, never want to, dont really, dont ever, no need to, no need for, no need of, dont
  need to, do not need to, never said i, never said, didnt say i, didnt say, not saying i, not that i, dont think i,
  do not think i, not sure i, not sure if i, dont know if i, do not know if i, not sure whether i
`

export const things: LexiconData['things'] =
  'work, weather, traffic, sleep, job, boss, news, film, movie, food, dinner, lunch, coffee, wifi, internet, signal, phone, train, bus, flight, commute, meeting, exam, exams, school, uni, race, regatta, match, game, rain, wind, mood, hotel, shift, tv'

export const gotIt: LexiconData['gotIt'] = 'ok, k, okay, got it, understood, will do'
