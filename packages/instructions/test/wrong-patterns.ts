// Patterns of our own with one thing wrong, cut short, or of a shape that is counted only. Each round's
// stitches and chains as counted by hand; "!" where a problem must be told, "?" where no count is right.

export interface WrongPattern {
  readonly name: string
  readonly text: string
  readonly rounds: readonly string[]
}

export const wrongPatterns: readonly WrongPattern[] = [
  {
    name: "cut hexagon",
    text: `Simple Hexagon
Ch 6, sl st in first ch to form ring.
Rnd 1: Ch 3, 11 dc in ring, sl st in top of ch-3 — 12 dc.
Rnd 2: Ch 3, dc in same st, dc in next dc...`,
    rounds: ["12", "!?"],
  },
  {
    name: "oval around chain",
    text: `Oval Base
Ch 11.
Rnd 1: Sc in 2nd ch from hook and in next 8 ch, 3 sc in last ch; working along opposite side of foundation ch, sc in next 8 ch, 2 sc in last ch, do not join, place marker. (22 sc)
Rnd 2: 2 sc in next st, sc in next 8 sts, 2 sc in each of next 3 sts, sc in next 8 sts, 2 sc in each of last 2 sts. (28 sc)
Rnd 3: sc in next st, 2 sc in next st, sc in next 8 sts, (sc in next st, 2 sc in next st) 3 times, sc in next 8 sts, (sc in next st, 2 sc in next st) twice. (34 sc)`,
    rounds: ["!22", "28", "34"],
  },
  {
    name: "popcorn cut",
    text: `Popcorn (pc): 4 dc in same st, drop loop from hook, insert hook in top of first dc, pick up dropped loop and draw through.
Ch 5, join with sl st to form a ring.
Rnd 1: Ch 3, 3 dc in ring, complete as popcorn, ch 1, *pc in ring, ch 1; rep from * 6 more times; join to top of first pc. (8 popcorns)
Rnd 2: Sl st into ch-1 sp, ch 3, 2 dc in same sp, *3 dc in next ch-1 sp; rep from * around; join. 24 dc
Rnd 3: Ch 3, dc in next 2 dc, dc in next 3 dc, ...`,
    rounds: ["8+8", "24", "!?"],
  },
  {
    name: "popcorn square cut",
    text: `Popcorn (pc): 4 dc in same st, drop loop from hook, insert hook in top of first dc, pick up dropped loop and draw through.
Ch 5, join with sl st to form a ring.
Rnd 1: Ch 3, 3 dc in ring, complete as popcorn, ch 1, *pc in ring, ch 1; rep from * 6 more times; join to top of first pc. (8 popcorns)
Rnd 2: Sl st into ch-1 sp, ch 3, 2 dc in same sp, ch 1, *3 dc in next ch-1 sp, ch 1; rep from * around; join. 24 dc
Rnd 3: Sl st in next 2 dc and in ch-1 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, sc in next ch-1 sp...`,
    rounds: ["8+8", "24+8", "!?"],
  },
  {
    name: "mandala",
    text: `Rnd 1. In a magic circle, work 12 dc. Invisible join. (12)
Rnd 2. Join new colour with a standing dc in any st, dc in same st. 2 dc in every st around. Invisible join. (24)
Rnd 3. Join new colour with a standing dc between any two pairs...`,
    rounds: ["12", "24", "!?"],
  },
  {
    name: "mandala cut",
    text: `Rnd 1. In a magic circle, work 12 dc. Invisible join. (12)
Rnd 2. Join new colour with a standing dc in any st, dc in same st. 2 dc in every other st around. Invisible join. (24)
Rnd 3. New colour: *2 dc in the next st, 1 dc in the next st* 12 times. (36)
Rnd 4. Standing sc in any st, ch 2, skip 1 st, ...`,
    rounds: ["12", "!?", "36", "!?"],
  },
  {
    name: "missing asterisk",
    text: `Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each st. (12)
Rnd 3: Sc in next st, 2 sc in next st; rep from * around. (18)
Rnd 4: *Sc in next 2 sts, 2 sc in next st* repeat around. (24)`,
    rounds: ["6", "12", "18", "24"],
  },
  {
    name: "wrong totals",
    text: `Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each st. (12)
Rnd 3: *sc in next st, 2 sc in next st; rep from * 5 more times. (20)
Rnd 4: *sc in next 2 sts, 2 sc in next st; rep from * 5 more times. (24)`,
    rounds: ["6", "12", "!18", "24"],
  },
  {
    name: "star cut",
    text: `Rnd 1: ch 2, 10 sc in 2nd ch from hook, join in first sc. 10 sc
Rnd 2: ch 1, 2 sc in each sc around, join. 20 sc
Rnd 3: ch 1, *sc in next sc, 2 sc in next sc, rep from * around, join. 30 sc
Rnd 4: *sk 2 sc, (2 dc, tr, ch 2, tr, 2 dc) in next sc, sl st in next sc, sk...`,
    rounds: ["10", "20", "30", "!?"],
  },
  {
    name: "star cut",
    text: `Rnd 1: 5 sc in magic ring. (5)
Rnd 2: 3 sc in each sc around. (15)
Rnd 3: 2 sc in each sc around. (30)
Rnd 4: *Sl st in next sc, sc in next sc, (hdc, dc, ch 4, dc, hdc)...`,
    rounds: ["5", "15", "30", "!?"],
  },
  {
    name: "cut",
    text: `Rnd 1: 12 sc in ring, join in beg sc.
Rnd 2: ch 1, sc in same st as joining, ch 2, (sc in next sc, ch 2) around, join in beg sc. (12 sc, 12 ch-2 sps)
Rnd 3: (sl st, ch 1, 2 hdc, 2 dc...`,
    rounds: ["12", "12+24", "!?"],
  },
  {
    name: "cut",
    text: `Rnd 1: ch 3, 15 dc in ring, join in 3rd ch of beg ch-3. (16 dc)
Rnd 2: ch 3, dc in same st, 2 dc in each dc around, join in 3rd ch of beg ch-3. (32 dc)
Rnd 3: ch 1, sc in same st, *hdc in next st, dc in next st, (2 tr, ch 3, 2 tr)...`,
    rounds: ["16", "32", "!?"],
  },
  {
    name: "oval in-line",
    text: `Rnd 1: Ch 7; sc in 2nd ch from hook, sc in next 4 ch, 4 sc in last ch; working in opposite side of ch, sc in next 4 ch, 3 sc in same ch as first sc; join. (16 sc)`,
    rounds: ["!16"],
  },
  {
    name: "doily",
    text: `PETITE DOILY
Ch 8, join to form ring.
Rnd 1: Ch 4 (counts as tr), 23 tr in ring; sl st to 4th st of 1st 4-ch.
Rnd 2: Ch 5 (counts as tr and 1 ch), (1 tr in next tr, ch 1) repeated around. Sl st to 4th st of 5-ch.
Rnd 3: Sl st in next sp, ch 1, sc in same sp, (6 ch, sk 1 sp, 1 sc in next sp) 11 times, 6 ch, sl st in 1st sc.
Rnd 4: (3 sc, ch 2, 2 sc)...`,
    rounds: ["24", "24+24", "12+72", "!?"],
  },
  {
    name: "half-typed",
    text: `Rnd 1: 6 s
Rnd 2: 2 sc in eac`,
    rounds: ["!?", "!?"],
  },
  {
    name: "cut",
    text: `Ch 5, sl st to form ring
Rnd 1: ch 3, 14 dc in ring, sl st to top of beg ch
Rnd 2: ch 5, sk 0...`,
    rounds: ["15", "!?"],
  },
  {
    name: "wrong one group too many",
    text: `Rnd 1: Ch 4, join to form ring. Ch 3, 2 dc in ring, ch 3, (3 dc in ring, ch 3) 3 times, join. (12 dc)
Rnd 2: Sl st to ch-3 sp, (ch 3, 2 dc, ch 3, 3 dc) in same sp, ch 1, [(3 dc, ch 3, 3 dc) in next ch-3 sp, ch 1] 4 times, join. (24 dc)`,
    rounds: ["12+12", "!?"],
  },
  {
    name: "wrong too few",
    text: `Rnd 1: 12 dc in ring. (12)
Rnd 2: *2 dc in next dc, dc in next dc; rep from * 4 more times. (18)`,
    rounds: ["12", "!?"],
  },
  {
    name: "misspelt",
    text: `Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in eech stich arround. (12)`,
    rounds: ["6", "!?"],
  },
  {
    name: "oval joined",
    text: `Rnd 1: Ch 7; sc in 2nd ch from hook, sc in next 4 ch, 4 sc in last ch; working in opposite side of ch, sc in next 4 ch, 2 sc in same ch as first sc; join. (16 sc)
Rnd 2: Ch 1, 2 sc in first sc, sc in next 4 sc, 2 sc in each of next 4 sc, sc in next 4 sc, 2 sc in each of next 2 sc, sc in last sc; join.`,
    rounds: ["!16", "23"],
  },
  {
    name: "oval each across",
    text: `Rnd 1: Ch 20, 2 sc in 2nd ch from hook, sc in each ch across to last ch, 3 sc in last ch, rotate to work along the bottom of the chain, sc in each ch to last ch, sc in last ch. (40 sc)`,
    rounds: ["!40"],
  },
  {
    name: "oval dc",
    text: `Ch 14.
Rnd 1: 2 dc in 4th ch from hook (skipped ch counts as dc), dc in next 9 ch, 6 dc in last ch. Working on other side of chain, dc in next 9 ch, 3 dc in last ch. Join to top of beg ch. (30 dc)`,
    rounds: ["!30"],
  },
  {
    name: "row strip",
    text: `Row 1: ch 20
Row 2: sc in each ch across.`,
    rounds: ["?", "!20"],
  },
  {
    name: "cut",
    text: `Starting at center, ch 6, join with sl st to form ring.
1st rnd: 12 sc in ring. Join with sl st to first sc.
2nd rnd: cut`,
    rounds: ["12", "!?"],
  },
  {
    name: "cut",
    text: `1st rnd: 10 dc in ring (magic ring). Join.
2nd rnd: ch 3, dc in same st, 2 dc in each dc around. Join in top of ch-3.
3rd rnd: * Ch 5, skip 1 dc, sc in next dc; rep from * 9 times.
4th rnd: cut`,
    rounds: ["10", "20", "10+50", "!?"],
  },
  {
    name: "cut",
    text: `Ch 4, join.
Rnd 1: Ch 1, 12 sc in ring, join to first sc.
Rnd 2: Ch 1, sc in same sc, ch 2, *sc in next sc, ch 2; rep from * around, join. (12 ch-2 sps)
Rnd 3: cut`,
    rounds: ["12", "12+24", "!?"],
  },
  {
    name: "cut",
    text: `Rnd 1: ch 4, join, ch 3, 2 dc in ring, (ch 2, 3 dc in ring) 3x, ch 2, join.
Rnd 2: ch 3, dc in next 2 dc, *ch 1, (dc, ch 2, dc) in corner sp, ch 1, dc in next 3 dc; rep from * 2 more times, ch 1, (dc, ch 2, dc) in corner sp, ch 1, join. (20 dc)
Rnd 3: cut`,
    rounds: ["12+8", "20+16", "!?"],
  },
  {
    name: "cut",
    text: `Rnd 1: (3 dc, ch 2) x 4 in ring. 
Rnd 2: dc in each dc and (dc, ch 2...`,
    rounds: ["12+8", "!?"],
  },
  {
    name: "cut",
    text: `rnd 1: mc, ch 1, 8 sc
rnd 2: 2 sc in each st
rnd 3: (sc, ch 1) in each st
rnd 4: in first ch-1 sp sc, in next 4 dc, rep around`,
    rounds: ["8", "16", "16+16", "!?"],
  },
  {
    name: "cut",
    text: `Ch 4, join.
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 3, 3 dc in ring) 3 times, ch 3, join.
Rnd 2: Ch 3, † dc in next 2 dc, (dc, ch 3, dc) in corner sp, dc in next dc †; rep from † to † 3 times, omitting last dc; join.
Rnd 3: cut`,
    rounds: ["12+12", "20+12", "!?"],
  },
  {
    name: "cut",
    text: `Round 1: 12 dc into magic ring. Join.
Round 2: Ch 3, dc into same st. Ch 2. *1 dc into next st, 2 dc into next st, ch 2.* Repeat from * to * 4 more times...`,
    rounds: ["12", "!?"],
  },
  {
    name: "cut",
    text: `Round 1: In magic ring: (1 dc, ch 2) x 6. Join with a sl st to first dc. [6 dc, 6 ch-2 sp]
Round 2: Sl st into the next ch-2 sp. Ch 3 (counts as 1 dc). In the same sp: 1 dc...`,
    rounds: ["6+12", "!?"],
  },
  {
    name: "cut",
    text: `Rnd 1: Ch 4, join. Ch 3, 2 dc, ch 2, *3 dc, ch 2*, rep from * to * 2 more times, all in ring. Join.
Rnd 2: Sl st to ch-2 sp. Ch 3, 2 dc, ch 2, 3 dc in ch-2 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1*, rep from * to * around. Join.
Rnd 3: Sl st to ch-2 sp. Ch 3, 2 dc, ch 2, 3 dc in ch-2 sp, ch 1, 3 dc in ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in ch-1 sp, ch 1*, rep from * to * around. Join.
Rnd 4: Ch 1, sc in each dc, sc in each ch-1 sp, and 3 sc...`,
    rounds: ["12+8", "24+12", "36+16", "!?"],
  },
  {
    name: "wrong repeat count silent?",
    text: `Rnd 1: (3 dc, ch 2) 4 times in magic ring, join. 
Rnd 2: Sl st to ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next sp, ch 1; rep from * once more, join.`,
    rounds: ["12+8", "!?"],
  },
  {
    name: "missing stitch in side",
    text: `Rnd 1: (3 dc, ch 2) 4 times in magic ring, join.
Rnd 2: ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in next sp, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in next sp; rep from * 2 more times, join.
Rnd 3: ch 3, dc in next 4 dc, (2 dc, ch 2, 2 dc) in next sp, *dc in next 6 dc, (2 dc, ch 2, 2 dc) in next sp; rep from * 2 more times, dc in next 2 dc, join.`,
    rounds: ["12+8", "28+8", "!?"],
  },
  {
    name: "over-long",
    text: `Rnd 1: 6 sc in ring.
Rnd 2: 2 sc in each.
Rnd 3: (sc in next 2, inc) 6 times.`,
    rounds: ["6", "12", "!?"],
  },
  {
    name: "lace wrong loops",
    text: `Rnd 1: ch 1, (sc, ch 3) 8 times in ring, join.
Rnd 2: sl st in loop, ch 1, sc in same loop, (ch 5, sc in next loop) 8 times, ch 5, join.`,
    rounds: ["8+24", "!?"],
  },
  {
    name: "lace too few",
    text: `Rnd 1: ch 1, (sc, ch 3) 8 times in ring, join.
Rnd 2: sl st in loop, ch 1, sc in same loop, (ch 5, sc in next loop) 5 times, ch 5, join.`,
    rounds: ["8+24", "!?"],
  },
  {
    name: "total wrong chains",
    text: `Rnd 1: ch 1, (sc, ch 3) 8 times in ring, join.
Rnd 2: sl st in loop, ch 1, sc in same loop, (ch 5, sc in next loop) 7 times, ch 5, join. (9 ch-5 loops)`,
    rounds: ["8+24", "!8+40"],
  },
  {
    name: "wrong stitch named",
    text: `Rnd 1: 8 dc in ring, join.
Rnd 2: 2 dc in each tr around, join.`,
    rounds: ["8", "!16"],
  },
  {
    name: "wrong space named",
    text: `Rnd 1: (3 dc, ch 2) 4 times in magic ring, join.
Rnd 2: (3 dc, ch 2, 3 dc) in each ch-3 sp around, join.`,
    rounds: ["12+8", "!24+8"],
  },
  {
    name: "number swapped total",
    text: `Rnd 1: 6 sc in ring (6)
Rnd 2: 2 sc in each (12)
Rnd 3: (sc, inc) 6 times (81)`,
    rounds: ["6", "12", "!18"],
  },
  {
    name: "start chain contradiction",
    text: `Rnd 1: ch 3 (counts as dc), 11 dc in ring, join to top of ch-3. (12 dc)
Rnd 2: ch 3 (counts as dc), 2 dc in each dc around, join to top of ch-3.`,
    rounds: ["12", "!?"],
  },
  {
    name: "dec odd",
    text: `Rnd 1: 9 sc in ring.
Rnd 2: (sc2tog) 4 times, sl st.`,
    rounds: ["9", "!?"],
  },
  {
    name: "skip wrong",
    text: `Rnd 1: 20 sc in ring, join.
Rnd 2: ch 1, *sc in next sc, ch 3, sk 2 sc; rep from * around, join.`,
    rounds: ["20", "!?"],
  },
  {
    name: "corners five",
    text: `Rnd 1: (3 dc, ch 2) 4 times in magic ring, join.
Rnd 2: *dc in each dc to corner, (dc, ch 2, dc) in corner; rep from * 4 more times, join.`,
    rounds: ["12+8", "!?"],
  },
  {
    name: "typos of numbers",
    text: `Rnd 1: 6 sc in ring. (6)
Rnd 2: 22 sc in each sc around. (12)`,
    rounds: ["6", "!?"],
  },
  {
    name: "corner from lace circle cut",
    text: `Rnd 1: ch 5, join with sl st to form ring; ch 3 (counts as dc), 11 dc in ring; join with sl st to top of ch-3. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, ch 1, *2 dc in next dc, ch 1; rep from * around; join with sl st to top of ch-3. (24 dc, 12 ch-1 sps)
Rnd 3: sl st in next dc and in ch-1 sp; ch 3 (counts as dc), 2 dc in same sp, ch 1, *3 dc in next ch-1 sp, ch 1; rep from * around; join with sl st to top of ch-3. (36 dc)
Rnd 4: sl st in next 2 dc and in ch-1 sp; (ch 4 (counts as tr), 2 tr, ch 2, 3 tr) in same sp, *sk next dc, 2 dc in next dc, 3 dc in next ch-1 sp, 3 dc in next ch-1 sp, 2 dc in next dc, (3 tr, ch 2, 3 tr) in next ch-1 sp; rep from * around...`,
    rounds: ["12", "24+12", "36+12", "!?"],
  },
  {
    name: "wrong half way",
    text: `Rnd 1: 12 dc in ring; join.
Rnd 2: ch 3, dc in same st, 2 dc in each dc; join. 24 dc
Rnd 3: ch 3, 2 dc in next dc, *dc in next dc, 2 dc in next dc; rep from * around; join. 38 dc`,
    rounds: ["12", "24", "!36"],
  },
  {
    name: "lost word",
    text: `Rnd 1: 12 dc in ring; join.
Rnd 2: ch 3, dc in same st, 2 dc each around; join to top, 24`,
    rounds: ["12", "24"],
  },
]
