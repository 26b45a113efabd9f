// More discs in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "crown",
    text: `sp 1: 6 sc in ring
Rnd 1: 6 sc in magic circle. Do not join; work in continuous rounds, marking first st. (6 sts)
Rnd 2: (2 sc in next st) 6 times. (12 sts)
Rnd 3: (Sc in next st, 2 sc in next st) 6 times. (18 sts)
Rnd 4: (Sc in next 2 sts, 2 sc in next st) 6 times. (24 sts)
Rnd 5: Sc in each st around. (24 sts)
Rnd 6: (Sc in next 3 sts, 2 sc in next st) 6 times. (30 sts)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "24/0/0", "30/0/0"],
  },
  {
    name: "amish puzzle colours",
    text: `COLORS: A - red, B - white
Rnd 1 (A): With A, 8 sc in magic ring, sl st in first sc changing to B. [8]
Rnd 2 (B): With B, ch 1, 2 sc in each st around, sl st in first sc, changing to A. [16]
Rnd 3 (A): ch 1, (1 sc in next st, 2 sc in next st) around, sl st in first sc. Cut A. [24]
Rnd 4 (B): Pick up B, ch 1, (1 sc in each of next 2 sts, 2 sc in next st) around, sl st in first sc. [32]`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0"],
  },
  {
    name: "hdc ch-2 start ambiguous",
    text: `Rnd 1: Ch 2, 8 hdc in 2nd ch from hook, sl st in first hdc. (8)
Rnd 2: Ch 2, 2 hdc in each st around, sl st in first hdc. (16)
Rnd 3: Ch 2, *hdc in next st, 2 hdc in next st; rep from * around, sl st in first hdc. (24)`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "sc join",
    text: `Rnd 1: Ch 2, 10 sc in 2nd ch from hook; join with slip st to first sc, finish off: 10 sc.
Rnd 2: Join next color with sc in same st as joining (see Joining with Sc); sc in same st, 2 sc in next sc and in each sc around; join with slip st to first sc: 20 sc.
Rnd 3: Ch 1, sc in same st, 2 sc in next sc, (sc in next sc, 2 sc in next sc) around; join with slip st to first sc: 30 sc.`,
    counts: ["10/0/0", "20/0/0", "30/0/0"],
  },
  {
    name: "hex flat dc",
    text: `rd 1: ch 4, join. ch 3, dc in ring, ch 1, (2 dc in ring, ch 1) 5 times, join to top ch 3
rd 2: ch 3, dc in next dc, (dc, ch 1, dc) in ch 1 sp, *dc in next 2 dc, (dc, ch 1, dc) in ch 1 sp* repeat around, join
rd 3: ch 3, dc in next 2 dc, (dc, ch 1, dc) in ch 1 sp, *dc in next 4 dc, (dc, ch 1, dc) in ch 1 sp* repeat around, dc in last dc, join
rd 4: ch 3, dc in next 3 dc, (dc, ch 1, dc) in ch 1 sp, *dc in next 6 dc, (dc, ch 1, dc) in ch 1 sp* repeat around, dc in last 2 dc, join`,
    counts: ["12/6/6", "24/6/6", "36/6/6", "48/6/6"],
  },
  {
    name: "heart-free coaster with hdc blo",
    text: `R1: Work 11 hdc into a magic ring, join (11)
R2: Ch 1, working in BLO, 2 hdc in each st around, join (22)
R3: Ch 1, working in BLO, *1 hdc, 2 hdc in next st* repeat around, join (33)
R4: Ch 1, hdc blo in each of the next 2 sts, 2 hdc blo in the next st; repeat around; join (44)`,
    counts: ["11/0/0", "22/0/0", "33/0/0", "44/0/0"],
  },
  {
    name: "old plain row words",
    text: `Make a chain of 4 and join into a ring. Work 8 d c into the ring. 2nd row—2 d c into each stitch (16 stitches). 3rd row—1 d c into the first, 2 d c into the next; repeat all round (24 stitches). 4th row—1 d c into each of the next 2, 2 d c into the next; repeat all round. 5th row—1 d c into each of the next 3, 2 d c into the next; repeat all round (40 stitches).`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0"],
  },
  {
    name: "unmarked continuing",
    text: `Round 1: 6 sc in ring.
Round 2: 2 sc in each st around - 12 sts.
Round 3: (2 sc in 1 st, 1 sc in next st) repeat around - 18 sts.
Round 4: (2 sc in 1 st, 1 sc in next 2 sts) repeat around - 24 sts.
Round 5: (2 sc in 1 st, 1 sc in next 3 sts) repeat around - 30 sts.
Round 6: (2 sc in 1 st, 1 sc in next 4 sts) repeat around - 36 sts.`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0", "36/0/0"],
  },
  {
    name: "work even",
    text: `Rnd 1: 8 hdc in magic ring.
Rnd 2: 2 hdc in each st. (16 hdc)
Rnd 3: (hdc in next st, 2 hdc in next st) around. (24 hdc)
Rnds 4-6: Work even in hdc. (24 hdc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "24/0/0", "24/0/0", "24/0/0"],
  },
  {
    name: "mosaic-ish spike",
    text: `Rnd 1: 8 sc in ring.
Rnd 2: 2 sc in each.
Rnd 3: (sc, 2 sc in next) 8 times.
Rnd 4: (sc in next 2 sts, spike sc in next st 2 rnds below) 8 times.`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "24/0/0"],
  },
  {
    name: "increases in every",
    text: `Rnd 1: ch 10, join to form a ring; 20 sc in ring. (20 sc)
Rnd 2: 1 sc in each sc, 2 sc in every 2nd. (30 sc)
Rnd 3: 1 sc in each of 2 sc, 2 sc in the 3rd; rep around. (40 sc)
Rnd 4: 2 sc in every 4th sc, 1 sc in each other. (50 sc)`,
    counts: ["20/0/0", "30/0/0", "40/0/0", "50/0/0"],
  },
  {
    name: "both colours",
    text: `Rnd 1: with red, ch 4, join to form a ring; 10 sc in ring. (10 sc)
Rnd 2: *1 red sc and 1 white sc in next sc; rep from * around. (20 sc)
Rnd 3: *1 red sc in next red sc, 2 white sc in next white sc; rep from * around; fasten off both. (30 sc)`,
    counts: ["10/0/0", "20/0/0", "30/0/0"],
  },
  {
    name: "links",
    text: `Rnd 1: 12 dc in magic circle (see my tutorial here: https://example.com/magic-circle). Join with sl st to first dc.
Rnd 2: Ch 2 (does not count as a st), 2 dc in each st around. Join with sl st to first dc. (24)`,
    counts: ["12/0/0", "24/0/0"],
  },
  {
    name: "numbered sublines",
    text: `Rnd 1:
a) Make a magic ring
b) ch 3, 11 dc in ring
c) join with sl st to top of ch 3 (12)
Rnd 2:
ch 3, dc in same st,
2 dc in each st around,
join with sl st to top of ch 3 (24)`,
    counts: ["12/0/0", "24/0/0"],
  },
  {
    name: "dc in each ch of lp",
    text: `Rnd 1: (sc, ch 5) 6 times in ring; sl st in first sc.
Rnd 2: *sc in next sc, sc in each of next 5 ch; rep from * around.
Rnd 3: sc in each sc.`,
    counts: ["6/30/6", "36/0/0", "36/0/0"],
  },
]

export const uk: readonly VariedPattern[] = []
