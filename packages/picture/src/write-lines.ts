// The measurement as plain lines of a notebook. A value that was found carries its chance in brackets; with the
// bracket deleted it is the reader's own and stays as it is.

import type { PublishedMeasurement, PublishedRing } from "./published.ts"
import { leastRead } from "./published.ts"

export interface LineOptions {
  /** Name of the picture as the notebook is to say it. */
  readonly picture: string
  /** The known length as it was given, such as "side 15.2 cm". */
  readonly known?: string | undefined
  /** Corners and box as given, in pixels. */
  readonly corners?: string | undefined
  readonly box?: string | undefined
  /** The place tapped, in pixels. */
  readonly tap?: string | undefined
  /** How the view is to be taken, as the reader said it. */
  readonly view?: string | undefined
}

const outlineNames: Readonly<Record<number, string>> = {
  3: "triangle",
  4: "square",
  5: "pentagon",
  6: "hexagon",
  8: "octagon",
}

const percent = (share: number) => `${Math.min(99, Math.round(100 * share))} %`

export function writeLines(published: PublishedMeasurement, options: LineOptions): string[] {
  const { outline } = published
  const length = lengthIn(published)
  const shape =
    outline.kind === "round"
      ? "round"
      : (outlineNames[outline.corners] ?? `${outline.corners} sides`)
  const reach =
    outline.kind === "round"
      ? `reach ${length(outline.sideReachPx)}`
      : `side ${length(outline.sideReachPx)}, corner ${length(outline.cornerReachPx)} from the centre`
  const [x, y] = published.centrePx
  return [
    `Picture: ${options.picture}`,
    ...(options.box === undefined ? [] : [`Box: ${options.box}`]),
    ...(options.tap === undefined ? [] : [`Tap: ${options.tap}`]),
    ...(options.corners === undefined ? [] : [`Corners: ${options.corners}`]),
    `Piece: ${shape}, ${published.lightOnDark ? "light on dark" : "dark on light"}; ${reach} (found)`,
    ...viewLine(published, options),
    ...(options.known === undefined ? [] : [`Known length: ${options.known}`]),
    `Centre: ${Math.round(x)} ${Math.round(y)}${published.centreSureness === 1 ? "" : ` (found, ${percent(published.centreSureness)})`}`,
    ...published.rings.map((ring, i) => ringLine(ring, i + 1, length)),
  ]
}

/** A view that is not simply the picture as it is. */
function viewLine({ view }: PublishedMeasurement, { view: said }: LineOptions): string[] {
  if (said !== undefined) return [`View: ${said}`]
  return view.by === "regularity" ? ["View: straight by its own regularity (found)"] : []
}

/** Lengths in millimetres where one is known, else in hundredths of the reach to a side. */
function lengthIn(published: PublishedMeasurement): (px: number) => string {
  const { mmPerPx, outline } = published
  if (mmPerPx !== null) return (px) => `${rounded(px * mmPerPx)} mm`
  return (px) => `${rounded((100 * px) / outline.sideReachPx)} of 100`
}

function rounded(value: number): string {
  return value < 20 ? String(Math.round(10 * value) / 10) : String(Math.round(value))
}

function ringLine(ring: PublishedRing, number: number, length: (px: number) => string): string {
  const to = `Ring ${number}: to ${length(ring.outerPx)}`
  if (ring.repeats === null || ring.sureness < leastRead) return `${to}; not read`
  const strands =
    ring.strands !== null && ring.strands !== ring.repeats ? `, ${ring.strands} strands` : ""
  const other =
    ring.nextBest !== null && (ring.halfOrTwice || ring.sureness < tellOther)
      ? `; or ${ring.nextBest} repeats`
      : ""
  const found = ring.by === "hand" ? "" : ` (found, ${percent(ring.sureness)}${other})`
  return `${to}; ${ring.repeats} repeats${strands}${found}`
}

/** Below this chance the next best is told too. */
const tellOther = 0.95
