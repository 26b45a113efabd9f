// Finding the cells of a notebook: fenced blocks at the margin whose first word is a kind of cell,
// with their options checked.

import { readInfo, readKind } from "./info.ts"
import { type MarkdownNode, type MarkdownTree, startOf, walkMarkdown } from "./markdown.ts"
import { checkOptions, fenceForms } from "./options.ts"
import type { CellKind, NotebookProblem, WrittenCell } from "./written-cell.ts"

type Fence = Extract<MarkdownNode, { type: "code" }>

/** @param markdown the text the tree was parsed from, to find the column of a cell's options */
export function findCells(
  tree: MarkdownTree,
  markdown: string,
): { readonly cells: readonly WrittenCell[]; readonly strays: readonly NotebookProblem[] } {
  const lines = markdown.split(/\r\n|\r|\n/)
  const cells: WrittenCell[] = []
  const strays: NotebookProblem[] = []
  const atMargin = new Set<unknown>(tree.children)
  walkMarkdown(tree, (node) => {
    if (node.type !== "code" || !node.lang) return
    const kind = readKind(node.lang)
    if (!kind) return
    if ("meant" in kind) strays.push(misspelt(node, kind.meant))
    else if (!atMargin.has(node)) strays.push(indented(node))
    else cells.push(writtenCell(node, kind.kind, cells.length, lines))
  })
  return { cells, strays }
}

/** The cell's number for a node of the tree, or undefined for any other node. */
export function isCell(node: MarkdownNode): node is Fence {
  if (node.type !== "code" || !node.lang) return false
  const kind = readKind(node.lang)
  return kind !== null && "kind" in kind
}

function writtenCell(
  node: Fence,
  kind: CellKind,
  index: number,
  lines: readonly string[],
): WrittenCell {
  const { line } = startOf(node)
  const info = node.meta ?? ""
  const written = lines[line - 1] ?? ""
  const column = Math.max(0, info === "" ? 0 : written.lastIndexOf(info)) + 1
  const problems: NotebookProblem[] = []
  const fault = (at: number, length: number, message: string) =>
    problems.push({
      severity: "error",
      code: "bad-option",
      cell: index,
      line,
      column: column + at,
      length: Math.max(1, length),
      message,
      hint: `This cell is opened with ${fenceForms[kind]}.`,
    })
  const reading = readInfo(info)
  for (const { text, at, why } of reading.faults)
    fault(at, text.length, `"${clip(text)}" after ${kind} ${why}.`)
  const given = new Map(reading.options.map((option) => [option.key, option.value]))
  const checked = checkOptions(kind, given)
  if ("faults" in checked)
    for (const { key, message } of checked.faults) {
      const option = reading.options.find((one) => one.key === key)
      fault(option?.at ?? 0, option?.length ?? info.length, clip(message, 200))
    }
  const options = problems.length === 0 && "options" in checked ? checked.options : null
  return { index, kind, line, info, text: node.value, options, problems }
}

function misspelt(node: Fence, meant: CellKind): NotebookProblem {
  return {
    ...placed(node),
    severity: "warning",
    code: "unknown-cell",
    message: `"${node.lang}" is no kind of cell; the block is shown as it stands.`,
    hint: `Perhaps ${meant} was meant.`,
  }
}

function indented(node: Fence): NotebookProblem {
  return {
    ...placed(node),
    severity: "warning",
    code: "cell-not-at-margin",
    message: `A ${node.lang} cell inside a list or a quote is not computed.`,
    hint: "Put it at the left margin, outside the list or quote.",
  }
}

function placed(node: Fence) {
  return { cell: null, ...startOf(node), length: (node.lang ?? "").length + 3 }
}

function clip(text: string, most = 60): string {
  return text.length > most ? `${text.slice(0, most)}...` : text
}
