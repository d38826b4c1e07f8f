import { each } from '../each.ts'
import type { LexiconData } from '../schema.ts'

/** "no to all of that": what answers the question of the signs, and tells nothing of sessions or pain. */
const DENIALS = [
  each(
    'none of/none at all of/none whatsoever of/not one of/not a single one of/havent had any of/havent got any of/havent any of/dont have any of/dont get any of/not had any of/not got any of/not experiencing any of/not experienced any of/not noticed any of/havent noticed any of/i have none of/ive none of/had none of/got none of',
    'that/this/those/these/the above/that stuff/those things/these things/those signs/those symptoms/these symptoms/these signs/what you ask/what you list/what you mention/what you asked/the things you list/the things you mention/the things you ask/the things you ask about/your list',
  ),
  each(
    'no to/nope to/negative on/negative to/no on/no for',
    'all/all of that/all of those/all of these/all of them/all that/all those/all these/all of it/everything/each/every one/the lot/the whole lot/the whole list/the list/all of those questions/all of these questions/all those questions/all the questions/all your questions/all six',
  ),
  'none of those apply, none of these apply, none of those apply to me, none of these apply to me, none apply, none apply to me, all no, all noes, all nos, all negative, all of those no, all of them no, all of these no, no across the board, nothing like that, nothing like those, nothing of the sort, nothing of the kind, no such symptoms, no such signs',
].join(', ')

/** Yes, no and thanks. */
export const answers = {
  yes: `
    yes, yeah, yep, yup, yea, ya, aye, ye, y, sure, definitely yes, certainly, of course, absolutely,
    correct yes, affirmative, one of these, one of those, uh huh, mhm, si, oui, ja, yes please, yess, yas,
    yess sir, indeed, it does, it did, i do, ok yes, yesss
  `,
  nope: `
    ${DENIALS}, none of the signs, none of your signs, none of these signs, none of those signs, none of that,
    none of the list, none on the list, none from the list, none of the symptoms, none of the red flags,
    none of the warning signs, none of the urgent signs, none of the others, none of the other things,
    none of the other stuff, nothing on the list, nothing from the list, nothing on your list,
    none of your list,
    nope, nah, nay, na, not really, not at all, no thanks, no thank you, nae, negative, none of these,
    none of those, no signs, no signs at all, none of the above, it doesnt, it didnt, i dont, not yet no,
    not quite, noo, non, nein, uh uh, nuh uh, no none, no not really, no nothing
  `,
  thanks: `
    thanks, thank you, thx, ty, cheers, ta, thank u, thanx, thnx, tks, many thanks, thanks a lot, thank
    you so much, thanks so much, thank you very much, tysm, much appreciated, appreciated, appreciate it,
    thanks for everything, thank you for everything, thanks for all, thanks for all your help, thank you for all
    your help, thanks for all of it, thanks for all this, cheers for everything, thanks coach, thank you coach, thanks again, cheers mate, cheers coach, have a good day, have a nice
    day, bye, goodbye, good night coach, see you, talk soon, speak soon, xox, xoxo, gracias, merci, danke,
    god bless, kind regards, regards, best wishes, thankyou, thanks mate, thanks bot, thank you bot
  `,
} satisfies Partial<LexiconData['cues']>
