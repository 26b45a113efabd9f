export * from "./read-pattern.ts"
export * from "./reading.ts"
