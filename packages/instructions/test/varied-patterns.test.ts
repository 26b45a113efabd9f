// Whole patterns in many styles: every round comes to what was counted by hand, and nothing is doubted.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { doubts } from "./help.ts"
import * as balls from "./varied-balls.ts"
import * as clusters from "./varied-clusters.ts"
import * as discs from "./varied-discs.ts"
import * as doilies from "./varied-doilies.ts"
import { patterns as habits } from "./varied-habits.ts"
import { patterns as lace } from "./varied-lace.ts"
import * as nets from "./varied-nets.ts"
import * as squares from "./varied-squares.ts"
import { patterns as textures } from "./varied-textures.ts"
import { patterns as ukPatterns } from "./varied-uk.ts"
import { patterns as usPatterns } from "./varied-us.ts"
import { patterns as morePatterns } from "./varied-us-more.ts"
import * as wheels from "./varied-wheels.ts"

const sets = {
  US: [
    ...usPatterns,
    ...morePatterns,
    ...habits,
    ...lace,
    ...textures,
    ...squares.us,
    ...discs.us,
    ...balls.us,
    ...wheels.us,
    ...nets.us,
    ...clusters.us,
    ...doilies.us,
  ],
  UK: [
    ...ukPatterns,
    ...squares.uk,
    ...discs.uk,
    ...balls.uk,
    ...wheels.uk,
    ...nets.uk,
    ...clusters.uk,
    ...doilies.uk,
  ],
} as const

describe.each(["US", "UK"] as const)("patterns in %s terms", (terms) => {
  it.each(sets[terms].map((pattern) => [pattern.name, pattern] as const))("%s", (_, pattern) => {
    const reading = readPattern(pattern.text)
    expect(reading.terms).toBe(terms)
    const counts = reading.rounds.map(({ counted }) =>
      counted ? `${counted.stitches}/${counted.chains}/${counted.spaces}` : "none",
    )
    expect(counts).toEqual(pattern.counts)
    expect(doubts(reading)).toEqual([])
  })
})
