// The page that leads to others: of each notebook its title and its first paragraph, where it answers
// the question it asks, with the values computed. A static page.

import { createHash } from "node:crypto"
import { type ComputeOptions, computeNotebook } from "../compute.ts"
import type { MarkdownTree } from "../markdown.ts"
import type { NotebookResult } from "../result.ts"
import { contentPolicy, pageDocument } from "./document.ts"
import { element, type Html, together } from "./html.ts"
import { proseRuns } from "./prose.ts"
import { pageStyle } from "./style.ts"

export interface IndexEntry {
  /** File name of the page, beside the index. */
  readonly file: string
  /** The notebook it was made from. */
  readonly markdown: string
}

/**
 * The index of some pages, in the order given. The same notebooks give the same bytes.
 * @param title heading of the index
 */
export async function renderIndex(
  title: string,
  entries: readonly IndexEntry[],
  options: ComputeOptions = {},
): Promise<string> {
  const items: Html[] = []
  for (const { file, markdown } of entries) {
    const result = await computeNotebook(markdown, { square: () => null, ...options })
    items.push(
      element(
        "li",
        {},
        element("h2", {}, element("a", { href: `./${encodeURIComponent(file)}` }, result.title)),
        await firstParagraph(result),
      ),
    )
  }
  const style = `${pageStyle}\n${indexStyle}`
  const hash = createHash("sha256").update(style).digest("base64")
  return pageDocument({
    title,
    body: [element("h1", {}, title), element("ul", { class: "contents" }, items)],
    language: "en",
    style,
    policy: contentPolicy({ style: hash }),
  })
}

async function firstParagraph({ tree, values }: NotebookResult): Promise<Html> {
  const children = tree.children.filter(({ type }) => type === "paragraph").slice(0, 1)
  const runs = await proseRuns({ ...tree, children } as MarkdownTree, values)
  return together(runs)
}

const indexStyle = `
.contents { list-style: none; padding: 0; margin: 0; }
.contents > li { margin: 0; padding: 1.6rem 0 0.6rem; border-top: 1px solid var(--line); }
.contents h2 { margin: 0 0 0.6rem; }
.contents a { text-decoration-color: var(--line); }
.contents a:hover { text-decoration-color: var(--accent); }
.contents a:focus-visible { outline: 2px solid var(--accent); outline-offset: 3px; }
`.trim()
