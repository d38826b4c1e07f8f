/**
 * Which words and rules read a reply; kept beside every stored reading, so that a later one can be compared.
 * Raised with every change of the words or of how they are read.
 */
export const LEXICON_VERSION = '2'
