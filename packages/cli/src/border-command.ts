// `roundwright border`: stitches a side, corners, a repeat fitted, each round judged flat.

import { formatLength } from "@roundwright/assessment"
import {
  type BorderPlan,
  type BorderSide,
  dipsOfSide,
  figuresAlone,
  lengthAt,
  levelDips,
  type PieceNow,
  planBorder,
  readCorner,
  readLength,
  readRepeat,
  type SideCount,
  sideByLength,
  sideByPieces,
  sideByRows,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import { type Gauge, gaugeFrom, kindName, type StitchKind, type Terms } from "@roundwright/stitches"
import { askedFigures, printFigures } from "./figures-out.ts"
import { gaugeOfHand, type HandOptions } from "./hand.ts"
import { pieceOf } from "./match-command.ts"
import { oneOf, wholeNumber } from "./option-values.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"
import { readLayout } from "./yarn-command.ts"

export interface BorderRequest extends Omit<HandOptions, "terms"> {
  readonly files: readonly string[]
  readonly side?: string | undefined
  readonly stitches?: string | undefined
  readonly pieces?: string | undefined
  readonly layout?: string | undefined
  readonly "per-join"?: string | undefined
  readonly rows?: string | undefined
  readonly "row-stitch"?: string | undefined
  readonly repeat?: string | undefined
  readonly rounds?: string | undefined
  readonly repeats?: string | undefined
  readonly onto?: string | undefined
  readonly parts?: string | undefined
  readonly corner?: string | undefined
  readonly squares?: string | undefined
  readonly to?: string | undefined
  readonly every?: string | undefined
  readonly step?: string | undefined
  readonly "too-many"?: string | undefined
  readonly row?: string | undefined
  readonly now?: string | undefined
  readonly pattern?: string | undefined
  readonly terms?: string | undefined
  readonly json: boolean
}

/** @returns 0 for a border that lies flat, else 1 @throws RoundwrightError for what cannot be used */
export async function runBorder(request: BorderRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  const figures = figuresAlone("border", {
    ...askedFigures(request),
    ...(file === undefined ? {} : { file }),
  })
  if (figures) return printFigures(figures, request.json, around)
  if (others.length > 0)
    throw new RoundwrightError("one-file", "One pattern at a time, please.", {
      hint: "Name the motif the blanket is made of, or none.",
    })
  const piece =
    file === undefined
      ? null
      : pieceOf(await patternOfFile(around.cwd, file, request.pattern), handOf(request))
  const terms: Terms =
    request.terms === undefined
      ? (piece?.check.reading.terms ?? "US")
      : oneOf(request.terms, ["US", "UK"] as const, "--terms")
  const gauge =
    piece?.gauge ??
    gaugeOfHand({ ...handOf(request), terms }, undefined) ??
    gaugeFrom({ swatches: [] })
  const kinds = readStitchList(request.rounds ?? kindName({ basic: "sc" }, terms), terms)
  const counts = sidesAsked(request, gauge, kinds[0] ?? { basic: "sc" }, piece)
  const plan = planBorder(gauge, {
    sides: counts.map(
      (one): BorderSide => ({
        between: one.between,
        ...(one.edgeMm === undefined ? {} : { edgeMm: one.edgeMm }),
      }),
    ),
    rounds: kinds,
    terms,
    ...(request.corner === undefined ? {} : { corner: readCorner(request.corner) }),
    ...(request.repeat === undefined
      ? {}
      : { repeat: repeatAsked(request.repeat, request.repeats) }),
  })
  const dips = piece ? dipWords(piece, kinds[0]!, terms) : null
  around.out(
    request.json
      ? `${JSON.stringify({ sides: counts, ...plan, dips }, null, 2)}\n`
      : printed(counts, plan, dips, gauge),
  )
  return plan.verdict === "flat" ? 0 : 1
}

function handOf({ gauge, hook, yarn, now }: BorderRequest) {
  return { gauge, hook, yarn, now }
}

type AskedSide = SideCount & { readonly stitchesPerSide: number; readonly edgeMm?: number }

/** The sides of the rectangle: one for a square, two else. */
function sidesAsked(
  request: BorderRequest,
  gauge: Gauge,
  kind: StitchKind,
  piece: PieceNow | null,
): AskedSide[] {
  const perJoin = request["per-join"] === undefined ? 1 : wholeOrNone(request["per-join"])
  const several = request.stitches?.split(/\s{0,9}(?:[x×,]|\band\b)\s{0,9}/i) ?? []
  // Two counts are the two sides themselves.
  if (several.length === 2 && request.pieces === undefined && request.layout === undefined)
    return several.map((one) =>
      asked(sideByPieces({ pieces: 1, stitches: wholeNumber(one, "--stitches") }), false),
    )
  const stitches =
    request.stitches === undefined
      ? (piece?.now.stitchesPerSide ?? null)
      : wholeNumber(request.stitches, "--stitches")
  if (stitches !== null && request.side === undefined) {
    const along =
      request.pieces !== undefined
        ? [wholeNumber(request.pieces, "--pieces")]
        : request.layout !== undefined
          ? readLayout(request.layout)
          : [1]
    const pieceMm = piece ? piece.now.acrossMm : undefined
    return [...new Set(along)].map((pieces) => ({
      ...asked(sideByPieces({ pieces, stitches, perJoin }), true),
      ...(pieceMm === undefined ? {} : { edgeMm: pieces * pieceMm }),
    }))
  }
  if (request.side !== undefined) {
    if (!gauge.absolute)
      throw new RoundwrightError("no-measure", "Nothing tells how wide a stitch is.", {
        hint: "Add --gauge '13 dc = 4 in', or --yarn and --hook.",
      })
    return readSides(request.side).map((edgeMm) => ({
      ...asked(sideByLength(edgeMm, gauge, kind.basic), false),
      edgeMm,
    }))
  }
  if (request.rows !== undefined) {
    const [row] = readStitchList(request["row-stitch"] ?? "dc")
    return [
      asked(
        sideByRows(wholeNumber(request.rows, "--rows"), row?.basic ?? "dc", gauge, kind.basic),
        false,
      ),
    ]
  }
  throw new RoundwrightError("no-sides", "No side is given to put a border on.", {
    hint: "Give --side '9 in', --stitches 59 --pieces 3, --rows 20, or a pattern with --layout 4x8.",
  })
}

function repeatAsked(text: string, wanted: string | undefined) {
  const repeat = readRepeat(text)
  return wanted === undefined ? repeat : { ...repeat, wanted: wholeNumber(wanted, "--repeats") }
}

/** A side of pieces is told with its corners, as makers count it; one by its length between them. */
function asked(count: SideCount, withCorners: boolean): AskedSide {
  return { ...count, stitchesPerSide: withCorners ? count.withCorners : count.between }
}

function readSides(text: string): number[] {
  const [a = "", b] = text.split(/\s{0,9}(?:x|×|\bby\b)\s{0,9}/i)
  if (b === undefined) return [readLength(a, "--side")]
  const second = readLength(b, "--side")
  // "120 x 150 cm": the unit stands once.
  const unit = /[a-z"″”]{1,20}\s{0,9}$/i.exec(b)?.[0] ?? ""
  return [lengthAt(a) ? readLength(a, "--side") : readLength(`${a} ${unit}`, "--side"), second]
}

function wholeOrNone(text: string): number {
  return text.trim() === "0" ? 0 : wholeNumber(text, "--per-join")
}

/** Which stitches fill the dips of a side, run by run; null where the lowest does all along. */
function dipWords(piece: PieceNow, lowest: StitchKind, terms: Terms): string | null {
  const depths = dipsOfSide(piece.motif, piece.gauge)
  if (depths === null) return null
  const levelled = levelDips(depths, piece.gauge, lowest.basic)
  const runs: { stitch: string; many: number }[] = []
  for (const { stitch } of levelled) {
    const name = kindName({ basic: stitch }, terms)
    const last = runs.at(-1)
    if (last?.stitch === name) last.many += 1
    else runs.push({ stitch: name, many: 1 })
  }
  if (runs.length === 1) return null
  return `To level the sides in round 1, from corner to corner: ${runs.map(({ stitch, many }) => `${many} ${stitch}`).join(", ")}.`
}

function printed(
  counts: readonly AskedSide[],
  plan: BorderPlan,
  dips: string | null,
  gauge: Gauge,
): string {
  const lines = counts.map(({ text }) => wrap(`${text}.`, 80))
  lines.push("", ...plan.rounds.map(({ text }) => wrap(`${text}.`, 80, "", "  ")), "")
  const adds = gauge.absolute ? ` It adds ${formatLength(plan.addsMm)} to each way across.` : ""
  lines.push(wrap(`${plan.text}${adds}`, 80))
  if (dips) lines.push(wrap(dips, 80))
  return `${lines.join("\n")}\n`
}
