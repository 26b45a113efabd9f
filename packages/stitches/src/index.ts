export * from "./gauge.ts"
export * from "./kinds.ts"
