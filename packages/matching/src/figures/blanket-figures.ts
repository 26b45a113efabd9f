// Blankets from figures alone that no layout is drawn of: small pieces along a large edge, corner to corner, in rounds, and how
// long what is left to make takes.

import { RoundwrightError } from "@roundwright/numerics"
import { alongEdge } from "../blanket/along-edge.ts"
import { readColours } from "../blanket/colours.ts"
import { choicesOf, combinationsOf } from "../blanket/combinations.ts"
import { countsAlone } from "../blanket/counts-alone.ts"
import type { NamedSize } from "../blanket/named-sizes.ts"
import { cornerToCorner, rectangleInGroups, rectangleInRounds } from "../blanket/one-piece.ts"
import { readPieceTold } from "../blanket/piece-told.ts"
import { layoutOfCount } from "../blanket/plan-blanket.ts"
import { readBlanketSize } from "../blanket/read-blanket.ts"
import { lengthWords, readLength, unitIn } from "../lengths.ts"
import { type Asked, type FiguresAnswer, sentence, whole, wholeOf } from "./values.ts"

/** Null where a layout is meant. @throws RoundwrightError for what cannot be used */
export function blanketFigures(asked: Asked): FiguresAnswer | null {
  if (asked.edge !== undefined) return edgeAsked(asked)
  if (asked.around !== undefined) return aroundAsked(asked)
  if (asked["corner-to-corner"] !== undefined || asked["in-rounds"] !== undefined) {
    if (asked.size === undefined)
      throw new RoundwrightError("nothing-wished", "The size of the blanket is not told.", {
        hint: "Add --size '45 x 60 in'.",
      })
    const groups = groupsIn(asked.size)
    if (groups && asked["in-rounds"] !== undefined)
      return rectangleInGroups(groups, whole(asked, "chains-each") ?? null)
    const { mm } = readBlanketSize(asked.size)
    const unit = unitIn(asked.size)
    if (asked["corner-to-corner"] === undefined)
      return rectangleInRounds(
        mm,
        asked.piece === undefined ? null : readPieceTold(asked.piece).widthMm,
        unit,
      )
    if (asked.piece === undefined)
      throw new RoundwrightError("no-size", "Nothing tells how large a block is.", {
        hint: "Measure some: --piece '5 = 4 in'.",
      })
    return cornerToCorner(mm, readPieceTold(asked.piece).widthMm, unit)
  }
  if (asked["join-rounds"] !== undefined) return joinedRounds(asked)
  const many = asked["colours-each"]
  if (
    many !== undefined &&
    asked.colours !== undefined &&
    asked.layout === undefined &&
    asked.size === undefined
  ) {
    const families = readColours(asked.colours).length
    const pieces = whole(asked, "pieces") ?? null
    return /^\s*\d+\s*$/.test(many)
      ? combinationsOf(families, wholeOf(many, "the colours of a piece"), pieces)
      : choicesOf(many, families, pieces)
  }
  const sized = ["piece", "size", "file", "pair", "colours", "larger", "edge"].some(
    (name) => asked[name] !== undefined,
  )
  if (!sized && (asked.layout !== undefined || asked.pieces !== undefined)) return countsTold(asked)
  // A name by itself: what sizes go by it.
  const alone = ["piece", "pieces", "layout", "have", "file"].every(
    (name) => asked[name] === undefined,
  )
  if (asked.size !== undefined && alone) {
    const { named } = readBlanketSize(asked.size)
    if (named.length > 0) return { text: namedText(named) }
  }
  return null
}

function countsTold(asked: Asked): FiguresAnswer {
  const [pieces, have] = [whole(asked, "pieces"), asked.have]
  const told = countsAlone({
    ...(asked.layout === undefined ? {} : { layout: rowsByColumns(asked.layout) }),
    ...(pieces === undefined ? {} : { pieces }),
    ...(have === undefined ? {} : { have: wholeOf(have, "the pieces at hand", 0) }),
  })
  const pace =
    asked.pace === undefined ? [] : [paceText(asked.pace, Math.max(1, told.toMake ?? told.needed))]
  return { ...told, lines: [...pace, ...told.lines] }
}

