// More lace in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "sizes in parens",
    text: `Round placemat in 2 sizes: Small (Large).
Rnd 1: Ch 4, 9 (11) dc in 4th ch from hook, join. 10 (12) dc
Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, join. 20 (24) dc
Rnd 3: Ch 3, 2 dc in next dc, *dc in next dc, 2 dc in next dc; rep from * around, join. 30 (36) dc`,
    counts: ["10/0/0", "20/0/0", "30/0/0"],
  },
  {
    name: "doily 1940s hdg rounds",
    text: `DOILY No. 7710
Use steel hook No. 9. Begin at center. Ch 6, join with sl st, forming ring.
1st rnd—Ch 3 (to count as 1 dc), 15 dc in ring. Join with sl st to top st of starting chain.
2nd rnd—Ch 5 (to count as dc and ch 2), * dc in next dc, ch 2; repeat from * around, join to 3rd st of ch-5.
3rd rnd—3 sc in each ch-2 space around, join.
4th rnd—* Ch 5, skip next 2 sc, sc in next sc; repeat from * around.
5th rnd—Sl st in next 2 ch, sc in loop, * ch 7, sc in next loop; repeat from * around, ending with ch 7, sl st in first sc.`,
    counts: ["16/0/0", "16/32/16", "48/0/0", "16/80/16", "16/112/16"],
  },
  {
    name: "numbers in words",
    text: `Round one: Make six single crochet in a magic loop. 
Round two: Work two single crochet in each stitch all the way round. (twelve stitches)
Round three: *One single crochet in the next stitch, two single crochet in the following stitch. Repeat from * five more times. (eighteen stitches)`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "catherine",
    text: `Rnd 1. Ch 4 (counts as 1 dc, ch 1), * 1 dc, ch 1 *, rep between * * 11 times in ring, sl st in 3rd ch of ch-4. 12 dc
Rnd 2. Ch 1, 1 sc in the first ch-1 sp, * ch 3, 1 sc in next ch-1 sp *, rep between *s to end, ch 3, sl st in first sc. 12 ch-3 loops
Rnd 3. In every ch-3 loop: 1 sc, 1 hdc, 1 dc, 1 hdc, 1 sc. Sl st.`,
    counts: ["12/12/12", "12/36/12", "60/0/0"],
  },
  {
    name: "extended totals",
    text: `Rnd 1: 12 dc in magic ring; sl st in first dc. -- 12 dc
Rnd 2: ch 2 (does not count), 2 dc in each dc; sl st in first dc -- 24 dc
Rnd 3: ch 2, *dc in next 3 dc, (dc, ch 1, dc) in next dc*; rep from * to * around; sl st in first dc -- 30 dc and 6 ch-1 sps (36 sts in all)`,
    counts: ["12/0/0", "24/0/0", "30/6/6"],
  },
  {
    name: "eyelet round w/ chain join & joining dc",
    text: `Ch 5, join with sl st to form a ring.
Rnd 1: Ch 1, [sc in ring, ch 3] 8 times; join with sl st to first sc. (8 ch-3 sps)
Rnd 2: Sl st in next ch-3 sp, ch 1, sc in same sp, [ch 3, sc in next ch-3 sp] 7 times, ch 1, join with hdc in first sc. (8 ch-3 sps)
Rnd 3: Ch 1, 4 sc in same sp, 4 sc in each ch-3 sp around; join to first sc. (32 sc)`,
    counts: ["8/24/8", "8/24/8", "32/0/0"],
  },
  {
    name: "ch-6 arches",
    text: `Rnd 1: Ch 8, join, ch 1, 20 sc in ring, join.
Rnd 2: Ch 1, sc in first sc, *ch 5, sk next sc, sc in next sc; rep from * 8 times, ch 5, sk last sc, join to first sc. (10 ch-5 arches)
Rnd 3: Ch 1, (sc, hdc, 3 dc, hdc, sc) in each arch around, join. (10 petals)`,
    counts: ["20/0/0", "10/50/10", "70/0/0"],
  },
  {
    name: "fan petals attached",
    text: `Ch 8, join.
1st rnd: * Ch 3, sc in ring; rep from * 7 more times. (8 loops)
2nd rnd: In each loop make sc, hdc, 3 dc, hdc and sc. (8 petals)
3rd rnd: * Ch 5, sc between next 2 petals; rep from * around.
4th rnd: In each ch-5 loop make sc, hdc, 8 dc, hdc, sc.`,
    counts: ["8/24/8", "56/0/0", "8/40/8", "96/0/0"],
  },
  {
    name: "modern doily",
    text: `Rnd 1: Make magic ring, ch 3 (counts as dc here and throughout), 11 dc in ring, join with sl st to top of beg ch-3. (12 dc)
Rnd 2: Ch 4 (counts as dc and ch 1 here and throughout), dc in same st, ch 1, *(dc, ch 1, dc, ch 1) in next dc; rep from * around, join with sl st to 3rd ch of beg ch-4. (24 dc, 24 ch-1 sps)
Rnd 3: Sl st to ch-1 sp, ch 3, dc in same sp, ch 2, *sk next ch-1 sp, 2 dc in next ch-1 sp, ch 2; rep from * around, join with sl st to top of beg ch-3. (24 dc, 12 ch-2 sps)
Rnd 4: Sl st to ch-2 sp, ch 4, dc, ch 1, dc in same sp, ch 2, *(dc, ch 1, dc, ch 1, dc) in next ch-2 sp, ch 2; rep from * around, join. (36 dc)`,
    counts: ["12/0/0", "24/24/24", "24/24/12", "36/48/36"],
  },
  {
    name: "old magazine",
    text: `Ch 6, join in ring.
Row 1: Ch 3, 11 d c in ring, join.
Row 2: * Ch 4, s c in next d c; repeat from * around.
Row 3: Sl st to centre of first loop, s c in loop, * ch 5, s c in next loop; repeat from * around, ch 5, join.
Row 4: In each loop make 5 s c, p, 5 s c.`,
    counts: ["12/0/0", "12/48/12", "12/60/12", "120/0/0"],
  },
  {
    name: "join notes",
    text: `Round 1: Working into a magic ring, chain 2, 12 half double crochet. Slip stitch to the first half double crochet to join. (12 hdc)
Round 2: Chain 2, 2 half double crochet in each stitch. Slip stitch to join. (24 hdc)
Round 3: Chain 1. Single crochet in the first 2 stitches, chain 1. *Single crochet in the next 2 stitches, chain 1. Repeat from * to the end of the round. Slip stitch to join. (24 sc, 12 ch-1 spaces)`,
    counts: ["12/0/0", "24/0/0", "24/12/12"],
  },
  {
    name: "last st omitted",
    text: `Rnd 1: 12 sc in ring, join.
Rnd 2: Ch 3, dc in same sc, ch 1, *2 dc in next sc, ch 1; rep from * around, join.
Rnd 3: Ch 3, dc in next dc, dc in ch-1 sp, ch 1, *dc in next 2 dc, dc in ch-1 sp, ch 1; rep from * around, join.`,
    counts: ["12/0/0", "24/12/12", "36/12/12"],
  },
  {
    name: "crossed trebles",
    text: `Rnd 1: ch 8, join to form a ring; 24 sc in ring. (24 sc)
Rnd 2: *skip 1 sc, 1 dc in next sc, 1 dc in the skipped sc, ch 2; rep from * around. (24 dc + 12 ch-2 sps; 48 sts with chains)
Rnd 3: 2 sc in each ch-2 sp, 1 sc in each dc. (48 sc)`,
    counts: ["24/0/0", "24/24/12", "48/0/0"],
  },
  {
    name: "coin lace",
    text: `Rnd 1: ch 8, join with sl st to form ring; ch 3 (counts as dc), 17 dc in ring; join with sl st to top of ch-3.
Rnd 2: ch 5 (counts as dc, ch 2), *dc in next dc, ch 2; rep from * around; join with sl st to 3rd ch of ch-5.
Rnd 3: sl st in ch-2 sp; ch 1, *sc in next ch-2 sp, ch 2, (sc, ch 2) in next dc; rep from * around; join.`,
    counts: ["18/0/0", "18/36/18", "36/72/36"],
  },
  {
    name: "nested repeat",
    text: `Rnd 1: (dc, ch 1) 16 times in magic ring; join with sl st to first dc.
Rnd 2: Sl st in ch-1 sp, ch 3 (counts as dc), 2 dc in same sp, *[3 dc in next ch-1 sp] 2 times, (3 dc, ch 2, 2 dc) in next ch-1 sp, 3 dc in next ch-1 sp; rep from * 2 more times, [3 dc in next ch-1 sp] 2 times, (3 dc, ch 2, 2 dc) in last ch-1 sp; join.`,
    counts: ["16/16/16", "56/8/4"],
  },
  {
    name: "back to front loops",
    text: `Rnd 1: 12 sc in ring; join.
Rnd 2: Ch 1, in BLO, 2 sc in each sc; join.
Rnd 3: Ch 1, sc in FLO of each sc around; join.
Rnd 4: Ch 1, (sc in next sc, ch 1) around; join.`,
    counts: ["12/0/0", "24/0/0", "24/0/0", "24/24/24"],
  },
]

