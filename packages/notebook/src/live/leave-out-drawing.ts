// What the script of live pages leaves out of the drawing libraries. They come as one lump each, and as the modules they are
// made of: those are taken instead, and the modules that no chart here asks for have something harmless in their place.
// What is left draws every chart to the letter as the whole does (test/left-out.test.ts).

import { readFile } from "node:fs/promises"
import { dirname, join, sep } from "node:path"
import type { Plugin, PluginBuild } from "esbuild"

/** Libraries taken by their modules, and the module to begin at. */
const entries = new Map([
  ["vega-lite", join("src", "compile", "compile.ts")],
  ["vega-parser", "index.js"],
  ["vega-transforms", "index.js"],
  ["vega-scenegraph", "index.js"],
  ["vega-statistics", "index.js"],
])

const said = `throw new Error("The script of this page leaves this kind of chart out.")`
/** A step of the data that no chart here has: asked whether it is wanted, it says no. */
const noStep = (...names: string[]) =>
  names
    .map(
      (name) =>
        `export class ${name} { constructor() { ${said} } static makeFromEncoding() { return null } static parseAll(head) { return head } }`,
    )
    .join("\n")
/** A way of choosing in a chart: never the one asked for. */
const noChoice = "export default { defined: () => false }"
const noMark = (name: string) => `export const ${name} = { hasMatchingType: () => false }`
const noPainter = `export default class { constructor() { ${said} } }`
const nothing = (...names: string[]) =>
  names.map((name) => `export const ${name} = () => []`).join("\n")

/** What stands in place of a module, by its path within its library. */
const instead: Readonly<Record<string, string>> = {
  // Marks made of several marks; charts side by side; legends, which the charts draw themselves; maps.
  "vega-lite/src/compositemark/index.ts": nothing("getAllCompositeMarks"),
  "vega-lite/src/compositemark/boxplot.ts": noMark("boxPlotNormalizer"),
  "vega-lite/src/compositemark/errorband.ts": noMark("errorBandNormalizer"),
  "vega-lite/src/compositemark/errorbar.ts": noMark("errorBarNormalizer"),
  "vega-lite/src/compile/concat.ts": noStep("ConcatModel"),
  "vega-lite/src/compile/facet.ts": noStep("FacetModel"),
  "vega-lite/src/compile/header/assemble.ts": nothing(
    ...["assembleHeaderGroups", "assembleLayoutTitleBand", "assembleTitleGroup"],
  ),
  "vega-lite/src/compile/legend/assemble.ts": nothing("assembleLegends"),
  "vega-lite/src/compile/legend/parse.ts": nothing("parseLegend"),
  "vega-lite/src/compile/projection/assemble.ts": nothing("assembleProjections"),
  "vega-lite/src/compile/projection/parse.ts": nothing("parseProjection"),
  "vega-parser/src/parsers/legend.js": `export default function () { ${said} }`,
  // Choosing in a chart with the pointer.
  ...Object.fromEntries(
    ["clear", "inputs", "nearest", "translate", "zoom"].map((name) => [
      `vega-lite/src/compile/selection/${name}.ts`,
      noChoice,
    ]),
  ),
  "vega-lite/src/compile/selection/interval.ts": `export const BRUSH = "_brush"\n${noChoice}`,
  "vega-lite/src/compile/selection/legends.ts": `export const parseInteractiveLegend = () => {}\n${noChoice}`,
  "vega-lite/src/compile/selection/point.ts": `export const CURR = "_curr"\n${noChoice}`,
  "vega-lite/src/compile/selection/scales.ts": `export const domain = () => {}\n${noChoice}`,
  // Reckoning with the data on the way: charts here carry what they show.
  ...Object.fromEntries(
    [
      ...["density", "extent", "flatten", "fold", "loess", "pivot", "quantile", "regression"],
      ...["sample", "window", "joinaggregate"],
    ].map((name) => [
      `vega-lite/src/compile/data/${name}.ts`,
      noStep(
        name === "joinaggregate"
          ? "JoinAggregateTransformNode"
          : `${name[0]!.toUpperCase()}${name.slice(1)}TransformNode`,
      ),
    ]),
  ),
  "vega-lite/src/compile/data/aggregate.ts": noStep("AggregateNode"),
  "vega-lite/src/compile/data/bin.ts": `export const getBinSignalName = () => { ${said} }\n${noStep("BinNode")}`,
  "vega-lite/src/compile/data/facet.ts": noStep("FacetNode"),
  "vega-lite/src/compile/data/geojson.ts": noStep("GeoJSONNode"),
  "vega-lite/src/compile/data/geopoint.ts": noStep("GeoPointNode"),
  "vega-lite/src/compile/data/graticule.ts": noStep("GraticuleNode"),
  "vega-lite/src/compile/data/impute.ts": noStep("ImputeNode"),
  "vega-lite/src/compile/data/lookup.ts": noStep("LookupNode"),
  "vega-lite/src/compile/data/sequence.ts": noStep("SequenceNode"),
  "vega-lite/src/compile/data/stack.ts": noStep("StackNode"),
  // Painting onto a screen: charts become text, and the page shows that.
  ...Object.fromEntries(
    ["CanvasRenderer", "HybridHandler", "SVGHandler", "SVGRenderer"].map((name) => [
      `vega-scenegraph/src/${name}.js`,
      noPainter,
    ]),
  ),
  "vega-scenegraph/src/HybridRenderer.js": `export const setHybridRendererOptions = () => {}\n${noPainter}`,
}

