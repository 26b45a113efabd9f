// What a page knows of its picture cells: only pages that have some carry the code that measures.

export interface PictureActions {
  /** The lines of the cell, and taking changed ones. */
  text(): string
  set(text: string): void
  speak(text: string): void
  /** What stands in the cell now on a page without its script. */
  shown(markup: string): void
}

export interface PicturePanelKind {
  /** The lines were changed. */
  show(): void
}

/** @param script the text of the page's own script, for a worker */
export type OpenPicturePanel = (
  section: HTMLElement,
  script: string,
  actions: PictureActions,
) => PicturePanelKind
