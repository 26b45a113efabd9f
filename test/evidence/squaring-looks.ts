// First looks at squaring: circles cut out of published motifs, keyed before they were run, run once, and the figures
// written down for good. What is mended afterwards is mended by classes of faults; the next batch tells.

import { readFileSync } from "node:fs"

/** What is written down of one circle, and what `scoreSquaring` finds of it. */
export interface SquaringCase {
  readonly id: string
  readonly url: string
  readonly kind: string
  readonly corners: number
  readonly rounds: number
  /** Fabric of the circle's last round as it was found; null where the circle could not be read. */
  readonly fabric: string | null
  /** Null where nothing was proposed. */
  readonly idea: string | null
  readonly proposals: number
  /** Share of the circle's loops, spaces or shells that something is worked into. */
  readonly held: number | null
  readonly chainsAlongSides: boolean
  readonly chainCorner: boolean
  readonly usesTr: boolean
  /** Without tr no proposal meets the target. */
  readonly needsTr: boolean
  readonly designerUsesTr: boolean
  readonly gradedRounds: number
  readonly monotone: boolean
  readonly wordsARound: number
  /** The designer's rounds as they were keyed, without starts. */
  readonly designerWordsARound: number
  /** The same told by the writer that tells the proposals, with their starts; absent where it was not looked at. */
  readonly designerWordsAsWritten?: number
  readonly bowPercent: number | null
  readonly angleOffDeg: number | null
  readonly verdict: string | null
  readonly readsBack: boolean
  /** Two of the proposals have a round in common. */
  readonly alike: boolean
  /** Corners that a check finds in the outline of the designer's last round; absent where it was not looked at. */
  readonly designerCorners?: number | null
  readonly designerBowPercent: number | null
  readonly designerAngleOffDeg: number | null
  readonly designerVerdict: string | null
}

export interface SquaringLook {
  readonly look: number
  readonly cases: readonly SquaringCase[]
}

export function squaringLooks(): SquaringLook[] {
  const file = new URL("./squaring-looks.json", import.meta.url)
  return (JSON.parse(readFileSync(file, "utf8")) as { looks: SquaringLook[] }).looks
}

/** Lines of the table: how many of the circles with a proposal meet each of what makers do. */
export function squaringLookWords({ look, cases }: SquaringLook): string[] {
  const made = cases.filter(({ idea }) => idea !== null)
  const open = made.filter(({ kind }) => kind === "lace" || kind === "granny")
  const share = (of: readonly SquaringCase[], meets: (one: SquaringCase) => boolean) =>
    `${of.filter(meets).length} of ${of.length}`
  const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1] ?? 0
  const told = made.flatMap((one) => one.designerWordsAsWritten ?? [])
  const laid = cases.filter((one) => one.designerVerdict !== null)
  const isTrue = (one: SquaringCase) =>
    Math.abs(one.designerBowPercent ?? 9) < 2 && Math.abs(one.designerAngleOffDeg ?? 9) <= 3
  const flat = laid.filter((one) => one.designerVerdict === "flat")
  return [
    `look ${look}: ${made.length} of ${cases.length} circles with a proposal; sides bow under 2 % ${share(made, (one) => Math.abs(one.bowPercent ?? 9) < 2)}, corners within 3 degrees ${share(made, (one) => Math.abs(one.angleOffDeg ?? 9) <= 3)}, flat off the hook ${share(made, (one) => one.verdict === "flat")}`,
    `  every unit held ${share(made, (one) => one.held === 1)}, chains along the sides of lace and granny ${share(open, (one) => one.chainsAlongSides)}, chain corner ${share(made, (one) => one.chainCorner)}`,
    `  tr only where needed or the designer's ${share(made, (one) => !one.usesTr || one.needsTr || one.designerUsesTr)}, at most one graded round ${share(made, (one) => one.gradedRounds <= 1)}, heights one way ${share(made, (one) => one.monotone)}`,
    `  read back ${share(made, (one) => one.readsBack)}, no round in common ${share(made, (one) => !one.alike)}, median words a round ${median(made.map((one) => one.wordsARound))} (designers as keyed, without starts, ${median(made.map((one) => one.designerWordsARound))}${told.length > 0 ? `; told by the same writer ${median(told)}` : ""})`,
    `  the designers' own rounds: flat ${flat.length} of ${laid.length}, of these with sides and corners as straight and true ${share(flat, isTrue)}`,
  ]
}
