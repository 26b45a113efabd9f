// The script of live pages: everything a page needs, as one classic script. esbuild puts it together
// when the first live page that needs it is made; the same sources give the same bytes.

import { readFile } from "node:fs/promises"
import { resolve } from "node:path"
import { fileURLToPath } from "node:url"
import type { PluginBuild } from "esbuild"
import { leaveOutPlugins } from "./leave-out.ts"

const made: { plain?: Promise<string>; pictures?: Promise<string> } = {}

const ending = import.meta.url.endsWith(".ts") ? "ts" : "js"
const entries = {
  plain: new URL(`./main.${ending}`, import.meta.url),
  pictures: new URL(`./main-with-pictures.${ending}`, import.meta.url),
}

/** The script, made once. It is safe to stand between script tags. @param pictures true: it measures pictures as well */
export function pageScript(pictures = false): Promise<string> {
  const kind = pictures ? "pictures" : "plain"
  made[kind] ??= makeScript(entries[kind])
  return made[kind]
}

async function makeScript(entry: URL): Promise<string> {
  const script = await bundleScript(entry)
  if (/<\/?script/i.test(script))
    throw new Error("The script of live pages holds a script tag and cannot stand in a page.")
  return script
}

/** A module and all it imports as one classic script. @param globalName variable to hold its exports */
export async function bundleScript(entry: URL, globalName?: string): Promise<string> {
  return (await bundle(entry, globalName)).script
}

/** Paths of the files whose code is in the script of live pages. */
export async function bundledFiles(): Promise<string[]> {
  return (await bundle(entries.pictures)).files
}

async function bundle(
  entry: URL,
  globalName?: string,
): Promise<{ readonly script: string; readonly files: string[] }> {
  // Loaded only here: static pages do without it.
  const { build } = await import("esbuild")
  const { outputFiles, metafile } = await build({
    entryPoints: [fileURLToPath(entry)],
    bundle: true,
    format: "iife",
    ...(globalName === undefined ? {} : { globalName }),
    minify: true,
    platform: "browser",
    target: "es2022",
    // Characters that HTML would change on the way, such as a lone carriage return, stay escaped.
    charset: "ascii",
    // The notices stand at the end of the page (licences.txt): most packages say them in a file and not in their code.
    legalComments: "none",
    metafile: true,
    plugins: [{ name: "load at once", setup: loadAtOnce }, ...leaveOutPlugins],
    // The same script serves a worker, which has no document: libraries offer a part that needs none.
    conditions: ["worker", ...(entry.pathname.endsWith(".ts") ? ["source"] : [])],
    write: false,
    logLevel: "silent",
  })
  const [output] = Object.values(metafile.outputs)
  const files = Object.entries(output!.inputs).flatMap(([file, { bytesInOutput }]) =>
    bytesInOutput > 0 ? [resolve(file)] : [],
  )
  return { script: outputFiles[0]!.text, files }
}

/**
 * In one script nothing is left to be loaded later. Said outright, it lets esbuild leave out of the
 * libraries what is never used, a quarter of the script.
 */
function loadAtOnce(build: PluginBuild): void {
  build.onLoad(
    { filter: /[\\/](?:src|dist)[\\/](?:calculation|page)[\\/][^\\/]+\.[jt]s$/ },
    async ({ path }) => {
      const imports: string[] = []
      const text = (await readFile(path, "utf8")).replace(/\bimport\(("[^"]+")\)/g, (_, name) => {
        imports.push(`import * as loaded${imports.length} from ${name}`)
        return `Promise.resolve(loaded${imports.length - 1})`
      })
      const loader = path.endsWith(".ts") ? "ts" : "js"
      return { contents: [...imports, text].join("\n"), loader }
    },
  )
}
