// What a reader changed and has not saved, kept in the browser: closing a tab, going back or a crash loses nothing. Each
// tab keeps a draft of its own, so that two of them do not write over one another.

/// <reference lib="dom" />

/** What is needed of the browser's stores; each of their calls may fail, as where a browser keeps nothing. */
export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">

export interface Stores {
  /** For all tabs, and for this tab alone: it outlives the page, as when a reader goes back to it. */
  readonly shared: Store
  readonly tab: Store
}

/** The browser's own; where it gives none, one that fails. */
export function browserStores(): Stores {
  return {
    get shared() {
      return globalThis.localStorage
    },
    get tab() {
      return globalThis.sessionStorage
    },
  }
}

export class Drafts {
  readonly #prefix: string
  readonly #own: string

  /**
   * @param page tells this page from others
   * @param id tells this opening of the page from others
   */
  constructor(
    private readonly stores: Stores,
    page: string,
    id: string,
  ) {
    this.#prefix = `roundwright-draft ${page} `
    this.#own = `${this.#prefix}${id}`
  }

  /** Keeps the text. @returns false where the browser does not */
  keep(markdown: string): boolean {
    try {
      this.stores.shared.setItem(this.#own, markdown)
      this.stores.tab.setItem(this.#prefix, this.#own)
      return true
    } catch {
      return false
    }
  }

  /** Nothing is unsaved any more. */
  drop(): void {
    this.#remove(this.#own)
  }

  /** What this tab had not saved when it last left the page, if anything; it is this opening's from now on. */
  takeBack(): string | null {
    try {
      const key = this.stores.tab.getItem(this.#prefix)
      return key === null || key === this.#own ? null : this.#take(key)
    } catch {
      return null
    }
  }

  /** Drafts of other openings: of a tab that was closed, or that is still open. */
  get others(): readonly Draft[] {
    try {
      const { shared } = this.stores
      return Array.from({ length: shared.length }, (_, index) => shared.key(index) ?? "")
        .filter((key) => key.startsWith(this.#prefix) && key !== this.#own)
        .sort()
        .map((key) => ({
          markdown: shared.getItem(key) ?? "",
          take: () => this.#take(key),
          throwAway: () => this.#remove(key),
        }))
    } catch {
      return []
    }
  }

  #take(key: string): string | null {
    const text = this.stores.shared.getItem(key)
    if (text !== null && this.keep(text)) this.#remove(key)
    return text
  }

  #remove(key: string): void {
    try {
      this.stores.shared.removeItem(key)
    } catch {
      // A store that cannot be reached holds nothing.
    }
  }
}

export interface Draft {
  readonly markdown: string
  /** The text, which is this opening's draft from now on; null where it is gone meanwhile. */
  take(): string | null
  throwAway(): void
}
