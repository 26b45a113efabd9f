export * from "./read-pattern.ts"
export * from "./reading.ts"
export { listed, ordinal } from "./wording.ts"
export { sameRound, type WriteOptions, writePattern } from "./write-pattern.ts"
