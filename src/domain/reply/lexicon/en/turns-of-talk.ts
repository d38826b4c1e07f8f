import type { LexiconData } from '../schema.ts'

/** What is taken back, still to come, of somebody else, or asked: a value told so is none of today. */
export const turnsOfTalk = {
  correction: `
    correction, i mean, i meant, meant, make that, make it, should be, should have been, shouldve been,
    should say, meant to say, i meant to say, scratch that, no wait, wait no, wait, rather, oops, whoops,
    my mistake, typo, edit, that should be, that should have been, that should read, it should be, change
    that to, change it to, change to, amend, amend to, fix, fixed, not what i said, strike that, wrong,
    was wrong, my bad, mistyped, i mistyped, misread, fat fingers, ment, i ment, sory i meant, sorry i
    meant, sorry i mean, sorry meant, sorry that should be, sorry make that, sorry correction, sorry
    wrong, no sorry, oops i meant, no i meant, no i mean, autocorrect, in fact, actually no, no actually,
    ooops, woops, jk, just kidding, only kidding, kidding, joking, just joking, only joking, wait no make that,
    no make that, no make it, no wait make that, no scratch that, no hang on, hang on, no hold on
  `,
  sorry: 'actually, sorry, soz, apologies, sry, srry, pardon, sori, actually it was, actually its',
  wrote: 'i put, i said, i wrote, i entered, i typed, i logged, i sent, i pressed, i told you',
  later: `
    next, the coming, coming, if, tomorrow, will do, will, ill do, ill try, ill be, ill have, ill get,
    going to do, gonna do, gonna, about to do, about to, plan to, planning, planning to, planning on, hope
    to, hoping to, hoping for, going for, aiming for, aiming at, aim for, aim to, intend to, later i will,
    tmrw, tomoz, tmr, try to do, want to do, due on, should be able to, still have to, have to do, need to
    do, will try, gotta do, want to get to, tonight ill, later ill, tomorow, tommorow, target, my target,
    goal, my goal, the goal, supposed to do, supposed to be, was meant to do, meant to do, would like, in
    case
  `,
  someone: `
    coach said, coach says, the coach said, physio said, physio says, doc said, doctor said, the doctor said,
    my dad, my mum, my mom, my wife, my husband, my partner, my son, my daughter, my brother, my sister,
    my friend, my mate, a friend, my mother, my father, my neighbour, my neighbor, my kid, my boss, my
    boyfriend, my girlfriend, my colleague, my doctor, the physio said, my physio, my nan, my dog, my
    uncle, my aunt, my crewmate, my coxswain, my coach
  `,
  ask: `
    can i, could i, should i, whens, wheres, hows, whos, shall i, may i, do i, is it, is this, is that, are there, what, whats, how,
    how do, why, would it, would you, will it, does it, does this, can you, could you, should we, any
    chance, how many, how long, how much, what if, is there, wondering if, i wonder, any advice, do you,
    have you, are you, can we, what should, what do, quick question, question, got a question, i have a
    question, wanted to ask, wondering whether, im wondering, i was wondering, any idea, any tips, ok to,
    okay to
  `,
} satisfies Partial<LexiconData['cues']>
