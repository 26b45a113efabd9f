// How many stitches go into each place of half a side, for an edge of a wanted length.

import type { HalfEdge } from "./half-edge.ts"
import type { Palette } from "./palette.ts"
import { topsOfHalf } from "./plan.ts"

/** More than three stitches in one place along a side is a shell, not an increase. */
export const mostInPlace = 3

/** Tops per place whose edge comes nearest to the wanted length, from below and from above, in several spreads. */
export function spreads(
  edge: HalfEdge,
  palette: Palette,
  firstKind: number,
  inCorner: number,
  chains: number,
  wantedMm: number,
): number[][] {
  const { feet, shape } = edge
  const plain = feet.map((foot) => (foot.chains > 0 ? foot.chains : 1))
  if (shape.cornerOn) plain[feet.length - 1] = inCorner
  const widthMm = palette.widthMm[firstKind]!
  const chainPart = (chains * palette.chainMm) / 2
  const missing = (wantedMm - chainPart - edgeLength(edge, plain, chains, widthMm)) / widthMm
  if (sidePlaces(edge) <= fewPlaces) return everySpread(edge, plain, missing)
  const found: number[][] = []
  const low = Math.floor(missing + 0.25)
  const high = Math.ceil(missing - 0.25)
  for (let extra = low; extra <= high; extra++) {
    if (extra === 0) found.push([...plain])
    else if (extra > 0) found.push(...withMore(edge, plain, extra))
    else found.push(...withFewer(edge, plain, -extra))
  }
  return found
}

/** So few places along half a side that every way to fill them is tried. */
const fewPlaces = 3
/** How far a spread's edge may miss the wanted length, in stitches. */
const nearEnough = 0.8

/** Every filling of the side's places that is about as long as wanted, the corner's own as it is. */
function everySpread(edge: HalfEdge, plain: readonly number[], missing: number): number[][] {
  const places = sidePlaces(edge)
  const weight = (i: number, count: number) => (i === 0 && edge.shape.midOn ? count / 2 : count)
  const found: number[][] = []
  const fill = (i: number, tops: number[], left: number): void => {
    if (i === places) {
      if (Math.abs(left) <= nearEnough && topsOfHalf(edge.shape, tops) > 0) found.push([...tops])
      return
    }
    const most = edge.feet[i]!.chains + mostInPlace
    for (let count = 0; count <= most; count++) {
      const changed = [...tops]
      changed[i] = count
      fill(i + 1, changed, left - weight(i, count) + weight(i, plain[i]!))
    }
  }
  fill(0, [...plain], missing)
  return found
}

/** Half a side of edge, mm: a top on a mirror line counts half. */
export function edgeLength(
  edge: HalfEdge,
  tops: readonly number[],
  chains: number,
  widthMm: number,
): number {
  const { shape } = edge
  let count = topsOfHalf(shape, tops)
  if (shape.midOn && tops[0]! % 2 === 1) count -= 0.5
  if (shape.cornerOn && chains === 0 && tops.at(-1)! % 2 === 1) count -= 0.5
  return count * widthMm
}

/** Places along the side that can take more, the corner's own place left out. */
function sidePlaces(edge: HalfEdge): number {
  return edge.feet.length - (edge.shape.cornerOn ? 1 : 0)
}

function withMore(edge: HalfEdge, plain: readonly number[], extra: number): number[][] {
  const places = sidePlaces(edge)
  if (places === 0) return []
  const first = edge.shape.midOn ? 1 : 0
  const orders: number[][] = []
  const outward = Array.from({ length: places }, (_, i) => i)
  orders.push([...outward].reverse())
  // One place away from the corner, as makers often set it.
  if (places > 1)
    orders.push([places - 2, ...[...outward].reverse().filter((i) => i !== places - 2)])
  // Spread evenly along the side.
  const even: number[] = []
  for (let e = 0; e < extra; e++)
    even.push(Math.min(places - 1, Math.floor(((e + 0.5) * places) / Math.max(extra, 1))))
  orders.push([...new Set(even), ...[...outward].reverse().filter((i) => !even.includes(i))])
  const found: number[][] = []
  for (const order of orders) {
    const tops = [...plain]
    let left = extra
    for (let turn = 0; turn < mostInPlace && left > 0; turn++)
      for (const i of order) {
        if (left <= 0) break
        const limit = edge.feet[i]!.chains + mostInPlace
        if (tops[i]! + 1 > limit) continue
        // A place on the mirror line gives one more half only with every second stitch.
        const onLine = i === 0 && first === 1
        if (onLine && left < 1) continue
        tops[i]! += onLine ? 2 : 1
        left -= 1
      }
    if (left <= 0) found.push(tops)
  }
  return found
}

/** Skips beside the corner, or in the middle of the side; stitches along a side are never taken from a lone place. */
function withFewer(edge: HalfEdge, plain: readonly number[], fewer: number): number[][] {
  const places = sidePlaces(edge)
  const first = edge.shape.midOn ? 1 : 0
  if (fewer > places - first) return []
  const nearCorner = Array.from({ length: fewer }, (_, i) =>
    2 * fewer <= places - first + 1 ? places - 1 - 2 * i : places - 1 - i,
  )
  const spread = Array.from({ length: fewer }, (_, i) =>
    Math.min(places - 1, first + Math.floor(((i + 0.5) * (places - first)) / fewer)),
  )
  return [nearCorner, spread].flatMap((skipped) => {
    const tops = plain.map((count, i) => (skipped.includes(i) ? Math.max(0, count - 1) : count))
    return skipped.every((i) => i >= first) && tops.some((count) => count > 0) ? [tops] : []
  })
}
