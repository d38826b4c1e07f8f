import { type Drill, type DrillProse, type KitId, LADDERS, type Need } from '../../domain/ladder/ladders.ts'
import { ownDrill } from '../own-ladders.ts'

/** Said once below every list of drills; it goes before any number. */
export const STOP_RULE =
  'Stop at once if pain, tingling or numbness moves further down your leg, or if you get new numbness or ' +
  'weakness. Then do no more and write it here. Ask your coach how much pain is all right.'

/** What each ladder is called in front of clients and coaches. */
export const LADDER_NAMES: Readonly<Record<string, string>> = {
  settle: 'Settle',
  extension: 'Bend back',
  unload: 'Unload',
  glide: 'Glide',
  open: 'Open the hips',
  rotator: 'Deep hip stretch',
  'extend-hip': 'Hip lift',
  lift: 'Lift again',
}

export const KIT: Readonly<Record<KitId, string>> = {
  mat: 'a mat',
  'low-prop': 'a folded towel',
  'high-prop': 'a firm pillow',
  band: 'a loop band',
  wall: 'a wall',
  chair: 'a firm chair',
  'light-weight': 'a light weight',
  weight: 'a weight',
}

const NEED_LINES: Readonly<Record<Need, string>> = {
  'anchor-check': 'Check first: no nick in the band, the anchor holds a hard pull.',
  'coach-load': 'Use no weight until your coach has named the load.',
}

const SETTLE_CAUTION =
  'Lift the chest with the prop, not with your back. Pregnant? Ask for a way to lie on your side.'
const PRESS_CAUTION = 'Let your arms do the work and keep your back soft. Go only as high as feels easy.'
const BAND_LEGS = 'Strong band, on cloth, not right behind the knees. Face out of its line.'
const BAND_HIP = 'The band lies on cloth, not in the groin. Face out of its line.'
const NEW_HIP =
  'Keep the stretch mild and your tail on the floor. With an artificial hip, ask your doctor first.'
const LIFT_CAUTION = 'Move slowly, keep the weight close and breathe out as you rise.'
const LIFT_STOP = 'Stop if your back rounds and you cannot keep it long.'

