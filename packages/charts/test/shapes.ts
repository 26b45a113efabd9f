// Laid-out pieces for the tests of charts: motifs invented here and in the tests of relaxation.

import { buildDisc, buildPolygon, type Element, type Motif } from "@roundwright/motif"
import type { RoundwrightError } from "@roundwright/numerics"
import { type LaidOutShape, layOut } from "@roundwright/relaxation"
import { type Gauge, gaugeFrom, kind, type StitchKind } from "@roundwright/stitches"
import { chain, randomMotif, round, stitch } from "../../relaxation/test/support/motifs.ts"

export const gauge = gaugeFrom({ swatches: [{ kind: kind("dc"), widthMm: 7, heightMm: 13 }] })

export interface Piece {
  readonly motif: Motif
  readonly shape: LaidOutShape
}

export function laidOut(motif: Motif, inSpace = false, by: Gauge = gauge): Piece {
  return { motif, shape: layOut(motif, by, { inSpace }) }
}

/** Discs of dc: 2 pi 13 / 7 = 11.7 a round are flat. */
export function disc(perRound: number, rounds: number): Motif {
  return buildDisc(
    kind("dc"),
    Array.from({ length: rounds }, (_, k) => perRound * (k + 1)),
  )
}

export const square = (rounds = 4): Motif => buildPolygon(kind("sc"), 4, rounds, 2, 3)

const everyKind: readonly StitchKind[] = [
  kind("sl st"),
  kind("sc", { loops: "back" }),
  kind("hdc", { loops: "front" }),
  kind("hdc", { loops: "third" }),
  kind("dc", { post: "front" }),
  kind("dc", { post: "back" }),
  kind("esc"),
  kind("edc"),
  kind("dtr"),
  kind("quintr"),
  kind("dc", { gathered: { how: "cluster", legs: 3 } }),
  kind("hdc", { gathered: { how: "puff", legs: 4 } }),
  kind("tr", { gathered: { how: "bobble", legs: 5 } }),
  kind("dc", { gathered: { how: "popcorn", legs: 40 } }),
]

/** One of every kind, a starting chain that counts, a stitch over two places, a picot and a turned round. */
export function sampler(): Motif {
  const first: Element[] = [
    { type: "stitch", kind: kind("dc"), anchors: [{ at: "centre" }], madeOfChains: 3 },
    ...Array.from({ length: everyKind.length }, () => stitch(kind("dc"), { at: "centre" })),
  ]
  const on = (element: number) => ({ at: "stitch", round: 0, element }) as const
  // Turned: the first stitch of round 2 stands on the last of round 1.
  const second = everyKind.map((one, element) => {
    const legs = one.gathered?.legs ?? 1
    return stitch(one, ...Array.from({ length: legs }, () => on(14 - element)))
  })
  second.push(
    { type: "picot", chains: 3 },
    chain(2),
    stitch(kind("sc", { gathered: { how: "together", legs: 2 } }), on(0), on(14)),
  )
  return {
    centre: { kind: "chain-ring", chains: 6 },
    rounds: [round(1, first), round(2, second, true)],
  }
}

const shapes = new Map<number, Piece>()

/** A random motif laid out flat, the same for the same seed. */
export function anyPiece(seed: number): Piece {
  const known = shapes.get(seed) ?? laidOut(randomMotif(seed, 3))
  shapes.set(seed, known)
  return known
}

/** The same piece with its nodes somewhere else, in the plane or in space. */
export function moved({ motif, shape }: Piece, xy: Float64Array, xyz?: Float64Array): Piece {
  const space = xyz ? { xyz, energy: 0, how: shape.flat.how, from: "test", tried: [] } : shape.space
  return { motif, shape: { ...shape, flat: { ...shape.flat, xy }, space } }
}

/** The code of what the work throws. */
export function codeOf(work: () => unknown): string {
  try {
    work()
  } catch (error) {
    return (error as RoundwrightError).code ?? String(error)
  }
  return "nothing thrown"
}
