import fc from 'fast-check'

/** A law is tried on the same cases everywhere, so that what passes here passes elsewhere; EBBLINE_LONG=all draws others. */
if (process.env.EBBLINE_LONG !== 'all') fc.configureGlobal({ seed: 20_260_302 })
