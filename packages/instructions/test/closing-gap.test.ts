// How a round ends that is repeated "around": its last repeat comes out as the others, shares its last
// stitches with the first ones, or leaves something, and then that is told.

import { describe, expect, it } from "vitest"
import { comesTo, doubts, last, only, read } from "./help.ts"
import { randomFrom } from "./mutate.ts"

describe("a last repeat that ends on the first stitches of the round", () => {
  it("leaves out the one of several that is the first already", () => {
    // 32 = 4 x 8, and the first sc is the last of the fourth repeat: 4 x (2 + 6) in all.
    const reading = read(
      "16 sc in magic ring.",
      "2 sc in each st around.",
      "join in any st; sc in same st, *2 sc in next st, skip next st, sc in next 6 sts; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("32/0/0")
    expect(only(reading, "last-stitch-is-first").message).toContain("first one of the round")
  })

  it("leaves out as many as stand before the repeat", () => {
    // 2 before, and of the last 5 the last 2 are these: 3 x (1 + 5) with 24 = 3 x 8.
    const reading = read(
      "24 sc in magic ring; join.",
      "ch 1, sc in first 2 sts, *sk next 2 sts, dc in next st, sc in next 5 sts; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("18/0/0")
    expect(only(reading, "last-stitch-is-first").message).toContain("the last 2 are the first ones")
  })

  it("holds where tall stitches reach for a corner far below", () => {
    // Each side of 16: dc2tog, 1, 3 in the corner, 1, dc2tog, 11, of which two stitches below lie behind
    // the dc2tog; the first sc is the last of the 11 of the last side: 4 x 18 stitches.
    const square = [
      "8 sc in magic ring.",
      "*3 sc in next sc, sc in next sc; rep from * 3 more times.",
      ...Array.from({ length: 6 }, () => "sc in each sc around, 3 sc in center sc of each corner."),
    ]
    const reading = read(
      ...square,
      "join yarn in 3rd sc before any corner st; sc in same st, *dc2tog in center st 4 rnds below, sk next sc, sc in next sc, 3 sc in corner sc, sc in next sc, dc2tog in same center st 4 rnds below, sk next sc, sc in next 11 sc; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("72/0/0")
  })

  it("is not assumed when more are missing than stand before the repeat", () => {
    const reading = read(
      "30 sc in magic ring; join.",
      "ch 1, sc in first st, *2 sc in next st, sc in next 7 sts; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual(["warning repeat-does-not-divide"])
    expect(only(reading, "repeat-does-not-divide").message).toContain("5 left over")
  })

  it("is not assumed when the repeat ends in a space and the first stitch stands on a stitch", () => {
    const reading = read(
      "ch 5 (counts as dc, ch 2), *dc in ring, ch 2; rep from * 9 more times; join to 3rd ch of ch-5.",
      "ch 1, sc in first dc, *3 dc in next ch-2 sp, sc in next ch-2 sp; rep from * around; join.",
    )
    // 11 spaces: five times two of them, and one left.
    expect(doubts(reading)).toHaveLength(1)
    expect(last(reading)).toBe("21/0/0")
  })
})

describe("a repeat that does not fill the round before", () => {
  it("is told though the rest is as long as what the repeat skips inside", () => {
    const reading = read(
      "26 sc in magic ring; join.",
      "*sc in next 2 sts, ch 2, sk next 2 sts, sc in next 2 sts; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual(["warning repeat-does-not-divide"])
  })

  it("is told where single stitches of a group are picked out", () => {
    const reading = read(
      "10 sc in magic ring; join.",
      "3 dc in each st around.",
      "*sc in center dc of next 3-dc group, ch 2, sc in center dc of next 3-dc group, ch 4, sc in center dc of next 3-dc group, ch 2; rep from * around; join.",
    )
    expect(doubts(reading)).toEqual(["warning repeat-does-not-divide"])
    const { message } = only(reading, "repeat-does-not-divide")
    expect(message).toContain("2 stitches are passed over")
    expect(message).toContain("5 stitches are passed over")
  })

  it("is told where a space is left that the repeat otherwise works into", () => {
    const reading = read(
      "ch 5 (counts as dc, ch 2), *dc in ring, ch 2; rep from * 7 more times; join to 3rd ch of ch-5.",
      "ch 1, sc in first dc, *sc in next ch-2 sp, sk next dc, dc in next dc; rep from * around; join.",
    )
    expect(doubts(reading)).toHaveLength(1)
  })

  it("goes without saying where only the skip that leads a repeat is left", () => {
    comesTo(
      "13/12/4",
      "17 sc in magic ring; join.",
      "ch 1, sc in same st, *ch 3, sk next st, sc in next 3 sts; rep from * around; join.",
    )
  })

  it("is either read rightly or told, whatever the repeat", () => {
    const random = randomFrom(11)
    const below = (n: number) => Math.floor(random() * n)
    let uneven = 0
    for (let i = 0; i < 600; i++) {
      const { parts, before, repeats, rest, used } = anyRepeat(below)
      const ground = before + repeats * used + rest
      const reading = read(
        `${ground} sc in magic ring; join.`,
        `ch 1 (does not count), ${["", "sc in first st, ", "sc in next 2 sts, ", "sc in next 3 sts, "][before]}*${parts.map((part) => part.text).join(", ")}; rep from * around; join.`,
      )
      const told = doubts(reading).length > 0
      const made = (times: number) => before + times * sum(parts, "makes")
      const counted = reading.rounds[1]?.counted?.stitches
      const where = `${ground}: ${parts.map((part) => part.text).join(", ")} after ${before}`
      if (rest === 0) {
        if (!told) expect(counted, where).toBe(made(repeats))
        continue
      }
      uneven += 1
      if (told) continue
      // Untold: what is left is the skip a repeat begins with, or the last stitches are the first ones.
      const onFirst = before > 0 && rest === used - before && parts.at(-1)?.single === true
      expect(
        [
          before > 0 && rest === skippedFirst(parts) ? made(repeats) : null,
          onFirst ? made(repeats + 1) - before : null,
        ],
        where,
      ).toContain(counted)
    }
    expect(uneven).toBeGreaterThan(150)
  })
})

interface Part {
  readonly text: string
  readonly takes: number
  readonly makes: number
  readonly skip?: true
  readonly single?: true
}

/** A repeat of two to five parts, what stands before it, and how many stitches remain after so many times. */
function anyRepeat(below: (n: number) => number) {
  for (;;) {
    const parts = Array.from({ length: 2 + below(4) }, () => anyPart(below))
    const twice = parts.some((part, i) => i > 0 && part.makes === 0 && parts[i - 1]?.makes === 0)
    const used = sum(parts, "takes")
    if (twice || sum(parts, "makes") === 0) continue
    const rest = below(2) === 0 ? 0 : below(used)
    return { parts, before: below(4), repeats: 3 + below(4), rest, used }
  }
}

function anyPart(below: (n: number) => number): Part {
  const many = 1 + below(4)
  const next = many === 1 ? "next st" : `next ${many} sts`
  switch (below(7)) {
    case 0:
      return { text: "2 sc in next st", takes: 1, makes: 2 }
    case 1:
      return { text: `sk ${next}`, takes: many, makes: 0, skip: true }
    case 2:
      return { text: "sc2tog over next 2 sts", takes: 2, makes: 1 }
    case 3:
      return { text: `ch ${many + 1}`, takes: 0, makes: 0 }
    case 4:
      return { text: "(dc, ch 1, dc) in next st", takes: 1, makes: 2 }
    default:
      return { text: `sc in ${next}`, takes: many, makes: many, single: true }
  }
}

function sum(parts: readonly Part[], what: "takes" | "makes"): number {
  return parts.reduce((total, part) => total + part[what], 0)
}

function skippedFirst(parts: readonly Part[]): number {
  const first = parts.findIndex((part) => part.makes > 0)
  return sum(parts.slice(0, first), "takes")
}

describe("a round begun inside a loop", () => {
  const below = [
    "40 sc in magic ring; join.",
    "ch 1, sc in same st, *ch 7, sk 2 sc, dc in next sc, ch 9, sl st in 9th ch from hook, ch 7, sk next sc, sc in next sc; rep from * around; join to first sc.",
  ]

  it("stands in the loop whose chains it was slip stitched along, and its sc and chains are one stitch", () => {
    // 8 times 5 sc: 16 loops of 7 and 8 of 9. One tr, 8 times 3 tr in the loops of 9, 15 tr in the others of 7.
    const reading = read(
      ...below,
      "sl st in next 3 ch, sc in loop, ch 3 (counts as tr), *3 tr in ch-9 loop, tr in each of next 2 ch-7 loops; rep from * around, ending with tr in last ch-7 loop; join.",
    )
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("40/0/0")
    const first = reading.motif.rounds[2]?.elements[0]
    expect(first?.type === "stitch" && first.anchors[0]).toEqual({
      at: "space",
      round: 1,
      element: 1,
    })
  })
})

describe("the first chain named where a round or a ring is joined", () => {
  it.each([
    "join with sl st to top st of starting chain",
    "sl st in top st of ch-3",
    "join to top st of ch 3 at beg of rnd",
    "join to the last ch of the beginning ch-3",
  ])("is not made once more by %s", (join) => {
    comesTo("16/0/0", `ch 6, join, forming a ring; ch 3 (counts as dc), 15 dc in ring; ${join}.`)
  })
})
