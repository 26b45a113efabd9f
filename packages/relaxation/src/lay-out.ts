// A motif laid out: the flat shape, the shape on the table, and what a maker wants to know of both.

import { findCorners, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { buildNet, type NetOptions } from "./build-net.ts"
import { type FlatShape, heldStrain, layOutFlat } from "./lay-out-flat.ts"
import { layOutInSpace, type SpaceOptions, type SpaceShape } from "./lay-out-in-space.ts"
import { gatheredFullness } from "./length-misfit.ts"
import { type Lift, measureLift } from "./lift-and-waves.ts"
import { type Material, usualMaterial } from "./material.ts"
import { measureOutline, type Outline } from "./measure-outline.ts"
import { measureSkew } from "./measure-skew.ts"
import { type ChainSlack, measureSlack } from "./measure-yarn.ts"
import type { Net } from "./net.ts"
import { roundMisfits } from "./starts-in-space.ts"
import { judgeShape, type ShapeVerdict } from "./verdict.ts"

export interface LayOutOptions extends NetOptions {
  readonly material?: Material
  /** False leaves the shape in space out: sizes only, much faster. True by default. */
  readonly inSpace?: boolean
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
const tangledStretch = 30

/** @throws RoundwrightError `broken-motif`, `empty-round`, `net-too-large`, `not-positive`, `tangled` */
export function layOut(motif: Motif, gauge: Gauge, options: LayOutOptions = {}): LaidOutShape {
  const material = options.material ?? usualMaterial
  const net = buildNet(motif, gauge, options)
  const flat = layOutFlat(net, { material })
  const space =
    options.inSpace === false
      ? null
      : layOutInSpace(net, flat.xy, { material, repeat: flat.repeat, ...options.space })
  const corners = findCorners(motif)
  const outlines = net.edges.map((_, round) =>
    measureOutline(net, flat.xy, 2, round, corners[round]),
  )
  const lift = space === null ? null : measureLift(net, space.xyz)
  const misfits = roundMisfits(net, flat.xy)
  const unit = net.mmPerUnit
  const last = outlines.at(-1)!
  const gathered = gatheredFullness(net, corners)
  const held = heldStrain(net, flat.xy, material)
  const judged = judgeShape(motif, net, { misfits, gathered, lift, heldStrain: held }, material)
  requireUntangled(outlines, judged)
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

function requireUntangled(outlines: readonly Outline[], judged: ShapeVerdict): void {
  const turnedOver = outlines.findIndex(({ acrossMm }) => !(acrossMm > 0))
  if (turnedOver < 0 && judged.blockingStretch <= tangledStretch) return
  throw new RoundwrightError("tangled", "The rounds come to lie across one another.", {
    hint: "Check that every round goes around the one before: the counts of some round may be far off.",
    numbers: { round: turnedOver < 0 ? judged.blockingRound : turnedOver + 1 },
  })
}

function inUnits(outline: Outline, unit: number): Outline {
  return {
    ...outline,
    sideReachMm: outline.sideReachMm / unit,
    cornerReachMm: outline.cornerReachMm / unit,
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
