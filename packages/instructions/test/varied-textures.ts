// Raised, low and backward stitches, and wordings met with charts, in patterns of our own. Counts as
// stitches/chains/spaces, by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "overlay",
    text: `Terms: US
Rnd 1: 8 sc in magic ring; join. (8 sc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (16 dc)
Rnd 3: ch 1, *sc in next dc, (sc, FPtr around same dc) in next dc; rep from * around; join. (24 sts)
Rnd 4: ch 1, *sc in next sc, 2 sc in next sc, FPtr around next FPtr; rep from * around; join. (32 sts)
Rnd 5: ch 1, sc in each st around; join. (32 sc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "32/0/0"],
  },
  {
    name: "fptr 2 below",
    text: `Terms: US
Rnd 1: 12 dc in magic ring; join. (12 dc)
Rnd 2: ch 1, 2 sc in each dc around; join. (24 sc)
Rnd 3: ch 1, *sc in next sc, FPtr around next dc 2 rnds below, sk next sc; rep from * around; join. (24 sts)`,
    counts: ["12/0/0", "24/0/0", "24/0/0"],
  },
  {
    name: "spike",
    text: `Terms: US
Rnd 1: 10 sc in magic ring; join.
Rnd 2: ch 1, 2 sc in each st; join. (20)
Rnd 3: ch 1, *sc in next 3 sts, spike st in next st of Rnd 1, sk next st; rep from * around; join. (20)`,
    counts: ["10/0/0", "20/0/0", "20/0/0"],
  },
  {
    name: "reverse sc",
    text: `Terms: US
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st.
Rnd 3: reverse sc in each st around; join. (12)`,
    counts: ["6/0/0", "12/0/0", "12/0/0"],
  },
  {
    name: "linked",
    text: `Terms: US
Rnd 1: 12 sc in magic ring; join.
Rnd 2: ch 3, linked dc in same st, 2 linked dc in each st around; join. (24)`,
    counts: ["12/0/0", "24/0/0"],
  },
  {
    name: "skip list",
    text: `Terms: US
Rnd 1: 8 sc in ring; join.
Rnd 2: ch 1, *(sc, ch 1) in next sc; rep from * around; join. (8 sc, 8 ch-1 sps)
Rnd 3: ch 1, *sc in next ch-1 sp, ch 3, sk (sc, ch 1, sc); rep from * around; join. (4 sc, 4 ch-3 sps)
Rnd 4: ch 1, *sc in next sc, (2 dc, ch 2, 2 dc) in ch-3 sp; rep from * around; join. (20 sts, 4 ch-2 sps)`,
    counts: ["8/0/0", "8/8/8", "4/12/4", "20/8/4"],
  },
  {
    name: "popcorn wheel",
    text: `Terms: US
Rnd 1: ch 5, sl st to form ring; ch 3, 4 dc in ring, complete as popcorn, ch 2, (popcorn in ring, ch 2) 5 times; join. (6 popcorns)
Rnd 2: sl st in ch-2 sp, ch 3, 4 dc in same sp, (ch 1, 5 dc in next ch-2 sp) around, ch 1; join. (30 dc, 6 ch-1 sps)`,
    counts: ["6/12/6", "30/6/6"],
  },
  {
    name: "beg st names",
    text: `Terms: US
Beg popcorn: ch 3, 4 dc in same sp.
Rnd 1: ch 4, join; (beg popcorn, ch 3) in ring, (popcorn, ch 3) 3 times in ring; join. (4 popcorns, 4 ch-3 sps)
Rnd 2: sl st in ch-3 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-3 sp; rep from * 2 more times, ch 1; join. (24 dc)`,
    counts: ["4/12/4", "24/12/8"],
  },
  {
    name: "mirrored sides",
    text: `Terms: US
Rnd 1: 16 dc in magic ring; join.
Rnd 2: ch 1, *sc in next 2 sts, hdc in next st, (dc, ch 2, dc) in next st; rep from * around; join. (20 sts, 4 ch-2 sps)
Rnd 3: sl st in next 3 sts; ch 1, sc in each st to corner, *(sc, ch 2, sc) in corner sp, sc in each st to next corner; rep from * 3 times; join.`,
    counts: ["16/0/0", "20/8/4", "28/8/4"],
  },
  {
    name: "chart words",
    text: `Terms: US
Round 1 [RS]: In magic circle: ch 1, 8 sc; sl st to first sc to close. {8 sts}
Round 2 [RS]: Ch 1 (doesn't count), in each st: 2 sc. Sl st to first sc to close. {16 sts}
Round 3 [RS]: Ch 1, in first st: sc, *in next st: 2 sc, in next st: sc; repeat from * until 1 st remains, in last st: 2 sc. Sl st. {24 sts}`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
]
