// Writing HTML: text and attributes are escaped where they are put in, and only what this made (or
// what was cleaned elsewhere) counts as markup.

/** Markup that is safe to put into a page. */
export interface Html {
  readonly markup: string
}

export type Child = Html | string | number | null | undefined | readonly Child[]
export type Attributes = Readonly<Record<string, string | number | boolean | null | undefined>>

/** Elements that have no end tag. */
const empty: ReadonlySet<string> = new Set(["meta", "br", "hr", "col"])

/** An element; attributes that are null, undefined or false are left out. */
export function element(tag: string, attributes: Attributes, ...children: Child[]): Html {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null && value !== undefined && value !== false)
    .map(([name, value]) =>
      value === true ? ` ${name}` : ` ${name}="${escapeText(String(value))}"`,
    )
    .join("")
  const open = `<${tag}${written}>`
  return { markup: empty.has(tag) ? open : `${open}${together(children).markup}</${tag}>` }
}

/** Children one after another, texts escaped. */
export function together(children: Child): Html {
  return { markup: markupOf(children) }
}

/** Takes over markup that was cleaned or drawn elsewhere. */
export function trusted(markup: string): Html {
  return { markup }
}

export function escapeText(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;")
}

function markupOf(child: Child): string {
  if (child === null || child === undefined) return ""
  if (typeof child === "string" || typeof child === "number") return escapeText(String(child))
  if (Array.isArray(child)) return child.map(markupOf).join("")
  return (child as Html).markup
}
