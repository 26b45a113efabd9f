// The script of live pages: everything a page needs, as one classic script. esbuild puts it together
// when the first live page is made; the same sources give the same bytes.

import { build } from "esbuild"

let made: Promise<string> | undefined

/** The script, made once. It is safe to stand between script tags. */
export function pageScript(): Promise<string> {
  made ??= makeScript()
  return made
}

async function makeScript(): Promise<string> {
  const fromSource = import.meta.url.endsWith(".ts")
  const entry = new URL(fromSource ? "./main.ts" : "./main.js", import.meta.url)
  const { outputFiles } = await build({
    entryPoints: [decodeURIComponent(entry.pathname)],
    bundle: true,
    format: "iife",
    minify: true,
    platform: "browser",
    target: "es2022",
    // Characters that HTML would change on the way, such as a lone carriage return, stay escaped.
    charset: "ascii",
    legalComments: "none",
    conditions: fromSource ? ["source"] : [],
    write: false,
    logLevel: "silent",
  })
  const script = outputFiles[0]!.text
  if (/<\/?script/i.test(script))
    throw new Error("The script of live pages holds a script tag and cannot stand in a page.")
  return script
}
