import { SIGN_IDS, type SignId } from '../../domain/signs/catalogue.ts'
import type { ClientFile } from '../ports.ts'

/** True where the client said no to being asked about this; told in words it counts all the same. */
export const isLeftOut = ({ consent }: ClientFile, sign: string): boolean =>
  sign === 'sexual-change' && consent?.sexualQuestions === false

/** The signs that a form or list may ask of this client. */
export const listedSigns = (file: ClientFile): SignId[] => SIGN_IDS.filter((sign) => !isLeftOut(file, sign))
