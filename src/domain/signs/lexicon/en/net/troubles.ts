import type { NetSource } from '../../shape.ts'
import { above } from './troubles-above.ts'
import { around } from './troubles-around.ts'
import { below } from './troubles-below.ts'

/** What befalls: the words that tell of trouble, and the ordinary functions that count where they fail. */
export const troubles: NetSource['words'] = { ...below, ...above, ...around }
