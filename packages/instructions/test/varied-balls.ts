// Crowns, balls and other pieces told by increases in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "amigurumi sphere",
    text: `Ball (make 2)
R1: 6 sc in MR [6]
R2: inc x 6 [12]
R3: (sc, inc) x 6 [18]
R4: (2 sc, inc) x 6 [24]
R5: (3 sc, inc) x 6 [30]
R6-8: sc around [30]
R9: sc in each st [30]
R10: (3 sc, dec) x 6 [24]
R11: (2 sc, dec) x 6 [18]
R12: (sc, dec) x 6 [12]. Stuff firmly.
R13: dec x 6 [6]
Fasten off, leaving a long tail.`,
    counts: [
      "6/0/0",
      "12/0/0",
      "18/0/0",
      "24/0/0",
      "30/0/0",
      "30/0/0",
      "30/0/0",
      "30/0/0",
      "30/0/0",
      "24/0/0",
      "18/0/0",
      "12/0/0",
      "6/0/0",
    ],
  },
  {
    name: "hat crown dc",
    text: `Hat Crown, sizes Small (Medium, Large)
Gauge: 14 dc and 8 rows = 4".
Rnd 1: Ch 4, 11 dc in 4th ch from hook; join with sl st in top of beg ch-4. 12 dc
Rnd 2: Ch 3, dc in base of ch-3, 2 dc in ea dc around; join. 24 dc
Rnd 3: Ch 3, 2 dc in next dc, (dc in next dc, 2 dc in next dc) around; join. 36 dc
Rnd 4: Ch 3, dc in next dc, 2 dc in next dc, (dc in next 2 dc, 2 dc in next dc) around; join. 48 dc
Rnd 5: Ch 3, dc in ea dc around; join. 48 dc`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0", "48/0/0"],
  },
  {
    name: "front post",
    text: `Abbreviations: FPdc = front post double crochet, BPdc = back post double crochet
Rnd 1: MR, ch 2 (does not count as a stitch throughout), 12 dc in ring. Join in first dc. (12)
Rnd 2: Ch 2, *FPdc around next dc, dc in same st as FPdc just made; rep from * around. Join. (24)
Rnd 3: Ch 2, *FPdc around FPdc, 2 dc in next dc; rep from * around. Join. (36)
Rnd 4: Ch 2, *FPdc around FPdc, dc in next dc, 2 dc in next dc; rep from * around. Join. (48)`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0"],
  },
  {
    name: "table markdown",
    text: `| Round | Instruction | Stitches |
|---|---|---|
| 1 | 6 sc in magic ring | 6 |
| 2 | 2 sc in each stitch | 12 |
| 3 | (1 sc, inc) × 6 | 18 |
| 4 | (2 sc, inc) × 6 | 24 |`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "amigurumi dec invisible",
    text: `Head
1) 6sc in magic ring (6)
2) inc in every st (12)
3) *1sc, inc* repeat 6 times (18)
4) sc in every st (18)
5) *1sc, invdec* x6 (12)
stuff the head
6) invdec x6 (6)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "18/0/0", "12/0/0", "6/0/0"],
  },
  {
    name: "amigurumi egg shorthand",
    text: `R1: mr, 6sc [6]
R2: 6inc [12]
R3: 1sc, 1inc x6 [18]
R4: (2sc, inc)*6 [24]
R5-R6: 24sc [24]
R7: (2sc, dec)*6 [18]
R8: (1sc, dec)*6 [12]
R9: 6dec [6]`,
    counts: [
      "6/0/0",
      "12/0/0",
      "18/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
      "18/0/0",
      "12/0/0",
      "6/0/0",
    ],
  },
  {
    name: "dash style",
    text: `RND 1- MR 6sc (6)
RND 2- INC around (12)
RND 3- *SC, INC* around (18)
RND 4- *2SC, INC* around (24)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "coaster w/ bpsc",
    text: `Rnd 1: 12 dc in MR, sl st in first dc (12)
Rnd 2: ch 3 (counts as dc), dc in same, 2 dc in each around, sl st in top of ch 3 (24)
Rnd 3: ch 1, BPsc around each st around, sl st in first (24)
Rnd 4: ch 1, *sc in next st, ch 1* around, sl st in first (24 sc, 24 ch-1)`,
    counts: ["12/0/0", "24/0/0", "24/0/0", "24/24/24"],
  },
  {
    name: "rounds in range with totals",
    text: `Rnd 1: 6 sc in MR
Rnd 2: 2 sc in each sc [12 sc]
Rnds 3-6: Continue increasing 6 sts evenly each rnd. [18, 24, 30, 36 sc]`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0", "36/0/0"],
  },
  {
    name: "total w/ inc turning ch",
    text: `Rnd 1: Ch 4, work 14 dc in 4th ch from hook (15 dc including beg ch), join.
Rnd 2: Ch 3, dc in same st, *2 dc in next st, rep from * around, join (30 dc, including beg ch).
Rnd 3: Ch 3, 2 dc in next st, *1 dc in next st, 2 dc in next st, rep from * around, join (45 dc).`,
    counts: ["15/0/0", "30/0/0", "45/0/0"],
  },
  {
    name: "continuing rounds",
    text: `Rnd 1: 6 sc in magic ring.
Rnd 2: inc in each st around. (12)
Rnd 3: *1 sc, inc; rep from * around. (18)
Rnd 4: *2 sc, inc; rep from * around. (24)
Rnd 5: *3 sc, inc; rep from * around. (30)
Rnd 6: *4 sc, inc; rep from * around. (36)
Rnds 7 & 8: sc in each st around. (36)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0", "36/0/0", "36/0/0", "36/0/0"],
  },
  {
    name: "cone hat",
    text: `Rnd 1: 6 sc in MR (6)
Rnd 2: [1 sc, inc] 3 times (9)
Rnd 3: [2 sc, inc] 3 times (12)
Rnd 4: [3 sc, inc] 3 times (15)
Rnd 5: [4 sc, inc] 3 times (18)`,
    counts: ["6/0/0", "9/0/0", "12/0/0", "15/0/0", "18/0/0"],
  },
  {
    name: "hat shaping prose",
    text: `Beanie. Worked top down in joined rounds. Ch 2 at beg of rnd does not count as a st.
Rnd 1: Magic ring, ch 2, 12 hdc in ring, join with sl st to first hdc. (12 sts)
Rnd 2: Ch 2, 2 hdc in each st around, join. (24 sts)
Rnd 3: Ch 2, *hdc in next st, 2 hdc in next st; rep from * around, join. (36 sts)
Rnd 4: Ch 2, *hdc in next 2 sts, 2 hdc in next st; rep from * around, join. (48 sts)
Rnd 5: Ch 2, *hdc in next 3 sts, 2 hdc in next st; rep from * around, join. (60 sts) 
Crown should measure 7" across.`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0", "60/0/0"],
  },
  {
    name: "european ball",
    text: `Rnd 1: start 6 sc in a magic ring [6]
Rnd 2: inc in all 6 st [12]
Rnd 3: (sc in next st, inc in next st) repeat 6 times [18]
Rnd 4: (sc in next 2 st, inc in next st) repeat 6 times [24]
Rnd 5 – 7: sc in all 24 st [24]
Rnd 8: (sc in next 2 st, dec) repeat 6 times [18]
Rnd 9: (sc in next st, dec) repeat 6 times [12]
Rnd 10: dec 6 times [6]`,
    counts: [
      "6/0/0",
      "12/0/0",
      "18/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
      "18/0/0",
      "12/0/0",
      "6/0/0",
    ],
  },
  {
    name: "shorthand list",
    text: `Rnd 1: 6 sc in MR.
Rnd 2: inc x6.
Rnd 3: sc 1, inc, sc 1, inc, sc 1, inc, sc 1, inc, sc 1, inc, sc 1, inc. (18)
Rnd 4: sc in each of the 18 st.
Rnd 5: sc 5, (inc) x2, sc 7, (inc) x2, sc 2. (22)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "18/0/0", "22/0/0"],
  },
  {
    name: "increases evenly",
    text: `Rnd 1: 12 sc in magic ring.
Rnd 2: Sc around, inc 6 sts evenly. (18)
Rnd 3: Sc around, increasing 6 evenly spaced. (24)
Rnd 4: sc in each st around, increasing 6 sts evenly around. (30)`,
    counts: ["12/0/0", "18/0/0", "24/0/0", "30/0/0"],
  },
  {
    name: "bpdc ribs hat",
    text: `Rnd 1: 12 dc in MR, join.
Rnd 2: ch 2 (doesn't count), (fpdc, dc) in each st, join. (24)
Rnd 3: ch 2, *fpdc around next fpdc, 2 dc in next dc; rep around, join. (36)
Rnd 4: ch 2, *fpdc around next st, bpdc around next 2 sts; rep around, join. (36)`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "36/0/0"],
  },
  {
    name: "hdc-slip textured",
    text: `R1: 10 hdc in MR, sl st.
R2: ch 1, 2 hdc in each st, sl st. (20)
R3: ch 1, sl st blo in each st around. (20)
R4: ch 1, *hdc in next st, 2 hdc in next st; rep from * around, sl st. (30)`,
    counts: ["10/0/0", "20/0/0", "20/0/0", "30/0/0"],
  },
  {
    name: "bold and colon inside",
    text: `**Round 1** (white): 6 sc in MR. [**6**]
**Round 2** (white): inc around. [**12**]
**Round 3** (blue): (sc, inc) around. [**18**]`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "R with dash & count arrow",
    text: `R1 - mr 6 sc -> 6
R2 - inc*6 -> 12
R3 - (sc, inc)*6 -> 18`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "hat chatty",
    text: `Start with a magic ring (or ch 2 and work into the 2nd ch from hook if you prefer).
Rnd 1: ch 2, 10 hdc in ring, sl st to the first hdc (not the ch 2!). (10)
Rnd 2: ch 2, 2 hdc in each hdc around, sl st to first hdc. (20)
Rnd 3: ch 2, *hdc in next hdc, 2 hdc in next hdc* around, sl st to first hdc. (30)
Rnd 4: ch 2, *hdc in next 2 hdc, 2 hdc in next hdc* around, sl st to first hdc. (40)
Try it on: the crown should be about 6" across. 
Rnd 5: ch 2, hdc in each hdc around, sl st to first hdc. (40)`,
    counts: ["10/0/0", "20/0/0", "30/0/0", "40/0/0", "40/0/0"],
  },
  {
    name: "finishing text",
    text: `Rnd 1: 6 sc in MR
Rnd 2: inc x 6
Finishing: Fasten off and sew 2 sc pieces together with 12 stitches. Block to 10 cm.`,
    counts: ["6/0/0", "12/0/0"],
  },
  {
    name: "inc in words list",
    text: `R1: 6 sc in mr
R2: inc in each st
R3: 1 sc, 1 inc, repeat 6 times
R4: 5 sc, inc, 5 sc, inc, 5 sc, inc (21)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "21/0/0"],
  },
  {
    name: "odd rounds same",
    text: `Rnd 1: 6 sc in MR
Rnd 2: inc around (12)
Rnd 3 and all odd rounds: sc around (12)
Rnd 4: (sc, inc) around (18)
Rnd 5: sc around (18)`,
    counts: ["6/0/0", "12/0/0", "12/0/0", "18/0/0", "18/0/0"],
  },
]

export const uk: readonly VariedPattern[] = []
