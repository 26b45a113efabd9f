// What is written reads back to the same motif, in both terms: for discs and polygons, for rounds
// read from words, and for generated rounds of every structure.

import {
  type Anchor,
  buildDisc,
  buildPolygon,
  type Element,
  type Motif,
  type Round,
} from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type BasicStitch, type StitchKind, type Terms, turningChains } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { readPattern, sameRound, writePattern } from "../src/index.ts"

const both = ["US", "UK"] as const

function expectSame(motif: Motif, inTerms: readonly Terms[] = both): void {
  for (const terms of inTerms) {
    const text = writePattern(motif, terms)
    const back = readPattern(text)
    expect(back.terms).toBe(terms)
    expect(back.motif.centre).toEqual(motif.centre)
    expect(back.motif.rounds.length).toBe(motif.rounds.length)
    motif.rounds.forEach((round, i) => {
      expect(sameRound(round, back.motif.rounds[i]!), `${text}\nround ${round.number}`).toBe(true)
    })
    expect(
      back.problems.filter((problem) => problem.severity === "error"),
      text,
    ).toEqual([])
  }
}

describe("built motifs", () => {
  it("discs of every stitch, growing, even and shrinking", () => {
    for (const basic of ["sc", "hdc", "dc", "tr"] as const)
      expectSame(buildDisc({ basic }, [6, 12, 18, 24, 24, 18]))
    expectSame(buildDisc({ basic: "dc" }, [7, 14, 23, 31], { title: "Uneven disc" }))
  })

  it("polygons of solid work", () => {
    expectSame(buildPolygon({ basic: "sc" }, 4, 5, 3, 3))
    expectSame(buildPolygon({ basic: "dc" }, 6, 4, 2, 3))
  })
})

describe("motifs read from words", () => {
  const start =
    "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join."
  it.each([
    [
      "a square of groups",
      [
        start,
        "sl st to next ch-2 sp; (ch 3 (counts as dc), 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times; join.",
      ],
    ],
    [
      "chains skipped at the foundation",
      [
        "ch 4; 11 dc in 4th ch from hook (3 skipped ch count as dc); join.",
        "ch 1, sc in each dc around; join.",
      ],
    ],
    [
      "a wheel closed by a tall stitch",
      [
        "8 sc in magic ring; join.",
        "ch 1, sc in same st, *ch 5, sc in next sc; rep from * 6 more times; ch 2, dc in first sc.",
        "ch 1, sc in loop just made, *ch 6, sc in next loop; rep from * 6 more times; ch 6; join.",
      ],
    ],
    [
      "clusters that start with a chain",
      [
        "6 sc in magic ring; join.",
        "ch 3, dc2tog in same st (counts as dc3tog), ch 3, *dc3tog in next st, ch 3; rep from * 4 more times; join.",
      ],
    ],
    [
      "posts, loops and picots",
      [
        "12 dc in magic ring; join.",
        "ch 1, *FPdc around next dc, sc in back loop of next dc, picot of ch 4; rep from * around; join.",
      ],
    ],
    [
      "an earlier round worked behind",
      [
        "6 sc in magic ring.",
        "*sc in next st, ch 4; rep from * around.",
        "(sc, 3 dc, sc) in each ch-4 sp.",
        "working behind petals, *sc in next sc of Rnd 2, ch 5; rep from * around.",
      ],
    ],
    ["shared legs", ["12 sc in magic ring.", "*dc3tog over next 3 sts, ch 4; rep from * around."]],
    ["gaps between stitches", ["12 dc in magic ring; join.", "2 dc in each sp between sts; join."]],
    [
      "a ring worked chain by chain",
      ["ch 6, join to form a ring; *sc in next ch, 2 sc in next ch; rep from * 2 more times."],
    ],
    ["a bought ring", ["20 sc in the plastic ring; join."]],
    ["a bought ring of known size", ["20 sc in the 19 mm plastic ring; join."]],
    [
      "loops closed by tall stitches",
      [
        "12 sc in magic ring; join.",
        "ch 1, *sc in next sc, ch 6, dc in 6th ch from hook, sk next sc; rep from * around; join.",
        "ch 3 (counts as dc), (dc, ch 5, tr in 5th ch from hook, dc) in same st, *5 dc in next picot, 2 dc in next sc; rep from * 4 more times; 5 dc in next picot; join.",
      ],
    ],
  ])("%s", (_, rounds) => {
    const reading = readPattern(
      `Terms: US\n${rounds.map((round, i) => `Rnd ${i + 1}: ${round}`).join("\n")}`,
    )
    expect(
      reading.motif.rounds.length,
      reading.problems.map((problem) => problem.message).join("\n"),
    ).toBe(rounds.length)
    expectSame(reading.motif)
  })
})

