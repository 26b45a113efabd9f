// Borders and edges from figures alone: one count onto another, shares of an edge, squares of unlike counts, a border that brings
// a blanket to a size, an edging worked by itself.

import { RoundwrightError } from "@roundwright/numerics"
import { rectangleIn } from "../blanket/piece-told.ts"
import { easeOnto, edgesOfGrid } from "../border/ease.ts"
import { readRepeat } from "../border/fit-repeat.ts"
import { evenChangeText, evenGroups, groupsText, pickUpText } from "../border/groups.ts"
import { judgeEdge } from "../border/judge-edge.ts"
import { edgeRows, pickUpAlong } from "../border/pick-up.ts"
import { stepDown } from "../border/step-down.ts"
import { evenSides } from "../border/unlike-sides.ts"
import { edgingRound, widenTo } from "../border/widen.ts"
import { usesOfRepeat } from "../border/written-row.ts"
import { readLength, unitIn } from "../lengths.ts"
import { type Asked, choice, type FiguresAnswer, gaugeTold, wholeOf } from "./values.ts"

/** Null where a border is to be planned round by round. @throws RoundwrightError for what cannot be used */
export function borderFigures(asked: Asked): FiguresAnswer | null {
  const { squares, parts, onto, to, every, side } = asked
  if (squares !== undefined) return grid(squares)
  if (parts !== undefined) {
    const total = wholeOf(asked.stitches ?? "", "the stitches")
    const shared = evenGroups(total, wholeOf(parts, "the parts"))
    const many = wholeOf(parts, "the parts")
    const [down, up] = [Math.floor(total / many) * many, Math.ceil(total / many) * many]
    const uneven =
      down === up
        ? `${total / many} in each`
        : `not the same in each: ${groupsText(shared, "parts")}. ${down > 0 ? `${down} (${down / many} in each) is ${total - down} fewer, ` : ""}${up} (${up / many} in each) ${up - total} more; where all sides are to be alike the slip is in the round in which it began, and not the hook`
    return { ...shared, text: `${total} in ${parts} parts: ${uneven}.` }
  }
  if (asked.rows !== undefined && asked.stitches !== undefined && asked.step !== undefined)
    return stepDown(
      wholeOf(asked.rows, "the rows"),
      wholeOf(asked.stitches, "the stitches"),
      wholeOf(asked.step, "the step"),
    )
  const sides = asked.stitches?.split(/[,;]|\band\b/i) ?? []
  if (sides.length > 2)
    return evenSides(
      sides.map((one) => wholeOf(one, "the stitches of a side")),
      asked.repeat === undefined ? null : readRepeat(asked.repeat),
    )
  const row = asked["row-stitch"]
  if (
    asked.stitches !== undefined &&
    asked.repeat === undefined &&
    (asked.rows !== undefined || row !== undefined)
  )
    return pickUpAlong(
      wholeOf(asked.stitches, "the stitches"),
      asked.rows === undefined ? null : wholeOf(asked.rows, "the rows"),
      choice(asked, "row-stitch", edgeRows) ?? "dc",
    )
  if (asked.row !== undefined) {
    const plus = asked.repeat === undefined ? null : readRepeat(asked.repeat).plus
    const many = asked.repeats === undefined ? null : wholeOf(asked.repeats, "the repeats")
    return usesOfRepeat(asked.row, plus, many)
  }
  const sided = ["side", "stitches", "rows", "pieces", "layout", "file"].some(
    (name) => asked[name] !== undefined,
  )
  if (asked.repeat !== undefined && !sided) return repeatAlone(asked.repeat, asked.repeats)
  if (asked["too-many"] !== undefined) {
    const over = wholeOf(asked["too-many"], "the stitches too many")
    const each = wholeOf(asked["per-join"] ?? "1", "the stitches too many at a join")
    const joins = Math.round(over / each)
    return {
      text: `${over} too many on a side are ${each} at each of ${joins} joins, as ${joins + 1} pieces have; ${4 * over} all round. Leave them out: one stitch or none goes into a join.`,
    }
  }
  if (onto !== undefined) return eased(asked.stitches, onto)
  if (to !== undefined && side !== undefined)
    return widenTo(sizeOf(side, "--side"), sizeOf(to, "--to"), gaugeTold(asked), {
      unit: unitIn(to),
    })
  if (every !== undefined && side !== undefined)
    return edgingRound(sizeOf(side, "--side"), readLength(every, "--every"), unitIn(every))
  if (side !== undefined && asked.stitches !== undefined) {
    const gauge = gaugeTold(asked)
    if (gauge.absolute)
      return judgeEdge(readLength(side, "--side"), wholeOf(asked.stitches, "the stitches"), gauge)
  }
  return null
}