function namedText(named: readonly NamedSize[]): string {
  const sizes = [
    ...new Set(
      named.map(
        ({ inches }) =>
          `${inches.join(" x ")} in (${inches.map((one) => Math.round(one * 2.54)).join(" x ")} cm)`,
      ),
    ),
  ]
  return `${sentence(named[0]!.name)}: ${sizes.join(", or ")}${sizes.length > 1 ? "; sources do not agree, so measure the bed or the person" : ""}.`
}

/** Pieces that get a joining round each: how many rounds the one has that is as large as several along its side. */
function joinedRounds(asked: Asked): FiguresAnswer {
  const own = wholeOf((asked.piece ?? "").trim().replace(/rounds?$/i, ""), "the rounds of a piece")
  const join = whole(asked, "join-rounds")!
  const along = whole(asked, "along") ?? 2
  const next = (rounds: number) => along * (rounds + join) - join
  const first = next(own)
  return {
    text: `${along} of ${own} rounds with ${join} to join take the room of ${along * (own + join)} rounds, so one as large has ${first} of its own; the one as large as ${along} of those has ${next(first)}, and then ${next(next(first))}.`,
  }
}

/** "4 x 9 gaps": counts in place of lengths. */
function groupsIn(text: string): [number, number] | null {
  const match =
    /^\s*(\d{1,4})\s*(?:x|×|by)\s*(\d{1,4})\s*(?:gaps?|groups?|spaces?|clusters?)\s*$/i.exec(text)
  return match ? [Number(match[1]), Number(match[2])] : null
}

/** The length of the edge all round: how large the pieces and the blanket are. */
function aroundAsked(asked: Asked): FiguresAnswer {
  const [rows, columns] =
    asked.layout !== undefined
      ? rowsByColumns(asked.layout)
      : layoutOfCount(whole(asked, "pieces") ?? 1, [1, 1])
  const around = readLength(asked.around!, "--around")
  const tell = (mm: number) => lengthWords(mm, unitIn(asked.around!))
  const each = around / (2 * (rows + columns))
  return {
    text: `${tell(around)} all round ${rows} rows of ${columns}: each piece is ${tell(each)}, the blanket ${tell(columns * each)} by ${tell(rows * each)}.`,
  }
}

function rowsByColumns(text: string): [number, number] {
  const [rows = "", columns = rows] = text.split(/x|×|\*|by/i).map((part) => part.trim())
  return [wholeOf(rows, "the rows"), wholeOf(columns, "the columns")]
}

/** Lengths, or groups, rounds or stitches alike. */
function edgeAsked(asked: Asked): FiguresAnswer {
  const { edge, piece } = asked
  const isCount = (text: string) =>
    /^\d+(?:\.\d+)?\s*(?:groups?|rounds?|sts|stitches)?$/i.test(text.trim())
  const wanted = whole(asked, "along") ?? null
  if (isCount(edge!) && (piece === undefined || isCount(piece))) {
    const number = (text: string) => Number.parseFloat(text)
    const tell = (value: number) => `${Math.round(100 * value) / 100}`
    return alongEdge(number(edge!), piece === undefined ? null : number(piece), wanted, tell)
  }
  const unit = unitIn(edge!)
  return alongEdge(
    readLength(edge!, "--edge"),
    piece === undefined ? null : readPieceTold(piece).widthMm,
    wanted,
    (mm) => lengthWords(mm, unit),
  )
}

/** "3 a day", "10 a week", "2 per evening": how long so many take. @throws RoundwrightError `bad-pace` */
export function paceText(pace: string, toMake: number): string {
  const match =
    /^(\d{1,4}(?:\.\d+)?)\s*(?:(?:pieces?|squares?)\s*)?(?:a|per|each|every|\/)\s*(day|evening|night|week|month)$/i.exec(
      pace.trim(),
    )
  const many = Number(match?.[1])
  if (!match || !(many > 0))
    throw new RoundwrightError("bad-pace", `"${pace.slice(0, 40)}" is no pace.`, {
      hint: "Write it such as '3 a day' or '10 a week'.",
    })
  const days =
    match[2]!.toLowerCase() === "week" ? 7 : match[2]!.toLowerCase() === "month" ? 30.4 : 1
  const whole = Math.ceil((toMake * days) / many - 1e-9)
  const weeks = whole > 13 ? `, about ${Math.round(whole / 7)} weeks` : ""
  return sentence(`at ${pace.trim()} the ${toMake} to make take ${whole} days${weeks}.`)
}
