// The catalogue of problems is closed and alive: every code is reached by a text, every problem of the texts at hand has
// a code of the catalogue and a severity that it may have, and every error and warning says what to do.

import { describe, expect, it } from "vitest"
import { type ProblemCode, problemCodes, readPattern } from "../src/index.ts"
import { damaged, randomFrom, soundPatterns } from "./mutate.ts"
import { patterns as usPatterns } from "./varied-us.ts"
import { wrongPatterns } from "./wrong-patterns.ts"

/** A text for each code; the type demands one for every code of the union, and no other. */
const reached: Readonly<Record<ProblemCode, string>> = {
  "empty-text": "",
  "no-rounds": "Once there was a hook.",
  "not-text": "\u0089PNG\u0000\u0001\u0002",
  "number-too-large": "Rnd 1: 1000000000 sc in magic ring.",
  "round-too-long": `Rnd 1: ${"sc, ".repeat(4000)}`,
  "round-without-number": "Every round: sc in each st.",
  "text-too-long": "Rnd 1: 6 sc in magic ring. ".repeat(200_000),
  "too-many-rounds": "Rnds 1-1000000: sc in each st.",
  "worked-along-chain": "Row 1: ch 20\nRow 2: sc in each ch across.",
  "chain-used-up":
    "Rnd 1: 8 dc in magic ring; join.\nRnd 2: *ch 5, sc in 2nd ch from hook, hdc in next ch, dc in next 26 ch; rep from * around.",
  "empty-round": "Rnd 1: 6 sc in magic ring.\nRnd 2: wibble the blorp.",
  "figure-passed-over": "Rnd 1: 20 sc around the 200 cm metal ring.",
  "growth-not-placed":
    "Rnd 1: 8 sc in magic ring.\nRnd 2: *ch 5, sc in next sc; rep from * around.\nRnd 3: (3 dc, ch 1, 3 dc) in each ch-5 sp; as Rnd 2, with 2 sc between increases.",
  "needs-more-than-there-is":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep from * 6 more times.",
  "nested-too-deeply": `Rnd 1: ${"( ".repeat(3000)}`,
  "no-such-place": "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 dc in next ch-3 sp.",
  "no-such-round": "Rnd 1: 6 sc in magic ring.\nRnd 2: as Rnd 9.",
  "nothing-left": "Rnd 1: 6 sc in magic ring.\nRnd 2: sc in next 6 sts, 2 dc in each st around.",
  "repeat-without-end": "Rnd 1: *sc in ring; rep from * around.",
  "round-too-large": "Rnd 1: 90000 sc in magic ring.",
  "too-many-chains": "Rnd 1: ch 90000, join to form a ring; 8 sc in ring.",
  "too-many-repeats": "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep 90000 times.",
  "too-many-steps":
    "Rnd 1: *sc in ring, (ch 1, (ch 1, (ch 1) 4000 times) 4000 times) 4000 times; rep from * 4000 times.",
  "words-passed-over": "Rnd 1: 6 sc in magic ring. Rnd 2: 2 sc in wibbled st.",
  "round-missing": "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 3: sc in each st.",
  "round-number-again": "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 1: sc in each st.",
  "second-piece":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st.\n\nRnd 1: 8 sc in magic ring.",
  "stands-on-doubt":
    "Terms: US\nRnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in each sc. (17 sc)\nRnd 3: sc in each sc.",
  "bracket-not-closed": "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st (and then",
  "closing-chain-assumed":
    "Rnd 1: *3 dc in magic ring, ch 2; rep from * 2 more times; 3 dc in ring; join.\nRnd 2: *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 3 more times; join.",
  "corner-not-said":
    "Rnd 1: *3 dc in magic ring, ch 2; rep from * 3 more times.\nRnd 2: dc in each dc around, increasing in each corner.",
  "few-stitches": "Terms: US\nRnd 1: 2 dc in magic ring; join.",
  "first-place-short":
    "Terms: US\nRnd 1: 12 dc in magic ring; join.\nRnd 2: ch 3 (counts as dc), 2 dc in each st around; join.",
  "fold-lost":
    "Rnd 1: 12 sc in magic ring.\nRnd 2: ch 1, sc in next 5 sts, 2 sc in next st, sc in each of next 6 sts.",
  "growth-implied":
    "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each sc.\nRnd 3: *sc in next sc, 2 sc in next sc; rep from * around.\nRnd 4: continue in this way. (24 sc)",
  "last-time-in-part":
    "Rnd 1: Ch 4, join to form a ring; ch 3 (counts as dc), 11 dc in ring; join.\nRnd 2: Ch 3, (dc, ch 1, 2 dc) in same st, *sk next 2 sts, (2 dc, ch 1, 2 dc) in next st; rep from * around; join.",
  "left-to-maker":
    "Terms: US\nRnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in each sc, fewer if the yarn is thick.",
  "named-space-absent":
    "Rnd 1: (3 dc, ch 2) 4 times in magic ring, join.\nRnd 2: (3 dc, ch 2, 3 dc) in each ch-3 sp around, join.",
  "named-stitch-absent": "Rnd 1: 8 dc in ring, join.\nRnd 2: 2 dc in each tr around, join.",
  "open-at-join":
    "Rnd 1: 6 sc in magic ring; join.\nRnd 2: *ch 5, sc in next sc; rep from * around; join.\nRnd 3: sc in first sp, *ch 6, sc in next sp; rep from * around; join.",
  "counted-by-itself":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep from * 6 more times.\nRnd 3: *sc in next st, 2 sc in next st; rep from * 6 more times.",
  "read-with-gap": "Rnd 1: 6 sc in magic ring.\nRnd 2: wibble the blorp. (12 sc)",
  "repeat-does-not-divide":
    "Rnd 1: 20 sc in ring, join.\nRnd 2: ch 1, *sc in next sc, ch 3, sk 2 sc; rep from * around, join.",
  "repeat-end-missing": "Rnd 1: 6 sc in magic ring.\nRnd 2: *sc in next st, 2 sc in next st.",
  "repeat-start-missing":
    "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: sc in next st, 2 sc in next st; rep from * around. (9)",
  "round-without-label":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st; then one hdc round. (12)",
  "skip-runs-out":
    "Rnd 1: 15 sc in magic ring; join.\nRnd 2: ch 1, sc in next 2 sts, *sc in next st, sk next st; rep from * around; join.",
  "spaces-left-over":
    "Rnd 1: ch 1, (sc, ch 3) 8 times in ring, join.\nRnd 2: sl st in loop, ch 1, sc in same loop, (ch 5, sc in next loop) 5 times, ch 5, join.",
  "stated-total-differs": "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st. (13 sc)",
  "stitches-left-over": "Rnd 1: 9 sc in magic ring.\nRnd 2: (sc2tog) 4 times.",
  "stitches-passed-over":
    "Rnd 1: ch 4, join to form a ring; 3 sc in each ch. (12 sc)\nRnd 2: *3 sc in the centre sc of next corner, 1 sc in each sc to next corner; rep from * 3 more times.\nRnd 3: sc in back loop of each sc around, 3 dc in center sc of each corner.\nRnd 4: as Rnd 3.\nRnd 5: 40 sc evenly, increasing 4.",
  "terms-may-be-uk": "Meadow Daisy (UK)\nRnd 1: 6 dc in magic ring.",
  "two-readings":
    "Terms: US\nRnd 1: 5 sc in magic ring.\nRnd 2: *sc in next sc, ch 4; rep from * around.\nRnd 3: (sc, 3 dc, sc) in each ch-4 sp.\nRnd 4: *sc over next sc, ch 6; rep from * around.",
  "uneven-at-join":
    "Terms: US\nRnd 1: 15 dc in magic ring; join.\nRnd 2: ch 3, popcorn in same st, ch 3, *sk next st, popcorn in next st, ch 3; rep from * 6 more times; join.",
  "bracket-opens-repeat":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: (sc in next st, ch 1; rep from * around.",
  aside: "Rnd 1: 6 sc in magic ring. (dearest grandmother wibble)",
  "begins-in-space":
    "Rnd 1: ch 4 (counts as dc, ch 1), (dc, ch 1) 7 times in magic ring; join with sl st to 3rd ch of ch-4.\nRnd 2: ch 3, 2 dc in same sp, 3 dc in each sp around; join. (24 dc)",
  "first-size-read": "Terms: US\nRnd 1: 6 (8, 10) sc in magic ring.",
  "further-rounds":
    "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st. Continue in this manner until piece measures 6 inches.",
  "gauge-line": "Gauge: quite loose\nRnd 1: 6 sc in magic ring.",
  "gauge-unlike-yarn": "Yarn: lace\nHook: 1.5 mm\nGauge: 8 sc = 10 cm\nRnd 1: 6 sc in magic ring.",
  "heading-not-read": `Yarn: ${"soft ".repeat(4000)}\nRnd 1: 6 sc in magic ring.`,
  "hook-impossible": "Yarn: DK\nHook: 400 mm\nRnd 1: 6 sc in magic ring.",
  "hook-not-read": "Terms: US\nYarn: DK\nHook: mm",
  "size-impossible": "Size: 900 m\nRnd 1: 6 sc in magic ring.",
  "size-not-read": "Size: 10 cm x 25 cm\nRnd 1: 6 sc in magic ring.",
  "yarn-not-read": "Yarn: DK or bulky\nRnd 1: 6 sc in magic ring.",
  "last-stitch-is-first":
    "Terms: US\nRnd 1: 12 sc in magic ring; join.\nRnd 2: ch 1, sc in same st, ch 5, *sc in next sc, ch 5; rep from * around; join.\nRnd 3: sl st to center of ch-5 sp, ch 1, sc in same sp, *5 dc in next ch-5 sp, sc in next ch-5 sp; rep from * around; join.",
  "loop-closed-by-cluster":
    "Terms: US\nRnd 1: 12 sc in magic ring; join.\nRnd 2: ch 1, *sc in next sc, ch 5, tr3tog in 5th ch from hook, sk next sc; rep from * around; join.",
  "more-problems": `Rnd 1: 6 sc in magic ring.\n${"Rnd 1: wibble.\n".repeat(600)}`,
  "not-of-the-work":
    "Rnd 1: 6 sc in magic ring. (6) Hooray, marvellous progress!\nRnd 2: 2 sc in each st. (12)",
  "not-worked": "Rnd 1: 6 sc in magic ring.\nRnd 2: wibble the blorp.\nRnd 3: sc in each st.",
  "other-way": "Rnd 1: ch 4, join to form a ring. Or begin with a magic ring. 8 sc in ring.",
  "outside-rounds": "# Disc\nRnd *sc in next st, * around. (18 sc)",
  "reading-chosen":
    "Terms: US\nRnd 1: ch 4, join to form a ring; ch 3, 12 dc in ring; join. (12 dc)",
  "repeat-implied": "Rnd 1: 12 dc in magic ring; join.\nRnd 2: ch 3, dc in same st, dc in next dc.",
  "ring-not-described": "Rnd 1: 6 sc in ring.",
  "rounds-by-paragraph":
    "Ch 4, join to form a ring. Ch 1, 8 sc in ring; join with sl st to first sc.\n\nCh 1, 2 sc in each st around; join with sl st to first sc.\n\nCh 1, sc in each st around; join with sl st to first sc.",
  "side-finished":
    "Use UK terms. Magic ring.\nRound 1: 1ch, (3dc, 2ch) x 4 into ring, ss to first dc.\nRound 2: 1ch, *dc in each dc to corner, (1dc, 2ch, 1dc) into 2ch-sp; repeat from * 3 more times, ss to first dc.\nRound 3: as round 2.",
  "skew-not-read": "Skew: lots\nRnd 1: 6 sc in magic ring.",
  "spread-evenly": "Terms: US\nRnd 1: 12 sc in magic ring.\nRnd 2: 18 sc evenly, increasing 6.",
  "taken-for": "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st arround.",
  "terms-by-names": "Terms: UK\nRnd 1: 6 sc in magic ring.",
  "terms-overruled":
    "Terms: US\nRnd 1: ch 4, join to form a ring; ch 3 (counts as tr), 11 tr in ring; join.\nRnd 2: ch 1, 1 dc in same st, 2 dc in each tr around; join.",
  "total-includes-chains":
    "Terms: US\nRnd 1: 12 sc in magic ring.\nRnd 2: *sc in next st, ch 3; rep from * around. (48 sts)",
  "step-without-effect":
    "Terms: US\nRnd 1: 12 sc in magic ring.\nRnd 2: *sc in next st, turn, ch 1; rep from * around.",
  "not-reckoned":
    "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: using a 6 mm hook, 2 sc in each st around.",
  "total-met-rarely":
    "Terms: US\nRnd 1: 12 sc in magic ring.\nRnd 2: ch 1, *sc in next st, 2 sc in next st; rep from * around; join. (19)",
  "total-not-firm":
    "Terms: US\nRnd 1: 12 sc in magic ring. (about 12 sc)\nRnd 2: sc in each st. (13 sc if one is added)",
  "word-in-total": "Rnd 1: 15 dc in magic ring. (15 dc splendid)",
}

const codes = Object.keys(problemCodes) as ProblemCode[]

describe("the catalogue of problems", () => {
  it.each(codes)("%s is reached", (code) => {
    const options = code === "terms-overruled" ? { terms: "UK" as const } : {}
    const told = readPattern(reached[code], options).problems
    expect(told.map((problem) => problem.code)).toContain(code)
  })

  it("holds for whatever is read", () => {
    const random = randomFrom(9)
    const texts = [
      ...Object.values(reached).filter((text) => text.length < 10_000),
      ...soundPatterns,
      ...usPatterns.map(({ text }) => text),
      ...wrongPatterns.map(({ text }) => text),
      ...Array.from({ length: 1000 }, () => damaged(random)),
    ]
    const faults = new Set<string>()
    for (const text of texts)
      for (const { code, severity, hint } of readPattern(text).problems) {
        const allowed = problemCodes[code]
        if (!allowed?.includes(severity)) faults.add(`${code} told as ${severity}`)
        if (severity !== "note" && hint === "") faults.add(`${code} as ${severity} without a hint`)
      }
    expect([...faults]).toEqual([])
  }, 300_000)
})
