// The notices of everything that the script of a live page is put together from: each package's own licence file, or, where
// it has none, what it declares. Alike terms stand once, after the names and the copyright lines of all that are under them.

import { existsSync, readdirSync, readFileSync } from "node:fs"
import { join, resolve } from "node:path"
import { bundledFiles } from "../../packages/notebook/src/live/bundle.ts"

const root = resolve(import.meta.dirname, "../..")

export const licencesFile = resolve(root, "packages/notebook/licences.txt")

interface Manifest {
  readonly name: string
  readonly version: string
  readonly license?: string
  readonly author?: string | { readonly name?: string }
}

/** The text of the file, the same from the same packages. */
export async function licencesOfScript(): Promise<string> {
  const folders = new Set<string>()
  for (const file of await bundledFiles()) {
    const folder = packageFolder(file)
    if (folder !== null) folders.add(folder)
  }
  const underText = new Map<string, string[]>()
  for (const folder of folders) {
    const manifest: Manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"))
    const text = licenceText(folder, manifest)
    const name = `${manifest.name} ${manifest.version}`
    underText.set(text, [...(underText.get(text) ?? []), name].sort())
  }
  underText.set(tidy(readFileSync(join(root, "LICENSE"), "utf8")), ["Roundwright"])
  return `${[...byTerms(underText)].join(`\n\n${"-".repeat(20)}\n\n`)}\n`
}

/** Where the terms of a licence begin, behind its title and its copyright lines. */
const terms = /^(?=Permission is hereby granted|Permission to use, copy|Redistribution and use)/m

/** The notices of all that are under the same terms, and then those terms; our own first. */
function byTerms(underText: ReadonlyMap<string, readonly string[]>): string[] {
  const groups = new Map<string, { body: string; notices: string[] }>()
  for (const [text, names] of underText) {
    const at = text.search(terms)
    const head = at < 0 ? "" : text.slice(0, at).trim()
    const body = at < 0 ? text : text.slice(at).trim()
    const key = body.replace(/\s+/g, " ")
    const group = groups.get(key) ?? { body, notices: [] }
    group.notices.push(head === "" ? names.join(", ") : `${names.join(", ")}\n${head}`)
    groups.set(key, group)
  }
  const own = (text: string): number => (text.startsWith("Roundwright\n") ? 0 : 1)
  const inOrder = (a: string, b: string): number => own(a) - own(b) || (a < b ? -1 : 1)
  return [...groups.values()]
    .map(({ body, notices }) => [...notices.sort(inOrder), body].join("\n\n"))
    .sort(inOrder)
}

/** The folder of the package a file of the bundle belongs to; null for our own. */
function packageFolder(file: string): string | null {
  const found = /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(resolve(root, file))
  return found && !found[1]!.includes("/@roundwright/") ? found[1]! : null
}

function licenceText(folder: string, { license, author }: Manifest): string {
  const files = readdirSync(folder).filter((name) =>
    /^(?:licen[cs]e|copying|notice)(?:[-.].*)?$/i.test(name),
  )
  const texts = files.sort().map((name) => readFileSync(join(folder, name), "utf8"))
  if (texts.length > 0) return texts.map(tidy).join("\n\n")
  const by = typeof author === "string" ? author : author?.name
  return `Licence: ${license ?? "none declared"}${by ? `, by ${by.replace(/\s*[<(].*$/, "")}` : ""}`
}

/** Line breaks of one kind, no blanks at their ends. */
function tidy(text: string): string {
  return text
    .replace(/\r\n?/g, "\n")
    .replace(/[ \t]+$/gm, "")
    .replace(/\n{3,}/g, "\n\n")
    .trim()
}

export function writtenLicences(): string {
  return existsSync(licencesFile) ? readFileSync(licencesFile, "utf8") : ""
}
