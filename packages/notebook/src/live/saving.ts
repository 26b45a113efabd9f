// Saving what a reader made, as a notebook or as a page; until then it is kept in the browser, and they are asked before
// they leave. A browser does not tell whether a download was kept or called off: so only the reader can say that it is saved.

/// <reference lib="dom" />

import type { Bar } from "./bar.ts"
import type { Book } from "./book.ts"
import type { Drafts } from "./drafts.ts"
import type { Known } from "./known.ts"
import { pageWords } from "./page-words.ts"
import { download, fileName, pageFile } from "./save.ts"
import type { StillPage } from "./still-page.ts"

export class Saving {
  #saved: string
  #keptBefore = true

  constructor(
    private readonly script: string,
    private readonly book: Book,
    private readonly known: Known,
    private readonly bar: Bar,
    private readonly drafts: Drafts,
  ) {
    this.#saved = book.markdown
    window.addEventListener("beforeunload", (event) => {
      if (this.#unsaved) event.preventDefault()
    })
  }

  /** Keeps what was just changed until it is saved. */
  keepDraft(): void {
    if (!this.#unsaved) {
      this.drafts.drop()
      return
    }
    const kept = this.drafts.keep(this.book.markdown)
    if (!kept && this.#keptBefore) this.bar.notice(pageWords.noDrafts, [])
    this.#keptBefore = kept
  }

  notebook(): void {
    this.#save("md", "text/markdown", this.book.markdown)
  }

  /** @param written the page's main part as it stands now, and the digests of its prose */
  page({ body, prose }: ReturnType<StillPage["written"]>): void {
    const { markdown, original, editedCells } = this.book
    const source = {
      notebook: markdown,
      ...(editedCells.length > 0 ? { original } : {}),
      prose,
      ...this.known.carried(),
    }
    this.#save("html", "text/html", pageFile(this.script, body, source))
  }

  get #unsaved(): boolean {
    return this.book.markdown !== this.#saved
  }

  #save(ending: string, type: string, text: string): void {
    const name = `${fileName(document.title)}.${ending}`
    const { markdown } = this.book
    download(name, type, text)
    const words = pageWords.handedOver(name)
    this.bar.speak(words)
    if (!this.#unsaved) return
    this.bar.notice(words, [
      [
        pageWords.isSaved,
        () => {
          this.#saved = markdown
          this.keepDraft()
          this.bar.speak(pageWords.saved(name))
        },
      ],
    ])
  }
}
