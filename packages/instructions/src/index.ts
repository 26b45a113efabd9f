export * from "./base/reading.ts"
export { listed, ordinal } from "./base/wording.ts"
export * from "./readings/read-pattern.ts"
export { sameRound, type WriteOptions, writePattern } from "./write/write-pattern.ts"
