// More whole patterns of our own: layered petals, shells, squares from circles, labels without colons, UK.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"

const patterns = [
  `Terms: US
Rnd 1: Ch 6, join with a sl st to form ring, ch 3 (counts as dc throughout), work 17 dc in ring, join in top of ch-3. (18 dc)
Rnd 2: Ch 1, sc in same st as joining, *ch 3, sk next 2 dc, sc in next dc; rep from * around, ending with ch 3, join in first sc. (6 ch-3 sps)
Rnd 3: Sl st in next ch-3 sp, ch 1, (sc, hdc, 3 dc, hdc, sc) in same sp and in each ch-3 sp around, join in first sc. (6 petals)
Rnd 4: Working behind petals, ch 1, sc in first sc of Rnd 2, *ch 4, sc in next sc of Rnd 2; rep from * around, ch 4, join in first sc. (6 ch-4 sps)
Rnd 5: Sl st in next ch-4 sp, ch 1, (sc, hdc, 5 dc, hdc, sc) in same sp and in each ch-4 sp around, join. (6 petals)`,
  `Terms: US
Rnd 1: With MC, 8 sc in magic ring, join. (8 sc)
Rnd 2: Ch 3 (counts as dc), dc in same st, ch 1, [2 dc in next st, ch 1] 7 times, join. (16 dc, 8 ch-1 sps)
Rnd 3: Sl st in next dc and in next ch-1 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, [(2 dc, ch 2, 2 dc) in next ch-1 sp] 7 times, join. (32 dc, 8 ch-2 sps)
Rnd 4: Sl st in next dc and in next ch-2 sp, ch 3, 6 dc in same sp, sc between next two shells, *7 dc in next ch-2 sp, sc between next two shells; rep from * around, join. (56 dc, 8 sc)`,
  `Terms: US
Rnd 1: Ch 4, join. Ch 1, 8 sc in ring. Join. (8)
Rnd 2: Ch 3, dc in first sc, (ch 2, 2 dc in next sc) 7 times, ch 2, join. (16 dc)
Rnd 3: Sl st in next dc, sl st in sp, ch 3, 2 dc in sp, ch 1, *3 dc in next sp, ch 1; rep from * 6 more times, join. (24 dc)
Rnd 4: *Sc in each of next 3 dc, 2 sc in ch-1 sp*, repeat between *'s around, join. (40 sc)
Rnd 5: Ch 1, sc in same st, *ch 3, skip 1 st, sc in next st; repeat from * to last st, ch 3, skip last st, join to first sc. (20 loops)`,
  `Terms: US
Round 1: 12 dc into magic ring, join to first dc.
Round 2: (ch 3, dc) in first dc, 2 dc in each dc around, join to top of ch-3. [24 dc]
Round 3: Ch 3, 2 dc in next dc, *1 dc in next dc, 2 dc in next dc; repeat from * to end, join. [36 dc]
Round 4: Ch 4 (counts as 1 tr), (1 tr, ch 3, 2 tr) in same st, 1 dc in next 2 sts, 1 hdc in next st, 1 sc in next 2 sts, 1 hdc in next st, 1 dc in next 2 sts, *(2 tr, ch 3, 2 tr) in next st, 1 dc in next 2 sts, 1 hdc in next st, 1 sc in next 2 sts, 1 hdc in next st, 1 dc in next 2 sts; rep from * twice more, join to top of ch-4. [48 sts plus 4 ch-3 corners]
Round 5: Ch 3, 1 dc in next st, *(2 dc, ch 2, 2 dc) in ch-3 sp, 1 dc in each of next 12 sts; repeat from * 3 times, ending last repeat with 1 dc in each of next 10 sts; join.`,
  `Rnd 1 ch 5, sl st to form a ring; 10 sc in ring, sl st to first sc
Rnd 2 ch 1, 2 sc in each sc around, sl st to first sc (20 sc)
Rnd 3 ch 1, *1 sc in next sc, 2 sc in next sc, repeat from * around, sl st to first sc (30 sc)
Rnd 4 ch 5, sk next 2 sc, *sl st in next sc, ch 5, sk next 2 sc, repeat from * around, sl st to base of first ch (10 loops)`,
  `Terms: UK
Round 1: Make a magic ring, 3ch (counts as 1tr), 11tr into ring, join with ss. (12 tr)
Round 2: 3ch, 1tr in same st, [2tr in next st] 11 times, join with ss in 3rd ch. (24 tr)
Round 3: 1ch, *1dc in next st, 1htr in next st, (2tr, 2ch, 2tr) in next st, 1htr in next st, 1dc in each of next 2 sts; rep from * 3 more times, join with ss. (36 sts, 4 2ch-sps)`,
]

/** Counts of every round, worked out by hand: stitches/chains/spaces. */
const counts = [
  ["18/0/0", "6/18/6", "42/0/0", "6/24/6", "54/0/0"],
  ["8/0/0", "16/8/8", "32/16/8", "64/0/0"],
  ["8/0/0", "16/16/8", "24/8/8", "40/0/0", "20/60/20"],
  ["12/0/0", "24/0/0", "36/0/0", "48/12/4", "64/8/4"],
  ["10/0/0", "20/0/0", "30/0/0", "10/50/10"],
  ["12/0/0", "24/0/0", "36/8/4"],
]

describe("more whole patterns", () => {
  it.each(patterns.map((pattern, i) => [i, pattern] as const))("number %i", (i, pattern) => {
    const reading = readPattern(pattern)
    expect(reading.problems.filter((problem) => problem.severity !== "note")).toEqual([])
    expect(
      reading.rounds.map(({ counted }) =>
        counted ? `${counted.stitches}/${counted.chains}/${counted.spaces}` : "none",
      ),
    ).toEqual(counts[i])
    expect(reading.rounds.every((round) => round.agrees !== false)).toBe(true)
  })
})
