// The edit of a small pattern: sound it is left in peace, and each kind of fault is told at its place.

import { examinePattern } from "@roundwright/assessment"
import { printChart } from "@roundwright/charts"
import { describe, expect, it } from "vitest"
import { editPattern } from "../src/index.ts"

const sound = `# Sill Coaster
Terms: US
Yarn: DK, cotton
Hook: 4 mm (G-6)
Gauge: 17 dc x 9 rows = 10 cm
Size: 9 cm across
Abbreviations: beg = beginning, ch = chain, dc = double crochet, rep = repeat, rnd = round, sk = skip, sl st = slip stitch, sp = space, st = stitch

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join with sl st in top of beg ch-3. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join with sl st in top of beg ch-3. (24 dc)
Rnd 3: ch 5 (counts as dc and ch 2), sk next st, *dc in next st, ch 2, sk next st; rep from * around; join with sl st in 3rd ch of beg ch-5. (12 dc + 12 ch-2 sps)
Rnd 4: sl st in next ch-2 sp, ch 3 (counts as dc), 3 dc in same sp, 4 dc in each ch-2 sp around; join with sl st in top of beg ch-3. (48 dc)
Fasten off and weave in ends.
`

const codesOf = (text: string) =>
  editPattern(text).findings.map(({ severity, code, round }) => `${severity} ${code} ${round}`)

describe("a sound pattern", () => {
  it("is left in peace, its copy is itself", () => {
    const { findings, corrected } = editPattern(sound)
    expect(findings).toEqual([])
    expect(corrected).toBe(sound)
  })
})

describe("a text that holds no pattern", () => {
  it.each(["", "The quick brown fox.", "\u0000\u0001"])("is told to be none: %j", (text) => {
    const { findings, corrected } = editPattern(text)
    expect(findings.map(({ code }) => code)).toContain("no-pattern")
    expect(corrected).toBe(text)
  })
})

describe("what the counts of other rounds tell", () => {
  const finding = (text: string, code: string) =>
    editPattern(text).findings.find((one) => one.code === code)

  it("asks for a stitch where a chain of one would have to be it", () => {
    const found = finding(
      "Ch 10.\nRnd 1: Sc in 2nd ch from hook, sc in next 7 ch, 3 sc in last ch; working along the other side of the chain, sc in next 7 ch, 2 sc in last ch; join with a sl st in first sc.\nRnd 2: Ch 1, sc in same place as sl st, 2 sc in next sc, sc in each of next 7 sc, 2 sc in each of next 3 sc, sc in each of next 8 sc; join with a sl st to first ch.\nRnd 3: Ch 1, sc in same place as sl st, sc in each of next 24 sc; join.\n",
      "stitches-left-over",
    )
    expect(found?.round).toBe(2)
    expect(found?.message).toMatch(/without it round 2 comes to 24, and what follows wants 25/)
  })

  it("takes a total with a remark behind it for one", () => {
    const found = finding(
      "Rnd 1: Ch 3, 11 dc in ring; join with sl st in top of ch-3. (12 dc)\nRnd 2: Ch 3, dc in same st, 2 dc in each st around; join (22 sts, counting ch 3 as first). Break off.\n",
      "total-wrong",
    )
    expect([found?.round, found?.severity]).toEqual([2, "must-mend"])
  })

  it("takes a line that tells the count for a total", () => {
    const text = (count: number) =>
      `Round 1: Make 17 sc in a magic ring.\nJoin the round.\nSt count: ${count} sc\n\nRound 2: Ch 1, 2 sc in each st around; join.\n`
    expect(finding(text(18), "total-wrong")?.round).toBe(1)
    expect(finding(text(17), "total-wrong")).toBeUndefined()
  })

  it("takes terms said in a sentence for stated", () => {
    const found = finding(
      "You need a 4mm hook. UK terms!\n\nRound 1: 3 ch (counts as tr), 11 tr in a magic ring; join. (12 tr)\nRound 2: 3 ch (counts as tr), 1 tr in same st, 2 tr in each st around; join. (24 tr)\nRound 3: 1 ch, 1 sc in each st around; join. (24)\n",
      "terms-mixed",
    )
    expect([found?.round, found?.severity, found?.wording]).toEqual([3, "must-mend", "dc"])
  })

  it("asks about the round before where that would bring the next to its total", () => {
    const found = finding(
      "Rnd 1: Ch 3 (counts as dc), 12 dc in ring; join.\nRnd 2: Ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (24 dc)\n",
      "repeat-does-not-fit",
    )
    expect(found?.round).toBe(1)
    expect(found?.message).toMatch(/comes to 13; with 12 the next round/)
  })

  it("asks about totals that count chains with the stitches", () => {
    const found = finding(
      "Rnd 1: Ch 3 (counts as dc), 11 dc in ring; join. (12)\nRnd 2: Ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (24)\nRnd 3: Ch 4 (counts as dc and ch 1), *dc in next st, ch 1; rep from * around; join. (48)\n",
      "total-wrong",
    )
    expect([found?.round, found?.severity, found?.wording]).toEqual([3, "query", "24"])
  })
})

