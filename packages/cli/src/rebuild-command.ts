// `roundwright rebuild NOTEBOOK`: rounds that fit the rings of a measured picture, and the one question.

import { examinePattern } from "@roundwright/assessment"
import { withStarts, writeRounds } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"
import { readLines, rebuildRounds, seenOfLines } from "@roundwright/picture"
import { alignColumns } from "./align.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface RebuildRequest {
  readonly files: readonly string[]
  readonly gauge?: string | undefined
  readonly hook?: string | undefined
  readonly yarn?: string | undefined
  readonly json?: boolean | undefined
}

/** @throws RoundwrightError for a notebook that cannot be used; the caller prints it */
export async function runRebuild(request: RebuildRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined) throw refusal("Name the notebook that holds the lines of a picture.")
  if (others.length > 0) throw refusal("One notebook at a time, please: several are named.")
  const read = readText(around.cwd, file)
  if ("fault" in read) throw refusal(read.fault)
  const lines = readLines(read.text)
  const [problem] = lines.problems
  if (problem) throw refusal(`${file}, line ${problem.line}: ${problem.message}`)
  const headings = headingsOf(read.text, request)
  const { gauge } = examinePattern(`${headings.join("\n")}\n`, { lean: true })
  if (!gauge?.absolute)
    throw new RoundwrightError("no-scale", "Nothing tells how large a stitch is.", {
      hint: "Give Gauge:, or Yarn: and Hook:, in the notebook or as options.",
    })
  const seen = seenOfLines(lines)
  const rebuilt = rebuildRounds(seen.rings, {
    gauge,
    scaleKnown: lines.known !== null,
    holeMm: seen.holeMm,
  })
  const pattern = [...headings, "", ...writeRounds(withStarts(rebuilt.motif))].join("\n")
  const status = rebuilt.question === null ? 0 : 1
  if (request.json) {
    const { rounds, question } = rebuilt
    const asks = question && { ring: question.ring, about: question.about }
    const result = { rounds, question: question?.text ?? null, asks, text: pattern }
    around.out(`${JSON.stringify(result, null, 2)}\n`)
    return status
  }
  const rows = rebuilt.rounds.flatMap(({ ring, candidates, restsOn }) =>
    candidates.map((candidate, i) => [
      i === 0 ? String(ring) : "",
      candidate.stitch === "" ? "part of the next" : candidate.stitch,
      String(candidate.count),
      candidate.chains > 0 ? `${candidate.count} x ch ${candidate.chains}` : "",
      `${Math.round(100 * candidate.score)} %`,
      i === 0 ? restsOn : "",
    ]),
  )
  const lace = rebuilt.rounds.filter(({ lace: open }) => open).map(({ ring }) => ring)
  around.out(
    [
      ...alignColumns([["ring", "stitch", "count", "chains", "chance", "rests on"], ...rows]),
      "",
      ...(rebuilt.question ? [wrap(rebuilt.question.text, 80), ""] : []),
      ...(lace.length > 0
        ? [
            wrap(
              `Ring${lace.length > 1 ? "s" : ""} ${lace.join(", ")}: lace. How deep a round of lace is depends on how its chains are drawn out; its rounds are told less surely.`,
              80,
            ),
            "",
          ]
        : []),
      pattern,
      "",
    ].join("\n"),
  )
  return status
}

/** Headings that tell the gauge, options in place of the notebook's own. */
function headingsOf(text: string, { gauge, hook, yarn }: RebuildRequest): string[] {
  const given = { Gauge: gauge, Yarn: yarn, Hook: hook }
  const own = text
    .split(/\r?\n/)
    .filter((line) => /^\s*(?:gauge|yarn|hook|terms)\s*:/i.test(line))
    .map((line) => line.trim())
  const kept = [...new Set(own)].filter(
    (line) =>
      !Object.entries(given).some(
        ([name, value]) => value !== undefined && line.toLowerCase().startsWith(name.toLowerCase()),
      ),
  )
  const added = Object.entries(given).flatMap(([name, value]) =>
    value === undefined ? [] : [`${name}: ${value}`],
  )
  return [...kept, ...added]
}

function refusal(message: string): RoundwrightError {
  return new RoundwrightError("no-notebook", message)
}
