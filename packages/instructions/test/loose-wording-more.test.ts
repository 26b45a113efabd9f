// More loose wording: abbreviated shaping, post and loop words, chains that count told without brackets,
// joins in every form. Counts of the last round are worked out by hand: stitches/chains/spaces.

import { describe, expect, it } from "vitest"
import { doubts, last, read } from "./help.ts"

const meshOfTwelve = [
  "12 sc in magic ring; join.",
  "ch 1, sc in same st, ch 5, *sc in next sc, ch 5; rep from * around; join.",
]

const cases: [string, ...string[]][] = [
  // Scallops over spaces: the sc of the last repeat is the one the round began with.
  [
    "36/0/0",
    ...meshOfTwelve,
    "sl st to center of ch-5 sp, ch 1, sc in same sp, *5 dc in next ch-5 sp, sc in next ch-5 sp; rep from * around; join.",
  ],
  [
    "30/18/6",
    ...meshOfTwelve,
    "sl st in ch-5 sp, ch 1, sc in same sp, *(2 dc, ch 3, 2 dc) in next ch-5 sp, sc in next ch-5 sp; rep from * around; join.",
  ],
  // "in rnd" only says which stitches are meant; "makes a petal" only what comes of them.
  ["24/0/0", "12 sc in magic ring; join.", "2 sc in each st in rnd; join."],
  [
    "60/0/0",
    ...meshOfTwelve,
    "In 1st ch-5 sp, (1 sc, 3 dc, 1 sc), makes a petal. Repeat in each ch-5 sp in rnd. Join.",
  ],
  [
    "24/0/0",
    "12 sc in magic ring; join.",
    "2 sc in next st, continue to work 2 sc in each st around.",
  ],
  [
    "18/0/0",
    "12 sc in magic ring; join.",
    "*sc in next st, inc in next st, rep from * 6 times total.",
  ],
  [
    "18/0/0",
    "12 sc in magic ring; join.",
    "[1 sc in next st, 2 sc in next st], repeat [ ] around.",
  ],
  ["18/0/0", "12 sc in magic ring; join.", "(1 sc in next st, 2 sc in next st), repeat 6 times."],
  ["18/0/0", "12 sc in magic ring; join.", "(1 sc in next st, 2 sc in next st) rep 5 more times."],
  ["18/0/0", "12 sc in magic ring; join.", "(sc 1, inc) x 6"],
  ["18/0/0", "12 sc in magic ring; join.", "(sc in next st, sc inc in next st) 6x"],
  ["18/0/0", "12 sc in magic ring; join.", "*1sc, 2sc in next st*, repeat around"],
  ["6/0/0", "12 sc in magic ring; join.", "*dec, rep from * around"],
  ["6/0/0", "12 sc in magic ring; join.", "(inv dec) x 6"],
  ["9/0/0", "12 sc in magic ring; join.", "(2 sc, dec) x 3"],
  ["12/0/0", "12 sc in magic ring; join.", "hdc in BLO of each st around"],
  ["12/0/0", "12 sc in magic ring; join.", "In BLO, sc in each st around."],
  [
    "12/0/0",
    "12 sc in magic ring; join.",
    "Working in back loop only, sc in each sc around; join.",
  ],
  ["12/0/0", "12 sc in magic ring; join.", "fpdc around the post of each st around"],
  [
    "12/0/0",
    "12 sc in magic ring; join.",
    "*1 front post dc around next st, 1 back post dc around next st; rep from * to end.",
  ],
  ["24/0/0", "12 sc in magic ring; join.", "*2 dc in next st, 2 tr in next st; rep from * around."],
  ["48/0/0", "12 sc in magic ring; join.", "4-dc shell in each st"],
  ["12/36/12", "12 sc in magic ring; join.", "*1 sc in next st, 3 ch; rep from * all around."],
  ["12/36/12", "12 sc in magic ring; join.", "1 sc in each st with ch 3 between."],
  ["6/18/6", "12 sc in magic ring; join.", "1 sc in every 2nd st, with ch 3 between."],
  ["6/18/6", "12 sc in magic ring; join.", "(dc, ch 3, sk next st) 6 times."],
  ["6/18/6", "12 sc in magic ring; join.", "(dc in next st, ch 3, sk next st) around."],
  ["6/18/6", "12 sc in magic ring; join.", "[dc in next st, ch-3, skip next st] repeat around."],
  [
    "4/12/4",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
  ],
  ["4/12/4", "12 sc in magic ring; join.", "*dc in 3rd st, ch 3; rep from * around."],
  [
    "4/12/4",
    "12 sc in magic ring; join.",
    "ch 6 (counts as dc + ch 3), skip 2 sts, *dc in next st, ch 3, skip 2 sts; rep from * 2 more times; join with sl st in 3rd ch.",
  ],
  [
    "4/12/4",
    "12 sc in magic ring; join.",
    "ch 6, sk 2, (dc, ch 3, sk 2) 3 times, sl st in 3rd ch of ch-6. (4 dc, 4 ch-3 sps)",
  ],
  [
    "20/0/0",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "5 dc in each ch-3 sp.",
  ],
  [
    "24/0/0",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "*sc in next dc, 5 dc in next sp; rep from * around.",
  ],
  [
    "24/0/0",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "*5 dc in next sp, sc in next dc; rep from * around; join.",
  ],
  [
    "24/12/4",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "(3 dc, ch 3, 3 dc) in each sp around.",
  ],
  [
    "24/12/4",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "In each sp work (3 dc, ch 3, 3 dc).",
  ],
  [
    "24/12/4",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "sl st in first ch-3 sp, (ch 3, 2 dc, ch 3, 3 dc) in same sp, (3 dc, ch 3, 3 dc) in each of next 3 ch-3 sps, join to top of ch 3.",
  ],
  [
    "24/16/8",
    "12 sc in magic ring; join.",
    "*dc in next st, ch 3, sk next 2 sts; rep from * around.",
    "*(3 dc, ch 3, 3 dc) in next sp, ch 1; repeat from * 3 times more, join.",
  ],
  [
    "28/0/0",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "ch 1, sc in same st, sc in next 2 sts, (sc, hdc, hdc, sc) in sp, *sc in next 3 sts, (sc, hdc, hdc, sc) in sp; rep from * around.",
  ],
  [
    "20/8/4",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "sc in each dc around, work (sc, ch 2, sc) in each corner.",
  ],
  [
    "24/8/4",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "Sl st in next 2 dc, sl st in sp; ch 3, (2 dc, ch 2, 3 dc) in same sp; *(3 dc, ch 2, 3 dc) in next sp; rep from * 2 times more; join with sl st in top of beg ch.",
  ],
  [
    "36/16/12",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "sl st to corner sp; (beg ch-3, 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next corner, ch 1; rep from * 2 more times; join.",
    "sl st to corner sp; (ch 3, 2 dc, ch 2, 3 dc) in corner, ch 1, 3 dc in side sp, ch 1, *(3 dc, ch 2, 3 dc) in corner, ch 1, 3 dc in side sp, ch 1; rep from * 2 more times; join.",
  ],
  [
    "48/20/16",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around.",
    "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around.",
    "*(3 dc, ch 2, 3 dc) in corner sp, ch 1, (3 dc in next ch-1 sp, ch 1) to next corner; rep from * around.",
  ],
  [
    "48/20/16",
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
    "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around.",
    "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around.",
    "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, [3 dc in next ch-1 sp, ch 1] twice; rep from * around.",
  ],
  [
    "12/0/0",
    "Ch 3, join with sl st to form a ring. Ch 1, work 12 sc in ring. Join with sl st in first sc.",
  ],
  ["10/0/0", "Ch 4, join; 10 sc in ring."],
  ["5/15/5", "ch 4, join with a sl st to form a ring; (3-dc cl in ring, ch 3) 5 times."],
  ["5/15/5", "ch 4, sl st to first ch; *sc into ring, ch 3; repeat from * 4 times."],
  ["15/0/0", "*sc in ring, ch 3; rep from * 4 more times.", "(sc, dc, sc) in each loop."],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "ch 2 (not counted as stitch), 2 hdc in each st around; sl st in first hdc.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "ch 2 – does not count as a stitch – 2 hdc in each st around; join.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "ch 3 = 1st dc, dc in same st, 2 dc in each st around; join.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "ch 3 to count as first dc, dc in same st, 2 dc in each st around; join.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "ch 3 for first dc, dc in same st, 2 dc in each st around; join.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "standing dc in any st, dc in same st, 2 dc in each st around; join.",
  ],
  [
    "16/0/0",
    "8 sc in magic ring; join.",
    "join new yarn with a standing dc in any st, dc in same st, 2 dc in each st around; join.",
  ],
  [
    "24/0/0",
    "ch 3 (counts as dc), 11 dc in magic ring; join.",
    "ch 3, dc in same sp, 2 dc in each following sp; join.",
  ],
  [
    "24/0/0",
    "ch 3 (counts as dc), 11 dc in magic ring; join.",
    "ch 3, dc in same sp, 2 dc in each sp between dc around; join.",
  ],
  [
    "8/8/8",
    "magic ring, ch 3, dc in ring (counts as first cluster), ch 1, *dc2tog in ring, ch 1; rep from * 6 more times; join.",
  ],
  [
    "8/0/0",
    "magic ring, ch 3, dc in ring (the ch 3 and dc count as the first cluster), 7 clusters in ring; join.",
  ],
  [
    "8/0/0",
    "magic ring, ch 3, dc in ring (ch 3 and dc is equivalent to first cl), 7 cl in ring; join.",
  ],
]

describe("more loose wording", () => {
  it.each(cases.map(([want, ...rounds]) => [rounds.at(-1) ?? "", want, rounds] as const))(
    "%s",
    (_, want, rounds) => {
      const reading = read(...rounds)
      expect(
        doubts(reading),
        reading.problems.map((problem) => problem.message).join("\n"),
      ).toEqual([])
      expect(last(reading)).toBe(want)
    },
  )
})
