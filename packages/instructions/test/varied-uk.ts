// Whole patterns of our own in UK terms, in as many styles as patterns come in, each with what its rounds
// come to: stitches/chains/spaces, counted by hand.

import type { VariedPattern } from "./help.ts"

export const patterns: readonly VariedPattern[] = [
  {
    name: "uk granny no join words",
    text: `UK terms. 4mm hook, dk.
Foundation: 4ch, ss to form ring.
R1: 3ch (counts as tr), 2tr, 2ch, *3tr, 2ch; rep from * twice more. ss to 3rd ch. (12 tr)
R2: ss to corner, 3ch, 2tr, 2ch, 3tr in same sp, 1ch, *3tr, 2ch, 3tr in next sp, 1ch; rep from * twice more, ss to 3rd of 3ch.
R3: ss into corner sp. 3ch, (2tr, 2ch, 3tr) in corner sp, 1ch, 3tr in next sp, 1ch, *(3tr, 2ch, 3tr) in corner sp, 1ch, 3tr in next sp, 1ch* 3 times. Join.`,
    counts: ["12/8/4", "24/12/8", "36/16/12"],
  },
  {
    name: "old needlework book",
    text: `Terms: UK
1st round: 6 ch., join. 
2nd round: 12 d.c. under the ring.
3rd round: * 1 d.c. in next d.c., 4 ch., miss 1; repeat from * 5 times more.
4th round: In each loop of 4 ch. work 1 d.c., 5 tr., 1 d.c.
5th round: * 6 ch., 1 d.c. between the two d.c. of petals; repeat from * all round.`,
    counts: ["0/0/0", "12/0/0", "6/24/6", "42/0/0", "6/36/6"],
  },
  {
    name: "square from circle uk",
    text: `Uses UK terms
Rnd 1. 16 tr in magic ring, join. (16 tr)
Rnd 2. 3 ch (counts as tr), tr in same st, 2 tr in each st around. Join. (32 tr)
Rnd 3. *1 dc in each of next 2 sts, 1 htr in next st, 1 tr in next st, (1 dtr, 2 ch, 1 dtr) in next st, 1 tr in next st, 1 htr in next st, 1 dc in next st; rep from * 3 more times. Join. (36 sts, 4 ch-2 sps)`,
    counts: ["16/0/0", "32/0/0", "36/8/4"],
  },
  {
    name: "uk circle with tension",
    text: `Small mat
Tension: first 3 rounds = 7 cm
Abbreviations (UK): dc, htr, tr, ss
Round 1: Using 4mm hook make 4ch and join with ss to form ring.
Round 2: 3ch (counts as 1tr), 11tr into ring, ss into 3rd of 3ch. [12tr]
Round 3: 3ch, 1tr into st at base of 3ch, 2tr into each tr to end, ss into 3rd of 3ch. [24tr]
Round 4: 3ch, 2tr into next tr, *1tr into next tr, 2tr into next tr; rep from * to end, ss into 3rd of 3ch. [36tr]`,
    counts: ["0/0/0", "12/0/0", "24/0/0", "36/0/0"],
  },
  {
    name: "uk old long treble",
    text: `Terms: UK
1st Round.—Make 6 ch., join. 3 ch. (for a treble), 17 tr. in ring, join with s.s.
2nd Round.—4 ch., (1 tr. in next tr., 1 ch.) all round, join to 3rd of 4 ch.
3rd Round.—1 s.s. in ch. sp., 3 ch., 1 tr. in same sp., * 1 ch., 2 tr. in next sp.; rep. from * all round, 1 ch., s.s. to top of 3 ch.`,
    counts: ["18/0/0", "18/18/18", "36/18/18"],
  },
  {
    name: "hex with spaces between trebles",
    text: `UK terms
Round 1: magic ring, ch 3 (counts as tr), 1 tr, (ch 2, 2 tr) x 5, ch 2, join with sl st. (12 tr)
Round 2: sl st in next tr and ch-2 sp, ch 3, 1 tr, ch 2, 2 tr in same space, (2 tr, ch 2, 2 tr) in each ch-2 sp around. Join. (24 tr)
Round 3: sl st to corner, ch 3, (tr, ch 2, 2 tr) in corner, 2 tr in gap between next 2 groups, *(2 tr, ch 2, 2 tr) in next corner, 2 tr in gap between next 2 groups; repeat from * around. Join. (36 tr)`,
    counts: ["12/12/6", "24/12/6", "36/12/6"],
  },
  {
    name: "uk miss and into",
    text: `Pattern uses UK terminology.
Round 1: 5ch, ss into first ch to make a ring.
Round 2: 1ch, 10dc into ring, ss into first dc. (10dc)
Round 3: 4ch (counts as 1tr and 1ch), (1tr into next dc, 1ch) nine times, ss into 3rd of 4ch. (10tr, 10 1-ch sps)
Round 4: ss into next sp, 3ch, 2tr into same sp, 3tr into each sp to end, ss into top of 3ch. (30tr)
Round 5: 1ch, 1dc into same place, *3ch, miss 2tr, 1dc into next tr; rep from * to last 2 tr, 3ch, ss into first dc. (10 sps)`,
    counts: ["0/0/0", "10/0/0", "10/10/10", "30/0/0", "10/30/10"],
  },
  {
    name: "decrease ball uk",
    text: `Terms: UK
Rnd 1: 6 dc in magic ring (6)
Rnd 2: 2 dc in each (12)
Rnd 3: (dc in next, 2 dc in next) x6 (18)
Rnd 4: dc around (18)
Rnd 5: (dc in next, dc2tog) x6 (12)
Rnd 6: (dc2tog) x 6 (6)`,
    counts: ["6/0/0", "12/0/0", "18/0/0", "18/0/0", "12/0/0", "6/0/0"],
  },
  {
    name: "uk octagon",
    text: `Terms: UK

Rnd 1: 5ch, join with sl st into a ring, 3ch (=1tr), 15tr in ring, sl st to top of 3ch. 16 tr
Rnd 2: 3ch, 1tr in same st, 1tr in next st, *2tr in next st, 1tr in next st. Repeat from * to end, sl st. 24 tr
Rnd 3: 4ch (=1tr, 1ch), miss 0, *1tr in next st, 1ch*, repeat to end, sl st to 3rd ch. 24 tr`,
    counts: ["16/0/0", "24/0/0", "24/24/24"],
  },
  {
    name: "uk old irish rose",
    text: `Terms: UK
1st Row: 8 ch., join in ring with ss.
2nd Row: 6 ch., * 1 tr. in ring, 3 ch.; repeat from * 4 times, ss. to 3rd of 6 ch. (6 sps.)
3rd Row: in each sp. work 1 d.c., 1 h.tr., 3 tr., 1 h.tr., 1 d.c. (6 petals)
4th Row: * 5 ch., 1 d.c. into back of next tr. of 2nd row; repeat from * 5 times.
5th Row: in each loop work 1 d.c., 1 h.tr., 5 tr., 1 h.tr., 1 d.c.`,
    counts: ["0/0/0", "6/18/6", "42/0/0", "6/30/6", "54/0/0"],
  },
]