/** The counts that hold whole repeats, corners apart. */
function repeatAlone(text: string, wanted: string | undefined): FiguresAnswer {
  const { of, plus } = readRepeat(text)
  const at = (many: number) => of * many + plus
  const rest = plus === 0 ? "" : plus > 0 ? ` and ${plus} more` : ` less ${-plus}`
  const own =
    wanted === undefined
      ? ""
      : ` ${wanted} repeats are ${at(wholeOf(wanted, "the repeats"))} a side, ${4 * at(wholeOf(wanted, "the repeats"))} on four sides without corners.`
  return {
    text: `Whole repeats lie on a multiple of ${of}${rest}, corners apart: ${[1, 2, 3].map(at).join(", ")}, ... ${[10, 11, 12, 20, 21].map(at).join(", ")}, ...${own} A side that is 1 or 2 off is eased: pass over one more or one fewer in the last gaps, near the corners. Tell a side (--stitches 70) to have it fitted.`,
  }
}

function sizeOf(text: string, name: string): [number, number] {
  const sides = rectangleIn(text)
  if (sides) return sides
  const mm = readLength(text, name)
  return [mm, mm]
}

function grid(squares: string): FiguresAnswer {
  const edges = edgesOfGrid(squares)
  const { top, right, bottom, left, all } = edges
  const joins = [...new Set(edges.joins.map(({ text }) => text))]
  return {
    ...edges,
    text: `Along the outer edge, without corners and joins: top ${top}, right ${right}, bottom ${bottom}, left ${left}; ${all} in all.`,
    lines: joins.map((text) => `Joining ${text}.`),
  }
}

/** "20" onto "16"; "193 x 294" onto "176 x 218", the two sides of a rectangle. */
function eased(stitches: string | undefined, onto: string): FiguresAnswer {
  if (stitches === undefined)
    throw new RoundwrightError("no-sides", "The edge that is worked onto it is not told.", {
      hint: "Give both counts: --stitches 20 --onto 16.",
    })
  const counts = (text: string) => text.split(/[x×,]|\band\b/i).map((part) => part.trim())
  const [from, to] = [counts(stitches), counts(onto)]
  if (from.length !== to.length || from.length > 2)
    throw new RoundwrightError("no-sides", "As many counts are wanted on both sides.", {
      hint: "Such as --stitches 193x294 --onto 176x218.",
    })
  const sides = from.map((one, k) =>
    easeOnto(wholeOf(one, "the stitches"), wholeOf(to[k]!, "the stitches they go onto")),
  )
  const told = sides.flatMap((one) =>
    [evenChangeText(one.from, one.to), pickUpText(one.from, one.to)].filter((line) => line !== ""),
  )
  const all =
    sides.length === 2
      ? [
          `All four edges: ${2 * (sides[0]!.to + sides[1]!.to)} stitches without corners, from ${2 * (sides[0]!.from + sides[1]!.from)}.`,
        ]
      : []
  return {
    ...sides[0]!,
    ...(sides.length === 2 ? { sides } : {}),
    text: `${sides.map(({ text }) => text).join(". ")}.`,
    lines: [...told, ...all],
  }
}
