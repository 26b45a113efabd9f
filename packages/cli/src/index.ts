export * from "./files.ts"
export * from "./print-result.ts"
export * from "./run.ts"
export * from "./wrap.ts"
