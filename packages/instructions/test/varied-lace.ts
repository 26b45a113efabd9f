// Lace and petals of our own in plain US wording, old turns of phrase among it. Counts as stitches/chains/spaces,
// by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "a wheel of spaces",
    text: `Terms: US
Rnd 1: ch 12, join to form a ring; ch 3 (counts as dc), 23 dc in ring; join. (24 dc)
Rnd 2: *1 dc, ch 1, skip 1 dc; rep from * around. (12 dc + 12 ch-1 sps; 24 sts with chains)
Rnd 3: 3 sc in each ch-1 sp. (36 sc)
Rnd 4: *1 sc in each of 5 sc, 2 sc in next sc; rep from * around. (42 sc)
Rnd 5: *1 dc in every 3rd sc, ch 4; rep from * around. (14 dc + 14 ch-4 sps; 70 sts with chains)
Rnd 6: *2 sc in next ch-4 sp, picot of ch 4, 2 sc in same sp; rep from * around. (56 sc + 14 picots)`,
    counts: ["24/0/0", "12/12/12", "36/0/0", "42/0/0", "14/56/14", "56/0/0"],
  },
  {
    name: "loops and their centre stitches",
    text: `Terms: US
Rnd 1: ch 6, join to form a ring; *1 sc in ring, ch 4; rep from * 7 more times. (8 sc + 8 ch-4 loops)
Rnd 2: *1 sc in centre of next loop, ch 5; rep from * around. (8 sc + 8 ch-5 loops; 48 sts with chains)
Rnd 3: 7 sc in each loop. (56 sc)
Rnd 4: *1 sc in each of the 5 centre sc of next group, ch 3; rep from * around. (40 sc + 8 ch-3 sps; 64 sts with chains)
Rnd 5: *1 sc in each of the 3 centre sc, ch 3, 1 sc in next ch-3 sp, ch 3; rep from * around. (32 sc + 16 ch-3 sps)`,
    counts: ["8/32/8", "8/40/8", "56/0/0", "40/24/8", "32/48/16"],
  },
  {
    name: "eight petals",
    text: `Terms: US
Rnd 1: ch 8, join to form a ring; 16 sc in ring. (16 sc)
Rnd 2: *ch 9, skip 1 sc, 1 sc in next sc; rep from * around. (8 sc + 8 ch-9 loops)
Rnd 3: in each ch-9 loop 1 sc, 1 hdc, 9 dc, 1 hdc, 1 sc. (8 petals of 13 sts; 104 sts)
Rnd 4: *1 sc in the centre dc of next petal, ch 7; rep from * around. (8 sc + 8 ch-7 loops; 64 sts with chains)
Rnd 5: 1 dc in each st and ch. (64 dc)
Rnd 6: *1 dc, ch 2, skip 1 dc; rep from * around. (32 dc + 32 ch-2 sps; 96 sts with chains)`,
    counts: ["16/0/0", "8/72/8", "104/0/0", "8/56/8", "64/0/0", "32/64/32"],
  },
  {
    name: "a hexagon of corners",
    text: `Terms: US
Rnd 1: ch 5, join to form a ring; ch 6 (counts as dc + ch 3), *1 dc in ring, ch 3; rep from * 4 more times; join to 3rd ch. (6 dc + 6 ch-3 sps; 24 sts with chains)
Rnd 2: 1 sl st in next sp, ch 3 (counts as dc), 4 dc in same sp, *ch 2, 5 dc in next sp; rep from * around, ch 2; join. (30 dc + 6 ch-2 sps)
Rnd 3: 1 dc in each dc, 2 dc with ch 2 between in each ch-2 sp. (42 dc + 6 ch-2 sps)
Rnd 4: 1 dc in each dc, (1 dc, ch 2, 1 dc) in each corner. (54 dc + 6 ch-2 corners)
Rnd 5: 1 sc in each dc, 3 sc in each corner sp. (72 sc)`,
    counts: ["6/18/6", "30/12/6", "42/12/6", "54/12/6", "72/0/0"],
  },
  {
    name: "a disc told by every n-th stitch",
    text: `Terms: US
Rnd 1: ch 4, join to form a ring; 2 sc in each ch. (8 sc)
Rnd 2: 2 sc in each sc. (16 sc)
Rnd 3: 2 sc in every 2nd sc, 1 sc in each other. (24 sc)
Rnd 4: 2 sc in every 3rd sc, 1 sc in each other. (32 sc)
Rnd 5: 32 sc evenly. (32 sc)
Rnd 6: *ch 5, skip 3 sc, 1 sc in next sc; rep from * 7 more times. (8 ch-5 loops)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "32/0/0", "8/40/8"],
  },
  {
    name: "a wheel of tall stitches",
    text: `Terms: US
Rnd 1: ch 16, join to form a ring; 32 sc over the ring; join. (32 sc)
Rnd 2: *1 tr in next sc, ch 2, skip 1 sc; rep from * around. (16 tr + 16 ch-2 sps; 48 sts with chains)
Rnd 3: *3 sc in next ch-2 sp; rep from * around. (48 sc)
Rnd 4: *4 dc in 4 sc, ch 3, skip 2 sc; rep from * 7 more times. (32 dc + 8 ch-3 sps; 56 sts with chains)`,
    counts: ["32/0/0", "16/32/16", "48/0/0", "32/24/8"],
  },
  {
    name: "two rows of petals",
    text: `Terms: US
Rnd 1: ch 10, join to form a ring; 18 sc in ring.
Rnd 2: 1 sc in first sc, *ch 3, skip 2 sc, 1 sc in next sc; rep from * 4 more times, ch 3, skip 2 sc; join. (6 sc + 6 ch-3 sps)
Rnd 3: in each ch-3 sp: 1 sc, 1 hdc, 3 dc, 1 hdc, 1 sc. (42 sts)
Rnd 4: working behind the petals, *1 sc in the sc of Rnd 2, ch 5; rep from * around. (6 ch-5 sps)
Rnd 5: in each ch-5 sp: 1 sc, 1 hdc, 5 dc, 1 hdc, 1 sc. (54 sts)
Rnd 6: *1 sc between two petals, ch 7; rep from * around. (6 ch-7 loops)`,
    counts: ["18/0/0", "6/18/6", "42/0/0", "6/30/6", "54/0/0", "6/42/6"],
  },
  {
    name: "clusters and groups",
    text: `Terms: US
Rnd 1: 10 sc in magic ring; join. (10 sc)
Rnd 2: ch 4 (counts as tr), 2-tr cluster in same st, *ch 4, 3-tr cluster in next sc; rep from * around; ch 4; join. (10 clusters + 10 ch-4 sps)
Rnd 3: 5 sc in each sp. (50 sc)
Rnd 4: *1 sc in each of 4 sc, 2 sc in next; rep from * around. (60 sc)
Rnd 5: 10 groups of (3 dc, ch 1, 3 dc), each in the 3rd of next 6 sc. (60 dc + 10 ch-1 sps)`,
    counts: ["10/0/0", "10/40/10", "50/0/0", "60/0/0", "60/10/10"],
  },
  {
    name: "a doily of small spaces",
    text: `Terms: US
Rnd 1: ch 4; 15 dc in first ch; join. (16 dc)
Rnd 2: ch 5 (counts as dc + ch 2), *1 dc in next dc, ch 2; rep from * around; join. (16 dc + 16 ch-2 sps)
Rnd 3: *2 dc in next sp, ch 1; rep from * around. (32 dc + 16 ch-1 sps)
Rnd 4: *2 sc in next ch-1 sp, ch 3, miss 2 dc; rep from * around.
Rnd 5: *(1 dc, ch 1) 4 times in next ch-3 sp, skip 2 sc, 1 sc in next ch-3 sp, skip 2 sc; rep from * 7 more times.`,
    counts: ["16/0/0", "16/32/16", "32/16/16", "32/48/16", "40/32/32"],
  },
  {
    name: "a disc of bars",
    text: `Terms: US
Rnd 1: ch 5, join to form a ring; *1 dc, ch 2 in ring; rep from * 7 more times. (8 dc + 8 ch-2 sps)
Rnd 2: *1 dc in next dc, 2 dc in next ch-2 sp; rep from * around. (24 dc)
Rnd 3: *1 dc in each of 2 dc, 2 dc in next dc; rep from * around. (32 dc)
Rnd 4: *1 dc in next dc, ch 1; rep from * around. (32 dc + 32 ch-1 sps)
Rnd 5: 1 sc in each dc and each ch. (64 sc)
Rnd 6: *4 sc, ch 5, skip 4 sc; rep from * around. (32 sc + 8 ch-5 loops)`,
    counts: ["8/16/8", "24/0/0", "32/0/0", "32/32/32", "64/0/0", "32/40/8"],
  },
  {
    name: "a lace octagon",
    text: `Terms: US
Rnd 1: ch 6, join to form a ring; ch 3 (counts as dc), 15 dc in ring; join with sl st to top of ch-3. (16 dc)
Rnd 2: ch 4 (counts as dc, ch 1), dc in same st, *ch 1, sk next st, (dc, ch 1, dc) in next st; rep from * 6 more times; ch 1; join with sl st to 3rd ch of ch-4. (16 dc, 16 ch-1 sps)
Rnd 3: sl st in ch-1 sp; ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *sc in next ch-1 sp, (2 dc, ch 2, 2 dc) in next ch-1 sp; rep from * 6 more times; sc in next ch-1 sp; join. (32 dc, 8 sc, 8 ch-2 sps)
Rnd 4: sl st in next dc and in ch-2 sp; ch 1, *(sc, ch 3, sc) in ch-2 sp, ch 5; rep from * 7 more times; join with sl st to first sc. (16 sc, 8 ch-3 sps, 8 ch-5 sps)
Rnd 5: sl st in ch-3 sp; ch 1, *sc in ch-3 sp, 7 dc in next ch-5 sp; rep from * around; join. (56 dc, 8 sc)`,
    counts: ["16/0/0", "16/16/16", "40/16/8", "16/64/16", "64/0/0"],
  },
  {
    name: "a hexagon with end marks",
    text: `Terms: US
Rnd 1: 6 sc in magic ring; join. (6 sc)
Rnd 2: ch 1, (sc, ch 2, sc) in each sc around; join. (12 sc, 6 ch-2 sps)
Rnd 3: ch 1, sc in first sc, *(sc, ch 2, sc) in next ch-2 sp**, sc in next 2 sc; rep from * around, ending last rep at **; sc in last sc; join. (24 sc)
Rnd 4: ch 1, sc in first 2 sc, *(sc, ch 2, sc) in next ch-2 sp**, sc in next 4 sc; rep from * around, ending last rep at **; sc in last 2 sc; join. (36 sc)
Rnd 5: ch 2 (counts as hdc), hdc in each sc around, working (hdc, ch 2, hdc) in each ch-2 sp; join. (48 hdc)`,
    counts: ["6/0/0", "12/12/6", "24/12/6", "36/12/6", "48/12/6"],
  },
  {
    name: "clusters in a ring",
    text: `Terms: US
Rnd 1: ch 5, join with sl st to form ring; ch 4 (counts as tr), tr3tog in ring (counts as tr4tog), *ch 5, tr4tog in ring; rep from * 4 more times; ch 5; join. (6 clusters, 6 ch-5 sps)
Rnd 2: sl st in next 2 ch; ch 1, 3 sc in same sp, *ch 6, 3 sc in next ch-5 sp; rep from * around; ch 6; join. (18 sc, 6 ch-6 sps)
Rnd 3: ch 1, sc in first sc, *sk next sc, sc in next sc, (3 dc, ch 3, 3 dc) in next ch-6 sp, sc in next sc; rep from * around, omitting last sc; join.`,
    counts: ["6/30/6", "18/36/6", "48/18/6"],
  },
  {
    name: "front loops left for later",
    text: `Terms: US
Rnd 1: 8 sc in magic ring; do not join. (8 sc)
Rnd 2: *2 sc in next sc; rep from * around. (16 sc)
Rnd 3: working in back loops only, *sc in next sc, 2 sc in next sc; rep from * around. (24 sc)
Rnd 4: working in both loops, *sc in next 2 sc, 2 sc in next sc; rep from * around. (32 sc)
Rnd 5: sc in each sc around; sl st in next sc.
Rnd 6: working in unused front loops of Rnd 2, *(sc, ch 3, sc) in next st; rep from * around. (32 sc, 16 ch-3 loops)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "32/0/0", "32/48/16"],
  },
  {
    name: "a wheel of three and three",
    text: `Terms: US
Rnd 1: ch 6, sl st in first ch to form ring; ch 5 (counts as dc, ch 2), (dc in ring, ch 2) 7 times; sl st in 3rd ch of ch-5. (8 dc, 8 ch-2 sps)
Rnd 2: ch 1, sc in same st, *3 sc in next ch-2 sp, sc in next dc; rep from * around, ending last rep with 3 sc in last ch-2 sp; join. (32 sc)
Rnd 3: ch 4 (counts as tr), 2 tr in same st, ch 2, sk next 3 sc, *3 tr in next sc, ch 2, sk next 3 sc; rep from * around; join. (24 tr, 8 ch-2 sps)
Rnd 4: ch 1, *sc in next 3 tr, (sc, hdc, sc) in next ch-2 sp; rep from * around; join. (48 sts)`,
    counts: ["8/16/8", "32/0/0", "24/16/8", "48/0/0"],
  },
  {
    name: "a mandala of clusters",
    text: `Terms: US
Rnd 1: ch 3, sl st in first ch to form ring; ch 1, 6 sc in ring; join.
Rnd 2: ch 3, 2-dc cluster in same st, ch 2, *3-dc cluster in next st, ch 2; rep from * around; join. (6 clusters)
Rnd 3: sl st into ch-2 sp, (ch 3, 2-dc cl, ch 2, 3-dc cl) in same sp, ch 2, *(3-dc cl, ch 2, 3-dc cl) in next sp, ch 2; rep from * around; join. (12 clusters)
Rnd 4: sl st into ch-2 sp, ch 3, 3 dc in same sp, *4 dc in next ch-2 sp; rep from * around; join. (48 dc)`,
    counts: ["6/0/0", "6/12/6", "12/24/12", "48/0/0"],
  },
  {
    name: "petals of tall stitches",
    text: `Terms: US
Rnd 1: ch 6, join. [ch 3, 2 tr in ring, ch 3, sl st in ring] 5 times. (5 petals)
Rnd 2: sl st to back of first petal, *ch 4, sl st in back of next petal; rep from * 4 times. (5 loops)
Rnd 3: [sc, hdc, 2 dc, tr, 2 dc, hdc, sc] in each ch-4 loop; join. (5 petals)`,
    counts: ["15/30/10", "5/20/5", "45/0/0"],
  },
]
