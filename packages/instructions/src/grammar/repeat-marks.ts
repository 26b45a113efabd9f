// Where the body of a repeat marked by an asterisk or dagger ends, and by what it is told.

import { type Chart, type Clause, isEndMark, type Remark } from "./chart.ts"
import type { Cursor } from "./cursor.ts"

/** True for "*", "**", daggers: the marks a repeat begins or ends at. */
export function isRepeatMark(text: string): boolean {
  const first = text.charCodeAt(0)
  return first === 42 || first === 0x2020 || first === 0x2021
}

/** Where a repeat's body may end, with what is said there. */
export interface Close {
  /** Index after the body. */
  readonly bodyEnd: number
  /** Index of the first word after the mark or the word "rep". */
  readonly after: number
  readonly by: "mark" | "word" | "reference" | "end"
}

/** "... join with sl st. (45 dc) **In any sp, make a standing dc ...**": the round once more, begun in another way. */
export function otherStart({ lexemes, openMarks }: Chart, at: number, mark: string): Clause | null {
  if (!/^\*\*+$/.test(mark) || openMarks.length > 0) return null
  let end = lexemes.length - 1
  while (end > at && lexemes[end]!.text === ".") end -= 1
  if (end <= at + 3 || lexemes[end]!.text !== mark) return null
  if (lexemes.slice(at + 1, end).some(({ text }) => text === mark)) return null
  if (!/^[.)\]]$/.test(lexemes[at - 1]?.text ?? "")) return null
  if (!lexemes.slice(0, at).some(({ classes }) => classes.has("join"))) return null
  const remarks: Remark[] = [
    { code: "other-way", start: lexemes[at]!.start, end: lexemes[end]!.end },
  ]
  return {
    end: end + 1,
    cost: 0.3,
    steps: (before) => (before.length > 0 ? before : null),
    remarks,
  }
}

/** "rep from **" comes later: the double mark opens a repeat inside another, and ends none. */
export function isNamed({ lexemes }: Chart, at: number, mark: string): boolean {
  if (stopsAt(lexemes, at, mark)) return false
  for (let k = at + 1; k < lexemes.length; k++)
    if (lexemes[k]!.text === mark && lexemes[k - 1]!.text === "from") return true
  return false
}

/** "..., end at **": it is where the last one stops, whatever else is said of it. */
function stopsAt(lexemes: Chart["lexemes"], at: number, mark: string): boolean {
  return lexemes.some(({ text }, k) => k > at && text === mark && lexemes[k - 1]!.text === "at")
}

/** Possible ends, the surest first: a reference to the mark, the same mark again, the word alone, the end of the round. */
export function closesOf(chart: Chart, at: number, mark: string): Close[] {
  const { lexemes, cursor } = chart
  const closes: Close[] = []
  let word: Close | null = null
  let depth = 0
  for (let k = at + 1; k < lexemes.length; k++) {
    const { text } = lexemes[k]!
    if (/^[([{]$/.test(text)) depth += 1
    if (/^[)\]}]$/.test(text)) depth -= 1
    if (depth < 0) break
    cursor.at = k
    if (text === mark && depth === 0) {
      const reference = lexemes[k - 1]?.classes.has("of") || lexemes[k - 1]?.classes.has("between")
      if (!reference) {
        closes.push({ bodyEnd: k, after: k + 1, by: "mark" })
        break
      }
    }
    const goesOn =
      /^(?:continue|cont|continues|continuing|working|work)$/.test(text) &&
      (cursor.is("of", 1) ||
        (cursor.is("around", 1) && cursor.is("of", 2)) ||
        cursor.is("in", 1) ||
        /^(?:in this way|this way|in pattern)$/.test(cursor.text(1)))
    if (depth === 0 && text !== mark && isEndMark(text) && lexemes[k + 1]?.classes.has("in")) {
      // "*dc, ch 2** in next sp; rep from * to **": where the stretch goes is told behind it.
      closes.push({ bodyEnd: k, after: k + 1, by: "mark" })
      break
    }
    // "...; from * once more": the word "repeat" is left out.
    const bare =
      cursor.is("of") && cursor.text(1) === mark && /^[,;.]$/.test(lexemes[k - 1]!.text)
        ? cursor.is("once", 2) ||
          (cursor.isNumber(2) && cursor.is("times", cursor.is("more", 3) ? 4 : 3))
        : false
    if (bare) {
      closes.push({ bodyEnd: k, after: k + 2, by: "reference" })
      break
    }
    if (!cursor.is("repeat") && !goesOn) continue
    const reference = referenceAt(cursor, mark)
    if (goesOn) {
      if (reference === null) continue
      // "continue around from *"
      const said = lexemes.slice(k, reference).some((lexeme) => lexeme.classes.has("of"))
      if (!said) continue
    }
    if (reference !== null) {
      const named = lexemes[reference - 1]!.text
      // "rep from **" ends the repeat that "**" began inside this one.
      const inner = lexemes.findIndex(({ text }, n) => n > at && n < k && text === named)
      if (named !== mark && inner >= 0 && !stopsAt(lexemes, inner, named)) continue
      closes.push({ bodyEnd: k, after: reference, by: "reference" })
      break
    }
    if (!word && depth === 0 && namesNoOther(cursor))
      word = { bodyEnd: k, after: k + 1, by: "word" }
  }
  // A word alone ends it before a mark that comes later can.
  if (
    word &&
    (closes.length === 0 || (closes[0]!.by === "mark" && closes[0]!.bodyEnd > word.bodyEnd))
  )
    closes.unshift(word)
  if (closes.length === 0) {
    const end = endOfRound(lexemes, at)
    closes.push({ bodyEnd: end, after: end, by: "end" })
  }
  cursor.at = at
  return closes
}

