/** Carries an act out; gives `Done`, or throws with the sentence that says what to do. */
export async function act(action) {
  const answer = await fetch('act', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(action),
  })
  const said = await answer
    .json()
    .catch(() => ({ ok: false, problem: 'The rehearsal gave no answer: is it still running?' }))
  if (said.ok) return said
  throw new Error(said.problem)
}

export async function get(path) {
  const answer = await fetch(path)
  if (!answer.ok) throw new Error('This is not to be had any more.')
  return answer.json()
}

/** Follows the rehearsal as one of its people; gives what ends it. */
export function follow(who, { snapshot, change, lost }) {
  const stream = new EventSource(who === null ? 'events' : `events?who=${encodeURIComponent(who)}`)
  stream.addEventListener('snapshot', (event) => snapshot(JSON.parse(event.data)))
  stream.addEventListener('change', (event) => change(JSON.parse(event.data)))
  stream.addEventListener('error', () => lost(stream.readyState === EventSource.CLOSED))
  return () => stream.close()
}
