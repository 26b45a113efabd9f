// The part of `pnpm evidence` on matching and finishing: remade sizes, yarn, named values that agree and those that do not,
// and makers' own questions.

import { contradictions } from "@roundwright/matching"
import { borderCases } from "./borders.ts"
import { questionLooks } from "./question-looks.ts"
import { remadeByHook, remadeSizes } from "./remade.ts"
import { compareStandards } from "./standards.ts"
import { medianError, unfittedYarn, weighedYarn, type YarnCase, yarnRatios } from "./yarn.ts"

const percent = (share: number) => `${(100 * share).toFixed(0)} %`
const signed = (share: number) => `${share > 0 ? "+" : ""}${(100 * share).toFixed(1)} %`

export function printMatching(print: (line?: string) => void): void {
  print("\nSizes after a round added, left out or worked otherwise (no constant fitted on these)")
  const remade = remadeSizes()
  for (const { what, source, statedMm, foundMm, error } of [...remade, ...remadeByHook()])
    print(
      `  ${what.padEnd(44)} ${(statedMm / 10).toFixed(1).padStart(5)} cm made, ${(foundMm / 10).toFixed(1).padStart(5)} cm found  ${signed(error).padStart(7)}  ${source}`,
    )
  const off = remade.map(({ error }) => Math.abs(error)).sort((a, b) => a - b)
  print(
    `  rounds changed: n = ${off.length}, median off ${signed(off[Math.floor(off.length / 2)]!).slice(1)}, most ${percent(off.at(-1)!)}`,
  )

  print("\nYarn against what was unravelled and weighed")
  yarnLines("ratios between kinds", yarnRatios(), print)
  yarnLines("from yarn and hook or solid fabric alone", unfittedYarn(), print)
  yarnLines("one kind from another that was weighed", weighedYarn(), print)

  print("\nBorders: stitches a side against printed counts")
  for (const { what, found, least, most } of borderCases())
    print(
      `  ${what.padEnd(46)} ${found} found, ${least === most ? least : `${least} to ${most}`} printed${found < least || found > most ? "  DIFFERS" : ""}`,
    )

  print("\nNamed weights, hooks and blanket sizes against the published tables")
  for (const { table, values, agree, differ } of compareStandards()) {
    print(`  ${table}: ${agree} of ${values} values agree`)
    for (const line of differ) print(`    differs: ${line}`)
  }
  for (const { name, sizes } of contradictions())
    print(
      `  sources contradict each other on ${name}: ${sizes.map(({ inches, source }) => `${inches.join(" x ")} in (${source})`).join(", ")}`,
    )

  print(
    "\nMakers' own questions on size, borders, counts and comparing (keyed before, run once, mended after)",
  )
  for (const look of questionLooks()) print(`  ${look}`)
}

function yarnLines(name: string, cases: readonly YarnCase[], print: (line?: string) => void): void {
  const banded = cases.filter(({ inBand }) => inBand !== null)
  const bands =
    banded.length === 0
      ? ""
      : `, 80 % bands cover ${banded.filter(({ inBand }) => inBand).length} of ${banded.length}`
  print(
    `  ${name}: n = ${cases.length}, median off ${percent(medianError(cases))}; sources that fitted nothing ${percent(medianError(cases.filter(({ fitted }) => !fitted)))}${bands}`,
  )
  for (const source of new Set(cases.map((one) => one.source))) {
    const own = cases.filter((one) => one.source === source)
    print(
      `    ${source}${own[0]!.fitted ? " (fitted)" : ""}: ${own.map(({ what, error }) => `${what} ${signed(error)}`).join("; ")}`,
    )
  }
}
