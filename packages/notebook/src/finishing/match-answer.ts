// A match cell: ways to a size. A compare cell: the other piece's counts or sizes stand in its lines.

import {
  comparePieces,
  factNames,
  factsTold,
  matchPiece,
  type PieceNow,
  readBlanketSize,
  readMeasured,
  readPieceNow,
  readTarget,
  type Target,
  wholeAt,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { linesOf } from "./lines.ts"
import type { Asked, FinishingAnswer } from "./types.ts"

export function matchAnswer({ pattern, text }: Asked): FinishingAnswer {
  const lines = linesOf(text)
  const to = lines.text("to")
  const now = lines.text("now")
  if (to === undefined)
    throw new RoundwrightError("no-size", "The size to match is not said.", {
      hint: "Write it such as To: 15.2 cm.",
    })
  const piece = readPieceNow(pattern, now === undefined ? undefined : readTarget(now, "Now"))
  return matchedAnswer(piece, readTarget(to, "To"), text)
}

/** The piece matched, with what the lines tell beside its sizes. */
export function matchedAnswer(piece: PieceNow, target: Target, text: string): FinishingAnswer {
  const lines = linesOf(text)
  const facts = Object.fromEntries(
    factNames.map((name) => [name, lines.text(name.replace(/-/g, " "))]),
  )
  const found = matchPiece(piece, target, factsTold(facts))
  const { text: lead, ways, causes, cause, notes } = found
  const whole = lines.text("whole")
  const told =
    whole === undefined
      ? ""
      : ` ${wholeAt(found.factor, readBlanketSize(whole).mm, target.unit).text}`
  return {
    lead: `${lead}${told}`,
    items: ways.map((way) => ({ text: way.text, rounds: way.rounds })),
    table: null,
    notes: [...(cause === null ? [] : causes.slice(0, 4).map((one) => one.text)), ...notes],
    drawing: null,
  }
}

export function compareAnswer({ pattern, text }: Asked): FinishingAnswer {
  const found = comparePieces(
    readMeasured(pattern, "The pattern"),
    readMeasured(text, "The other piece"),
  )
  const figure = (value: number | null) =>
    value === null ? "-" : String(Math.round(10 * value) / 10)
  return {
    lead: found.text,
    items: [],
    table: {
      label: "The two pieces round by round",
      head: ["Round", "Pattern", "Other", "Ratio", found.by === "sizes" ? "mm across" : "stitches"],
      rows: found.rounds.map(({ round, a, b, ratio }) => [
        String(round),
        figure(a),
        figure(b),
        ratio === null ? "-" : ratio.toFixed(2),
        round === found.partAtRound ? "here they part" : "",
      ]),
    },
    notes: [],
    drawing: null,
  }
}
