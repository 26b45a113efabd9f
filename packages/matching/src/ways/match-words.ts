// What a match says: how far off, what cures the piece as it stands, what to do if it is made anew, or that it is not the hook.

import { formatPercent } from "@roundwright/assessment"
import { lengthWords } from "../lengths.ts"
import { alreadyThere } from "./already-there.ts"
import type { KnownFacts, MatchResult } from "./result.ts"

export function answerOf(
  result: Omit<MatchResult, "text">,
  size: number,
  { changed, fabric }: KnownFacts,
  standsIn: boolean,
): string {
  const { target, ways, cause, factor, perSideMm, hookAdvice } = result
  const off = `${formatPercent(Math.abs(factor - 1))} ${factor > 1 ? "more" : "less"}`
  const tell = (mm: number) => lengthWords(mm, target.unit)
  const now = `it measures ${tell(size)} now, and ${tell(target.mm)} is wished for`
  if (Math.abs(factor - 1) <= alreadyThere) {
    const leave = `Leave it: ${now}, which joining takes up.`
    if (fabric === undefined || !hookAdvice) return leave
    return `${leave} But if you must work ${fabric === "tight" ? "tightly" : "loosely"} to reach it, take the hook ${hookAdvice.text}, and work as your hand goes; counts stay.`
  }
  const missing = `${off}, a factor of ${factor.toFixed(2)} (now over wished ${(1 / factor).toFixed(2)}; in area ${(1 / factor ** 2).toFixed(2)}), ${tell(Math.abs(perSideMm))} on each side`
  const cures = ways.filter(({ kind }) => kind !== "hook" && kind !== "start")
  const [best, second] = cures
  const cure = best
    ? `As it stands: ${lower(best.text)}${second ? ` Or: ${lower(second.text)}` : ""}`
    : "No single change of its last rounds brings it there as it stands."
  if (cause === null)
    return `${capital(now)}, ${missing}. ${cure} Made anew: the hook ${hookAdvice?.text ?? "stays"}, on the same yarn.`
  return `Not the hook: ${now}, ${missing}. ${whyNot(result, changed, fabric, standsIn)} ${cure}`
}

/** What else comes near is named too: hands differ by a tenth. */
const alsoNear = 0.12

function whyNot(
  { cause, causes, factor }: Omit<MatchResult, "text">,
  changed: KnownFacts["changed"],
  fabric: KnownFacts["fabric"],
  standsIn: boolean,
): string {
  if (changed === "yarn")
    return `With the same hook and counts another yarn makes the difference: match its thickness, or finish this one by its last rounds. Another hook alone would have to be up to ${formatPercent(Math.abs(factor ** 2 - 1))} ${factor > 1 ? "thicker" : "thinner"} for it.`
  if (changed === "pattern")
    return "With the same yarn and hook other pieces have the size, so it is how this one is worked: count its stitches and rounds or rows, for one too many or too few."
  const beyond =
    fabric === undefined
      ? "That is beyond what another hook does to the same yarn."
      : `The fabric is ${fabric === "tight" ? "firm" : "loose"} already, and another hook would make it more so.`
  if (standsIn) {
    const fits = causes.filter(({ off }) => off <= alsoNear)
    const named = [...new Set(fits.map((one) => one.cause))].map(causeWords)
    return `${beyond} Check the yarn's weight, count the rounds, and look at the pattern's terms and at what was measured${named.length > 0 ? `; by size alone it may be ${named.join(", or ")}` : ""}.`
  }
  if (cause === "unknown")
    return `${beyond} None of the causes tested fits: measure it after each round and compare it with the pattern's sizes; count its stitches and rounds.`
  const [first, ...others] = causes
  const next = others.find((one) => one.cause !== first!.cause && one.off <= alsoNear)
  return `${beyond} ${first!.text}${next ? ` Or: ${lower(next.text)}` : ""}`
}

function causeWords(cause: MatchResult["causes"][number]["cause"]): string {
  const words = {
    terms: "the other country's terms",
    yarn: "another yarn",
    "a round too many": "a round too many",
    "a round too few": "a round too few",
    diagonal: "the diagonal taken for the side",
  }
  return words[cause]
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1)
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
