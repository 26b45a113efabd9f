export * from "./grey.ts"
export * from "./measure.ts"
export * from "./ellipse.ts"
export * from "./homography.ts"
