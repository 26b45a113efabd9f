// Labels and beginnings of rounds as makers write them, on small motifs of our own: which rounds are found, and that
// they come to what the words say.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { doubts } from "./help.ts"

/** "1=6 2=12": rounds found with their stitches. */
function found(text: string): string {
  return readPattern(`Terms: US\n${text}`)
    .rounds.map(({ number, counted }) => `${number}=${counted?.stitches ?? "none"}`)
    .join(" ")
}

const ring = "Make a magic ring."
const disc = [
  "6 sc in ring.",
  "2 sc in each st around.",
  "*Sc in next st, 2 sc in next st; rep from * around.",
]

describe("labels", () => {
  it.each([
    ["a colon between word and number", (n: number) => `R : ${n} - `],
    ["an abbreviation in a bracket", (n: number) => `Round (Rnd) ${n}: `],
    ["the number first", (n: number) => `${n} round: `],
    ["the number first, with a full stop", (n: number) => `${n}. row - `],
    ["an ordinal and no word", (n: number) => `${n}${["st", "nd", "rd"][n - 1]}: `],
    ["another word for a round", (n: number) => `${n} Circle: `],
    ["tiers", (n: number) => `Tier ${n}: `],
  ])("with %s", (_, label) => {
    const text = [ring, ...disc.map((words, i) => label(i + 1) + words)].join("\n")
    expect(found(text)).toBe("1=6 2=12 3=18")
  })

  it("name several rounds that do not follow on one another", () => {
    const text = `${ring}
Rnd 1: 6 sc in ring.
Rnd 2: 2 sc in each st around.
Rnds 3, 5 and 7: Sc in each st around.
Rnds 4, 6: Sc in back loop of each st around.`
    expect(found(text)).toBe("1=6 2=12 3=12 4=12 5=12 6=12 7=12")
    expect(doubts(readPattern(text))).toEqual([])
  })

  it("name three rounds by ordinals in one line", () => {
    const text = `${ring}\n1st round: 6 sc in ring.\n2nd round: 2 sc in each st around.\n3rd, 4th and 5th rounds: Sc in each st around.`
    expect(found(text)).toBe("1=6 2=12 3=12 4=12 5=12")
  })

  it("number the lines of a list, several rounds in one of them", () => {
    const text = `${ring}
1. 6 sc in ring.
2. 2 sc in each st around.
3-4. Sc in each st around.
5 - 6) Sc in back loop of each st around.`
    expect(found(text)).toBe("1=6 2=12 3=12 4=12 5=12 6=12")
  })

  it("may be glued to the first word of their round, and to what stands before", () => {
    const text = `${ring}
1st roundWork 6 sc in ring.Picture 2Round 2: 2 sc in each st around.
3rd roundWorking in back loops, sc in each st around.`
    expect(found(text)).toBe("1=6 2=12 3=12")
  })

  it("are given to a border before another piece begins", () => {
    const text = `${ring}
Row 1: 6 sc in ring.
Row 2: 2 sc in each st around.
Border: *Ch 3, sl st in next st; rep from * around.
Leaf
Row 1: 8 sc in ring.`
    expect(
      readPattern(`Terms: US\n${text}`)
        .rounds.map(({ number }) => number)
        .slice(0, 3),
    ).toEqual([1, 2, 3])
  })

  it("do not take a measure over some rounds for one", () => {
    const text = `Rd 1-3 = 2"\n${ring}\nRd 1: 6 sc in ring.\nRd 2: 2 sc in each st around.`
    expect(found(text)).toBe("1=6 2=12")
  })

  it("may have a name behind them on their line", () => {
    const text = `${ring}\nRound 1: The Heart\n6 sc in ring.\nRound 2: A Little Wider\n2 sc in each st around.`
    expect(found(text)).toBe("1=6 2=12")
    expect(doubts(readPattern(text))).toEqual([])
  })
})

describe("labels without a mark", () => {
  it("inside a text are labels where they count on from one another and work stands behind them", () => {
    const text =
      "Ch 4, sl st to form a ring row 1 ch 1, 6 sc in ring, join row 2 ch 1, 2 sc in each st around, join row 3 ch 1, sc in each st around, join"
    expect(found(text)).toBe("1=6 2=12 3=12")
  })

  it("are none where a round is only spoken of", () => {
    const text = "Ch 4, join.\nWork as in row 1 ch 1, then as in row 2 ch 1, then see row 3 ch 1."
    expect(found(text)).toBe("")
  })
})

describe("rounds told without a number", () => {
  const start = `${ring}\nRnd 1: 6 sc in ring.\nRnd 2: 2 sc in each st around.`

  it.each([
    ["Next round: Sc in each st around.", "3=12"],
    ["Last rnd - 2 sc in each st around.", "3=24"],
    ["Next 3 rounds: Sc in each st around.", "3=12 4=12 5=12"],
    ["Edging: Sl st in first st, ch 1, sc in each st around.", "3=12"],
    ["Rnd 3: Sc in each st around. Repeat last round twice more.", "3=12 4=12 5=12"],
    ["Rnd 3: Sc in each st around.\nRepeat Rnd 3 for Rnds 4 and 5.", "3=12 4=12 5=12"],
    ["Rnd 3: Sc in each st around.\nRep this rnd once.", "3=12 4=12"],
    [
      "Rnd 3: *Sc in next st, 2 sc in next st; rep from * around.\nContinue in this way until you have six rounds.",
      "3=18 4=24 5=30 6=36",
    ],
    [
      "Rnd 3: *Sc in next st, 2 sc in next st; rep from * around.\nContinue as established for 2 more rnds.",
      "3=18 4=24 5=30",
    ],
    [
      "3rd rnd: Sc in each st around.\n4th rnd: Sc in each st around.\n5th, 6th and 7th rnds are the same as the 2nd, 3rd and 4th rnds.",
      "3=12 4=12 5=24 6=24 7=24",
    ],
  ])("%s", (words, rounds) => {
    expect(found(`${start}\n${words}`)).toBe(`1=6 2=12 ${rounds}`)
  })

  it("are none where a later label counts without them", () => {
    const text = `${start}\nRnd 3: Sc in each st around. Repeat Rnd 3.\nRnd 4: 2 sc in each st around.`
    expect(found(text).split(" ")).toHaveLength(4)
  })

  it("are none where a border goes round the whole blanket", () => {
    const text = `${start}\nBorder: Sew the squares together, then sc around the blanket.`
    expect(found(text)).toBe("1=6 2=12")
  })
})

