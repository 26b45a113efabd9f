// One round read on rounds that are given: what its words say by themselves, on a ground that is settled. The
// writer asks it whether what it wrote reads back.

import type { Motif, Round } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { mostStepsPerText } from "../base/limits.ts"
import { layOut } from "../text/layout.ts"
import { readProse } from "../text/prose.ts"
import { readSource } from "../text/source-text.ts"
import { advance } from "./advance.ts"
import { bestStates, type State } from "./ground.ts"
import { type Located, listRounds } from "./list-rounds.ts"
import { beginning, scan } from "./read-rounds.ts"
import type { Reader } from "./reader.ts"

export interface RoundOn {
  /** Null where the words cannot be worked on these rounds. */
  readonly round: Round | null
  readonly centre: Motif["centre"]
  /** Something in it is doubted: a warning or an error. */
  readonly doubted: boolean
}

/** @param line the round with its label, such as "Rnd 3: 2 sc in each st around; join. (24 sc)" */
export function readRoundOn(below: Motif, line: string, terms: Terms, turnNext = false): RoundOn {
  const source = readSource(`Terms: ${terms}\n\n${line}\n`)
  const laid = layOut(source)
  // The line is one round, whatever of it may look like the label of another.
  const [first] = laid.rounds
  const layout = first
    ? { ...laid, rounds: [{ ...first, end: laid.clean.trimEnd().length }] }
    : laid
  const prose = readProse(layout, terms)
  const findings: Located[] = []
  const reader: Reader = { source, layout, terms, prose, budget: { stepsLeft: mostStepsPerText } }
  let states: State[] = [
    { ...beginning(prose), rounds: below.rounds, centre: below.centre, turnNext },
  ]
  for (const one of listRounds(layout, findings)) {
    const { read, fault } = scan(reader, one.text, states[0]!.locals)
    states = bestStates(states.flatMap((state) => advance(reader, state, one, read, fault)))
  }
  const best = states[0]!
  const made = best.rounds.length === below.rounds.length + 1 && best.motif === null
  return {
    round: made ? best.rounds.at(-1)! : null,
    centre: best.centre,
    doubted: [...findings, ...best.findings].some(({ severity }) => severity !== "note"),
  }
}
