// A round that says only its number, its colour or its total ("Rnds 7-11: MC", "Round 4 - 24 stitches"): it goes
// on as the rounds before it do, one stitch more between increases, or as the last one where that fits any round.

import type { Step } from "../base/tree.ts"
import type { TreeReading, WordsOfRound } from "../grammar/read-words.ts"
import type { State } from "./ground.ts"
import { grown } from "./grow-round.ts"
import type { OneRound } from "./list-rounds.ts"

/** "Rnd 5: fasten off", or a text cut short. */
const endsWork = /^(?:cut|fasten|finish|break|bind|cast|end|weave|sew|tie|bo|fo|block)$/
/** "white", "second colour", "next colour". */
const namesColour = ["colour", "yarn", "alternate", "first", "next", "last"] as const
/** Words passed over that cost more say something of the work. */
const mostPassedOver = 1
/** Rounds that have to stand before it for it to go on from them. */
const fewestBefore = 2

/**
 * The words of such a round with what they leave unsaid; null for a round that says more, or has none to go on from.
 * @param first their likeliest tree, if there is one
 */
export function impliedRound(
  words: WordsOfRound,
  first: TreeReading | undefined,
  state: State,
  one: OneRound,
): WordsOfRound | null {
  if (state.rounds.length < fewestBefore) return null
  const tree = first ?? { steps: [], totals: [], cost: 0, gaps: [], remarks: [], names: new Map() }
  // "MC" is the main colour where a ring has long been made.
  if (tree.steps.some((step) => step.do !== "ring")) return null
  if (words.tokens.some(({ text }) => endsWork.test(text))) return null
  if (tree.remarks.some(({ code }) => code === "not-of-the-work")) return null
  if (tree.gaps.reduce((sum, gap) => sum + costOf(gap), 0) > mostPassedOver) return null
  const last = state.trees.at(-1)?.tree
  if (!last) return null
  const { start, end } = one.text.label
  const growth = { plain: 1, how: "more", implied: true } as const
  const step: Step | null = grown(last.steps, growth)
    ? { start, end, do: "as-round", growth }
    : last.steps.some(isForAnyRound)
      ? { start, end, do: "as-round" }
      : null
  if (!step) return null
  return {
    ...words,
    trees: function* () {
      yield { ...tree, steps: [step] }
    },
  }
}

/** The name of a colour says nothing of the work, whatever words it has. */
function costOf({ words, cost }: TreeReading["gaps"][number]): number {
  const named = words.every(
    ({ type, classes }) => type === "mark" || namesColour.some((one) => classes.has(one)),
  )
  return named ? 0 : cost
}

/** "dc in each st, (2 dc, ch 2, 2 dc) in each corner": worked alike whatever the round before has. */
function isForAnyRound(step: Step): boolean {
  if (step.do === "repeat") return step.times.kind === "until" || step.body.some(isForAnyRound)
  if (step.do === "pass") return true
  return (step.do === "work" || step.do === "group") && step.place?.at === "each"
}
