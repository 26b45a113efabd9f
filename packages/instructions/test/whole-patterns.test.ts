// Whole patterns of our own in the styles patterns come in: Markdown with notes and special stitches,
// UK terms with figures before the abbreviations, short labels, rounds with totals after a dash.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"

const patterns = [
  `# Harbour Lantern Square

**Materials**
- Yarn: worsted (weight 4), three colours A, B, C
- Hook: H-8 (5 mm)
- Scissors, tapestry needle

**Gauge:** Rnds 1-2 = 3 in (7.5 cm) across

**Notes:**
Ch 3 at beginning of rnd counts as first dc.
Weave in ends as you go.

**Special stitch**
Beginning cluster (beg cl): ch 3, dc2tog in same sp.
Cluster (cl): dc3tog in same sp.

## Square

**Rnd 1 (RS):** With A, ch 4, join with sl st in first ch to form ring; ch 3, 15 dc in ring; join with sl st in top of beg ch-3: 16 dc.
**Rnd 2:** Ch 5 (counts as dc, ch 2), *dc in next dc, ch 2; rep from * around; join with sl st in 3rd ch of beg ch-5: 16 ch-2 sps. Fasten off A.
**Rnd 3:** Join B with sl st in any ch-2 sp; ch 3, 2 dc in same sp, 3 dc in each ch-2 sp around; join. (48 dc)
**Rnd 4:** Ch 1, sc in same st as joining, sc in next 7 dc, hdc in next 2 dc, (dc, ch 2, dc) in next dc, hdc in next dc, *sc in next 8 dc, hdc in next 2 dc, (dc, ch 2, dc) in next dc, hdc in next dc; rep from * 2 more times; join with sl st in first sc. (52 sts, 4 ch-2 sps)
`,
  `Terms: UK
Spindle motif

Tension is not critical.

Special abbreviations: none

Foundation ring: Using 4mm hook and yarn A make 6ch and join with ss to form a ring.
1st round: 3ch (count as 1tr), 15tr into ring, ss to top of 3ch. 16 sts.
2nd round: 4ch (count as 1tr, 1ch), *1tr into next tr, 1ch; rep from * to end, ss to 3rd of 4ch.
3rd round: ss into first 1ch sp, 1ch, 1dc into same sp, *3ch, 1dc into next 1ch sp; rep from * ending 3ch, ss to first dc.
4th round: ss into first 3ch sp, 3ch (counts as 1tr), [1tr, 2ch, 2tr] into same sp, *miss 1 sp, [2tr, 2ch, 2tr] into next 3ch sp; rep from * to last sp, miss last sp, ss to top of 3ch.
`,
  `Terms: US
Round 1: In a magic ring, work 8 sc. Do not join, mark first st. (8)
Round 2: 2 sc in each st around. (16)
Round 3: (Sc in next st, 2 sc in next st) 8 times. (24)
Round 4: (Sc in next 2 sts, 2 sc in next st) repeat around. (32)
Round 5: *Sc in next 3 sts, inc*, repeat from * to * around. (40)
Round 6: Sc in each st around, sl st in next st. Fasten off. (40)
`,
  `Terms: US
R1: ch 4, sl st to form ring, ch 3, 2 dc, ch 2, (3 dc, ch 2) x3, sl st to top of ch 3.
R2: sl st to corner, (ch 3, 2 dc, ch 2, 3 dc) in corner, ch 1, *(3 dc, ch 2, 3 dc) in next corner, ch 1* x3, sl st to top of ch 3.
R3: sl st to corner, (ch 3, 2 dc, ch 2, 3 dc) in corner, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in corner, ch 1, 3 dc in next ch-1 sp, ch 1* x3, sl st to top of ch 3. (36 dc)
R4: ch 1, sc in each st and ch-1 sp around, (sc, ch 2, sc) in each corner; join.
`,
  `Rnd 1: Ch 2, 6 sc in second ch from hook. Join with sl st in first sc.
Rnd 2: Ch 1, *work 2 sc in next sc; rep from * around. Join with sl st in first sc. - 12 sc
Rnd 3: Ch 1, *sc in next sc, 2 sc in next sc; rep from * around. Join. --- 18 sc
Rnd 4: Ch 1; sc in same sc, sc in next sc, 2 sc in next sc, * sc in next 2 sc, 2 sc in next sc; rep from * around; join. 24 sc.
Rnd 5: Ch 4 (counts as first dc and ch-1 sp), skip next sc, *dc in next sc, ch 1, skip next sc; rep from * around; join with sl st in 3rd ch of beg ch-4. 12 dc, 12 ch-1 sps.
`,
  `Terms: US
Rnd 1: ch 5, join; ch 4 (first dc and ch-1), (dc in ring, ch 1) 11 times, join to 3rd ch. 12 spaces.
Rnd 2: sl st into first sp, ch 3, dc in same sp, ch 2, *2 dc in next sp, ch 2; rep from * around. Join. 12 ch-2 sps
Rnd 3: sl st to ch-2 sp; beg popcorn in same sp, ch 3, *popcorn in next sp, ch 3; rep from * around; join to top of first popcorn. 12 popcorns
Rnd 4: sl st in sp, ch 3, 3 dc in same sp, *4 dc in next ch-3 sp; repeat from * around. Join. (48 dc)
Rnd 5: *[(tr, ch 3, tr) in next st, dc in next 2 sts, hdc in next 2 sts, sc in next 3 sts, hdc in next 2 sts, dc in next 2 sts]; rep from * 3 times; join.
`,
]

/** Counts of every round, worked out by hand: stitches/chains/spaces. */
const counts = [
  ["16/0/0", "16/32/16", "48/0/0", "52/8/4"],
  ["16/0/0", "16/16/16", "16/48/16", "32/16/8"],
  ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0", "40/0/0"],
  ["12/8/4", "24/12/8", "36/16/12", "52/8/4"],
  ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "12/12/12"],
  ["12/12/12", "24/24/12", "12/36/12", "48/0/0", "52/12/4"],
]

describe("whole patterns", () => {
  it.each(patterns.map((pattern, i) => [i, pattern] as const))("number %i", (i, pattern) => {
    const reading = readPattern(pattern)
    const errors = reading.problems.filter(
      (problem) => problem.severity !== "note" && problem.code !== "gauge-line",
    )
    expect(errors).toEqual([])
    expect(
      reading.rounds.map(({ counted }) =>
        counted ? `${counted.stitches}/${counted.chains}/${counted.spaces}` : "none",
      ),
    ).toEqual(counts[i])
    expect(reading.rounds.every((round) => round.agrees !== false)).toBe(true)
  })
})