/** Before the join, or the total, that ends the round: as far as a repeat goes that nothing ends. */
function endOfRound(lexemes: Chart["lexemes"], at: number): number {
  let end = lexemes.length
  for (let k = at + 1; k < lexemes.length; k++) {
    const lexeme = lexemes[k]!
    const total =
      /^[([]$/.test(lexeme.text) &&
      lexemes[k + 1]?.type === "number" &&
      lexemes.slice(k, k + 7).some(({ text }) => /^[)\]]$/.test(text)) &&
      /^[.)\]]?$/.test(lexemes[k - 1]?.text ?? "")
    if (lexeme.text === "." || lexeme.classes.has("join") || total) {
      end = k
      // "... work a sl st in next st to join": the slip stitch is the join's.
      for (let back = k - 1; lexeme.classes.has("join") && back > Math.max(at, k - 9); back--)
        if (/^(?:sl|ss|slst|slip)$/.test(lexemes[back]!.text))
          end = lexemes[back - 1]?.classes.has("work") ? back - 1 : back
      break
    }
  }
  return end
}

/** "rep from *", "rep between *s", "rep from * to *": index after it; null when another mark, or none, is named. */
export function referenceAt(cursor: Cursor, mark: string): number | null {
  const first = cursor.at
  for (let k = 1; k <= 7; k++) {
    const text = cursor.text(k)
    // "repeat between the asterisks".
    if (mark === "*" && /^(?:asterisk|asterisks|star|stars)$/.test(text)) return first + k + 1
    if (text === mark || text === mark + mark) {
      let after = first + k + 1
      const { lexemes } = cursor
      // "from * to *", "between * and *": the marks named again; "to **" is an end mark.
      while (/^['"]$/.test(lexemes[after]?.text ?? "") && lexemes[after + 1]?.text !== "s")
        after += 1
      for (;;) {
        const link = lexemes[after]
        const again = lexemes[after + 1]
        if (link?.text === mark && lexemes[after - 2]?.classes.has("between")) after += 1
        else if (
          link?.text === mark &&
          !lexemes.slice(first, after - 1).some((word) => word.classes.has("of"))
        )
          after += 1
        else if (link?.text === "'" && again?.text === "s") after += 2
        else if (link?.text === "s") after += 1
        else if (
          link &&
          again?.text === mark &&
          (link.classes.has("to") || link.classes.has("and") || link.text === "-")
        )
          after += 2
        else break
      }
      return after
    }
    if (isRepeatMark(text) || cursor.is("round", k) || cursor.done()) return null
    if (/^[,;.)\]]$/.test(text)) return null
  }
  return null
}

/** "rep around", "repeat 5 times", "rep to last 2 sts": how often, though no mark is named. */
export function namesNoOther(cursor: Cursor): boolean {
  // "repeat from [-] twice" is said of a bracket.
  if (cursor.is("of", 1) && /^[([]$/.test(cursor.text(2)) && /^[-)\]]$/.test(cursor.text(3)))
    return false
  if (cursor.is("round", 1) && /^[,;.)\]]?$/.test(cursor.text(2))) return true
  for (let k = 1; k <= 6; k++) {
    const text = cursor.text(k)
    if (isRepeatMark(text) || cursor.is("round", k)) return cursor.is("around", k)
    if (text === "" || /^[,;.)\]]$/.test(text)) break
  }
  return (
    cursor.is("around", 1) ||
    cursor.isNumber(1) ||
    cursor.is("once", 1) ||
    cursor.is("until", 1) ||
    cursor.is("of", 1) ||
    /^[,;.)]?$/.test(cursor.text(1)) ||
    cursor.text(1) === "this" ||
    cursor.is("in", 1)
  )
}
