import { feeling } from './feeling.ts'
import { places } from './places.ts'
import { sessions } from './sessions.ts'

export const cuesOfSlots = { ...places, ...sessions, ...feeling }
