// One motif of several in a picture, by a tap on it: the part that stands out from the ground where the tap is, with a
// little ground about it, is the box that is measured.

import { RoundwrightError } from "@roundwright/numerics"
import { type Box, type GreyPicture, type Point, rescaled, shrink } from "./grey.ts"
import { parts } from "./mask.ts"
import { standingOut } from "./silhouette.ts"

/** Ground left about the motif, of its longer side. */
const margin = 0.08
/** A tap this far from the middle of what it hit, of its size, hit a group of motifs that hang together. */
const offMiddle = 0.3
/** Smaller parts than this share of the picture are dust. */
const dust = 0.002
const workingSide = 640

/** @param tap in pixels of the picture @throws RoundwrightError `tap-outside`, `tap-on-ground`, `tap-joined` */
export function boxAtTap(picture: GreyPicture, tap: Point): Box {
  if (!(tap.x >= -0.5 && tap.y >= -0.5 && tap.x <= picture.width && tap.y <= picture.height))
    throw new RoundwrightError(
      "tap-outside",
      `The tap at ${Math.round(tap.x)}, ${Math.round(tap.y)} lies outside the picture of ${picture.width} x ${picture.height} pixels.`,
      { hint: "Give x and y of the middle of a motif, in pixels of the picture." },
    )
  const { picture: small, scale } = shrink(picture, workingSide)
  const at = rescaled(tap, scale)
  const { width, height } = small
  const found = parts(standingOut(small).mask, width, height).filter(
    ({ size }) => size >= dust * width * height,
  )
  const hit = found.find(
    (one) => one.left <= at.x && at.x <= one.right && one.top <= at.y && at.y <= one.bottom,
  )
  if (!hit)
    throw new RoundwrightError("tap-on-ground", "There is no motif where the picture was tapped.", {
      hint: "Tap the middle of a motif, or give a box round it.",
    })
  const [w, h] = [hit.right - hit.left + 1, hit.bottom - hit.top + 1]
  const [dx, dy] = [at.x - (hit.left + hit.right) / 2, at.y - (hit.top + hit.bottom) / 2]
  if (Math.abs(dx) > offMiddle * w || Math.abs(dy) > offMiddle * h)
    throw new RoundwrightError(
      "tap-joined",
      "What was tapped hangs together with more, far to one side of the tap.",
      { hint: "Motifs that are joined need a box round one of them." },
    )
  const room = margin * Math.max(w, h)
  const [left, top] = [Math.max(0, hit.left - room), Math.max(0, hit.top - room)]
  return {
    x: left / scale,
    y: top / scale,
    width: (Math.min(width, hit.right + 1 + room) - left) / scale,
    height: (Math.min(height, hit.bottom + 1 + room) - top) / scale,
  }
}
