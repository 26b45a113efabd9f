export * from "./change.ts"
export * from "./result.ts"
