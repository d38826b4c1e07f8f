import type { NetSource } from '../../shape.ts'

/** Where and with what: parts of the body, and the everyday things by which people notice that one fails. */
export const topics: NetSource['words'] = {
  limb: `
    leg(/s), foot, feet, toe(/s), big toe(/s), toenail(/s), ankle(/s), heel(/s), knee(/s), kneecap, shin(/s), calf, calves,
    calve, thigh(/s), hip(/s), quad(/s), hammy, hammies, hamstring(/s), sole(/s), instep, limb(/s), forefoot, achilles,
    lower half, waist down, hoof, hooves, pegs, pins under me, peg, tootsies, plates of meat, trotter(/s)`,
  'one-leg': `
    leg, foot, toe(/s), big toe, ankle, heel, knee, kneecap, shin, calf, calve, thigh, hamstring, hammy, quad, sole,
    sole of (my/the) foot, instep, forefoot, little toe, arch, top of (my/the) foot, side of (my/the) foot`,
  'side-word': `
    on the (left/right), the (left/right), my (left/right), (left/right) one, (left/right) side, bad side, bad one, dodgy one, sore one, affected side`,
  'left-side': `left (leg/foot/calf/thigh/knee/hip/buttock/ankle/heel/shin/side/one/is/has/was/toe/toes/hamstring), on (the/my) left, (leg/foot/calf/thigh/knee/hip/buttock/ankle/heel/shin) (on the/ 1/2/3/4/5/6/7/8/9/10/) left, (calf/foot/thigh/knee) (1/2/3/4/5/6/7/8/9/10) left`,
  'right-side': `right (leg/foot/calf/thigh/knee/hip/buttock/ankle/heel/shin/side/one/is/has/was/toe/toes/hamstring), on (the/my) right, (leg/foot/calf/thigh/knee/hip/buttock/ankle/heel/shin) (on the/ 1/2/3/4/5/6/7/8/9/10/) right, (calf/foot/thigh/knee) (1/2/3/4/5/6/7/8/9/10) right`,
  footwear: `
    shoe(/s), slipper(/s), boot(/s), trainer(/s), sneaker(/s), sandal(/s), flip flop(/s), flipflop(/s), croc(/s),
    clog(/s), welly, wellies, wellington(/s), sock(/s), slider, stiletto, high heel(/s), flipper, slip on(/s), laces,
    toe cap, toecap, pump, loafer(/s), thong`,
  ground: `
    kerb(/s), curb(/s), step, steps, stair(/s), staircase, doorstep, threshold, rug(/s), carpet(/s), doormat, pavement, sidewalk,
    paving, paving slab(/s), slab(/s), cobbles, gravel, door sill, door frame, sill, ramp, escalator, flat ground, flat floor,
    lino, tiles, thin air, nothing, own feet, landing, jetty, slipway, pontoon, tree root(/s), grass, root(/s), path,
    corridor, hallway, level ground, floorboard(/s), decking, zebra crossing, matting`,
  pedal: `
    clutch, brake(/s), brake pedal, accelerator, gas pedal, the gas, pedal(/s), pedalling, pedaling, foot plate, footplate,
    stirrup(/s), stirring foot, foot strap, sustain pedal, treadle`,
  climb: `
    stair(/s), steps, upstairs, downstairs, staircase, kerb(/s), curb(/s), hill, ladder, get (up/out of) (the/a/my/this/that) (chair/bath/car/sofa/bed/toilet/loo/couch/seat),
    out of (the/a/my) (chair/bath/car/sofa/bed/boat/van/couch/seat), off (the/a/my) (loo/toilet/sofa/chair/floor/bed/couch/stool)`,
  saddle: `
    saddle, saddle area, between (my/the/me) (legs/thighs/cheeks/buttocks), crotch, groin(/s), gusset, genital(/s),
    private(/s), privates, private (parts/bits/area/zone/place), undercarriage, down (there/below/south/under), downstairs area, nether(/s),
    nether regions, under regions, south of the border, bits, lady (bits/parts/garden), man bits, manhood, tackle, crown jewels,
    family jewels, jewels, vagina(/l), vag, vulva, fanny, foof, minge, pussy, labia, clit, clitoris, penis, willy, willie,
    todger, dick, cock, knob, ball(s/sack), bollocks, nuts, testicle(/s), testes, scrotum, nutsack, perineum, taint, gooch,
    grundle, back passage, anus, anal, rectum, arsehole, arse hole, asshole, butthole, bumhole, bum hole, ring piece,
    ringpiece, starfish, bum crack, arse crack, butt crack, crack, inner (thighs/thigh/buttocks/cheeks/bum),
    inside (of/) (my/the) (thighs/buttocks/cheeks/legs), tops of (my/the) (thighs/legs), top of (my/the) (thighs/legs),
    top of (my/the) inner (thighs/thigh), pelvic floor, pelvic area, front bottom, front passage, pubic, pubes,
    pubic (area/bone/hair), tampon, moon cup, mooncup, sanitary (pad/towel/product), sit bones, sitting bones, sit bone(/s), unmentionables, where i sit,
    part i sit on, bit i sit on, the bit that sits, where (the/a) saddle, the underneath, underneath, underside, hind quarters, hindquarters,
    where the sun, intimate (area/parts/bits/places),  area(/s) down below, bikini (line/area)`,
  rump: `
    tail end, backside, back side, bum, bums, bottom, butt, arse, ass, behind,
    rear, rear end, buttock(/s), buns, rump, posterior, seat, bum cheek(/s), butt cheek(/s), both cheeks, glutes, tush,
    derriere, booty, coccyx, tailbone, tail bone`,
  sitting: `
    perched, perched on,
    saddle, bike saddle, bike seat, bicycle seat, seat, loo seat, toilet seat, car seat, erg seat, chair, stool, bench,
    cushion, sofa, couch, settee, pew, armchair, bidet, commode, pan, bath, tub, hot tub, jacuzzi, sauna bench, rowing seat, toilet, loo,
    hot water bottle, heat pad, heated seat, ice pack, jets, shower head, showerhead, water jet, horse, wheelie chair, deck chair, bar stool, plank`,
  wiping: `
    toilet paper, razor, wax strip, wash cloth, loofah, wipes, jet, hot water, cold water, warm water, water temperature, tissue paper, nappy cream, paper towel,
    wip(e/es/ed/ing), wet wipe(/s), paper, toilet paper, loo paper, loo roll, bog roll, toilet roll, toilet tissue, tissue, tp,
    flannel, washcloth, sponge, towel, drying myself, dry myself, dried myself, wash(/ing/ed), soap, soaping, lather, shower(/ing/ed), bidet, clean myself,
    cleaning myself, cleaned myself, shav(e/ing/ed), wax(/ed/ing), razor, talc, cream, moisturiser`,
  clothing: `
    pants, knickers, underwear, undies, underpants, boxers, briefs, thong, jeans, tights, leggings, shorts, trousers, lycra,
    bib shorts, trunks, pyjamas, pjs, pyjama bottoms, joggers, y fronts, panties, slip, swimsuit, cossie, skirt, jockstrap, waistband, zip`,
  pee: `
    a drop, a drop out, a single drop, pass a drop,
    pee(/s/d/ing/ed), wee(/s/d/ing/ed), piss(/ing/ed/es), slash, slashing, urinat(e/es/ed/ing/ion), urine, bladder, waterworks, water works, plumbing, pass water,
    passing water, pass urine, passing urine, tinkle, number one(/s), tank, spend a penny, spending a penny, leg it to the loo, urinal(/s),
    (any/the/my/pass/make/passing/making/get/getting) water (out/), water out, empty my tank, jimmy riddle, jimmy, leak, leaking, leaked, the flow, stream, tap, my flow, my stream, wizz, whizz, widdle, urge to go, urge to pee, urge to wee, the urge, when i'm full, when im full, bladder's full, weeing, empty myself, emptying, relieve myself, relieving myself, go for a number one`,
  toilet: `
    loo, toilet, bathroom, lav, lavatory, bog, bogs, restroom, john, ladies, gents, khazi, throne, privy, cubicle, urinal, porcelain, outhouse, cistern, powder room, washroom, little (boys/girls) room, commode, bedpan, bottle`,
  'wet-thing': `
    pants, knickers, underwear, undies, underpants, boxers, briefs, jeans, tights, leggings, shorts, trousers, lycra, trunks, pyjamas,
    pjs, joggers, bed, sheet(/s), mattress, duvet, sofa, couch, chair, car seat, seat, carpet, crotch, down my leg, down the leg, down both legs, nightie,
    cushion, myself, nappy, nappies, diaper(/s), pad, pads, tena, skirt, dress, kit, gusset, down there, floor, bath mat`,
  poo: `
    nugget(/s), let one (rip/go/out/off), solid(/s), turtle, pebble(/s), follow* through,
    urge to go, the urge, my back passage, motions, back exit, rear exit, trapdoor, poo(/s/ed/ing), poop(/s/ed/ing), bowel(/s), bowl movement, bowl(s), stool(/s), turd(/s), shit(/s/ting), shite, crap(/s/ping), dump, number two(/s),
    number 2(/s), no 2(/s), faeces, feces, motions, back passage, back door, back end, sphincter, anus, bum, bumhole, bum hole, bottom, arse,
    arsehole, butt, behind, backside, fart(/s/ing/ed), wind, gas, trump(/s/ing/ed), toot(/s), guff, diarrhoea, diarrhea, the runs, rear end, exhaust, tail end, poopy, bog, log, flatulence, pumping`,
  soiling: `
    boxers, joggers, jogging bottoms, tracksuit,
    pants, knickers, underwear, undies, underpants, boxers, briefs, jeans, shorts, trousers, bed, sheets, myself, toilet, loo, in time, pad, nappy,
    nightie, pyjamas, joggers, leggings, tights, lycra, kit, thong`,
  sex: `
    be close, got close, being close, close to my (wife/husband/partner), in the mornings, of a morning, mornings, lie with, keep it going,
    inside me, in that department, that department,  on my own, react*, touch(es/ed/ing) (me/myself), touch myself, make love, in the mood, naked, intimate with, got intimate, being touched, fooling around, fumble, doing it, did it, do the deed, the deed, bed with, bonk(/ing/ed), nookie, downstairs, hard, get hard, got hard, tried last night, arous*,
    sex, sexual(/ly), intercourse, making love, make love, made love, lovemaking, love life, bedroom, between the sheets, intima(te/cy), shag(/ging/ged), erection(/s),
    erect, hard on, hardon, boner(/s), stiffy, morning wood, wood, morning glory, orgasm(/s/ing/ed), climax(/ed/ing), ejaculat(e/ed/ing/ion), cum, cumming,
    come, coming, aroused, arousal, libido, sex drive, wank(/ing/ed), masturbat(e/es/ed/ing/ion), foreplay, penis, willy, dick, cock, knob, todger, clitoris, clit, vagina,
    fanny, pussy, manhood, member, little man, little fella, old chap, old fella, old boy, my fella, john thomas, mojo, downstairs department, lady garden, nookie, rumpy pumpy, how's your father,
    marital, conjugal, in bed with,  vibrator, toy, turned on, randy, horny,  date night, bits, privates, lubrication, tent pole, pitch a tent, soldier, flagpole, viagra`,
  'two-legs': `
    neither (leg/foot/knee), two sides, the two sides, on both, each side, both my, (left/right) and (left/right), all my toes, both big toes, both heels, both soles,
    both legs, legs, feet, both feet, calves, both calves, thighs, both thighs, both hamstrings, hamstrings, both knees, knees, ankles,
    both ankles, shins, soles, both sides, both (of them/of my), the pair, pair of (legs/feet), the two of them, two legs, either leg, either foot, each leg, each foot,
    (left and right/right and left/left n right/l and r), toes on both, (both/all) (sets of/) (my/) toes, two feet, double sided, two sided, bilateral(/ly),
    down both, up both, in both, all ten toes, ten toes, every toe, waist down, lower half`,
  'other-side': `
    other (leg/foot/side/one/calf/thigh/hip/knee/ankle/shin/toe/toes/heel/buttock/limb/hamstring), other too, t'other, tother, the other as well, other is,
    opposite (leg/foot/side/calf/thigh), good (leg/foot/side/one), (healthy/fine/unaffected/clean/second/quiet/strong) (leg/foot/side/one),
    left as well as right, right as well as left, left one too, right one too, left too, right too, left as well, right as well,
    matching, a matching (set/pair), mirror image, twin, its twin, its mate, the partner leg, in stereo, stereo, neighbour leg, its neighbour, symmetrical(/ly), same on the (left/right), same in the (left/right),
    (now/also/even) (in/on/down) (the/my) (left/right), the (left/right) is (joining/copying/at), (left/right) has (joined/started/followed), (left/right) one (has/is/joined/started)`,
  face: `
    face, mouth, lip(/s), smile, smil(es/ing), grin, eyelid, eye lid, eyebrow, brow, cheek, jaw, tongue, chin, dribble, drool(/ing), dribbling, nostril, corner of (my/the) mouth, side of (my/the) face, half my face, selfie, mirror, toothpaste, straw`,
  arm: `
    arm(/s), hand(/s), finger(/s), fingertip(/s), thumb(/s), wrist, grip, elbow, forearm, left side, right side, one side, half (of/) my body, side of my body,
    whole side, fist`,
  held: `
    cup, mug, glass, pen, pencil, fork, knife, spoon, key(/s), phone, toothbrush, razor, button(/s), zip, shoelace(/s), kettle, pan, saucepan, plate, bag, coffee, tea, pint, comb,
    hairbrush, brush, remote, mouse, keyboard, chopsticks, purse, wallet, coin(/s), scissors, oar handle, screwdriver, steering wheel, door handle, handwriting, writing, signature, cutlery, cards, texting, typing, sandwich, lighter, lipstick, beer, jug, jar, card, sleeve`,
  speech: `
    speech, word(/s), sentence(/s), speak(/ing), talk(/ing), voice, tongue, say, saying, sound(/s/ed/ing), speaking, conversation, names, talked, spoke, my name, pronounc(e/ing), reading aloud, read out, ordering, phone call`,
  sight: `
    print, reading, letters, text, telly, page, newspaper, phone screen, number plates, signs, faces, left of everything, edges, focus, glasses, read,
    eye(/s), sight, vision, eyesight, see, seeing, screen, words on the page, page, half of everything, half the (page/room/screen/world/picture), left half, right half, field of view, side of (my/the) (view/vision)`,
  position: `position(/s), posture, angle, way to lie, way to sit, way of lying, spot, how i lie, which way i lie, way i lie, side i lie on, comfortable way`,
  'stand-there': `stand there, stood there, standing there, sit there, sat there, sitting there, hover there, like an old man, over the bowl, over the pan`,
  balance: `
    everything, the house, boat, horizon, kitchen, street, pavement,
    balance, room, world, walls, door frame(/s), doorframe(/s), doorway, walk(/ing), floor, ground, steer(/ing), straight line, standing, stand up, stood up, feet, sideways, to one side, into things, to the (left/right), ceiling, on a boat, on deck`,
  'pad-buy': `pads, incontinence pads, tena, nappies, nappy, diapers, pull ups, liners, panty liners, sanitary towels, spare (pants/trousers/knickers/underwear/clothes), change of (clothes/pants/trousers/underwear)`,
  chest: `
    chest, breastbone, breast bone, sternum, heart, rib(/s), ribcage, rib cage, lung(/s), left arm, jaw, ticker, pecs, behind (my/the) ribs, left shoulder and, across the front, down my (left/) arm`,
  breath: `
    breath(/s/e/ing/ed/less/lessness), lung(/s), air, oxygen, inhal(e/ing), inhaling, exhal(e/ing), lungful, wind, puff, gasp, gulp, wheeze`,
  trunk: `
    belly, stomach, tummy, abdomen, abdominal, gut(/s), midriff, navel, belly button, flank, side, chest, back, upper back, mid back, lower back, spine, shoulder blade(/s), between (my/the) shoulder(/s/ blades), inside(/s/ me), insides, torso, loin, kidney(/s), solar plexus, ribs, tum, trunk, middle, breastbone`,
  belly: `belly, stomach, tummy, abdomen, abdominal, gut(/s), midriff, navel, belly button, tum, solar plexus`,
  bellyache: `bellyache, belly ache, stomach ache, tummy ache, stomachache, tummyache, gut ache, belly pain(/s), stomach pain(/s), tummy pain, abdominal pain, stomach cramps`,
  growth: `something, lump(/s), growth, mass, shadow, spot, mole, tumour, nodule, cells`,
  organ: `breast, prostate, bowel, lung(/s), skin, testicle, kidney, thyroid, neck, armpit, scan, x ray, xray, ct, mammogram, ovary, ovaries, cervix, colon, marrow, lymph, blood`,
  malignant: `bad kind, nasty, not benign, malign*, taken off, cut out, removed, biopsy, consultant, oncolog(y/ist), spread, found, grade, stage, results, aggressive, chemo, radio`,
  urge: `urge(/s), call of nature, sensation to go, need to go`,
  crash: `t boned, rear ended, rear end shunt, shunted, side swiped, sideswiped, wrapped (my/the) (car/van/bike), wrote (off/it off) (the/my/) (car/van/bike), hit and run, prang(/ed), car (flipped/rolled/spun/overturned), came off (at/on/in/my/the) (speed/a corner/the corner/bike/horse/gravel/bend), head on, airbag(/s), seatbelt (locked/bruise), whiplash`,
  'one-calf': `calf, calve, lower leg, leg, ankle, shin, foot, thigh, sock, back of (my/the) (leg/knee), behind (my/the) knee, boot, shoe, wellies`,
  clothes: `trousers, jeans, belt, clothes, kit, skirt, shirt(/s), ring, wedding ring, rings, watch, watch strap, bra, suit, dress, waistband, uniform, shorts, collar`,
  scale: `scale(/s), weight, kilo(/s), kg, kgs, pound(/s), lb(/s), stone, bmi, dress size(/s), size, sizes`,
  pills: `pills, tablets, meds, medication, paracetamol, whole (box/packet/bottle), the lot, rope, noose, bridge, train tracks, railway line, razor blade(/s), blade, knife, will, goodbye letter(/s), goodbye note(/s), goodbye(/s), funeral, cliff edge, overdose, bottle of pills, drawer of pills, platform edge, gun, morphine, codeine, stash`,
  extreme: `9, 10, nine, ten, 9 5, nine and a half, 9 10, 10 10, ten out of ten, nine out of ten, 9 out of 10, 10 out of 10, a ten, a nine`,
  zone: `calf, foot, toes, knee, thigh, buttock, back, leg, ankle, heel, pain, pain score, hip, hamstring, bum, shin, hurts, hurting, score`,
  spine: `back, spine, neck, tailbone, coccyx, hip, pelvis, head, bum, backside, bottom, arse, flat out, everything, side, ribs, shoulder`,
}
