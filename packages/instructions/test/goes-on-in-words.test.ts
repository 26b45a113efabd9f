// Lists that go on in words, increases told by where they fall, totals told by colours, petals from slip stitch to slip
// stitch: wording of our own. Counts of the last round are worked out by hand: stitches/chains/spaces.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { doubts, last, read } from "./help.ts"

const twelve = "12 sc in magic ring; join."
const loops = ["6 sc in magic ring; join.", "*sc in next sc, ch 3; rep from * around; join."]
const square = "Ch 3, 2 dc in magic ring, ch 2, (3 dc in ring, ch 2) 3 times; join."

const cases: [string, ...string[]][] = [
  ["42/0/0", ...loops, "sc, 5 dc, sc in first loop. Do the same in all the loops."],
  ["42/0/0", ...loops, "sc, 5 dc, sc in first loop. Do the same in the other loops."],
  [
    "36/0/0",
    ...loops,
    "(sc, 5 dc, sc) in first loop, (sc, 3 dc, sc) in next loop, and so on around.",
  ],
  ["54/0/0", ...loops, "*sl st into next loop, sc, 5 dc, sc, sl st* Join."],
  [
    "18/0/0",
    twelve,
    "Into first stitch: 2 dc. Into next stitch: 1 dc. Repeat these two all the way round.",
  ],
  ["18/0/0", twelve, "inc in every other st; join."],
  ["12/0/0", twelve, "sc in all 12."],
  ["24/0/0", twelve, "as round 1 but 2 sc in every stitch."],
  ["24/0/0", twelve, "Ch 3, dc in same st, 2 dc in each of the other eleven stitches. Join."],
  ["20/8/4", square, "sc across each side, working (sc, ch 2, sc) in each corner space."],
  ["24/0/0", square, "sc evenly around, 3 sc in each corner."],
]

describe("a list that goes on", () => {
  it.each(cases)("comes to %s", (counts, ...rounds) => {
    const pattern = read(...rounds)
    expect(last(pattern)).toBe(counts)
  })
})

describe("a repeat around a ring", () => {
  const ring = "Ch 5, join with sl st to form ring.\nRound 1: "
  it("is worked as often as the stated total wants", () => {
    const text = `${ring}Ch 4 (counts as dc and ch 1), *dc in ring, ch 1; rep from * around, join. (11 dc)`
    const { rounds, problems } = readPattern(text)
    expect(rounds[0]?.counted).toMatchObject({ stitches: 11, spaces: 11 })
    expect(rounds[0]?.agrees).toBe(true)
    expect(problems.filter(({ severity }) => severity !== "note")).toEqual([])
  })

  it("is not taken for worked once where no total ends it", () => {
    const { rounds } = readPattern(`${ring}Ch 3, 2 dc in ring, ch 2, (3 dc, ch 2) to end; join.`)
    expect(rounds[0]?.counted).toBeNull()
  })

  it("whose first group is the start is worked for the others", () => {
    const text = `${ring}Ch 3, 2 dc in ring, ch 2, 3 dc in ring, ch 2; repeat 3 more times. Join.`
    expect(readPattern(text).rounds[0]?.counted?.stitches).toBe(15)
  })
})

describe("a total", () => {
  it("told by colours is their sum", () => {
    const text =
      "Round 1: 12 sc in magic ring.\nRound 2: sc in each st around. (6 white sc, 6 red sc)"
    expect(doubts(readPattern(text))).toEqual([])
    expect(readPattern(text).rounds[1]).toMatchObject({ stated: 12, agrees: true })
  })

  it("stands behind an equals sign in a bracket", () => {
    const text = "Round 1: 12 sc in magic ring. (= 12sc)\nRound 2: 1 sc in each st (= 12 sc)."
    expect(readPattern(text).rounds.map(({ agrees }) => agrees)).toEqual([true, true])
  })

  it("may say what it counts, with a figure", () => {
    const text =
      "Round 1: Ch 3, 11 dc in magic ring, join to top of ch 3. (12 dc total, counting ch 3 at start)"
    expect(readPattern(text).rounds[0]).toMatchObject({ stated: 12, agrees: true })
  })
})

describe("rounds without labels, or with steps below them", () => {
  it("are found in their shortest form, behind dashes", () => {
    const text =
      "A slice\n\nYou need:\n- yarn\n- a 4 mm hook\n\n- sc6 in a ring (6)\n- inc6 (12)\n- (sc1, inc)6 (18)\n- sc18 (18)"
    expect(readPattern(text).rounds.map(({ counted }) => counted?.stitches)).toEqual([
      6, 12, 18, 18,
    ])
  })

  it("take the steps numbered below a label for one round", () => {
    const text =
      "ROUND ONE:\n1. CH (chain) 6\n2. SL ST (slip stitch) to first ch to form a ring.\n3. CH 3.\n4. Make 11 DC (double crochet) in ring.\n5. SL ST to top of ch 3.\n\nROUND TWO:\n1. CH 3, DC in same st\n2. 2 DC in each DC around."
    expect(readPattern(text).rounds.map(({ counted }) => counted?.stitches)).toEqual([12, 24])
  })

  it.each(["Rnd-", "#", "For round "])("are labelled %s1", (label) => {
    const end = label === "For round " ? ", " : " "
    const text = [
      "Work 6 sc in a magic ring.",
      "Work 2 sc in each st around.",
      "Work *sc in next st, 2 sc in next st; rep from * around.",
    ]
      .map((words, i) => `${label}${i + 1}${end}${words}`)
      .join("\n")
    expect(readPattern(text).rounds.map(({ counted }) => counted?.stitches)).toEqual([6, 12, 18])
  })

  it("are not the numbered materials before them", () => {
    const text =
      "SUPPLIES\n1. cotton yarn\n2. 4 mm hook\n3. scissors\n\nDIRECTIONS\n1. 8 sc into a magic circle, join.\n2. 2 sc into each stitch, join.\n3. *sc in next st, 2 sc in next st* repeat around, join."
    expect(readPattern(text).rounds.map(({ counted }) => counted?.stitches)).toEqual([8, 16, 24])
  })
})