describe("one fault in it", () => {
  it.each([
    ["a total", "(24 dc)", "(26 dc)", "must-mend total-wrong 2"],
    ["a total of spaces", "12 ch-2 sps)", "14 ch-2 sps)", "must-mend spaces-total-wrong 3"],
    ["a total left out", " (24 dc)", "", "query total-missing 2"],
    ["a total in another style", "(24 dc)", "– 24 dc", "style totals-in-two-styles 2"],
    [
      "a space that is not there",
      "each ch-2 sp around",
      "each ch-3 sp around",
      "must-mend place-not-there 4",
    ],
    [
      "no start of a repeat",
      "sk next st, *dc",
      "sk next st, dc",
      "must-mend repeat-marks-missing 3",
    ],
    ["a number twice", "Rnd 4:", "Rnd 3:", "must-mend round-number-again 3"],
    ["a UK stitch", "11 dc", "11 htr", "must-mend terms-mixed 1"],
    ["a UK word", "ch 2, sk next st; rep", "ch 2, miss next st; rep", "query terms-mixed 3"],
    [
      "a start that does not say",
      "ch 3 (counts as dc), dc in",
      "ch 3, dc in",
      "query start-not-said 2",
    ],
    [
      "a join into another chain",
      "3rd ch of beg ch-5",
      "2nd ch of beg ch-5",
      "must-mend join-into-wrong-place 3",
    ],
    ["no end", "\nFasten off and weave in ends.", "", "query no-fasten-off 4"],
    ["an entry missing", "sk = skip, ", "", "query abbreviation-not-listed 3"],
    [
      "an entry missing that rounds share",
      "sp = space, ",
      "",
      "query abbreviation-not-listed null",
    ],
    [
      "an entry too many",
      "sk = skip, ",
      "sk = skip, tr = treble crochet, ",
      "style abbreviation-not-used null",
    ],
    ["another hook's letter", "G-6", "I-9", "must-mend hook-letter-differs null"],
    ["no gauge", "Gauge: 17 dc x 9 rows = 10 cm\n", "", "query gauge-missing null"],
    ["no hook", "Hook: 4 mm (G-6)\n", "", "query hook-missing null"],
    ["no yarn", "Yarn: DK, cotton\n", "", "query yarn-missing null"],
    ["no size", "Size: 9 cm across\n", "", "query size-missing null"],
    ["an impossible gauge", "17 dc x 9 rows", "8 dc x 4 rows", "must-mend gauge-impossible null"],
    ["an impossible size", "9 cm across", "30 cm across", "must-mend size-impossible null"],
    ["another label", "Rnd 3:", "Round 3:", "style labels-in-two-styles 3"],
    ["no terms", "Terms: US\n", "", "query terms-not-stated null"],
    ["a neighbouring hook's letter", "4 mm (G-6)", "4 mm (F-5)", "query hook-letter-differs null"],
    [
      "a round that is not there",
      "Rnd 4: sl st",
      "Rnd 4: As in Rnd 9, sl st",
      "query round-named-not-there 4",
    ],
    [
      "inches of another length",
      "9 cm across",
      "9 cm (4 1/2 in) across",
      "query measures-differ null",
    ],
    [
      "yards of another length",
      "DK, cotton",
      "DK, cotton, 100 yds (110 m)",
      "query measures-differ null",
    ],
    [
      "ounces of another weight",
      "DK, cotton",
      "DK, cotton, 50 g / 3½ oz",
      "query measures-differ null",
    ],
    ["a word twice", "in same sp, 4", "in in same sp, 4", "style word-twice 4"],
    ["a total that names a stitch twice", "(24 dc)", "(12 dc, 12 dc)", "query total-wrong 2"],
    [
      "a join left out",
      "2 dc in each st around; join with sl st in top of beg ch-3.",
      "2 dc in each st around.",
      "query join-missing 2",
    ],
  ])("%s", (_, from, to, told) => {
    const faulty = sound.replace(from, to)
    expect(faulty).not.toBe(sound)
    expect(codesOf(faulty)).toContain(told)
  })
})

describe("what is as it should be", () => {
  it.each([
    ["a hook in mm behind its letter", "4 mm (G-6)", "H / 5.0 mm"],
    ["a hook in mm without a blank", "4 mm (G-6)", "I/5.50MM"],
    ["inches and centimetres rounded", "9 cm across", "9 cm (3 1/2 in) across"],
    ["yards and metres rounded", "DK, cotton", "DK, cotton, 50 g (1.75 oz), 125 m / 137 yds"],
  ])("is not told: %s", (_, from, to) => {
    const told = codesOf(sound.replace(from, to))
    expect(told.filter((one) => /hook-letter|measures/.test(one))).toEqual([])
  })

  it("the other terms' name beside the own one is a help and no slip", () => {
    const text =
      "Terms: UK\nRnd 1: Magic ring, 3 ch (counts as tr), 11 tr (US dc) in ring; join. (12 tr)\nRnd 2: 1 ch, [1 dc (US = sc), 3 ch] in each st around; join. (12 dc)\n"
    expect(codesOf(text).filter((one) => one.includes("terms-mixed"))).toEqual([])
  })
})