describe("generated motifs", () => {
  const kinds: readonly StitchKind[] = [
    { basic: "sc" },
    { basic: "hdc" },
    { basic: "dc" },
    { basic: "tr" },
    { basic: "dtr" },
    { basic: "esc" },
    { basic: "edc" },
    { basic: "sc", loops: "back" },
    { basic: "dc", loops: "front" },
    { basic: "dc", post: "front" },
    { basic: "dc", post: "back" },
  ]
  const gathered: readonly StitchKind[] = [
    { basic: "dc", gathered: { how: "cluster", legs: 3 } },
    { basic: "hdc", gathered: { how: "puff", legs: 3 } },
    { basic: "dc", gathered: { how: "popcorn", legs: 5 } },
    { basic: "tr", gathered: { how: "bobble", legs: 4 } },
  ]
  const step = fc.record({
    what: fc.nat(9),
    kind: fc.nat(kinds.length - 1),
    count: fc.integer({ min: 1, max: 4 }),
    chains: fc.integer({ min: 1, max: 9 }),
  })
  const roundPlan = fc.record({
    steps: fc.array(step, { minLength: 1, maxLength: 6 }),
    start: fc.constantFrom("none", "ch1", "counts", "space"),
    startKind: fc.constantFrom<BasicStitch>("hdc", "dc", "tr"),
    joined: fc.boolean(),
    turned: fc.boolean(),
  })
  type Plan = {
    steps: { what: number; kind: number; count: number; chains: number }[]
    start: string
    startKind: BasicStitch
    joined: boolean
    turned: boolean
  }

  /** Works a plan over the round below, place after place, until it is used up. */
  function makeRound(plan: Plan, number: number, below: Round | null): Round {
    const round = number - 2
    const turned = below !== null && plan.turned && below.closing === "joined"
    const order = below ? below.elements.map((_, i) => i) : []
    const walk = turned ? [0, ...order.slice(1).reverse()] : order
    const elements: Element[] = []
    const single = (kind: StitchKind, anchor: Anchor): Element => ({
      type: "stitch",
      kind,
      anchors: Array.from({ length: kind.gathered?.legs ?? 1 }, () => anchor),
    })
    let startChain: { chains: number; counts: boolean } | undefined
    let position = 0
    const first = below?.elements[walk[0]!]
    const canStart = below === null || (below.closing === "joined" && first?.type === "stitch")
    if ((plan.start === "counts" || plan.start === "space") && canStart) {
      const own = turningChains(plan.startKind)
      const space = plan.start === "space" ? 2 : 0
      startChain = { chains: own + space, counts: true }
      elements.push({
        type: "stitch",
        kind: { basic: plan.startKind },
        anchors: [below ? { at: "stitch", round, element: walk[0]! } : { at: "centre" }],
        madeOfChains: own,
      })
      if (space > 0) elements.push({ type: "chain", chains: space })
      position = 1
    } else if (plan.start === "ch1" && canStart) startChain = { chains: 1, counts: false }
    for (let turn = 0; turn < 40; turn++) {
      const { what, kind, count, chains } = plan.steps[turn % plan.steps.length]!
      if (below && position >= walk.length) break
      if (!below && turn >= 8) break
      const lastMade = elements[elements.length - 1]
      if (what === 0 && lastMade?.type === "stitch") {
        elements.push({ type: "chain", chains })
        continue
      }
      if (what === 1 && lastMade?.type === "stitch") {
        elements.push({ type: "picot", chains: Math.min(chains + 2, 5) })
        continue
      }
      if (what === 6 && lastMade?.type === "stitch") {
        // A point: a chain with stitches back along it.
        const foot = elements.length
        elements.push({ type: "chain", chains: chains + 2 })
        for (let chain = chains; chain >= 0; chain--)
          elements.push(
            single(kinds[kind % 7]!, { at: "chain", round: number - 1, element: foot, chain }),
          )
        if (below && turn > 30) break
        continue
      }
      if (!below) {
        for (let k = 0; k < count; k++) elements.push(single(kinds[kind]!, { at: "centre" }))
        continue
      }
      const target = below.elements[walk[position]!]!
      const element = walk[position]!
      if (what === 2 && position + 1 < walk.length) {
        position += 1
        continue
      }
      if (what === 3 && target.type === "stitch") {
        const anchors: Anchor[] = []
        let k = position
        for (; k < walk.length && anchors.length < 3; k++) {
          if (below.elements[walk[k]!]!.type !== "stitch") break
          anchors.push({ at: "stitch", round, element: walk[k]! })
        }
        if (anchors.length === 3) {
          elements.push({
            type: "stitch",
            kind: { basic: "dc", gathered: { how: "together", legs: 3 } },
            anchors,
          })
          position = k
          continue
        }
      }
      const tip =
        target.type === "chain" && isPoint(below, element, round) ? target.chains - 1 : null
      const anchor: Anchor =
        tip !== null
          ? { at: "chain", round, element, chain: tip }
          : target.type === "stitch"
            ? { at: "stitch", round, element }
            : target.type === "chain"
              ? { at: "space", round, element }
              : { at: "picot", round, element }
      const plain = kinds[kind]!.post && target.type !== "stitch" ? kinds[0]! : kinds[kind]!
      if (what === 4) elements.push(single(gathered[kind % gathered.length]!, anchor))
      else if (what === 5)
        elements.push(single(plain, anchor), { type: "chain", chains }, single(plain, anchor))
      else for (let k = 0; k < count; k++) elements.push(single(plain, anchor))
      position += 1
    }
    if (!elements.some((element) => element.type === "stitch"))
      elements.push(
        single(
          { basic: "sc" },
          below
            ? {
                at: "stitch",
                round,
                element: walk.find((e) => below.elements[e]!.type === "stitch")!,
              }
            : { at: "centre" },
        ),
      )
    return {
      number,
      elements,
      turned,
      closing: plan.joined ? "joined" : "spiral",
      ...(startChain ? { startChain } : {}),
    }
  }

  /** The chain has stitches of its own round worked back along it: only its tip is left. */
  function isPoint(below: Round, element: number, round: number): boolean {
    const after = below.elements[element + 1]
    const anchor = after?.type === "stitch" ? after.anchors[0] : undefined
    return anchor?.at === "chain" && anchor.round === round && anchor.element === element
  }

  /** Terms change names alone: one or the other by turns, and both for every tenth. */
  const termsOf = (turn: number): readonly Terms[] =>
    turn % 10 === 0 ? both : [both[turn % 2 === 0 ? 0 : 1]]

  it("300 motifs of up to five rounds, seed 7", () => {
    let turn = 0
    let written = 0
    let refused = 0
    fc.assert(
      fc.property(
        fc.array(roundPlan, { minLength: 1, maxLength: 5 }),
        fc.constantFrom("ring", "chains"),
        (plans, centre) => {
          const rounds: Round[] = []
          for (const plan of plans)
            rounds.push(
              makeRound(plan as Plan, rounds.length + 1, rounds[rounds.length - 1] ?? null),
            )
          const motif: Motif = {
            title: "Generated",
            centre:
              centre === "ring" ? { kind: "adjustable-ring" } : { kind: "chain-ring", chains: 6 },
            rounds,
          }
          try {
            expectSame(motif, termsOf(turn++))
            written += 1
          } catch (error) {
            if (!(error instanceof RoundwrightError)) throw error
            refused += 1
            if (process.env.SHOW_REFUSED) console.log(error.message, JSON.stringify(motif))
          }
        },
      ),
      { numRuns: 300, seed: 7 },
    )
    // A motif the writer has no plain words for would be refused, never written wrong; none of these is.
    expect(written).toBe(300)
    expect(refused).toBe(0)
  })
})
