export * from "./check.ts"
export * from "./laid-out.ts"
export * from "./result.ts"
export * from "./words.ts"
