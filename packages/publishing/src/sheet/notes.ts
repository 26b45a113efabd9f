// Notes on how the piece is worked: which side faces, how rounds begin and end, what starting chains stand for.

import type { Motif, Round } from "@roundwright/motif"
import { basicName, type Terms } from "@roundwright/stitches"

export function notesOf(motif: Motif, terms: Terms): string[] {
  const { rounds } = motif
  return [
    turning(rounds),
    ...starts(rounds),
    ...closings(rounds, terms),
    ...passing(rounds),
  ].filter((note) => note !== "")
}

function turning(rounds: readonly Round[]): string {
  const turned = rounds.filter((round) => round.turned).map(({ number }) => number)
  if (turned.length === 0)
    return "Worked from the centre out with the right side facing; the work is not turned."
  if (turned.length === rounds.length - 1) return "The work is turned after every round."
  return `The work is turned before ${several(turned)}.`
}

function starts(rounds: readonly Round[]): string[] {
  const chains = rounds.flatMap(({ startChain }) => (startChain ? [startChain] : []))
  if (chains.length === 0) return []
  const counting = chains.filter(({ counts }) => counts)
  if (counting.length === chains.length)
    return ["The chains at the start of a round count as its first stitch and are in its total."]
  if (counting.length === 0)
    return ["The chains at the start of a round do not count as a stitch and are not in its total."]
  return [
    "The chains at the start of a round count as a stitch, and are in its total, only where the round says so.",
  ]
}

function closings(rounds: readonly Round[], terms: Terms): string[] {
  const slip = basicName("sl st", terms)
  const joined = rounds.filter(({ closing }) => closing === "joined")
  const spiral = rounds.filter(({ closing }) => closing === "spiral")
  const open = rounds.filter(({ closing }) => closing === "open")
  const join = `"Join" means a ${slip} into the first stitch of the round, or into the top of the chains that stand for it.`
  return [
    joined.length > 0 ? join : "",
    spiral.length === rounds.length
      ? "Worked in a spiral: rounds are not joined. Mark the first stitch of each."
      : spiral.length > 0
        ? `Not joined, but worked on in a spiral: ${several(spiral.map(({ number }) => number))}.`
        : "",
    open.length > 0 ? "Rows are worked to and fro." : "",
  ]
}

function passing(rounds: readonly Round[]): string[] {
  const behind = rounds.filter(({ elements }) =>
    elements.some((element) => element.type === "stitch" && element.passes === "behind"),
  )
  return behind.length > 0
    ? [
        `Hold the petals forward: ${several(behind.map(({ number }) => number))} ${behind.length === 1 ? "is" : "are"} worked behind them.`,
      ]
    : []
}

/** Not "round 3:", which would begin a round. */
function several(numbers: readonly number[]): string {
  const last = numbers.at(-1)!
  if (numbers.length === 1) return `the one numbered ${last}`
  return `those numbered ${numbers.slice(0, -1).join(", ")} and ${last}`
}
