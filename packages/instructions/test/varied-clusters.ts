// Pieces with clusters, shells, picots and the like in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "puff spiral coaster",
    text: `Puff = (yo, insert hook, pull up a loop) 3 times in same st, yo, draw through all loops on hook.
Start: magic ring
Rnd 1: (Puff, ch 1) 8 times in ring; join with sl st to top of first puff. (8 puffs, 8 ch-1 sps)
Rnd 2: Sl st in next ch-1 sp, ch 2, (puff, ch 1) twice in same sp and in each ch-1 sp around; join. (16 puffs)
Rnd 3: Ch 1, *sc in top of next puff, 2 sc in next ch-1 sp; rep from * around, join to first sc. — 48 sc`,
    counts: ["8/8/8", "16/16/16", "48/0/0"],
  },
  {
    name: "cluster doily",
    text: `Cluster (cl): (yo, insert hook in ring or sp, yo and pull up a loop, yo and draw through 2 loops) 3 times in same place, yo and draw through all 4 loops on hook.
Beg cl: ch 2, (yo, insert hook, yo and pull up a loop, yo and draw through 2 loops) 2 times, yo and draw through all 3 loops.
Ch 6, join with sl st to form ring.
Rnd 1: Beg cl in ring, ch 3, (cl in ring, ch 3) 7 times, join with sl st to top of beg cl. (8 cl, 8 ch-3 sps)
Rnd 2: Ch 1, 6 sc in each ch-3 sp around, join with sl st to first sc. (48 sc)
Rnd 3: Ch 1, sc in same st, ch 3, sk next sc, *sc in next sc, ch 3, sk next sc; rep from * around, join with sl st to first sc. (24 ch-3 lps)
Rnd 4: Sl st in first ch-3 lp, ch 1, sc in same lp, ch 5, *sc in next ch-3 lp, ch 5; rep from * around, join with sl st to first sc. (24 ch-5 lps)`,
    counts: ["8/24/8", "48/0/0", "24/72/24", "24/120/24"],
  },
  {
    name: "picot edging",
    text: `Terms: US
Picot: ch 3, sl st in 3rd ch from hook.
1. Magic ring, 12 dc into the ring, sl st to first dc. [12]
2. Ch 3, 1 dc in same st, 2 dc in each st to end, sl st. [24]
3. Ch 3, 2 dc in next st, (1 dc in next st, 2 dc in next st) to end, sl st. [36]
4. Ch 1, (sc in next 3 sts, picot) 12 times, sl st to first sc.`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "36/0/0"],
  },
  {
    name: "shell edge",
    text: `Rnd 1: In MR, 12 dc. (12)
Rnd 2: 2 dc in each st. (24)
Rnd 3: *dc in next, 2 dc in next* around. (36)
Rnd 4: *dc in next 2, 2 dc in next* around. (48)
Rnd 5: *sc in next st, sk next st, 5 dc in next st, sk next st; rep from * around, join w/sl st to first sc. (12 shells)`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0", "72/0/0"],
  },
  {
    name: "shells circle",
    text: `Rnd 1: Ch 5, sl st to form ring, ch 3, 14 dc in ring, sl st in top of ch-3 (15 dc made).
Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, sl st in top of ch-3 (30 dc made).
Rnd 3: Ch 1, sc in same st, ch 2, sk 1 dc, (sc in next dc, ch 2, sk 1 dc) 14 times, sl st in first sc (15 ch-2 sps made).
Rnd 4: Sl st in first ch-2 sp, ch 3, 4 dc in same sp (beginning shell made), 5 dc in each rem ch-2 sp around (shells made), sl st in top of ch-3 (15 shells made).`,
    counts: ["15/0/0", "30/0/0", "15/30/15", "75/0/0"],
  },
  {
    name: "bobble",
    text: `Bobble: yo, insert hook in st, pull up a loop, yo, pull through 2 loops; (yo, insert hook in same st, pull up a loop, yo, pull through 2 loops) 3 times; yo and pull through all 5 loops.
Rnd 1: 9 sc in ring. Join.
Rnd 2: Ch 1, 2 sc in each sc. Join. 18 sc.
Rnd 3: Ch 1, *bobble in next sc, sc in next sc; rep from * around. Join. 9 bobbles, 9 sc.
Rnd 4: Ch 1, *2 sc in next bobble, sc in next sc; rep from * around. Join. 27 sc.`,
    counts: ["9/0/0", "18/0/0", "18/0/0", "27/0/0"],
  },
  {
    name: "yo spelled puff",
    text: `Puff stitch: [yarn over, insert hook in st or sp, draw up a long loop] 4 times, yarn over and draw through all 9 loops, ch 1 to close.
Rnd 1: Ch 4, join; ch 2, (puff stitch in ring, ch 2) 6 times; join to first puff.
Rnd 2: Sl st in first ch-2 sp, (puff stitch, ch 1, puff stitch, ch 1) in each ch-2 sp around; join to first puff.`,
    counts: ["6/12/6", "12/12/12"],
  },
  {
    name: "shell doily",
    text: `Center: Ch 6, join.
Rnd 1: Ch 1, 16 sc in ring, join.
Rnd 2: Ch 1, sc in same sc, ch 3, sk 1 sc, (sc in next sc, ch 3, sk 1 sc) 7 times, join.
Rnd 3: Sl st in next loop, ch 3, dc in same loop, ch 2, 2 dc in same loop (shell made), * shell of 2 dc, ch 2, 2 dc in next loop; rep from * around, join to top of ch-3. (8 shells)
Rnd 4: Sl st in next dc and in ch-2 sp, ch 3, dc, ch 2, 2 dc in same sp, ch 2, *shell in sp of next shell, ch 2; rep from * around, join.`,
    counts: ["16/0/0", "8/24/8", "32/16/8", "32/32/16"],
  },
  {
    name: "ch-3 clusters placed",
    text: `Rnd 1: Ch 4, 11 dc in 4th ch from hook (the 3 skipped chs count as first dc), sl st in top of beg ch. 12 dc.
Rnd 2: Ch 5 (counts as dc and ch-2 sp), [dc in next dc, ch 2] around, sl st in 3rd ch of beg ch-5. 12 dc, 12 ch-2 sps.
Rnd 3: Sl st in first ch-2 sp, [ch 3, 2 dc] in same sp, ch 1, [3 dc in next ch-2 sp, ch 1] around, sl st in top of beg ch-3. 36 dc, 12 ch-1 sps.`,
    counts: ["12/0/0", "12/24/12", "36/12/12"],
  },
  {
    name: "lace with clusters between",
    text: `Ch 4, sl st to form a ring.
Rnd 1: Ch 2, dc2tog in ring, ch 2, (dc3tog in ring, ch 2) 5 times; sl st to top of first cluster. (6 clusters)
Rnd 2: Sl st in ch-2 sp, ch 1, (sc, ch 3, sc, ch 3) in each ch-2 sp around; join. (12 sc)
Rnd 3: Sl st in ch-3 sp, ch 3, dc in same sp, ch 4, (2 dc, ch 4) in each ch-3 sp around; join. (24 dc)`,
    counts: ["6/12/6", "12/36/12", "24/48/12"],
  },
  {
    name: "picot ring",
    text: `Rnd 1: Ch 1, 24 sc in magic ring; join.
Rnd 2: Ch 1, *sc in next 2 sc, picot; rep from * around; join. Picot: ch 3, sl st in first ch.
Rnd 3: Ch 1, *sc in next sc, ch 3, skip next sc; rep from * around; join.`,
    counts: ["24/0/0", "24/0/0", "12/36/12"],
  },
  {
    name: "popcorn wheel",
    text: `Rnd 1: 8 sc in ring; join.
Rnd 2: Ch 4 (dc, ch 1), dc in same sc, ch 1, *(dc, ch 1) twice in next sc; rep from * around; join in 3rd ch of ch-4.
Rnd 3: Sl st in next ch-1 sp, ch 3, popcorn in same sp, ch 5, *sk next ch-1 sp, popcorn in next ch-1 sp, ch 5; rep from * around; join in top of first popcorn. (8 popcorns)`,
    counts: ["8/0/0", "16/16/16", "8/40/8"],
  },
  {
    name: "star of points",
    text: `Rnd 1: ch 5, join to form a ring; 10 sc in ring. (10 sc)
Rnd 2: *1 sc in next sc, ch 5; rep from * around. (10 sc + 10 ch-5 loops)
Rnd 3: (1 sc, 1 hdc, 2 dc, 1 tr, picot, 1 tr, 2 dc, 1 hdc, 1 sc) in each ch-5 loop. (10 points of 10 sts)
Rnd 4: *1 sc in picot of next point, ch 7; rep from * around. (10 sc + 10 ch-7 loops)`,
    counts: ["10/0/0", "10/50/10", "100/0/0", "10/70/10"],
  },
  {
    name: "shells on bars",
    text: `Rnd 1: ch 8, join to form a ring; ch 3 (counts as dc), 15 dc in ring; join. (16 dc)
Rnd 2: ch 5 (counts as dc + ch 2), *1 dc in next dc, ch 2; rep from * 14 more times; join to 3rd ch. (16 dc + 16 ch-2 sps; 48 sts with chains)
Rnd 3: sl st to next ch-2 sp; *5 dc in sp, ch 1; rep from * around. (80 dc + 16 ch-1 sps)`,
    counts: ["16/0/0", "16/32/16", "80/16/16"],
  },
  {
    name: "tufts",
    text: `Rnd 1: 12 sc in ring. (12 sc)
Rnd 2: 2 sc in each sc. (24 sc)
Rnd 3: *1 sc in next sc, tuft of 5 dc in next sc; rep from * around. (12 sc + 12 tufts)
Rnd 4: *1 sc in next sc, 2 sc in next tuft; rep from * around. (36 sc)`,
    counts: ["12/0/0", "24/0/0", "24/0/0", "36/0/0"],
  },
]

