import type { LexiconSource } from '../shape.ts'

/** Signs told by a picture, where no word names them; each is asked about. */
export const oblique: LexiconSource['words'] = {
  'oblique-saddle': `
    (feels like/feel like/like/as if/as though) (i'm/im/i am/i was/) (sitting/sat) on (a/an/) (sponge/balloon/cotton wool/pillow/air/foam/rubber/towel/jelly/nothing/cloud/marshmallow),
    (if/) (you/someone/somebody) (poked/pinched/touched/kicked/pricked/could poke/could pinch/could touch/could kick) me (there/down there/in the privates/in the crotch/in the groin/in the bits/between the legs/between my legs),
    (pants/knickers/boxers/underwear/undies/panties) (feel/feels/felt) (weird/odd/strange/funny/wrong/different/like nothing)`,
  'oblique-bladder': `
    (drinking/drank/drunk) (water/tea/loads/lots/plenty/litres/pints/so much) (all day/all morning/today/) (and/but) (i/) (not/haven't/havent/have not) (gone/been),
    (always/still) (have/got/there's/theres/feels like there's/feels like theres/) (more/some/something) (in there/left in there/left inside/inside), (something/some) left in (there/the tank),
    (tank/bladder) never (empties/empty/feels empty), never feels (empty/emptied/finished)`,
  'oblique-sex': `
    (can't/cant/cannot/couldn't/couldnt/could not/didn't/didnt/don't/dont/did not/barely/hardly/not) (feel/felt) (anything/nothing/a thing/much/it/any of it) when i (came/come/cum/climaxed/climax/orgasmed/orgasm),
    (feel/felt) (anything/nothing/a thing/much/it/any of it) when i (came/come/cum/climaxed/climax/orgasmed/orgasm),
    (not/hasn't/hasnt/haven't/won't/wont/doesn't/doesnt/no longer/never/refuses to) (stood/stand/stands/standing/salute/salutes/saluted) (to/) attention`,
  'oblique-both': `
    (someone/somebody/someone's/someone has/) (pulled the plug/plug pulled/switched off/turned off/power cut/cut the power/lights out/flat battery) (on/in/to/from/for) (both/both my/my/the) legs,
    caught it (off/from) (my/the) (left/right/other), (good/other/fine) (leg/side) (isn't/isnt/is not/is no longer) (good/so good/fine/the good one) (anymore/any more/any longer/either)`,
  'oblique-weakness': `
    (leg/foot/ankle/calf/thigh) (power/strength) (is/was/'s/down to/at/) (half/a quarter/a third/less than half) (of/) (what it was/what it should be/normal), half (the/of the/my) (power/strength) (in/of) (my/the/that/this) (leg/foot/calf/thigh/ankle)`,
  'oblique-stroke': `
    (dribbles/dribbling/dribbled/leaks/leaking/leaked/spills/spilling/spilled/runs/ran/running/falls/fell/pours/drools/drooling) (out/) (of/from/down) (one/the left/the right/the/my left/my right) (corner/corner of my mouth/side of my mouth/side of my face),
    (drink/tea/coffee/water/food/soup/drool/saliva/spit) (dribbles/dribbling/leaks/leaking/spills/runs/falls/keeps falling/comes/pours) (out/) (of/from/down) (one/the left/the right) side`,
  'oblique-harm': `
    (won't/wont/will not/not going to/not gonna) (be/) (a/) (bother/burden/nuisance/around/here/bothering you/in the way) (you/anyone/anybody/) (for/) (much/a lot/very) longer`,
}
