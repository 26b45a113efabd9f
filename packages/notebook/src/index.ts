export * from "./blank-notebook.ts"
export { type ComputeOptions, computeNotebook } from "./compute.ts"
export { linksIn } from "./links.ts"
export { type IndexEntry, type IndexHead, renderIndex } from "./page/index-page.ts"
export {
  type RenderedNotebook,
  type RenderNotebookOptions,
  type RenderOptions,
  renderLivePage,
  renderNotebook,
  renderPage,
} from "./page/render.ts"
export * from "./pattern-notebook.ts"
export { type PictureSvgOptions, pictureSvg } from "./picture/picture-svg.ts"
export * from "./result.ts"
export * from "./written-cell.ts"
