// What a reading has to tell of its words: what was passed over, taken for a slip, or left open.

import type { Finding } from "../base/problem-list.ts"
import type { Remark } from "../grammar/chart.ts"
import type { Gap, WordsOfRound } from "../grammar/read-words.ts"
import type { Lexeme } from "../words/lexemes.ts"
import type { LexicalClass } from "../words/lexicon.ts"

/** Words passed over that cost less say nothing of the work, by the lexicon, and are told in a note only. */
const meaningfulGap = 0.9
/** Cheaper ones are fillers between clauses and not told. */
const toldGap = 0.35
/** Words of these say how many, how often or into what: a gap with one may hide work. */
const ofTheWork: readonly LexicalClass[] = [
  "stitch",
  "chain",
  "space",
  "gap",
  "group",
  "picot",
  "each",
  "between",
  "skip",
  "repeat",
  "times",
  "more",
  "once",
  "half",
  "increase",
  "decrease",
]
/** Longest piece of the text quoted in a message. */
const longestQuote = 60

/**
 * @param settled the round's stated total is met, so that nothing passed over has changed a count
 * @param alike the round goes round as the rounds before do, so that words which name no work have hidden none
 * @param unknown what was passed over says how the round goes, and nothing else does
 */
export function gapFindings(
  text: string,
  gaps: readonly Gap[],
  settled: boolean,
  alike: boolean,
  unknown: boolean,
): Finding[] {
  return gaps
    .filter(({ cost }) => cost >= toldGap)
    .map((gap) => {
      const said = quoted(text, gap)
      const matters = gap.cost >= meaningfulGap && !settled && !(alike && namesNoWork(gap))
      return {
        severity: !matters ? "note" : unknown ? "error" : "warning",
        code: isFigure(gap) ? "figure-passed-over" : "words-passed-over",
        start: gap.start,
        end: gap.end,
        message: settled
          ? `"${said}" is not used; the round comes to its total without it.`
          : matters && unknown
            ? `"${said}" is not understood here, and without it most of the round before is left: the round is not counted.`
            : `"${said}" is not understood here and is passed over; the round is counted without it.`,
        hint: matters ? hintFor(said) : "",
      }
    })
}

function namesNoWork({ words }: Gap): boolean {
  return words.every(
    ({ type, classes, unknown }, k) =>
      type !== "number" &&
      type !== "ordinal" &&
      !ofTheWork.some((one) => classes.has(one)) &&
      // "lsc in ring": a strange word before a place may be a stitch.
      !(unknown && words[k + 1]?.classes.has("in")),
  )
}

function hintFor(said: string): string {
  return `If "${said}" makes stitches, say how many and where ("2 sc in next st"), or state the round's total in a bracket at its end; if it makes none, take it out.`
}

function isFigure(gap: Gap): boolean {
  return gap.words.every(({ type }) => type === "number" || type === "ordinal")
}

function quoted(text: string, { start, end }: Gap): string {
  const said = text.slice(start, end).replace(/\s+/g, " ")
  return said.length > longestQuote ? `${said.slice(0, longestQuote)}...` : said
}

/** Words taken for the word they are a slip of. */
export function slipFindings(text: string, words: WordsOfRound): Finding[] {
  return words.slips.map((slip: Lexeme) => ({
    severity: "note" as const,
    code: "taken-for",
    start: slip.start,
    end: slip.end,
    message: `"${text.slice(slip.start, slip.end)}" is taken for "${slip.text}".`,
    hint: `Write "${slip.text}" if that is meant.`,
  }))
}

type Told = Pick<Finding, "severity" | "message" | "hint">

const sentences: Readonly<Partial<Record<Remark["code"], (said: string) => Told>>> = {
  aside: (said) => ({
    severity: "note",
    message: `What stands in brackets here, "${said}", is taken for a remark and not worked.`,
    hint: "Take the brackets away if it is work.",
  }),
  "not-of-the-work": () => ({
    severity: "note",
    message: "This sentence says nothing of the work and is passed over.",
    hint: "",
  }),
  "not-reckoned": (said) => ({
    severity: "note",
    message: `"${said}" is not reckoned with: sizes come from the headings for hook, gauge and size.`,
    hint: "",
  }),
  "word-in-total": (said) => ({
    severity: "note",
    message: `"${said}" in the total is not read.`,
    hint: "",
  }),
  "figure-passed-over": (said) => ({
    severity: "note",
    message: `"${said}" is not used: what is made here does not come to so many.`,
    hint: "Count again.",
  }),
  "first-size-read": () => ({
    severity: "note",
    message: "Figures for other sizes stand here; the first size is read.",
    hint: "",
  }),
  "bracket-not-closed": (said) => ({
    severity: "warning",
    message: `The bracket "${said}" is not closed.`,
    hint: `Put a "${said === "(" ? ")" : said === "[" ? "]" : "}"}" where it ends.`,
  }),
  "bracket-opens-repeat": (said) => ({
    severity: "note",
    message: `The bracket "${said}" is not closed; the repeat named behind it is taken to begin at it.`,
    hint: 'Put a "*" there.',
  }),
  "repeat-start-missing": () => ({
    severity: "warning",
    message:
      "Where this repeat begins is not marked; it is taken from the first stitch of the round.",
    hint: 'Put a "*" where the repeat begins.',
  }),
  "repeat-end-missing": () => ({
    severity: "warning",
    message: "The repeat that starts here has no end; it is worked around.",
    hint: 'Say how often: "rep from * 5 more times" or "rep from * around".',
  }),
  "other-way": (said) => ({
    severity: "note",
    message: `"${said}" tells another way of doing the same; the first one told is worked.`,
    hint: "",
  }),
  "further-rounds": () => ({
    severity: "note",
    message: "Further rounds are told here without numbers of their own; they are not worked.",
    hint: "Write them out with their numbers to have them counted.",
  }),
  "left-to-maker": () => ({
    severity: "warning",
    message: "How many and where is left to the maker here, so it is not counted.",
    hint: "Give the number if it is known.",
  }),
  "round-without-label": (said) => ({
    severity: "warning",
    message: "A further round is named here without a number of its own; it is not worked.",
    hint: `Give it a line of its own: "Rnd ...: ${said}".`,
  }),
  "nested-too-deeply": () => ({
    severity: "error",
    message: "Brackets and repeats are nested more deeply than any pattern needs.",
    hint: "Write the inner part out as steps of its own.",
  }),
}

/** @param settled the round's stated total is met: a slip in the marks has changed nothing */
export function remarkFindings(
  text: string,
  remarks: readonly Remark[],
  settled: boolean,
): Finding[] {
  const found: Finding[] = []
  for (const { code, start, end } of remarks) {
    const said = text.slice(start, end).replace(/\s+/g, " ").slice(0, longestQuote)
    if (code === "skipped" || code === "read-over") continue
    const told = sentences[code]?.(said)
    const harmless =
      settled && /^(?:bracket-not-closed|repeat-start-missing|repeat-end-missing)$/.test(code)
    if (told)
      found.push({ code, start, end, ...told, ...(harmless ? { severity: "note" as const } : {}) })
  }
  return found
}
