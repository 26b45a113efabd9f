// `roundwright square FILE`: turns the last round of a pattern into k straight sides.

import { capitalised, examinePattern, formatLength, verdictWord } from "@roundwright/assessment"
import {
  cornerTable,
  type PublishedProposal,
  publishProposal,
  readStitchList,
  squareCircle,
} from "@roundwright/shaping"
import { readText } from "./files.ts"
import { heightsTable } from "./heights-table.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface SquareRequest {
  readonly file: string | undefined
  readonly corners: number
  readonly rounds: number
  readonly stitches: string
  readonly json: boolean
}

/** @throws RoundwrightError for options that make no sense; the caller prints it */
export function runSquare(request: SquareRequest, around: Surroundings): number {
  if (request.file === undefined) {
    around.err("roundwright square: name the pattern file whose last round is to be squared.\n")
    return 2
  }
  const read = readText(around.cwd, request.file)
  if ("fault" in read) {
    around.err(`roundwright square: ${read.fault}\n`)
    return 2
  }
  const { result, reading, gauge } = examinePattern(read.text)
  const error = result.problems.find((problem) => problem.severity === "error")
  if (!gauge || reading.motif.rounds.length === 0 || error) {
    const why = error ? ` Line ${error.line}: ${error.message}` : ""
    around.err(
      `${wrap(`roundwright square: the pattern could not be read to its end.${why}`, 80)}\n`,
    )
    return 2
  }
  const found = squareCircle(reading.motif, gauge, {
    corners: request.corners,
    rounds: request.rounds,
    stitches: readStitchList(request.stitches, reading.terms),
  })
  const proposals = found.map((proposal) => publishProposal(proposal, read.text, gauge))
  if (request.json) around.out(`${JSON.stringify({ proposals }, null, 2)}\n`)
  else {
    const heights = heightsTable(cornerTable(found[0]!, gauge), found[0]!.corners, gauge)
    around.out([...printProposals(proposals, request.corners), "", ...heights, ""].join("\n"))
  }
  return proposals[0]!.verdict === "flat" ? 0 : 1
}

function printProposals(proposals: readonly PublishedProposal[], corners: number): string[] {
  const best = proposals[0]!
  const lines = [
    wrap(
      `The best of ${proposals.length}: ${verdictWord(best.verdict)}, ${corners} sides of ${formatLength(best.sideMm)}, ${bowWords(best)}, corners of ${Math.round(best.cornerAngleDeg)}°.`,
      80,
    ),
  ]
  const shared = best.notes.filter((note) => proposals.every(({ notes }) => notes.includes(note)))
  proposals.forEach((proposal, index) => {
    const facts = [
      `sides of ${formatLength(proposal.sideMm)}`,
      bowWords(proposal),
      `corners of ${Math.round(proposal.cornerAngleDeg)}°`,
      `edge ${fullnessWords(proposal.fullness)}`,
      `worked in ${proposal.stitchKinds.join(", ")}`,
    ]
    const head = `${index + 1}. ${capitalised(verdictWord(proposal.verdict))}: ${facts.join("; ")}.`
    lines.push("", wrap(head, 80, "", "   "))
    for (const round of proposal.rounds) lines.push(wrap(round, 80, "   ", "     "))
    const own = proposal.notes.filter((note) => !shared.includes(note))
    for (const note of [...proposal.changes, ...own]) lines.push(wrap(note, 80, "   - ", "     "))
  })
  if (shared.length > 0)
    lines.push("", "To know", ...shared.map((note) => wrap(note, 80, "  - ", "    ")))
  return lines
}

/** Straight as far as a ruler tells; else which way the middle of the side departs, and by how much. */
function bowWords({ bowMm, sideMm }: PublishedProposal): string {
  const way = bowMm > 0 ? "outward" : "inward"
  const share = ((100 * Math.abs(bowMm)) / sideMm).toFixed(1)
  return Math.abs(bowMm) < leastBowMm
    ? "straight sides"
    : `sides bowed ${way} by ${Math.abs(bowMm).toFixed(1)} mm (${share} %)`
}

/** Below the thickness of a strand nobody sees a bow. */
const leastBowMm = 0.5

function fullnessWords(fullness: number): string {
  const off = Math.round(100 * (fullness - 1))
  if (off === 0) return "just long enough"
  return `${Math.abs(off)} % too ${off > 0 ? "long" : "short"}, which the yarn ${Math.abs(off) <= 7 ? "takes up" : "must be blocked into"}`
}
