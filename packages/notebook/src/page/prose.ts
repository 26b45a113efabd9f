// The prose of a notebook as HTML: Markdown through remark-rehype, cleaned last. Raw HTML is dropped
// by the translation, pictures give way to their description (a page loads nothing), and values
// stand in for the inline code they were computed from.

import { isCell } from "../cells.ts"
import { type MarkdownNode, type MarkdownTree, startOf } from "../markdown.ts"
import type { InlineValue } from "../result.ts"
import { withAnchors, withContents } from "./contents.ts"
import type { Html } from "./html.ts"
import { type ProseNode, stringify, translate } from "./translate.ts"

/** A run of prose: as markup, and its words alone. */
export interface ProseRun extends Html {
  readonly words: string
}

/** The prose in runs: run n stands before cell n, the last run after all cells. */
export async function proseRuns(
  tree: MarkdownTree,
  values: readonly InlineValue[],
): Promise<readonly ProseRun[]> {
  const byPlace = new Map(values.map((value) => [`${value.line}:${value.column}`, value]))
  const mark = "hr" as const
  // A cell becomes a rule whose place in the list of children tells where the cell stands; rules of
  // the writer are told apart by identity of their place.
  const cellLines = new Set<number>()
  const prepared = {
    ...tree,
    children: tree.children.map((node) => {
      if (!isCell(node)) return withValues(node, byPlace)
      cellLines.add(startOf(node).line)
      return { type: "thematicBreak" as const, position: node.position }
    }),
  } as MarkdownTree
  const cleaned = await translate.run(prepared)
  const runs: (typeof cleaned.children)[] = [[]]
  for (const child of cleaned.children) {
    const isMark =
      child.type === "element" &&
      child.tagName === mark &&
      cellLines.has(child.position?.start.line ?? 0)
    if (isMark) runs.push([])
    else runs.at(-1)!.push(child)
  }
  runs.flat().forEach(reachable)
  withAnchors(runs.flat())
  const [first] = runs
  if (first) withContents(first, runs.flat())
  return runs.map((children) => ({
    markup: stringify.stringify({ type: "root", children }).trim(),
    words: wordsIn(children),
  }))
}

/** What is wider than a phone scrolls by itself: keys must reach it to do so. */
function reachable(node: ProseNode): void {
  if (node.type !== "element") return
  if (node.tagName === "pre" || node.tagName === "table") node.properties.tabIndex = 0
  node.children.forEach(reachable)
}

/** All text, as a browser tells it of an element. */
function wordsIn(nodes: readonly ProseNode[]): string {
  return nodes
    .map((node) =>
      node.type === "text" ? node.value : "children" in node ? wordsIn(node.children) : "",
    )
    .join("")
}

/** The node with values, and pictures, replaced. */
function withValues(node: MarkdownNode, values: ReadonlyMap<string, InlineValue>): MarkdownNode {
  if (node.type === "image" || node.type === "imageReference")
    return { type: "text", value: node.alt ? `[picture: ${node.alt}]` : "[picture]" }
  if (node.type === "inlineCode") {
    const { line, column } = startOf(node)
    const value = values.get(`${line}:${column}`)
    return value ? valueNode(value) : node
  }
  if (!("children" in node)) return node
  const children = (node.children as MarkdownNode[]).map((child) => withValues(child, values))
  return { ...node, children } as MarkdownNode
}

function valueNode(value: InlineValue): MarkdownNode {
  const failed = value.problem !== null
  const said = failed ? `[no value: ${value.problem.message}]` : (value.value ?? "")
  const title = failed ? value.problem.hint : value.expression
  return {
    type: "emphasis",
    data: {
      hName: "span",
      hProperties: { className: failed ? ["value", "failed"] : ["value"], title },
    },
    children: [{ type: "text", value: said }],
  }
}
