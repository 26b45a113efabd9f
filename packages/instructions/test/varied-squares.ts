// Squares and other pieces with corners in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "blog granny US",
    text: `**Easy Granny Square**

Materials: worsted weight yarn in colours A, B; 5.0 mm (H/8) hook.

With color A, ch 4, join with sl st to 3rd ch of beg ch... just kidding, join to first ch to form a ring.

**Round 1:** Ch 3 (counts as first dc here and throughout), 2 dc into ring, ch 3, (3 dc into ring, ch 3) three times. Join with sl st to top of beg ch-3. Fasten off A. {12 dc, 4 ch-3 corner sps}

**Round 2:** With color B, join in any ch-3 sp. Ch 3, 2 dc, ch 3, 3 dc in same sp (first corner made), ch 2. *[3 dc, ch 3, 3 dc] in next ch-3 sp, ch 2. Repeat from * twice more. Join to top of beg ch-3.

**Round 3:** Sl st across to corner sp. (Ch 3, 2 dc, ch 3, 3 dc) in corner sp, ch 2, 3 dc in next ch-2 sp, ch 2, *(3 dc, ch 3, 3 dc) in corner, ch 2, 3 dc in next ch-2 sp, ch 2; rep from * around. Join.

**Round 4:** Sl st to corner. (Ch 3, 2 dc, ch 3, 3 dc) in corner sp, ch 2, *(3 dc in next ch-2 sp, ch 2) across to corner, (3 dc, ch 3, 3 dc) in corner, ch 2; rep from * 2 more times, (3 dc in next ch-2 sp, ch 2) to end. Join, fasten off and weave in ends.`,
    counts: ["12/12/4", "24/20/8", "36/28/12", "48/36/16"],
  },
  {
    name: "hexagon real",
    text: `Simple Hexagon
Ch 6, sl st in first ch to form ring.
Rnd 1: Ch 3, 11 dc in ring, sl st in top of ch-3 — 12 dc.
Rnd 2: Ch 3, *(dc, ch 2, dc) in next dc, dc in next dc; rep from * around, ending with (dc, ch 2, dc) in last dc, sl st in top of ch-3 — 18 dc, 6 ch-2 sps.
Rnd 3: Ch 3, dc in next dc, *(dc, ch 2, dc) in next ch-2 sp, dc in each of next 3 dc; rep from * to last sp, (dc, ch 2, dc) in last sp, dc in last dc, sl st in top of ch-3 — 30 dc.
Rnd 4: Ch 3, dc in next 2 dc, *(dc, ch 2, dc) in ch-2 sp, dc in next 5 dc; rep from * 4 times more, (dc, ch 2, dc) in last ch-2 sp, dc in last 2 dc, sl st in top of ch-3 — 42 dc, 6 ch-2 corner spaces.`,
    counts: ["12/0/0", "18/12/6", "30/12/6", "42/12/6"],
  },
  {
    name: "granny with ch-1 sps blog",
    text: `THE BASIC GRANNY
Abbreviations (US): ch = chain; sl st = slip stitch; dc = double crochet; sp = space
Chain 4 and join with a slip stitch to form a ring.
Round 1: chain 3 (counts as 1 dc), 2 dc in ring, *chain 3, 3 dc in ring*; repeat from * to * twice; chain 3; join with slip stitch in top of chain 3.
Round 2: slip stitch over to first corner space; chain 3, work [2 dc, ch 3, 3 dc] in corner space; *ch 1, [3 dc, ch 3, 3 dc] in next corner space*; repeat from * to * 2 more times; ch 1; join.
Round 3: slip st to corner sp; ch 3, [2 dc, ch 3, 3 dc] in same corner; *ch 1, 3 dc in ch-1 space, ch 1, [3 dc, ch 3, 3 dc] in next corner*; repeat from * to * 2 times more; ch 1, 3 dc in ch-1 sp, ch 1; join with sl st in top of ch-3. Fasten off.`,
    counts: ["12/12/4", "24/16/8", "36/20/12"],
  },
  {
    name: "hexagon clusters",
    text: `With A make a magic ring.
Rnd 1: Ch 2, 2-dc cl in ring (counts as 3-dc cl), ch 2, [3-dc cl in ring, ch 2] 5 times; join with sl st in top of first cl. (6 cl, 6 ch-2 sps)
Rnd 2: Sl st in ch-2 sp; beg cl (ch 2, 2-dc cl) in same sp, ch 2, 3-dc cl in same sp, ch 1, [(3-dc cl, ch 2, 3-dc cl) in next ch-2 sp, ch 1] 5 times; join. (12 cl)
Rnd 3: Sl st in ch-2 sp; (ch 2, 2-dc cl, ch 2, 3-dc cl) in same sp, ch 1, 3-dc cl in next ch-1 sp, ch 1, [(3-dc cl, ch 2, 3-dc cl) in next ch-2 sp, ch 1, 3-dc cl in next ch-1 sp, ch 1] 5 times; join. (18 cl)`,
    counts: ["6/12/6", "12/18/12", "18/24/18"],
  },
  {
    name: "solid granny",
    text: `Solid square
Rnd 1: In magic ring: ch 3, 2 dc, (ch 2, 3 dc) x 3, ch 2, sl st to top of ch 3.
Rnd 2: Ch 3, dc in next 2 dc, *(2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 3 dc; rep from * 2 more times, (2 dc, ch 2, 2 dc) in last sp, sl st to join. (7 dc per side)
Rnd 3: Ch 3, dc in next 4 dc, *(2 dc, ch 2, 2 dc) in ch-2 sp, dc in next 7 dc; rep from * 2 more times, (2 dc, ch 2, 2 dc) in last sp, dc in last 2 dc, sl st to join. (11 dc per side)
Rnd 4: Ch 3, dc in each dc to corner, *(2 dc, ch 2, 2 dc) in corner, dc in each dc across to next corner; rep from * around, ending with (2 dc, ch 2, 2 dc) in last corner, dc in each rem dc; join. (15 dc per side)`,
    counts: ["12/8/4", "28/8/4", "44/8/4", "60/8/4"],
  },
  {
    name: "sunburst granny",
    text: `Rnd 1: With yellow, make a magic ring. Ch 3, 15 dc into ring. Join w/ sl st to top of ch 3. (16)
Rnd 2: With orange, join in any sp between 2 dc. Ch 4 (counts as dc + ch 1), *dc in next sp between dc, ch 1; rep from * around. Join to 3rd ch of ch 4. (16 dc, 16 ch-1 sps)
Rnd 3: With red, join in any ch-1 sp. Beg cluster, ch 2, *cluster in next ch-1 sp, ch 2; rep from * around. Join to top of beg cluster. (16 clusters)
Rnd 4: With white, join in any ch-2 sp. Ch 3, 3 dc in same sp, 4 dc in each ch-2 sp around. Join. (64 dc)
Rnd 5: With blue, join in sp between any two 4-dc groups. Ch 4 (counts as tr), 2 tr, ch 2, 3 tr in same sp, *3 dc in next sp between groups, 3 hdc in next sp, 3 dc in next sp**, (3 tr, ch 2, 3 tr) in next sp; rep from * around, ending last rep at **. Join.`,
    counts: ["16/0/0", "16/16/16", "16/32/16", "64/0/0", "60/8/4"],
  },
  {
    name: "african flower hexagon",
    text: `African Flower Hexagon (US terms)
Rnd 1: Magic ring, ch 3 (counts as dc), dc in ring, ch 1, *2 dc in ring, ch 1; rep from * 4 more times, sl st in top of ch-3 to join. (12 dc, 6 ch-1 sps)
Rnd 2: Sl st in next dc and in ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, *(2 dc, ch 1, 2 dc) in next ch-1 sp; rep from * around, join. (24 dc, 6 ch-1 sps)
Rnd 3: Sl st in next dc and in ch-1 sp, ch 3, 6 dc in same sp, 7 dc in each ch-1 sp around, join. (42 dc)
Rnd 4: With new color, sc in each of the 7 dc of the first petal, *long dc in gap between next two groups of Rnd 2, sc in next 7 dc; rep from * around, ending with long dc in last gap, join. (48 sts)`,
    counts: ["12/6/6", "24/6/6", "42/0/0", "48/0/0"],
  },
  {
    name: "baby blanket square solid",
    text: `Baby Blanket
Note: Ch 3 counts as first dc throughout.
Ch 4, join with a sl st to form a ring.
Rnd 1: Ch 3, 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with a sl st in top of ch-3.
Rnd 2: Ch 3, dc in next 2 dc, [2 dc, ch 2, 2 dc] in corner ch-2 sp, *dc in each of next 3 dc, [2 dc, ch 2, 2 dc] in corner ch-2 sp; rep from * around, join.
Rnd 3: Ch 3, dc in each dc to next corner, [2 dc, ch 2, 2 dc] in corner sp, *dc in each dc to next corner, [2 dc, ch 2, 2 dc] in corner sp; rep from * twice, dc in last 2 dc, join.
Rnd 4: Ch 3, dc in each dc around, working [2 dc, ch 2, 2 dc] in each corner ch-2 sp, join.
Rnd 5: Ch 1, sc in each dc around, working (sc, ch 1, sc) in each corner sp, join. Fasten off.`,
    counts: ["12/8/4", "28/8/4", "44/8/4", "60/8/4", "68/4/4"],
  },
  {
    name: "granny no chains between",
    text: `Rnd 1: Ch 4, sl st in first ch to form ring. Ch 3, 2 dc in ring, *ch 2, 3 dc in ring* 3 times, ch 2, sl st in top of ch 3.
Rnd 2: Sl st in next 2 sts & into corner sp. Ch 3, 2 dc, ch 2, 3 dc all in same sp. *(3 dc, ch 2, 3 dc) all in next corner sp.* Repeat 2 more times. Sl st in top of ch 3.
Rnd 3: Sl st to corner sp. Ch 3, 2 dc, ch 2, 3 dc in corner. *3 dc in next sp between clusters, (3 dc, ch 2, 3 dc) in corner.* Repeat 2 more times, 3 dc in last space. Sl st in top of ch 3.
Rnd 4: Sl st to corner sp. Ch 3, 2 dc, ch 2, 3 dc in corner. *3 dc in each of next 2 sps between clusters, (3 dc, ch 2, 3 dc) in corner.* Repeat 2 more times, 3 dc in each of last 2 sps. Sl st in top of ch 3.`,
    counts: ["12/8/4", "24/8/4", "36/8/4", "48/8/4"],
  },
  {
    name: "octagon hdc",
    text: `Rnd 1: Ch 3 (counts as hdc, ch 1), [hdc, ch 1] 7 times in magic ring, sl st in 2nd ch of beg ch-3. (8 hdc, 8 ch-1 sps)
Rnd 2: Ch 2 (counts as hdc), (hdc, ch 2, hdc) in next ch-1 sp, *hdc in next hdc, (hdc, ch 2, hdc) in next ch-1 sp; rep from * around, sl st in top of beg ch-2. (24 hdc, 8 ch-2 sps)
Rnd 3: Ch 2, hdc in next hdc, (hdc, ch 2, hdc) in ch-2 sp, *hdc in each of next 3 hdc, (hdc, ch 2, hdc) in next ch-2 sp; rep from * around, hdc in last hdc, sl st in top of beg ch-2. (40 hdc, 8 ch-2 sps)`,
    counts: ["8/8/8", "24/16/8", "40/16/8"],
  },
  {
    name: "squared circle",
    text: `Circle to square
Rnd 1: 16 dc in magic ring, join to first dc. (16 dc)
Rnd 2: Ch 2 (not a st), 2 dc in each dc around, join. (32 dc)
Rnd 3: Ch 1, sc in first st, *hdc in next st, dc in next st, (2 dc, tr, ch 2, tr, 2 dc) in next st, dc in next st, hdc in next st, sc in next 3 sts; rep from * around, omitting last sc of last rep; join to first sc. (52 sts, 4 ch-2 sps)
Rnd 4: Ch 1, *sc in each st to corner sp, (sc, ch 2, sc) in corner sp; rep from * 3 more times, sc in each st to end; join.`,
    counts: ["16/0/0", "32/0/0", "52/8/4", "60/8/4"],
  },
  {
    name: "c2c moss square",
    text: `Rnd 1: (sc, ch 2) 4 times in magic ring, sl st in first sc. (4 sc, 4 ch-2 sps)
Rnd 2: Sl st in ch-2 sp, ch 1, *(sc, ch 2, sc) in ch-2 sp, ch 1; rep from * 3 more times, sl st in first sc. (8 sc, 4 ch-2 corner sps, 4 ch-1 sps)
Rnd 3: Sl st in ch-2 sp, ch 1, *(sc, ch 2, sc) in ch-2 corner sp, ch 1, sc in next ch-1 sp, ch 1; rep from * 3 more times, sl st in first sc. (12 sc, 4 ch-2 sps, 8 ch-1 sps)`,
    counts: ["4/8/4", "8/12/8", "12/16/12"],
  },
  {
    name: "leisure style granny",
    text: `Rnd 1 (Right side): With White, ch 5; join with slip st to form a ring. Ch 3 (counts as first dc), 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2; join with slip st to first dc, finish off: 12 dc and 4 ch-2 sps.
Note: Loop a short piece of yarn around any stitch to mark last round as right side.
Rnd 2: With right side facing, join Blue with slip st in any ch-2 sp; ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, ★ (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; repeat from ★ 2 times more; join with slip st to first dc, finish off: 24 dc and 8 sps.
Rnd 3: With right side facing, join Green with dc in any ch-2 sp (see Joining With Dc, page 2); (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, ★ (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; repeat from ★ 2 times more; join with slip st to first dc, finish off: 36 dc and 12 sps.`,
    counts: ["12/8/4", "24/12/8", "36/16/12"],
  },
  {
    name: "square from sc",
    text: `Rnd 1: [2 sc, ch 2] 4 times in MR. (8 sc, 4 ch-2 sps)
Rnd 2: [Sc in next 2 sc, (sc, ch 2, sc) in ch-2 sp] 4 times. (16 sc)
Rnd 3: Sc in each sc and (sc, ch 2, sc) in each corner ch-2 sp. (24 sc)
Rnd 4: Same as Rnd 3. (32 sc)`,
    counts: ["8/8/4", "16/8/4", "24/8/4", "32/8/4"],
  },
  {
    name: "granny rectangle-ish hex leaves",
    text: `Rnd 1: Ch 5, join. 18 dc in ring (first dc is ch 3). Join.
Rnd 2: Ch 4 (dc plus ch 1), [dc in next dc, ch 1] 17 times. Join to 3rd ch.
Rnd 3: Ch 3, 2 dc in same sp, 3 dc in each sp around. Join.`,
    counts: ["18/0/0", "18/18/18", "54/0/0"],
  },
  {
    name: "pentagon",
    text: `Make an adjustable ring.
Rnd 1: Ch 3 (counts as dc), 1 dc, ch 2, (2 dc, ch 2) 4 times in ring, join with sl st in top of ch-3. (10 dc, 5 ch-2 sps)
Rnd 2: Ch 3, dc in next dc, (dc, ch 2, dc) in ch-2 sp, [dc in next 2 dc, (dc, ch 2, dc) in ch-2 sp] 4 times, join. (20 dc)
Rnd 3: Ch 3, dc in next 2 dc, (dc, ch 2, dc) in ch-2 sp, [dc in next 4 dc, (dc, ch 2, dc) in ch-2 sp] 4 times, dc in last dc, join. (30 dc)`,
    counts: ["10/10/5", "20/10/5", "30/10/5"],
  },
  {
    name: "rep dagger 2",
    text: `Ch 4, join.
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 3, 3 dc in ring) 3 times, ch 3, join.
Rnd 2: Ch 3, dc in next 2 dc, †(dc, ch 3, dc) in corner sp†, *dc in next 3 dc, rep from † to † once; rep from * 2 more times, join.`,
    counts: ["12/12/4", "20/12/4"],
  },
  {
    name: "corner 3 sc solid square",
    text: `Rnd 1: 4 sc in ring.
Rnd 2: 3 sc in each sc.
Rnd 3: *sc in next sc, 3 sc in next (corner) sc, sc in next sc; rep from * 3 times more.
Rnd 4: *sc in each sc to corner sc, 3 sc in corner sc; rep from * 3 more times, sc in each rem sc.`,
    counts: ["4/0/0", "12/0/0", "20/0/0", "28/0/0"],
  },
  {
    name: "corner named",
    text: `Special: Corner = (3 dc, ch 2, 3 dc) in same sp.
Rnd 1: ch 3, 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join.
Rnd 2: Sl st to next ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, (corner in next ch-2 sp, ch 1) 3 times, join.`,
    counts: ["12/8/4", "24/12/8"],
  },
  {
    name: "side spaces",
    text: `Rnd 1: In ring work ch 3, 2 dc, (ch 3, 3 dc) 3 times, ch 3, join.
Rnd 2: (3 dc, ch 3, 3 dc) in each ch-3 sp around, join.
Rnd 3: *(3 dc, ch 3, 3 dc) in corner sp, 3 dc between next two groups; rep from * around, join.
Rnd 4: *(3 dc, ch 3, 3 dc) in corner sp, (3 dc between next two groups) twice; rep from * around, join.`,
    counts: ["12/12/4", "24/12/4", "36/12/4", "48/12/4"],
  },
  {
    name: "granny wheel",
    text: `Rnd 1: Ch 4, sl st in first ch; ch 4 (counts as dc + ch-1), [dc, ch 1] 11 times in ring; join with sl st in third ch. (12 dc, 12 ch-1 sps)
Rnd 2: Sl st into ch-1 sp, ch 3 (counts as dc), dc in same sp, ch 1, [2 dc in next ch-1 sp, ch 1] to end; join in top of ch-3. (24 dc)
Rnd 3: Sl st across to ch-1 sp, ch 3, 2 dc in same sp, ch 1, [3 dc in next ch-1 sp, ch 1] to end; join in top of ch-3. (36 dc)
Rnd 4: Ch 1, sc in each dc and in each ch-1 sp around; join. (48 sc)`,
    counts: ["12/12/12", "24/12/12", "36/12/12", "48/0/0"],
  },
  {
    name: "squaring a granny wheel",
    text: `Rnd 1: magic ring, (dc, ch 1) 12 times, sl st in first dc.
Rnd 2: sl st in ch-1 sp, ch 3, 2 dc in same sp, ch 1, (3 dc, ch 1) in each ch-1 sp around, sl st in top of ch-3.
Rnd 3: sl st in next 2 dc and in ch-1 sp, ch 4 (counts as tr), 2 tr, ch 2, 3 tr in same sp, *[3 dc in next ch-1 sp] twice, (3 tr, ch 2, 3 tr) in next ch-1 sp; rep from * 2 more times, [3 dc in next ch-1 sp] twice, join.`,
    counts: ["12/12/12", "36/12/12", "48/8/4"],
  },
  {
    name: "circle in a square sc/hdc/dc/tr",
    text: `Rnd 1: 16 dc in MR, join.
Rnd 2: Ch 3, dc in same st, 2 dc in each dc around, join in top of ch-3.
Rnd 3: Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around, join in top of ch-3.
Rnd 4: Ch 1, *sc in next 3 sts, hdc in next 2 sts, dc in next st, (tr, ch 2, tr) in next st, dc in next st, hdc in next 2 sts, sc in next 2 sts; rep from * 3 more times, join.`,
    counts: ["16/0/0", "32/0/0", "48/0/0", "52/8/4"],
  },
  {
    name: "tr corners joined granny blanket",
    text: `Round 1 – Chain 4, slip stitch into the first chain to make a loop. Chain 3 (this counts as a treble), work 2 trebles into the loop, *chain 3, 3 trebles into the loop, repeat from * twice, chain 3, slip stitch into the top of the chain 3.
Round 2 – Slip stitch to the first corner space. Chain 3, 2 trebles, chain 3, 3 trebles into the same space, *3 trebles, chain 3, 3 trebles into the next corner space, repeat from * twice, slip stitch into the top of the chain 3.
Round 3 – Slip stitch to the first corner space. Chain 3, 2 trebles, chain 3, 3 trebles into the same space, 3 trebles into the next space between groups, *3 trebles, chain 3, 3 trebles into the next corner space, 3 trebles into the next space between groups, repeat from * twice, slip stitch into the top of the chain 3.`,
    counts: ["12/12/4", "24/12/4", "36/12/4"],
  },
  {
    name: "square of bars",
    text: `Rnd 1: ch 8, join to form a ring; 16 sc in ring. (16 sc)
Rnd 2: *1 dc in each of next 4 sc, ch 5; rep from * 3 more times. (16 dc + 4 ch-5 corners; 36 sts with chains)
Rnd 3: *1 dc in each of next 4 dc, ch 1, (2 dc, ch 5, 1 dc) in corner; rep from * around. (28 dc + 4 ch-1 sps + 4 ch-5 corners)`,
    counts: ["16/0/0", "16/20/4", "28/24/8"],
  },
  {
    name: "growing corners",
    text: `Rnd 1: ch 6, join to form a ring; 12 sc in ring. (12 sc)
Rnd 2: *1 dc in each of next 3 sc, ch 3; rep from * 3 more times. (12 dc + 4 ch-3 corners)
Rnd 3: *1 dc in each dc, (3 dc, ch 3, 3 dc) in corner; rep from * around. (36 dc + 4 ch-3 corners)
Rnd 4: *1 dc in each dc to corner, (2 dc, ch 3, 2 dc) in corner; rep from * around, ending with 1 dc in each of last 3 dc. (52 dc)
Rnd 5: as Rnd 4, ending with 1 dc in each of last 5 dc. (68 dc)`,
    counts: ["12/0/0", "12/12/4", "36/12/4", "52/12/4", "68/12/4"],
  },
  {
    name: "hexagon mesh",
    text: `Rnd 1: ch 6, join to form a ring; *3 dc in ring, ch 3; rep from * 5 more times. (18 dc + 6 ch-3 corners)
Rnd 2: *(2 dc, ch 3, 2 dc) in next ch-3 corner, ch 1; rep from * around. (24 dc + 6 ch-3 corners + 6 ch-1 sps)`,
    counts: ["18/18/6", "24/24/12"],
  },
  {
    name: "layered flower square",
    text: `Rnd 1: ch 6, join with sl st to form ring; ch 1, 16 sc in ring; join with sl st to first sc. (16 sc)
Rnd 2: ch 1, sc in first sc, *ch 3, sk next sc, sc in next sc; rep from * 6 more times; ch 3, sk last sc; join with sl st to first sc. (8 ch-3 lps)
Rnd 3: *(sc, hdc, 2 dc, hdc, sc) in next ch-3 lp; rep from * around; join with sl st to first sc. (8 petals)
Rnd 4: working behind petals, *BPsc around next sc of Rnd 2, ch 5; rep from * around; join with sl st to first BPsc. (8 ch-5 lps)
Rnd 5: *(sc, hdc, 4 dc, hdc, sc) in next ch-5 lp; rep from * around; join with sl st to first sc. (8 petals)
Rnd 6: sl st in next hdc and in next dc; ch 1, sc in each st around; join.`,
    counts: ["16/0/0", "8/24/8", "48/0/0", "8/40/8", "64/0/0", "64/0/0"],
  },
  {
    name: "corner from lace circle ok",
    text: `Rnd 1: ch 5, join with sl st to form ring; ch 3 (counts as dc), 11 dc in ring; join with sl st to top of ch-3. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, ch 1, *2 dc in next dc, ch 1; rep from * around; join with sl st to top of ch-3. (24 dc, 12 ch-1 sps)
Rnd 3: sl st in next dc and in ch-1 sp; ch 3 (counts as dc), 2 dc in same sp, ch 1, *3 dc in next ch-1 sp, ch 1; rep from * around; join with sl st to top of ch-3. (36 dc)
Rnd 4: sl st in next 2 dc and in ch-1 sp; (ch 4 (counts as tr), 2 tr, ch 2, 3 tr) in same sp, *(dc in next 3 dc, dc in next ch-1 sp) 2 times, dc in next 1 dc, sk 2 dc**, (3 tr, ch 2, 3 tr) in next ch-1 sp; rep from * around, ending last rep at **; join with sl st to top of ch-4.`,
    counts: ["12/0/0", "24/12/12", "36/12/12", "60/8/4"],
  },
  {
    name: "hexagon with popcorns",
    text: `Rnd 1: ch 4, join with sl st to form ring; ch 3 (counts as dc), 11 dc in ring; join with sl st to top of ch-3. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, *2 dc in next dc, ch 2, 2 dc in next dc; rep from * 4 more times; 2 dc in last dc, ch 2; join with sl st to top of ch-3. (24 dc, 6 ch-2 sps)
Rnd 3: ch 3, dc in next 3 dc, (popcorn, ch 2) in ch-2 sp, *dc in next 4 dc, (popcorn, ch 2) in ch-2 sp; rep from * 4 more times; join. (24 dc, 6 popcorns)`,
    counts: ["12/0/0", "24/12/6", "30/12/6"],
  },
  {
    name: "octagon of sc",
    text: `Rnd 1: ch 2; 8 sc in 2nd ch from hook; join with sl st to first sc. (8 sc)
Rnd 2: ch 1, 2 sc in each sc around; join with sl st to first sc. (16 sc)
Rnd 3: ch 1, *sc in next sc, 2 sc in next sc; rep from * around; join with sl st to first sc. (24 sc)
Rnd 4: ch 1, *2 sc in next sc, sc in next 2 sc; rep from * around; join with sl st to first sc. (32 sc)
Rnd 5: ch 1, *sc in next 3 sc, 2 sc in next sc; rep from * around; join with sl st to first sc. (40 sc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0"],
  },
  {
    name: "tall cross corners",
    text: `Rnd 1: ch 6, join with sl st to form ring; ch 5 (counts as dc, ch 2), *dc in ring, ch 2; rep from * 6 more times; join with sl st to 3rd ch of ch-5. (8 dc, 8 ch-2 sps)
Rnd 2: sl st in ch-2 sp; ch 3 (counts as dc), 3 dc in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp**, 4 dc in next ch-2 sp; rep from * around, ending last rep at **; join with sl st to top of ch-3. (40 dc, 4 ch-2 sps)
Rnd 3: ch 3 (counts as dc), dc in each dc to corner sp, *(2 dc, ch 2, 2 dc) in corner ch-2 sp, dc in each dc to next corner sp; rep from * 2 more times; (2 dc, ch 2, 2 dc) in corner ch-2 sp, dc in each rem dc; join with sl st to top of ch-3. (56 dc, 4 ch-2 sps)`,
    counts: ["8/16/8", "40/8/4", "56/8/4"],
  },
  {
    name: "granny with sc rounds",
    text: `Rnd 1: ch 4, join with sl st to form ring; ch 3 (counts as dc), 2 dc in ring, ch 3, *3 dc in ring, ch 3; rep from * 2 more times; join with sl st to top of ch-3. (12 dc, 4 ch-3 sps)
Rnd 2: sl st to ch-3 sp; (ch 3 (counts as dc), 2 dc, ch 3, 3 dc) in same sp, ch 1, *(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 1; rep from * 2 more times; join with sl st to top of ch-3.
Rnd 3: ch 1, *sc in each dc and ch-1 sp to corner, (3 sc, ch 2, 3 sc) in corner ch-3 sp; rep from * around, sc in each rem st; join.`,
    counts: ["12/12/4", "24/16/8", "52/8/4"],
  },
]

export const uk: readonly VariedPattern[] = [
  {
    name: "UK granny ch sp",
    text: `Terms: UK
Make 4ch and join with a ss into a ring.
Rnd 1: 3ch (counts as 1tr), 2tr into ring, [2ch, 3tr into ring] 3 times, 2ch, ss into 3rd of 3ch.
Rnd 2: ss into each of next 2tr, ss into next 2-ch sp, 3ch, (2tr, 2ch, 3tr) into same sp, [1ch, (3tr, 2ch, 3tr) into next 2-ch sp] 3 times, 1ch, ss into 3rd of 3ch.
Rnd 3: ss into each of next 2tr, ss into 2-ch sp, 3ch, (2tr, 2ch, 3tr) into same sp, *1ch, 3tr into next 1-ch sp, 1ch, (3tr, 2ch, 3tr) into next 2-ch sp; rep from * twice more, 1ch, 3tr into next 1-ch sp, 1ch, ss into 3rd of 3ch.`,
    counts: ["12/8/4", "24/12/8", "36/16/12"],
  },
  {
    name: "hexagon granny uk 'miss'",
    text: `British terms
Round 1: Into ring work 3ch (counts as 1 tr), 2tr, 2ch, (3tr, 2ch) 5 times, ss into top of 3ch.
Round 2: ss into next 2 tr and 2ch sp, 3ch, (2tr, 2ch, 3tr) into same sp, (3tr, 2ch, 3tr) into each 2ch sp to end, ss into top of 3ch.
Round 3: ss into next 2 tr and 2ch sp, 3ch, (2tr, 2ch, 3tr) into same sp, *3tr into sp between next 2 groups, (3tr, 2ch, 3tr) into next 2ch sp; rep from * 4 times more, 3tr into sp between last 2 groups, ss into top of 3ch.`,
    counts: ["18/12/6", "36/12/6", "54/12/6"],
  },
  {
    name: "UK circle into hexagon",
    text: `Note: UK terms used. 
Foundation ring: Ch 4, ss into first ch.
Round 1: Ch 3, 11 tr into ring, ss into top of ch 3. (12)
Round 2: Ch 3, 1 tr into same place as ss, 2 tr into each tr, ss into top of ch 3. (24)
Round 3: Ch 3, 1 tr into same place as ss, 1 tr into next tr, *2 tr into next tr, 1 tr into next tr, rep from * to end, ss into top of ch 3. (36)
Round 4: Ch 3, 1 tr into same place as ss, 1 tr into each of next 2 tr, *2 tr into next tr, 1 tr into each of next 2 tr, rep from * to end, ss into top of ch 3. (48)`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0"],
  },
  {
    name: "sc square w ch-2 corner uk",
    text: `Use UK terms. Magic ring.
Round 1: 1ch, (3dc, 2ch) x 4 into ring, ss to first dc.
Round 2: 1ch, *dc in each dc to corner, (1dc, 2ch, 1dc) into 2ch-sp; repeat from * 3 more times, ss to first dc.
Round 3: as round 2.`,
    counts: ["12/8/4", "20/8/4", "28/8/4"],
  },
  {
    name: "uk chatty granny",
    text: `UK terminology
To begin: 4ch and join with a slip stitch to make a ring.
Round 1: 3ch (this counts as your first treble), 2 more trebles into the ring, 3ch, then (3 trebles, 3ch) three times. Slip stitch into the third of the first 3ch. That makes 4 clusters of 3 trebles.
Round 2: Join your second colour in any corner space. 3ch, 2tr, 3ch, 3tr all into the same corner. *1ch, then 3tr, 3ch, 3tr into the next corner; repeat from * twice more, 1ch, slip stitch to join.`,
    counts: ["12/12/4", "24/16/8"],
  },
]
