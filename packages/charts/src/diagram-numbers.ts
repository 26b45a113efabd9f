// Numbers of rounds in a stitch diagram: each at the start of its round, with an arrow along the work where
// any round is turned. Symbols under a number are faded, numbers that would crowd each other are left out.

import type { Motif } from "@roundwright/motif"
import type { DiagramMark } from "./diagram-geometry.ts"
import type { RoundStart } from "./diagram-starts.ts"
import type { DiagramView } from "./diagram-view.ts"
import type { ChartLayer, SpecValue } from "./spec.ts"

/** Figures smaller than the first cannot be read, larger than the second need not be, px. */
const figurePx = { least: 8.5, most: 12 } as const
/** A figure is about this wide against its height. */
const figureWidthShare = 0.62
/** A figure may be this high against the depth of its round. */
const depthShare = 0.5

export interface RoundNumbers {
  readonly layer: ChartLayer
  readonly arrows: readonly Readonly<Record<string, SpecValue>>[]
  /** Symbols that lie under a number. */
  readonly faded: ReadonlySet<DiagramMark>
}

export function numberRounds(
  starts: readonly RoundStart[],
  marks: readonly DiagramMark[],
  view: DiagramView,
  motif: Motif,
): RoundNumbers {
  const depths = starts.map(({ depth }) => depth * view.pxPerUnit)
  const deepest = Math.max(...depths)
  const font =
    Math.round(Math.min(figurePx.most, Math.max(figurePx.least, depthShare * deepest)) * 2) / 2
  const boxes = spaced(
    starts.map((start) => boxOf(start, font, view)),
    view,
  )
  const turned = motif.rounds.some((round, index) => round.turned && index > 0)
  return {
    layer: {
      data: {
        values: boxes.map(({ start }) => ({
          x: view.tidy(start.x),
          y: view.tidy(start.y),
          number: String(start.number),
        })),
      },
      mark: { type: "text", fontSize: font, fontWeight: 700, baseline: "middle", align: "center" },
      encoding: {
        x: { ...view.x, field: "x" },
        y: { ...view.y, field: "y" },
        text: { field: "number", type: "nominal" },
      },
    },
    arrows: turned ? boxes.map((box) => arrowBeside(box, font, view)) : [],
    faded: new Set(marks.filter((mark) => boxes.some((box) => covers(box, mark)))),
  }
}

interface NumberBox {
  readonly start: RoundStart
  readonly halfWide: number
  readonly halfHigh: number
}

function boxOf(start: RoundStart, font: number, { pxPerUnit }: DiagramView): NumberBox {
  const wide = figureWidthShare * font * String(start.number).length
  return { start, halfWide: wide / 2 / pxPerUnit, halfHigh: font / 2 / pxPerUnit }
}

/** Room between two numbers, px: closer together they read as one. */
const numberGapPx = 4

/** From the outermost in, since the last round is asked for most; a number that would touch another is left out. */
function spaced(boxes: readonly NumberBox[], { pxPerUnit }: DiagramView): NumberBox[] {
  const gap = numberGapPx / pxPerUnit
  const kept: NumberBox[] = []
  for (const box of [...boxes].reverse())
    if (
      kept.every(
        (other) =>
          Math.abs(box.start.x - other.start.x) > box.halfWide + other.halfWide + gap ||
          Math.abs(box.start.y - other.start.y) > 0.8 * (box.halfHigh + other.halfHigh) + gap,
      )
    )
      kept.unshift(box)
  return kept
}

/** True when a symbol's stem passes through the box. */
function covers({ start, halfWide, halfHigh }: NumberBox, mark: DiagramMark): boolean {
  const turn = (mark.angle * Math.PI) / 180
  const [ux, uy] = [Math.sin(turn), Math.cos(turn)]
  return [-0.4, -0.2, 0, 0.2, 0.4].some((share) => {
    const x = mark.x + share * mark.length * ux - start.x
    const y = mark.y + share * mark.length * uy - start.y
    return Math.abs(x) <= 1.25 * halfWide && Math.abs(y) <= halfHigh
  })
}

function arrowBeside({ start }: NumberBox, font: number, view: DiagramView) {
  const turn = (start.angle * Math.PI) / 180
  const away = (0.5 * font * Math.max(1, 0.75 * String(start.number).length) + 4) / view.pxPerUnit
  return {
    x: view.tidy(start.x + away * Math.sin(turn)),
    y: view.tidy(start.y + away * Math.cos(turn)),
    size: Math.round((0.55 * font) ** 2),
    angle: Math.round(start.angle),
    opacity: 1,
    told: "Way of work",
  }
}
