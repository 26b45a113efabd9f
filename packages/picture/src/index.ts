export * from "./asked.ts"
export * from "./decoded.ts"
export * from "./ellipse.ts"
export {
  type FitOptions,
  type FittedGauge,
  type FittedStitch,
  fitGauge,
  type MeasuredWidth,
  type PredictedSize,
} from "./gauge/fit-gauge.ts"
export * from "./grey.ts"
export * from "./homography.ts"
export { type KnownLength, readKnownLength } from "./known-length.ts"
export * from "./measure.ts"
export { mergeLines } from "./merge-lines.ts"
export { type Outline, polygonContour } from "./outline.ts"
export * from "./published.ts"
export {
  countsByHand,
  isMeasurementLine,
  type MeasurementLines,
  type RingLine,
  readLines,
} from "./read-lines.ts"
export {
  type RebuildOptions,
  type Rebuilt,
  type RebuiltRing,
  rebuildRounds,
} from "./rebuild/rebuild.ts"
export { type SeenPiece, seenOfLines } from "./rebuild/seen-of-lines.ts"
export { type RebuildKind, rebuildKinds, type SeenRing } from "./rebuild/seen-ring.ts"
export * from "./shown.ts"
export { stripOf } from "./strip.ts"
export * from "./ticks.ts"
export { samplesRound } from "./unroll.ts"
export { type LineOptions, writeLines } from "./write-lines.ts"
