// Blocking and care by fibre, and the usual cautions. Sources: "Blocking (textile arts)", Wikipedia; "Blocking crochet",
// redheart.com; "Yarn for crochet granny squares", Interweave; for acrylic opinions differ on steam and agree that a hot
// iron on the fabric spoils it.

import type { Check } from "@roundwright/assessment"
import type { Motif } from "@roundwright/motif"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"

type Fibre = "wool" | "plant" | "acrylic"

const fibres: readonly (readonly [Fibre, RegExp])[] = [
  ["acrylic", /\b(?:acrylic|polyester|polyamide|nylon|microfibre|microfiber|synthetic)\b/i],
  ["plant", /\b(?:cotton|linen|flax|hemp|bamboo|ramie|viscose|rayon)\b/i],
  ["wool", /\b(?:wool|merino|alpaca|mohair|cashmere|lambswool)\b/i],
]

const method: Readonly<Record<Fibre, string>> = {
  wool: "Wool: soak in cool water, press the water out, pin to size, let dry. Heat and rubbing felt it unless the label says superwash.",
  plant:
    "Cotton and linen: pin to size, dampen, let dry flat. Do not hang it wet: it stretches under its own weight.",
  acrylic: "Acrylic: little blocking is needed; dampen, pin to size, let dry flat.",
}

/** Fibres that the designer's words name; none where she names none. */
export function fibresOf(manuscript: Manuscript): Fibre[] {
  const words = ["yarn", "materials", "notes"] as const
  const text = words.map((name) => sectionOf(manuscript, name)?.value ?? "").join("\n")
  return fibres.filter(([, pattern]) => pattern.test(text)).map(([fibre]) => fibre)
}

export function careFor(manuscript: Manuscript, { result }: Check): string[] {
  const found = fibresOf(manuscript)
  const flat = result.laidOut?.verdict === "flat"
  const first = flat
    ? "Lies flat as worked; blocking evens the stitches."
    : "Pin the piece out to its size and let it dry there."
  return [
    first,
    ...found.map((fibre) => method[fibre]),
    "The yarn's label goes first; try on the swatch.",
  ]
}

/** Chains from which on a loop lets a small finger through. */
const openLoop = 4

export function cautionsFor(manuscript: Manuscript, motif: Motif): string[] {
  const open = motif.rounds.some(({ elements }) =>
    elements.some((element) => element.type === "chain" && element.chains >= openLoop),
  )
  const found = fibresOf(manuscript)
  const heat = found.length === 0 || found.includes("acrylic")
  return [
    open
      ? "Open lace can catch small fingers: keep it from infants, and keep cords and loose ends away from them."
      : "Keep cords and loose ends away from infants.",
    heat ? "Heat and steam flatten acrylic for good: no iron on it." : "",
    "Follow your local product-safety rules for anything you sell or give.",
  ].filter((caution) => caution !== "")
}
