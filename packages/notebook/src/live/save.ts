// Keeping what a reader made: the notebook as a file, and the page itself as a file, written anew from
// its parts with the policy, style and script it has.

/// <reference lib="dom" />

import { jsonForPage, licencesClass, pageDocument } from "../page/document.ts"
import { trusted } from "../page/html.ts"
import type { CarriedSource } from "./carried-source.ts"
import { make } from "./dom.ts"

/** The page as a file that opens with `source` in it. @param body markup of its main part */
export function pageFile(script: string, body: string, source: CarriedSource): string {
  const policy = document
    .querySelector('meta[http-equiv="Content-Security-Policy"]')
    ?.getAttribute("content")
  return pageDocument({
    title: document.title,
    body: trusted(body),
    language: document.documentElement.lang,
    style: document.querySelector("style")?.textContent ?? "",
    policy: policy ?? "default-src 'none'",
    live: {
      script,
      source: jsonForPage(source),
      licences: document.querySelector(`.${licencesClass} pre`)?.textContent ?? "",
    },
  })
}

/** Offers a file for download. */
export function download(name: string, type: string, text: string): void {
  downloadBlob(name, new Blob([text], { type }))
}

export function downloadBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob)
  const link = make("a", { href: address, download: name })
  link.click()
  // The download has its own hold on the text once it has begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}

/** `The Palm House Pane` -> `the-palm-house-pane`. */
export function fileName(title: string): string {
  const plain = title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
  return plain.slice(0, 60) || "notebook"
}
