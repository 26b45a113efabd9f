// One lace circle of sixteen loops, squared by graded heights and framed, told in twelve ways: two of them in UK
// terms, four without totals. Invented for this test; every round has the same counts in each.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"

/** Stitches and spaces of rounds 1 to 5. */
const wanted = ["16/0", "16/16", "16/16", "64/4", "80/4"]

const wordings: Readonly<Record<string, string>> = {
  "formal, with totals": `Terms: US
Rnd 1: Ch 4, join with sl st to form a ring. Ch 3 (counts as dc), 15 dc in ring; join with sl st to top of ch-3. (16 dc)
Rnd 2: Ch 4 (counts as dc and ch 1), *dc in next dc, ch 1; rep from * around; join to 3rd ch of ch-4. (16 dc, 16 ch-1 sps)
Rnd 3: Sl st in next ch-1 sp, ch 1, sc in same sp, *ch 4, sc in next ch-1 sp; rep from * 14 more times, ch 4; join with sl st to first sc. (16 sc, 16 ch-4 loops)
Rnd 4: Sl st in next loop, ch 1, 3 sc in same loop, *3 hdc in next loop, (3 tr, ch 3, 3 tr) in next loop, 3 hdc in next loop, 4 sc in next loop; rep from * 2 more times, 3 hdc in next loop, (3 tr, ch 3, 3 tr) in next loop, 3 hdc in last loop, sc in first loop; join. (64 sts, 4 ch-3 sps)
Rnd 5: Ch 1, sc in each st around, working (2 sc, ch 2, 2 sc) in each ch-3 sp; join. (80 sc, 4 ch-2 sps)`,
  "brackets and times": `Terms: US
Rnd 1: Magic ring, ch 3 (counts as dc), 15 dc in ring, join. (16 dc)
Rnd 2: Ch 4 (counts as dc, ch 1), (dc in next dc, ch 1) 15 times, join to 3rd ch. (16 dc)
Rnd 3: Sl st in ch-1 sp, ch 1, sc in same sp, ch 4, [sc in next ch-1 sp, ch 4] 15 times, join to first sc. (16 loops)
Rnd 4: Ch 1, [4 sc in next loop, 3 hdc in next loop, (3 tr, ch 3, 3 tr) in next loop, 3 hdc in next loop] 4 times, join to first sc. (64 sts)
Rnd 5: Ch 1, sc in next 7 sts, *sc in next 3 tr, (2 sc, ch 2, 2 sc) in ch-3 sp**, sc in next 13 sts; rep from * around, ending last rep at **, sc in last 6 sts; join. (80 sc)`,
  "capitals, no commas": `US TERMS
ROUND 1: MAGIC CIRCLE. CH 3 (COUNTS AS DC). 15 DC INTO CIRCLE. JOIN TO TOP OF CH 3. (16)
ROUND 2: CH 4. *DC IN NEXT ST. CH 1.* REPEAT FROM * TO * AROUND. JOIN TO 3RD CH. (16 DC)
ROUND 3: SL ST IN CH 1 SPACE. CH 1. SC IN SAME SPACE. *CH 4. SC IN NEXT CH 1 SPACE.* REPEAT FROM * TO * 15 TIMES. CH 4. JOIN TO FIRST SC. (16 SC)
ROUND 4: CH 1. *4 SC IN NEXT LOOP. 3 HDC IN NEXT LOOP. (3 TR, CH 3, 3 TR) IN NEXT LOOP. 3 HDC IN NEXT LOOP.* REPEAT FROM * TO * 3 MORE TIMES. JOIN. (64 STS)
ROUND 5: CH 1. SC IN EACH ST AROUND WITH (2 SC, CH 2, 2 SC) IN EACH CH 3 SPACE. JOIN. (80 SC)`,
  chatty: `Terms: US
Round 1: Make a magic ring and chain 3, which counts as your first double crochet. Work 15 more double crochets into the ring and join with a slip stitch. You should have 16 double crochets.
Round 2: Chain 4 (this counts as a dc and ch 1), then *dc in the next stitch and chain 1*. Repeat from * to * all the way around and join to the 3rd chain. You will have 16 dc.
Round 3: Slip stitch into the first chain space, chain 1 and single crochet in the same space. *Chain 4, single crochet in the next space.* Repeat around, chain 4, and join with a slip stitch to the first sc. You now have 16 loops.
Round 4: Now we grade the heights! Chain 1. *Work 4 sc in the next loop, 3 hdc in the next loop, then 3 tr, ch 3, 3 tr all in the next loop for the corner, and 3 hdc in the next loop.* Repeat from * to * three more times and join. (64 stitches)
Round 5: Chain 1, work one sc in each stitch around and 2 sc, ch 2, 2 sc in each corner space. Join. (80 sc)`,
  "vintage, dotted": `1st rnd: Ch 4, join with sl st. Ch 3, 15 d c in ring, join with sl st to top of ch-3 (16 d c).
2nd rnd: Ch 4, * d c in next d c, ch 1. Repeat from * around. Join to 3rd st of ch-4.
3rd rnd: Sl st in next sp, s c in same sp, * ch 4, s c in next sp. Repeat from * around, ending with ch 4. Join with sl st in first s c.
4th rnd: * In next loop make 4 s c, in next loop make 3 half d c, in next loop make 3 tr, ch 3 and 3 tr, in next loop make 3 half d c. Repeat from * around. Join.
5th rnd: S c in each st around, making 2 s c, ch 2 and 2 s c in each ch-3 sp. Join.`,
  "UK, formal": `UK terms
Round 1: 4 ch, ss to form a ring. 3 ch (counts as 1 tr), 15 tr into ring, ss into top of 3 ch. (16 tr)
Round 2: 4 ch (counts as 1 tr, 1 ch), *1 tr into next tr, 1 ch; rep from * to end, ss into 3rd of 4 ch. (16 tr)
Round 3: ss into 1 ch sp, 1 ch, 1 dc into same sp, *4 ch, 1 dc into next 1 ch sp; rep from * to end, 4 ch, ss into first dc. (16 dc)
Round 4: 1 ch, *4 dc into next 4 ch loop, 3 htr into next loop, (3 dtr, 3 ch, 3 dtr) into next loop, 3 htr into next loop; rep from * 3 times more, ss into first dc. (64 sts)
Round 5: 1 ch, 1 dc into each st to end, working (2 dc, 2 ch, 2 dc) into each 3 ch sp, ss into first dc. (80 dc)`,
  "UK, without totals": `UK terms.
Rnd 1: Into a magic ring work 3ch (counts as tr), 15tr, ss to top of 3ch.
Rnd 2: 4ch, miss nothing, [1tr in next tr, 1ch] 15 times, ss in 3rd ch.
Rnd 3: ss in 1ch-sp, 1ch, 1dc in same sp, [4ch, 1dc in next 1ch-sp] 15 times, 4ch, ss in first dc.
Rnd 4: 1ch, [4dc in next loop, 3htr in next loop, (3dtr, 3ch, 3dtr) in next loop, 3htr in next loop] 4 times, ss in first dc.
Rnd 5: 1ch, 1dc in each st and (2dc, 2ch, 2dc) in each 3ch-sp all round, ss in first dc.`,
  "short notes": `US
R1: MR, ch3 (=dc), 15dc. (16)
R2: ch4, *dc in next, ch1* around, join 3rd ch. (16)
R3: sl st in sp, ch1, sc in same sp, ch4, *sc in next sp, ch4* around, join. (16)
R4: ch1, *4sc in next loop, 3hdc in next loop, (3tr, ch3, 3tr) in next loop, 3hdc in next loop* x4, join. (64)
R5: ch1, sc in each st, (2sc, ch2, 2sc) in each ch3 sp, join. (80)`,
  "place first, without totals": `Terms: US
Rnd 1: Into a magic ring work ch 3 (counts as dc), 15 dc. Join.
Rnd 2: Ch 4 (counts as dc, ch 1), dc in next st, *ch 1, dc in next st; rep from * around, ch 1, join to 3rd ch.
Rnd 3: Sl st to next sp, ch 1, in same sp sc, ch 4, *in next sp sc, ch 4; rep from * around, join.
Rnd 4: Ch 1, *in next loop work 4 sc, in next loop work 3 hdc, in next loop work (3 tr, ch 3, 3 tr), in next loop work 3 hdc; rep from * 3 times more; join.
Rnd 5: Ch 1, in each st work 1 sc, in each ch-3 sp work (2 sc, ch 2, 2 sc); join.`,
  "daggers, without totals": `Terms: US
Rnd 1: Ch 5, join. Ch 3 (counts as dc), 15 dc in ring, join.
Rnd 2: Ch 4, \u2020 dc in next dc, ch 1; rep from \u2020 14 more times, join in 3rd ch of ch-4.
Rnd 3: Sl st in sp, ch 1, sc in same sp, \u2020 ch 4, sc in next sp; rep from \u2020 14 more times, ch 4, join.
Rnd 4: Ch 1, \u2020 4 sc in next lp, 3 hdc in next lp, 3 tr, ch 3, 3 tr in next lp, 3 hdc in next lp; rep from \u2020 3 more times, join.
Rnd 5: Ch 1, \u2020 sc in next 10 sts, (2 sc, ch 2, 2 sc) in next ch-3 sp, sc in next 6 sts; rep from \u2020 3 more times, join.`,
  "bullets by round": `Terms: US
Round 1
- Magic ring
- Ch 3 (counts as dc), 15 dc in ring
- Sl st to top of ch 3 (16 dc)
Round 2
- Ch 4 (counts as dc, ch 1)
- *Dc in next st, ch 1, repeat from * around
- Sl st to 3rd ch (16 dc)
Round 3
- Sl st into ch sp, ch 1, sc in same sp
- *Ch 4, sc in next ch sp, repeat from * 14 more times
- Ch 4, sl st to first sc (16 sc)
Round 4
- Ch 1, *4 sc in next ch sp, 3 hdc in next ch sp, (3 tr, ch 3, 3 tr) in next ch sp, 3 hdc in next ch sp, repeat from * 3 more times
- Sl st to first sc (64 sts)
Round 5
- Ch 1, sc in each st around, (2 sc, ch 2, 2 sc) in each ch-3 sp
- Sl st to first sc (80 sc)`,
  "spaces named by size, totals by kind": `Terms: US
Rnd 1: 16 dc in magic ring; join. (16 dc)
Rnd 2: Ch 4 (first dc and ch 1), [1 dc in next dc, ch 1] around, join. (16 dc, 16 ch-1 sps)
Rnd 3: Join in any ch-1 sp with sc, [ch 4, sc in next ch-1 sp] 15 times, ch 4, join. (16 sc, 16 ch-4 sps)
Rnd 4: *4 sc in next ch-4 sp, 3 hdc in next ch-4 sp, [3 tr, ch 3, 3 tr] in next ch-4 sp, 3 hdc in next ch-4 sp; repeat from * three more times; join. (16 sc, 24 hdc, 24 tr, 4 ch-3 sps)
Rnd 5: 1 sc in each st and [2 sc, ch 2, 2 sc] in each ch-3 sp around; join. (80 sc, 4 ch-2 sps)`,
}

describe("a lace circle squared by graded heights", () => {
  it.each(Object.entries(wordings))("%s", (_, text) => {
    const { rounds } = readPattern(text)
    expect(rounds.map(({ counted }) => counted && `${counted.stitches}/${counted.spaces}`)).toEqual(
      wanted,
    )
  })
})
