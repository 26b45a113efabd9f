// `pnpm evidence [--full] [--texts FOLDER]`: one table of how the tool agrees with the world: reading coverage, verdicts, sizes,
// a line a data set with n, and which cases fitted any constant. The inverse is sampled at every seventh
// count; --full tries every count from 8 to 60 (minutes).
// --texts reads again the texts of first looks that are saved there as ID.txt.

import { loadCases } from "../test/evidence/cases.ts"
import { headingBatches, scoreOf } from "../test/evidence/heading-looks.ts"
import {
  fittedSets,
  isOpposite,
  type JudgedPiece,
  judgePieces,
  leftOut,
  loadBatches,
  reliabilityOf,
} from "../test/evidence/judged-pieces.ts"
import { printMatching } from "../test/evidence/matching-table.ts"
import { breakKinds, breakTrials, offersForSound } from "../test/evidence/mend-breaks.ts"
import { cleanPatterns, countMutations, mutationWords } from "../test/evidence/mutations.ts"
import { printPictures } from "../test/evidence/picture-table.ts"
import { publishingLines } from "../test/evidence/publishing-looks.ts"
import { readingCoverage } from "../test/evidence/reading-coverage.ts"
import { lookWords, readAgain, readingBatches } from "../test/evidence/reading-looks.ts"
import { mendTrials } from "../test/evidence/shaping-mends.ts"
import { scoreRecipes } from "../test/evidence/shaping-recipes.ts"
import { measureSquares } from "../test/evidence/shaping-squares.ts"
import { squaringTable } from "../test/evidence/shaping-table.ts"
import { compareSizes, compareSizesFromOne, type SizeOutcome } from "../test/evidence/size-error.ts"
import { squaringLooks, squaringLookWords } from "../test/evidence/squaring-looks.ts"
import { judgeByLengths } from "../test/evidence/straight-by-lengths.ts"
import { judgeOutcomes } from "../test/evidence/verdict-agreement.ts"
import { measureWriting, savedTexts, textsOfSets } from "../test/evidence/writing.ts"

process.stdout.on("error", () => process.exit())

const full = process.argv.includes("--full")
const percent = (share: number) => `${(100 * share).toFixed(0)} %`
const print = (line = "") => process.stdout.write(`${line}\n`)

print("Reading: rounds read with the right totals")
for (const name of ["handbook-motifs", "measured-motifs", "flatness-outcomes"] as const) {
  const coverage = readingCoverage(loadCases(name))
  print(
    `  ${name.padEnd(20)} ${coverage.completeRight} of ${coverage.complete} complete rounds (${percent(coverage.completeRight / coverage.complete)}), ` +
      `misread in silence ${coverage.silentMisreads} (totals taken out ${coverage.unaided.silentMisreads}), ` +
      `printed clashes told ${coverage.clashesTold} of ${coverage.clashes}, ` +
      `false alarms ${coverage.falseAlarms} of ${coverage.rounds}; ${coverage.rounds - coverage.complete} rounds are no more than a summary`,
  )
}

print("\nPatterns as makers published them, first looks (keyed before, run once, mended after)")
const saved = process.argv[process.argv.indexOf("--texts") + 1]
const folder = process.argv.includes("--texts") ? saved : undefined
for (const batch of readingBatches()) {
  print(`  batch ${batch.batch}: ${lookWords(batch.firstLook)}`)
  if (batch.beside) print(`    ${batch.beside}`)
  const again = folder === undefined ? null : readAgain(batch, folder)
  if (again) print(`    read now: ${lookWords(again)}`)
}

print("\nHeadings as makers wrote them, first looks (keyed before, run once, mended after)")
for (const batch of headingBatches()) {
  const { all, right, missed, wrong } = scoreOf(batch)
  print(
    `  batch ${batch.batch}: ${right} of ${all} right (${percent(right / all)}), ${missed} missed in part, ${wrong} wrong in part`,
  )
}

print(
  "\nClean patterns changed in one place: what is not told and does not reach the motif is a fault",
)
for (const [kind, changes] of [
  ["total", 4000],
  ["count", 16_000],
  ["place", 8000],
  ["clause", 16_000],
] as const) {
  const count = countMutations(cleanPatterns(), kind, full ? changes : changes / 40, 20)
  print(`  ${mutationWords(count)}`)
  for (const fault of new Set(count.faults)) print(`    fault: ${fault}`)
}

