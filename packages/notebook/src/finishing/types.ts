// What a finishing cell is asked, and what it gives.

export const finishingKinds = [
  "match",
  "compare",
  "hand",
  "reckon",
  "yarn",
  "border",
  "blanket",
] as const
export type FinishingKind = (typeof finishingKinds)[number]

export interface Asked {
  readonly pattern: string
  readonly text: string
}

export interface FinishingTable {
  readonly label: string
  readonly head: readonly string[]
  /** The last column is words, the others figures. */
  readonly rows: readonly (readonly string[])[]
}

export interface FinishingAnswer {
  readonly lead: string
  readonly items: readonly { readonly text: string; readonly rounds: readonly string[] }[]
  readonly table: FinishingTable | null
  readonly notes: readonly string[]
  /** SVG, made here and not by the reader. */
  readonly drawing: string | null
}

export type FinishingResult = FinishingAnswer | { readonly fault: string; readonly hint: string }

/** The lines each kind may hold, and how they are written. */
export const finishingLines: Readonly<
  Record<
    Exclude<FinishingKind, "compare" | "hand" | "reckon">,
    { readonly names: readonly string[]; readonly example: string }
  >
> = {
  match: {
    names: ["to", "now", "whole", "changed", "fabric", "tried", "meant hook"],
    example: "To: 15.2 cm, To: side 6 in, Now: 14 cm, Changed: yarn or Whole: 120 x 150 cm",
  },
  yarn: {
    names: [
      "pieces",
      "layout",
      "weighed",
      "step",
      "skein",
      "colours",
      "join",
      "border",
      "left",
      "reserve",
    ],
    example: "Pieces: 32, Weighed: 4 pieces = 38 g, Skein: 50 g = 120 m, Join: sc or Left: 23 g",
  },
  border: {
    names: ["side", "pieces", "layout", "per join", "rounds", "repeat"],
    example: "Layout: 4x8, Rounds: sc, dc or Repeat: 6 + 1",
  },
  blanket: {
    names: [
      "size",
      "layout",
      "have",
      "pair",
      "larger",
      "border",
      "straight edges",
      "colours",
      "seed",
    ],
    example: "Size: 130 x 170 cm, Have: 12, Pair: 30.4 cm or Colours: rose 120 g, cream 300 g",
  },
}
