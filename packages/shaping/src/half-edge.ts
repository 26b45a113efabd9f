// Half a side of an edge laid flat: where its places lie and which way is out. The middle of the side
// lies on the x axis, the corner on the ray at angle pi / k.

import type { HalfShape } from "./plan.ts"

export interface HalfFoot {
  readonly x: number
  readonly y: number
  /** Unit vector outwards. */
  readonly nx: number
  readonly ny: number
  /** Chains of the run, 0 for a stitch. */
  readonly chains: number
  /** Length over which the feet of several stitches can spread, mm; 0 for a stitch. */
  readonly spanMm: number
}

export interface HalfEdge {
  readonly shape: HalfShape
  /** Half the angle of a side, pi / k. */
  readonly half: number
  /** From the middle of the side to the corner. */
  readonly feet: readonly HalfFoot[]
}

/**
 * Half a side of a round edge.
 * @param widthsMm edge carried by each foot from the middle out (whole feet on the mirror lines too)
 * @param chains chains of each foot, 0 for a stitch
 */
export function circleHalf(
  shape: HalfShape,
  corners: number,
  radiusMm: number,
  widthsMm: readonly number[],
  chains: readonly number[],
): HalfEdge {
  const half = Math.PI / corners
  const share = widthsMm.map((width, i) =>
    (i === 0 && shape.midOn) || (i === widthsMm.length - 1 && shape.cornerOn) ? width / 2 : width,
  )
  const total = share.reduce((sum, width) => sum + width, 0)
  let before = 0
  const feet = share.map((width, i): HalfFoot => {
    const onMid = i === 0 && shape.midOn
    const onCorner = i === share.length - 1 && shape.cornerOn
    const along = onMid ? 0 : onCorner ? total : before + width / 2
    before += width
    const angle = (along / total) * half
    const spanMm = chains[i]! > 0 ? (radiusMm * half * widthsMm[i]!) / total : 0
    return {
      x: radiusMm * Math.cos(angle),
      y: radiusMm * Math.sin(angle),
      nx: Math.cos(angle),
      ny: Math.sin(angle),
      chains: chains[i]!,
      spanMm,
    }
  })
  return { shape, half, feet }
}

/** The same edge with every place's way out square to the line of its neighbours, mirrored at the ends. */
export function squareToEdge(edge: HalfEdge): HalfEdge {
  const { feet, shape, half } = edge
  const last = feet.length - 1
  const [cos, sin] = [Math.cos(2 * half), Math.sin(2 * half)]
  const at = (i: number): { x: number; y: number } => {
    if (i >= 0 && i <= last) return feet[i]!
    if (i < 0) {
      const image = feet[Math.min(last, shape.midOn ? 1 : 0)]!
      return { x: image.x, y: -image.y }
    }
    const { x, y } = feet[Math.max(0, shape.cornerOn ? last - 1 : last)]!
    return { x: cos * x + sin * y, y: sin * x - cos * y }
  }
  return {
    ...edge,
    feet: feet.map((foot, i) => {
      if (i === 0 && shape.midOn) return { ...foot, nx: 1, ny: 0 }
      if (i === last && shape.cornerOn) return { ...foot, nx: Math.cos(half), ny: Math.sin(half) }
      const [a, b] = [at(i - 1), at(i + 1)]
      const length = Math.hypot(b.x - a.x, b.y - a.y) || 1
      return { ...foot, nx: (b.y - a.y) / length, ny: (a.x - b.x) / length }
    }),
  }
}
