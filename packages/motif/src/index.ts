export * from "./model.ts"
