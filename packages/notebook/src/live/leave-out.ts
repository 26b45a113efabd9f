// What the script of live pages leaves out of the libraries in it: code that stands there and that nothing here ever calls.
// Each leaves something harmless in its place, which says so where it is called all the same.

import { readFile } from "node:fs/promises"
import { dirname, extname, join } from "node:path"
import type { Plugin, PluginBuild } from "esbuild"
import { leaveOutOfDrawing } from "./leave-out-drawing.ts"
import { leaveOutSigns } from "./leave-out-signs.ts"

export const leaveOutPlugins: readonly Plugin[] = [
  { name: "never drawn", setup: neverDrawn },
  { name: "never called", setup: neverCalled },
  { name: "by its parts", setup: byItsParts },
  { name: "tried elsewhere", setup: triedElsewhere },
  leaveOutOfDrawing,
  leaveOutSigns,
]

/** A module by its name, with other contents in its place. */
function inPlaceOf(build: PluginBuild, filter: RegExp, namespace: string, contents: string): void {
  build.onResolve({ filter }, ({ path }) => ({ path, namespace }))
  build.onLoad({ filter: /.*/, namespace }, () => ({ contents }))
}

const nothing = "module.exports = {}"

/**
 * Kinds of drawing that no chart here asks for: maps, trees, word clouds, nets pulled by forces, cells around points, brushes
 * over several charts, labels that find their own place, fitted lines. The drawing library takes them in as a whole; an empty
 * module in their place is a tenth of a page less.
 */
const drawings = /^vega-(?:geo|hierarchy|wordcloud|force|voronoi|crossfilter|label|regression)$/

function neverDrawn(build: PluginBuild): void {
  inPlaceOf(build, drawings, "never-drawn", nothing)
}

/** Shapes of the earth, which the functions of expressions bring along, and Markdown written back from its tree. */
const maps = /^d3-geo(?:-projection)?$|^vega-projection$|^topojson-client$|^mdast-util-to-markdown$/
/** Sets of colours: looked up by name when the drawing library is loaded, and no chart here has a colour. */
const noColours = ["Accent", "Category10", "Dark2", "Observable10", "Paired"]
  .concat(["Pastel1", "Pastel2", "Set1", "Set2", "Set3"])
  .map((name) => `export const scheme${name} = []`)
  .join("\n")
/** Numbers of any length: the calculator is set to plain ones, and makes none of these but a ten it never uses. */
const longNumbers = `
function Decimal() {}
Decimal.clone = () => function BigNumber() { throw new Error("This page reckons with plain numbers only.") }
export { Decimal }
export default Decimal
`
/** How expressions are written in TeX, which no page does. */
const tex = /[\\/]mathjs[\\/]lib[\\/]esm[\\/]utils[\\/]latex\.js$/
const noTex = `
export const latexSymbols = {}, latexOperators = {}, latexFunctions = {}, defaultTemplate = ""
export const escapeLatex = String, toSymbol = String
`

/** Names of what stands in drawings: Markdown becomes HTML without one, and drawings are put in as they are. */
const drawn = /[\\/]property-information[\\/]lib[\\/]svg\.js$/
const noDrawn = "export const svg = { space: 'svg', property: {}, normal: {} }"

function neverCalled(build: PluginBuild): void {
  inPlaceOf(build, maps, "never-called", nothing)
  inPlaceOf(build, /^d3-scale-chromatic$/, "never-seen", noColours)
  inPlaceOf(build, /^decimal\.js$/, "long-numbers", longNumbers)
  build.onLoad({ filter: tex }, () => ({ contents: noTex }))
  build.onLoad({ filter: drawn }, () => ({ contents: noDrawn }))
}

/** ml-matrix comes as one lump and as the modules it is made of: of those only what is used is taken. */
function byItsParts(build: PluginBuild): void {
  build.onResolve({ filter: /^ml-matrix$/ }, async ({ path, ...from }) => {
    if (from.pluginData === "found") return
    const found = await build.resolve(path, { ...from, pluginData: "found" })
    return { path: join(dirname(found.path), "src", "index.js"), sideEffects: false }
  })
}

/** The examples beside the rules of the grammar, which only tests read. */
const rules = /[\\/]instructions[\\/](?:src|dist)[\\/]grammar[\\/]productions-of-[a-z]+\.[jt]s$/
const begins = "examples: ["

function triedElsewhere(build: PluginBuild): void {
  build.onLoad({ filter: rules }, async ({ path }) => ({
    contents: (await readFile(path, "utf8"))
      .split(begins)
      .map((part, i) => (i === 0 ? part : part.slice(endOfList(part))))
      .join(begins),
    loader: extname(path) === ".ts" ? "ts" : "js",
  }))
}

/** Where a list of texts ends: at the first bracket that stands in none of them. */
function endOfList(text: string): number {
  let quoted = false
  for (let at = 0; at < text.length; at++) {
    if (quoted && text[at] === "\\") at += 1
    else if (text[at] === '"') quoted = !quoted
    else if (text[at] === "]" && !quoted) return at
  }
  return 0
}
