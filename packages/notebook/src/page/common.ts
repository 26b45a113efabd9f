// What several cells need to be written as HTML.

import type { CheckedPattern } from "../result.ts"
import { element, type Html } from "./html.ts"

/** ` of Ferry-bell mat`, or nothing where it can be of one pattern only. */
export function ofPiece({ name, result }: CheckedPattern, alone: boolean, word = "of"): string {
  return alone ? "" : ` ${word} ${result.motif?.title ?? name}`
}

/** Where a round stands in the text of its pattern. */
export function roundId(pattern: string, round: number): string {
  return `round-${pattern}-${round}`
}

/** A sentence whose figures stay on one line with their units. */
export function keepUnits(sentence: string): string {
  return sentence.replace(/(\d) (mm|cm|%)(?![a-z])/g, "$1\u00a0$2")
}

/** A box in which something wide scrolls by itself, reachable by keyboard. */
export function scrollBox(label: string, content: Html): Html {
  return element(
    "div",
    { class: "scroll", tabindex: 0, role: "region", "aria-label": label },
    content,
  )
}

/** Fixed decimals with the minus sign of typography and no minus before zero. */
export function signed(value: number, digits: number): string {
  const text = Math.abs(value) < 1e12 ? value.toFixed(digits) : value.toExponential(2)
  return (Number(text) === 0 ? (0).toFixed(digits) : text).replace("-", "\u2212")
}
