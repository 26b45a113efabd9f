// The page that leads to others: of each notebook its title and its first paragraph, where it answers
// the question it asks, with the values computed. A static page.

import { createHash } from "node:crypto"
import type { MarkdownTree } from "../markdown.ts"
import type { NotebookResult } from "../result.ts"
import { contentPolicy, pageDocument } from "./document.ts"
import { element, type Html, together } from "./html.ts"
import { proseRuns } from "./prose.ts"
import { pageStyle } from "./style.ts"

export interface IndexEntry {
  /** File name of the page, beside the index. */
  readonly file: string
  /** The notebook it was made from, computed. */
  readonly notebook: NotebookResult
}

/** What the index says before it lists the pages. */
export interface IndexHead {
  readonly title: string
  /** Computed; its own heading is left out. */
  readonly introduction?: NotebookResult
}

/** The index of some pages, in the order given. The same notebooks give the same bytes. */
export async function renderIndex(
  { title, introduction }: IndexHead,
  entries: readonly IndexEntry[],
): Promise<string> {
  const items: Html[] = []
  for (const { file, notebook } of entries)
    items.push(
      element(
        "li",
        {},
        element("h2", {}, element("a", { href: `./${encodeURIComponent(file)}` }, notebook.title)),
        await proseOf(notebook, (paragraphs) => paragraphs.slice(0, 1)),
      ),
    )
  const style = `${pageStyle}\n${indexStyle}`
  const hash = createHash("sha256").update(style).digest("base64")
  return pageDocument({
    title,
    body: [
      element("h1", {}, title),
      introduction ? await proseOf(introduction, (paragraphs) => paragraphs) : null,
      element("ul", { class: "contents" }, items),
    ],
    language: "en",
    style,
    policy: contentPolicy({ style: hash }),
  })
}

async function proseOf(
  { tree, values }: NotebookResult,
  choose: (paragraphs: MarkdownTree["children"]) => MarkdownTree["children"],
): Promise<Html> {
  const children = choose(tree.children.filter(({ type }) => type === "paragraph"))
  const runs = await proseRuns({ ...tree, children }, values)
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
