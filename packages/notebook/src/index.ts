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
export { measureCell, ringsToShow } from "./picture/measure-cell.ts"
export type {
  PictureAnswer,
  PictureFault,
  PictureFigures,
  PictureFound,
} from "./picture/picture-answer.ts"
export { pictureFile } from "./picture/picture-svg.ts"
export type { PictureOf } from "./picture/run-pictures.ts"
export * from "./result.ts"
export * from "./written-cell.ts"
