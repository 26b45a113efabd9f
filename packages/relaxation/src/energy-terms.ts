// The terms of a net's energy, in groups of one kind; of a repeat, those that belong to it.

import { PlaneCornerGroup, SpaceCornerGroup } from "./corner-group.ts"
import { HingeGroup } from "./hinge-group.ts"
import { LeanGroup, PanelGroup } from "./lean-group.ts"
import type { Material } from "./material.ts"
import { type Net, nodePoint, type Point } from "./net.ts"
import { HoldGroup, PullGroup } from "./plain-groups.ts"
import type { PointTable } from "./point-table.ts"
import { isOfRepeat, type Repeat } from "./repeat.ts"
import { SpringGroup } from "./spring-group.ts"
import type { StrainLaw } from "./strain-law.ts"
import type { TermGroup } from "./term-group.ts"

export interface EnergyOptions {
  readonly dimensions: 2 | 3
  readonly material: Material
  /** Whether it lies on a table (z = 0) that it cannot sink through. Space only. */
  readonly table: boolean
  /** Outward force along the last edge as when pinned out, as a strain of the fabric; 0 for none. */
  readonly pull: number
  /** Corners of the fabric that must not close, from `cornersOfFabric`. */
  readonly corners?: readonly FabricCorner[]
}

/** A corner at a point between two others, counterclockwise, and its cross product at ease, mm2. */
export interface FabricCorner {
  readonly at: Point
  readonly first: Point
  readonly second: Point
  readonly areaMm2: number
}
/** Holds the centre when the edge is pulled outward, so that the pull has a middle; N/mm. */
const centreHold = 0.02

/**
 * A corner between a leg and the edge pushes back when it is closed to half its area, a lean of 60 degrees: there
 * the neighbouring stitches lie against each other.
 */
const openShare = 0.5
/** Strength of that push against the stiffness of the fabric: any share near 1 serves, it grows without bound. */
const cornerShare = 0.1
/** @param table receives the points the terms act on */
export function gatherGroups(
  net: Net,
  options: EnergyOptions,
  table: PointTable,
  repeat: Repeat | null,
): TermGroup[] {
  const { material: m } = options
  const fabric: StrainLaw = {
    pulled: 1,
    pushed: 1,
    inside: m.give > 0 ? m.giveShare : 1,
    give: m.give,
  }
  const string: StrainLaw = {
    ...fabric,
    pushed: m.slackShare,
    inside: m.give > 0 ? Math.min(m.giveShare, m.slackShare) : m.slackShare,
  }
  /** The term with its points entered and its strength scaled; none when another repeat holds it. */
  const own = <T>(
    points: readonly Point[],
    make: (ids: number[], strength: number) => T,
    strength: number,
  ): T[] => {
    const belongs = repeat === null || isOfRepeat(repeat, points)
    if (belongs === false) return []
    // A term with no node of its own to tell by is kept in all its images, each with its share.
    const share = belongs === null ? 1 / repeat!.order : 1
    return [
      make(
        points.map((point) => table.of(point)),
        strength * share,
      ),
    ]
  }
  const space = options.dimensions === 3
  const corners = (options.corners ?? []).flatMap(({ at, first, second, areaMm2 }) =>
    own(
      [at, first, second],
      ([p, a, b], stiffness) => ({ points: [p!, a!, b!] as const, areaMm2, stiffness }),
      cornerShare * m.stiffness * areaMm2,
    ),
  )
  const groups: TermGroup[] = [
    new SpringGroup(
      net.springs.flatMap(({ from, to, restMm, areaMm2, role, slackMm }) =>
        own(
          [from, to],
          ([a, b], factor) => ({
            points: [a!, b!] as const,
            restMm,
            factor,
            law:
              role !== "chain"
                ? fabric
                : slackMm === undefined
                  ? string
                  : { ...string, closed: m.give + slackMm / restMm },
          }),
          m.stiffness * areaMm2,
        ),
      ),
    ),
    new LeanGroup(
      net.leans.flatMap(({ top, left, right, restMm, areaShare }) =>
        own(
          [top, left, right],
          ([t, l, r], stiffness) => ({ points: [t!, l!, r!] as const, restMm, stiffness }),
          m.stiffness * m.leanShare * areaShare,
        ),
      ),
    ),
    new PanelGroup(
      net.panels.flatMap(({ points, restMm, areaShare }) =>
        own(
          points,
          ([a, b, c, d], stiffness) => ({
            points: [a!, b!, c!, d!] as const,
            restMm,
            stiffness,
          }),
          m.stiffness * m.leanShare * areaShare,
        ),
      ),
    ),
    space
      ? new SpaceCornerGroup(corners, openShare * openShare)
      : new PlaneCornerGroup(corners, openShare),
    new HoldGroup(
      net.rods.flatMap(({ nodes, share }) =>
        own(
          // The second difference; the plain nodes beside it tell which repeat it belongs to.
          [{ nodes, weights: [1, -2, 1] }, nodePoint(nodes[1])],
          ([point], strength) => ({ point: point!, strength }),
          m.bending * m.chainBendingShare * share,
        ),
      ),
    ),
  ]
  if (space)
    groups.push(
      new HingeGroup(
        net.hinges.flatMap(({ points, scale, areasMm4, share }) =>
          own(
            points,
            ([a, b, c, d], stiffness) => ({
              points: [a!, b!, c!, d!] as const,
              scale,
              areas: areasMm4,
              stiffness,
            }),
            m.bending * share,
          ),
        ),
      ),
    )
  // Inside the give the fabric is softer: the same strain needs less force.
  if (options.pull > 0) {
    const forcePerMm = m.stiffness * fabric.inside * options.pull
    const make = ([point]: number[], strength: number) => ({ point: point!, strength })
    groups.push(
      new PullGroup(
        net.edges
          .at(-1)!
          .nodes.flatMap((node) =>
            own([nodePoint(node)], make, forcePerMm * net.nodes[node]!.widthMm),
          ),
      ),
    )
    const middle = { nodes: net.centre, weights: net.centre.map(() => 1 / net.centre.length) }
    groups.push(new HoldGroup(own([middle], make, centreHold)))
  }
  return groups.filter(({ count }) => count > 0)
}
