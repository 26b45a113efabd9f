// Sizes after a round added, left out or worked otherwise, against pieces measured before and after by their makers: the size
// before is told, the one after is found by laying the changed piece out. No constant was fitted on these.

import {
  alongOf,
  grannyText,
  inStitch,
  readPieceNow,
  scaledGauge,
  sizesOf,
  withRound,
} from "@roundwright/matching"
import type { Motif } from "@roundwright/motif"
import { hookFactor } from "@roundwright/stitches"
import { caseText, type EvidenceCase, loadCases } from "./cases.ts"

export interface Remade {
  readonly what: string
  readonly source: string
  readonly statedMm: number
  readonly foundMm: number
  readonly error: number
}

/** Rounds added and left out of pieces measured after every round. */
export function remadeSizes(): Remade[] {
  const cases = loadCases("measured-motifs")
  const several = cases.filter(({ measured }) => (measured?.cm.length ?? 0) > 1)
  return [...several.flatMap(addedAndLeftOut), ...trivets(cases), ...grannies()]
}

function addedAndLeftOut(evidence: EvidenceCase): Remade[] {
  const { measured, source } = evidence
  const by = source.by ?? source.title
  const whole = pieceAfter(evidence, evidence.rounds.length, measured!.cm.at(-1)!)
  const found: Remade[] = []
  const across = ({ motif, gauge }: { motif: Motif; gauge: Parameters<typeof sizesOf>[1] }) =>
    alongOf(sizesOf(motif, gauge), "across")
  measured!.at_rounds.forEach((round, k) => {
    const next = measured!.cm[k + 1]
    if (next === undefined || round < 2) return
    const before = pieceAfter(evidence, round, measured!.cm[k]!)
    const kind = whole.motif.rounds[round]?.elements.find(({ type }) => type === "stitch")
    const basic = kind?.type === "stitch" ? kind.kind.basic : "dc"
    const grown = withRound(before.motif, basic, before.gauge)
    if (grown)
      found.push(
        remade(
          `a round of ${basic} added to ${round}`,
          by,
          10 * next,
          across({ motif: grown, gauge: before.gauge }),
        ),
      )
    const after = pieceAfter(evidence, round + 1, next)
    const fewer = { ...after.motif, rounds: after.motif.rounds.slice(0, -1) }
    found.push(
      remade(
        `round ${round + 1} left out`,
        by,
        10 * measured!.cm[k]!,
        across({ motif: fewer, gauge: after.gauge }),
      ),
    )
  })
  return found
}

function pieceAfter(evidence: EvidenceCase, rounds: number, cm: number) {
  const text = caseText(evidence, evidence.rounds.slice(0, rounds))
  const piece = readPieceNow(text, { mm: 10 * cm, along: "across", said: true })
  return { motif: piece.motif, gauge: piece.gauge }
}

/** Two trivets of one maker, yarn and hook: the smaller tells the gauge, the larger has another start and a round more. */
function trivets(cases: readonly EvidenceCase[]): Remade[] {
  const [small, medium] = ["trivet-small", "trivet-medium"].map(
    (id) => cases.find((one) => one.id === id)!,
  )
  const told = readPieceNow(caseText(small!), {
    mm: 10 * small!.measured!.cm[0]!,
    along: "across",
    said: true,
  })
  const other = readPieceNow(caseText(medium!))
  const gauge = scaledGauge(other.gauge, told.gauge.scWidthMm / other.gauge.scWidthMm)
  const by = small!.source.by ?? ""
  return [
    remade(
      "another start and a round more",
      by,
      10 * medium!.measured!.cm[0]!,
      sizesOf(other.motif, gauge).acrossMm,
    ),
  ]
}

/** Granny squares that their makers enlarged by one round and measured before and after. */
function grannies(): Remade[] {
  const made = [
    // Six rounds in DK with 5 mm; the seventh in groups of three.
    ["a granny round added to 6", "knotyournanascrochet.com, week four", 6, 6.5, "dc", 8],
    // How many rounds it had is not told; four are taken.
    ["a round of sc added to a granny", "wwwbunnysblog.blogspot.com, 2009", 4, 5.25, "sc", 6],
  ] as const
  return made.flatMap(([what, by, rounds, inches, basic, after]) => {
    const { motif, gauge } = readPieceNow(grannyText(rounds), {
      mm: 25.4 * inches,
      along: "across",
      said: true,
    })
    const grown = withRound(motif, basic, gauge)
    return grown ? [remade(what, by, 25.4 * after, sizesOf(grown, gauge).acrossMm)] : []
  })
}

/** Pieces of one maker and yarn on several hooks; the law of the hook has seen the three discs. */
export function remadeByHook(): Remade[] {
  const pairs = [
    ["three discs of one yarn", "Craft Cove Blog", 2, 8.5, 4, 11],
    ["three discs of one yarn", "Craft Cove Blog", 4, 11, 6, 13.5],
    ["Amber Waves square", "Priscilla Hewitt", 3.5, 15.24, 4, 17.78],
    ["coaster, hooks G and H", "victorianeclectic.com", 4, 8.48, 5, 8.81],
    ["coaster, hooks H and I", "victorianeclectic.com", 5, 8.81, 5.5, 9.75],
  ] as const
  return pairs.map(([what, by, from, before, to, after]) =>
    remade(
      `${what}, ${from} mm to ${to} mm`,
      by,
      10 * after,
      10 * before * hookFactor({}, from, to),
    ),
  )
}

function remade(what: string, source: string, statedMm: number, foundMm: number): Remade {
  return { what, source, statedMm, foundMm, error: foundMm / statedMm - 1 }
}

/** The last round of a piece in another stitch, across; null where it cannot be. */
export function sizeWithLastRound(text: string, basic: "sc" | "hdc" | "dc" | "tr"): number | null {
  const { motif, gauge } = readPieceNow(text)
  const changed = inStitch(motif, motif.rounds.length - 1, basic)
  return changed && sizesOf(changed, gauge).acrossMm
}