/** Steps of the data that the compiled charts never have. */
const steps = new RegExp(
  `^export .*/src/(?:${[
    ...["Bin", "CountPattern", "Cross", "Density", "DotBin", "Flatten", "Fold", "Generate"],
    ...["Impute", "JoinAggregate", "KDE", "Lookup", "Pivot", "Quantile", "Sample", "Sequence"],
    ...["TimeUnit", "Window"],
  ].join("|")})\\.js';$`,
  "gm",
)

/** Letters beyond ASCII a name in an expression may have: listed one by one, and by the name Unicode has for them. */
const letters = /(RegexNonAsciiIdentifier(Start|Part) = )new RegExp\('[^']*'\)/g
const byName = { Start: "ID_Start", Part: "ID_Continue" }

export const leaveOutOfDrawing: Plugin = { name: "drawing by its parts", setup }

function setup(build: PluginBuild): void {
  const names = [...entries.keys()]
  build.onResolve({ filter: new RegExp(`^(?:${names.join("|")})$`) }, async ({ path, ...from }) => {
    if (from.pluginData === "found") return
    const found = await build.resolve(path, { ...from, pluginData: "found" })
    const root = join(dirname(found.path), "..")
    return { path: join(root, entries.get(path)!), sideEffects: false }
  })
  const within = new RegExp(
    `[\\\\/]node_modules[\\\\/](?:${names.join("|")})[\\\\/](?:src[\\\\/]|index\\.js$)`,
  )
  build.onResolve({ filter: /^\./ }, ({ path, importer, resolveDir }) => {
    if (!within.test(importer)) return
    const file = join(resolveDir, path)
    return {
      path: importer.endsWith(".ts") ? file.replace(/\.js$/, ".ts") : file,
      sideEffects: false,
    }
  })
  build.onLoad({ filter: within }, async ({ path }) => {
    const place = path.slice(path.lastIndexOf(`node_modules${sep}`) + "node_modules/".length)
    const key = place.split(sep).join("/")
    if (instead[key] !== undefined) return { contents: instead[key], loader: "js" }
    if (key !== "vega-transforms/index.js") return
    return { contents: (await readFile(path, "utf8")).replace(steps, ""), loader: "js" }
  })
  const expressions = /[\\/]node_modules[\\/]vega-expression[\\/]build[\\/]vega-expression\.js$/
  build.onLoad({ filter: expressions }, async ({ path }) => {
    const short = (_: string, set: string, which: keyof typeof byName) =>
      `${set}/\\p{${byName[which]}}/u`
    return { contents: (await readFile(path, "utf8")).replace(letters, short), loader: "js" }
  })
}
