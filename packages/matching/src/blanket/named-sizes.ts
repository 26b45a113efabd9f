// Named sizes of blankets and mattresses, in inches as printed, each with its source. They are no standard: sources contradict
// each other, and all that were read stand here; what contradicts is listed, not averaged.

import { RoundwrightError } from "@roundwright/numerics"

export interface NamedSize {
  readonly name: string
  readonly kind: "blanket" | "mattress"
  readonly inches: readonly [number, number]
  readonly source: string
}

const sources = ["justastitchaway.blogspot.com", "Oombawka Design", "souverhome.com"] as const

/** Name, source, width and length in inches. */
const rows: readonly (readonly [string, 0 | 1 | 2, number, number])[] = [
  ["twin", 0, 66, 90],
  ["twin extra long", 0, 66, 95],
  ["full", 0, 80, 90],
  ["queen", 0, 90, 100],
  ["king", 0, 108, 100],
  ["california king", 0, 104, 108],
  ["receiving", 0, 29, 32],
  ["receiving", 0, 30, 36],
  ["receiving", 0, 36, 36],
  ["stroller", 0, 30, 40],
  ["cradle", 0, 15, 30],
  ["cradle", 0, 18, 33],
  ["crib", 0, 28, 42],
  ["crib", 0, 30, 40],
  ["crib", 0, 36, 42],
  ["crib", 0, 36, 46],
  ["infant afghan", 0, 24, 30],
  ["afghan 2-6 years", 0, 30, 36],
  ["afghan 7-11 years", 0, 36, 42],
  ["afghan 12 years up", 0, 48, 60],
  ["lapghan", 0, 36, 48],
  ["adult afghan", 0, 50, 70],
  ["micro preemie", 1, 11, 11],
  ["micro preemie", 1, 12, 12],
  ["preemie", 1, 20, 20],
  ["preemie", 1, 28, 28],
  ["receiving", 1, 36, 36],
  ["receiving", 1, 38, 38],
  ["receiving", 1, 40, 40],
  ["baby", 1, 25, 32],
  ["baby", 1, 32, 36],
  ["baby", 1, 32, 40],
  ["stroller", 1, 30, 36],
  ["bassinet", 1, 14, 32],
  ["crib", 1, 36, 54],
  ["crib", 1, 40, 60],
  ["crib", 1, 45, 60],
  ["playpen", 1, 40, 40],
  ["swaddle", 1, 44, 44],
  ["swaddle", 1, 48, 48],
  ["security", 1, 16, 16],
  ["security", 1, 18, 18],
  ["lovey", 1, 10, 10],
  ["lovey", 1, 12, 12],
  ["lovey", 1, 14, 14],
  ["toddler throw", 1, 42, 48],
  ["toddler throw", 1, 42, 52],
  ["lovey", 2, 12, 12],
  ["baby", 2, 14, 16],
  ["cradle", 2, 14, 30],
  ["preemie", 2, 18, 24],
  ["stroller", 2, 22, 30],
  ["lapghan", 2, 36, 48],
  ["receiving", 2, 40, 40],
  ["crib", 2, 45, 60],
  ["throw", 2, 50, 60],
]

const mattresses: readonly (readonly [string, 0 | 1 | 2, number, number])[] = [
  ["twin", 0, 39, 75],
  ["full", 0, 54, 75],
  ["queen", 0, 60, 80],
  ["king", 0, 76, 80],
  ["california king", 0, 72, 84],
]

export const namedSizes: readonly NamedSize[] = [
  ...rows.map((row) => named(row, "blanket")),
  ...mattresses.map((row) => named(row, "mattress")),
]

function named(
  [name, source, width, length]: readonly [string, 0 | 1 | 2, number, number],
  kind: NamedSize["kind"],
): NamedSize {
  return { name, kind, inches: [width, length], source: sources[source]! }
}

/** All that are called so, a blanket's before a mattress's; "mattress" or "bed" asks for the latter. @throws RoundwrightError `unknown-size` */
export function sizesNamed(text: string): NamedSize[] {
  const wanted = text.trim().toLowerCase().replace(/\s+/g, " ")
  const bed = /\b(?:bed|mattress)\b/.test(wanted)
  const plain = wanted.replace(/\b(?:bed|mattress|blanket|afghan size|size)\b/g, "").trim()
  const found = namedSizes.filter(
    ({ name, kind }) => name === plain && (kind === "mattress") === bed,
  )
  if (found.length > 0) return found
  const names = [...new Set(namedSizes.map(({ name }) => name))]
  throw new RoundwrightError("unknown-size", `"${text.slice(0, 40)}" is no size known here.`, {
    hint: `Give it in cm or in, such as '130 x 170 cm', or one of ${names.join(", ")}.`,
  })
}

/** Names under which sources print different sizes, with all of them. */
export function contradictions(): {
  readonly name: string
  readonly sizes: readonly NamedSize[]
}[] {
  const names = [...new Set(namedSizes.map(({ name, kind }) => `${kind}:${name}`))]
  return names.flatMap((key) => {
    const sizes = namedSizes.filter(({ name, kind }) => `${kind}:${name}` === key)
    const different = new Set(sizes.map(({ inches }) => inches.join("x"))).size > 1
    return different ? [{ name: sizes[0]!.name, sizes }] : []
  })
}
