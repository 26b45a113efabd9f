// Whole patterns of our own in US terms, more of them, in as many styles as patterns come in, each with what its rounds
// come to: stitches/chains/spaces, counted by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "leaf old",
    text: `Terms: US
Rnd 1: ch 16, join to form a ring; 22 sc in ring.
Rnd 2: *ch 7, skip 1 sc, 1 sc in next sc; rep from * 10 more times. (11 sc + 11 ch-7 loops)
Rnd 3: sl st to 4th ch of first loop; *ch 5, skip the last ch, over the other 4 ch: 1 sc, 1 dc, 1 tr, 1 dtr; sl st in the middle ch of next loop; rep from * 10 more times. (11 points)
Rnd 4: *1 sc in tip of next point, ch 6; rep from * around.`,
    counts: ["22/0/0", "11/77/11", "55/55/11", "11/66/11"],
  },
  {
    name: "seven leaves",
    text: `Terms: US
Rnd 1: seven leaves in a ring, each: ch 11, skip the last, over the next ch: 1 sc, 1 dc, 2 tr, 1 dtr, 2 tr, 1 dc, 1 sc, then 1 sl st; join last leaf to first. (7 leaves)
Rnd 2: *1 sl st in tip of next leaf, ch 12; rep from * around. (7 sl st + 7 ch-12 loops; 91 sts with chains)
Rnd 3: 24 sc in each ch-12 loop. (168 sc)`,
    counts: ["70/77/7", "7/84/7", "168/0/0"],
  },
  {
    name: "old reticella",
    text: `Terms: US
1st row—Ch 8, join in ring.
2nd row—Ch 3, 19 d c in ring, join to top of 3 ch.
3rd row—Ch 5, miss 1 d c, * 1 d c in next d c, ch 2, miss 1 d c; repeat from * 8 times; join to 3d ch of 5.
4th row—Sl st under ch 2, ch 3, 3 d c under same ch, * ch 1, 4 d c under next ch 2; repeat from * around; ch 1, join.`,
    counts: ["0/0/0", "20/0/0", "10/20/10", "40/10/10"],
  },
  {
    name: "short style",
    text: `Terms: US
R1 mr 8sc sl st
R2 ch1 2sc in ea st sl st (16)
R3 ch1 *sc, 2sc in nxt* rpt around sl st (24)`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "every stitch corners",
    text: `Terms: US
Rnd 1: Ch 4, join; ch 1, 8 sc in ring; join with sl st in first sc.
Rnd 2: Ch 1, (sc, ch 2, sc) in first sc, sc in next sc, *(sc, ch 2, sc) in next sc, sc in next sc; rep from * 2 times more; join. (12 sc, 4 ch-2 corner sps)
Rnd 3: Ch 1, sc in first sc, (sc, ch 2, sc) in corner ch-2 sp, *sc in next 3 sc, (sc, ch 2, sc) in corner ch-2 sp; rep from * 2 times more, sc in last 2 sc; join. (20 sc)
Rnd 4: Ch 3, dc in next sc, (2 dc, ch 2, 2 dc) in next corner sp, *dc in next 5 sc, (2 dc, ch 2, 2 dc) in next corner sp; rep from * twice, dc in last 3 sc; join. (36 dc)`,
    counts: ["8/0/0", "12/8/4", "20/8/4", "36/8/4"],
  },
  {
    name: "granny later rounds ditto",
    text: `Terms: US
Rnd 1: ch 4, sl st to form ring, ch 3, 2 dc in ring, ch 3, *3 dc in ring, ch 3, repeat from * 2 more times. Sl st in 3rd ch. (12 dc)
Rnd 2: sl st in each of next 2 dc and in ch-3 sp, ch 3, 2 dc, ch 3, 3 dc in same sp, ch 1, *3 dc, ch 3, 3 dc in next ch-3 sp, ch 1, repeat from * 2 more times. Sl st. (24 dc)
Rnd 3: sl st in next 2 dc and in ch-3 sp, ch 3, 2 dc, ch 3, 3 dc in same sp, ch 1, 3 dc in ch-1 sp, ch 1, *3 dc, ch 3, 3 dc in next ch-3 sp, ch 1, 3 dc in ch-1 sp, ch 1, repeat from * 2 more times. Sl st. (36 dc)`,
    counts: ["12/12/4", "24/16/8", "36/20/12"],
  },
  {
    name: "totals in many styles",
    text: `Terms: US
Rnd 1: 6 sc in magic ring --> 6
Rnd 2: 2 sc in each st = 12 stitches total
Rnd 3: (sc, inc) around. You should have 18 sc.
Rnd 4: (2 sc, inc) 6 times. Total: 24
Rnd 5: (3 sc, inc) 6 times ~ 30 sts
Rnd 6: (4 sc, inc) 6 times {36}
Rnd 7: sc in each st, 36 sts.`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "30/0/0", "36/0/0", "36/0/0"],
  },
  {
    name: "dtr flower",
    text: `Terms: US
Rnd 1: ch 6, join. ch 1, 12 sc in ring, sl st to first sc.
Rnd 2: *ch 4, dtr in next sc, ch 4, sl st in next sc; rep from * 5 more times. (6 petals)`,
    counts: ["12/0/0", "12/48/12"],
  },
  {
    name: "joined new color lines",
    text: `# Tile
Terms: US
Color A: cream. Color B: teal

**Rnd 1 (A):** Ch 4, join with sl st in first ch to form ring. Ch 3 (counts as dc now and throughout), 15 dc in ring. Join with sl st in top of ch-3. Fasten off A. (16 dc)
**Rnd 2 (B):** Join B with sl st between any 2 dc, ch 3, dc in same sp, 2 dc in each sp between dc around. Join. Fasten off B. (32 dc)
**Rnd 3 (A):** Join A between any pair of dc, ch 3, 2 dc in same sp, *3 dc in next sp between pairs; rep from * around. Join. (48 dc)`,
    counts: ["16/0/0", "32/0/0", "48/0/0"],
  },
  {
    name: "bobbles",
    text: `Terms: US
Bobble: dc5tog in same stitch.
Rnd 1: 8 sc in magic ring, join. (8)
Rnd 2: ch 1, 2 sc in each st, join. (16)
Rnd 3: ch 1, *bobble in next st, sc in next st; rep from * around, join. (8 bobbles, 8 sc)
Rnd 4: ch 1, *sc in bobble, 2 sc in next sc; rep from * around, join. (24)`,
    counts: ["8/0/0", "16/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "measured in text",
    text: `Terms: US
Gauge: Rnds 1-3 = 2 1/2"
Rnd 1: Ch 2, 6 sc in 2nd ch from hook. Do not join. Place marker.
Rnd 2: 2 sc in each sc around. (12 sc) Move marker up each round.
Rnd 3: (Sc in next sc, 2 sc in next sc) 6 times. Piece should measure 1 1/2 inches. (18 sc)
Rnd 4: Sc in each sc around, sl st in next sc. Fasten off, leaving a long tail for sewing.`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "18/0/0"],
  },
  {
    name: "third loop",
    text: `Terms: US
Rnd 1: MC, 8 hdc, sl st (8)
Rnd 2: ch 1, 2 hdc in 3rd loop of each st, sl st (16)
Rnd 3: ch 1, *hdc in third loop of next st, 2 hdc in third loop of next st* 8 times, sl st (24)`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "tr cluster flower",
    text: `Terms: US
Rnd 1: ch 5, sl st to form ring. *ch 4, 3-tr cluster in ring, ch 4, sl st in ring; rep from * 5 times.
`,
    counts: ["12/48/12"],
  },
  {
    name: "scallop border",
    text: `Terms: US
Rnd 1: 12 dc in magic ring; join.
Rnd 2: ch 3, dc in same st, 2 dc in each dc; join. (24)
Rnd 3: ch 1, sc in same st, *skip 2 sts, 5 dc in next st (shell made), skip 2 sts, sc in next st; repeat from * ending with skip 2, 5 dc in next, skip 2, join to first sc. (4 shells)`,
    counts: ["12/0/0", "24/0/0", "24/0/0"],
  },
  {
    name: "increase words",
    text: `Terms: US
Round 1: Work 7 sc into a magic ring.
Round 2: Increase in every stitch (14 stitches).
Round 3: *Single crochet in the next stitch, increase in the next; repeat from * around (21 stitches).
Round 4: Single crochet around (21 stitches).
Round 5: *Single crochet in next 2 sts, increase in next st, repeat from * (28).
Round 6: *sc in next 2 sts, sc2tog; repeat around (21).`,
    counts: ["7/0/0", "14/0/0", "21/0/0", "21/0/0", "28/0/0", "21/0/0"],
  },
  {
    name: "range & same line colours",
    text: `Terms: US
Rnd 1 (green): 6 sc in ring (6 sc).
Rnd 2 (green): 2 sc in each sc (12 sc).
Rnds 3–4 (white): 1 sc in each sc (12 sc).
Rnd 5 (green): [2 sc in next sc, 1 sc in next sc] 6x (18 sc).`,
    counts: ["6/0/0", "12/0/0", "12/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "chain-2 hdc no count",
    text: `Terms: US
Note: The ch-2 at the start of each round does not count as a stitch.
Rnd 1: In a magic circle, ch 2, 10 hdc; join with sl st to first hdc. (10)
Rnd 2: Ch 2, 2 hdc in each st; join. (20)
Rnd 3: Ch 2, *hdc, 2 hdc in next st; rep around; join. (30)`,
    counts: ["10/0/0", "20/0/0", "30/0/0"],
  },
  {
    name: "sts instead of sc",
    text: `Terms: US
Rnd 1: Ch 3, sl st in 3rd ch from hook to form ring, ch 3, 11 dc in ring, sl st in top of ch-3. (12 dc)
Rnd 2: Ch 3, dc in same st as sl st, 2 dc in each of remaining 11 sts, sl st. (24 dc)
Rnd 3: ch 3, 2 dc in next st, *dc in next, 2 dc in next, rep from * to end of rnd, sl st. (36 dc)`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "ring by doubled loop & popcorn",
    text: `Terms: US
Rnd 1: Ch 6, join. Ch 3, 4 dc in ring, drop loop, insert hook in top of ch 3, draw dropped loop through (popcorn made), ch 3, *5-dc popcorn in ring, ch 3; rep from * 2 more times; join. (4 popcorns)`,
    counts: ["4/12/4"],
  },
  {
    name: "skip in words",
    text: `Terms: US
Rnd 1: 16 sc in ring.
Rnd 2: *ch 5, skip the next 3 sc, sc in the next sc; repeat from * 3 more times (4 loops).
Rnd 3: in each loop work 1 sc, 1 hdc, 5 dc, 1 hdc and 1 sc (36 sts).
Rnd 4: sl st up to the centre dc of the first petal, ch 1, sc in same st, *ch 7, sc in the centre dc of the next petal; repeat from * twice more, ch 7, join (4 loops).`,
    counts: ["16/0/0", "4/20/4", "36/0/0", "4/28/4"],
  },
  {
    name: "picots spelled",
    text: `Terms: US
Rnd 1: 10 dc in magic ring; join.
Rnd 2: ch 1, *sc in next dc, ch 3, sl st in 3rd ch from hook (picot made), sc in same dc; rep from * around; join. (20 sc, 10 picots)`,
    counts: ["10/0/0", "20/0/0"],
  },
  {
    name: "tog lace with (counts)",
    text: `Terms: US
Rnd 1: 18 dc in ring; join.
Rnd 2: ch 2, dc in next 2 sts (counts as dc3tog), ch 5, *dc3tog over next 3 sts, ch 5; rep from * 4 more times; join.`,
    counts: ["18/0/0", "6/30/6"],
  },
  {
    name: "spelled cluster",
    text: `Terms: US
Rnd 1: 6 sc in magic ring, join.
Rnd 2: ch 1, *(yo, insert hook in next sc, draw up a loop, yo, draw through 2 loops) 3 times in same sc, yo, draw through all 4 loops on hook, ch 3; rep from * 5 more times; join.`,
    counts: ["6/0/0", "6/18/6"],
  },
  {
    name: "spelled puff ring",
    text: `Terms: US
Rnd 1: ch 5, join to form ring. *(yo, insert hook in ring, pull up a loop) 4 times, yo, pull through all loops on hook, ch 2; rep from * 7 more times; join to first puff. (8 puffs)`,
    counts: ["8/16/8"],
  },
  {
    name: "popcorn dropped",
    text: `Terms: US
Rnd 1: ch 4, join. ch 1, 8 sc in ring, join.
Rnd 2: ch 3, 4 dc in same st, drop loop from hook, insert hook in top of ch-3, pull dropped loop through, ch 2, *5 dc in next st, drop loop from hook, insert hook in first of these dc, pull dropped loop through, ch 2; rep from * around; join. (8 popcorns)`,
    counts: ["8/0/0", "8/16/8"],
  },
  {
    name: "corner as st",
    text: `Terms: US
Rnd 1: ch 2, 4 sc in 2nd ch from hook, sl st.
Rnd 2: ch 1, 3 sc in each sc, sl st (12).
Rnd 3: ch 1, sc in next sc, *3 sc in next sc (corner), sc in next 2 sc*; repeat 2 more times, 3 sc in next sc, sc in last sc, sl st. (20)
Rnd 4: ch 1, sc in each sc to corner st, *3 sc in corner st, sc in each sc to next corner st; rep from * around, ending sc in each rem sc; sl st. (28)`,
    counts: ["4/0/0", "12/0/0", "20/0/0", "28/0/0"],
  },
  {
    name: "wheel ch sps counted",
    text: `Terms: US
R1: Ch 6, sl st to join. R2: ch 6 (counts as tr and ch 2), *tr in ring, ch 2; rep from * 10 times more. Join with sl st to 4th ch. (12 tr, 12 ch-2 sps)
R3: sl st into sp, ch 3, 2 dc in same sp, *3 dc in next sp; rep from * around. Join. (36 dc)
R4: ch 1, sc between first 2 groups, *ch 4, sc between next 2 groups; rep from * around, ch 4, join.`,
    counts: ["0/0/0", "12/24/12", "36/0/0", "12/48/12"],
  },
  {
    name: "pineapple start",
    text: `Terms: US
Rnd 1: ch 4, join; ch 3, dc in ring, (ch 2, 2 dc) 5 times in ring, ch 2; join.
Rnd 2: sl st in next dc and in ch-2 sp, ch 3, (dc, ch 2, 2 dc) in same sp (beg shell made), *ch 2, (2 dc, ch 2, 2 dc) in next ch-2 sp (shell made); rep from * 4 times, ch 2; join.
Rnd 3: sl st in next dc and in ch-2 sp, beg shell in same sp, *ch 1, sc in next ch-2 sp, ch 1, shell in ch-2 sp of next shell; rep from * 4 times, ch 1, sc in next ch-2 sp, ch 1; join.`,
    counts: ["12/12/6", "24/24/12", "30/24/18"],
  },
  {
    name: "stitch key",
    text: `Daisy Coaster
Terms: US
Stitch key:
ch = chain
sc = single crochet
dc = double crochet
sl st = slip stitch

Rnd 1: mr, ch 3, 11 dc, sl st to top of ch 3 (12)
Rnd 2: ch 3, 1 dc in same st, 2 dc in each st around, sl st to top of ch 3 (24)
Rnd 3: ch 1, (sc in next 2 sts, 5 dc in next st, sk 0) x 8, sl st (56)`,
    counts: ["12/0/0", "24/0/0", "56/0/0"],
  },
  {
    name: "rounds w/out total",
    text: `Terms: US
1) 6 sc in magic ring
2) 2 sc in each st
3) *sc 1, inc* x 6
4) *sc 2, inc* x 6`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "blank rounds & line broken words",
    text: `Terms: US
Rnd 1: 8 sc in magic
ring; join.
Rnd 2: ch 1, 2 sc in each
st around; join
with sl st. (16
sc)

Rnd 3: ch 1, *sc in next st, 2 sc in
next st; rep from *
around. (24 sc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "crlf & nbsp & smart",
    text: `Terms: US\r
Rnd 1: 6 sc in magic ring.\u00a0(6\u00a0sc)\r
Rnd 2: 2 sc in each st around. (12 sc)\r
Rnd 3: “*sc in next st, 2 sc in next st; rep from * 5 × more.” (18 sc)`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "half stitches square",
    text: `Terms: US
Rnd 1: 4 ch, join, 3 ch, 2 hdc in ring, (2 ch, 3 hdc in ring) 3 times, 2 ch, join to 3rd of 3 ch.
Rnd 2: 3 ch, 1 hdc in each of next 2 hdc, *(2 hdc, 2 ch, 2 hdc) in 2-ch space, 1 hdc in each of next 3 hdc; repeat from * 2 times more, (2 hdc, 2 ch, 2 hdc) in 2-ch space, join.`,
    counts: ["12/8/4", "28/8/4"],
  },
  {
    name: "centre st of 3",
    text: `Terms: US
Rnd 1: 6 sc in ring.
Rnd 2: 3 sc in each sc. (18)
Rnd 3: *sc in next sc, 3 sc in next sc, sc in next sc; rep from * 5 times more. (30)
Rnd 4: *sc in next 2 sc, 3 sc in center sc of 3 sc, sc in next 2 sc; rep from * around. (42)`,
    counts: ["6/0/0", "18/0/0", "30/0/0", "42/0/0"],
  },
  {
    name: "surface/behind",
    text: `Terms: US
Rnd 1: ch 4, join, ch 1, 10 sc in ring, join.
Rnd 2: ch 1, *sc in next sc, ch 4, sk next sc; rep from * around, join. (5 loops)
Rnd 3: ch 1, (sc, hdc, 3 dc, hdc, sc) in each loop, join. (5 petals)
Rnd 4: Fold petals forward. Working behind petals, sl st in skipped sc of Rnd 1, *ch 5, sl st in next skipped sc of Rnd 1; rep from * around. (5 loops)
Rnd 5: (sc, hdc, 5 dc, hdc, sc) in each ch-5 loop. (5 petals)`,
    counts: ["10/0/0", "5/20/5", "35/0/0", "5/25/5", "45/0/0"],
  },
  {
    name: "numbers glued",
    text: `Terms: US
R1: 6sc in MR. (6)
R2: 2sc in each st. (12)
R3: [1sc, 2sc in next st]x6. (18)
R4: [2sc in next st, 1sc in next 2sts]x6. (24)
R5: 1sc in each st. (24)
R6: [sc2tog, 1sc in next 2 sts]x6. (18)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0", "24/0/0", "18/0/0"],
  },
  {
    name: "edc esc",
    text: `Terms: US
Rnd 1: 8 esc in magic ring, join.
Rnd 2: ch 1, 2 esc in each st, join. (16)
Rnd 3: ch 2, *edc in next st, 2 edc in next st; rep from * around, join to first edc. (24 edc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0"],
  },
  {
    name: "sc in ch and st",
    text: `Terms: US
Rnd 1: ch 8, join, ch 6 (counts as dc, ch 3), (dc in ring, ch 3) 7 times, join to 3rd ch of ch-6. (8 dc)
Rnd 2: ch 1, 4 sc in each ch-3 sp around, join. (32 sc)
Rnd 3: ch 5 (counts as tr, ch 1), (tr in next sc, ch 1) around, join to 4th ch. (32 tr)
Rnd 4: ch 1, sc in each tr and ch-1 sp around, join. (64 sc)`,
    counts: ["8/24/8", "32/0/0", "32/32/32", "64/0/0"],
  },
  {
    name: "ending last rep",
    text: `Terms: US
Rnd 1: 16 dc in magic ring; join.
Rnd 2: ch 1, sc in same st, *ch 3, sk next dc, sc in next dc; rep from * around, ending last rep ch 3, sk last dc, join to first sc. (8 loops)
Rnd 3: sl st in loop, ch 3, 3 dc in same loop, *ch 2, 4 dc in next loop; rep from * around, ending ch 2, join. (32 dc)`,
    counts: ["16/0/0", "8/24/8", "32/16/8"],
  },
]