describe("a first round without a label", () => {
  it.each([
    [
      "stands before round 1 when that one is not worked into the ring",
      "Start with a magic circle and 12 double crochet. Close the circle with a slip stitch.\nRound 1. Ch 3, 1 dc in the same st, 2 dc in each st around, join.",
      "0=12 1=24",
    ],
    [
      "stands behind a heading",
      "Pattern: Ch 6, sl st to form a ring, ch 1, 12 sc in ring, join.\nRnd 2: Ch 1, 2 sc in each st around, join.",
      "1=12 2=24",
    ],
    [
      "is told on several lines, with talk before the next label",
      "In a magic ring make\nch 1, 12 sc\njoin with sl st to first sc\n\n(Choose any colours that you like.)\n\nRow 2: Ch 1, 2 sc in each st around, join.",
      "1=12 2=24",
    ],
  ])("%s", (_, text, rounds) => {
    expect(found(text)).toBe(rounds)
  })
})

describe("rounds without any labels", () => {
  it("are the items of a list that are worked to their end", () => {
    const text = `- Begin with a magic ring. 6 sc in ring. (6)
- 2 sc in each st. Repeat around. (12)
- Sc in next st, 2 sc in next st. Repeat around. (18)`
    expect(found(text)).toBe("1=6 2=12 3=18")
  })

  it("are paragraphs; what names a round opens one", () => {
    const text = `Make a magic ring and work 6 sc in the ring, join.

Start the second round with another colour. 2 sc in each st around, join.

Final round, ch 1, sc in each st around, join.`
    expect(found(text)).toBe("1=6 2=12 3=12")
  })
})

describe("a ring and its stitches told in one", () => {
  it.each([
    "Start with a magic circle of 12 single crochets.",
    "Start with a circle that has 12 sc in it.",
    "Make a magic ring with 12 sc.",
  ])("%s", (words) => {
    const reading = readPattern(`Terms: US\nRnd 1: ${words}\nRnd 2: 2 sc in each st around.`)
    expect(reading.rounds.map(({ counted }) => counted?.stitches)).toEqual([12, 24])
    expect(doubts(reading)).toEqual([])
  })
})

describe("joins to where the round began", () => {
  it.each(["sl st to beginning", "join with sl st to top of beg-ch", "join to beginning of round"])(
    "%s",
    (words) => {
      const reading = readPattern(
        `Terms: US\nRnd 1: 12 dc in magic ring.\nRnd 2: Ch 3, dc in same st, 2 dc in each of next 11 dc, ${words}.`,
      )
      expect(reading.rounds.at(-1)?.counted?.stitches).toBe(24)
      expect(doubts(reading)).toEqual([])
    },
  )
})

describe("what is no work", () => {
  const rounds = "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around."

  it.each([
    "You should now have a tiny disc.",
    "This is the heart of the flower.",
    "Fasten off. Attach the ear wire to the disc with pliers.",
    "Fasten off, leaving a tail long enough to knot into a loop for hanging.",
    "Bind off and then use your fingers to gently pinch and shape the edge.",
    "Tip: Work over the tail as you go.",
    "Copyright 2019 Hazel Moss. Please do not sell copies of this page.",
    "The next round introduces a new colour.",
    "Turn your work over.",
  ])("is told in a note: %s", (words) => {
    const reading = readPattern(`Terms: US\n${rounds} ${words}`)
    expect(reading.rounds.map(({ counted }) => counted?.stitches)).toEqual([6, 12])
    expect(doubts(reading)).toEqual([])
  })

  it.each(["You now have 14 sc.", "Fasten off. Join white in any st, 3 sc in same st."])(
    "does not swallow what makes or counts: %s",
    (words) => {
      const reading = readPattern(`Terms: US\n${rounds} ${words}`)
      expect(reading.rounds.at(-1)?.counted?.stitches === 12 && doubts(reading).length === 0).toBe(
        false,
      )
    },
  )

  it("is a line of talk between two lines of a round", () => {
    const text = `${rounds}\nLovely so far!\nRnd 3: Sc in each st around.`
    const reading = readPattern(text)
    expect(reading.rounds.map(({ counted }) => counted?.stitches)).toEqual([6, 12, 12])
    expect(reading.problems.some(({ code }) => code === "not-of-the-work")).toBe(true)
  })
})

describe("terms", () => {
  it.each([
    ["This page is written in UK terms. Pages in US terms use other names.", "UK"],
    ["My UK coaster pattern. The first version was in US terminology.", "UK"],
    ["The terms I use are UK.", "UK"],
    ["dc here is the same as a US single crochet.", "UK"],
  ])("%s", (line, terms) => {
    const reading = readPattern(`${line}\nRnd 1: 6 dc in magic ring.\nRnd 2: 2 dc in each st.`)
    expect(reading.terms).toBe(terms)
  })
})
