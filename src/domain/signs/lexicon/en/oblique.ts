import type { LexiconSource } from '../shape.ts'

/** Signs told by a picture, where no word names them; each is asked about. */
export const oblique: LexiconSource['words'] = {
  'oblique-saddle': `
    (bottom/bottoms/bum/bums/bits/crotch/crutch) (gone funny/gone odd/is numb/gone weird), no numbness (only/unless/besides/except) (when/) i (wipe/sit), no numbness (besides/anywhere but/except) my (bum/bottom/bits/backside), (not sore/not painful) (down there/between the legs/in my privates) (just/) dead,
    (doubt/don't think/dont think/doesn't seem like/not sure) (that/) i (can/could) feel (my privates/my bits/down there/when i wipe/it when i wipe/the paper/between my legs/when i pee),
    can you feel when you wipe (no/nope), wiping nothing,
    (still/again/just/same/absolutely/got/there's/theres/completely/literally/still got) (nothing/none/zilch/nowt/naff all) (down there/down below/between my legs/between the legs/when i wipe/in the saddle),
    nothing at all when i wipe, (nothing/nowhere/nor/neither) (can/do/could/did) i feel (down there/when i wipe/when i pee/between my legs/my bits), nowhere near normal down there,
    (could feel/was fine/felt fine/felt normal/felt ok) (down there/my bits/between my legs/when i wipe) (until/till) (last night/this morning/yesterday/today/monday/tuesday/wednesday/thursday/friday/saturday/sunday),
    before (this/monday/tuesday/wednesday/thursday/friday/saturday/sunday/last week) i could feel (my bits/down there/the paper/when i wipe),
    (wish/wished/if only) (i/) could (just/still/) feel (my bits/my privates/down there/the paper/when i wipe/between my legs), (will i ever/when will i) feel (my bits/my privates/down there) again, how long (until/till/before) i can feel (when i wipe/down there/my bits), i should feel it when i wipe,
    everything feels (normal/fine) except when i wipe, if you ignore the numb (crotch/bits/privates/saddle),
    lost (the/) feeling of time and (of/in/) (my/the) (bum/bottom/crotch/saddle/bits/groin),
    (nothing/nowt/naff all/no feeling) (down there/down below/between the legs/between my legs) (i/just/when/at all/like), (between the legs/down there/down below) (nothing/nowt/just nothing), (felt/feel) (none of it/nothing at all/nothing nothing/nothing) (when/as) (the nurse/they/he/she) (did/put/used), (smear/smear test/pap smear/internal exam/speculum) (today/and/i) (i/and/) (felt/feel) nothing, at my smear,
    (ball/balls/testicle/testicles) area (tingling/tingles/numb/odd/fuzzy/dead/asleep),
    (feels like/feel like/like/as if/as though) (i'm/im/i am/i was/) (sitting/sat) on (a/an/) (sponge/balloon/cotton wool/pillow/air/foam/rubber/towel/jelly/nothing/cloud/marshmallow),
    (if/) (you/someone/somebody) (poked/pinched/touched/kicked/pricked/could poke/could pinch/could touch/could kick) me (there/down there/in the privates/in the crotch/in the groin/in the bits/between the legs/between my legs),
    (pants/knickers/boxers/underwear/undies/panties) (feel/feels/felt) (weird/odd/strange/funny/wrong/different/like nothing),
    (could/can) sit on a (hedgehog/cactus/nail/pin/tack/fork/drawing pin/pincushion) and (not know/never know/not notice/not feel it/not feel a thing), (ring/patch/circle) of nothing (round/around),
    (saddle/saddle area/crotch/between my legs/between legs/down there) feels nothing`,
  /** "no it isn't numb it is dead": denied under one name and told under another. */
  'numb-instead': `
    (not/isn't/isnt/aren't/arent/wasn't/wasnt) (just/only/) (numb/weak/painful/sore/better/tingly/tingling) (it's/its/it is/just/more like/they're/theyre) (numb/dead/asleep/gone/no feeling/without feeling),
    (isn't/isnt/not) numb (this is/it's/its/it is) gone`,
  /** Denied but for one place or moment, which is the saddle's. */
  'numb-except': `
    (film/book/meeting/lecture/speech) left me numb (between/down/in/round/around/from),
    (never/not/isn't/isnt) numb (except/unless/until/apart from/only/other than) (when/if/) (i/) (wipe/wiping/go/sit/sit down/sitting/pee/poo/am on the loo/on the loo),
    (not/isn't/isnt) numb this is gone (completely/totally/) down there`,
  'oblique-bladder': `
    (widdled/piddled/tinkled) (in my trousers/in my pants/myself/meself/in bed), wed myself, wetted my bed, not (peeing/weeing/urinating/passing water), (bladder/bladders) (packed in/gone/has gone/knackered), bowels ok not bladder,
    (doubt/don't think/dont think/doesn't seem like/not sure) (that/) i (can/could) (pee/wee/feel when i pee) (if i tried/now/any more/anymore/today/properly/), barely a dribble,
    (still/again/same) no (wee/pee), no (wee/pee/weeing/peeing) (today/yet/all day/all night/at all/this morning/since), no (wee/pee) no (poo/poop), not a (wee/pee) (yet/today),
    (wish/wished/if only) (i/) could (just/still/) (pee/wee/poo), when will i be able to (pee/wee/poo) (again/), nor does my bladder empty,
    (how do/how can/how would/how will/unsure/unsure if/not sure/not sure if/can't say/cant say/never do) i know when i need (the loo/the toilet/the bathroom/to go/to pee/to wee/a wee/a pee), i know when i need (the loo/the toilet/the bathroom/to go/to pee/to wee/a wee/a pee) (but/when/only when) (it's/its/it is/) too late, still none (comes/came) out, (i'm/im/i am) potty training myself,
    (bedwetting/bed wetting/wet the bed/wetting the bed) (at/aged/again) (my age/thirty/forty/fifty/3*/4*/5*/6*/), (put/fitted/gave) (me/) (a/the) (bag/catheter/tube) (in/on) (me/) (because/cos/as/since/at), (couldn't/couldnt/can't/cant/cannot) go (and they/so they) (drained/emptied), (ml/mls/litre/litres) (came/drained) (out/off/),
    (can't/cant/cannot/couldn't/couldnt/could not/not able to) (turn/shut/switch) it off once (it/it's/its) (began/started/going/begun), (nothing to flush/dry loo/dry toilet) (for/in/since/all/10/ten/12/twelve/8/eight), (day/week) (two/three/one/2/3) of pads, (wearing/wear/bought) (pads/nappies/pull ups/pull-ups) (now/since/because/cos),
    (tried to/couldn't/couldnt/cannot/can't/cant) hold (it/on) (it/and it/and/motorway/at) (was just/just/is just/) (running/ran/came),
    (drinking/drank/drunk) (water/tea/loads/lots/plenty/litres/pints/so much) (all day/all morning/today/) (and/but) (i/) (not/haven't/havent/have not) (gone/been),
    (always/still) (have/got/there's/theres/feels like there's/feels like theres/) (more/some/something) (in there/left in there/left inside/inside), (something/some) left in (there/the tank),
    (tank/bladder) never (empties/empty/feels empty), never feels (empty/emptied/finished),
    no toilet trips (still/since/all day/today), still (haven't/havent) (been/gone) and (it's/its),
    urine (none/nil/zero/nothing)`,
  'oblique-bowel': `
    (some/a bit/bits/bit/something/some of it) (slid/slipped/dropped/popped/fell/came) out (without/in the shower/in the bath/of me/didn't feel/didnt feel/and i/when i walked/when i stood/on its own/by itself), (arse/bum/bottom/backside) (won't/wont/doesn't/doesnt) (listen/behave/obey/hold/hold on/keep it in/take orders)`,
  'oblique-sex': `
    (can't/cant/cannot/couldn't/couldnt/could not/didn't/didnt/don't/dont/did not/barely/hardly/not) (feel/felt) (anything/nothing/a thing/much/it/any of it) when i (came/come/cum/climaxed/climax/orgasmed/orgasm),
    (feel/felt) (anything/nothing/a thing/much/it/any of it) when i (came/come/cum/climaxed/climax/orgasmed/orgasm),
    (not/hasn't/hasnt/haven't/won't/wont/doesn't/doesnt/no longer/never/refuses to) (stood/stand/stands/standing/salute/salutes/saluted) (to/) attention,
    my thing (isn't/isnt/is not/not/won't/wont/doesn't/doesnt/refuses to) (waking up/wake up/waking/wake/rise/work/working)`,
  'oblique-both': `
    (and/) (the/my/) other (ankle/knee/calf/thigh/foot/leg) (1/2/3/4/5/6/7/8/9), left (ankle/knee/calf/thigh/foot) (1/2/3/4/5/6/7/8/9) (other/right) (ankle/knee/calf/thigh/foot) (1/2/3/4/5/6/7/8/9), l (calf/knee/ankle/thigh/foot) (1/2/3/4/5/6/7/8/9) r (calf/knee/ankle/thigh/foot) (1/2/3/4/5/6/7/8/9),
    both (knees/legs) (knock/knocking/bend/bending/fold/folding) (and/on/by) (bend/give/their own/themselves), (shaved/cut/shaving) both (legs/shins) and (cut/felt/feel) (both/neither/nothing), felt neither (leg/foot/of them), (feel/felt) (in/on/) either of my (slippers/shoes/feet/soles/socks/legs),
    (feel/feeling/felt) (nothing/anything/it/much/) (in/on) either (sole/foot/leg/heel/shin), both thighs (emptied/gave/empty/turned/went), both (gave/given) out (at/on/in/under), legs went both (at/on/of them/together),
    (someone/somebody/someone's/someone has/) (pulled the plug/plug pulled/switched off/turned off/power cut/cut the power/lights out/flat battery) (on/in/to/from/for) (both/both my/my/the) legs,
    caught it (off/from) (my/the) (left/right/other), (good/other/fine) (leg/side) (isn't/isnt/is not/is no longer) (good/so good/fine/the good one) (anymore/any more/any longer/either)`,
  'oblique-weakness': `
    not numb just floppy, (leg/knee/ankle) (just/) went (twice/again/today/this morning/on the stairs/under me), (right/left) leg (is/) week, (foot/foots/leg) dead weight, (foot/leg/calf/ankle) (strength/power) (0/zero/nil/none), (0/zero) strength, permanently limp, limp since (monday/tuesday/wednesday/thursday/friday/saturday/sunday/yesterday/last night),
    (doubt/don't think/dont think/doesn't seem like/not sure) (that/) i (can/could) (stand on/get up on/rise on/walk on) (my/) (toes/tiptoes/heels),
    nor can i (stand on/get up on/rise on/walk on) my (toes/tiptoes/heels), nor does my foot (lift/come up/move), no chance of (standing/getting up/walking) on my (toes/heels), no getting up on my (toes/heels),
    (before this/last week/last month/before monday/before friday/before the weekend) i could (stand on/walk on/get up on) my (toes/tiptoes/heels), my (foot/leg/ankle) was fine (until/till) (last night/this morning/yesterday/today),
    (strength/power) in (my/the/) (left/right/) (foot/leg/ankle/toes/calf) (none/zero/nil/nothing/gone), (stand on/get up on) (my/) (toes/tiptoes) forget it,
    weak at the knees (for/over) (no reason/days/weeks/hours/a day/a week/an hour/two/three/the last/the past/the weekend/a while),
    knee (bent/bends/folded/folds) (all/) (by itself/on its own), (giving/gives/gave) out (the/my) (knee/leg/ankle), flop flop, lame (left/right), (left/right) (not sore/isn't sore/no pain) lame,
    (leg/foot/ankle/calf/thigh) (power/strength) (is/was/'s/down to/at/) (half/a quarter/a third/less than half) (of/) (what it was/what it should be/normal), half (the/of the/my) (power/strength) (in/of) (my/the/that/this) (leg/foot/calf/thigh/ankle),
    walking like a (pirate/zombie/drunk), (up/down/go up/go down/climb) the stairs on my (bum/backside/bottom/hands and knees/knees/behind), leg turned to (nothing/water/mush/string/porridge), (went over/tripped over/fell over) my own (toes/feet/foot)`,
  'oblique-chest': `
    (blowing/puffing/panting/wheezing) like (a/an old/an/a steam) (horse/train/whale/walrus/engine) (after/from) (making/doing/brushing/dressing/one/a few/ten/two/the stairs/getting/putting/tying/hanging)`,
  'oblique-injury': `
    (wall/trench/ceiling/roof) (went/caved) in on (me/us/top of me/my back)`,
  'oblique-stroke': `
    (speech/words) (is/are/all/) slured, slured (speech/words), sluring (my words/words/like),
    my face (no longer moves/won't move/doesn't move/wont move/doesnt move) (on/) (the/) (left/right/one side),
    word salad, (one armed/one-armed) (now/all of a sudden/since/today), arm (just/) (dropped/has dropped/drops) off duty, (can't/cant/cannot/couldn't) (pull a pint/lift my arm/raise my arm/lift the cup/hold the cup/hold my phone) (at all/since/all of a sudden/suddenly/came on/),
    (dribbles/dribbling/dribbled/leaks/leaking/leaked/spills/spilling/spilled/runs/ran/running/falls/fell/pours/drools/drooling) (out/) (of/from/down) (one/the left/the right/the/my left/my right) (corner/corner of my mouth/side of my mouth/side of my face),
    (drink/tea/coffee/water/food/soup/drool/saliva/spit) (dribbles/dribbling/leaks/leaking/spills/runs/falls/keeps falling/comes/pours) (out/) (of/from/down) (one/the left/the right) side,
    hand just (stopped/quit/gave up/went/let go), (couldn't/couldnt/can't/cant/could not) get out any (word/words)`,
  'oblique-harm': `
    not worth being here, written my letters, rope in (the/my) garage, rope in garage, world (dont/doesnt/doesn't/don't) need me, (dont/don't/cant/can't) see a future, (wanna/want to) (dye/dy) (now/tonight/today), wanna dye, wanna dy, i want to dye,
    (gave/give/giving/given) up on (one/two/them/the last/it) and (on/) (life/living/everything/myself/me),
    (never been/was never/never felt/wasn't/wasnt/not) suicidal (before/until/till/like this/last week/last month/yet/yesterday/then/an hour ago), (didn't/didnt/did not) (want to/wanna) (die/be dead/kill myself/hurt myself/harm myself/end it) (before/then/yesterday/last week/until/till/at first/earlier), (don't/dont/do not) want to die (slowly/in pain/in agony/before/first),
    (couldn't/couldnt/could not/could never) (kill/harm/hurt) myself (last night/yesterday/i tried/the rope/quickly/enough/properly/right/this time/when i tried), (won't/wont/will not) (kill/hurt/harm) myself (tonight/today/yet/now/this week/just yet/while/before), no (plans/plan/intention/intentions) (to/of) (kill myself/killing myself/die/end it/hurt myself) (tonight/today/this week/yet/now/right now/just yet),
    (no/never a/not a/hardly a/barely a/isn't a/isnt a) (day/night/morning/hour) (goes by/passes/) (when/that/where/) i (don't/dont/do not) (think/thought/want),
    (not sure/unsure/not certain/don't know if/dont know if/don't know that/can't say/cant say/cannot say/can't promise/cant promise/it's not that/its not that) (i/i'm/im/i am) (don't want to die/dont want to die/not suicidal/don't want to kill myself/dont want to kill myself), (never/not/am i) not suicidal,
    (lied/lie/lying) (when/and/) (i/) (said/saying/told them/) (i'm/im/i am/) not suicidal, (not suicidal/i'm not suicidal) (that/which) (was/is) a lie, who (says/said) i (don't/dont) want to (die/kill myself), (mum/mam/mother/wife/husband/they/everyone/she/he/dad) (thinks/think/believes/believe) (i'm/im/i am) not suicidal,
    (don't/dont/do not) want to (end it/die/kill myself) (only/just/but) (cut/hurt/harm), (or/and) (life/living) (anymore/any more/any longer), (or/and) any more life,
    (won't/wont/will not/not going to/not gonna) (be/) (a/) (bother/burden/nuisance/around/here/bothering you/in the way) (you/anyone/anybody/) (for/) (much/a lot/very) longer,
    call it a day (permanently/forever), ways out for good, (won't/wont) need (them/it/any of it) or anything, no more me, (isn't/isnt/not) planning on (seeing/being here for/being around for) (spring/summer/autumn/winter/christmas/the new year/next week/tomorrow), when they find me, one thing left to give up, or myself not joking, in the garage with the (engine/car/keys/hose/motor/engine key)`,
}
