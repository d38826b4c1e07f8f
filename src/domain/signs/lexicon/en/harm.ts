import type { LexiconSource } from '../shape.ts'

const SOME = '15/16/20/24/25/28/30/32/40/48/50/60/100/fifteen/twenty/thirty/forty/fifty/sixty/a hundred'
const PILLS =
  'pills/tablets/tabs/meds/painkillers/sleepers/sleeping pills/sleeping tablets/paracetamol/paracetamols/ibuprofen/codeine/tramadol/tramadols/morphine/opioids/gabapentin/diazepam/capsules'
const MEANS = 'rope/noose/cord/belt/blade/razor/razor blade/knife/gun/rifle/shotgun/hosepipe/pills/tablets'

/** Means at hand, a plan, a goodbye, what was done already, and what another tells of the client. */
export const harm: LexiconSource['words'] = {
  /** Denied in so many words; what stands beside it may take it back (`harm-still`). */
  'harm-denied': `
    (not/not at all/not feeling/never/never been/never felt/isn't/wasn't/am not) suicidal,
    (don't/dont/do not/didn't/didnt/did not/wouldn't/wouldnt) (want to/wanna) (die/be dead/kill myself/hurt myself/harm myself/end it/end it all/end my life/take my life),
    (would/i'd/id/will/could/i'll/i would/i could) never (hurt/harm/kill/cut) myself, (wouldn't/wouldnt/won't/wont/couldn't/couldnt) (ever/) (hurt/harm/kill) myself,
    (don't/dont/do not/not/never) (feel like/feeling like/felt like/think of/thinking of/think about/thinking about/thought of/thought about/going to/planning to/about to) (hurting/harming/killing/hurt/harm/kill) myself,
    no (thoughts/thought/plans/plan/intention/intentions/wish/desire) (of/about/to) (hurting/harming/killing/hurt/harm/kill) myself, no (plans/plan/intention/wish/desire) to die`,
  'harm-done': `
    (overdosed/overdose/od'd/overdosing) on (chocolate/cake/sugar/netflix/telly/sun/garlic/biscuits/cheese/crisps/coffee) (and/n/&/plus) (on/my/the/) (pills/tablets/meds/painkillers/paracetamol/ibuprofen/codeine/tramadol/morphine/insulin/sleepers/sleeping pills/sleeping tablets/co codamol),
    (banging/bang/banged/hitting/smashing) my (head/fist/hand) (off/on/against/into) (the/a) (wall/door/floor) (on purpose/till/until),
    (knife/blade/razor/chisel/scissors/glass) to my (stomach/arm/wrist/throat/leg/thigh/skin/neck), (took/taken/taking) (the/a) (knife/blade/razor/chisel/scissors) to my (arm/wrist/leg/thigh/skin/stomach/throat),
    (found/saw/seen/knows about) my (cuts/cutting), (did/done) (it/this) to my (wrist/wrists/arm/arms/own wrist) (myself/on purpose/again),
    (kill/killing/hurt/hurting/off/offing) myself (tn/tonight/2nite/tonite/2night/tmrw/tomorrow),
    (took/taken/swallowed/downed/injected/drank/drunk) (all of my insulin/all my insulin/bleach/antifreeze/weedkiller/poison/rat poison),
    (took/taken/swallowed/downed/necked/popped) (15/16/20/24/25/28/30/32/40/48/50/60/fifteen/twenty/thirty/forty) (amitriptyline/sertraline/zopiclone/diazepam/pregabalin/gabapentin/cocodamol/co codamol/tramadol/naproxen/ibuprofen/aspirin/paracetamol),
    (tried/trying/planning/going) to (od/overdose/hang myself/drown myself/end my life/kill myself), (cut/cuts/cutting) (too deep/my stomach/my wrist/my wrists/my thighs/my arms) (this time/again/last night/today/on purpose/deliberately/and), (cuts/cut/wounds/burns) (deliberate/my own doing/i did it to myself/i did them myself/self inflicted), (he/she) did (it/them) (himself/herself),
    (i/i'll/ill) (won't/wont) be (alive/living) (tuesday/monday/wednesday/thursday/friday/saturday/sunday/tomorrow/next week/by), will to live (0/zero/gone/nil/none), (hosepipe/hose) (for/on/to) the exhaust, (make/making) an end (with/of) (me/myself), (fine/happy/ok) with not existing, done with being alive, (life/life's) over for me,
    (took/taken/swallowed/downed/necked/popped/eaten) (about/around/like/maybe/) (${SOME}/handfuls/a handful/a fistful/two boxes/a whole box/two packs/a whole bottle) (of/) (my/the/those/these/) (${PILLS}),
    (take/taken/took) (an/another) overdose, (cut/cuts/slit/slashed) (on/) (his/her/my/their) (wrists/own arms), (tied/made/knotted) (a/the) noose, (noose/rope/belt) (round/around) (my/his/her) neck,
    (end/ending/ended/take/taking) (his/her/their) (own/) life, (kill/killing/hurt/hurting/harm/harming/cut/cutting/hang/hanging) (himself/herself/themselves/themself),
    (wants/wanted/wishes/wish/wishing/would rather/he'd rather/she'd rather/rather) (to/he was/she was/he were/she were/be/) (die/dead/be dead),
    (wants/wanted) to (end it/end it all/not be here/not wake up/end things/disappear forever), (doesn't/doesnt/does not/didn't) want to (live/be here/be alive/wake up/go on living) (any more/anymore/)`,
  'harm-means': `
    (gonna/going to) kill me tn,
    (hope/hoping/pray/praying/wish/wishing) (that/) (i/to/) (just/) (fall asleep/go to sleep/sleep/drift off/slip away/go in my sleep/die in my sleep) (and/tonight and/one night and/) (do not/don't/dont/never/not) wake,
    (looking/searching/look) for (ways/a way) to (make it so/end it/not be here/be gone/die), (asked/asking/begged/begging/prayed to) god to (let me go/take me/end it),
    (stopped/saved/saving/keeping/hoarding/collecting) (my/the) (tablets/pills/meds/codeine) (to/and) (save/saving) them (up/),
    (no more) (mornings/tomorrows/birthdays/winters) for me, by the time (you/anyone/anybody/they/someone) (reads/read/sees/gets/finds) (this/it) (i'll/ill/i will) (be/have) (gone/dead/done it),
    (it's/its/it is) not your fault (what i/whatever i/if i), (let/letting) the (handbrake/wheel) (off/go), over the (rail/railing/railings/barrier/parapet) (talk/now/looking), (know/knows/knew) (as a nurse/exactly/just/) (which drug/what drug/what dose/the dose) and how (much/many),
    (head/head go) under (and/the water and) (wanted/want/thought) to stay, (like/want/wanna/wanted) to (just/) (sink/stay) (in the pool/at the bottom/under the water/under water),
    (said/say/saying) sorry to (the/my) (kids/family/wife/husband) in (them/it), put me (to sleep/down) (too/like the/like a dog/like the dog/like the cat),
    (took/taken/swallowed/downed) (all of them/the whole box/the whole bottle/the whole packet/the whole lot/all the tablets/all the pills/all my pills/all my tablets/all that was left),
    (stood/stayed/parked/sat) (for/) (an hour/ages/hours/half an hour/twenty minutes) (on/by/at) the (bridge/weir/tracks/cliff/station/platform),
    (on/at/off/up on/sitting on/sat on/standing on/stood on/near) the (bridge/weir wall/weir/edge/ledge/roof/car park roof/roof of/parapet/cliff) (now/and i/alone/tonight/for twenty/trying/and), on the bridge now, at the edge and, sitting on the roof, (get/getting/find/work up) the nerve (to/and/last night/up),
    (rope/noose/razor/shotgun/gun/blade/knives/kitchen knives) (and nobody/ready/is ready/and nobody's/alone), (loaded/loading/unloaded) (the/my) (shotgun/gun/rifle), filled the bath and, (with/alone with) (a rope/the rope/the kitchen knives/a razor/the razor/a noose), i have the razor, tie a noose, hurt to drown, how much would (do it/be enough),
    (made/making) up my mind (goodbye/see you/about life/to go/to end), now that i've decided, see you on the other side, (join/joining) (him/her/them/my husband/my wife) (this week/soon/in heaven/up there/tonight), (be with/see) (grandma/grandad/mum/dad/him/her) in heaven, wants to go to heaven,
    (i'm/im) ready to go (now/and/for good/thank/in peace), wrote the letters instead, (the/a/my/his/her) note is on (the/his/her/my) (fridge/table/bed/desk/kitchen), found a note in,
    (won't/wont/will not) (be needing/need) the (check ins/checkins/drills/prompts/messages) (after/any more/anymore), i won't be anywhere, feel bad after tonight, (scared/afraid/frightened) of (myself/what i'll do/what ill do/what i might do/my own thoughts), (i'm/im/i am) not safe (i/from/alone/with), need someone to stop me, (says/say/said) (kys/kill yourself),
    (lord/god/jesus) (to/please/will) take me, take me in my sleep, hoping i (wouldn't/wouldnt/don't/dont/won't) wake up, how many (sleeping pills/tablets/pills/of these) (is/are) too many, (locked/shut) (himself/herself) in (the/a), (saying/says) (he'll/she'll/he will/she will) jump, (took/taken) a load of (pills/tablets/sweets from), eating so it ends, i know the only way out,
    not losing anything worth, i'm sorry i love you all, (look after/take care of) my (crew/dog/cat/kids/children) (i'm sorry/please i/when i'm/after i),
    (${MEANS}/bottle of pills/box of tablets) (is/are/was/were/) (in/on/round/around/by/next to/beside) (my/his/her/the) (hand/hands/lap/neck/bedside/bed),
    (had/have/holding/got/held/bought/buying/hid/hidden/fetched/found) (a/the/my/his/her/) (rope/noose/razor/razor blade/blade/gun/shotgun/hosepipe/belt) (in my hand/in my hands/ready/for it/out/tonight/yesterday/today/and/from his/from her/with me),
    (lined/lining/laid/counted/counting/tipped/emptied) (up/out/) (all/) (my/the/his/her/) (${PILLS}), (engine/car) (running/on) (in the garage/with the door shut),
    (sat/sitting/sit) in (the/my) car (in the garage/with the engine/with the door shut),
    (thinking/thinkin/thought/thoughts/dreamt/dreaming/fantasising) (bout/about/of) (jumping/jumping off/hanging/drowning/the rope/the bridge/the weir/the train/the trains/ending/suicide/not being),
    (stood/standing/stand/went/walked/sat/sitting) (on/by/at/up/to/over) (the/a) (weir/bridge/cliff/ledge/railway/tracks/roof/edge/lock gates) (tonight/for ages/for hours/looking/again/last night/thinking/and thought/and nearly),
    (i've/ive/i have/he has/hes/he's/she has/she's/got/have) (got/) a (plan/date/method/way) (and a/for it/to do it/to end/picked/ready), (plan and a date), (decided/know/knows/worked out/figured out/chosen) (how/when/where) (i'll/ill/i will/i'd/i would/i'm going to/he'll/she'll/to) (do it/die/go/end it),
    (ive/i've/i have/i) decided how, (look/looks) like an accident (so/for), how many of (these/them/my) (${PILLS}/would it/does it/would), (would it take/does it take/is enough) to (not wake up/kill/die/end),
    (checking/check/checked) out (for good/of life/of this/forever/permanently), (nearly/almost) did it, (going/gonna/about/want) to do something (stupid/daft/silly/bad) (tonight/to myself/i/),
    (it's/its/it is) (all/) over for me, (goodbye/bye/farewell/cheerio/adieu) (everyone/everybody/all of you/forever/world/thanks for everything/thank you for everything/for good/for ever),
    (thanks/thank you) for everything (goodbye/bye/and goodbye), (tell/told) (my/the) (kids/wife/husband/family/mum/mom/dad/children/girls/boys) (that/) (i love/i loved/i'm sorry/im sorry/it's not/its not),
    (want/wanted/wish) it (all/) to stop, me included, (why/wonder why) (i/do i/) (bother/bothering) (getting up/waking up/living/going on/at all/with any), (not/never) (having/have) to (wake/exist/be here/feel anything),
    (hide/hid/hidden/hiding/locked away/took away) (the/all the/my/his/her) (belt/belts/knives/knife/pills/tablets/razors/rope), (won't/wont/will not) (be/need) (needing/around for) (tomorrow/next week/christmas/this bot/the drills) (any more/anymore/)`,
}