describe("places that words of rounds point to", () => {
  const told = (text: string) => codesOf(text)

  it("colours that the materials list, and one they do not", () => {
    const text = (letter: string) =>
      `Materials\nColor A: moss\nColor B: sand\n\nRnd 1: With color A, ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)\nRnd 2: With color ${letter}, ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (24 dc)\n`
    expect(told(text("B"))).not.toContain("query colour-not-listed 2")
    expect(told(text("C"))).toContain("query colour-not-listed 2")
  })

  it("the first chain from the hook", () => {
    const text =
      "Rnd 1: Ch 2, 6 sc in 1st ch from hook; join. (6 sc)\nRnd 2: Ch 1, 2 sc in each st around; join. (12 sc)\n"
    expect(told(text)).toContain("query place-not-there 1")
  })

  it("joins of chains that are written as '4 ch', and of first rounds on a ring", () => {
    const text = (join: string) =>
      `Rnd 1: Ch 4 (counts as dc and ch 1), [dc, ch 1] 7 times in ring; join with sl st in ${join} ch of ch-4. (8 dc)\nRnd 2: Ch 1, 2 sc in each ch-1 sp around; join. (16 sc)\n`
    expect(told(text("3rd")).filter((one) => one.includes("join-into"))).toEqual([])
    expect(told(text("2nd")).filter((one) => one.includes("join-into"))).toHaveLength(1)
  })
})

describe("a round that its words do not bring to its total", () => {
  it("is asked about, with the reason, and is not taken on trust", () => {
    const text =
      "Round 1: 8 hdc in magic ring; join. (8 hdc)\nRound 2: 2 hdc in each st around; join. (16 hdc)\nRound 3: *2 dc in next st, ch 3, 2 dc in next st, dc in next 4 sts* 4 times; join. (32 dc)\n"
    expect(
      codesOf(text).filter((one) =>
        / (?:total-wrong|repeat-does-not-fit|not-settled) 3$/.test(one),
      ),
    ).not.toEqual([])
  })
})

describe("a total of groups", () => {
  const petals = (total: string) => `Terms: US
Rnd 1: ch 4, sl st in first ch to make ring; (3 dc, ch 2) in ring 6 times; join. ${total}
Rnd 2: ch 1, sc in each dc and 2 sc in each ch-2 sp around; join. (30 sc)
Rnd 3: ch 1, sc in each st around; join. (30 sc)
`
  it("is let stand where the round repeats so often, and asked about where it does not", () => {
    expect(codesOf(petals("(6 petals)")).filter((told) => told.includes("total"))).toEqual([])
    expect(codesOf(petals("(7 petals)"))).toContain("query total-wrong 1")
  })
})

describe("the corrected copy", () => {
  it.each([
    ["(24 dc)", "(26 dc)"],
    ["11 dc", "11 hdc", "11 htr"],
    ["3rd ch of beg ch-5", "2nd ch of beg ch-5"],
    ["G-6", "I-9"],
    [" (24 dc)", ""],
    ["(24 dc)", "– 24 dc"],
    ["sp = space, ", ""],
    ["sk = skip, ", "sk = skip, tr = treble crochet, "],
    ["Rnd 3:", "Round 3:"],
  ])("has %j again for %j", (right, wrong, third?: string) => {
    const faulty = sound.replace(right, third ?? wrong)
    const { corrected } = editPattern(faulty)
    const wanted = third === undefined ? sound : sound.replace(right, wrong)
    expect(wordsOf(corrected)).toEqual(wordsOf(wanted))
  })
})

/** An entry of a list may come to stand in another place of it. */
function wordsOf(text: string): string[] {
  return text.split(/[\s,]+/).sort()
}

describe("a chart against the text", () => {
  const check = examinePattern(sound, { shape: "net", remedies: false })
  const chart = printChart(check.reading.motif, check.shape!)
  const told = (text: string, drawing = chart) =>
    editPattern(text, { chart: drawing }).findings.filter(({ code }) => code === "chart-differs")

  it("of the same rounds says nothing", () => expect(told(sound)).toEqual([]))

  it("tells the round that was changed since, and what it has", () => {
    const changed = sound
      .replace(
        "2 dc in each st around; join",
        "dc in next st, *2 dc in next st, dc in next st; rep from * around; join",
      )
      .replace("(24 dc)", "(18 dc)")
    const [first] = told(changed)
    expect([first?.round, first?.severity, first?.line]).toEqual([2, "must-mend", 10])
    expect(first?.message).toMatch(/^In round 2 the chart has 24 dc and the text \d+\.$/)
  })

  it("tells a round that only one of them has", () => {
    const [cut] = sound.split("Rnd 4:")
    expect(told(cut!).map(({ message }) => message)).toEqual([
      "The chart has a round 4, the text has none.",
    ])
  })

  it("that is another drawing is refused", () => {
    expect(() => editPattern(sound, { chart: "<svg/>" })).toThrow(/does not say which stitches/)
  })
})
