// Where a round states its total, and in what manner: in brackets, square brackets, behind a dash or an equals sign.

import type { ManuscriptRound } from "./manuscript.ts"

export type TotalStyle = "brackets" | "square brackets" | "dash" | "equals" | "sentence"

export interface TotalPlace {
  readonly style: TotalStyle
  /** The whole, with brackets or sign, and the words inside. */
  readonly start: number
  readonly end: number
  readonly innerStart: number
  readonly inner: string
  /** No unit behind the figure: "(36)". */
  readonly bare: boolean
}

const item = String.raw`(?:\d{1,4}\b(?!\s*(?:more|times?|mm|cm|in\b|")))[^()\[\]\n]{0,90}`
const manners: readonly (readonly [TotalStyle, RegExp])[] = [
  ["brackets", new RegExp(String.raw`\(\s*(${item}?)\s*\)`, "g")],
  ["square brackets", new RegExp(String.raw`\[\s*(${item}?)\s*\]`, "g")],
  ["equals", /=\s*(\d{1,4}(?:\s+[A-Za-z][^.()\n]{0,60})?)(?=[.\s]*(?:$|\n))/g],
  ["dash", /\s[-–—]{1,2}\s*(\d{1,4}(?:\s+[A-Za-z][^.()\n]{0,60})?)(?=[.\s]*(?:$|\n))/g],
  ["sentence", /[.;]\s+(\d{1,4}(?:\s+[A-Za-z][^.()\n]{0,60})?)(?=[.\s]*(?:$|\n))/g],
]

/** The place of the total that a round states; null where it states none or in a manner of its own. */
export function totalPlace({ reading, body, bodyStart }: ManuscriptRound): TotalPlace | null {
  if (reading.stated === null) return null
  let best: TotalPlace | null = null
  for (const [style, pattern] of manners)
    for (const match of body.matchAll(pattern)) {
      const inner = match[1]!
      if (!hasFigure(inner, reading.stated)) continue
      const start =
        bodyStart + match.index + (style === "sentence" || style === "dash" ? leadOf(match[0]) : 0)
      const end = bodyStart + match.index + match[0].length
      if (best !== null && start <= best.start) continue
      const innerStart = bodyStart + match.index + match[0].indexOf(inner)
      best = {
        style,
        start,
        end,
        innerStart,
        inner: inner.trimEnd(),
        bare: /^\d+$/.test(inner.trim()),
      }
    }
  return best
}

function hasFigure(text: string, figure: number): boolean {
  const figures = (text.match(/\d+/g) ?? []).map(Number)
  return figures.includes(figure) || figures.reduce((sum, one) => sum + one, 0) === figure
}

/** The sign that ends what stands before the total stays there. */
function leadOf(text: string): number {
  return /^[.;]/.test(text) ? 1 : 0
}

const wrap: Readonly<Record<TotalStyle, (inner: string) => string>> = {
  brackets: (inner) => `(${inner})`,
  "square brackets": (inner) => `[${inner}]`,
  dash: (inner) => ` – ${inner}`,
  equals: (inner) => `= ${inner}`,
  sentence: (inner) => ` ${inner}`,
}

/** A total in a manner. */
export function totalInStyle(inner: string, style: TotalStyle): string {
  return wrap[style](inner)
}
