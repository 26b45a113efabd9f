// What stands above the rounds: yarn, hook, gauge and size missing, and a hook whose letter is another hook's than its
// millimetres. What is missing is asked for and never filled in: only the designer knows it.

import { hooks, nearestHook } from "@roundwright/stitches"
import type { EditCode } from "./codes.ts"
import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

export function missingMaterials({ reading, rounds, front, sections, text }: Manuscript): Remark[] {
  const first = rounds[0]
  if (!first) return []
  const { gauge } = reading
  const said = `${front}\n${sections.map(({ value, start }) => text.slice(text.lastIndexOf("\n", start) + 1, start) + value).join("\n")}`
  const rows: readonly (readonly [EditCode, boolean, string])[] = [
    [
      "yarn-missing",
      gauge.yarnWeight !== undefined ||
        gauge.threadSize !== undefined ||
        /\b(?:yarn|wool|thread|cotton|acrylic|worsted|aran|dk|fingering|sport|ply)\b/i.test(said),
      "Which yarn is it worked in? Give its weight and fibre, and for each colour how many metres.",
    ],
    [
      "hook-missing",
      gauge.hookMm !== undefined || /\bhooks?\b/i.test(said),
      "Which hook is it worked with? Give it in mm, with the US letter beside it.",
    ],
    [
      "gauge-missing",
      gauge.swatches.length > 0 ||
        (gauge.pieces ?? []).some(({ round }) => round !== "last") ||
        /\b(?:gauge|tension)\b/i.test(said),
      "What is the gauge? For a motif the size after round 2 or 3 is the easiest to check.",
    ],
    [
      "size-missing",
      (gauge.pieces ?? []).some(({ round }) => round === "last") ||
        /\b(?:sizes?|measures?|measurements?|dimensions|across|diameter|square)\b[^\n]{0,40}\d[\d./½¼¾ ]{0,6}(?:cm|mm|in\b|inch|["”″])|\d[^\n]{0,4}(?:cm|mm|in\b|inch|["”″])[^\n]{0,12}\b(?:across|diameter|square|wide)\b/i.test(
          said,
        ),
      "How large is the finished piece? Give side and diagonal, or across, and whether it is blocked.",
    ],
  ]
  return rows
    .filter(([, known]) => !known)
    .map(([code, , message]) => ({
      severity: "query" as const,
      code,
      round: null,
      start: first.start,
      end: first.start,
      message,
    }))
}

/** A letter that makers give to more than one size: what it may stand for besides the table, mm. Source: the hook charts named in the package stitches. */
const alsoMm: Readonly<Record<string, readonly number[]>> = {
  B: [2, 2.25],
  C: [2.5, 2.75],
  D: [3, 3.125, 3.25],
  G: [4, 4.25],
  K: [6.5, 7],
  M: [9],
  N: [9, 10],
  O: [12],
  P: [10, 11.5, 15],
  Q: [15, 15.75, 16],
  R: [17.5],
}
/** Makers' sizes of one letter lie within this of one another, mm. */
const sameHookMm = 0.13
/** A neighbouring size: some maker may well have stamped it so, and it is asked. */
const nextHookMm = 0.51

const millimetres = /(?<![\d/.,])(\d{1,2}(?:[.,]\d{1,3})?)\s{0,2}mm\b/gi
const lettered =
  /(?<![A-Za-z.\d])((?:(?:US|size)\s+){0,2})([B-HJ-S]|I(?=\s?[-/]\s?\d)|(?<=(?:US|size)\s)I)(?:\s?[-/]\s?(\d{1,2}(?:\.5|½)?)(?![\d.,]|\s?mm))?(?![A-Za-z\d'’]|\.[A-Za-z])/g
const numberFirst = /(?<![\d.,])(\d{1,2}(?:\.5|½)?)\s?\/\s?([B-S])(?![A-Za-z\d])/g

/** Lines that name a hook by mm and by letter. */
export function hookLetters({ lines, rounds }: Manuscript): Remark[] {
  const remarks: Remark[] = []
  const end = rounds[0]?.start ?? lines.text.length
  for (let line = 0; line < lines.count && lines.starts[line]! < end; line++) {
    const text = lines.lineText(line)
    if (!/\bhooks?\b/i.test(text) || /\bsteel\b|\binstead\b/i.test(text)) continue
    const sizes = [...text.matchAll(millimetres)].map((match) =>
      Number(match[1]!.replace(",", ".")),
    )
    if (sizes.length !== 1) continue
    const letters = [
      ...[...text.matchAll(lettered)].map((match) => ({
        letter: match[2]!,
        number: match[3],
        index: match.index + match[1]!.length,
        length: match[0].length - match[1]!.length,
      })),
      ...[...text.matchAll(numberFirst)].map((match) => ({
        letter: match[2]!,
        number: match[1],
        index: match.index,
        length: match[0].length,
      })),
    ]
    if (letters.length !== 1) continue
    const remark = letterRemark(sizes[0]!, letters[0]!, lines.starts[line]!)
    if (remark) remarks.push(remark)
  }
  return remarks
}

function letterRemark(
  mm: number,
  found: { letter: string; number: string | undefined; index: number; length: number },
  offset: number,
): Remark | null {
  const { letter, number } = found
  const own = hooks.filter((hook) => hook.usLetter === letter).map((hook) => hook.mm)
  const may = [...own, ...(alsoMm[letter] ?? [])]
  if (may.length === 0) return null
  const byNumber =
    number === undefined
      ? undefined
      : hooks.find((hook) => hook.usNumber === number.replace("½", ".5"))
  const numberFits =
    byNumber === undefined || may.some((one) => Math.abs(one - byNumber.mm) <= sameHookMm)
  if (may.some((one) => Math.abs(one - mm) <= sameHookMm) && numberFits) return null
  const right = nearestHook(mm)
  const name = Math.abs(right.mm - mm) > sameHookMm ? null : hookName(right)
  const start = offset + found.index
  const nearby = numberFits && may.some((one) => Math.abs(one - mm) <= nextHookMm)
  return {
    severity: nearby ? "query" : "must-mend",
    code: "hook-letter-differs",
    round: null,
    start,
    end: start + found.length,
    message:
      numberFits || may.every((one) => Math.abs(one - mm) > sameHookMm)
        ? `The hook is given as ${mm} mm and as ${letter}, but ${letter} is ${may[0]} mm. Makers go by the millimetres.`
        : `The letter ${letter} and the number ${number} are two hooks: ${letter} is ${may[0]} mm, ${number} is ${byNumber!.mm} mm.`,
    ...(name === null ? {} : { wording: name, ...(nearby ? {} : { sure: true as const }) }),
  }
}

/** "G-6", or the number alone for a hook without a letter; null for one that has neither. */
export function hookName({
  usLetter,
  usNumber,
}: {
  usLetter?: string
  usNumber?: string
}): string | null {
  if (usLetter === undefined) return usNumber ?? null
  return usNumber === undefined ? usLetter : `${usLetter}-${usNumber}`
}
