// Markdown to a tree in which every node has its place, and what the notebook needs of such trees.
// Parser: unified and remark (CommonMark with the tables and footnotes of GitHub's dialect).

import remarkGfm from "remark-gfm"
import remarkParse from "remark-parse"
import { unified } from "unified"

const parser = unified().use(remarkParse).use(remarkGfm).freeze()

export type MarkdownTree = ReturnType<typeof parser.parse>
export type MarkdownNode = MarkdownTree["children"][number]

/** Without a byte order mark, and without characters that HTML cannot hold. */
export function cleanText(markdown: string): string {
  return markdown.replace(/^\uFEFF/, "").replace(/\0/g, "\uFFFD")
}

/** @throws RangeError when the text is nested too deep for the parser */
export function parseMarkdown(text: string): MarkdownTree {
  return parser.parse(text)
}

/** Calls `visit` for every node in document order, without recursion: depth is the writer's. */
export function walkMarkdown(tree: MarkdownTree, visit: (node: MarkdownNode) => void): void {
  const waiting: MarkdownNode[] = [...tree.children].reverse()
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    visit(node)
    if ("children" in node) waiting.push(...([...node.children] as MarkdownNode[]).reverse())
  }
}

/** The text of a node and all inside it. `replace` may give another text for a node. */
export function plainText(
  nodes: readonly MarkdownNode[],
  replace: (node: MarkdownNode) => string | undefined = () => undefined,
): string {
  return nodes
    .map((node) => {
      const replaced = replace(node)
      if (replaced !== undefined) return replaced
      if ("value" in node) return node.type === "html" ? "" : node.value
      return "children" in node ? plainText(node.children as MarkdownNode[], replace) : ""
    })
    .join("")
}

/** Line and column where a node starts, from 1. */
export function startOf(node: MarkdownNode): { readonly line: number; readonly column: number } {
  const start = node.position?.start
  return { line: start?.line ?? 1, column: start?.column ?? 1 }
}