/** The words of every drill of the house, by drill id. All sentences are our own. */
export const DRILLS: Readonly<Record<string, DrillProse>> = {
  'settle:1': {
    name: 'Belly breathing, forehead down',
    how: 'Lie on your belly with your forehead on the floor. Breathe in through your nose and feel your belly press down. Breathe out slowly and let your back go soft.',
    cautions:
      'Turn your hands under your forehead if your neck feels stiff. Pregnant? Ask for a way to lie on your side.',
    stopIf: 'Stop if your back or leg hurts more the longer you lie.',
  },
  'settle:2': {
    name: 'Belly breathing on a low prop',
    how: 'Lie on your belly with a folded towel under your chest. Breathe in through your nose, down to your belly. Breathe out slowly and let your hips sink.',
    cautions: SETTLE_CAUTION,
    stopIf: 'Stop if your back or leg hurts more the longer you lie.',
  },
  'settle:3': {
    name: 'Belly breathing on a higher prop',
    how: 'Lie on your belly with a firm pillow under your chest. Breathe in through your nose, down to your belly. Breathe out slowly and let your hips sink.',
    cautions: SETTLE_CAUTION,
    stopIf: 'Stop if your back pinches. Go back to the low prop.',
  },
  'extension:1': {
    name: 'Prop on the forearms',
    how: 'Lie on your belly with your elbows under your shoulders. Lean on your forearms so that your chest comes up and your hips stay down. Hold it, then lower and rest.',
    cautions: 'Keep your neck long and your back soft. Pregnant? Ask for a way to do this standing up.',
    stopIf: 'Stop if your back hurts more with each lift.',
  },
  'extension:2': {
    name: 'Half press-up',
    how: 'Lie on your belly with your hands under your shoulders. Press up half way, elbows still bent, and let your hips stay heavy on the floor. Lower slowly and rest.',
    cautions: PRESS_CAUTION,
    stopIf: 'Stop if your back hurts more with each press, or a wrist or shoulder hurts.',
  },
  'extension:3': {
    name: 'Full press-up, hips heavy',
    how: 'Lie on your belly with your hands under your shoulders. Press up until your arms are straight, or as far as your hips can stay heavy. Breathe out at the top and lower slowly.',
    cautions: PRESS_CAUTION,
    stopIf: 'Stop if your back hurts more with each press, or a wrist or shoulder hurts.',
  },
  'unload:1': {
    name: 'Band under the thighs, feet down',
    how: 'Lie on your back, feet flat, the anchor above your knees. Lay both thighs in the band; it takes some of their weight. To get out, go slowly back the same way: weight on your feet, band off, roll to your side, rest.',
    cautions: BAND_LEGS,
    stopIf: 'Stop if your feet tingle or go cold, or the anchor moves.',
  },
  'unload:2': {
    name: 'Band under the lower legs',
    how: 'Lie on your back, the anchor above your knees. Lay one calf in the band, then the other, knees bent as on a chair. To get out, go slowly back the same way: one foot down, then the other, roll to your side, rest.',
    cautions: BAND_LEGS,
    stopIf: 'Stop if your feet tingle or go cold, or the anchor moves.',
  },
  'glide:1': {
    name: 'Nerve slider on your back',
    how: 'Lie on your back, not arched and not pressed flat. Hold the sore leg behind the thigh so that it points up. Straighten the knee to the first light pull only, then bend it again at once.',
    cautions: 'Never hold the pull or push through it. Keep your toes loose.',
    stopIf: 'Stop if tingling stays once the leg is down.',
  },
  'glide:2': {
    name: 'Nerve slider with a band',
    how: 'Put the band round the top of the sore thigh, with a light pull toward your feet. Hold the thigh up and straighten the knee to the first light pull only. Bend it again at once.',
    cautions: `Never hold the pull. ${BAND_HIP}`,
    stopIf: 'Stop if tingling stays once the leg is down.',
  },
  'open:1': {
    name: 'Rock-back, knees wide',
    how: 'Kneel on your hands and knees with your knees wide. Keep your back long and rock your hips slowly toward your heels. Come forward again before your back starts to round.',
    cautions: 'Put something soft under your knees. A small way back is enough.',
    stopIf: 'Stop if a knee or the front of your hip pinches.',
  },
  'open:2': {
    name: 'Seated press, knees wide',
    how: 'Sit tall with your feet flat and your knees wide. Press your knees out into your hands so that nothing moves. Let go fully before the next press.',
    cautions:
      'Press lightly at first and keep breathing. When that is easy, a press may last up to 10 seconds.',
    stopIf: 'Stop if your hip or groin cramps.',
  },
  'rotator:1': {
    name: 'Deep hip stretch at a wall',
    how: 'Lie on your back with your other foot on the wall, knee bent. Cross the ankle of the sore leg over that knee. Stay where you feel a mild stretch deep in your seat.',
    cautions: NEW_HIP,
    stopIf: 'Stop if groin or knee hurts, or the leg tingles.',
  },
  'rotator:2': {
    name: 'Deep hip stretch, foot to the floor',
    how: 'Lie on your back and cross the ankle of the sore leg over the other knee. Tip both legs slowly to the other side, so that the crossed foot turns to the floor. Go only as far as both shoulders stay down.',
    cautions:
      'Keep the stretch mild and do not force the twist. With an artificial hip, ask your doctor first.',
    stopIf: 'Stop if your back, groin or knee hurts, or the leg tingles.',
  },
  'rotator:3': {
    name: 'Deep hip stretch with a band',
    how: 'Put the band round the top of the sore thigh, pulling lightly outward. On your back, cross that ankle over the other knee. Stay at a mild stretch.',
    cautions: `${BAND_HIP} An artificial hip? Ask your doctor.`,
    stopIf: 'Stop if groin or knee hurts, or the leg tingles.',
  },
  'extend-hip:1': {
    name: 'Hip lift, knee bent',
    how: 'Lie on your belly with your forehead on your hands. Bend one knee, tighten that side of your seat and lift the thigh a little. Hold it, then lower slowly.',
    cautions: 'Keep both hip bones on the floor. A finger high is enough.',
    stopIf: 'Stop if your low back pinches or the thigh cramps.',
  },
  'extend-hip:2': {
    name: 'Hip lift, leg straight',
    how: 'Lie on your belly with your forehead on your hands. Tighten one side of your seat and lift that leg a little, knee straight. Hold it, then lower slowly.',
    cautions: 'Keep both hip bones on the floor. A hand high is enough.',
    stopIf: 'Stop if your low back pinches or the thigh cramps.',
  },
  'extend-hip:3': {
    name: 'Hip lift with a turn',
    how: 'Lie on your belly and lift one straight leg a little. Turn the toes slowly out and back in while the leg is up. Then lower it slowly.',
    cautions: 'The turn comes from the hip; both hip bones stay on the floor.',
    stopIf: 'Stop if your low back pinches or the thigh cramps.',
  },
  'lift:1': {
    name: 'Hip hinge, no weight',
    how: 'Stand one foot length from a wall with your back to it. Push your hips back to the wall with soft knees and a long back. Tighten your seat and stand tall again.',
    cautions: 'Begin with a small way down. Breathe out as you come up.',
    stopIf: LIFT_STOP,
  },
  'lift:2': {
    name: 'Light carry',
    how: 'Pick up a light weight with a hinge and hold it close to you. Walk slowly and tall with even steps. Put it down the same way.',
    cautions: 'Clear your path first. Do not hold your breath.',
    stopIf: 'Stop if you lean, limp or cannot stay tall.',
  },
  'lift:3': {
    name: 'Hinge at half load',
    how: 'Your coach sets half of the last load that felt good. Start with the weight at knee height, push your hips back and keep your back long. Stand tall, then put it down the same way.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
  'lift:4': {
    name: 'Hinge, step by step',
    how: 'Do the same hinge as on the rung before. The load goes up one step a week and no faster. If a step feels hard, go back to the one before.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
  'lift:5': {
    name: 'The lift you want',
    how: 'Do the lift that you and your coach have picked. Warm up with a light set first. End each set while you could still do two more.',
    cautions: LIFT_CAUTION,
    stopIf: LIFT_STOP,
  },
}

const time = (seconds: number): string => {
  if (seconds === 60) return '1 minute'
  return seconds >= 60 && seconds % 60 === 0 ? `${seconds / 60} minutes` : `${seconds} seconds`
}
const SIDE_WORDS = { none: '', sore: ' on the sore side', each: ' with each leg' } as const
const often = (times: number): string => ['', 'once', 'twice'][times] ?? `${times} times`

/** The dose in one line. `sessions` is the plan's sessions a day; the drill's own ceiling goes before it. */
export function doseLine({ dose, side }: Drill, sessions: number): string {
  const { reps, holdSeconds, easeSeconds, sets, timesADay } = dose
  const held = `${reps} times ${time(holdSeconds)}`
  const ease = reps > 1 && holdSeconds > 0 && easeSeconds > 0 ? `, ${time(easeSeconds)} of ease between` : ''
  const once =
    reps === 1 && holdSeconds > 0 ? time(holdSeconds) : holdSeconds > 0 ? held : `${reps} slow reps`
  const all = sets === 1 ? once : `${sets} sets: ${once}`
  return `${all}${SIDE_WORDS[side]}${ease}. ${capital(often(Math.min(sessions, timesADay)))} a day.`
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)

/** A drill by its id, of the house or of the practice's own ladders; null where it is neither. */
export const drillOf = (id: string): Drill | null =>
  LADDERS.flatMap(({ rungs }) => rungs).find((drill) => drill.id === id) ?? ownDrill(id)?.drill ?? null

const proseOf = (id: string): DrillProse | undefined => DRILLS[id] ?? ownDrill(id)?.prose

export const nameOfDrill = (id: string): string | undefined => proseOf(id)?.name

/** The load that the coach has named for a drill, by its rung or else by its ladder; null where none is. */
export const loadOf = ({ id }: Drill, loads: Readonly<Record<string, string>>): string | null =>
  loads[id] ?? loads[id.split(':')[0]!] ?? null

/**
 * One drill as a client reads it, in lines. A drill that has no words anywhere throws, since a drill must not be shown
 * without its stop rule. `load`: the coach's, in words.
 */
export function drillText(
  drill: Drill,
  sessions: number,
  load: string | null = null,
  prose = proseOf(drill.id),
): string {
  if (prose === undefined) throw new Error(`drill ${drill.id} has no words`)
  const kit = drill.kit.map((id) => (KIT as Record<string, string>)[id] ?? id).join(', ')
  const needs = drill.needs.filter((need) => need !== 'coach-load' || !load).map((need) => NEED_LINES[need])
  const lines = [
    prose.name,
    doseLine(drill, sessions),
    kit && `You need ${kit}.`,
    load && `Load: ${load}.`,
    ...needs,
  ]
  return [...lines, prose.how, prose.cautions, prose.stopIf].filter(Boolean).join('\n')
}
