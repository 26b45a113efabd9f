// The view made straight by the edge of a round piece: seen at a slant a circle is an ellipse, and the plane of
// the piece is stretched back until it is a circle again. The perspective within the piece is left as it is: a
// photograph from twice the piece's width away has a percent of it.

import { RoundwrightError } from "@roundwright/numerics"
import { fitEllipse } from "./ellipse.ts"
import { median } from "./even.ts"
import type { GreyPicture, Point } from "./grey.ts"
import type { Homography } from "./homography.ts"
import { reachRound } from "./outline.ts"
import { findSilhouette } from "./silhouette.ts"
import { straighten } from "./straighten.ts"
import type { View } from "./view.ts"

/** Edge points farther off than this many median distances are frays, loops or a neighbour. */
const farOff = 3
/** Flatter than this no ring could be counted. */
const flattest = 0.35

/** @throws RoundwrightError `no-piece`, `too-slanted`, what `fitEllipse` throws */
export function roundView(working: GreyPicture): View {
  const { width, height } = working
  const silhouette = findSilhouette(working)
  const reach = reachRound(silhouette, width, height, silhouette.centroid)
  const edge: Point[] = [...reach].flatMap((r, i) => {
    const angle = (2 * Math.PI * i) / reach.length
    const { x, y } = silhouette.centroid
    return r > 0 ? [{ x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) }] : []
  })
  const first = fitEllipse(edge)
  const off = first.residualsPx.map(Math.abs)
  const limit = farOff * Math.max(0.5, median(off))
  const { centre, longPx, shortPx, angle } = fitEllipse(edge.filter((_, i) => off[i]! <= limit))
  const flat = shortPx / longPx
  if (flat < flattest)
    throw new RoundwrightError("too-slanted", "The piece is seen too much from the side.", {
      hint: "Take the picture from farther above, or give four corners.",
      numbers: { flat },
    })
  const toWorking = squeezed(centre, angle, flat)
  return {
    by: "round edge",
    picture: straighten(working, toWorking, width, height),
    toWorking,
    flattened: flat,
  }
}

/** Squeezes across a direction, about a centre: a circle becomes an ellipse whose longer axis lies that way. */
export function squeezed(centre: Point, angle: number, flat: number): Homography {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const [a, b, d] = [c * c + flat * s * s, (1 - flat) * c * s, s * s + flat * c * c]
  return [
    a,
    b,
    centre.x - a * centre.x - b * centre.y,
    b,
    d,
    centre.y - b * centre.x - d * centre.y,
    0,
    0,
    1,
  ]
}
