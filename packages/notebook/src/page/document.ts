// The whole file around the body of a page: head, policy, style, and for a live page its script and
// the source of the notebook. Made from texts alone, so that a page can write itself anew.

import { type Child, element, type Html, trusted } from "./html.ts"

export interface PageFrame {
  readonly title: string
  readonly body: Child
  readonly language: string
  readonly style: string
  /** The content policy; it names the hashes of style and script. */
  readonly policy: string
  /** Absent from a static page. */
  readonly live?: {
    readonly script: string
    readonly source: string
    /** Notices of all whose code is in the script. */
    readonly licences: string
  }
}

/** Class of the element that holds the notices. */
export const licencesClass = "licences"

/** Id of the element that holds the notebook's source in a live page, as JSON. */
export const sourceId = "notebook-source"

export function pageDocument(frame: PageFrame): string {
  const head: Html[] = [
    element("meta", { charset: "utf-8" }),
    element("meta", { "http-equiv": "Content-Security-Policy", content: frame.policy }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("meta", { name: "referrer", content: "no-referrer" }),
    element("meta", { name: "generator", content: "Roundwright" }),
    element("title", {}, frame.title),
    element("style", {}, { markup: frame.style }),
  ]
  const page = element(
    "html",
    { lang: frame.language },
    element("head", {}, head),
    element(
      "body",
      {},
      element("main", {}, frame.body),
      element(
        "footer",
        {},
        element(
          "p",
          {},
          "Dotted figures are computed from the patterns they speak of. Sizes are estimates; your own swatch beats them.",
        ),
        frame.live ? licencesPart(frame.live.licences) : null,
      ),
      frame.live ? liveParts(frame.live) : null,
    ),
  )
  return `<!doctype html>\n${page.markup}\n`
}

/**
 * @param hashes base64 of the SHA-256 of the style and, in a live page, of the script; whether pictures stand in it. A live page may
 * start a worker from its own text and run the solver's WebAssembly, and nothing else ('wasm-unsafe-eval' admits no
 * text as script).
 */
export function contentPolicy(hashes: {
  style: string
  script?: string
  pictures?: boolean
}): string {
  const parts = ["default-src 'none'", `style-src 'sha256-${hashes.style}'`]
  // Pictures stand in the page itself; a figure becomes a PNG by way of an image made of its own drawing.
  if (hashes.pictures === true || hashes.script !== undefined) parts.push("img-src data:")
  if (hashes.script !== undefined)
    parts.push(`script-src 'sha256-${hashes.script}' 'wasm-unsafe-eval'`, "worker-src blob:")
  return [...parts, "base-uri 'none'", "form-action 'none'"].join("; ")
}

/** JSON in which no character can end the element it stands in. */
export function jsonForPage(value: unknown): string {
  return JSON.stringify(value).replace(
    /[<>&\u2028\u2029]/g,
    (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, "0")}`,
  )
}

/** Folded away at the page's end: they must go along, and hardly anybody reads them. */
function licencesPart(licences: string): Child {
  return element(
    "details",
    { class: licencesClass },
    element("summary", {}, "Licences of the software in this page"),
    // A line break at the start of a pre is dropped by whoever reads the page.
    element("pre", {}, licences.trim()),
  )
}

function liveParts({ script, source }: NonNullable<PageFrame["live"]>): Child {
  return [
    element("script", { type: "application/json", id: sourceId }, trusted(source)),
    element("script", {}, trusted(script)),
  ]
}
