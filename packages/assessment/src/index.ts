export * from "./result.ts"
