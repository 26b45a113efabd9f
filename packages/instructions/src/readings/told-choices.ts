// A reading chosen out of several, told in words.

import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import type { ChoiceName, ChoiceValue } from "../work/choices.ts"

const wordsOf: Readonly<Record<string, string>> = {
  "start-chain:counts": "the starting chain counts as a stitch",
  "start-chain:does-not-count": "the starting chain does not count as a stitch",
  "start-chain:edge": "the chains at the start are part of the edge",
  "last-repeat:whole": "the last repeat is whole and the ending comes after it",
  "last-repeat:closed": "chains lead from the last stitch to the first as between the others",
  "last-repeat:in-part": "the last repeat is worked in part",
  "single-start-chain:counts": "the starting chain counts as a stitch",
  "single-start-chain:edge": "the chain at the start is part of the edge",
  "increase-inside:inside": "the number of stitches includes the increase",
  "pick-of:group": "the number of stitches names groups of so many",
  "times:in-all": "the repeat is worked that many times in all",
  "times:more": "the repeat is worked that many times more",
  "chains-are-stitches:yes": "chains are worked into like stitches",
  "chains-are-stitches:no": "chains are passed over",
  "over-earlier:below": '"over" means the stitches of the round before',
  "over-earlier:earlier": '"over" means the stitches under the round before',
  "start-chain:leg": "the starting chain and the stitch after it are worked together",
  "bare-list:apart": "the stitches before the last go one into each",
  "bare-list:together": "the whole list goes into one place",
  "several-in-several:one-each": "one stitch goes into each of the places",
  "several-unplaced:in-space": "several stitches told without a place go into the next space",
  "several-unplaced:in-one": "several stitches told without a place go into one",
  "same-space:place": '"same space" means the place of the join',
  "same-space:space": '"same space" means the next space',
  "first-place:short": "the starting chain is alone in its stitch",
  "every-second:increase": "the stitches between get one each",
  "every-second:skip": "the stitches between are passed over",
  "skipped-chains:count": "the chains skipped at the start count as a stitch",
  "skipped-chains:do-not-count": "the chains skipped at the start do not count as a stitch",
}

/** What taking that value means, as part of a sentence. */
export function choiceWords(name: ChoiceName, value: ChoiceValue): string {
  return wordsOf[`${name}:${value}`] ?? `${name} ${value}`
}

/** The note that tells a reading chosen, with what speaks for it. */
export function toldChoices(
  forced: ReadonlyMap<ChoiceName, ChoiceValue>,
  why: string,
  span: Span,
): Finding {
  const words = [...forced].map(([name, value]) => choiceWords(name, value))
  return {
    severity: "note",
    code: "reading-chosen",
    ...span,
    message: `Read so that ${words.join(" and ")}: ${why}.`,
    hint: "Say so in the text if that is meant.",
  }
}
