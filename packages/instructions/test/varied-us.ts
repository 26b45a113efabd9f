// Whole patterns of our own in US terms, in as many styles as patterns come in, each with what its rounds
// come to: stitches/chains/spaces, counted by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "blog granny",
    text: `Sunday Granny
Materials: DK yarn in 3 colours, 4.0mm hook

With Colour A, make a magic ring.
Round 1: Ch3 (counts as first dc here and throughout), 2dc in ring, ch2, [3dc, ch2] 3 times in ring. Join with a sl st to the top of the beginning ch-3. Fasten off. (12 dc, 4 ch-2 sps)
Round 2: Join Colour B in any ch-2 sp. Ch3, (2dc, ch2, 3dc) in same sp, ch1, *(3dc, ch2, 3dc) in next ch-2 sp, ch1; repeat from * around. Join. (24 dc)
Round 3: Join Colour C in any corner sp. Ch3, (2 dc, ch 2, 3 dc) in same corner, ch1, 3dc in next ch-1 sp, ch1, *[3dc, ch2, 3dc] in next corner, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * twice more. Sl st in top of ch-3 to join. Fasten off and weave in ends. (36 dc)`,
    counts: ["12/8/4", "24/12/8", "36/16/12"],
  },
  {
    name: "amigurumi ball",
    text: `Terms: US
R1: 6 sc in MR (6)
R2: inc x6 (12)
R3: (sc, inc) x6 (18)
R4: (2 sc, inc) x 6 (24)
R5-7: sc around (24)
R8: (2 sc, dec) x6 (18)
R9: (sc, dec) x6 (12)
R10: dec x6 (6)`,
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
    name: "numbers as words",
    text: `Terms: US
First round: Chain four, join with a slip stitch into a ring. Chain three, work eleven double crochet into the ring. Join to top of chain three. (Twelve dc)
Second round: Chain three, one double crochet in same stitch, two double crochet in each stitch around. Join. (24 dc)
Third round: Chain three, two double crochet in next stitch, *one double crochet in next stitch, two double crochet in next stitch; repeat from * to end. Join. (36 dc)`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "circle hdc spiral",
    text: `Terms: US
Rnd 1: Make a magic ring, 8 hdc into the ring. Do not join; work in continuous rounds. [8]
Rnd 2: Work 2 hdc into each st. [16]
Rnd 3: *1 hdc, 2 hdc in next st*, repeat around. [24]
Rnd 4: *Hdc in next 2 sts, 2 hdc in next* around. [32]
Rnd 5: *1 hdc in each of the next 3 sts, 2 hdc in the next one; rep from * to end. [40 hdc]`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0"],
  },
  {
    name: "hexagon with V",
    text: `Terms: US
Rnd 1: Ch 6, sl st in first ch to form a ring. Ch 4 (counts as dc and ch 1), (dc in ring, ch 1) 11 times; sl st in 3rd ch of beg ch-4. -- 12 dc, 12 ch-1 sps
Rnd 2: Sl st in first ch-1 sp, ch 3, (dc, ch 2, 2 dc) in same sp, *3 dc in next ch-1 sp**, (2 dc, ch 2, 2 dc) in next ch-1 sp; rep from * around, ending last rep at **; join with sl st in top of beg ch-3. -- 42 dc
Rnd 3: Ch 3, dc in next dc, *(2 dc, ch 2, 2 dc) in next ch-2 sp**, dc in next 7 dc; rep from * around, ending last rep at **, dc in last 5 dc; join. (66 dc)`,
    counts: ["12/12/12", "42/12/6", "66/12/6"],
  },
  {
    name: "flower layers",
    text: `Terms: US
Rnd 1: Ch 5, join to form ring, ch 1, 12 sc in ring, join.
Rnd 2: Ch 1, sc in first st, *ch 3, skip next st, sc in next st; repeat from * 4 more times, ch 3, skip last st, join with sl st in first sc. (6 loops)
Rnd 3: (Sc, hdc, 3 dc, hdc, sc) in each ch-3 loop around; join. 6 petals
Rnd 4: Working behind petals, *sc around post of next sc of Rnd 2, ch 5; rep from * around; join.
Rnd 5: (Sc, hdc, 5 dc, hdc, sc) in each ch-5 loop; join. (6 petals)`,
    counts: ["12/0/0", "6/18/6", "42/0/0", "6/30/6", "54/0/0"],
  },
  {
    name: "lace doily",
    text: `Terms: US
Rnd 1: Ch 8, join with sl st. Ch 3, 23 dc in ring, join to top of ch 3. 24 dc.
Rnd 2: Ch 5 (dc + ch 2), sk 1 dc, *dc in next dc, ch 2, sk 1 dc; rep from * around, join to 3rd ch of ch-5. 12 sps.
Rnd 3: Sl st in sp, ch 3, 3 dc in same sp, ch 1, *4 dc in next sp, ch 1; rep from * around, join. (48 dc)
Rnd 4: Sl st across next 3 dc and into ch-1 sp, ch 1, sc in same sp, ch 6, *sc in next ch-1 sp, ch 6; rep from * around; join to first sc. 12 loops
Rnd 5: Sl st into loop, ch 1, (3 sc, ch 3, 3 sc) in each loop around; join.`,
    counts: ["24/0/0", "12/24/12", "48/12/12", "12/72/12", "72/36/12"],
  },
  {
    name: "cluster mandala",
    text: `Terms: US
Beginning cluster: ch 3, yo, insert hook, pull up a loop.
Cluster (cl): dc3tog in same sp.
Rnd 1: Ch 4 (counts as dc, ch 1), *dc in ring, ch 1; rep from * 10 times more; join in 3rd ch of ch-4. (12 dc)
Rnd 2: Sl st in ch-1 sp, ch 3, dc2tog in same sp (counts as cluster), ch 2, *cl in next ch-1 sp, ch 2; rep from * around; join. (12 clusters)
Rnd 3: Sl st in ch-2 sp, ch 3, 2 dc in same sp, 3 dc in each ch-2 sp around; join. (36 dc)
Rnd 4: Ch 1, sc in same st, sc in next st, ch 3, sk 1 st, *sc in next 2 sts, ch 3, sk 1 st; rep from * around; join. (24 sc, 12 ch-3 loops)`,
    counts: ["12/12/12", "12/24/12", "36/0/0", "24/36/12"],
  },
  {
    name: "post stitches",
    text: `Terms: US
Rnd 1: MR, 12 dc, sl st. (12)
Rnd 2: Ch 2 (not a st), *FPdc around next dc, dc in same st; rep around, join. (24 sts)
Rnd 3: Ch 2, *FPdc around next FPdc, 2 dc in next dc; rep from * around, join to first FPdc. (36 sts)
Rnd 4: Ch 1, *fpdc around next fpdc, BPdc around each of next 2 dc; rep from * around. Join. (36)`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "36/0/0"],
  },
  {
    name: "back loop star",
    text: `Terms: US
Rnd 1: 10 sc in magic ring. Join.
Rnd 2: Ch 1, working in BLO, 2 sc in each st around. Join. (20 sc)
Rnd 3: Ch 1, *sc in next sc, hdc in next sc, (dc, picot, dc) in next sc, hdc in next sc; rep from * 4 more times. Join. (25 sts, 5 picots)`,
    counts: ["10/0/0", "20/0/0", "25/0/0"],
  },
  {
    name: "dashes",
    text: `Terms: US
Rnd 1 – ch 2, 6 sc in 2nd ch from hook — 6 sc
Rnd 2 – 2 sc in each sc around — 12 sc
Rnd 3 – *sc in next sc, 2 sc in next sc*, rep from * to * 5× more — 18 sc
Rnd 4 – (sc in next 2 sc, 2 sc in next sc) × 6 — 24 sc
Rnd 5 – rep Rnd 4, working 3 sc between increases — 30 sc`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0"],
  },
  {
    name: "range ditto",
    text: `Terms: US
Round 1: 8 sc in magic ring. (8)
Round 2: 2 sc in each st. (16)
Rounds 3 to 5: sc in each st. (16)
Round 6: [sc in next st, 2 sc in next st] around. (24)
Rounds 7 & 8: Work even. (24)
Round 9: Repeat Round 3.
Round 10: same as Round 9`,
    counts: [
      "8/0/0",
      "16/0/0",
      "16/0/0",
      "16/0/0",
      "16/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
      "24/0/0",
    ],
  },
  {
    name: "octagon",
    text: `Terms: US
Rnd 1: 8 sc in ring; join.
Rnd 2: ch 3, 2 dc in same sc, 3 dc in each sc around; join. 24 dc
Rnd 3: ch 3, dc in each dc around, working 3 dc in centre dc of each 3-dc group; join. 40 dc`,
    counts: ["8/0/0", "24/0/0", "40/0/0"],
  },
  {
    name: "wheel of trebles",
    text: `Terms: US
Rnd 1: Ch 10, sl st to first ch. Ch 4 (counts as 1 tr), 31 tr in ring. sl st to 4th ch. (32 tr)
Rnd 2: Ch 8 (counts as dc + ch 5), skip 3 tr, * dc in next tr, ch 5, skip 3 tr *. Rep between *s 6 more times. Join with sl st in 3rd ch of ch 8. (8 sps)
Rnd 3: sl st in next sp, ch 3 (counts as dc), 6 dc in same space, (ch 1, 7 dc in next space) 7 times, ch 1, join. (56 dc, 8 ch-1 sps)`,
    counts: ["32/0/0", "8/40/8", "56/8/8"],
  },
  {
    name: "labels on own line",
    text: `Terms: US

Round 1
Ch 4, join.
Ch 3, 11 dc in ring.
Join. (12)

Round 2
Ch 3, 1 dc in base of ch 3, 2 dc in each st to end. Join. (24)

Round 3
Ch 3, 1 dc in the same st, 1 dc in next st, *2 dc in next st, 1 dc in next st*. Repeat * to * to end. Join. (36)`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "caps",
    text: `TERMS: US
RND 1: CH 4, JOIN WITH SL ST TO FORM RING. CH 1, 8 SC IN RING. JOIN.
RND 2: CH 1, 2 SC IN EACH SC AROUND. JOIN. (16 SC)
RND 3: CH 1, *SC IN NEXT SC, (SC, CH 2, SC) IN NEXT SC, SC IN NEXT 2 SC; REP FROM * AROUND. JOIN. (20 SC, 4 CH-2 SPS)`,
    counts: ["8/0/0", "16/0/0", "20/8/4"],
  },
  {
    name: "solid square",
    text: `Terms: US
Rnd 1: Ch 4, join. Ch 5 (counts as dc and ch 2), (3 dc in ring, ch 2) 3 times, 2 dc in ring, join to 3rd ch of ch 5. (12 dc)
Rnd 2: Sl st in ch-2 sp, ch 5, 2 dc in same sp, *dc in each of next 3 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 2 more times, dc in next 3 dc, dc in first ch-2 sp; join to 3rd ch of ch-5. (28 dc)
Rnd 3: Sl st in sp, ch 5, 2 dc in same sp, *dc in each dc to next ch-2 sp, (2 dc, ch 2, 2 dc) in sp; rep from * 2 more times, dc in each dc to end, dc in same sp as beginning; join. (44 dc)`,
    counts: ["12/8/4", "28/8/4", "44/8/4"],
  },
  {
    name: "V-stitch round",
    text: `Terms: US
V-st: (dc, ch 1, dc) in same st or sp.
Rnd 1: 12 dc in magic ring; join.
Rnd 2: Ch 4 (counts as dc, ch 1), dc in same st, sk 1 st, *V-st in next st, sk 1 st; rep from * around; join to 3rd ch. (6 V-sts)
Rnd 3: Sl st to ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, *(2 dc, ch 1, 2 dc) in next V-st; rep from * around; join. (24 dc)
Rnd 4: Sl st to ch-1 sp, ch 3, 6 dc in same sp, *7 dc in next ch-1 sp; rep from * around; join. (42 dc)`,
    counts: ["12/0/0", "12/6/6", "24/6/6", "42/0/0"],
  },
  {
    name: "shell edging",
    text: `Terms: US
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st (12).
Rnd 3: [1 sc, 1 inc] 6 times (18).
Rnd 4: *sk 2 sts, 5 dc in next st, sk 2 sts, sl st in next st; rep from * around (3 shells).`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "18/0/0"],
  },
  {
    name: "tall closing",
    text: `Terms: US
Rnd 1: ch 5, join; ch 1, 12 sc in ring; join.
Rnd 2: ch 1, sc in first sc, *ch 4, sk next sc, sc in next sc; rep from * 4 times, ch 1, dc in first sc to join (counts as last ch-4 sp).
Rnd 3: ch 1, 2 sc around post of dc, *ch 5, 2 sc in next ch-4 sp; rep from * around, ch 2, dc in first sc. (6 loops)
Rnd 4: ch 3, 2 dc around post of joining dc, *ch 3, 5 dc in next loop; rep from * around; ch 3, 2 dc in first loop; join.`,
    counts: ["12/0/0", "6/24/6", "12/30/6", "30/18/6"],
  },
  {
    name: "picot edge circle",
    text: `Terms: US
Rnd 1: 8 dc in magic ring, join. (8 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each dc. Join. (16 dc)
Rnd 3: ch 1, *sc in next 2 sts, (sc, ch 3, sl st in first ch, sc) in next st, sc in next st; rep from * around. Join.`,
    counts: ["8/0/0", "16/0/0", "20/0/0"],
  },
  {
    name: "skipped ch start",
    text: `Terms: US
Rnd 1: Ch 4, 13 dc in 4th ch from hook, join to top of ch. (14 dc)
Rnd 2: Ch 3, dc in same place, 2 dc in each dc around, join. (28 dc)`,
    counts: ["14/0/0", "28/0/0"],
  },
  {
    name: "rows inside",
    text: `Terms: US
Rnd 1: ch 4, 11 dc in fourth ch from hook; join; turn.
Rnd 2: ch 1, sc in each st around; join; turn. (12 sc)
Rnd 3: ch 3, dc in same st, 2 dc in each st; join; turn. (24 dc)`,
    counts: ["12/0/0", "12/0/0", "24/0/0"],
  },
  {
    name: "between groups",
    text: `Terms: US
Rnd 1: ch 4, join; ch 3, dc in ring, ch 1, (2 dc, ch 1) 5 times in ring; join. (6 pairs)
Rnd 2: sl st to next ch-1 space, ch 3, (dc, ch 1, 2 dc) in the same space, (2 dc, ch 1, 2 dc) in each remaining ch-1 space; join.
Rnd 3: sl st to ch-1 space, ch 3, 2 dc, ch 1, 3 dc in same space, sc between the next 2 shells, *(3 dc, ch 1, 3 dc) in next ch-1 sp, sc between shells; rep from * around; join.`,
    counts: ["12/6/6", "24/6/6", "42/6/6"],
  },
  {
    name: "sc square corners 3sc",
    text: `Terms: US
Rnd 1: 8 sc in magic ring, join.
Rnd 2: ch 1, *3 sc in next sc (corner), sc in next sc; rep from * 3 times. Join. (16 sc)
Rnd 3: ch 1, sc in first sc, *3 sc in corner sc, sc in next 3 sc; rep from *, ending with sc in last 2 sc. Join. (24 sc)
Rnd 4: ch 1, sc in each sc around, working 3 sc in each corner sc. Join. (32 sc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0"],
  },
  {
    name: "dotted abbreviations",
    text: `Terms: US
1st Rnd. Ch. 5, join with sl. st. to form ring. Ch. 3, 11 d.c. in ring. Sl. st. in top of ch.-3.
2nd Rnd. Ch. 4, * d.c. in next d.c., ch. 1. Rep. from * around. Sl. st. in 3rd ch. of ch.-4. (12 sps.)
3rd Rnd. Sl. st. in next sp., ch. 3, d.c. in same sp., * 2 d.c. in next sp. Rep. from * around. Join. (24 d.c.)`,
    counts: ["12/0/0", "12/12/12", "24/0/0"],
  },
  {
    name: "two rounds on one line",
    text: `Terms: US
Rnd 1: 6 sc in MR. (6) Rnd 2: 2 sc in each. (12) Rnd 3: *1 sc, 2 sc in next; rep around. (18)`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "puff flower",
    text: `Terms: US
Puff st: (yo, insert hook, pull up a loop) 3 times in same st, yo and pull through all loops, ch 1 to close.
Rnd 1: Ch 5, join. (Puff st in ring, ch 3) 6 times. Join to first puff. (6 puffs)
Rnd 2: Ch 1, (sc, hdc, dc, hdc, sc) in each ch-3 sp. Join. (30 sts)`,
    counts: ["6/18/6", "30/0/0"],
  },
  {
    name: "as established",
    text: `Terms: US
Rnd 1: 6 sc in magic ring. (6 sts)
Rnd 2: 2 sc in each st around. (12 sts)
Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18 sts)
Rnds 4-6: Continue in this manner, increasing 6 sts evenly in each round. (24, 30, 36 sts)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0", "36/0/0"],
  },
  {
    name: "triangle",
    text: `Terms: US
Rnd 1: Ch 5, join. Ch 3, 3 dc in ring, ch 3, (4 dc in ring, ch 3) twice. Join. (12 dc, 3 ch-3 sps)
Rnd 2: Ch 3, dc in next 3 dc, (2 dc, ch 3, 2 dc) in corner, *dc in next 4 dc, (2 dc, ch 3, 2 dc) in corner; rep from * once more. Join. (24 dc)`,
    counts: ["12/9/3", "24/9/3"],
  },
  {
    name: "crossed stitches",
    text: `Terms: US
Crossed dc: sk next st, dc in next st, dc in skipped st.
Rnd 1: 12 sc in ring, join.
Rnd 2: ch 1, 2 sc in each sc, join. (24)
Rnd 3: ch 3 (does not count), *sk next st, dc in next st, dc in skipped st, ch 1; rep from * around; join to first dc. (24 dc, 12 ch-1 sps)`,
    counts: ["12/0/0", "24/0/0", "24/12/12"],
  },
  {
    name: "slash totals and colons",
    text: `Terms: US
Rnd 1: 6 sc in ring: 6 sts
Rnd 2: 2 sc in each sc: 12 sts
Rnd 3: * 1 sc in next, 2 sc in next. Repeat from * : 18 sts
Rnd 4: * 1 sc in each of next two, 2 sc in next. Repeat from * : 24 sts`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "bulleted markdown",
    text: `## Coaster
- **Terms:** US
- **Round 1:** ch 4, sl st to join; ch 2 (does not count as st), 12 dc in ring; sl st to first dc — **12 dc**
- **Round 2:** ch 2, 2 dc in each st around; sl st to first dc — **24 dc**
- **Round 3:** ch 2, \\*dc in next st, 2 dc in next st; rep from \\* around; sl st to first dc — **36 dc**`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "corner shorthand",
    text: `Terms: US
Corner = (2 dc, ch 2, 2 dc).
Rnd 1: Magic ring, ch 3, 2 dc, ch 2, (3 dc, ch 2) x 3, join. (12 dc)
Rnd 2: Ch 3, dc in next 2 dc, corner in ch-2 sp, *dc in next 3 dc, corner in ch-2 sp; rep from * 2 more times; join. (28 dc)
Rnd 3: Ch 3, dc in next 4 dc, *corner in next ch-2 sp, dc in next 7 dc; rep from *, ending last rep dc in last 2 dc; join. (44 dc)`,
    counts: ["12/8/4", "28/8/4", "44/8/4"],
  },
  {
    name: "ch1 counts as part",
    text: `Terms: US
Rnd 1: Ch 2. 8 sc in second chain from hook. Join.
Rnd 2: Ch 1, sc in same st, ch 1, *sc in next st, ch 1; rep from * around; join. (8 sc + 8 ch-1 sp)
Rnd 3: Sl st into ch sp, ch 1, (sc, ch 1, sc) in each ch-1 sp around. Join. (16 sc)
Rnd 4: ch 1, *sc in ch-1 sp, ch 2; rep from * around; join. (8 sc, 8 ch-2 sps)`,
    counts: ["8/0/0", "8/8/8", "16/8/8", "8/16/8"],
  },
  {
    name: "a ball told by its growth",
    text: `Terms: US
R1: 6 sc in MR (6)
R2: inc x 6 (12)
R3: (sc, inc) x 6 (18)
R4: (2 sc, inc) x 6 (24)
R5-8: continue in this manner, working 1 more sc between increases each round. (30, 36, 42, 48)
R9: as Rnd 4, working 7 sc between increases. (54)`,
    counts: [
      "6/0/0",
      "12/0/0",
      "18/0/0",
      "24/0/0",
      "30/0/0",
      "36/0/0",
      "42/0/0",
      "48/0/0",
      "54/0/0",
    ],
  },
  {
    name: "growth in several wordings",
    text: `Terms: US
Rnd 1: 8 sc in magic ring
Rnd 2: 2 sc in each sc
Rnds 3-6: One more plain sc between increases each round.
Rnd 7: work as Rnd 6 but with an extra stitch between each inc`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0", "48/0/0", "56/0/0"],
  },
  {
    name: "leaf modern",
    text: `Terms: US
Rnd 1: 6 sc in magic ring; join.
Rnd 2: *ch 5, sc in 2nd ch from hook, hdc in next ch, dc in next 2 ch, sl st in next sc of Rnd 1; rep from * 5 more times.`,
    counts: ["6/0/0", "30/30/6"],
  },
  {
    name: "leaf in ring",
    text: `Terms: US
Rnd 1: ch 6, join; *ch 6, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next ch, tr in next ch, sc in ring; rep from * 5 more times.`,
    counts: ["36/36/6"],
  },
]
