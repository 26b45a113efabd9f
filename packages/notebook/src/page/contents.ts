// Anchors of headings, so that a place in a page can be led to, and the list of contents made of them. Both are put in
// after the prose was cleaned. The sign of an anchor is drawn by the look of the page and is no word of the text.

import type { ProseElement, ProseNode } from "./translate.ts"

/** Fewer headings are seen at a glance. */
const fewestListed = 3

/** Ids begin so, lest a heading takes the place of an element of the page that is found by its id. */
const prefix = "part-"

const levels: ReadonlySet<string> = new Set(["h1", "h2", "h3", "h4"])

/** Gives every heading at the margin an id, and a link to itself that is seen when it is pointed at. */
export function withAnchors(nodes: readonly ProseNode[]): void {
  const taken = new Map<string, number>()
  for (const node of nodes) {
    if (!isHeading(node)) continue
    const plain = slug(wordsOf(node))
    const before = taken.get(plain) ?? 0
    taken.set(plain, before + 1)
    const id = `${prefix}${plain}${before > 0 ? `-${before + 1}` : ""}`
    node.properties = { ...node.properties, id }
    node.children.push(
      anchor({ className: ["anchor"], href: `#${id}`, ariaLabel: "Link to this part" }, []),
    )
  }
}

/** Puts the list of second headings behind the first paragraph. */
export function withContents(first: ProseNode[], nodes: readonly ProseNode[]): void {
  const listed = nodes.filter(
    (node): node is ProseElement => isHeading(node) && node.tagName === "h2",
  )
  if (listed.length < fewestListed) return
  const items = listed.map((heading) =>
    made("li", {}, [
      anchor({ href: `#${String(heading.properties.id)}` }, [
        { type: "text", value: wordsOf(heading) },
      ]),
    ]),
  )
  const nav = made("nav", { className: ["contents"], ariaLabel: "Contents" }, [
    made("ol", {}, items),
  ])
  const at = first.findIndex((node) => node.type === "element" && node.tagName === "p")
  first.splice(at + 1, 0, nav)
}

function isHeading(node: ProseNode): node is ProseElement {
  return node.type === "element" && levels.has(node.tagName)
}

function anchor(
  properties: ProseElement["properties"],
  children: ProseElement["children"],
): ProseElement {
  return made("a", properties, children)
}

function made(
  tagName: string,
  properties: ProseElement["properties"],
  children: ProseElement["children"],
): ProseElement {
  return { type: "element", tagName, properties, children }
}

function wordsOf(node: ProseNode): string {
  if (node.type === "text") return node.value
  return "children" in node ? node.children.map((child) => wordsOf(child)).join("") : ""
}

/** `Side and corner heights` -> `side-and-corner-heights`. */
function slug(words: string): string {
  const plain = words
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
  return plain.slice(0, 60) || "heading"
}
