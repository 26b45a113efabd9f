// Input that is no pattern at all: nothing, too much, or not text.

import { longestText } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"

/** A share of control or replacement characters above this is no text; text has next to none. */
const mostStrangeShare = 0.02

export function unreadable(text: unknown): Finding | null {
  const at = { severity: "error" as const, start: 0, end: 0 }
  if (typeof text !== "string")
    return {
      ...at,
      code: "not-text",
      message: "This is not text.",
      hint: "Give the pattern as plain text or Markdown.",
    }
  if (text.length > longestText)
    return {
      ...at,
      code: "text-too-long",
      message: `This text has ${text.length.toLocaleString("en")} characters; up to ${longestText.toLocaleString("en")} are read.`,
      hint: "Give the rounds of one motif.",
    }
  if (text.trim() === "")
    return {
      ...at,
      code: "empty-text",
      message: "There is nothing in this text.",
      hint: 'Write rounds such as "Rnd 1: 8 sc in magic ring."',
    }
  if (isBinary(text))
    return {
      ...at,
      code: "not-text",
      message: "This does not look like text.",
      hint: "Give the pattern as plain text or Markdown, not as a picture or an office document.",
    }
  return null
}

function isBinary(text: string): boolean {
  const sample = Math.min(text.length, 100_000)
  let strange = 0
  for (let i = 0; i < sample; i++) {
    const unit = text.charCodeAt(i)
    if (unit === 0) return true
    if (unit === 0xfffd || (unit < 32 && unit !== 9 && unit !== 10 && unit !== 13 && unit !== 12))
      strange += 1
  }
  return strange > sample * mostStrangeShare
}
