/** A ladder of a practice's own: the second rung with a band. */
export const BALANCE = `id: balance
number: 9
name: Stand steady
rungs:
  - name: Stand on one leg
    how: Hold on to a chair and lift one foot. Keep your hips level and breathe.
    dose: { reps: 3, hold: 20, ease: 10, times: 2 }
    kit: [a firm chair]
    side: each
    cautions: Stand near a wall.
    stop-if: Stop if the leg gives way.
  - name: Banded step
    how: Loop the band round your ankles. Step to the side and back.
    dose: { reps: 8, sets: 2, times: 1 }
    kit: [band]
    needs: [anchor-check]
    least-days: 7
    cautions: Small steps first.
    stop-if: Stop if your back hurts more.
`