print("\nWriting: what an editor would strike out, counted on the written rounds themselves")
for (const [name, texts] of [
  ["data sets", textsOfSets()],
  ...(folder === undefined ? [] : [["patterns as found", savedTexts(folder)] as const]),
] as const) {
  const found = measureWriting(texts)
  const { motifs, refused, rounds, tails, unfoldedRuns, unfoldedPlaces, oneTime } = found
  print(
    `  ${name}: ${motifs - refused.length} of ${motifs} motifs read back in both terms, ${rounds} rounds; tails after a repeat ${tails}, ` +
      `runs not folded ${unfoldedRuns}, within one place ${unfoldedPlaces}, "1 time" ${oneTime}, over 200 characters ${found.long} (their work alone ${found.longWork}); ` +
      `corners named in ${found.cornersNamed} of ${found.cornered} rounds that have them; by the letter ${found.rightByLetter} of ${found.byLetter} counted alike`,
  )
  for (const why of refused) print(`    refused: ${why}`)
}
print("\nEdit and chart, first looks (run once, mended after)")
for (const line of publishingLines()) print(line)

const outcomes = judgeOutcomes(loadCases("flatness-outcomes"))
print("\nVerdicts against reported outcomes")
for (const outcome of outcomes) {
  const fullness = outcome.fullness === null ? "-" : outcome.fullness.toFixed(2)
  const marks = [
    outcome.agrees ? "" : "DIFFERS",
    outcome.opposite ? "OPPOSITE" : "",
    outcome.fitted ? "fitted the bands" : "",
    outcome.beyondEveryHand ? "beyond every published hand" : "",
  ].filter((mark) => mark !== "")
  print(
    `  ${outcome.id.padEnd(34)} ${String(outcome.verdict).padEnd(12)} ${fullness.padStart(6)}, laid out ${String(outcome.netVerdict).padEnd(12)} ` +
      `reported: ${outcome.accept.join(" or ")}${marks.length > 0 ? `  [${marks.join(", ")}]` : ""}`,
  )
}
for (const [name, some] of [
  ["all", outcomes],
  ["that fitted no constant", outcomes.filter((outcome) => !outcome.fitted)],
  ["that some published hand can meet", outcomes.filter((outcome) => !outcome.beyondEveryHand)],
] as const) {
  const agree = some.filter((outcome) => outcome.agrees).length
  const opposite = some.filter((outcome) => outcome.opposite).length
  print(
    `  ${name}: ${agree} of ${some.length} agree (${percent(agree / some.length)}), ${opposite} opposite; ` +
      `laid out ${some.filter((outcome) => outcome.netAgrees).length} agree, ${some.filter((outcome) => outcome.netOpposite).length} opposite`,
  )
}

const judged = judgePieces()
print("\nThe judge against pieces of known behaviour")
const line = (name: string, pieces: readonly JudgedPiece[]) => {
  if (pieces.length === 0) return
  const share = (take: (piece: JudgedPiece) => boolean) =>
    percent(pieces.filter(take).length / pieces.length)
  print(
    `  ${name.padEnd(40)} n = ${String(pieces.length).padStart(2)}: agree ${share(({ accept, verdict }) => verdict !== null && accept.includes(verdict))}, ` +
      `called flat ${share(({ verdict }) => verdict === "flat")}, cups or ruffles ${share(({ verdict }) => verdict === "cups" || verdict === "ruffles")}, ` +
      `opposite ${pieces.filter(isOpposite).length}${fittedSets.has(pieces[0]!.set) ? " (fitted the bands and odds)" : ""}`,
  )
}
const panel = judged.filter(({ set }) => set === "panel")
line(
  "panel, flat",
  panel.filter(({ accept }) => accept.includes("flat")),
)
line(
  "panel, not flat",
  panel.filter(({ accept }) => !accept.includes("flat")),
)
for (const set of ["measured-motifs", "handbook-motifs"])
  for (const lace of [true, false])
    line(
      `${set}, ${lace ? "lace" : "solid"}`,
      judged.filter((piece) => piece.set === set && piece.lace === lace),
    )
