// A motif laid out: the flat shape, the shape on the table, and what a maker wants to know of both.

import { findCorners, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { buildNet, type NetOptions } from "./build-net.ts"
import { type FlatShape, layOutFlat } from "./lay-out-flat.ts"
import { layOutInSpace, type SpaceOptions, type SpaceShape } from "./lay-out-in-space.ts"
import { type Lift, measureLift } from "./lift-and-waves.ts"
import { type Material, usualMaterial } from "./material.ts"
import { measureOutline, type Outline } from "./measure-outline.ts"
import { measureSkew } from "./measure-skew.ts"
import { type ChainSlack, measureSlack } from "./measure-yarn.ts"
import type { Net } from "./net.ts"
import { type RoundMisfit, roundMisfits } from "./round-misfits.ts"
import { judgeShape, type ShapeVerdict } from "./verdict.ts"

export interface LayOutOptions extends NetOptions {
  readonly material?: Material
  /**
   * Whether the shape in space is found: true by default; false leaves it out, for sizes and verdict, which need it not, much
   * faster; `off` finds it for a piece that is judged not to lie flat.
   */
  readonly inSpace?: boolean | "off"
  readonly space?: SpaceOptions
}

/** Lengths in mm, or in widths of one sc when the gauge is not absolute. */
export interface LaidOutShape extends ShapeVerdict {
  readonly net: Net
  /** Outline of the last round, pressed flat. */
  readonly outline: Outline
  /** Side to side after each round, measured in the finished piece. */
  readonly acrossAfterRound: readonly number[]
  /** Null when the shape in space was left out. */
  readonly lift: Lift | null
  /** Turn of the last corners against the first, degrees, positive counterclockwise; null without corners. */
  readonly skewDeg: number | null
  readonly slack: readonly ChainSlack[]
  readonly flat: FlatShape
  readonly space: SpaceShape | null
  /** mm in one unit of the lengths above: 1 for an absolute gauge. The shapes' coordinates are always in mm. */
  readonly mmPerUnit: number
}

/** Rounds that double reach stretches of ten; where more is asked for the rounds lie across one another. */
const tangled = 30

/** @throws RoundwrightError `broken-motif`, `empty-round`, `net-too-large`, `not-positive`, `tangled` */
export function layOut(motif: Motif, gauge: Gauge, options: LayOutOptions = {}): LaidOutShape {
  const material = options.material ?? usualMaterial
  const net = buildNet(motif, gauge, options)
  const flat = layOutFlat(net, { material })
  const corners = findCorners(motif)
  const outlines = net.edges.map((_, round) =>
    measureOutline(net, flat.xy, 2, round, corners[round]),
  )
  const misfits = roundMisfits(net, flat.xy)
  const unit = net.mmPerUnit
  const last = outlines.at(-1)!
  const judged = judgeShape(motif, gauge, misfits, options.heightFactor)
  requireUntangled(outlines, misfits)
  const { inSpace = true } = options
  const space =
    inSpace === true || (inSpace === "off" && judged.verdict !== "flat")
      ? layOutInSpace(net, flat.xy, { material, repeat: flat.repeat, ...options.space })
      : null
  const lift = space === null ? null : measureLift(net, space.xyz)
  return {
    ...judged,
    net,
    outline: inUnits(last, unit),
    acrossAfterRound: outlines.map((outline) => outline.acrossMm / unit),
    lift: lift === null ? null : liftInUnits(lift, unit),
    skewDeg: measureSkew(net, flat.xy, corners),
    slack: measureSlack(net, flat.xy, 2),
    flat,
    space,
    mmPerUnit: unit,
  }
}

function requireUntangled(outlines: readonly Outline[], misfits: readonly RoundMisfit[]): void {
  const turnedOver = outlines.findIndex(({ acrossMm }) => !(acrossMm > 0))
  const wildest = misfits.findIndex(
    ({ fullness }) => !(fullness < tangled && fullness > 1 / tangled),
  )
  if (turnedOver < 0 && wildest < 0) return
  throw new RoundwrightError("tangled", "The rounds come to lie across one another.", {
    hint: "Check that every round goes around the one before: the counts of some round may be far off.",
    numbers: { round: 1 + (turnedOver < 0 ? wildest : turnedOver) },
  })
}

function inUnits(outline: Outline, unit: number): Outline {
  return {
    ...outline,
    sideReachMm: outline.sideReachMm / unit,
    cornerReachMm: outline.cornerReachMm / unit,
    sideMm: outline.sideMm / unit,
    acrossMm: outline.acrossMm / unit,
    bowMm: outline.bowMm / unit,
  }
}

function liftInUnits(lift: Lift, unit: number): Lift {
  return {
    ...lift,
    liftMm: lift.liftMm / unit,
    liftByRoundMm: lift.liftByRoundMm.map((value) => value / unit),
    waveHeightMm: lift.waveHeightMm / unit,
  }
}