export const uk: readonly VariedPattern[] = [
  {
    name: "old book doily",
    text: `A SMALL MAT.

Commence with 6 chain, join in a ring with a slip stitch.
UK terms
1st row - 3 chain to stand for a treble, 11 treble in the ring, join to top of the 3 chain.
2nd row - 3 chain, 1 treble in the same place, 2 treble in every treble all round, join.
3rd row - 4 chain, * 1 treble in next treble, 1 chain, repeat from * to end of row, join to third of the 4 chain.
4th row - 1 chain, * 1 double crochet in the treble, 1 double crochet under the chain, repeat from * all round; join.
5th row - * 1 double crochet in first stitch, 3 chain, miss 1, repeat from * all round, join with a slip stitch.
6th row - 4 double crochet under every loop of 3 chain all round, fasten off.`,
    counts: ["12/0/0", "24/0/0", "24/24/24", "48/0/0", "24/72/24", "96/0/0"],
  },
  {
    name: "beanie FPDC UK",
    text: `UK terms. 4 ply.
Magic loop.
Rnd 1: 2ch (does not count as st throughout), 10htr into loop, ss to first htr. [10 htr]
Rnd 2: 2ch, 2htr in each htr around, ss to first htr. [20 htr]
Rnd 3: 2ch, (1htr in next htr, 2htr in next htr) rep to end, ss to first htr. [30 htr]
Rnd 4: 2ch, (1htr in each of next 2 htr, 2htr in next htr) rep to end, ss to join. [40 htr]`,
    counts: ["10/0/0", "20/0/0", "30/0/0", "40/0/0"],
  },
  {
    name: "uk doily trebles",
    text: `UK terms
Make 8ch, join with a sl st in first ch to form a ring.
1st round: 3ch, 19tr in ring, sl st in top of 3ch.
2nd round: 4ch, *1tr in next tr, 1ch, rep from * to end, sl st in 3rd of 4ch.
3rd round: sl st in 1ch sp, 1ch, 1dc in same sp, *3ch, 1dc in next 1ch sp, rep from * to end, 3ch, sl st in first dc.
4th round: sl st to centre of 3ch loop, 1ch, 1dc in loop, *5ch, 1dc in next loop, rep from * ending 5ch, sl st in first dc.`,
    counts: ["20/0/0", "20/20/20", "20/60/20", "20/100/20"],
  },
  {
    name: "uk ch-loop half",
    text: `UK terms
Rnd 1: 2ch, 10dc in 2nd ch from hook, ss to first dc.
Rnd 2: 1ch, 2dc in each dc, ss to first dc.
Rnd 3: 1ch, 1dc in first dc, *5ch, miss 1dc, 1dc in next dc; rep from * to last dc, 5ch, miss last dc, ss to first dc.`,
    counts: ["10/0/0", "20/0/0", "10/50/10"],
  },
]
