import { pairsIn } from '../pairs.ts'
import type { LexiconSource } from '../shape.ts'

const BASES = `feel drag trip slap want need get keep wee pee know say think wish see hear walk fall stand lose cough spit
  breathe shake shuffle stumble stagger cry bleed leak dribble strain push wake sweat vomit slur mumble mix move lift limp
  hurt wet mess soil miss struggle faint collapse choke gasp pant wheeze talk speak hold go come take give make cut
  hate love sit lie turn tingle`

/** "She feels nothing when she wees": how others speak of the client, as the client would say it. */
export const mine: LexiconSource['mine'] = {
  people: `
    husband, wife, partner, son, daughter, mum, mom, mother, dad, father, sister, brother, boyfriend, girlfriend, bf, gf,
    fiance, fiancee, grandad, granddad, grandpa, grandma, gran, nan, nana, granny, mummy, daddy, missus, hubby, missis, spouse,
    flatmate, housemate, roommate, lodger, bloke, lad, neighbour, neighbor, mate, friend, colleague, uncle, aunt, auntie, cousin,
    nephew, niece, grandson, granddaughter, teammate, crewmate`,
  lead: 'my, our, the, his, her, your',
  subject: 'i',
  owner: 'my',
  words: pairsIn(`
    he i, she i, he's i'm, hes i'm, she's i'm, shes i'm, he'd i'd, she'd i'd, he'll i'll, she'll i'll, his my,
    her my, hers mine, him me, himself myself, herself myself, hisself myself, themselves myself,
    themself myself, doesn't don't, doesnt dont, hasn't haven't, hasnt havent`),
  verbs: {
    ...Object.fromEntries(
      BASES.trim()
        .split(/\s+/)
        .map((verb) => [/(?:s|sh|ch|o)$/.test(verb) ? `${verb}es` : `${verb}s`, verb]),
    ),
    ...pairsIn('has have, is am, does do, cries cry'),
  },
  dropsSubject: false,
}
