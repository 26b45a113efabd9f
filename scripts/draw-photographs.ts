// `pnpm photographs`: draws the pictures that the reports measure, from patterns of ours: laid out by the net, worked in
// plied yarn a little unevenly, then photographed askew, with the light from one side, a soft lens and grain.

import { mkdirSync, writeFileSync } from "node:fs"
import { resolve } from "node:path"
import { examinePattern } from "@roundwright/assessment"
import { type RandomSource, seededRandom } from "@roundwright/numerics"
import { type GreyPicture, type Point, rescaled } from "@roundwright/picture"
import { encodeJpeg } from "@roundwright/picture/decode"
import { layOut } from "@roundwright/relaxation"
import { softened } from "../test/support/drawn-motif.ts"
import { notebookPattern } from "../test/support/notebook-pattern.ts"
import { drawStrokes, type Stroke } from "../test/support/strokes.ts"

interface Photograph {
  readonly file: string
  /** The report and the name of the pattern in it that the piece is worked from. */
  readonly pattern: readonly [report: string, name: string]
  readonly turnDeg: number
  readonly tiltDeg: number
  /** Direction in which the camera leans, degrees. */
  readonly towardsDeg: number
  /** Light at the far side of the picture, of that at the near side. */
  readonly lightFallsTo: number
  readonly groundBrightness: number
  readonly yarnBrightness: number
  /** Width of the picture, mm on the table. */
  readonly acrossMm: number
  readonly seed: number
}

const photographs: readonly Photograph[] = [
  {
    file: "palm-house-pane.jpg",
    pattern: ["palm-house-pane.md", "pane"],
    turnDeg: 21,
    tiltDeg: 14,
    towardsDeg: 100,
    lightFallsTo: 0.5,
    groundBrightness: 0.2,
    yarnBrightness: 0.9,
    acrossMm: 168,
    seed: 11,
  },
  {
    file: "signal-box-mat.jpg",
    pattern: ["a-mat-from-a-photograph.md", "drawn"],
    turnDeg: 37,
    tiltDeg: 17,
    towardsDeg: 250,
    lightFallsTo: 0.45,
    groundBrightness: 0.84,
    yarnBrightness: 0.22,
    acrossMm: 132,
    seed: 12,
  },
]

const sidePx = 860
const mostBytes = 60_000
/** Widths of the yarn in a post, in a chain or a top, mm, and the length of one turn of its ply. */
const [postMm, topMm, plyMm] = [1.9, 1.5, 3.4]
/** Unevenness of a hand, mm. */
const unevenMm = 0.25
/** Distance of the camera, in widths of the picture. */
const distance = 2.2
const [blurPx, grain] = [1.1, 0.025]

const folder = resolve(import.meta.dirname, "../reports")
mkdirSync(resolve(folder, "photographs"), { recursive: true })
for (const photograph of photographs) {
  const picture = photographed(photograph)
  const bytes = await encodeJpeg(picture, mostBytes)
  writeFileSync(resolve(folder, "photographs", photograph.file), bytes)
  process.stdout.write(`${photograph.file}: ${bytes.length} bytes\n`)
}

function photographed(how: Photograph): GreyPicture {
  const random = seededRandom(how.seed)
  const strokes = yarnOf(notebookPattern(folder, ...how.pattern), random)
  const pxPerMm = sidePx / how.acrossMm
  const seen = view(how, pxPerMm)
  const thread = drawStrokes(
    sidePx,
    sidePx,
    strokes.map(({ points, widthPx, plyPx }) => ({
      points: points.map(seen),
      widthPx: widthPx * pxPerMm,
      plyPx: plyPx * pxPerMm,
    })),
  )
  return exposed(thread, how, random)
}

/** Strokes in mm about the middle of the piece. */
function yarnOf(text: string, random: RandomSource): Stroke[] {
  const { reading, gauge } = examinePattern(text, { lean: true })
  if (!gauge) throw new Error("The pattern of a photograph could not be read.")
  const { net, flat } = layOut(reading.motif, gauge, { inSpace: false })
  const { xy } = flat
  const uneven = net.nodes.map(() => [unevenMm * random.normal(), unevenMm * random.normal()])
  const at = ({ nodes, weights }: { nodes: readonly number[]; weights: readonly number[] }) =>
    nodes.reduce(
      ({ x, y }, node, i) => ({
        x: x + weights[i]! * (xy[2 * node]! + uneven[node]![0]!),
        y: y + weights[i]! * (xy[2 * node + 1]! + uneven[node]![1]!),
      }),
      { x: 0, y: 0 },
    )
  const middle = at({
    nodes: net.centre,
    weights: net.centre.map(() => 1 / net.centre.length),
  })
  return net.springs.map(({ role, from, to }) => {
    const points = [at(from), at(to)].map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }))
    return { points, widthPx: role === "post" ? postMm : topMm, plyPx: plyMm }
  })
}

/** From mm on the table to pixels: turned, then seen by a camera that leans. */
function view({ turnDeg, tiltDeg, towardsDeg }: Photograph, pxPerMm: number) {
  const [turn, tilt, towards] = [turnDeg, tiltDeg, towardsDeg].map((deg) => (deg * Math.PI) / 180)
  const away = distance * sidePx
  return ({ x, y }: Point): Point => {
    const angle = turn! - towards!
    const u = (x * Math.cos(angle) - y * Math.sin(angle)) * pxPerMm
    const v = (x * Math.sin(angle) + y * Math.cos(angle)) * pxPerMm
    const near = away / (away + v * Math.sin(tilt!))
    const [fu, fv] = [u * near, v * Math.cos(tilt!) * near]
    return rescaled(
      {
        x: fu * Math.cos(towards!) - fv * Math.sin(towards!) + sidePx / 2,
        y: fu * Math.sin(towards!) + fv * Math.cos(towards!) + sidePx / 2,
      },
      1,
    )
  }
}

function exposed(thread: GreyPicture, how: Photograph, random: RandomSource): GreyPicture {
  const { width, height } = thread
  const soft = softened(thread, blurPx)
  const values = soft.map((cover, i) => {
    const [x, y] = [(i % width) / width, Math.floor(i / width) / height]
    const wood = 0.012 * Math.sin(46 * y + 5 * Math.sin(3 * x + 2 * y)) + 0.008 * Math.sin(131 * y)
    const ground = how.groundBrightness * (1 + wood)
    const lit = 1 - (1 - how.lightFallsTo) * (0.7 * x + 0.3 * y)
    const value = (ground + (how.yarnBrightness - ground) * cover) * lit + grain * random.normal()
    return Math.max(0, Math.min(1, value))
  })
  return { width, height, values }
}
