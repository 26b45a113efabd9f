// Gauges fitted to real pieces: one measured round left out and predicted, on published pieces and on pieces
// worked by hands drawn from the published spreads.

import { examinePattern } from "@roundwright/assessment"
import { buildDisc } from "@roundwright/motif"
import { seededRandom } from "@roundwright/numerics"
import { fitGauge } from "@roundwright/picture"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom, type PieceSize, sizeOf } from "@roundwright/stitches"
import { caseText, loadCases } from "./cases.ts"

export interface LeftOut {
  /** (predicted - measured) / measured, and the same in standard errors told. */
  readonly error: number
  readonly standardErrors: number
}

/** Every measured size of published pieces with three or more, left out in turn. */
export function leaveOutPublished(): LeftOut[] {
  return loadCases("measured-motifs")
    .concat(loadCases("flatness-outcomes"))
    .flatMap((one) => {
      const { measured } = one
      if (!measured || measured.at_rounds.length < 3) return []
      const { gauge, reading } = examinePattern(caseText(one), { lean: true })
      if (!gauge) return []
      const across = measured.what === "corner to corner" ? "corners" : "sides"
      const sizes: PieceSize[] = measured.at_rounds.map((round, i) => ({
        round,
        mm: 10 * measured.cm[i]!,
        across,
      }))
      return sizes.map((left) => {
        const others = sizes.filter((size) => size !== left)
        const fit = fitGauge(reading.motif, gauge, { sizes: others })
        const predicted = fit.sizes.find(({ round }) => round === left.round)!
        return leftOut(predicted, left.mm)
      })
    })
}

/** Discs of one or two kinds in hands drawn from the spreads, measured to 1.5 % and to half a centimetre. */
export function leaveOutDrawn(from: number, pieces: number): LeftOut[] {
  const usual = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 })
  return Array.from({ length: pieces }, (_, piece) => {
    const random = seededRandom(from + piece)
    const pick = <T>(list: readonly T[]) => list[Math.floor(random.uniform() * list.length)]!
    const kinds = pick([["dc"], ["sc"], ["dc", "sc"], ["dc", "tr"]] as const)
    const width = Math.exp(0.12 * random.normal())
    const hand = gaugeFrom({
      swatches: kinds.map((basic) => {
        const size = sizeOf({ basic }, usual, { turned: false })
        const height = Math.exp(size.ratioSpread * random.normal())
        return {
          kind: { basic },
          widthMm: size.widthMm * width,
          heightMm: size.heightMm * width * height,
          worked: "rounds" as const,
        }
      }),
    })
    const rounds = Array.from({ length: 5 + Math.floor(3 * random.uniform()) }, (_, i) => {
      const basic = kinds[i % kinds.length]!
      return { basic, size: sizeOf({ basic }, usual, { turned: false }) }
    })
    let radius = 0
    const disc = buildDisc(
      { basic: "dc" },
      rounds.map(({ size }) => {
        radius += size.heightMm
        return 6 * Math.round((2 * Math.PI * radius) / size.widthMm / 6)
      }),
    )
    const motif = {
      ...disc,
      rounds: disc.rounds.map((round, i) => ({
        ...round,
        elements: round.elements.map((element) =>
          element.type === "stitch"
            ? { ...element, kind: { ...element.kind, basic: rounds[i]!.basic } }
            : element,
        ),
      })),
    }
    const sizes: PieceSize[] = layOut(motif, hand, { inSpace: false }).acrossAfterRound.map(
      (mm, i) => ({
        round: i + 1,
        mm: mm * (1 + 0.015 * random.normal()) + 1.44 * random.normal(),
        across: "sides",
      }),
    )
    const left = 1 + Math.floor((sizes.length - 1) * random.uniform())
    const fit = fitGauge(motif, usual, { sizes: sizes.filter((_, i) => i !== left) })
    return leftOut(fit.sizes[left]!, sizes[left]!.mm)
  })
}

function leftOut(predicted: { mm: number; errorMm: number }, mm: number): LeftOut {
  return {
    error: (predicted.mm - mm) / mm,
    standardErrors: (predicted.mm - mm) / predicted.errorMm,
  }
}
