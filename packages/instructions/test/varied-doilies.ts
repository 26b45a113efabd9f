// Doilies and other lace in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "v-stitch",
    text: `V-st: (dc, ch 1, dc) in same st or space.
Ch 4; join.
Rnd 1: Ch 4 (counts as dc and ch 1), (dc in ring, ch 1) 9 times; join in 3rd ch of beg ch-4: 10 dc and 10 ch-1 sps.
Rnd 2: Sl st in ch-1 sp, ch 4, dc in same sp (beg V-st made), V-st in each ch-1 sp around; join to 3rd ch: 10 V-sts.
Rnd 3: Sl st in ch-1 sp; ch 3, 5 dc in same sp; 6 dc in each V-st ch-1 sp around; join: 60 dc.`,
    counts: ["10/10/10", "20/10/10", "60/0/0"],
  },
  {
    name: "twice more **",
    text: `Ch 6, join with sl st to form ring.
Rnd 1: Ch 3 (counts as dc), 15 dc in ring, join with sl st to 3rd ch of beg ch-3. [16 dc]
Rnd 2: Ch 5 (counts as dc, ch 2), sk next dc, *dc in next dc, ch 2, sk next dc; rep from * around, join with sl st to 3rd ch of beg ch-5. [8 dc, 8 ch-2 sps]
Rnd 3: Sl st in first ch-2 sp, ch 3, 2 dc in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp, 3 dc in next ch-2 sp**; rep from * to ** twice more, (3 dc, ch 2, 3 dc) in last sp, join with sl st to 3rd ch of beg ch-3. [36 dc, 4 ch-2 sps]`,
    counts: ["16/0/0", "8/16/8", "36/8/4"],
  },
  {
    name: "joins-as-you-go",
    text: `Rnd 1: Ch 4, sl st to form ring, ch 3, 2 dc in ring, (ch 3, 3 dc in ring) 3 times, ch 3, join to top of ch-3.
Rnd 2: Sl st to next ch-3 sp, ch 3, 2 dc in same sp, ch 3, 3 dc in same sp, ch 2, *(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 2*, rep from * to * 2 times, join.`,
    counts: ["12/12/4", "24/20/8"],
  },
  {
    name: "spaces between groups",
    text: `Ch 5, sl st to join.
Rnd 1: ch 3, 23 dc in ring, join. 24 dc.
Rnd 2: ch 3, dc in next 2 dc, ch 1, (dc in next 3 dc, ch 1) around, join. 24 dc, 8 ch-1 sps
Rnd 3: sl st in next dc, ch 3, dc in next dc, 2 dc in next ch-1 sp, ch 1, sk next dc, (dc in next 2 dc, 2 dc in next ch-1 sp, ch 1, sk next dc) around, join. 32 dc`,
    counts: ["24/0/0", "24/8/8", "32/8/8"],
  },
  {
    name: "vintage doily US",
    text: `PINEAPPLE TRAY MAT
Materials: 1 ball crochet cotton, size 30. Steel crochet hook No. 12.
Starting at center, ch 8, join with sl st to form ring. 1st rnd: Ch 3, 11 dc in ring, sl st in top of ch-3. 2nd rnd: Ch 4, (dc in next space between dc, ch 1, dc in next dc, ch 1) 11 times, dc in last space, ch 1, join to 3rd ch of ch-4. 3rd rnd: Ch 1, sc in same place as sl st, * ch 3, skip ch-1 sp, sc in next dc. Repeat from * around, ending with ch 3, join to first sc. 4th rnd: Sl st in next loop, sc in same loop, * ch 5, sc in next loop. Repeat from * around, ending with ch 5, join to first sc. 5th rnd: Sl st in next 2 ch, sc in loop, * ch 12, skip next loop, sc in next loop. Rep from * around, ending with ch 12, sl st in first sc.`,
    counts: ["12/0/0", "24/24/24", "24/72/24", "24/120/24", "12/144/12"],
  },
  {
    name: "wheel doily beeton",
    text: `No. 3 Round
Make a chain of 8 stitches, and join it into a circle.
1st round: Work 8 double crochet stitches into the circle.
2nd round: Work 2 double crochet into every stitch of preceding round.
3rd round: 1 double crochet on the first double crochet of last round, *3 chain, 1 double crochet on the next; repeat from * to the end of the round, 3 chain, and join.
4th round: 1 double crochet, 3 treble, 1 double crochet in every chain of 3.`,
    counts: ["8/0/0", "16/0/0", "16/48/16", "80/0/0"],
  },
  {
    name: "flower petals behind",
    text: `Make ring.
Rnd 1: Ch 1, 12 sc in ring, join with sl st in first sc. (12 sc)
Rnd 2: Ch 1, sc in first sc, ch 3, sk next sc, (sc in next sc, ch 3, sk next sc) 5 times, join with sl st in first sc. (6 ch-3 loops)
Rnd 3: Sl st in first ch-3 loop, (sc, hdc, 4 dc, hdc, sc) in each ch-3 loop around, join with sl st in first sc. (6 petals)
Rnd 4: Ch 1, working behind petals, (BPsc around next sc of Rnd 2, ch 5) 6 times, join with sl st in first sc. (6 ch-5 loops)`,
    counts: ["12/0/0", "6/18/6", "48/0/0", "6/30/6"],
  },
  {
    name: "join as you go",
    text: `First Motif
Rnd 1: Ch 5, join with sl st to form a ring; ch 3, 2 dc in ring, ch 3, (3 dc in ring, ch 3) 3 times; join with a sl st in 3rd ch of beg ch-3.
Rnd 2: Sl st in next 2 dc and in next ch-3 sp, ch 3, (2 dc, ch 3, 3 dc) in same sp, ch 3, *(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 3; rep from * twice; join with a sl st in 3rd ch of beg ch-3. Fasten off.`,
    counts: ["12/12/4", "24/24/8"],
  },
  {
    name: "rosette bullion lace",
    text: `Irish Rose
Ch 6; join in ring.
Row 1: 16 s. c. in ring; join.
Row 2: * Ch 3, skip 1 s. c., 1 s. c. in next; repeat from * 7 times. 
Row 3: In each loop make 1 s. c., 5 d. c., 1 s. c.
Row 4: * Ch 6, 1 s. c. in back of next s. c. of row 2; repeat from * 7 times.`,
    counts: ["16/0/0", "8/24/8", "56/0/0", "8/48/8"],
  },
  {
    name: "ripple hex",
    text: `Rnd 1: 6 sc in MC.
Rnd 2: [sc, ch 1, sc] in each sc. (12 sc)
Rnd 3: Sc in next st, *(sc, ch 1, sc) in ch-1 sp, sc in next 2 sts; repeat from * around, ending with sc in last st. (24 sc)
Rnd 4: Sc in next 2 sts, *(sc, ch 1, sc) in ch-1 sp, sc in next 4 sts; rep from * around, ending with sc in last 2 sts. (36 sc)`,
    counts: ["6/0/0", "12/6/6", "24/6/6", "36/6/6"],
  },
  {
    name: "lacy coaster",
    text: `Terms: US
Rnd 1: (RS) Ch 4, join with sl st to form a ring; ch 3 (counts as first dc now and throughout), 11 dc in ring; join with sl st to first dc. (12 dc)
Rnd 2: Ch 3, dc in same dc as joining, 2 dc in each dc around; join with sl st to first dc. (24 dc)
Rnd 3: Ch 1, sc in same dc as joining, ch 3, skip next dc, *sc in next dc, ch 3, skip next dc; repeat from * around; join with sl st to first sc. (12 sc, 12 ch-3 sps)
Rnd 4: (Slip st, ch 1, sc) in first ch-3 sp, ch 5, (sc in next ch-3 sp, ch 5) around; join with sl st to first sc. (12 ch-5 sps)
Rnd 5: (Slip st, ch 1, 5 sc, ch 3, 5 sc) in first ch-5 sp, (5 sc, ch 3, 5 sc) in each ch-5 sp around; join with sl st to first sc; finish off.`,
    counts: ["12/0/0", "24/0/0", "12/36/12", "12/60/12", "120/36/12"],
  },
  {
    name: "old weldon",
    text: `A Round for a Cushion
Commence with 8 chain, unite in a circle.
1st round—Work 16 d.c. into the circle, join evenly.
2nd round—Work 5 chain (to stand for 1 tr. and 2 ch.), * 1 tr. on the next d.c., 2 ch., repeat from * to end, and join evenly to the third stitch of chain with which the round commenced.
3rd round—Work 4 d.c. under each loop of 2 chain. Fasten off.`,
    counts: ["16/0/0", "16/32/16", "64/0/0"],
  },
  {
    name: "doily fans",
    text: `Fan Doily
With size 10 thread and 1.75 mm hook.
Rnd 1: Ch 6, sl st to form ring; ch 3, 11 dc in ring; sl st to top of ch-3. (12 dc)
Rnd 2: Ch 3, 1 dc in same place, 2 dc in each of next 11 dc; sl st to top of ch-3. (24 dc)
Rnd 3: Ch 1, sc in same place, ch 3, skip 1 dc, [sc in next dc, ch 3, skip 1 dc] 11 times; sl st to first sc. (12 ch-3 loops)
Rnd 4: Sl st to center of ch-3 loop, ch 3, 4 dc in same loop, [5 dc in next loop] 11 times; sl st to top of ch-3. (12 fans of 5 dc)
Rnd 5: Sl st in next 2 dc, ch 1, sc in same dc, ch 5, [sc in center dc of next fan, ch 5] 11 times; sl st to first sc.
Rnd 6: Sl st into loop, ch 3, 6 dc in same loop, 7 dc in each ch-5 loop around; sl st to top of ch-3.`,
    counts: ["12/0/0", "24/0/0", "12/36/12", "60/0/0", "12/60/12", "84/0/0"],
  },
  {
    name: "snowflake",
    text: `Snowflake
Ch 6, sl st in first ch to form ring.
Rnd 1: Ch 5 (counts as first dc, ch 2), [dc in ring, ch 2] 5 times, sl st in third ch of beg ch-5. (6 dc, 6 ch-2 sps)
Rnd 2: Sl st in ch-2 sp, ch 1, [sc, ch 3, sc, ch 3] in each ch-2 sp around, sl st in first sc. (12 sc, 12 ch-3 sps)
Rnd 3: Sl st in first ch-3 sp, ch 1, *(2 sc, ch 3, 2 sc) in ch-3 sp, 2 sc in next ch-3 sp; rep from * 5 times, sl st in first sc.`,
    counts: ["6/12/6", "12/36/12", "36/18/6"],
  },
  {
    name: "dc with ch between",
    text: `Ch 5, join with sl st.
Rnd 1: Ch 5 (counts as dc, ch 2), (dc in ring, ch 2) 7 times, join to 3rd ch of ch-5.
Rnd 2: Sl st in ch-2 sp, ch 5, dc, ch 2, dc in same sp, ch 2, *(dc, ch 2, dc, ch 2, dc, ch 2) in next ch-2 sp; rep from * around, join to 3rd ch of ch-5.
Rnd 3: Sl st in next sp, ch 1, sc in same sp, *ch 5, sc in next sp; rep from * around, ch 2, dc in first sc.`,
    counts: ["8/16/8", "24/48/24", "24/120/24"],
  },
  {
    name: "bead doily repeated rounds",
    text: `Rnd 1: 16 sc in magic ring; sl st to first sc.
Rnd 2: Ch 5, *dc in next sc, ch 2; rep from * around; sl st to 3rd ch of ch-5.
Rnd 3: Ch 6, *dc in next dc, ch 3; rep from * around; sl st to 3rd ch of ch-6.
Rnd 4: Ch 7, *dc in next dc, ch 4; rep from * around; sl st to 3rd ch of ch-7.`,
    counts: ["16/0/0", "16/32/16", "16/48/16", "16/64/16"],
  },
  {
    name: "fan of dc with ch-1",
    text: `Rnd 1: 16 sc in ring, join.
Rnd 2: Ch 1, sc in first sc, ch 3, sk 1, *sc in next sc, ch 3, sk 1; rep from * around, join.
Rnd 3: Sl st in loop, ch 4 (counts as dc, ch 1), (dc, ch 1) 3 times in same loop, dc in same loop, *(dc, ch 1) 4 times in next loop, dc in same loop; rep from * around, join to 3rd ch.`,
    counts: ["16/0/0", "8/24/8", "40/32/32"],
  },
  {
    name: "with ch-1 between each",
    text: `Rnd 1: (dc, ch 2) 8 times in magic ring, join.
Rnd 2: *5 dc with ch 1 between each dc in next ch-2 sp; rep from * around, join.`,
    counts: ["8/16/8", "40/32/32"],
  },
  {
    name: "dahlia doily",
    text: `Ch 7, join with sl st to form ring.
Rnd 1: Ch 1, 16 sc in ring, join with sl st to first sc. (16 sc)
Rnd 2: Ch 1, sc in joining st, ch 5, sk next st, *sc in next st, ch 5, sk next st; rep from * 6 times more; join with sl st to first sc. (8 ch-5 lps)
Rnd 3: Sl st into first lp, ch 1, 9 sc in each lp around; join with sl st to first sc. (72 sc)
Rnd 4: Ch 4 (counts as dc and ch-1 sp), sk next 2 sts, *dc in next st, ch 1, sk next 2 sts; rep from * around; join with sl st to 3rd ch of beg ch-4. (24 dc)
Rnd 5: Ch 6 (counts as dc and ch 3), *dc in next dc, ch 3; rep from * around; join with sl st to 3rd ch of beg ch-6. (24 ch-3 sps)`,
    counts: ["16/0/0", "8/40/8", "72/0/0", "24/24/24", "24/72/24"],
  },
  {
    name: "trefoil",
    text: `Ch 1 as centre.
Rnd 1: (sc, ch 8) 3 times in magic ring; join.
Rnd 2: 12 sc in each loop; join.`,
    counts: ["3/24/3", "36/0/0"],
  },
  {
    name: "wheel of leaves",
    text: `Rnd 1: ch 12, join to form a ring; 24 sc in ring. (24 sc)
Rnd 2: *1 sc in next sc, ch 3, skip 1 sc; rep from * around. (12 sc + 12 ch-3 loops; 48 sts with chains)
Rnd 3: *1 sc, 5 dc, 1 sc in next ch-3 loop; rep from * around. (84 sts)
Rnd 4: *1 sc in centre dc of next petal, ch 6; rep from * around. (12 sc + 12 ch-6 loops)
Rnd 5: *1 sc in next sc, 8 sc in next ch-6 loop; rep from * around. (108 sc)
Rnd 6: *1 dc, ch 4, skip 3 sc, 1 dc in next sc, ch 4, skip 4 sc; rep from * around. (24 dc + 24 ch-4 sps)`,
    counts: ["24/0/0", "12/36/12", "84/0/0", "12/72/12", "108/0/0", "24/96/24"],
  },
  {
    name: "rounds doubled",
    text: `Rnd 1: 8 sc in ring. (8 sc)
Rnd 2: 2 sc in each sc. (16 sc)
Rnd 3: *1 dc in next sc, ch 1; rep from * around. (16 dc + 16 ch-1 sps)
Rnd 4: 1 sc in each dc, 2 sc in each ch-1 sp. (48 sc)
Rnd 5: 2 sc in each sc. (96 sc)`,
    counts: ["8/0/0", "16/0/0", "16/16/16", "48/0/0", "96/0/0"],
  },
  {
    name: "turned rounds of ridge",
    text: `Rnd 1: ch 4, join to form a ring; 6 sc in ring; turn. (6 sc)
Rnd 2: 3 sc in each sc, in the back loop; turn. (18 sc)
Rnd 3: *1 sc in next sc, 3 sc in next sc, 1 sc in next sc; rep from * 5 more times, in back loops; turn. (30 sc)
Rnd 4: *1 sc in each of next 2 sc, 3 sc in next sc, 1 sc in each of next 2 sc; rep from * 5 more times; turn. (42 sc)`,
    counts: ["6/0/0", "18/0/0", "30/0/0", "42/0/0"],
  },
  {
    name: "open lace six",
    text: `Rnd 1: ch 6, join to form a ring; 12 sc in ring. (12 sc)
Rnd 2: *1 sc, ch 5; rep from * around. (12 sc + 12 ch-5 loops)
Rnd 3: *1 sc in centre of next loop, ch 7; rep from * around. (12 sc + 12 ch-7 loops; 96 sts with chains)`,
    counts: ["12/0/0", "12/60/12", "12/84/12"],
  },
  {
    name: "scallops closing",
    text: `Rnd 1: ch 15, join to form a ring; 2 sc in each ch. (30 sc)
Rnd 2: *1 sc in next sc, ch 4, skip next sc; rep from * around. (15 sc + 15 ch-4 loops)
Rnd 3: 5 sc in each loop. (75 sc)
Rnd 4: sl st in back loop of each sc. (75 sl st)`,
    counts: ["30/0/0", "15/60/15", "75/0/0", "75/0/0"],
  },
  {
    name: "doubled star",
    text: `Rnd 1: ch 4, join with sl st to form ring; ch 1, 10 sc in ring; join with sl st to first sc. (10 sc)
Rnd 2: ch 1, 2 sc in each sc around; join with sl st to first sc. (20 sc)
Rnd 3: ch 1, sc in same st, ch 3, sk next sc, *sc in next sc, ch 3, sk next sc; rep from * around; join with sl st to first sc. (10 ch-3 sps)
Rnd 4: sl st in ch-3 sp; ch 1, (2 sc, ch 2, 2 sc) in same sp, sc in next sc, *(2 sc, ch 2, 2 sc) in next ch-3 sp, sc in next sc; rep from * around; join with sl st to first sc. (50 sc, 10 ch-2 sps)`,
    counts: ["10/0/0", "20/0/0", "10/30/10", "50/20/10"],
  },
  {
    name: "dc hex with blo",
    text: `Rnd 1: 12 dc in magic ring; join with sl st to first dc. (12 dc)
Rnd 2: ch 2 (does not count), dc in first st, *(dc, ch 1, dc) in next st, dc in next st; rep from * 4 more times; (dc, ch 1, dc) in last st; join with sl st to first dc. (18 dc, 6 ch-1 sps)
Rnd 3: ch 2 (does not count), dc in blo of first 2 sts, *(dc, ch 1, dc) in ch-1 sp, dc in blo of next 3 sts; rep from * 4 more times; (dc, ch 1, dc) in ch-1 sp, dc in blo of last st; join. (30 dc)
Rnd 4: ch 2 (does not count), dc in blo of each st around, working (dc, ch 1, dc) in each ch-1 sp; join. (42 dc)`,
    counts: ["12/0/0", "18/6/6", "30/6/6", "42/6/6"],
  },
  {
    name: "colour names",
    text: `Colour A = sage, Colour B = cream, Colour C = rust
Rnd 1 - Sage: 8 sc into magic ring with ch 1 between each, sl st to join. 
Rnd 2 - Cream: join in any ch-1 sp, ch 1, (sc, ch 1, sc, ch 1) in each ch-1 sp around, sl st to first sc. (16 sc, 16 ch-1 sps)
Rnd 3 - Rust: join in any ch-1 sp, ch 1, (2 sc, ch 1) in each ch-1 sp around, sl st to first sc. (32 sc, 16 ch-1 sps)`,
    counts: ["8/8/8", "16/16/16", "32/16/16"],
  },
  {
    name: "cut",
    text: `Terms: US
Rnd 1: Ch 6, join with sl st to form ring; ch 3 (counts as dc), 11 dc in ring; join with sl st to top of ch-3.
Rnd 2: Ch 5 (counts as dc, ch 2), *dc in next dc, ch 2; rep from * 10 times more; join with sl st to 3rd ch of ch-5.
Rnd 3: Sl st in ch-2 sp, ch 3 (counts as dc), 3 dc in same sp, *(3 dc, ch 5, 3 dc) in next ch-2 sp, 4 dc in next ch-2 sp**, 4 dc in next ch-2 sp; rep from * around; join.`,
    counts: ["12/0/0", "12/24/12", "56/20/4"],
  },
  {
    name: "every sp alternately",
    text: `Rnd 1: (dc, ch 1) 12 times in MR; join.
Rnd 2: *dc in next ch-1 sp, ch 1, (dc, ch 1) twice in next ch-1 sp; rep from * around; join. (18 dc, 18 ch-1 sps)`,
    counts: ["12/12/12", "18/18/18"],
  },
  {
    name: "** with text",
    text: `Rnd 1: In MR, *3 dc, ch 3; rep from * 3 more times; join.
Rnd 2: Sl st to ch-3 sp, (ch 3, 2 dc, ch 3, 3 dc) in same sp, **ch 2, (3 dc, ch 3, 3 dc) in next ch-3 sp; rep from ** 2 more times, ch 2; join.
Rnd 3: Sl st to ch-3 sp, (ch 3, 2 dc, ch 3, 3 dc) in same sp, *ch 2, 3 dc in ch-2 sp, ch 2**, (3 dc, ch 3, 3 dc) in next ch-3 sp; rep from * 3 times more, ending at **; join.`,
    counts: ["12/12/4", "24/20/8", "36/28/12"],
  },
  {
    name: "chains counted in total",
    text: `Rnd 1: 8 sc in MR; join. (8)
Rnd 2: ch 5 (counts as dc + 2 ch), *dc in next sc, ch 2; rep from * around; join to 3rd ch. (24 sts: 8 dc + 16 ch)
Rnd 3: sl st in sp, ch 1, 5 sc in each ch-2 sp around; join. (40)`,
    counts: ["8/0/0", "8/16/8", "40/0/0"],
  },
  {
    name: "spaces between dc pairs",
    text: `Rnd 1: ch 4, join; ch 3, 11 dc in ring; join.
Rnd 2: ch 4 (counts as dc, ch 1), *dc in next dc, ch 1; rep from * around; join in 3rd ch of ch-4.
Rnd 3: sl st in ch-1 sp, ch 3, 2 dc in same sp, ch 1, *3 dc in next ch-1 sp, ch 1; rep from * around; join in 3rd ch of ch-3.`,
    counts: ["12/0/0", "12/12/12", "36/12/12"],
  },
]

export const uk: readonly VariedPattern[] = [
  {
    name: "uk mandala",
    text: `UK terms throughout.
To make: 4ch, join with ss to make a ring.
Rnd 1: 3ch (counts as first tr), 11tr in ring, ss to third ch of beginning 3ch. (12 tr)
Rnd 2: 3ch, tr in same place, 2tr in each st around, ss in third ch of beg 3ch. (24 tr)
Rnd 3: 1ch, dc in same st, *3ch, miss 1 st, dc in next st; rep from * around, 3ch, ss to first dc. (12 3ch-loops)
Rnd 4: ss in next 3ch-loop, (3ch, 4tr) in same loop, 5tr in each loop around, ss in top of 3ch. (60 tr)
Rnd 5: ss to middle tr of group, 1ch, dc in same st, *5ch, dc in middle tr of next group; rep from * around, 5ch, ss to first dc.`,
    counts: ["12/0/0", "24/0/0", "12/36/12", "60/0/0", "12/60/12"],
  },
]
