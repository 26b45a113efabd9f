export * from "./grey.ts"
export * from "./measure.ts"
