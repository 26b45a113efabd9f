// The files a Markdown text links to.

import { cleanText, parseMarkdown, walkMarkdown } from "./markdown.ts"

/** Addresses of links in the order of the text, each once, without `./` and what follows a `#`. */
export function linksIn(markdown: string): readonly string[] {
  const links = new Set<string>()
  walkMarkdown(parseMarkdown(cleanText(markdown)), (node) => {
    if (node.type === "link") links.add(withoutFragment(node.url).replace(/^\.\//, ""))
  })
  return [...links]
}

/** An address without what follows its `#`. */
function withoutFragment(address: string): string {
  return address.split("#", 1)[0]!
}
