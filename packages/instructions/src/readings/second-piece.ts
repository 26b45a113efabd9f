// Several pieces in one text: the first of them is read.

import type { Round } from "@roundwright/motif"
import type { RoundTree } from "../base/tree.ts"
import { plural } from "../base/wording.ts"
import type { RoundText } from "../text/layout.ts"
import { readFoundation } from "./foundation.ts"
import type { Located, OneRound } from "./list-rounds.ts"

/** A round 1 with a centre of its own after other rounds: another piece in the same text. */
export function beginsAnew(one: OneRound, tree: RoundTree, rounds: readonly Round[]): boolean {
  return (
    one.number === 1 &&
    one.nth === 0 &&
    rounds.length > 0 &&
    readFoundation(tree.steps, false).stated
  )
}

/** Tells it, in place of the number that comes again. */
export function tellSecondPiece(findings: Located[], text: RoundText, left: number): void {
  const known = findings.findIndex(
    (finding) => finding.code === "round-number-again" && finding.start === text.label.start,
  )
  if (known >= 0) findings.splice(known, 1)
  findings.push({
    severity: "warning",
    code: "second-piece",
    start: text.label.start,
    end: Math.min(text.label.end, text.end),
    round: null,
    message: `A second piece begins here; it and all after it (${plural(left, "round", "rounds")}) are not read.`,
    hint: "Put each piece in a text of its own.",
  })
}
