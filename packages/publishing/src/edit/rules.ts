// The rules of the edit, in the order an editor goes through a pattern. Each looks at the whole text and gives its
// remarks; none knows of another.

import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"
import { abbreviationRemarks, specialStitches } from "./rules-of-abbreviations.ts"
import { chosenReadings, countsForNext, totalsWithChains } from "./rules-of-choices.ts"
import { coloursNotListed } from "./rules-of-colours.ts"
import { hookLetters, missingMaterials } from "./rules-of-materials.ts"
import { measuresInTwo } from "./rules-of-measures.ts"
import { unnumberedRounds } from "./rules-of-numbers.ts"
import { remarksOfReading } from "./rules-of-reading.ts"
import { firstChainFromHook, namedRounds } from "./rules-of-references.ts"
import { claimedSize } from "./rules-of-size.ts"
import { missingEnd, missingJoins, unsaidStarts, wrongJoins } from "./rules-of-starts.ts"
import { labelsInTwoStyles, wordsInTwoStyles, wordsTwice } from "./rules-of-style.ts"
import { mixedTerms, termsNotStated } from "./rules-of-terms.ts"
import {
  missingTotals,
  totalsInTwoStyles,
  totalsNamingTwice,
  wrongTotals,
} from "./rules-of-totals.ts"
import { totalsOnTrust } from "./rules-of-trust.ts"
import { unmetTotals } from "./rules-of-unread-totals.ts"
import { spacesNamed, unlikeRepeats } from "./rules-of-work.ts"

export type Rule = (manuscript: Manuscript) => Remark[]

export const rules: readonly Rule[] = [
  unnumberedRounds,
  spacesNamed,
  remarksOfReading,
  wrongTotals,
  totalsWithChains,
  missingTotals,
  totalsNamingTwice,
  unmetTotals,
  totalsOnTrust,
  unlikeRepeats,
  namedRounds,
  firstChainFromHook,
  chosenReadings,
  countsForNext,
  wrongJoins,
  unsaidStarts,
  missingJoins,
  missingEnd,
  mixedTerms,
  termsNotStated,
  abbreviationRemarks,
  specialStitches,
  missingMaterials,
  hookLetters,
  claimedSize,
  measuresInTwo,
  coloursNotListed,
  totalsInTwoStyles,
  labelsInTwoStyles,
  wordsInTwoStyles,
  wordsTwice,
]
