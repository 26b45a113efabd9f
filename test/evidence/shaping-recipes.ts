// Published ways of turning a circle into a square (rules-of-thumb, kind circle-to-square), worked as their source
// gives them, and our own proposal for the same circle, rounds and stitches. The wording of the rounds is ours; counts
// and stitches are the sources'. Nothing is fitted on these.

import { readPattern, writeRounds } from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"
import {
  discEndingAt,
  measureProposal,
  type ProposalShape,
  squareCircle,
} from "@roundwright/shaping"
import { gaugeFrom, type StitchKind } from "@roundwright/stitches"

interface Recipe {
  readonly id: string
  readonly source: string
  readonly stitch: StitchKind["basic"]
  readonly count: number
  /** Rounds worked on before the recipe's own, if it says so. */
  readonly before?: string
  readonly rounds: readonly string[]
  readonly note?: string
}

export const recipes: readonly Recipe[] = [
  {
    id: "36, sc to tr, ch 1 corner",
    source: "Turning a circle into a square, indigomidge.blogspot.com (2012)",
    stitch: "dc",
    count: 36,
    rounds: [
      "*sc in next 2 sts, hdc in next st, dc in next st, (2 tr, ch 1, 2 tr) in next st, dc in next st, hdc in next st, sc in next 2 sts; rep from * 3 more times; join.",
    ],
  },
  {
    id: "36, dc corner over two stitches",
    source: "Turn a Circle Into a Square, patternprincess.com",
    stitch: "dc",
    count: 36,
    rounds: [
      "*3 dc in next st, ch 1, 3 dc in next st, hdc in next 2 sts, sc in next 3 sts, hdc in next 2 sts; rep from * 3 more times; join.",
    ],
  },
  {
    id: "36, no holes",
    source: "Super Solid Circle-to-Square Granny, thesparklytoad.wordpress.com",
    stitch: "dc",
    count: 36,
    rounds: [
      "*hdc in next 4 sts, dc in next st, 2 dc in next st, (dc, tr, dc) in next st, 2 dc in next st, dc in next st; rep from * 3 more times; join.",
    ],
  },
  {
    id: "24, after a round of sc",
    source: "How to Square Off a Circular Crochet Motif, brownsheep.com",
    stitch: "dc",
    count: 24,
    before: "sc in each st around; join.",
    rounds: [
      "*2 dc in next st, dc in next st, hdc in next 2 sts, dc in next st, 2 dc in next st; rep from * 3 more times; join.",
    ],
  },
  {
    id: "24, granny style",
    source: "Squircle, hooksandyarns.blogspot.com (2010)",
    stitch: "dc",
    count: 24,
    rounds: [
      "*(3 dc, ch 2, 3 dc) in next st, ch 1, skip next 2 sts, 3 dc in next st, ch 1, skip next 2 sts; rep from * 3 more times; join.",
    ],
  },
  {
    id: "24 sc, 3 in every 6th",
    source: "Circles to squares, bluemonkeycrochet.blogspot.com (2014)",
    stitch: "sc",
    count: 24,
    rounds: ["*sc in next 5 sts, 3 sc in next st; rep from * 3 more times; join."],
    note: "The source first adds one stitch to 24 and says exact counts do not matter; worked on 24.",
  },
  {
    id: "30, spans that add to 32",
    source: "Crochet a circle into a square, crochicanbf.com (2021)",
    stitch: "dc",
    count: 30,
    rounds: [
      "*(2 dc, ch 2, 2 dc) in next st, hdc in next 2 sts, sc in next 3 sts, hdc in next 2 sts, (2 dc, ch 2, 2 dc) in next st, hdc in next 2 sts, sc in next 2 sts, hdc in next 2 sts; rep from * 1 more time; join.",
    ],
    note: "The source's spans need 32 stitches; two sides are worked a stitch short here.",
  },
  {
    id: "60, no grading, two rounds",
    source: "Spiral Square, creativecrochetworkshop.com (2016)",
    stitch: "dc",
    count: 60,
    rounds: [
      "*(3 dc, ch 2, 3 dc) in next st, dc in next 14 sts; rep from * 3 more times; join.",
      "*dc in next 3 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 17 sts; rep from * 3 more times; join.",
    ],
  },
  {
    id: "84 hdc, shells with skips",
    source: "Ruffle Flower 8 inch Granny Square, knotyournanascrochet.blogspot.com (2013)",
    stitch: "hdc",
    count: 84,
    rounds: [
      "*(3 tr, ch 2, 3 tr) in next st, skip next 2 sts, 3 dc in next st, skip next 2 sts, 3 dc in next st, skip next 2 sts, 3 hdc in next st, skip next 2 sts, 3 hdc in next st, skip next 2 sts, 3 dc in next st, skip next 2 sts, 3 dc in next st, skip next 2 sts; rep from * 3 more times; join.",
    ],
  },
]

