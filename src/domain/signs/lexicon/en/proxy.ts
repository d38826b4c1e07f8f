const RELATIONS =
  'husband/wife/partner/son/daughter/mum/mom/mother/dad/father/sister/brother/friend/mate/flatmate/housemate/roommate/carer/boyfriend/girlfriend/fiance/fiancee/neighbour/neighbor/colleague/grandson/granddaughter/grandad/grandma/gran/nan/niece/nephew/aunt/uncle/cousin/teammate/crewmate/lodger/landlady'
const WRITES = 'typing/writing/texting/speaking/messaging/tapping/dictating'
const CLIENT = `him/her/them/my ${RELATIONS.replaceAll('/', '/my ')}`

/** Somebody else writes for the client: who they say they are, that they write for another, that the other did the drills. */
export const proxy = `
  (this is/it's/its/it is/i'm/im/i am/here is/heres) (her/his/their/the) (${RELATIONS}),
  (her/his/their/the) (${RELATIONS}) (${WRITES}/here/using) (this/here/for/on/her/his/now/),
  (${RELATIONS}/neighbour's wife) (${WRITES}/here) (this/for/on/),
  (${WRITES}/types/writes/answering/doing/sending) (this/this message/the message/this one/here/) (for/on behalf of) (${CLIENT}),
  (types/writes/typed/wrote/is writing/is typing) (this/that) (for me/), on behalf of, (from/using) (her/his/their/mums/mum's/dads/dad's) (phone/mobile/account), (mums/mum's/moms/mom's/dads/dad's/his/her) phone (was open/here/so/its/it's),
  (asked/asking/told/wants/wanted/got/begged/begs) me to (write/type/tap/text/message/send/put/say) (this/it/here/you/that/for him/for her/to you/in), (asked/asking/told/wants) me to (let you know/tell you/tell the coach),
  (says/said/asks/asked/wants) (me/) to tell (you/the coach/coach), (i'm/im/i am) (just/only) (typing/the typist/the messenger/writing it down),
  (wants/want/would like) to know if (he/she/they/he's/she's) (should/can/may/must/has/still), should (he/she) (still/) (do/keep doing/carry on/stop) (the/his/her/with/your),
  (he/she/they) (does/do/did/is doing/uses/follows) your (drills/exercises/programme/plan), (he's/she's) the one (doing/who does/with), one of your (people/clients/lot/patients/rowers) (here/),
  (he/she/husband/wife/dad/mum/mom/partner) (did/has done/managed/has managed/completed/only did) (both/one/two/three/four/all/no/1/2/3/4/0/his/her/the) (drills/drill/sessions/session/sets),
  (his/her) (reply/check in/checkin/pain score), (${RELATIONS}) (writing/typing) (again/now),
  (he's/she's/hes/shes/he is/she is) (still/) (doing/one of) (the/your/his/her) (drills/exercises/clients/rowers), (uses/using/on) (this/your) (bot/chat/app/account/programme), (your/this) (client/chat/chat's), (has/have) (he/she) (messaged/written to/texted/told) you,
  (his/her/its/it's) (account/logged in/chat), (it's/its/this is) (his/her/dads/dad's/mums/mum's) (account/phone/chat), (says/said/says to/says i should/wants me to) (log/put/write/record/send/tell you/note), (do/doing/write/send/answer) (my/his/her) (${RELATIONS}/dad's/mum's/dads/mums/messages) (messages/check ins/replies/reports),
  (posting/writing/speaking/messaging) as (his/her/the/) (${RELATIONS}/carer), (wife/husband/mother/father/mum/dad/son/daughter/partner/girlfriend/boyfriend/flatmate/housemate/sister/brother/carer) of (your/one of), (suggested/suggests) i (message/write/text), (duty steward/night staff/first aider), he'd not tell you, she'd not tell you, (won't/wont/wouldn't/will not/not going to) (tell you/write to you),
  (ashamed/embarrassed/mortified/shy/proud/stubborn/scared) to (say/tell/write/type/ask/put it/admit),
  (can't/cant/cannot/too ill to/too sore to/unable to) (hold the phone/type herself/type himself/write herself/write himself/answer herself/answer himself)`