line(
  "flatness-outcomes",
  judged.filter(({ set }) => set === "flatness-outcomes"),
)
print(`  left out of the published pieces: ${[...leftOut].join(", ")}`)
for (const { batch, firstLook } of loadBatches()) {
  print(
    `  ${batch}: first look, never changed: ${firstLook.agree} of ${firstLook.n} agree (${percent(firstLook.agree / firstLook.n)}), ${firstLook.opposite} opposite`,
  )
  line(
    `${batch} as judged today`,
    judged.filter(({ set }) => set === batch),
  )
}
for (const piece of judged)
  if (piece.verdict === null || !piece.accept.includes(piece.verdict))
    print(
      `    differs: ${piece.id} (${piece.set}) ${piece.verdict ?? "not judged"}, fullness ${piece.fullness?.toFixed(2) ?? "-"}, makers: ${piece.accept.join(" or ")}`,
    )
for (const [name, pieces] of [
  ["all sets", judged],
  ["sets that fitted nothing", judged.filter(({ set }) => !fittedSets.has(set))],
] as const) {
  const { bins, brier, base } = reliabilityOf(pieces)
  print(`  odds of lying flat, ${name}: Brier ${brier.toFixed(3)}, base rate ${base.toFixed(3)}`)
  for (const { from, n, told, seen } of bins)
    print(`    ${percent(from)} on, n = ${n}: told ${percent(told)}, seen ${percent(seen)}`)
}

printMatching(print)

const measured = loadCases("measured-motifs")
const sizes = compareSizes(measured)
print("\nSizes against measured motifs, of the laid-out shape (no constant fitted on these)")
for (const size of sizes)
  print(
    `  ${size.id.padEnd(28)} round ${String(size.round).padStart(2)}  ` +
      `${(size.statedMm / 10).toFixed(1).padStart(5)} cm stated, ${(size.foundMm / 10).toFixed(1).padStart(5)} cm found  ` +
      `${signed(size.error).padStart(5)}, ledger ${signed(size.ledgerError)}`,
  )
const summary = (name: string, some: typeof sizes, errorOf = (size: SizeOutcome) => size.error) => {
  if (some.length === 0) return
  const off = some.map((size) => Math.abs(errorOf(size))).sort((a, b) => a - b)
  const bias = some.reduce((sum, size) => sum + errorOf(size), 0) / some.length
  print(
    `  ${name.padEnd(34)} n = ${String(some.length).padStart(2)}: median off ${percent(at(off, 0.5))}, ` +
      `90th percentile ${percent(at(off, 0.9))}, mean signed ${signed(bias)}`,
  )
}
summary("all", sizes)
summary("all, by the ledger", sizes, (size) => size.ledgerError)
// The laws of yarn and hook were fitted on swatches (stitches-gauges.json), on none of these motifs; the yarns that go with a
// hook alone were counted in the motifs that name both, which are not among those judged by the hook alone.
for (const source of ["yarn-and-hook", "hook", "yarn", "swatch"] as const)
  summary(
    `sizes from ${source}`,
    sizes.filter((size) => size.gauge === source),
  )
for (const [name, key] of [
  ["yarn weight", (size: SizeOutcome) => String(size.yarnWeight ?? "unknown")],
  ["stitches", (size: SizeOutcome) => size.stitches],
  ["shape", (size: SizeOutcome) => size.shape],
] as const)
  for (const group of [...new Set(sizes.map(key))].sort())
    summary(
      `${name} ${group}`,
      sizes.filter((size) => key(size) === group),
    )
const fromOne = compareSizesFromOne(measured)
summary("the size after one round given", fromOne)
const middle = new Map(
  measured.map(({ id, measured: m }) => [
    id,
    m?.at_rounds[Math.floor((m.at_rounds.length - 1) / 2)],
  ]),
)
summary(
  "the size after a middle round given",
  fromOne.filter(({ id, told }) => middle.get(id) === told.round),
)
for (const mm of [...new Set(fromOne.map(({ told }) => told.mm))].sort((a, b) => a - b))
  summary(
    `  ... of ${(mm / 10).toFixed(1)} cm`,
    fromOne.filter(({ told }) => told.mm === mm),
  )