export interface RecipeRow {
  readonly id: string
  readonly source: string
  readonly theirs: RecipeFigures
  readonly ours: RecipeFigures
  /** Ours is no more bowed, no more uneven and needs no more stretch to lie flat; and by the three together. */
  readonly straighter: boolean
  readonly flatter: boolean
  readonly note: string
}

export interface RecipeFigures {
  /** Share of the side. */
  readonly bow: number
  readonly uneven: number
  readonly blockingStretch: number
  readonly verdict: string
}

/** Differences below this share are no difference: a tenth of the straightness asked for. */
const alike = 0.002

export function scoreRecipes(): RecipeRow[] {
  const gauge = gaugeFrom({ swatches: [] })
  return recipes.map((recipe) => {
    const base = baseOf(recipe)
    const from = base.rounds.length
    const whole = workedOn(base, recipe.rounds)
    const theirs = figuresOf(measureProposal(whole, gauge, 4, from))
    // The straightest and flattest of our proposals is compared, not the easiest.
    // In either style of corner: chains are usual, and stitches closed over the corner are asked for.
    const all = ([undefined, "stitches"] as const).flatMap((cornerStyle) =>
      squareCircle(base, gauge, {
        corners: 4,
        rounds: recipe.rounds.length,
        proposals: 12,
        ...(cornerStyle ? { cornerStyle } : {}),
      }),
    )
    const figures = all.map((proposal) => figuresOf(proposal.shape))
    const ours =
      figures.find((own) => straight(own) <= straight(theirs) + alike && flatter(own, theirs)) ??
      figures[0]!
    return {
      id: recipe.id,
      source: recipe.source,
      theirs,
      ours,
      straighter: straight(ours) <= straight(theirs) + alike,
      flatter: flatter(ours, theirs),
      note: recipe.note ?? "",
    }
  })
}

/** Bow and unevenness together: a side that is straight in its middle and ragged elsewhere is not straight. */
function straight({ bow, uneven }: RecipeFigures): number {
  return Math.max(Math.abs(bow), uneven)
}

/** Within the give of the yarn both are flat. */
const give = 0.07

function flatter(ours: RecipeFigures, theirs: RecipeFigures): boolean {
  return ours.blockingStretch <= Math.max(give, theirs.blockingStretch)
}

function figuresOf(shape: ProposalShape): RecipeFigures {
  return {
    bow: shape.bowMm / shape.sideMm,
    uneven: shape.unevenMm / shape.sideMm,
    blockingStretch: shape.judged.blockingStretch,
    verdict: shape.judged.verdict,
  }
}

function baseOf({ stitch, count, before }: Recipe): Motif {
  const disc = discEndingAt({ basic: stitch }, count, gaugeFrom({ swatches: [] }))
  return before ? workedOn(disc, [before]) : disc
}

function workedOn(base: Motif, rounds: readonly string[]): Motif {
  const first = base.rounds.length + 1
  const lines = [
    "Terms: US",
    "",
    ...writeRounds(base),
    ...rounds.map((text, i) => `Rnd ${first + i}: ${text}`),
  ]
  const { motif, problems } = readPattern(`${lines.join("\n")}\n`)
  if (motif.rounds.length !== base.rounds.length + rounds.length)
    throw new Error(`A recipe could not be read: ${problems.map((one) => one.message).join(" ")}`)
  return motif
}
