// A computed notebook to one self-contained HTML file: style and drawings inside, nothing fetched, and
// a policy in the file that forbids it. Static pages hold no script; live ones hold exactly one, and
// are complete without it.

import { createHash } from "node:crypto"
import { readFile } from "node:fs/promises"
import { carriedAnswers } from "../carried.ts"
import { type ComputeOptions, computeNotebook } from "../compute.ts"
import { pageScript } from "../live/bundle.ts"
import { livePictureStyle } from "../live/picture/style.ts"
import { liveStyle } from "../live/style.ts"
import { cleanText } from "../markdown.ts"
import type { NotebookResult } from "../result.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { contentPolicy, jsonForPage, pageDocument } from "./document.ts"
import { bodyHtml } from "./parts.ts"
import { pictureStyle } from "./picture-style.ts"
import { proseRuns } from "./prose.ts"
import { textDigest } from "./text-digest.ts"
import { wholeStyle } from "./whole-style.ts"

/** Beside `src` and `dist`; `pnpm notices` writes it. */
const licencesFile = new URL("../../licences.txt", import.meta.url)

export interface RenderOptions extends ComputeOptions {
  /** Language of the text, for the page's `lang`; `en` when absent. */
  readonly language?: string
}

export interface RenderNotebookOptions extends RenderOptions {
  /** True: the page can be edited and computes itself anew. False when absent. */
  readonly live?: boolean
}

export interface RenderedNotebook {
  readonly html: string
  readonly title: string
  readonly problems: readonly NotebookProblem[]
}

/** Computes and renders a notebook. The same text gives the same bytes; never throws on any text. */
export async function renderNotebook(
  markdown: string,
  options: RenderNotebookOptions = {},
): Promise<RenderedNotebook> {
  const result = await computeNotebook(markdown, options)
  const html = options.live
    ? await renderLivePage(result, markdown, options)
    : await renderPage(result, options)
  return { html, title: result.title, problems: result.problems }
}

/** The static page of a notebook that is computed already. */
export async function renderPage(
  result: NotebookResult,
  options: RenderOptions = {},
): Promise<string> {
  const pictures = holdsPictures(result)
  const style = styleOf(pictures)
  return pageDocument({
    title: result.title,
    body: await bodyHtml(result, false),
    language: options.language ?? "en",
    style,
    policy: contentPolicy({ style: sha256(style), pictures }),
  })
}

/** The live page of a notebook that is computed already. */
export async function renderLivePage(
  result: NotebookResult,
  markdown: string,
  options: RenderOptions = {},
): Promise<string> {
  const pictures = holdsPictures(result)
  const script = await pageScript(pictures)
  const licences = await readFile(licencesFile, "utf8")
  const style = [styleOf(pictures), liveStyle, ...(pictures ? [livePictureStyle] : [])].join("\n")
  // A notebook too long to be read is too long to be edited in a page, too.
  const unread = result.cells.length === 0 && result.problems[0]?.code === "too-much-text"
  const notebook = unread ? "" : cleanText(markdown)
  const runs = await proseRuns(result.tree, result.values)
  const prose = runs.map(({ words }) => textDigest(words))
  return pageDocument({
    title: result.title,
    body: await bodyHtml(result, true),
    language: options.language ?? "en",
    style,
    policy: contentPolicy({ style: sha256(style), script: sha256(script), pictures }),
    live: { script, source: jsonForPage({ notebook, prose, ...carriedAnswers(result) }), licences },
  })
}

function holdsPictures({ cells }: NotebookResult): boolean {
  return cells.some(({ kind }) => kind === "picture")
}

function styleOf(pictures: boolean): string {
  return pictures ? `${wholeStyle}\n${pictureStyle}` : wholeStyle
}

function sha256(text: string): string {
  return createHash("sha256").update(text).digest("base64")
}
