// Short patterns of our own, one for each of the habits that the longer ones do not show: where rounds say
// their place, end, repeat and start in ways of their own. Counts as stitches/chains/spaces, by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "colour after",
    text: `Terms: US
Rnd 1 Blue: 6 sc in magic ring.
Round 2 - White: 2 sc in each st.
Green, Rnd 3: *sc in next st, 2 sc in next st; rep from * around.`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "rep rnds twice",
    text: `Terms: US
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st.
Rnd 3: sc in each st.
Rnd 4: 2 dc in each st.
Rnds 5-8: rep Rnds 3-4 twice.`,
    counts: ["6/0/0", "12/0/0", "12/0/0", "24/0/0", "24/0/0", "48/0/0", "48/0/0", "96/0/0"],
  },
  {
    name: "rep rnds and",
    text: `Terms: US
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st.
Rnd 3: sc in each st.
Rnds 4-5: Repeat Rounds 2 and 3.`,
    counts: ["6/0/0", "12/0/0", "12/0/0", "24/0/0", "24/0/0"],
  },
  {
    name: "hdc closing",
    text: `Terms: US
Rnd 1: 8 sc in magic ring; join.
Rnd 2: ch 1, sc in same st, *ch 3, sc in next st; rep from * 6 more times; ch 1, hdc in first sc.
Rnd 3: ch 1, sc in same sp, *ch 4, sc in next sp; rep from * 6 more times; ch 2, hdc in first sc.
Rnd 4: ch 1, 2 sc in same sp, *ch 5, 2 sc in next sp; rep from * 6 more times, ch 5; join.`,
    counts: ["8/0/0", "8/24/8", "8/32/8", "16/40/8"],
  },
  {
    name: "dtr closing",
    text: `Terms: US
Rnd 1: 6 sc in magic ring; join.
Rnd 2: ch 1, sc in same st, *ch 10, sc in next st; rep from * 4 more times; ch 5, dtr in first sc.
Rnd 3: ch 1, 3 sc in same loop, *ch 8, 3 sc in next loop; rep from * 4 more times, ch 8; join to first sc.`,
    counts: ["6/0/0", "6/60/6", "18/48/6"],
  },
  {
    name: "standing",
    text: `Terms: US
Rnd 1: ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.
Rnd 2: With new color, standing dc in any ch-2 sp, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times; join.
Rnd 3: join new color with a standing sc in any dc, sc in each st and ch-1 sp around, 3 sc in each ch-2 sp; join.`,
    counts: ["12/8/4", "24/12/8", "40/0/0"],
  },
  {
    name: "last n sts",
    text: `Terms: US
Rnd 1: 14 sc in magic ring.
Rnd 2: *2 sc in next st, sc in next 2 sts; rep from * to last 2 sts, sc in last 2 sts.`,
    counts: ["14/0/0", "18/0/0"],
  },
  {
    name: "dagger second",
    text: `Terms: US
Rnd 1: 12 sc in magic ring.
Rnd 2: *sc in next st, †2 sc in next st; rep from † once more; rep from * 3 more times.`,
    counts: ["12/0/0", "20/0/0"],
  },
  {
    name: "below",
    text: `Terms: US
Rnd 1: 8 sc in magic ring.
Rnd 2: 2 sc in each st.
Rnd 3: sc in each st.
Rnd 4: *sc in next st, dc in next st 2 rnds below; rep from * around.`,
    counts: ["8/0/0", "16/0/0", "16/0/0", "16/0/0"],
  },
  {
    name: "space before",
    text: `Terms: US
Rnd 1: 12 dc in magic ring; join.
Rnd 2: 2 dc in sp before each dc around; join.
Rnd 3: *2 dc in next sp between sts, skip next st; rep from * around.`,
    counts: ["12/0/0", "24/0/0", "48/0/0"],
  },
  {
    name: "top of / side",
    text: `Terms: US
Rnd 1: 6 dc in magic ring; join.
Rnd 2: *sc in next dc, 3 dc in side of sc just made, skip 0; rep from * around.`,
    counts: ["6/0/0", "24/0/0"],
  },
  {
    name: "in picot/cluster",
    text: `Terms: US
Rnd 1: 6 sc in magic ring.
Rnd 2: *dc3tog in next st, ch 2, sc in next st, picot of ch 3; rep from * around.
Rnd 3: *2 sc in next cluster, ch 3, sc in next picot, ch 3; rep from * around.`,
    counts: ["6/0/0", "6/6/3", "9/18/6"],
  },
  {
    name: "other sizes",
    text: `Terms: US
Rnd 1: 6 (8, 10) sc in magic ring.
Rnd 2: 2 sc in each st. [12 (16, 20) sc]`,
    counts: ["6/0/0", "12/0/0"],
  },
  {
    name: "ch counts throughout",
    text: `Terms: US
Ch 3 at beginning of each rnd counts as dc throughout.
Rnd 1: ch 3, 11 dc in magic ring; sl st to join.
Rnd 2: ch 3, dc in same st, 2 dc in each st; join.`,
    counts: ["12/0/0", "24/0/0"],
  },
  {
    name: "chain not space",
    text: `Terms: US
Rnd 1: 8 sc in magic ring; join.
Rnd 2: *sc in next st, ch 3; rep from * around.
Rnd 3: sc in each st and in each ch around.
Rnd 4: sc in each st.`,
    counts: ["8/0/0", "8/24/8", "32/0/0", "32/0/0"],
  },
  {
    name: "centre ch",
    text: `Terms: US
Rnd 1: 6 sc in ring.
Rnd 2: *sc in next sc, ch 5; rep from * around.
Rnd 3: *(sc, ch 3, sc) in 3rd ch of next ch-5, ch 4; rep from * around.`,
    counts: ["6/0/0", "6/30/6", "12/42/12"],
  },
  {
    name: "group count vs made",
    text: `Terms: US
Rnd 1: 8 sc in ring.
Rnd 2: *5 dc in next st, sl st in next st; rep from * around. (4 shells)`,
    counts: ["8/0/0", "24/0/0"],
  },
  {
    name: "spiral with sl st to finish",
    text: `Terms: US
Rnd 1: 6 sc in ring
Rnd 2: 2 sc in each
Rnd 3: *1 sc, 2 sc in next*, sl st in next st, fasten off.`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "working around ring of chain loops",
    text: `Terms: US
Rnd 1: ch 6, sl st in first ch; *ch 3, 3 dc in ring, ch 3, sl st in ring; rep from * 3 more times.`,
    counts: ["16/24/8"],
  },
  {
    name: "corner each side",
    text: `Terms: US
Rnd 1: ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.
Rnd 2: sl st to corner; ch 3, (dc, ch 2, 2 dc) in same corner, dc in each dc of side, *(2 dc, ch 2, 2 dc) in next corner, dc in each dc of side; rep from * around; join.`,
    counts: ["12/8/4", "28/8/4"],
  },
  {
    name: "sides and corners words",
    text: `Terms: US
Rnd 1: ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.
Rnd 2: (2 dc, ch 2, 2 dc) in each corner sp and 1 dc in each dc along sides; join.
Rnd 3: 1 sc in each dc along each side, (sc, ch 2, sc) in each corner.`,
    counts: ["12/8/4", "28/8/4", "36/8/4"],
  },
]