export const uk: readonly VariedPattern[] = [
  {
    name: "treble clusters uk",
    text: `UK Terms
Cluster (CL): work 3 dtr leaving the last loop of each on the hook, yrh and draw through all 4 loops.
Base ring: 6ch, ss in first ch.
1st round: 4ch, work 2 dtr leaving last loop of each on hook, yrh and draw through all 3 loops (counts as first CL), 3ch, [CL in ring, 3ch] 7 times, ss in top of first CL. 8 CL.
2nd round: 1ch, 1dc in same place, *5ch, 1dc in top of next CL; rep from * to end, omitting last dc, ss in first dc. 8 loops
3rd round: ss into loop, 1ch, 8dc in each 5ch loop, ss in first dc. 64dc`,
    counts: ["8/24/8", "8/40/8", "64/0/0"],
  },
  {
    name: "uk clusters",
    text: `UK terms. 
R1: MC, 12dc, ss in first dc.
R2: 3ch, tr2tog in same st (counts as tr3tog), 2ch, *tr3tog in next st, 2ch; rep from * to end, ss in top of first cluster.
R3: ss in 2ch-sp, 1ch, 3dc in each 2ch-sp around, ss in first dc.`,
    counts: ["12/0/0", "12/24/12", "36/0/0"],
  },
]
