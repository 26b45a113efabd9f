// Changes of a clean pattern that change nothing in it and need not be told, by name and each with its reason. Whatever
// else comes to nothing is a fault of the reader.

import type { CleanPattern, Mutation } from "./mutations.ts"

/** What stands before the figure or the place of slip stitches at the beginning of a round. */
const led = /^[^:*]*:\s*(?:sl\.? ?st|slip st\w*|ss) (?:in|into|to|up|across|between)\b[^,;.(*]*$/i

/** Changes that change nothing, each with the reason. */
export const harmless: readonly {
  readonly why: string
  readonly is: (mutation: Mutation, pattern: CleanPattern) => boolean
}[] = [
  {
    why: "slip stitches lead along the edge to where the round goes on, and make nothing",
    is: ({ change, before, line }) =>
      /^"sl st/.test(change) ||
      led.test(before) ||
      (/^[^:*]*:\s*$/.test(before) && /^\d+ sl st\b/.test(line.slice(before.length))),
  },
  {
    why: "stitches are skipped that lie before the space, loop, picot, corner or round named next",
    is: ({ change, line }) =>
      /^"skip/.test(change) &&
      /\b(?:sps?|spaces?|loops?|lps?|corners?|picots?|between|arch\w*|under|of (?:row|rnd|round) \d)\b/i.test(
        line,
      ),
  },
  {
    why: "nothing is left but what is passed over anyway, and only chains and the join follow",
    is: ({ change }) =>
      /^"leave.* before "[,;] (?:\d? ?ch|join|s[ls]|rep|(?:\d )?[\w.]+ in(?:to)? f)/i.test(change),
  },
  {
    why: "a repeat told so many times that it comes to once around",
    is: ({ change, round }, { reading }) => {
      const stitches = reading.rounds[round]?.counted?.stitches ?? 0
      return /^"7 times.* before "; rep/.test(change) && (stitches % 7 === 0 || stitches % 8 === 0)
    },
  },
  {
    why: "the last round is turned, or one that is turned there anyway",
    is: ({ change, line, round }, { reading }) =>
      /^"turn/.test(change) &&
      (round === reading.rounds.length - 1 || (line.match(/\bturn/gi) ?? []).length > 1),
  },
  {
    why: "the words behind it go on in the same way: one, two or three in each",
    is: ({ change, before }) =>
      /^"3 dc in next.* before "[,;] 3 dc in each/.test(change) ||
      /^"(?:increase|2 sc in same).* before "[,;] (?:\*?2 |in each)|^"sc in next 2.* before "[,;] (?:1 )?sc in e/.test(
        change,
      ) ||
      (/^"increase.* before "[,;] rep/.test(change) && /\*2 \w+ in next \w+$/.test(before)),
  },
  {
    why: "the chains that the next round begins with, told before the turn and there again",
    is: ({ change, text, line }) =>
      /^"ch 3.* before "[,;] turn/.test(change) &&
      /^[^\n]*\n[^:\n]*: ch 3\b/i.test(text.slice(text.indexOf(line))),
  },
  {
    why: "the same loops are named once more",
    is: ({ change, line }) =>
      /^"in back loops/.test(change) && (line.match(/back loop|\bblo\b/gi) ?? []).length > 1,
  },
  {
    why: "so many stitches in the next so many places, which is one in each",
    is: ({ kind, line }) => kind === "count" && /\b(\d+) ?\w+ in (?:the )?next \1(?!\d)/.test(line),
  },
  {
    why: "the round named is gone by for its increases, and its own figures say what stands between them",
    is: ({ kind, line }) => kind === "count" && /\b(?:as|rep) Rnd \d+, working \d+/.test(line),
  },
  {
    why: "so many times, or so many more times",
    is: ({ change, line }) => /before "[×x] /.test(change) && /rep from \S \d+[×x]/.test(line),
  },
  {
    why: "the figures of other sizes, of which the first is read",
    is: ({ kind, line }) => kind === "count" && /\d+ ?\((?:\d+, )*\d+\)/.test(line),
  },
]
