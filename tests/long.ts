/**
 * Plays of a minute or more are left out of the usual run, which must end in a quarter of an hour on two cores.
 * `EBBLINE_LONG=all npm test` plays them too.
 */
export const isShort = process.env.EBBLINE_LONG !== 'all'
export const LEFT_OUT = isShort ? ' (left out, it takes minutes: EBBLINE_LONG=all npm test plays it)' : ''
