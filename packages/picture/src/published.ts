// The measurement for other programs and for lines: sizes in pixels of the picture as it is looked at, rings
// inside first, counts set by hand in place of those found.

import { RoundwrightError } from "@roundwright/numerics"
import { rescaled } from "./grey.ts"
import { type KnownLength, millimetresPerPixel } from "./known-length.ts"
import type { PictureMeasurement } from "./measure.ts"
import type { RingFound } from "./rings.ts"

export interface PublishedRing {
  /** Radii to the middle of a side, pixels of the straight view. */
  readonly innerPx: number
  readonly outerPx: number
  readonly repeats: number | null
  readonly strands: number | null
  /** Chance that one of the two counts is right; 1 when set by hand. */
  readonly sureness: number
  readonly nextBest: number | null
  /** Half or twice as many fit as well. */
  readonly halfOrTwice: boolean
  readonly by: "found" | "hand"
  /** The ring ends on a closed line of thread; open loops end in crests. */
  readonly closed: boolean
}

export interface PublishedOutline {
  readonly kind: "round" | "polygon"
  readonly corners: number
  /** From the centre to the middle of a side (of a round piece: the mean reach) and to a corner. */
  readonly sideReachPx: number
  readonly cornerReachPx: number
}

export interface PublishedMeasurement {
  readonly widthPx: number
  readonly heightPx: number
  readonly centrePx: readonly [number, number]
  readonly centreSureness: number
  readonly lightOnDark: boolean
  readonly outline: PublishedOutline
  readonly view: {
    readonly by: "as it is" | "corners" | "regularity" | "round edge"
    /** Shorter over longer side of a square as the picture shows it; null where it was not asked. */
    readonly foreshortening: number | null
    /** The view may be wrong: look at it, and give the four corners. */
    readonly doubtful: boolean
  }
  /** Millimetres a pixel of the straight view; null without a known length. */
  readonly mmPerPx: number | null
  readonly rings: readonly PublishedRing[]
}

/** A count set by hand; without strands they are the repeats, or what was found where that fits. */
export interface CountByHand {
  readonly repeats: number
  readonly strands?: number | undefined
}

export interface PublishOptions {
  /** Size of the picture as it is looked at, and pixels of the measured picture a pixel of it. */
  readonly widthPx: number
  readonly heightPx: number
  readonly scale: number
  readonly known?: KnownLength | undefined
  /** Counts set by hand, by the number of the ring from 1. */
  readonly counts?: ReadonlyMap<number, CountByHand> | undefined
}

/** A view is doubted when its rings are less clear than this though the piece was seen at a tilt. */
const doubtfulClarity = 0.25
/** Tilts below this foreshortening are told of. */
const tilted = 0.97
/** A count is taken for found from this chance on. */
export const leastRead = 0.4

/** @throws RoundwrightError `no-such-ring`, `no-sides` */
export function publishMeasurement(
  measured: PictureMeasurement,
  options: PublishOptions,
): PublishedMeasurement {
  const { rows, rings, outline, centre, centreGiven, view } = measured
  const px = measured.scale * options.scale
  const shown = rescaled(centreGiven, 1 / options.scale)
  const radius = (row: number) =>
    row < rows.length ? rows[row]!.radius / px : (rows.at(-1)!.radius + 1) / px
  for (const number of options.counts?.keys() ?? [])
    if (!(number >= 1 && number <= rings.length))
      throw new RoundwrightError("no-such-ring", `There is no ring ${number}.`, {
        hint: `The picture shows ${rings.length} rings.`,
      })
  const regular = view.regular
  const foreshortening =
    view.by === "regularity"
      ? regular!.foreshortening
      : (view.flattened ?? (regular === undefined ? null : 1))
  const counted = rings.map((ring, i) => countOf(ring, options.counts?.get(i + 1)))
  const strandsOf = counted.map(({ strands, repeats }) => strands ?? repeats)
  return {
    widthPx: options.widthPx,
    heightPx: options.heightPx,
    centrePx: [shown.x, shown.y],
    centreSureness: centre.by === "hand" ? 1 : centreSureness(centre.score, centre.clarity),
    lightOnDark: measured.silhouette.light,
    outline: {
      kind: outline.kind,
      corners: outline.corners,
      sideReachPx: outline.sidePx / px,
      cornerReachPx: outline.cornerPx / px,
    },
    view: {
      by: view.by,
      foreshortening,
      doubtful:
        (view.by === "regularity" && (centre.clarity < doubtfulClarity || !regular!.settled)) ||
        (view.by === "as it is" &&
          regular !== undefined &&
          regular.foreshortening < tilted &&
          centre.clarity < doubtfulClarity),
    },
    mmPerPx: options.known
      ? millimetresPerPixel(measured, options.known, options.scale, strandsOf) * px
      : null,
    rings: rings.map((ring, i) => ({
      innerPx: radius(ring.fromRow),
      outerPx: radius(ring.toRow + 1),
      ...counted[i]!,
      closed: ring.closedOutside,
    })),
  }
}

function countOf(
  { repeats, strands, sureness, nextBest, halfOrTwice }: RingFound,
  given: CountByHand | undefined,
): Omit<PublishedRing, "innerPx" | "outerPx" | "closed"> {
  if (given === undefined) return { repeats, strands, sureness, nextBest, halfOrTwice, by: "found" }
  const fits = strands !== null && strands % given.repeats === 0
  return {
    repeats: given.repeats,
    strands: given.strands ?? (fits ? strands : given.repeats),
    sureness: 1,
    nextBest: null,
    halfOrTwice: false,
    by: "hand",
  }
}

/** Turned pictures that match by half and rings clear by a fifth place the centre in all but a few drawings of ours. */
function centreSureness(score: number, clarity: number): number {
  return 1 / (1 + Math.exp(-(8 * (score - 0.4) + 10 * (clarity - 0.12))))
}

/** What is not sure and has to be looked at, in the order of the rings; empty when all is sure. */
export function openQuestions(published: PublishedMeasurement): string[] {
  const questions = published.view.doubtful
    ? ["The picture seems to be taken at a tilt that could not be told: give the four corners."]
    : []
  const isRead = (ring: PublishedRing) => ring.repeats !== null && ring.sureness >= leastRead
  const firstRead = published.rings.findIndex(isRead)
  published.rings.forEach((ring, i) => {
    const n = i + 1
    // What is not read in the very middle is the hole.
    if (i < firstRead) return
    if (!isRead(ring)) questions.push(`Count ring ${n}: it could not be read.`)
    else if (ring.halfOrTwice)
      questions.push(
        `Look at ring ${n}: it shows ${ring.repeats} repeats${ring.nextBest === null ? "" : ` or ${ring.nextBest}`}, one may be the legs of the other.`,
      )
    else if (ring.sureness < sure)
      questions.push(
        `Look at ring ${n}: are there ${ring.repeats} repeats${ring.nextBest === null ? "" : ` or ${ring.nextBest}`}?`,
      )
  })
  return questions
}

/** A count as sure as this is not asked about. */
const sure = 0.85
