// Looser wording as met in patterns of every kind, on small motifs of our own. Counts of the last round
// are worked out by hand: stitches/chains/spaces.

import { describe, expect, it } from "vitest"
import { doubts, last, read } from "./help.ts"

const R12 = "12 sc in magic ring; join.",
  D12 = "ch 3 (counts as dc), 11 dc in ring; join.",
  SQ =
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join."
const cases: [string, ...string[]][] = [
  ["24/0/0", D12, "ch 3, dc in same st, 2 dc in each st around; join to top of ch-3."],
  [
    "24/0/0",
    D12,
    "Ch 3 (counts as first dc here and throughout), dc in same st as joining, 2 dc in each dc around, join with a sl st in top of beg ch-3. (24 dc)",
  ],
  [
    "36/0/0",
    D12,
    "Ch 3, dc in first st, 2 dc in each st around; join. (24)",
    "Ch 3, 2 dc in next st, (dc in next st, 2 dc in next st) 11 times, join with sl st in 3rd ch of beg ch 3. (36 dc)",
  ],
  ["18/0/0", R12, "*Inc in next st, sc in next st* around. (18)"],
  ["18/0/0", R12, "(Inc, sc) x 6. (18)"],
  ["18/0/0", R12, "[Sc, inc] six times (18 sts)"],
  ["18/0/0", R12, "Sc 1, inc 1; repeat around. (18)"],
  ["12/0/0", R12, "Work even."],
  ["12/0/0", R12, "Sc around."],
  ["12/0/0", R12, "Sc in each st around, do not join."],
  ["6/0/0", R12, "*sc2tog; rep from * around. (6 sc)"],
  ["6/0/0", R12, "(sc2tog) 6 times."],
  ["6/0/0", R12, "sc2tog around."],
  ["9/0/0", R12, "*sc in next 2 sts, sc2tog; rep from * around."],
  ["18/0/0", R12, "Inc 6 evenly around. (18 sc)"],
  ["18/0/0", R12, "Sc around, increasing 6 sts evenly. (18 sc)"],
  [
    "24/16/8",
    SQ,
    "Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 2, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 2; rep from * around; join with sl st in top of beg ch-3.",
  ],
  [
    "24/12/8",
    SQ,
    "Join B in any corner sp; ch 3, 2 dc in same sp, ch 2, 3 dc in same sp, ch 1, [3 dc, ch 2, 3 dc, ch 1] in each of next 3 corner sps; join.",
  ],
  [
    "28/8/4",
    SQ,
    "Ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * twice more; join.",
  ],
  [
    "28/8/4",
    SQ,
    "Ch 3, dc in each of next 2 dc, *(2 dc, ch 2, 2 dc) in corner sp**, dc in each of next 3 dc; rep from * around, end at **; join.",
  ],
  [
    "28/8/4",
    SQ,
    "Ch 3 (counts as dc), dc in each dc around, working (2 dc, ch 2, 2 dc) in each corner sp; join.",
  ],
  [
    "28/8/4",
    SQ,
    "Ch 3 (counts as dc), dc in each st around with (2 dc, ch 2, 2 dc) in each corner; join with sl st to top of ch-3.",
  ],
  ["20/8/4", SQ, "Ch 1, sc in each dc and (sc, ch 2, sc) in each ch-2 sp around; join."],
  [
    "24/0/0",
    SQ,
    "Ch 1, sc in each st around, 3 sc in each corner sp; join with sl st in first sc.",
  ],
  ["12/36/12", R12, "Ch 1, sc in first st, ch 3, *sc in next st, ch 3; rep from * around; join."],
  ["12/36/12", R12, "*Ch 3, sc in next st; repeat from * around, ending ch 3, sl st in first st."],
  [
    "12/36/12",
    R12,
    "Ch 6 (counts as dc and ch-3), *dc in next st, ch 3; rep from * around; sl st in 3rd ch of beg ch-6.",
  ],
  ["12/36/12", R12, "ch 6, *dc in next sc, ch 3; rep from * around; join to 3rd ch of ch-6."],
  ["48/0/0", R12, "*sc in next st, ch 3; rep from * around.", "4 sc in each ch-3 sp around."],
  ["48/0/0", R12, "*sc in next st, ch 3; rep from * around.", "Work 4 sc in every ch-3 loop."],
  [
    "48/0/0",
    R12,
    "*sc in next st, ch 3; rep from * around.",
    "Sl st into first ch-3 sp, ch 1, 4 sc in same sp, 4 sc in each remaining ch-3 sp; join.",
  ],
  [
    "60/0/0",
    R12,
    "*sc in next st, ch 3; rep from * around.",
    "(sc, hdc, dc, hdc, sc) in each ch-3 sp; join.",
  ],
  ["12/0/0", R12, "FPdc around each st around."],
  ["12/0/0", D12, "ch 2, *FPdc around next dc, BPdc around next dc; rep from * around; join."],
  ["12/0/0", R12, "hdc in third loop of each st around."],
  ["24/0/0", R12, "2 sc blo in each st around."],
  ["36/0/0", R12, "3-dc shell in each st around."],
  ["12/12/6", R12, "*(dc, ch 2, dc) in next st, sk next st; rep from * around."],
  ["12/6/6", R12, "*V-st (dc, ch 1, dc) in next st, sk next st; rep from * around."],
  ["30/0/0", R12, "*5 dc in next st, sk next st; rep from * around."],
  [
    "36/0/0",
    R12,
    "*sk next st, 5 dc in next st, sk next st, sc in next st; rep from * around.",
    "2 sc in each st around.",
  ],
  ["12/0/0", R12, "*sk next st, dc in next st, dc in skipped st; rep from * around."],
  [
    "24/0/0",
    "8 dc in magic ring; join.",
    "ch 1, 2 sc in each st around; join.",
    "*sc in next st, 2 sc in next st; rep around; join.",
  ],
  [
    "16/0/0",
    "Using colour A, make a magic ring; ch 1, 8 sc into ring; sl st to join.",
    "Ch 1, 2 sc in each st to end; sl st to first sc to join. (16 sts)",
  ],
  [
    "16/0/0",
    "Make a slip knot, ch 2, 8 sc in 2nd ch from hook, sl st to first sc. (8)",
    "2 sc in each sc around. (16)",
  ],
  [
    "16/0/0",
    "Ch 4, sl st to first ch to form ring. Ch 2 (does not count), 16 hdc into ring, join with sl st to first hdc. 16 hdc",
  ],
  [
    "16/0/0",
    "Begin with a magic circle, ch 3 (counts as 1 dc), work 15 dc in the ring, pull ring closed, join with a slip stitch to the top of the ch-3. Fasten off. (16 dc)",
  ],
  [
    "16/16/8",
    "16 dc in magic ring; join.",
    "ch 3 (counts as dc), dc in next dc, ch 2, *dc in next 2 dc, ch 2; rep from * around; join.",
  ],
  [
    "32/0/0",
    "16 dc in magic ring; join.",
    "ch 3 (counts as dc), dc in next dc, ch 2, *dc in next 2 dc, ch 2; rep from * around; join.",
    "ch 1, *sc in each of next 2 dc, 2 sc in next ch-2 sp; rep from * around; join.",
  ],
  ["24/24/12", R12, "*(dc, ch 2, dc) in next st; rep from * around."],
  ["12/24/12", R12, "*(dc2tog, ch 2) in next st; rep from * around."],
  ["6/18/6", R12, "*dc2tog over next 2 sts, ch 3; rep from * around."],
  ["6/18/6", R12, "*work dc2tog over next 2 sts, ch 3; rep from * around; join to first st."],
  ["8/24/8", "8 sc in magic ring.", "*cluster in next st, ch 3; rep from * around. (8 clusters)"],
  [
    "8/24/8",
    "8 sc in magic ring; join.",
    "Beg cluster in same st, ch 3, *cluster in next st, ch 3; rep from * around; join.",
  ],
  ["16/8/8", "8 sc in magic ring.", "*2 dc in next st, ch 1; rep from * around."],
  [
    "48/0/0",
    "8 sc in magic ring.",
    "*2 dc in next st, ch 1; rep from * around.",
    "*sc in next 2 dc, 4 sc in ch-1 sp; rep from * around.",
  ],
  [
    "40/0/0",
    "8 sc in magic ring.",
    "*2 dc in next st, ch 1; rep from * around.",
    "*dc in each of next 2 dc, 3 dc in next ch-1 sp; rep from * 7 more times.",
  ],
  [
    "32/8/8",
    "8 sc in magic ring.",
    "*2 dc in next st, ch 1; rep from * around.",
    "*2 dc in each of next 2 dc, ch 1; rep from * around.",
  ],
  ["12/60/12", R12, "*sc in next st, ch 5, sc in same st, ch 5, skip next st; rep from * around."],
  [
    "6/30/6",
    R12,
    "sc in first st, ch 5, skip 1 st, *sc in next st, ch 5, skip 1 st; rep from * around; join with sl st to first sc.",
  ],
  [
    "6/30/6",
    R12,
    "ch 1, sc in joining st, ch 5, sk 1, *sc in next, ch 5, sk 1; rep from * around, sl st in first sc.",
  ],
  ["42/0/0", R12, "*sc in next st, ch 5, sk 1; rep from * around.", "7 sc over each ch-5 loop."],
  [
    "6/42/6",
    R12,
    "*sc in next st, ch 5, sk 1; rep from * around.",
    "sl st to center of next loop, ch 1, sc in same loop, *ch 7, sc in next loop; rep from * around, ch 7, join.",
  ],
  [
    "6/42/6",
    R12,
    "*sc in next st, ch 5, sk 1; rep from * around.",
    "*sc in 3rd ch of next ch-5 loop, ch 7; rep from * around.",
  ],
  ["24/0/0", SQ, "Turn, ch 1, sc in each dc and 3 sc in each ch-2 sp around, join, turn."],
  [
    "20/0/0",
    "ch 4, join to form a ring; 12 sc in ring; join.",
    "ch 1, *sc in next 2 sts, 3 sc in next st; rep from * around; join.",
  ],
  [
    "28/0/0",
    "ch 4, join to form a ring; 12 sc in ring; join.",
    "ch 1, *sc in next 2 sts, 3 sc in next st; rep from * around; join.",
    "ch 1, *sc in each st to corner st, 3 sc in corner st; rep from * around, sc in rem st; join.",
  ],
  [
    "28/0/0",
    "ch 4, join to form a ring; 12 sc in ring; join.",
    "ch 1, *sc in next 2 sts, 3 sc in next st; rep from * around; join.",
    "ch 1, sc in each sc around, working 3 sc in center sc of each corner; join.",
  ],
  ["24/24/24", R12, "*dc in next st, ch 1, dc in same st, ch 1; rep from * around."],
  ["12/0/0", R12, "dc in each st around; join with sl st to first dc; break off yarn."],
  ["12/0/0", R12, "Change to MC. Sc in each st around. Cut yarn and weave in all ends."],
  ["14/0/0", R12, "sc in next 5 sts, 2 sc in next st, sc in next 5 sts, 2 sc in last st. (14 sc)"],
  ["24/0/0", R12, "1 dc and 1 tr in each st around."],
  ["24/0/0", R12, "(hdc, dc) in each st around."],
  ["13/0/0", R12, "2 sc in first st, sc in each remaining st around."],
  ["13/0/0", R12, "sc in each st to last st, 2 sc in last st."],
  ["12/0/0", R12, "skip first st, sc in each st around, sc in skipped st; join."],
  ["16/0/0", R12, "*2 sc in next st, sc in each of next 2 sts; rep from * 3 more times."],
  [
    "16/0/0",
    R12,
    "* 1 sc in each of the next 2 sts, 2 sc in the next st ; repeat from * 3 times more ; join .",
  ],
  [
    "16/0/0",
    R12,
    "* 1 sc in each of the next 2 sts, 2 sc in the next st * repeat 4 times in total",
  ],
  ["24/0/0", R12, "2 sc in every st around - 24 sts"],
  ["24/0/0", R12, "2 sc in every stitch all the way around... (24 stitches total)"],
  ["24/8/4", SQ, "*3 dc, ch 2, 3 dc in next ch-2 sp; rep from * around."],
  ["24/8/4", SQ, "3 dc, ch 2, 3 dc in each ch-2 sp around."],
  ["24/8/4", SQ, "In each corner work 3 dc, ch 2, 3 dc."],
  [
    "36/16/12",
    SQ,
    "sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around; join.",
    "sl st in next 2 dc and next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around; join.",
  ],
]

describe("loose wording", () => {
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
