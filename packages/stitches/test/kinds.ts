// Any stitch kind, for properties that must hold for all of them.

import fc from "fast-check"
import type { StitchKind } from "../src/index.ts"
import * as stitches from "../src/index.ts"

/** Any kind the model can hold: post and loops exclude one another in work. */
export const anyKind: fc.Arbitrary<StitchKind> = fc
  .record({
    basic: fc.constantFrom(...stitches.basicStitches),
    form: fc.constantFrom(
      {},
      { post: "front" as const },
      { post: "back" as const },
      { loops: "front" as const },
      { loops: "back" as const },
      { loops: "third" as const },
    ),
    gathered: fc.option(
      fc.record({
        how: fc.constantFrom(
          "together" as const,
          "cluster" as const,
          "puff" as const,
          "bobble" as const,
          "popcorn" as const,
        ),
        legs: fc.integer({ min: 2, max: 12 }),
      }),
      { nil: undefined },
    ),
  })
  .map(({ basic, form, gathered }) =>
    stitches.kind(basic, { ...form, ...(gathered === undefined ? {} : { gathered }) }),
  )
