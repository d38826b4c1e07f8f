import type { LexiconSource } from '../shape.ts'
import { proxy } from './proxy.ts'
import { when } from './when.ts'

/** When, since when, how suddenly, doing what: told beside the finding, and never hiding it. */
export const circumstances: LexiconSource['circumstances'] = {
  ...when,
  'side-name': `left, right, the other, other one, other side`,
  'was-hurt': `
    worse, since, since then, ever since, hit, hit by, struck, crushed, fell, thrown, landed, trapped,
    hurt, injured, hospital, ambulance, my back, pain, agony`,
  'held-up': `late, traffic, jam, stuck in, held up, delay, delayed, closed, queue, queues, tailback`,
  toilet: `
    loo, toilet, bathroom, bog, lav, pee, wee, piss, poo, poop, urine, bladder, bowel, bowels, peeing,
    weeing, time, restroom, pants, trousers, knickers, underwear, shit, number one, number two, john,
    waterworks, urge, drinking, drink, drank, water, full`,
  'bowel-only': `
    poo, poop, bowel, bowels, number two, number 2, stool, shit, fart, farts, wind, back passage, pooing,
    pooping, bum, shits`,
  long: `
    since, all day, all night, for hours, hours, 12 hours, 24 hours, a whole day, yesterday, last night,
    this morning, today, yet, noon, lunch, breakfast, days, ages, properly, much, enough, a lot, anything,
    at all`,
  'move-word': `
    move, lift, raise, straighten, bend, control, use, push, hold, support, work, grip, press, get, put,
    stand, step, walk, climb, kick, pedal, drive, curl, wiggle, flex, point, turn, trust, wriggle, hop,
    jump, squat, land, brake, clutch`,
  'spreading-to': `wipe, wiping, genitals, spreading, toilet, loo`,
  'without-trying': `
    without trying, not trying, for no reason, unexplained, not dieting, without dieting, no diet,
    not on a diet, not on purpose, unintentionally, no idea why, wasn't trying, wasnt trying,
    haven't been trying, havent been trying, without meaning to, don't know why, dont know why`,
  bones: `
    osteoporosis, osteoporotic, osteopenia, brittle bones, brittle bone, thin bones, thinning bones,
    bone thinning, thinning of the bones, weak bones, bone density, low bone density, fragile bones,
    crumbly bones, soft bones, steroid, steroids, prednisolone, prednisone, pred, cortisone, dexamethasone,
    hydrocortisone, corticosteroids, corticosteroid, alendronate, alendronic acid, bisphosphonates`,
  too: `
    too, as well, also, now, aswell, both, started, starting, joined in, joining in, the same, spread,
    spreading, spread to, gone into, moved into, crossed, crossed over, over to, into the other,
    in the other, moved across, new, since, catching up, copying, same`,
  shield: `
    if (i/my leg/my foot/it) (can't/cant/cannot/couldn't/couldnt/could not),
    (nothing/anything/no/not/not any/without any) (else/) (new/worse/spreading/spread), no new (symptoms/signs/pain/pains/problems/issues),
    (had/has/have/got/having/gets) the same,
    all over (with/from/in/and), (aches/achy/aching/sore/hot/shaking/cold/pain/tingly) all over,
    
    gone (numb/dead/to sleep/floppy/limp/lame/wrong/funny/weird/odd/slack/blind/weak/thin/on/down/into/up/out/from/through),
    not gone (numb/),
    went (numb/dead/to sleep/floppy/funny/weird/black/blind/weak/from/out/into/soft/to/down/up/on),
    (feeling/sensation/strength/power/control/balance/speech/sight/vision/urge/function) (gone/went/stopped),
    not gone, not gone away, hasn't gone, hasnt gone, not stopped, hasn't stopped,
    stopped (working/telling/feeling), has stopped working, have stopped (working/telling), gone in,
    went in, not settled, not over, over and over, over the, over my, passed (out/water/urine/away),
    pass out, passed by, stopped me, stopped at,
    no longer (know/feel/able/can/get/have/in/hold/control/works/work/notice), used to be able to,
    used to be able, used to be only, used to be just, used to feel, used to be in one, used to be one,
    used to (be/) (left/right), the same time, all the same, not the same, same time, same thing,
    same here, at the same time, same leg, fallen over, went over, fell over, over night, over weekend,
    over last, over past, any more of,
    (no/not on a/without a/not on any/no special/no change of/no change in/same/normal) (diet),
    not (dieting/trying/on purpose/deliberate/deliberately/intentional/intentionally/planned),
    without (dieting/trying/meaning to), never (dieted/dieting),
    (never/didn't/did not/not/doesn't/didnt) (used/use) to (be/), never used to, not used to,
    wasn't used to, am used to, getting used to, got used to, get used to,
    (leg/foot/calf/side/right/left/one/other/side) (is/are/was/feels/felt/got/gets) too,
    gone (red/hot/purple/blue/tight/stiff/cold/hard/swollen/puffy)`,
  'need-loo': `
    need a pee, need a wee, need to pee, need to wee, need the loo, need the toilet, need to go,
    on the loo, on the toilet, to the loo, to the toilet, to the bathroom`,
  'in-both': `
    in both, into both, down both, both of my, bilateral, bilaterally, to both, over both, affects both,
    both now, now both`,
  'leg-too': `
    leg too, foot too, leg as well, foot as well, calf too, calf as well, on that side too,
    on that side as well, that side too, side too, side as well, right too, left too, right as well,
    left as well, right side too, left side too, the other too, other too, other as well,
    the other as well, other one too, other one as well`,
  'walking-word': `
    walk, walking, step, steps, stairs, stand, standing, properly, ground, floor, kerb, curb, own, brain`,
  'bed-word': `
    bed, sheets, sheet, pyjamas, night, nights, sleep, asleep, pjs, duvet, pillow, mattress, woke, wake,
    waking`,
  'loo-odd': `
    ages, forever, nothing, strange, weird, odd, funny, not right, different, wrong, problem, problems,
    trouble, issue, issues, barely, hardly, rush, rushing, dash, dashing, run, urgent, urgently, accident,
    accidents, too late, in time, on time, late, no warning, warning, sitting there, standing there,
    sat there, stood there, sit there, stand there, push, pushing, strain, straining, control, can't tell,
    cant tell, don't know, dont know, never know, don't feel, dont feel, can't feel, cant feel, no feeling,
    didn't feel, didnt feel, without feeling, nightmare, impossible, a mission, struggle, struggling,
    difficult, hard, twice as, every hour, all the time, constantly, keep needing, keep having, leak,
    leaking, wet, dribble, drip, hopeless, useless, empty, avoid, avoiding, embarrassing, worse,
    several times, ten times, properly, again and again, missed, miss, unsure, not sure, guess, guessing,
    by the clock, timer, alarm, wait, waiting, waited, keep trying, delay, before i can, before anything,
    before it, starts, to start, ages before, eventually, finally`,
  organ: `
    penis, willy, dick, cock, clitoris, clit, vagina, vulva, labia, genitals, balls, testicles, scrotum,
    manhood, privates, private parts`,
  anal: `
    back passage, anus, bum, bottom, rectum, arse, arsehole, bumhole, butt, backside, hole, behind,
    back end`,
  joined: `
    (right/left/other) (one/leg/side/calf/foot/thigh/) is (new/brand new/new today/a new one),
    and (1/2/3/4/5/6/7/8/9/10/one/two/three/four/five/six/seven/eight/nine/ten) (in/on) (the/my) (right/left/other),
    has joined in, joined in, joining in, joins in, has joined the party, joined the party,
    joining the party, joined the club, has started too, has started as well, started as well, started too,
    kicked off too, kicking off too, on both sides now, playing up too, playing up as well, is at it too,
    at it now, at it as well, caught it,
    (the/) same (pain/thing/feeling/numbness/tingling/symptoms/ache/sensation/problem/sciatica) (in/on/down/into/to) (my/the/) (right/left/other),
    also in my (right/left/other),
    (and/as/) (so/as) (does/is/has/do/did) (the/my/that) (right/left/other),
    (right/left/other) (one/leg/side/foot/calf/thigh/hip/) (is/has/has been/been/was/started/is now/now/) (doing/feeling/getting/having/acting) (exactly/) (the/) same,
    (right/left/other) (one/leg/side/foot/calf/) (is/feels/does/hurts) (exactly/now/just/) the same,
    in my (right/left) leg now, now in my (right/left/other),
    now my (right/left/other), now the (right/left/other), and now my (right/left/other),
    (right/left) one too, (right/left) side as well, (right/left) leg is at it`,
  'now-both': `
    (both/the two/two/pair) of (them/em/my legs) (now/today/this time),
    (now/today/since yesterday) (it is/its/it's/it was/they are/in/) (both/the two of them/both of them/the pair/two of them),
    crossed over to (the/my) (left/right/other/good),
    (jumped/moved/gone/went/spread/come/crept/switched/travelled) (over/across) to (the/my) (left/right/other/good),
    both now, now both, both sides now, now both sides, it's both, its both, it is both, now it's both,
    now its both, gone to both, spread to both, affects both, affecting both, moved to both,
    going down both, into both, and now both, not just one, both instead of one, instead of one,
    not one but`,
  'both-once': `
    used to be one leg, used to be one side, only one leg before, was one leg, was just the left,
    was just the right, used to be the left, used to be the right, used to be just one, one leg before`,
  'also-word': `too, as well, aswell, also, now as well, joined`,
  'wet-word': `
    wet, damp, soaked, soaking, dribble, dribbled, leaked, leaking, leak, patch, stained, accident`,
  proxy,
  presents: `here, this is, this's, thats, that's, it's, its, it is, i'm, im, i am, here is, here's, heres, my name is, my name's`,
  plea: `what to do, help (me/us/him/her/please/now/), (what/wat) (should/do/can/shall) (i/we/he/she) do, (should/shall/do) (we/i) (call/ring/phone/take/do something/get/go to), is (it/this) an emergency, (pls/please) (help/advise/answer/reply/hurry), what now, advise please, urgent`,
  admitted: `
    i have (it/that/this/those/them/these/all of them/exactly that/both/the same),
    (i've/ive) got (it/that/this/those/them/these/the same), i get (that/this/it), that's me, thats me,
    happening to me, happens to me, happened to me, same here, which i have, and i do, and i am,
    i think i have, i think i've, now i have, i do have, now me, now mine, me too, so do i, so have i,
    i'm the same, im the same, mine (is/does/has/are) too, exactly what i have, what i have, like me,
    and now i, now i've`,
  actual: `
    (and/then) (i/) (woke/woken/wake) (up/) (wet/soaked/damp/numb/weak/dead/paralysed/with/in/to/like/and), when i woke, on waking, still (can't/cant/cannot/am/is/are), it was real,
    
    since (monday/tuesday/wednesday/thursday/friday/saturday/sunday/yesterday/last/this/the/i/lunch/breakfast/my),
    still, today, yesterday, this morning, last night, right now, at the moment, keeps, keep,
    just happened, currently, already, happening, is happening, all day, all night, for days, two days,
    three days, i can't, i cant, i cannot, i couldn't, i couldnt, i've lost, i have lost, ive lost, i lost`,
  'again-now': `again, now, lately, recently, this week, last night, tonight, these days, started, starting, same`,
  'cant-said': `
    used to (do/manage/get), down to (one/two/three/zero/none/1/2/3/0), now (none/zero/only/just/barely), zero on, none on, 0 on, nil on, not one on, nothing on, not even one,
    can't, cant, couldn't, couldnt, cannot, impossible, unable, failed, no chance, not happening, won't,
    wont, gone`,
  /** "I don't want to die but ..." */
  'harm-still': `
    want it to end, want it all to end, was a lie, i lied, was lying,
    but, though, however, although, yet, anymore, any more, sometimes, some days, some nights, i think, think about it, thinking about it, i thought, thought about it, (have/had/having/get/getting/got/the/dark/these/those/my/bad/other) thoughts, (a/the/this/that) thought, wish, hope, hopeless, tired, exhausted,
    stop, going on, go on, carry on, keep going, point, alone, lonely, scared, afraid, frightened, low, dark, cope, crying, cry, worthless, burden, sleep, wake, plan, live, living, alive, life, here,
    promise, goodbye, sorry, note, letter, letters, away, pills, tablets, bridge, scares, voice, voices, urge, urges, head, numb, empty, depressed, despair, help, safe, until, till, unless, really, exactly, right now, any longer, anything,
    just (want/wanna/done/can't/cant/so/feel/feeling/sad/empty/numb/need/tired/exhausted/not)`,
  'hot-cold': `hot, cold, freezing, boiling, sweats, sweating, clammy, fever`,
}