print("\nSquaring circles of published motifs, first looks (keyed before, run once, mended after)")
for (const look of squaringLooks()) for (const line of squaringLookWords(look)) print(`  ${line}`)

print(
  "\nStraightness by a second judge, lengths alone (bow as a share of the side, mean of the sides)",
)
for (const { count, byNet, byLengths } of judgeByLengths())
  print(
    `  ${count} dc, 4 corners in 2 rounds: net ${(100 * byNet).toFixed(1)} %, lengths ${(100 * byLengths).toFixed(1)} %`,
  )

print(
  "\nSquaring a disc of N stitches: bow under 2 % of the side, corners within 3 degrees, flat or blocks flat",
)
const rows = squaringTable(full ? {} : { step: 7 })
for (const stitch of ["dc", "sc"] as const)
  for (const corners of [4, 6, 8]) {
    const some = rows.filter((row) => row.stitch === stitch && row.corners === corners)
    const worst = Math.max(...some.map((row) => Math.abs(row.bow)))
    print(
      `  ${stitch}, ${corners} corners: ${some.filter((row) => row.meets).length} of ${some.length} meet it, worst bow ${(100 * worst).toFixed(1)} %`,
    )
  }
for (const row of rows.filter((candidate) => !candidate.meets))
  print(
    `  fails: ${row.count} ${row.stitch}, ${row.corners} corners, bow ${(100 * row.bow).toFixed(1)} %, ${row.verdict}`,
  )

print("\nPublished circle-to-square recipes against our proposal (bow as a share of the side)")
for (const { id, theirs, ours, straighter, flatter } of scoreRecipes())
  print(
    `  ${id.padEnd(30)} bow ${(100 * theirs.bow).toFixed(1)} % (${theirs.verdict}), ours ${(100 * ours.bow).toFixed(1)} % (${ours.verdict}), ${straighter && flatter ? "at least as straight and flat" : "NOT as good"}`,
  )

print("\nPublished squares as squares (bow as a share of the side)")
for (const { id, roundsRead, rounds, graded, bow, cornerAngleDeg, verdict } of measureSquares())
  print(
    `  ${id.padEnd(38)} read ${String(roundsRead).padStart(2)} of ${String(rounds).padStart(2)}  ` +
      `${bow === null || cornerAngleDeg === null ? "not yet square where reading ends" : `bow ${(100 * bow).toFixed(1)} %, corners ${cornerAngleDeg.toFixed(0)} degrees`}` +
      `, ${verdict ?? "not laid out"}${graded ? ", graded heights" : ""}`,
  )

const trials = mendTrials(full ? 100 : 20, 31337)
const found = trials.filter((trial) => trial.place !== null && trial.place <= 3).length
print(
  `\nRemedies: the true correction is among the first three in ${found} of ${trials.length} broken pieces`,
)

const breaks = breakTrials(full ? 20 : 4, 5001)
print(
  "\nMends of slips put into squares, hexagons and lace: the true correction's place among them",
)
for (const kind of [...breakKinds, null]) {
  const some = kind === null ? breaks : breaks.filter((trial) => trial.kind === kind)
  const within = (most: number) =>
    some.filter(({ place }) => place !== null && place <= most).length
  print(
    `  ${(kind ?? "all").padEnd(8)} first ${within(1)}, among the first three ${within(3)} of ${some.length}`,
  )
}
const sound = offersForSound(full ? 60 : 12)
print(
  `  sound pieces, judged as a check judges them: a change offered for ${sound.offered.length} of ${sound.pieces}`,
)
for (const { id, proposed } of sound.offered) print(`    ${id}: ${proposed[0]}`)

await printPictures(print, full)

function signed(share: number): string {
  return `${share >= 0 ? "+" : ""}${(100 * share).toFixed(0)} %`
}

/** Linear quantile of a sorted list. */
function at(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1)
  const low = Math.floor(place)
  const high = Math.min(low + 1, sorted.length - 1)
  return sorted[low]! + (place - low) * (sorted[high]! - sorted[low]!)
}
