import type { LexiconSource } from '../shape.ts'

/** What makes a word harmless: exercise, travel, everyday life. */
export const everyday: LexiconSource['circumstances'] = {
  muscle: `
    legday, (leg day/legs day/squat day/hill session/spin class) (killed/destroyed/wrecked/finished) me,
    (from/after) (the/my/some/all the/all that/a/yesterday's/) (skipping/skipping rope/jump rope/lunges/wall sit/wall sits/step ups/spin/spinning/leg press/bridges/burpees/box jumps/long walk/digging/gardening/spin class/trampolining),
    hill running, hill reps, hill sprints, from running, after running, from the run, after the run, from hiking, from cycling, from dancing,
    from (hill/hills/running/the run/football/hockey/rugby/tennis/cycling/the ride/the row/dancing/gardening/the hike/hill running/skiing/climbing/the hills/the gym),
    (usual/normal/good) (kind/sort), in a good way, good sore, good ache, leg day, after that row,
    after leg day,
    from hill running, hill running, marathon training, usual good kind, the good kind, good kind of sore,
    normal stuff, from training, after football, after tennis, after the match, after leg day, after the race,
    (from/after) (10/20/30/40/50/60/100/200/ten/twenty/thirty/fifty/sixty/a hundred/all those/so many) (step ups/stepups/lunges/squats/sit to stands/burpees/calf raises/stairs), doms, muscle soreness, muscle sore, from the row, from rowing, after rowing, from squats, after squats,
    from the squats, after the erg, from the erg, workout, after training, from training, from the gym,
    after the gym, leg day, from running, after the run, from the walk, after the walk, from cycling,
    from yesterdays session, from yesterday's session, after the session, tired, tight, stiff, lactic,
    from the hill, after the hill, after the (last/first/second/third/final/) (set/one/drill/sets/drills),
    last set, after that set, after deadlifts, after lunges, after the class, after a long row`,
  /** Sore muscles by their name or their cause. */
  trained: `
    doms, muscle soreness, (from/after) (the/all the/those/some/) (lunges/squats/step ups/sit to stands/burpees/calf raises/wall sits)`,
  exertion: `
    from (the/my/a) (mat/roller/band/strap/floor/bra/seatbelt/seat belt/rib of the boat), folded a towel,
    (1/2/3/4/5/6/8/10/12/21/42) (k/km), (500/1000/2000/5000/6000) (m/metres/meters),
    (after/on/during/from) (the/my/a/that/that last/last/) (test/piece/set/climb/circuit/lengths/hiit/spin/bike/swim/jog/game/burpees/skipping), pb, parkrun, park run, marathon, match, football, tennis, the swim,
    when i (saw/heard/read/opened/watched), horror film, scary film, penalty shootout, interview, exam,
    after the stairs, after stairs, after the run, after the row, after the erg, after rowing, erg, hill,
    hills, run, running, sprint, sprints, sprinting, row, rowing, the session, training, on the bike,
    after the bike, workout, intervals, interval, exercise, exercising, drill, drills, the walk, cardio,
    race, circuit, unfit, session, watching, on the sofa, on the couch, sofa, couch, laughing, tired,
    knackered, from tiredness, in front of the telly, in front of the tv, bed by, in bed at,
    after a few beers, after beers, drunk`,
  settles: `
    settled when, settles when, settled after, settles after, settled once, eased when, eases when,
    eased once, settles if, turned over and, rolled over and, moved and it went, changed position and,
    settled quickly, went back to sleep, got back to sleep, back to sleep, fine after turning,
    ok after turning, settled with, settles with, eased by turning, settled down when, and it settled,
    and it eased, it settled, then settled, easy after turning, went straight back`,
  'on-purpose': `
    with the (club/slimming club/slimming group/group/class), thanks to (the/) (running/walking/gym/gym sessions/swimming/cycling/bike/salads/dog),
    on (the/your/my/this/a/that) (plan/programme/program/diet/regime/meal plan),
    on purpose, (cut/cutting) out (the/) (beer/sugar/sweets/alcohol/booze/bread/carbs/snacks/crisps/chocolate/cakes/biscuits), deliberately, by design, portion control, calorie counting, counting calories,
    cutting for, cut for, race weight, making weight, make weight, lightweight race, with the running club,
    for the season, for the wedding, for my wedding, slimming world,
    on purpose, diet, dieting, dieted, deliberately, trying to, intentionally, goal, healthy eating,
    on a plan, slimming, as planned, wanted to, happy with, happy about, happily, proud, target, cutting,
    calories, intermittent fasting, weight watchers, slimming world, bar, barbell, deadlift, lift, lifting,
    squat, plates, dumbbell, kettlebell, cut out sugar, cutting down`,
  gym: `
    plank, drill, stretch, position, pose, press, squat, bar, weight, band, dumbbell, handle, grip,
    barbell, exercise, rung, rep, reps, seconds, breath`,
  'walk-there': `
    walk to the loo, walk to the toilet, walk to the bathroom, get to the loo without, far from, stairs,
    roll, paper`,
  'not-me-leak': `
    loft, cistern, plumber, flask, goggles, paddling pool, (the/that/your) secret, (water/damp/patch/leak) on the ceiling, roof, boat, tap, pipe, boiler, hull, shell, bottle, tyre, tire, house, kitchen, radiator, bung,
    boathouse, car, shower, washing machine, sink, news, hatch, sauna`,
  'only-pain': `
    because of the pain, because of pain, from the pain, due to pain, due to the pain, without pain,
    for the pain, with the pain, too painful, pain free, without it hurting, far, because it hurts,
    hurts too much, stiff, stiffness`,
  travel: `
    trip to, trips to, road trip, day trip, business trip, work trip, trip away, boat trip, family trip,
    work trips, school trip, city trip, trip home, holiday, flight, abroad, weekend`,
  'place-else': `drop me, drop off, dropped off, pain dropped, number dropped, dropped to`,
  'balance-drill': `
    paddle board, paddleboard, surfboard, slackline, ice rink,
    wobble board, bosu, rocker board, stability ball, balance drill, balance board, balance exercise, balance work, work life balance, bank balance,
    balance ball, balanced, new balance, on one leg, single leg, one legged, one foot`,
  'arm-work': `
    tired, sore from, from rowing, from the erg, from pulling, after rowing, from the row, blister,
    blisters, doms, from the gym, cold, gloves, slept on`,
  'going-place': `
    (tonight/today/tomorrow/this week/friday/saturday/sunday) to, go to, going to the gym, gym, work, on, out, go out, tomorrow, further, any further, lower, deeper,
    past, beyond, higher, faster, running, rowing, holiday, swimming, away, without, home, back, up, down,
    through, into, session, training, heavier, for a walk, for a run, for walks, forward, forwards,
    backwards, sideways`,
  'saddle-plain': `
    none of your business,
    pillow, band, ball, towel, block, cushion, foam, squeeze, squeezed, stretch, stretching, stretched,
    sore, tight, tightness, stiff, ache, aching, strap, strapped, bike, cycling, horse, riding, shower,
    washed, kick, kicked, drill, rung, roller, press`,
  leaving: `
    (leave/end/ending/quit/quitting/stop/stopping/cancel/leaving/drop/drop out of/finish with/withdraw from/out of/done with/any more of/anymore of/no more of/sick of/bored of/bored with) (the/this/these/my/your/) (program/programme/plan/check ins/checkins/check-ins/coaching/messages/app/bot/study/course/scheme/reminders/club/list/chat/group/server/channel/trial),
    stop taking part, take part (any/any more/anymore/in the/in this), drop out, unsubscribe, opt out`,
  'pee-plain': `
    had a (wee/pee/poo/tinkle), (loads/lots/plenty/litres/gallons/pints/so much/too much/bit too much/a lot) of (water/tea/coffee/fluids/squash/beer),
    (before/after/between) (the/my/each/both/) (session/sessions/drill/drills/row/run/walk/sets/training/work/bed/breakfast/lunch/dinner),
    dog, dogs, cat, puppy, hamster, rabbit, baby, toddler, nappy, nappies, trail, bag, hydrated, clear,
    bright yellow, beetroot, asparagus, at the (pub/petrol station/services/garage), none of it mine, potty, break, breaks,
    (went/gone/go/going/off/up/stopped/stop/nipped/ran/popped/out/need/needed/time/pause/paused/quick/left) for a (pee/wee/piss/slash/poo/poop/leak),
    need a (pee/wee/poo/piss), needed a (pee/wee/poo/piss), quick (pee/wee/poo), before my (pee/wee/poo),
    after a (pee/wee/poo), had a (big/good/quick/) poo, after my (pee/wee/poo),
    (woke/wake/got/get/getting/up) (up/) (for a/to/for) (pee/wee), the dog, green pea, peas, fine, ok,
    okay, normal, normally, morning pee, drink more, more water, bath, hilarious, laughing`,
  compared: `
    better than the other, stronger than the other, unlike the other, other side tomorrow,
    swap to the other, other side next, on the other side for, then the other side, and the other side,
    reps on the other, then other side, then other leg, swap legs, and other side,
    same on the other side for`,
  'thing-slipped': `
    band, anchor, strap, mat, prop, pillow, phone, door, handle, oar, blade, seat, grip, towel, standards,
    schedule, routine, bar, plates`,
  'legs-plain': `
    rolled, foam roller, foam rolled, massaged, iced, oiled,
    glide, glides, slider, sliders, rotator, rotators, should i do, do the, did the, one leg at a time, then swap,
    up on (the/a/my), on the (sofa/couch/footstool/pouffe/desk/table), leg day, oar, oars, hand, hands, arm, arms, shoulder, shoulders, blade, blades, glove, gloves, shoe, shoes, sock, socks, fresh, feel strong, feels strong, felt strong, turn, turns, traffic,
    each, did both, do both, stretch, stretched, wall, up the wall, up on the wall, the wall, swapped, shaved,
    10 each, shake,
    carpet burn, grazes, plasters, doms, lobster red, (got/with/from/my/the) sunburn, sunburn (on/cream/from/line/lines/marks), scratches, bramble, brambles, slippers, compression socks, tights, socks off, shorts, nettles, insoles, swimsuit, tap shoes, both legs (work/working), both legs (move/moving) (fine/well/ok/normally/the same/equally/together/again),
    muddy, dirty, filthy, bare, grazed, scraped, scratched, shaved, waxed, stood, in the ski, boots, sunburnt,
    sunburned, freezing,
    stretch, stretched, stretching, stretches, drill, drills, press, exercise, done, reps, rep, lying,
    band, bend, bent, straight, together, raise, raised, lifted, lift, swing, floor, tired, tight, stiff,
    worked, fine, ok, okay, good, great, nothing, bridge, squat, squats, balance, weight, strong, normal,
    loose, lighter, carried, crossed, side to side, each side, per side, on each, carry, up the wall, wide,
    knees wide, kneeling, feet flat, step, steps`,
  'come-plain': `
    
    (come/coming) (to/today/tomorrow/monday/tuesday/wednesday/thursday/friday/saturday/sunday/over/in/round/along/with/this/next/up/down/out/back/tonight/on/for/at/until/because)`,
  'wont-plain': `
    drag, give way, slap, buckle, trip, flop, collapse, wobble, feel numb, feel weak, go numb, go dead, tire,
    hurt, hurts, ache, aches, pain, bother, mind, matter, like, tingle, swell, complain, stop, sore, much,
    look, fit, reach, know, care, need, want, stretch, kneel, touch, bad, good, great, better`,
  'swell-calm': `
    in the heat, with the heat, in this heat, hot weather, the heat, heatwave, sock tan, gnat, horsefly,
    insect bite, midge,
    muscles, haha, lol, stronger, bath, shower, sun, sunburn, sunburnt, socks, after the sauna, sauna,
    gains, pump`,
  'breath-plain': `
    5k, 10k, pb, parkrun, sprint, sprints, intervals, the hill, hill reps, cardio, ran for the bus,
    deep breath, breathe out, breathe in, breathing drill, breathing one, breathing exercise,
    belly breathing, breathing exercises, belly, drill, hold my breath, holding my breath, held my breath,
    hold the breath, cold air, after the, run, erg, row, hill, stairs, interval, intervals, uphill,
    long breaths, ten breaths, 10 breaths, five breaths, 5 breaths, breaths each, sets, slow breath,
    breath work, to learn, settle, prop, hayfever, pollen, face down, lying face`,
  'chest-plain': `
    (asleep/sleeping/snoozing/napping/purring/snoring/curled up) on (my/his/her) chest, chest out, (from/the) (bass/thunder/fireworks/drums/subwoofer), (thunder/drums/bass/fireworks/music) (so/was/were/too) loud, tap on the chest, medical,
    prop, press, drill, floor, strap, hair, open, opener, stretch, cold, chesty, band, day, fly, flies,
    gym, bench, rung, lying, lie, up, lifted, lift, to chest, rowing, erg, muscle, muscles, pec, pecs,
    fine, knee, knees, pillow, towel, on my chest, freezer, tea chest, measurement`,
  'leg-odd-plain': `
    different leg, other day, wrong leg, wrong foot, on the wrong, in different, fine, better, good,
    exercise, drill, lifted, strong, stronger, pain`,
  /** Cold hands and slept-on arms: numb for a plain reason and over. */
  'from-cold': `
    from (the/) (river/boat/water/wind/snow/rain/lake/sea/ice/snowballs/snowballing/freezer/frost/ice cream), after (bowling/climbing/tennis/the match),
    (dead/tired/heavy/sore/jelly/shot/knackered/weak) (from/after) (the/) (rowing/row/erg/gym/session/training/climbing/swim/swimming/shovelling/digging/painting),
    frost, frosty, (this/that/the) (cold/frost/snow/wind/weather), freezing (cold/out/outside/weather), icy (wind/water/weather), (so/too/bloody/very) cold (out/outside/on the water),
    from (the/) cold (row/swim/outing/water/paddle/), with (the/) cold,
    (cold/sea/wild) (swim/row/dip/outing/water swim/plunge), warm now,
    (all/) warmed up, till i warmed up, slept on (it/my arm/my hand/that arm), lay on (it/my arm),
    lying on (it/my arm),
    (from/after) (sleeping/lying/leaning) on (it/my arm/my hand), shook it out`,
  'fever-plain': `
    (on/by/at/in) the (pontoon/river/water/sea/lake/pool/bank/jetty/towpath/dock/frost),
    minus, below zero, below freezing, forecast, (room/water/air/outside/sea/river/body) temperature, in the boathouse,
    boiler (is/was/'s/) (broken/broke/off/bust/dead), heating (is/was/'s/) (broken/broke/off/bust),
    no heating, in the (flat/boat/rain/cold/wind/snow), outside, bus stop,
    touchline, stands, waiting for the bus, cold (house/swim/dip/morning/outing), sea swim, ice bath,
    as a kid, as a child`,
  'hot-weather': `hot (night/nights/weather), heatwave, heat wave, warm night, muggy, humid, heating on, tropical, in this heat, so hot outside`,
  'not-both': `not both (legs/sides/feet/of them/), not in both (legs/feet/sides/), not on both (sides/), never both (legs/sides/), neither both`,
}
