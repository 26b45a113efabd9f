// Saving what a reader made, as a notebook or as a page, and asking them before they leave without.

/// <reference lib="dom" />

import type { Bar } from "./bar.ts"
import type { Book } from "./book.ts"
import type { Known } from "./known.ts"
import { download, fileName, pageFile } from "./save.ts"

export class Saving {
  #saved: string

  constructor(
    private readonly script: string,
    private readonly book: Book,
    private readonly known: Known,
    private readonly bar: Bar,
  ) {
    this.#saved = book.markdown
    window.addEventListener("beforeunload", (event) => {
      if (book.markdown !== this.#saved) event.preventDefault()
    })
  }

  notebook(): void {
    this.#save("md", "text/markdown", this.book.markdown)
  }

  /** @param body markup of the page's main part, as it stands now */
  page(body: string): void {
    const { markdown, original, editedCells } = this.book
    const source = {
      notebook: markdown,
      ...(editedCells.length > 0 ? { original } : {}),
      ...this.known.carried(),
    }
    this.#save("html", "text/html", pageFile(this.script, body, source))
  }

  #save(ending: string, type: string, text: string): void {
    const name = `${fileName(document.title)}.${ending}`
    download(name, type, text)
    this.#saved = this.book.markdown
    this.bar.speak(`Saved as ${name}.`)
  }
}
