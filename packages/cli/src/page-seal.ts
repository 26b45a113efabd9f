// The seal of a page that this tool wrote: the digest of all else in the file, and what the page was made from. A page
// that somebody changed, or that a browser saved, has none that holds, and is theirs.

import { createHash } from "node:crypto"

const mark = '<meta name="generator" content="Roundwright">'
const form = /<meta name="roundwright-seal" content="([0-9a-f]{12}) ([0-9a-f]{64})">/
/** The head of a page is shorter than this up to its seal. */
const headLength = 4096

/** Tells one source of pages from another without naming it. */
export function sourceId(source: string): string {
  return sha256(source).slice(0, 12)
}

/** The page with its seal. A text without our mark stays as it is. */
export function sealPage(html: string, source: string): string {
  const id = sourceId(source)
  const seal = `<meta name="roundwright-seal" content="${id} ${sha256(`${id}\n${html}`)}">`
  return html.replace(mark, mark + seal)
}

/** Whose a page is: `foreign` is none of ours, `unsealed` one of an earlier version or that a browser has saved. */
export function sealOf(text: string): "foreign" | "unsealed" | "changed" | { readonly id: string } {
  const head = text.slice(0, headLength)
  if (!head.includes(mark)) return "foreign"
  const found = form.exec(head)
  if (!found) return "unsealed"
  const [seal, id, digest] = found
  return sha256(`${id}\n${text.replace(seal, "")}`) === digest ? { id: id! } : "changed"
}

function sha256(text: string): string {
  return createHash("sha256").update(text).digest("hex")
}
