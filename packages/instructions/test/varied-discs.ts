// Discs in wordings of many hands, our own text throughout; stitches and chains were
// counted by hand before the reader saw them.

import type { VariedPattern } from "./help.ts"

export const us: readonly VariedPattern[] = [
  {
    name: "turning rounds",
    text: `Worked in rounds that are turned; ch 1 at start of each rnd does not count.
Rnd 1 (RS): 8 sc in magic ring, sl st in first sc, turn. (8 sc)
Rnd 2 (WS): Ch 1, 2 sc in each sc around, sl st in first sc, turn. (16 sc)
Rnd 3 (RS): Ch 1, (sc in next sc, 2 sc in next sc) 8 times, sl st in first sc, turn. (24 sc)
Rnd 4 (WS): Ch 1, (sc in next 2 sc, 2 sc in next sc) 8 times, sl st in first sc. Do not turn. (32 sc)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0"],
  },
  {
    name: "html entities",
    text: `<p><strong>Rnd&nbsp;1:</strong> Ch&nbsp;2, 6&nbsp;sc in 2nd ch from hook&mdash;6 sc.</p>
<p><strong>Rnd&nbsp;2:</strong> 2&nbsp;sc in each sc around&mdash;12 sc.</p>
<p><strong>Rnd&nbsp;3:</strong> *Sc in next sc, 2&nbsp;sc in next sc; rep from * around&mdash;18 sc.</p>
<p><strong>Rnd&nbsp;4:</strong> *Sc in next 2&nbsp;sc, 2&nbsp;sc in next sc; rep from * around&mdash;24 sc.</p>`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "coaster with crab",
    text: `Ch 2.
Rnd 1: 10 hdc in second ch from hook, sl st to first hdc. (10 hdc)
Rnd 2: ch 1 (not counted as st), 2 hdc in each st, sl st to first hdc. (20 hdc)
Rnd 3: ch 1, *hdc in next, 2 hdc in next* around, join (30 hdc)
Rnd 4: ch 1, *hdc in next 2, 2 hdc in next* around, join (40 hdc)
Rnd 5: ch 1, reverse sc in each st around, join. FO (40 sc)`,
    counts: ["10/0/0", "20/0/0", "30/0/0", "40/0/0", "40/0/0"],
  },
  {
    name: "total styles",
    text: `Rnd 1: ch 1, 8 sc in ring; join. You should have 8 sc.
Rnd 2: ch 1, 2 sc in each sc; join ...16 sc
Rnd 3: ch 1, *sc in next sc, 2 sc in next sc; rep from * to end; join. {24}
Rnd 4: ch 1, *sc in next 2 sc, 2 sc in next sc; rep from * to end; join. There are now 32 sc.
Rnd 5: ch 1, *sc in next 3 sc, 2 sc in next sc; rep from * to end; join. Total: 40 sts.`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0"],
  },
  {
    name: "spiral tote base",
    text: `Bag Base (worked in a continuous spiral — use a stitch marker!)
Rd 1 – 8 sc into magic ring (8)
Rd 2 – 2 sc in each st around (16)
Rd 3 – [1 sc, 2 sc in next st] x 8 (24)
Rd 4 – [2 sc, 2 sc in next st] x 8 (32)
Rd 5 – [3 sc, 2 sc in next st] x 8 (40)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0"],
  },
  {
    name: "potholder magic circle",
    text: `Magic Potholder. With A, ch 3, sl st in 1st ch to form ring.
Rnd 1: Ch 1, 8 sc into ring. Sl st in 1st sc. [8 sts]
Rnd 2: Ch 3 (counts as 1 dc here and throughout), 2 dc in same st, 3 dc in each st around. Sl st in top of ch 3. [24 sts]
Rnd 3: Ch 3, 1 dc in same st, 2 dc in each st around. Sl st in top of ch 3. [48 sts]
Rnd 4: Ch 3, 1 dc in same st, 1 dc in next st, *2 dc in next st, 1 dc in next st. Repeat from * around. Sl st in top of ch 3. [72 sts]`,
    counts: ["8/0/0", "24/0/0", "48/0/0", "72/0/0"],
  },
  {
    name: "counted",
    text: `Ch 4, sl st to form ring.
Rnd 1: Ch 3 (counts as sc + ch 2), *sc in ring, ch 2*, rep 2 more times...`,
    counts: ["4/8/4"],
  },
  {
    name: "waffle pot hdc",
    text: `Chain 2
Round 1: Work 10 hdc in the second chain from the hook. Join with a slip stitch to the first hdc. (10 hdc)
Round 2: Chain 1. Work 2 hdc in the same stitch as the join and in each stitch around. Join. (20 hdc)
Round 3: Chain 1. Hdc in the same stitch. 2 hdc in the next stitch. *Hdc in the next stitch, 2 hdc in the next.* Repeat from * to * to the end of the round. Join. (30 hdc)
Round 4: Chain 1. Hdc in the same stitch and in the next stitch. 2 hdc in the next stitch. [Hdc in the next two stitches, 2 hdc in the next] around. Join. (40 hdc)`,
    counts: ["10/0/0", "20/0/0", "30/0/0", "40/0/0"],
  },
  {
    name: "crossed dc",
    text: `Rnd 1: ch 3, 11 dc in ring, join.
Rnd 2: ch 3, dc in same st, 2 dc in each st around, join.
Rnd 3: ch 1, sc in each st around, join. 
Rnd 4: ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around, join.`,
    counts: ["12/0/0", "24/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "Mile-a-minute circle UK magic ring",
    text: `Using 4mm hook and yarn A, make a magic ring.
Round 1: 1ch (does not count as st), 6dc into ring, ss to 1st dc. [6dc]
Round 2: 1ch, 2dc in each st around, ss to 1st dc. [12dc]
Round 3: 1ch, [1dc in next st, 2dc in next st] 6 times, ss to 1st dc. [18dc]
Round 4: 1ch, [1dc in each of next 2 sts, 2dc in next st] 6 times, ss to 1st dc. [24dc]`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "sock-yarn mandala w/ FP",
    text: `Round 1: 12dc in magic ring. sl st to close. {12}
Round 2: [1dc, 1FPdc around the same stitch] x12. {24}
Round 3: [1FPdc around FPdc, 1dc in dc] around {24}
Round 4: [2dc in next st, 1FPdc around next FPdc] x12 {36}
Round 5: [1dc in next, 2dc in next, 1FPdc around next FPdc] x12 {48}`,
    counts: ["12/0/0", "24/0/0", "24/0/0", "36/0/0", "48/0/0"],
  },
  {
    name: "chunky spiral rug",
    text: `R1. ch2, 8sc in second ch from hook.
R2. 2sc in every sc (16)
R3. *sc, 2sc in next*, repeat (24)
R4. *sc in next 2, 2sc in next*, repeat (32)
R5. *sc in next 3, 2sc in next*, repeat (40)
R6. *sc in next 4, 2sc in next*, repeat (48)`,
    counts: ["8/0/0", "16/0/0", "24/0/0", "32/0/0", "40/0/0", "48/0/0"],
  },
  {
    name: "cut",
    text: `Rnd 1: Ch 4, sl st to form ring. Ch 3, 2 dc in ring, ch 3, *3 dc in ring, ch 3, repeat from * twice more; sl st in 3rd chain of starting chain. (12 dc)
Rnd 2: Ch 1, sc in same st, ch 2, sk 1 dc, sc in next dc, ch 4, *sc in next dc, ch 2, sk 1 dc, sc in next dc, ch 4; rep from * 2 times...`,
    counts: ["12/12/4", "8/24/8"],
  },
  {
    name: "squircle",
    text: `R1: 12 dc in MC, ss to join.
R2: ch2 (not a stitch), 2 dc in ea st around, ss in first st.
R3: ch2 (not a stitch), *dc in next 5 sts, 5 dc in next st; rep from * 3 more times, ss in first st.`,
    counts: ["12/0/0", "24/0/0", "40/0/0"],
  },
  {
    name: "dc in same st as join, spanish marks",
    text: `«Rnd 1»: 6 sc in magic ring … (6)
„Rnd 2“: 2 sc in each st – (12)
Rnd 3： ＊1 sc, 2 sc in next st； rep from ＊ 6× (18)`,
    counts: ["6/0/0", "12/0/0", "18/0/0"],
  },
  {
    name: "dc over dc",
    text: `Ring.
1st round: 12 tr into ring.
2nd round: 2 tr into each tr.
3rd round: 1 tr over each tr, 1 ch between each.
4th round: 3 dc into each sp.`,
    counts: ["12/0/0", "24/0/0", "24/24/24", "72/0/0"],
  },
  {
    name: "old ball",
    text: `Chain 2, 6 s. c. in 2d stitch of chain. 2d round, 2 s. c. in each stitch. 3d round, * 1 s. c. in next stitch, 2 s. c. in next; repeat from * around. 4th round, * 1 s. c. in each of next 2 stitches, 2 s. c. in next; repeat from * around.`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "filet-like mesh circle",
    text: `Rnd 1: Ch 4 (counts as dc and ch 1), work (dc, ch 1) 13 times in magic ring, sl st in 3rd ch. (14 spaces)
Rnd 2: Sl st into space, ch 4, dc in same space, ch 1, (dc, ch 1, dc, ch 1) in each space around, sl st in 3rd ch. (28 spaces)`,
    counts: ["14/14/14", "28/28/28"],
  },
  {
    name: "sc2tog cup",
    text: `Rnd 1: 24 dc in magic ring. (24)
Rnd 2: ch 1, sc in each dc, join. (24)
Rnd 3: ch 1, *sc in next st, sc2tog over next 2 sts; rep from * around. (16)
Rnd 4: ch 1, *sc2tog; rep from * around. (8)`,
    counts: ["24/0/0", "24/0/0", "16/0/0", "8/0/0"],
  },
  {
    name: "pc every other",
    text: `Rnd 1: ch 1, 8 sc in ring, sl st
Rnd 2: ch 1, 2 sc in each sc, sl st
Rnd 3: ch 3, *pc in next st, dc in next st*, end pc in last st, sl st
Rnd 4: ch 1, sc in each st, sl st`,
    counts: ["8/0/0", "16/0/0", "16/0/0", "16/0/0"],
  },
  {
    name: "repeat rounds",
    text: `Rnd 1: 10 sc in ring, join.
Rnd 2: ch 1, 2 sc in each sc, join.
Rnd 3: ch 1, sc in each sc, join.
Rnd 4: Rep Rnd 3.
Rnd 5: Same as Rnd 3.`,
    counts: ["10/0/0", "20/0/0", "20/0/0", "20/0/0", "20/0/0"],
  },
  {
    name: "decreasing rounds dc2tog",
    text: `Rnd 1: 36 dc in ring, join.
Rnd 2: ch 3, dc2tog over next 2 sts, *dc in next st, dc2tog; rep from * around, join. (24)
Rnd 3: ch 2, dc in next st, *dc2tog; rep from * around, join. (12)
Rnd 4: ch 1, *sc2tog; rep from * around. (6)`,
    counts: ["36/0/0", "24/0/0", "12/0/0", "6/0/0"],
  },
  {
    name: "ruffle edge circle",
    text: `Rnd 1: 12 dc in magic ring.
Rnd 2: 2 dc in each dc.
Rnd 3: 3 dc in each dc.`,
    counts: ["12/0/0", "24/0/0", "72/0/0"],
  },
  {
    name: "linked dc",
    text: `R1: ch 3, 13 linked dc in ring, join. (14)
R2: ch 3, linked dc in same st, 2 linked dc in each st around, join. (28)`,
    counts: ["14/0/0", "28/0/0"],
  },
  {
    name: "three-round snowball",
    text: `Rnd 1: ch 3, join with sl st to form ring; ch 3 (counts as dc), 11 dc in ring; join with sl st to top of ch-3.
Rnd 2: sl st between first 2 sts; ch 3 (counts as dc), dc in same sp, *2 dc in sp between next 2 sts; rep from * around; join with sl st to top of ch-3. (24 dc)
Rnd 3: sl st in sp between 2-dc groups; ch 3 (counts as dc), 2 dc in same sp, *3 dc in sp between next 2-dc groups; rep from * around; join with sl st to top of ch-3. (36 dc)`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "chatty blog",
    text: `Hello lovelies! 🌸 Today I'm sharing my favourite coaster. Find me at www.example.com/blog.
You will need: cotton yarn, a 4mm hook, scissors and a darning needle.
I'm using US crochet terms.

Round 1: Make a magic ring, ch 3 (this counts as your first dc), then work 11 dc into the ring. Pull the ring tight and join with a slip stitch to the top of the ch 3. (12 dc) 💕
[photo 1]
Round 2: Ch 3 (counts as dc), work another dc into the same stitch. Now work 2 dc into every stitch all the way around. Join with a slip stitch to the top of the ch 3. You should now have 24 dc.
Photo 2: two rounds done!
Round 3: Ch 3, 2 dc in the next stitch, *1 dc in the next stitch, 2 dc in the next stitch, repeat from * all the way around. Join with a sl st. (36 dc). Fasten off and weave in your ends. Ta-da!`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "tips between",
    text: `Rnd 1: 6 sc in magic ring (6)
Tip: use a stitch marker in the first stitch!
Rnd 2: 2 sc in each st around (12)

Note: if your circle curls, try a bigger hook.
Rnd 3: *1 sc in next st, 2 sc in next st* repeat 6 times (18)
Rnd 4: *1 sc in next 2 sts, 2 sc in next st* repeat 6 times (24)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "24/0/0"],
  },
  {
    name: "bullets",
    text: `• Round 1: ch 4, sl st to form ring; ch 3, 11 dc in ring; join. 12 dc
• Round 2: ch 3, dc in same st, 2 dc in each st around; join. 24 dc`,
    counts: ["12/0/0", "24/0/0"],
  },
  {
    name: "last sc in joining",
    text: `Rnd 1: 8 sc in ring; sl st in first sc.
Rnd 2: ch 1, 2 sc in same sc as sl st, 2 sc in each of next 7 sc; sl st in first sc.
Rnd 3: ch 1, sc in same sc as sl st, *ch 3, sk next sc, sc in next sc; rep from * 6 times, ch 3, sk last sc; sl st in first sc.`,
    counts: ["8/0/0", "16/0/0", "8/24/8"],
  },
]

export const uk: readonly VariedPattern[] = [
  {
    name: "uk with us conversion note",
    text: `This pattern uses UK terms (US terms in brackets).
Round 1: 3ch, 11tr [dc] into ring, ss into top of 3ch. (12 tr)
Round 2: 3ch, 1tr in same st, 2tr in each st around, ss into top of 3ch. (24 tr)
Round 3: 3ch, 2tr in next st, (1tr in next st, 2tr in next st) around, ss into top of 3ch. (36 tr)`,
    counts: ["12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "UK blog circle",
    text: `Flat Circle Coaster
UK terms
Make a magic ring.
Round 1: 3ch (counts as 1tr throughout), 11tr into ring, ss to top of 3ch to join. (12tr)
Round 2: 3ch, 1tr at base of 3ch, *2tr in next st; rep from * to end, ss to top of 3ch. (24tr)
Round 3: 3ch, 2tr in next st, *1tr in next st, 2tr in next st; rep from * to end, ss in top of 3ch to join. (36tr)
Round 4: 3ch, 1tr in next st, 2tr in next st, *1tr in each of next 2 sts, 2tr in next st; rep from * to end, ss to join. 48 sts.`,
    counts: ["12/0/0", "24/0/0", "36/0/0", "48/0/0"],
  },
  {
    name: "uk tabard coaster",
    text: `Abbreviations: ch, chain; dc, double crochet; tr, treble; ss, slip stitch (British terms)
Work 5ch, ss in first ch to form a ring.
1st round: 3ch, 13tr in ring, ss in 3rd of 3ch. 14 sts.
2nd round: 3ch, 1tr in st at base of 3ch, 2tr in each tr to end, ss in 3rd of 3ch. 28 sts.
3rd round: 3ch, 2tr in next tr, [1tr in next tr, 2tr in next tr] 13 times, ss in 3rd of 3ch. 42 sts.
4th round: [1dc in next tr, 3ch, miss 2tr] to end, ss in first dc.`,
    counts: ["14/0/0", "28/0/0", "42/0/0", "14/42/14"],
  },
  {
    name: "uk old",
    text: `(English terms)
6 ch., join with s.s.
1st row: 3 ch., 15 tr. in ring, s.s. to 3rd ch.
2nd row: 5 ch. (for 1 tr. and 2 ch.), * 1 tr. in next tr., 2 ch., repeat from * to end, s.s. to 3rd of 5 ch.
3rd row: s.s. into space, 1 d.c. in space, * 5 ch., 1 d.c. into next space; repeat from *, ending with 2 ch., 1 tr. into first d.c.`,
    counts: ["16/0/0", "16/32/16", "16/80/16"],
  },
]
