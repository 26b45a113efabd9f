// Words that tell once more what is or was worked: "the first dc is replaced by 3 chains", "ending with 1 dc in the
// first sp" where nothing is repeated, "5 (2 dc) groups".

import type { StatedTotal } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"
import { readChainCount } from "./make-extras.ts"
import { readCounted, readKind } from "./stitch-names.ts"
import { readTimes } from "./until.ts"

/** "ending with" is first of all the end of a repeat. */
const noRepeatCost = 0.3

/** "The first dc [of the round] is replaced by 3 chains": the chain stands for a stitch that is counted anyway. */
export function firstReplaced(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const before = chart.lexemes[at - 1]
  if (before && !/^[.,;]$/.test(before.text) && !before.classes.has("and")) return []
  cursor.accept("again")
  cursor.accept(",")
  if (!cursor.take("first") || !(cursor.accept("of") || readKind(cursor))) return []
  readKind(cursor)
  if (cursor.take("in", "of") && !cursor.take("each")) while (cursor.take("that"));
  cursor.take("round")
  cursor.take("counts")
  if (!cursor.accept("replaced", "replaces", "substituted", "made", "formed")) return []
  if (!cursor.accept("by") && !cursor.take("with")) return []
  if (readChainCount(cursor) === null || !isBoundary(cursor.text())) return []
  return [clause(cursor, [], 0.02)]
}

/** "... in next sp: corner made", "- shell completed": what has just been done, without a bracket. */
export function nowMade(chart: Chart, at: number): readonly Clause[] {
  if (!/^[,;:.-]$/.test(chart.lexemes[at - 1]?.text ?? "")) return []
  const cursor = chart.from(at)
  cursor.take("first", "that")
  if (cursor.isOrdinal()) cursor.at += 1
  if (!cursor.take("group", "corner", "picot") && !readKind(cursor)?.gathered) return []
  if (!cursor.accept("made", "formed", "completed", "complete", "done")) return []
  return isBoundary(cursor.text()) ? [clause(cursor, [], 0.02)] : []
}

/** "dc in each dc along each side ..., ending with 1 dc in the first sp": after steps that are not repeated. */
export function endsWithoutRepeat(chart: Chart, at: number): readonly Clause[] {
  const before = chart.lexemes[at - 1]
  if (!before || (!/^[.,;]$/.test(before.text) && !before.classes.has("and"))) return []
  const cursor = chart.from(at)
  cursor.at += 1
  cursor.take("round", "that")
  if (!cursor.take("with")) return []
  const after = cursor.at
  const works = cursor.isNumber() || cursor.is("chain") || readCounted(cursor) !== null
  cursor.at = after
  if (!works) return []
  return [
    clause(
      cursor,
      (steps) => {
        const last = steps[steps.length - 1]
        const each = last?.do === "work" || last?.do === "group" ? last.place?.at === "each" : false
        return each || last?.do === "chain" ? [...steps] : null
      },
      noRepeatCost,
    ),
  ]
}

/** "5 (2 dc) groups", "4 (3 dc) clusters": how many there are, and of what. */
export function groupsOfSome(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const before = chart.lexemes[at - 1]
  if (before && !/^[.=:;-]$/.test(before.text)) return []
  const count = cursor.takeCount(2)
  if (count === null || !cursor.accept("(", "[")) return []
  if (cursor.takeCount(1) === null || !readKind(cursor) || !cursor.accept(")", "]")) return []
  const word = cursor.text()
  if (!cursor.take("group") && !cursor.accept("cluster", "clusters")) return []
  if (!isBoundary(cursor.text())) return []
  const span = cursor.since(start)
  const total: StatedTotal = {
    ...span,
    items: [{ ...span, count, unit: "groups", word }],
    firm: true,
  }
  return [clause(cursor, [], 0, { totals: [total] })]
}

/** "ch 3 or 1 treble": whichever is made, it is the first stitch. */
export function orStitch(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const bracket = cursor.accept("(")
  if (!cursor.accept("or")) return []
  const counted = readCounted(cursor)
  if (counted?.count !== 1 || counted.stitch.kind.gathered) return []
  if (bracket && !cursor.accept(")")) return []
  if (!isBoundary(cursor.text()) && !cursor.is("and")) return []
  const span = cursor.since(start)
  return [
    clause(cursor, (before) =>
      before[before.length - 1]?.do === "chain"
        ? [
            ...before,
            { ...span, do: "note-counts", countsAs: { counts: true, kind: counted.stitch.kind } },
          ]
        : null,
    ),
  ]
}

/** "continue around until 12 petals have been formed": how often is said by the round below as well. */
export function untilSoMany(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const times = readTimes(cursor, true)
  if (times?.kind !== "more" || !times.untilMade) return []
  return [
    clause(
      cursor,
      (before) => {
        const last = before[before.length - 1]
        return last?.do === "repeat" && last.times.kind === "until" ? [...before] : null
      },
      0.05,
    ),
  ]
}
