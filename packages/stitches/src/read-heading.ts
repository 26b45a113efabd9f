// Reads one heading of a pattern as makers write it: what it says of yarn, strands, hook, gauge and size, each with its place,
// and what of it was not used. "Yarn: sport, Hook: 3.5 mm", "worsted (4)", "20 sts x 10 rows = 4 in (dc)", "Rnds 1-3 = 3
// inches", "6" across", "Aran weight held double".
//
// A line may hold several headings; each part is read for what it is about, and beside that for what it plainly names (a
// hook in a line of yarn only where the word hook or mm stands there). One pass over the pieces of heading-tokens.ts for
// each thing that is sought.

import type { PieceSize, Swatch, YarnWeight } from "./gauge.ts"
import {
  type HeadingProblem,
  hookProblem,
  nothingRead,
  severalYarns,
  sizeProblem,
} from "./heading-problems.ts"
import {
  cutHeading,
  type HeadingToken,
  isSign,
  isWord,
  longestHeading,
  type Spot,
} from "./heading-tokens.ts"
import { unusedOf } from "./heading-unused.ts"
import type { Terms } from "./kinds.ts"
import { findPieceSizes } from "./piece-size.ts"
import { readGaugeLine } from "./read-gauge-line.ts"
import { findHook, type HookReading } from "./read-hook.ts"
import { findStrands, findYarnWeight, mentionsOf } from "./read-yarn.ts"
import { findThreadSize } from "./thread-size.ts"

/** What a heading is about; materials name yarn and hook together. */
export type HeadingAbout = "yarn" | "hook" | "gauge" | "size" | "materials"

export type Found<Value> = Spot & { readonly value: Value }

export interface HeadingReading {
  readonly yarnWeight?: Found<YarnWeight>
  readonly threadSize?: Found<number>
  readonly strands?: Found<number>
  readonly hookMm?: Found<number>
  /** "4.5 mm instead of 4 mm", or the hook of a gauge line: the hook that was measured with. */
  readonly gaugeHookMm?: Found<number>
  readonly swatches: readonly Found<Swatch>[]
  readonly pieces: readonly PieceSize[]
  readonly problems: readonly HeadingProblem[]
  /** Runs of words and numbers that nothing was made of, connecting words left out. */
  readonly unused: readonly Spot[]
}

/** Which heading a name is; undefined for one that tells nothing of yarn, hook, gauge or size. */
export function headingAbout(name: string): HeadingAbout | undefined {
  return abouts.get(name.trim().toLowerCase())
}

const abouts: ReadonlyMap<string, HeadingAbout> = new Map(
  Object.entries({
    yarn: [
      "yarn",
      "yarns",
      "thread",
      "threads",
      "wool",
      "wools",
      "yarn weight",
      "yarn used",
      "cotton",
      "weight",
    ],
    hook: [
      "hook",
      "hooks",
      "hook size",
      "hook sizes",
      "crochet hook",
      "crochet hook size",
      "needle",
      "needles",
    ],
    gauge: ["gauge", "tension"],
    size: [
      ...[
        "size",
        "sizes",
        "finished size",
        "finished sizes",
        "finished measurements",
        "measurements",
      ],
      ...[
        "measurement",
        "dimensions",
        "finished dimensions",
        "approximate size",
        "motif size",
        "square size",
      ],
    ],
    materials: ["materials", "material", "supplies", "you will need", "you need", "what you need"],
  } satisfies Record<HeadingAbout, string[]>).flatMap(([about, names]) =>
    names.map((name) => [name, about as HeadingAbout] as const),
  ),
)

/** Reads the value of a heading, the text behind its colon. Never throws. @param terms those the stitches of a gauge are named in */
export function readHeading(about: HeadingAbout, text: string, terms: Terms): HeadingReading {
  const draft = new Draft()
  for (const part of cutParts(about, cutHeading(text))) readPart(part, text, terms, draft)
  if (text.length > longestHeading) draft.problems.push(nothingRead(about, 0, text.length))
  return draft.reading()
}

interface Part {
  readonly about: HeadingAbout
  readonly tokens: readonly HeadingToken[]
  readonly labels: readonly HeadingToken[]
}

/** Most words in the name of a heading inside a line. */
const longestName = 3

/** Words of goods: "size 10 crochet thread: white" names no heading in its middle. */
const goods: ReadonlySet<string> = new Set([
  "thread",
  "threads",
  "wool",
  "wools",
  "cotton",
  "weight",
])

/** The parts of a line that names several headings: "sport, Hook: 3.5 mm". */
function cutParts(about: HeadingAbout, tokens: readonly HeadingToken[]): Part[] {
  const parts: Part[] = []
  let from = 0
  let labels: readonly HeadingToken[] = []
  let current = about
  for (let at = 1; at < tokens.length; at++) {
    if (!isSign(tokens[at], ":")) continue
    let first = at
    let named: HeadingAbout | undefined
    for (let back = at - 1; back >= Math.max(from, at - longestName); back--) {
      if (tokens[back]!.type !== "word") break
      const name = tokens
        .slice(back, at)
        .map(({ text }) => text)
        .join(" ")
      const found = headingAbout(name)
      const inside = goods.has(name) && tokens[back - 1]?.type === "word"
      if (found !== undefined && !inside) [first, named] = [back, found]
    }
    if (named === undefined) continue
    parts.push({ about: current, tokens: tokens.slice(from, first), labels })
    labels = tokens.slice(first, at + 1)
    ;[from, current] = [at + 1, named]
  }
  parts.push({ about: current, tokens: tokens.slice(from), labels })
  return parts.filter((part) => part.tokens.length > 0)
}

