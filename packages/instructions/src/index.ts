export * from "./reading.ts"
