// `roundwright square FILE`: turns the last round of a pattern into k straight sides.

import { examinePattern, formatFullness, formatLength, verdictWord } from "@roundwright/assessment"
import { type PublishedProposal, readStitchList, squareProposals } from "@roundwright/shaping"
import { readText } from "./files.ts"
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
  const { proposals } = squareProposals(reading.motif, gauge, read.text, {
    corners: request.corners,
    rounds: request.rounds,
    stitches: readStitchList(request.stitches, reading.terms),
  })
  if (request.json) around.out(`${JSON.stringify({ proposals }, null, 2)}\n`)
  else around.out(printProposals(proposals, request.corners, gauge.absolute))
  if (proposals.length === 0) return 2
  return proposals[0]!.verdict === "flat" ? 0 : 1
}

function printProposals(
  proposals: readonly PublishedProposal[],
  corners: number,
  absolute: boolean,
): string {
  const [best] = proposals
  if (!best) return "No way to square this round was found with these stitches.\n"
  const size = (mm: number) => (absolute ? formatLength(mm) : `${mm.toFixed(1)} sc widths`)
  const lines = [
    wrap(
      `The best of ${proposals.length}: ${verdictWord(best.verdict)}, ${corners} sides of ${size(best.sideMm)}, corners of ${Math.round(best.cornerAngleDeg)}°.`,
      80,
    ),
  ]
  proposals.forEach((proposal, index) => {
    const facts = [
      verdictWord(proposal.verdict),
      `fullness ${formatFullness(proposal.fullness)}`,
      `sides bow by ${size(proposal.bowMm)}`,
      proposal.stitchKinds.join(", "),
    ]
    lines.push("", wrap(`${index + 1}. ${facts.join("; ")}`, 80, "", "   "))
    for (const round of proposal.rounds) lines.push(wrap(round, 80, "   ", "     "))
    for (const note of [...proposal.changes, ...proposal.notes])
      lines.push(wrap(note, 80, "   - ", "     "))
  })
  return `${lines.join("\n")}\n`
}
