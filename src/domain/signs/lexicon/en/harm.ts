import type { LexiconSource } from '../shape.ts'

const SOME = '10/12/15/16/20/24/25/28/30/32/40/48/50/60/100/ten/twelve/fifteen/twenty/thirty/forty/fifty/sixty/a hundred'
const PILLS =
  'pills/tablets/tabs/meds/painkillers/sleepers/sleeping pills/sleeping tablets/paracetamol/paracetamols/ibuprofen/codeine/tramadol/tramadols/morphine/opioids/gabapentin/diazepam/capsules'
const MEANS = 'rope/noose/cord/belt/blade/razor/razor blade/knife/gun/rifle/shotgun/hosepipe/pills/tablets'

/** Means at hand, a plan, a goodbye, what was done already, and what another tells of the client. */
export const harm: LexiconSource['words'] = {
  'harm-done': `
    (took/taken/swallowed/downed/necked/popped/eaten) (${SOME}/all/handfuls/a handful/a fistful/two boxes/a whole box/two packs/a whole strip/a whole bottle) (of/) (my/the/those/these/) (${PILLS}),
    (take/taken/took) (an/another) overdose, (cut/cuts/slit/slashed) (on/) (his/her/my/their) (wrists/own arms), (tied/made/knotted) (a/the) noose, (noose/rope/belt) (round/around) (my/his/her) neck,
    (end/ending/ended/take/taking) (his/her/their) (own/) life, (kill/killing/hurt/hurting/harm/harming/cut/cutting/hang/hanging) (himself/herself/themselves/themself),
    (wants/wanted/wishes/wish/wishing/would rather/he'd rather/she'd rather/rather) (to/he was/she was/he were/she were/be/) (die/dead/be dead),
    (wants/wanted) to (end it/end it all/not be here/not wake up/end things/disappear forever), (doesn't/doesnt/does not/didn't) want to (live/be here/be alive/wake up/go on living) (any more/anymore/)`,
  'harm-means': `
    (${MEANS}/bottle of pills/box of tablets) (is/are/was/were/) (in/on/round/around/by/next to/beside) (my/his/her/the) (hand/hands/lap/neck/bedside/bed),
    (had/have/holding/got/held/bought/buying/hid/hidden/fetched/found) (a/the/my/his/her/) (rope/noose/razor/razor blade/blade/gun/shotgun/hosepipe/belt) (in my hand/in my hands/ready/for it/out/tonight/yesterday/today/and/from his/from her/with me),
    (lined/lining/laid/counted/counting/tipped/emptied) (up/out/) (all/) (my/the/his/her/) (${PILLS}), (engine/car) (running/on) (in the garage/with the door shut),
    (sat/sitting/sit) in (the/my) car (in the garage/with the engine/with the door shut),
    (thinking/thinkin/thought/thoughts/dreamt/dreaming/fantasising) (bout/about/of) (jumping/jumping off/hanging/drowning/the rope/the bridge/the weir/the train/the trains/ending/suicide/not being),
    (stood/standing/stand/went/walked/sat/sitting) (on/by/at/up/to/over) (the/a) (weir/bridge/cliff/ledge/railway/tracks/roof/edge/lock gates) (tonight/for ages/for hours/looking/again/last night/thinking/and thought/and nearly),
    (i've/ive/i have/he has/hes/he's/she has/she's/got/have) (got/) a (plan/date/method/way) (and a/for it/to do it/to end/picked/ready), (plan and a date), (decided/know/knows/worked out/figured out/chosen) (how/when/where) (i'll/ill/i will/i'd/i would/i'm going to/he'll/she'll/to) (do it/die/go/end it),
    (ive/i've/i have/i) decided how, (look/looks) like an accident (so/for), how many of (these/them/my) (${PILLS}/would it/does it/would), (would it take/does it take/is enough) to (not wake up/kill/die/end),
    (checking/check/checked) out (for good/of life/of this/forever/permanently), (nearly/almost) did it, (going/gonna/about/want) to do something (stupid/daft/silly/bad) (tonight/to myself/i/),
    (it's/its/it is) (all/) over for me, (goodbye/bye/farewell/cheerio/adieu) (everyone/everybody/all of you/forever/world/and thank you/and thanks/thanks for everything/thank you for everything/thanks for the drills/for good/for ever),
    (thanks/thank you) for everything (goodbye/bye/and goodbye), (tell/told) (my/the) (kids/wife/husband/family/mum/mom/dad/children/girls/boys) (that/) (i love/i loved/i'm sorry/im sorry/it's not/its not),
    (want/wanted/wish) it (all/) to stop, me included, (why/wonder why) (i/do i/) (bother/bothering) (getting up/waking up/living/going on/at all/with any), (not/never) (having/have) to (wake/exist/be here/feel anything),
    (hide/hid/hidden/hiding/locked away/took away) (the/all the/my/his/her) (belt/belts/knives/knife/pills/tablets/razors/rope), (won't/wont/will not) (be/need) (needing/around for) (tomorrow/next week/christmas/this bot/the drills) (any more/anymore/)`,
}
