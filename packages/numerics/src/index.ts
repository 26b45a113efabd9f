export * from "./error.ts"
