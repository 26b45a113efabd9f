// A pattern's gauge in another maker's hand: what of it still holds when she names her own hook, yarn, swatch or piece.
//
// What was measured holds for the yarn it was measured in and goes with the hook by hook-law.ts. So a hook given alone keeps
// the yarn, and a swatch stays under another hook; a swatch or a piece of her own goes before the pattern's; another yarn
// leaves of the pattern only its hook; and naming what the pattern names changes nothing.

import type { GaugeInput, PieceSize, Swatch } from "./gauge.ts"
import { hookFactor } from "./hook-law.ts"

/** The pattern's gauge with everything that the hand tells put in its place. Nothing of either is changed. */
export function inHand(own: GaugeInput, hand: GaugeInput): GaugeInput {
  const yarn = yarnOf(saysYarn(hand) ? hand : own, own)
  const holds = hand.swatches.length === 0 && !isOtherYarn(own, hand)
  const swatches = holds ? own.swatches : hand.swatches
  const ownPieces = hand.pieces === undefined && holds
  const pieces = ownPieces ? own.pieces : hand.pieces
  const hookMm = hand.hookMm ?? own.hookMm
  const made = own.gaugeHookMm ?? own.hookMm
  // Her own piece brings every size to hers, and so the pattern's swatch tells proportions alone.
  const follows = holds && (ownPieces || pieces === undefined)
  const gaugeHookMm = follows && made !== hookMm ? made : undefined
  const skewDeg = hand.skewDeg ?? own.skewDeg
  const { scWidthMm, leanShare } = own
  const sized = holds && ownPieces && scWidthMm !== undefined
  return {
    swatches,
    ...yarn,
    ...(hookMm === undefined ? {} : { hookMm }),
    ...(gaugeHookMm === undefined ? {} : { gaugeHookMm }),
    ...(pieces === undefined ? {} : { pieces }),
    ...(sized ? { scWidthMm } : {}),
    ...(skewDeg === undefined ? {} : { skewDeg }),
    ...(leanShare === undefined ? {} : { leanShare }),
  }
}

/** Whether the hand names a yarn that is not the pattern's; a pattern that names none may have been meant for it. */
export function isOtherYarn(own: GaugeInput, hand: GaugeInput): boolean {
  if (!saysYarn(hand) || !saysYarn(own)) return false
  const [theirs, hers] = [yarnOf(own, own), yarnOf(hand, own)]
  return (
    theirs.yarnWeight !== hers.yarnWeight ||
    theirs.threadSize !== hers.threadSize ||
    theirs.strands !== hers.strands
  )
}

function saysYarn({ yarnWeight, threadSize, strands }: GaugeInput): boolean {
  return [yarnWeight, threadSize, strands].some((one) => one !== undefined)
}

/** The yarn said; strands said alone are strands of the pattern's yarn. Thread has the weight 0, named or not. */
function yarnOf(said: GaugeInput, own: GaugeInput) {
  const alone = said.yarnWeight === undefined && said.threadSize === undefined
  const { yarnWeight, threadSize } = alone ? own : said
  const strands = said.strands === 1 ? undefined : said.strands
  const weight = threadSize === undefined ? yarnWeight : 0
  return {
    ...(weight === undefined ? {} : { yarnWeight: weight }),
    ...(threadSize === undefined ? {} : { threadSize }),
    ...(strands === undefined ? {} : { strands }),
  }
}

/** The same with what was measured on `gaugeHookMm` brought to `hookMm`, and what to say of it. */
export function broughtToHook(input: GaugeInput): { input: GaugeInput; notes: string[] } {
  const { gaugeHookMm, ...rest } = input
  const { hookMm } = rest
  if (gaugeHookMm === undefined || hookMm === undefined || gaugeHookMm === hookMm)
    return { input: rest, notes: [] }
  const factor = hookFactor(rest, gaugeHookMm, hookMm)
  const yarnless = rest.yarnWeight === undefined && rest.threadSize === undefined
  const brought = {
    ...rest,
    swatches: rest.swatches.map((swatch) => scaledSwatch(swatch, factor)),
    ...(rest.pieces && { pieces: rest.pieces.map((piece) => scaledPiece(piece, factor)) }),
    ...(rest.scWidthMm === undefined ? {} : { scWidthMm: factor * rest.scWidthMm }),
    ...(yarnless ? { yarnOfHookMm: gaugeHookMm } : {}),
  }
  const share = Math.round(100 * Math.abs(factor - 1))
  const way = factor > 1 ? "larger" : "smaller"
  const note = `With a ${hookMm} mm hook instead of ${gaugeHookMm} mm every stitch is taken ${share} % ${way}, as of the same yarn.`
  return { input: brought, notes: [note] }
}

function scaledPiece(piece: PieceSize, factor: number): PieceSize {
  return { ...piece, mm: factor * piece.mm }
}

/** A swatch drawn larger or smaller, its proportions kept. */
export function scaledSwatch(swatch: Swatch, factor: number): Swatch {
  const { widthMm, heightMm } = swatch
  return {
    ...swatch,
    ...(widthMm === undefined ? {} : { widthMm: factor * widthMm }),
    ...(heightMm === undefined ? {} : { heightMm: factor * heightMm }),
  }
}
