// The plan of one worked round as the search sees it: half a side, from its middle out to the corner, and
// what mirrors it. Everything the inverse proposes is such a plan first and a round of a motif after.
//
// A place ("foot") is something of the round below that is worked into: a stitch's top or a run of
// chains. Feet run from the middle of a side (0) to the corner (last). A mirror line may pass through
// a foot (`midOn`, `cornerOn`) or between two; k corners give 2k such halves.

/** How a half is mirrored. Feet of a whole side: 2 x feet - midOn - cornerOn. */
export interface HalfShape {
  readonly midOn: boolean
  readonly cornerOn: boolean
}

/**
 * One round over half a side.
 * `tops[i]` is the number of tops worked into foot i (the whole foot, both sides of a mirror line).
 * `heights` names the stitch of every top of the half, from the middle out, as an index into the
 * search's list of stitches; a top on a mirror line is listed once.
 * `cornerChains` chains lie on the corner line, between the two halves of its group.
 */
export interface HalfPlan {
  readonly tops: readonly number[]
  readonly heights: readonly number[]
  readonly cornerChains: number
}

/** Tops of the half: those of a foot on a mirror line count half, a top on the line itself as one. */
export function topsOfHalf(shape: HalfShape, tops: readonly number[]): number {
  let sum = 0
  tops.forEach((count, i) => {
    const shared = (i === 0 && shape.midOn) || (i === tops.length - 1 && shape.cornerOn)
    sum += shared ? Math.ceil(count / 2) : count
  })
  return sum
}

/** The mirror lines of the new edge: through a top or a chain space, or between two tops. */
export function shapeAfter(shape: HalfShape, plan: HalfPlan): HalfShape {
  const last = plan.tops.length - 1
  return {
    midOn: shape.midOn && plan.tops[0]! % 2 === 1,
    cornerOn: plan.cornerChains > 0 || (shape.cornerOn && plan.tops[last]! % 2 === 1),
  }
}

/** Feet of the half that divide a side of `feet` places, for a corner on or between places. */
export function halfOf(feet: number, cornerOn: boolean): HalfShape & { readonly feet: number } {
  const midOn = (feet + (cornerOn ? 1 : 0)) % 2 === 1
  return { midOn, cornerOn, feet: (feet + (midOn ? 1 : 0) + (cornerOn ? 1 : 0)) / 2 }
}