type Mutable<Type> = { -readonly [Key in keyof Type]: Type[Key] }

/** What was found so far; of several parts the first that tells a thing. */
class Draft {
  readonly found: Mutable<
    Pick<HeadingReading, "yarnWeight" | "threadSize" | "strands" | "hookMm" | "gaugeHookMm">
  > = {}
  readonly swatches: Found<Swatch>[] = []
  readonly pieces: PieceSize[] = []
  readonly problems: HeadingProblem[] = []
  readonly used: Spot[] = []
  readonly unused: Spot[] = []

  set<Key extends keyof Draft["found"]>(key: Key, found: Draft["found"][Key]): void {
    if (found === undefined) return
    this.used.push(found)
    this.found[key] ??= found
  }

  reading(): HeadingReading {
    const { found, swatches, pieces, problems, unused } = this
    return { ...found, swatches, pieces, problems, unused }
  }
}

function readPart(part: Part, text: string, terms: Terms, draft: Draft): void {
  const { about, tokens, labels } = part
  const before = draft.used.length
  draft.used.push(...labels)
  if (about === "gauge") readGauge(part, text, terms, draft)
  if (about === "size") readSize(part, draft)
  if (about !== "size") readYarn(part, draft)
  if (about !== "size") readHooks(part, draft)
  const told = draft.problems.length > 0 || draft.used.length > before + labels.length
  const [first, last] = [tokens[0]!, tokens.at(-1)!]
  if (!told && about === "hook") draft.problems.push(nothingRead(about, first.start, last.end))
  draft.unused.push(...unusedOf(tokens, draft.used))
}

function readYarn({ about, tokens }: Part, draft: Draft): void {
  const strands = findStrands(tokens)
  if (strands !== undefined) draft.set("strands", { ...strands, value: strands.strands })
  const mainly = about === "yarn" || about === "materials"
  for (const [at, token] of tokens.entries()) {
    const thread = findThreadSize(tokens, at)
    if (thread === undefined) continue
    const spot = { start: token.start, end: tokens[thread.next - 1]!.end }
    draft.set("yarnWeight", { ...spot, value: thread.weight })
    if (thread.size !== undefined) draft.set("threadSize", { ...spot, value: thread.size })
    break
  }
  const weight = findYarnWeight(tokens, !mainly)
  if (weight === "several") {
    if (about === "yarn") draft.problems.push(severalYarns(tokens[0]!.start, tokens.at(-1)!.end))
  } else if (weight !== undefined) {
    draft.set("yarnWeight", { ...weight, value: weight.weight })
    draft.used.push(...mentionsOf(weight.weight, tokens))
  }
}

/** In a gauge line lengths are sizes of stitches: only what stands this near to the word hook is a hook's. */
const nearHook = 5

function readHooks({ about, tokens: all }: Part, draft: Draft): void {
  const word = all.findIndex((token) => isWord(token, "hook", "hooks"))
  if (about === "gauge" && word < 0) return
  if (about !== "hook" && word < 0 && !all.some((token) => isWord(token, "mm"))) return
  const tokens = about === "gauge" ? all.slice(Math.max(0, word - nearHook), word + nearHook) : all
  const found: HookReading = findHook(tokens, about === "hook")
  const { hook, insteadOf, refused, named = [] } = found
  draft.used.push(...named)
  if (hook !== undefined)
    draft.set(about === "gauge" ? "gaugeHookMm" : "hookMm", { ...hook, value: hook.mm })
  if (insteadOf !== undefined) draft.set("gaugeHookMm", { ...insteadOf, value: insteadOf.mm })
  if (refused !== undefined && about !== "gauge") {
    draft.problems.push(hookProblem(refused))
    draft.used.push(refused)
  }
}

function readSize({ tokens }: Part, draft: Draft): void {
  const { pieces, refused } = findPieceSizes(tokens, true)
  draft.pieces.push(...pieces)
  draft.used.push(...pieces.map(({ place }) => place!))
  for (const one of refused) {
    draft.problems.push(sizeProblem(one))
    draft.used.push(one)
  }
}

function readGauge({ tokens }: Part, text: string, terms: Terms, draft: Draft): void {
  const [start, end] = [tokens[0]!.start, tokens.at(-1)!.end]
  const reading = readGaugeLine(text.slice(start, end), terms)
  const spot = { start, end }
  draft.swatches.push(...reading.swatches.map((value) => ({ ...spot, value })))
  draft.pieces.push(
    ...reading.pieces.map((piece) => ({
      ...piece,
      place: { start: start + piece.place!.start, end: start + piece.place!.end },
    })),
  )
  draft.problems.push(
    ...reading.problems.map((problem) => ({
      ...problem,
      code: "gauge-line" as const,
      start: start + problem.start,
    })),
  )
  if (reading.swatches.length + reading.pieces.length + reading.problems.length > 0)
    draft.used.push(spot)
}
