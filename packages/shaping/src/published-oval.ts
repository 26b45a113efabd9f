// The published plan of an oval: the keys of a circle's plan, and its length and width.

import type { Verdict } from "@roundwright/flatness"
import { kindName } from "@roundwright/stitches"
import { flatIncrease } from "./flat-count.ts"
import { type OvalOptions, planOval } from "./plan-oval.ts"
import { lastCountWords } from "./plan-words.ts"
import { publishedDigits, rounded } from "./published-digits.ts"

export interface PublishedOval {
  readonly counts: readonly number[]
  readonly text: string
  readonly verdict: Verdict
  readonly flatCounts: readonly number[]
  readonly added: readonly number[]
  readonly chains: number
  readonly words: readonly string[]
  /** Null where the gauge knows no mm. */
  readonly lengthMm: number | null
  readonly widthMm: number | null
}

/** Rounds before this one have repeats too short to be halved. */
const staggeredFrom = 4

/** @throws RoundwrightError as planOval */
export function ovalPlan(options: OvalOptions): PublishedOval {
  const { stitch, gauge, terms = "US" } = options
  const { counts, flatCounts, chains, repeats, text, verdict, lengthMm, widthMm } =
    planOval(options)
  const name = kindName(stitch, terms)
  const rate = flatIncrease(stitch, gauge)
  return {
    counts,
    text,
    verdict,
    flatCounts: flatCounts.map((count) => rounded(count, publishedDigits.count)),
    added: counts.map((count, i) => count - (counts[i - 1] ?? 0)),
    chains,
    words: [
      `Worked round a chain of ${chains}: the ${chains - 2} ${name} of either long side stand over one another, only the two ends grow.`,
      `Exactly flat would be ${rate.toFixed(2)} ${name} more in each round, half of them at either end; each end is kept to ${repeats > 1 ? `its ${repeats} repeats` : "the nearest whole stitch"}, so that the difference never adds up.`,
      ...(repeats > 1 && counts.length > staggeredFrom
        ? [
            "From round 5 on every odd round has the increases half a repeat further on, so that none stands over the one below.",
          ]
        : []),
      lastCountWords(counts.at(-1)!, flatCounts.at(-1)!),
      "A check counts the stitches of an oval but does not work out its shape: the verdict is this plan's own.",
    ],
    lengthMm: gauge.absolute ? rounded(lengthMm, publishedDigits.mm) : null,
    widthMm: gauge.absolute ? rounded(widthMm, publishedDigits.mm) : null,
  }
}
