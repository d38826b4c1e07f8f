import type { LexiconData } from '../schema.ts'

/** Parts of the body, how one lies to another, and what only sounds like one. */
export const places = {
  leg: `
    leg, down the leg, down my leg, down leg, whole leg, back of the leg, back of my leg, side of my leg,
    front of my leg, entire leg, all down my leg, all down the leg, all the way down, sciatica, sciatic,
    sciatic nerve, limb, my leg, the leg, down it, down one side, side of the leg, front of the leg, inner
    leg, outer leg
  `,
  legs: 'legs, my legs',
  arm: `
    arm, arms, hand, hands, shoulder, shoulders, neck, wrist, wrists, elbow, elbows, finger, fingers,
    thumb, face, eye, eyes, ear, ears, rib, ribs, chest, belly, tummy, stomach, jaw, head, upper back,
    thoracic
  `,
  place: `
    reach, spot, place, zone, area, location, position, site, furthest, furthest point, felt in, where
  `,
  sideNoun: 'side, sided, hand side',
  otherSide: `
    the other, the other leg, other, other one, opposite, other leg, other side, opposite leg, opposite
    side, the other one, wrong leg, swapped legs, switched sides
  `,
  above: `
    stops before, stopped before, stopping before, just before, stops short of, stopped short of,
    stopping short of, stops above, stopped above,
    just above, above, right above, a bit above, bit above, slightly above, north of, short of
  `,
  below: 'below, under, underneath, beneath, south of',
  just: `
    just below, just under, right below, bit below, a bit below, slightly below, just beneath, right
    under, just underneath
  `,
  beyond: `
    past, beyond, further than, farther than, lower than, further down than, farther down than, lower down
    than, deeper than
  `,
  partOf: `
    back of, back of the, back of my, front of, front of the, front of my, side of, side of the,
    side of my, top of, top of the, top of my, outside of, outside of the, outside of my, inside of,
    inside of the, inside of my, bottom of, bottom of the, bottom of my, sole of the, sole of my, outer,
    inner, outside, rear of the, middle of, middle of the, middle of my, mid, upper, behind, behind the,
    behind my, part of the, part of my, edge of the, edge of my, tip of the, tip of my, end of the,
    end of my, ball of, muscle, muscles, joint, bone, nerve
  `,
  inside: `
    coming till, coming until, coming to, coming to my, coming up to, coming down to, comes till, comes until, comes down to, coming till my, coming till the, going till, goes till, till my, till the,
    in, in the, in my, in a, at the, at my, into, into the, into my, on the, on my, down, down the,
    down my, down to the, down to my, to the, to my, around the, around my, up to the, up to my,
    as far as, as far as the, as far as my, all the way to, all the way to the, all the way to my,
    all the way down to, all the way down to the, all the way down to my, reaching, reaches, reached,
    reaching the, reaching my, right down to, right down to the, right down to my, through the,
    coming to, coming to the, coming to my, coming down to, coming down to the, coming down to my, coming into,
    coming into the, coming into my, coming in the, coming in my, coming as far as, arrives at,
    arrives to, through my, across the, across my, down into, down into the, down into my, down in, down in the,
    down in my, along the, along my, up in the, from my, near the, near my, round the, inside the,
    inside my, towards the, towards my, toward the, toward my, as low as, low as, as far down as,
    as far down as the, as far down as my
  `,
  exercise: `
    raise, raises, stretch, stretches, stretching, stretched, bridge, bridges, bends, curls, curl,
    extension, extensions, lifts, opener, openers, hinge, hinges, press, presses, touches, rolls,
    rotations, rotation, glides, glide, sliders, slider, massage, roller, drops, walks, rockbacks, rocks,
    tucks, flexion, brace, support, taps, circles, drill, squat, squats, exercise, machine, band,
    height, length, path, locker, blister, blisters, infection, nail, nails, wart, verruca, bruise, graze, sock, socks,
    spa, boot, strap, plaster
  `,
} satisfies Partial<LexiconData['cues']>
