// The counts of one piece by themselves: whether they grow evenly, and which round breaks it.

import { RoundwrightError } from "@roundwright/numerics"

export interface OneList {
  /** The round that does not fit; null where all do. */
  readonly round: number | null
  readonly meant: number | null
  readonly text: string
}

/** @param counts stitches of rounds 1, 2, 3 ... @throws RoundwrightError `nothing-to-compare` for fewer than three */
export function growthOfList(counts: readonly number[]): OneList {
  if (counts.length < 3 || counts.some((one) => !(one > 0)))
    throw new RoundwrightError(
      "nothing-to-compare",
      "Of one piece at least three counts are wanted.",
      {
        hint: "Or name two pieces: compare '12, 24, 35' '12, 24, 36'.",
      },
    )
  const steps = counts.slice(1).map((one, k) => one - counts[k]!)
  const step = commonest(steps)
  const odd = steps.flatMap((one, k) => (one === step ? [] : [k + 2]))
  if (odd.length === 0)
    return {
      round: null,
      meant: null,
      text: `${step === 0 ? "They stay the same" : `They ${step > 0 ? "grow" : "shrink"} by ${Math.abs(step)} each round`}: none breaks it.${goingOn(counts, step)}`,
    }
  const first = odd[0]!
  // A slip is made up in the next step where only one round is off.
  const meant = counts[first - 2]! + step
  const off = counts[first - 1]! - meant
  const carried =
    odd.length === 1
      ? first === counts.length
        ? ""
        : " Every later round carries it on."
      : odd[1] === first + 1 && counts[first]! === meant + step
        ? " The next round has made it up."
        : ""
  const half = odd.length > steps.length / 2
  return {
    round: first,
    meant,
    text: half
      ? `They do not grow evenly (by ${steps.join(", ")}): no one round breaks it.`
      : `They grow by ${step} each round but for round ${odd.join(", ")}: round ${first} has ${counts[first - 1]} where ${meant} would follow, ${Math.abs(off)} ${off > 0 ? "too many" : "too few"}.${carried} A count is no matter of the hook.`,
  }
}

/** What follows, and a rule for any round. */
function goingOn(counts: readonly number[], step: number): string {
  if (step === 0) return ""
  const many = counts.length
  const start = counts[0]! - step
  const later = Array.from({ length: 8 }, (_, k) => start + step * (many + k + 1)).filter(
    (one) => one > 0,
  )
  const rest = start === 0 ? "" : start > 0 ? ` and ${start}` : ` less ${-start}`
  return ` Going on so, round ${many + 1} and those after it have ${later.join(", ")}; round n has ${step} times n${rest}. In all ${counts.reduce((a, b) => a + b, 0)} so far.`
}

function commonest(values: readonly number[]): number {
  const many = (one: number) => values.filter((other) => other === one).length
  return values.reduce((best, one) => (many(one) > many(best) ? one : best), values[0]!)
}
