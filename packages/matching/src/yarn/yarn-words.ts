// What a yarn estimate says: metres to two figures, grams whole, the error beside each.

import type { Skein } from "./yarn-basis.ts"
import type { YarnAmount, YarnEstimate } from "./yarn-result.ts"

/** "about 12 m, 5.2 g (give or take 22 %)". */
export function amountText({ metres, grams, sc, errorShare }: YarnAmount): string {
  const parts = [
    ...(metres === null ? [] : [`${twoFigures(metres)} m`]),
    ...(grams === null ? [] : [`${twoFigures(grams)} g`]),
  ]
  if (parts.length === 0) return `as much as ${Math.round(sc)} single crochets`
  return `about ${parts.join(", ")} (give or take ${Math.round(100 * errorShare)} %)`
}

export function yarnText(estimate: Omit<YarnEstimate, "text">, skein: Skein | null): string {
  const { piece, pieces, total, skeins, reserveShare, left } = estimate
  const sentences = [`One piece takes ${amountText(piece)}.`]
  if (pieces.count > 1 || estimate.join || estimate.border)
    sentences.push(
      `${pieces.count === 1 ? "All of it" : `${pieces.count} pieces${withWords(estimate)}`} ${pieces.count === 1 ? "takes" : "take"} ${amountText(total)}.`,
    )
  if (skeins !== null && skein)
    sentences.push(
      `Buy ${skeins} ${skeins === 1 ? "skein" : "skeins"} of ${skein.grams} g, ${Math.round(100 * reserveShare)} % in reserve.`,
    )
  if (left)
    sentences.push(
      left.pieces === 0
        ? `The ${twoFigures(left.grams)} g left make no whole piece${left.roundsMore > 0 ? `, but its first ${left.roundsMore === 1 ? "round" : `${left.roundsMore} rounds`}` : ""}.`
        : `The ${twoFigures(left.grams)} g left make ${left.pieces === 1 ? "1 piece" : `${left.pieces} pieces`} for sure${left.roundsMore > 0 ? ` and the first ${left.roundsMore === 1 ? "round" : `${left.roundsMore} rounds`} of another` : ""}.`,
    )
  return sentences.join(" ")
}

function withWords({ join, border, tails }: Omit<YarnEstimate, "text">): string {
  const parts = [
    ...(join ? ["joins"] : []),
    ...(border ? ["the border"] : []),
    ...(tails ? ["tails"] : []),
  ]
  if (parts.length === 0) return ""
  const last = parts.pop()!
  return ` with ${parts.length > 0 ? `${parts.join(", ")} and ${last}` : last}`
}

export function twoFigures(value: number): string {
  if (value >= 100) return String(Math.round(value / 10) * 10)
  return value >= 10 ? String(Math.round(value)) : value.toFixed(1)
}
