import type { LexiconSource } from '../shape.ts'
import { denials } from './denials.ts'

/** How English denies, doubts, supposes, dates and turns a sentence. */
export const cues: LexiconSource['words'] = {
  ...denials,
  fine: `
    (everything/all/it all) (works/working/is working/still works/in order/as it should be), everything in working order,
    fine, ok, okay, okey, oki, normal, normally, as normal, back to normal, good, all good, perfect,
    perfectly fine, alright, all right, alrite, properly, intact, no different, unaffected, unchanged,
    no problem, no problems, no probs, no prob, no issue, no issues, no bother, no trouble, no troubles,
    no change, no changes, not a problem, not an issue, as usual, as it should, as they should,
    as it should be, as they should be, same as always, same as ever, same as usual, as always,
    like normal, like always, like usual, in order, in working order, sound, grand, healthy, regular,
    great, dandy, sorted, a ok, a1, tickety boo, hunky dory, unremarkable, nothing unusual, nothing odd,
    nothing new, nothing different, nothing weird, nothing strange, nothing wrong, nothing to report,
    working fine, working well, working normally, work fine, working ok, behaving, doing their job,
    doing its job, no worries, no complaints, no concerns, feels normal, feel normal, as expected,
    full feeling, no dramas, no drama, gd, kk, 👍, not bad, not affected, well, swell,
    no different to normal, no different from normal, no different than usual, under control, in control,
    all there, present and correct, as nature intended, shipshape, in good nick, cool, (can/could) (still/) feel (fine/everything/it all/it fine/it/normally/perfectly/),
    (can/could) (still/) feel (myself/me/when i/when im/when i'm/the paper), full control, full sensation,
    normal sensation, normal feeling, normal control, feeling normal, sensation normal`,
  me: `(found/saw/seen/knows about) my (cuts/cutting), i, i'm, im, i've, ive, i'd, id, i'll, we, my, mine, me, myself, mi`,
  own: `my, mine, me, the, this, these, i, im, i'm, i've, ive, i'd, that, it, it's, having, myself`,
  person: `
    (driving/taking/drove/took/take/drive/taken/visiting/helping/caring for/looking after/minding) (him/her/them),
    (i'm/im/i am/i was/been/went/took/taking/taken/drove/driving/drive) (with/visiting/helping/) (her/him/them) (at/in/to/for),
    dad, dads, dad's, father, father's, fathers, mum, mums, mum's, mom, mom's, moms, mother, mother's,
    mothers, brother, brother's, brothers, sister, sister's, sisters, son, son's, sons, daughter,
    daughter's, wife, wife's, wifes, husband, husband's, husbands, hubby, hubby's, partner, partner's,
    partners, girlfriend, girlfriend's, boyfriend, boyfriend's, gf, bf, friend, friend's, friends, mate,
    mate's, mates, buddy, buddy's, pal, pal's, colleague, colleague's, colleagues, coworker, co worker,
    workmate, neighbour, neighbour's, neighbor, neighbor's, neighbours, uncle, uncle's, aunt, aunt's,
    auntie, aunty, cousin, cousin's, grandad, grandad's, granddad, grandpa, grandpa's, grandma, grandma's,
    gran, gran's, nan, nan's, nana, granny, grandfather, grandmother, boss, boss's, teammate, teammate's,
    team mate, crewmate, crew mate, flatmate, roommate, housemate, mother in law, father in law,
    sister in law, brother in law, in laws, stepdad, stepmum, kid, kids, kid's, kiddo, little one, the little one, child, children, toddler,
    baby, baby's, the lad, nephew, nephew's, niece, niece's, dog, dog's, dogs, cat, cat's, puppy, pup,
    horse's, a guy, a bloke, some guy, some bloke, a man, a woman, a lady, this guy, this bloke, someone,
    somebody, someone else, everyone's, everyones, everybody, everybody's, another client, other client,
    another rower, someone i know, a chap,
    somebody else, other people, people, everyone else, missus, the missus, fella, our kid, bro, sis, ex,
    ex's, lodger, tenant, stroke seat, cox, the bloke, the guy next, coworker's, grandson, granddaughter, my (little/) (boy/girl/boys/girls/lad/lads),
    our (lad/lass/boy/girl/eldest/youngest), (the/our) wee one, postman, vicar, priest, footballer, (the/a) (villain/hero/actor/actress/magician/goalie/striker/referee),
    (a/some/that) (girl/boy/lad/lass/man/woman/lady/bloke/fella/guy) (in/on/at/from) (my/the/our/year) (class/dorm/office/year/team/choir/group/street/ward/bus/bus stop/gym/club/school/shop/6/7/8/9/10/11), boy in year (6/7/8/9/10/11), (man/woman/lady/lad) at the (bus stop/gym/club/shop/pool), fiance, fiancee, spouse, godmother, godfather, step dad,
    (friend/mate/colleague/cousin/buddy/pal/neighbour/neighbor/client/relative/workmate) of (mine/my/ours),
    my old man`,
  third: `he, he's, hes, he'd, his, him, she, she's, shes, she'd, her, hers, himself, herself`,
  report: `
    says, said, say, reckons, thinks, noticed, notices, told me, pointed out, asked if, asked, pointed,
    saw, spotted, had to help me, has to help me, (had/has/having) to (change/wash/clean/strip/mop/dry) (the/my/up), (is/was/keeps) (washing/changing/cleaning/stripping/mopping) (the/my/up), helps me, found me, drove me, noticing, commented,
    can see, mentioned, remarked, heard, watched, laughed at, laughs at, calls`,
  'my-turn': `(had/has/got/gets/have) (the same/this/that/it/exactly this/the very same/something similar/this too/it too) and, (and/but/so) (now/today/lately/recently/suddenly/this week/this morning/since)`,
  like: `
    like, same as, just like, similar to, as, remind me of, reminds me of, the way, to tell, told, tell,
    telling, with, embarrassed to tell`,
  supposed: `
    would (it/the/my/that/numbness/tingling/pain/weakness/these/those) (come/return/get/be/go/happen/start),
    should i (be worried about/worry about/worry),
    in (my/a/the/last night's/this) (dream/nightmare), i dreamt (that/) i, i dreamed (that/) i, in the film we, what if, what happens if, what would happen if, (what/who/where) (do/would/should/could/will/shall/can) (i/you/we) (do/call/ring/tell/go/contact) if,
    when should (i/you/one/we) (be worried/worry/start to worry/start worrying/be concerned/be scared/panic), (how/at what point) (worried/concerned) should (i/you) be,
    if i (ever/start to/start/suddenly/begin to/begin/were to/should/do/did/get/got/notice/develop/had/lose/lost/wake up with),
    if i'm (ever/suddenly),
    if it (ever/starts/gets/got/turns/turned/becomes/became/goes/went/spreads/spread/were/moves),
    if there's, if there is, if there was, if there were, if any, if anything, if something, if my, if you,
    if one, if someone, if somebody, if (numbness/weakness/tingling), in case, in case of, just in case,
    watch for, watch out for, watching for, watching out for, watch out, look out for, looking out for,
    lookout for, keep an eye out for, keep an eye open for, keep an eye on, on the lookout for, look for,
    looking for, let you know if, let me know if, will tell you if, tell you if, will say if, say if,
    i'll shout if, shout if, shout when, call if, ring if, message if, report if, phone if,
    how will i know, how would i know, how do i know, how would one know, how do you know, would i know,
    likely to, will i get, will i, could i get, might i get, could i, might i, could i end up,
    will i end up, am i going to, going to end up,
    should i (watch/look/expect/be looking/be watching/be worried if/worry if/call if/panic if/do if/ring if/be checking/check for/get help if/tell you if),
    when should i (call/ring/go/worry/panic/seek/see/be), when do i, googling, told me to watch,
    told me to look, told to watch, told to look, hypothetically, hypothetical, theoretically, in theory,
    say someone, imagine, wouldn't want, would i, would it, would that, would you, would there, until i,
    would be if, before i get, so i don't get, so i dont get, never want, scared of ending up, end up,
    ended up like, unless i, as long as i don't, aslong as, provided i don't, not like those`,
  worried: `
    (read/reading/saw/seen/watched/watching/heard/found) (a/an/some/the/that) (clip/clips/documentary/reel/reels/tiktok/short/podcast/page/thing/leaflet/blog/poster/programme/book/chapter) (about/on),
    (stop/quit/keep/kept/keeps/always/you/it/form/bot/app) (ask/asks/asked/asking) (me/) (if/whether), (asking/asks) (me/) (if/whether),
    (read/reading/saw/seen/watched/watching/heard/found/googled/looked up) (something/stuff/things/a lot/lots/a bit/online/a post/a video/videos/an article/articles/a page/a thread/a story/a leaflet) (online/) (about/on),
    (read/reading/saw/seen/heard) (online/on the internet/on the web/somewhere/in the paper) about, asked do you, asked do i, asks do you, asked me do i, asked me if i, do you get,
    worried about, worried about getting, worrying about, worry about, worries about, scared of, scared
    about, afraid of, frightened of, fear of, fears of, anxious about, concerned about, concern about,
    nervous about, nervous of, paranoid about, panicking about, panic about, stressed about, stressing
    about, freaking out about, dreading, terrified of, petrified of, bothered about, fretting about,
    obsessing about, obsessed with, thinking about, thoughts about, worried i might, wondering if,
    wonder if, wondered if, wondering whether, worry too much about, worrying too much about, worry a
    lot about, worry so much about, risk of, at risk of, chance of, chances of, risks of, possibility
    of, could lead to, can lead to, might lead to, could cause, can cause, might cause, would cause, may
    cause, does it cause, will it cause, could turn into, might turn into, turn into, what are the signs
    of, what are signs of, signs of what, what does, what counts as, what do you mean by, what you mean
    by, whats meant by, meant by, do you mean, is it true, i read, i've read, ive read, read that, read
    about, reading about, read an article, article, articles, leaflet, leaflets, booklet, website,
    googled, google, dr google, podcast, poster, documentary, heard about, heard that, heard of, forum,
    reddit, you asked about, you ask about, asks about, ask about, asking about, asked about, asked me
    about, asked if i had, asked whether, question about, questions about, curious about, wondering
    about, warned me about, warned about, warned of, supposed to watch, for example, e g, eg, prevent,
    preventing, prevents, prevention, to avoid, to prevent, the list of, list says, the form, your form,
    on the form, your message about, in your message, a warning about, warning signs like, signs like,
    symptoms like, things like, such as, like a sign of, is that a sign of, are signs of, is a sign of,
    a sign of, sign of, difference between, explain, define, meaning of, any news on, insurance covers,
    training on, course on, exam, essay, lecture, revising, know about, learn about, learned about,
    learnt about, reassure me about, what it means when, what it means if`,
  uneasy: `
    if i (can't/cant/cannot/couldn't/couldnt),
    (tell you/let you know/say so/write/message/shout/report/) if (anything/something/things) (changed/changes/came up/comes up/happened/happens/was new/got worse/gets worse),
    worried, scared i, scared that, afraid i, afraid that, fear, anxious, concerned, terrified, worried
    that, worried i, worried it, overthinking, going on about, lead to, leads to, causes, cause, what
    is, what's, whats, video, youtube, story, stories, mentioned, avoid, avoiding, means, mean by, know
    what`,
  asking: `
    is, are, am, can, could, would, should, shall, will, do, does, did, may, might, what, whats, what's,
    when, how, why, which, who, where, any, anyone, has, have, is it, is there, is that, does it, do you,
    can you, can it, could it, could this, does this, can this, is this, quick question, question,
    just wondering, hi, hello, hey, hiya, morning, coach, so`,
  rest: `
    (everything/all/anything/the/every) else, (everything/anything/all) (other/besides), (all/) the (rest/others),
    rest of (it/me/it all/the list/the questions/everything), (otherwise/elsewise), the other (stuff/things/bits/ones/signs/questions)`,
  manner: `
    properly, normally, right, fully, well, like normal, as normal, as usual, as it should, like it should,
    as i should, like before, as before, like usual, perfectly`,
}
