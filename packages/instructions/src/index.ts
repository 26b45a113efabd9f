export { type ProblemCode, problemCodes } from "./base/problem-codes.ts"
export * from "./base/reading.ts"
export { listed, ordinal } from "./base/wording.ts"
export * from "./readings/read-pattern.ts"
export { defaultStyle, type HouseStyle } from "./write/house-style.ts"
export { sameRound } from "./write/same-round.ts"
export { withStarts } from "./write/with-starts.ts"
export {
  type RoundsOptions,
  type WriteOptions,
  writePattern,
  writeRounds,
} from "./write/write-pattern.ts"
