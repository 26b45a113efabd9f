// Rounds whose words do not tell where or how often they are worked: the place is the next natural unit of the round
// below, the number of repeats that of the rounds before; they are counted, and it is told.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"

const sixPetals = `Terms: US
Ch 5, join to form a ring.
Rnd 1: Ch 3, 11 dc in ring; join.
Rnd 2: Ch 1, sc in same st, *ch 3, skip next dc, sc in next dc; rep from * around, ending ch 3; join.
Rnd 3: Sl st in next sp, (sc, hdc, 3 dc, hdc, sc) in each ch-3 sp around; join.
`
const square = `Terms: US
Ch 4, join to form a ring.
Rnd 1: Ch 3, 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice more; join.
`
const pairs = `Terms: US
Magic ring.
Rnd 1: 8 sc in ring; join.
Rnd 2: Ch 3, dc in same st, 2 dc in each st around; join. (16 dc)
`

/** Stitches of the last rounds. */
function counts(text: string, last: number): (number | null)[] {
  return readPattern(text)
    .rounds.slice(-last)
    .map(({ counted }) => counted?.stitches ?? null)
}

function told(text: string, round: number): boolean {
  return readPattern(text).problems.some((problem) => problem.round === round)
}

describe("a place called by a word nobody knows", () => {
  it.each([
    ["(Cluster in the cradle of next pair, ch 3) 8 times; join.", pairs, 8],
    ["Ch 1, *sc in the seam of the next two petals, ch 5; rep from * around; join.", sixPetals, 6],
    ["*(3 dc, ch 2, 3 dc) in next nook, ch 1; rep from * around; join.", square, 24],
    [
      "*(3 dc, ch 2, 3 dc) into the dimple of the next frill, ch 1; rep from * around; join.",
      square,
      24,
    ],
    ["(3 dc, ch 2, 3 dc, ch 1) in every cranny; join.", square, 24],
  ])("is the next unit: %s", (words, before, stitches) => {
    const round = before === square ? 2 : before === pairs ? 3 : 4
    const text = `${before}Rnd ${round}: ${words}`
    expect(counts(text, 1)).toEqual([stitches])
    expect(told(text, round)).toBe(true)
  })
})

describe("a round on a ground that is not known", () => {
  it.each([
    ["*3 dc in next ch-3 sp, ch 2, 3 dc in same sp; rep from * 7 more times; join.", 48],
    ["*(3 dc, ch 2, 3 dc) in next ch-3 sp; rep from * around; join.", 48],
    ["(Sc, ch 4) in each of 8 loops; join.", 8],
  ])("is counted by its own words and the fold: %s", (words, stitches) => {
    const text = `${pairs}Rnd 3: Work as the picture shows.\nRnd 4: ${words}`
    expect(counts(text, 2)).toEqual([null, stitches])
  })

  it("takes a space that is not there for one that is named otherwise, and tells it", () => {
    const text = `${pairs}Rnd 3: *Ch 4, skip 1 dc, sc in next ch-2 sp; rep from * 7 more times; join.`
    expect(counts(text, 1)).toEqual([8])
    expect(told(text, 3)).toBe(true)
  })
})

describe("the same in every one of them", () => {
  it.each([
    "*(3 dc, ch 2, 3 dc) into the next space, ch 1; repeat the same in every space; join.",
    "(3 dc, ch 2, 3 dc) into the first space, ch 1; repeat the same in every gap; join.",
    "(3 dc, ch 2, 3 dc) into the next corner, ch 1; continue in this manner; join.",
    "(3 dc, ch 2, 3 dc) into the next corner, ch 1; repeat for all corners; join.",
    "(3 dc, ch 2, 3 dc) into the next corner space, ch 1; carry on like this all the way round; join.",
    "(3 dc, ch 2, 3 dc) into the corner sp, ch 1; repeat this three more times; join.",
    "(3 dc, ch 2, 3 dc) in first sp, ch 1. Do this in each of the other three spaces. Join.",
  ])("goes round: %s", (words) => {
    expect(counts(`${square}Rnd 2: ${words}`, 1)).toEqual([24])
  })
})

describe("a first round whose place is not there", () => {
  it.each([
    ["Ch 4, miss 3 ch, 11 dc in next ch; join.", 12],
    ["Begin with 3 ch. Into the first of the ch make 6 sc; join.", 6],
    ["Ch 3 and then do 9 dc in next loop; join.", 10],
  ])("is worked into the centre: %s", (words, stitches) => {
    const text = `Terms: US\nRnd 1: ${words}\nRnd 2: 2 dc in each st around.`
    expect([stitches - 1, stitches]).toContain(counts(text, 2)[0])
    expect(told(text, 1)).toBe(true)
  })
})
