// The script of live pages: everything a page needs, as one classic script. esbuild puts it together
// when the first live page is made; the same sources give the same bytes.

import { fileURLToPath } from "node:url"

let made: Promise<string> | undefined

/** The script, made once. It is safe to stand between script tags. */
export function pageScript(): Promise<string> {
  made ??= makeScript()
  return made
}

async function makeScript(): Promise<string> {
  const ending = import.meta.url.endsWith(".ts") ? "ts" : "js"
  const script = await bundleScript(new URL(`./main.${ending}`, import.meta.url))
  if (/<\/?script/i.test(script))
    throw new Error("The script of live pages holds a script tag and cannot stand in a page.")
  return script
}

/** A module and all it imports as one classic script. @param globalName variable to hold its exports */
export async function bundleScript(entry: URL, globalName?: string): Promise<string> {
  // Loaded only here: static pages do without it.
  const { build } = await import("esbuild")
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(entry)],
    bundle: true,
    format: "iife",
    ...(globalName === undefined ? {} : { globalName }),
    minify: true,
    platform: "browser",
    target: "es2022",
    // Characters that HTML would change on the way, such as a lone carriage return, stay escaped.
    charset: "ascii",
    legalComments: "none",
    conditions: entry.pathname.endsWith(".ts") ? ["source"] : [],
    write: false,
    logLevel: "silent",
  })
  return outputFiles[0]!.text
}
