export { type ComputeOptions, computeNotebook } from "./compute.ts"
export {
  type RenderedNotebook,
  type RenderOptions,
  renderNotebook,
  renderPage,
} from "./page/render.ts"
export * from "./pattern-notebook.ts"
export * from "./result.ts"
