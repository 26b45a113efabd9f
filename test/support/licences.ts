// The notices of everything that the script of a live page is put together from: each package's own licence file, or, where
// it has none, what it declares. Alike texts stand once, after the names of all that are under them.

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
  const own = readFileSync(join(root, "LICENSE"), "utf8").trim()
  const others = [...underText]
    .map(([text, names]) => `${names.join(", ")}\n\n${text}`)
    .sort((a, b) => (a < b ? -1 : 1))
  return `${[`Roundwright\n\n${own}`, ...others].join(`\n\n${"-".repeat(20)}\n\n`)}\n`
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
