// The structure checks: imports run down the table of packages only and in no circle within one, every package has the same
// shape, files stay short, and nothing committed names this machine or a registry. Prints one line
// a fault and ends with the plain count.

import { execFileSync } from "node:child_process"
import { existsSync, readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { importCycles } from "./import-cycles.ts"

/** Lowest first: a package may import those before it. */
const order = [
  "numerics",
  "stitches",
  "motif",
  "instructions",
  "flatness",
  "relaxation",
  "shaping",
  "picture",
  "finishing",
  "assessment",
  "matching",
  "charts",
  "publishing",
  "notebook",
  "cli",
]

/** Files beyond this hold two ideas. */
const longestFile = 400

const topLevel = new Set([
  ".ci",
  ".gitignore",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "biome.json",
  "package.json",
  "packages",
  "pnpm-lock.yaml",
  "pnpm-workspace.yaml",
  "reports",
  "scripts",
  "test",
  "tsconfig.base.json",
  "tsconfig.build.json",
  "tsconfig.json",
  "vitest.config.ts",
])

const faults: string[] = []
let checks = 0
const check = (good: boolean, fault: string) => {
  checks += 1
  if (!good) faults.push(fault)
}

const tracked = execFileSync("git", ["ls-files", "-co", "--exclude-standard"], { encoding: "utf8" })
  .split("\n")
  .filter((file) => file !== "" && existsSync(file))

for (const file of tracked)
  check(topLevel.has(file.split("/")[0]!), `${file}: not expected at the top of the repository`)

for (const name of readdirSync("packages")) {
  check(order.includes(name), `packages/${name}: not in the table of packages`)
  for (const part of ["package.json", "tsconfig.json", "README.md", "src/index.ts"])
    check(existsSync(join("packages", name, part)), `packages/${name}: ${part} is missing`)
  const tests = tracked.filter(
    (f) => f.startsWith(`packages/${name}/test/`) && f.endsWith(".test.ts"),
  )
  check(tests.length > 0, `packages/${name}: has no tests`)
  const manifest = JSON.parse(readFileSync(join("packages", name, "package.json"), "utf8"))
  const declared = Object.keys(manifest.dependencies ?? {})
  for (const dependency of declared) {
    const version: string = manifest.dependencies[dependency]
    const pinned = version === "workspace:*" || /^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version)
    check(pinned, `packages/${name}: ${dependency} is not pinned (${version})`)
  }
  const sources = tracked.filter((f) => f.startsWith(`packages/${name}/src/`))
  const cycles = importCycles(new Map(sources.map((file) => [file, readFileSync(file, "utf8")])))
  check(
    cycles.length === 0,
    cycles.map((cycle) => `${[...cycle, cycle[0]].join(" -> ")}: import one another`).join("\n"),
  )
  for (const file of sources) {
    const source = readFileSync(file, "utf8")
    for (const [, target] of source.matchAll(
      /(?:^(?:import|export)\s[^"]*?\bfrom|\bimport\()\s*"(@?[^"./][^"]*)"/gm,
    ))
      checkImport(file, name, target!, declared)
  }
}

function checkImport(file: string, from: string, target: string, declared: string[]): void {
  const bare = target.startsWith("@")
    ? target.split("/").slice(0, 2).join("/")
    : target.split("/")[0]!
  if (target.startsWith("node:")) return
  check(
    declared.includes(bare),
    `${file}: imports ${bare}, which its package.json does not declare`,
  )
  if (!bare.startsWith("@roundwright/")) return
  const to = bare.slice("@roundwright/".length)
  check(
    order.indexOf(to) < order.indexOf(from),
    `${file}: imports ${to}, which is not above ${from}`,
  )
}

for (const file of tracked.filter((f) => f.endsWith(".ts"))) {
  const lines = readFileSync(file, "utf8").split("\n").length
  check(lines <= longestFile, `${file}: ${lines} lines, more than ${longestFile}`)
}

const machinePath = /(?:^|[\s"'`(=])\/(?:root|tmp|home|work|farm)\//
for (const file of tracked.filter((f) => /\.(ts|md|json|yaml|html)$/.test(f))) {
  const text = readFileSync(file, "utf8")
  check(!machinePath.test(text), `${file}: names a path of one machine`)
  if (file === "pnpm-lock.yaml") check(!/https?:\/\//.test(text), `${file}: holds addresses`)
  if (file.endsWith(".ts"))
    check(
      !/toBeClose\u0054o\(/.test(text),
      `${file}: compare numbers with expectClose and a reason`,
    )
}

for (const fault of faults) console.log(fault)
console.log(`structure: ${checks - faults.length} of ${checks} checks hold`)
process.exit(faults.length === 0 ? 0 : 1)
