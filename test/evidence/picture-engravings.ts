// The engravings of test/evidence/pictures against what was keyed of them before any was measured, as they
// are and damaged: turned, inverted, small, blurred, noisy, light falling off.

import { readFileSync } from "node:fs"
import { resolve } from "node:path"
import { seededRandom } from "@roundwright/numerics"
import { type Box, brightnessAt, type GreyPicture, measurePicture } from "@roundwright/picture"
import { decodePicture } from "@roundwright/picture/decode"
import { softened } from "../support/drawn-motif.ts"
import { centreOf, scoreRings } from "./picture-scores.ts"

interface Key {
  readonly file: string
  readonly box?: readonly [number, number, number, number]
  readonly centrePx: readonly [number, number]
  readonly radiusPx: number
  readonly main: number
  readonly rings: readonly {
    readonly inner: number
    readonly outer: number
    readonly repeats: number
    readonly strands?: number
  }[]
}

const folder = resolve(import.meta.dirname, "pictures")

export const engravingKeys: readonly Key[] = JSON.parse(
  readFileSync(resolve(folder, "keys.json"), "utf8"),
).pictures

export interface EngravingScore {
  readonly file: string
  /** Distance of the centre from the keyed one, of the radius. */
  readonly centreOff: number
  readonly rings: number
  readonly right: number
  /** The widest ring that has the picture's main count is right. */
  readonly mainRight: boolean
  readonly wrong: readonly string[]
}

export const damages = {
  "as it is": null,
  "turned 23 degrees": (p: GreyPicture) => turned(p, (23 * Math.PI) / 180),
  inverted: (p: GreyPicture) => ({ ...p, values: p.values.map((v) => 1 - v) }),
  "a third of the size": (p: GreyPicture) => smaller(p, 1 / 3),
  "blurred 1.2 %": (p: GreyPicture) => ({
    ...p,
    values: softened(p, 0.0035 * Math.max(p.width, p.height)),
  }),
  "noise 0.1": (p: GreyPicture) => noisy(p, 0.1),
  "light falling to 0.4": (p: GreyPicture) => ({
    ...p,
    values: p.values.map((v, i) => v * (1 - (0.6 * (i % p.width)) / (p.width - 1))),
  }),
} as const
export type Damage = keyof typeof damages

export async function scoreEngravings(
  damage: Damage,
  files: readonly Key[] = engravingKeys,
): Promise<EngravingScore[]> {
  const scores: EngravingScore[] = []
  for (const key of files) {
    const decoded = await decodePicture(readFileSync(resolve(folder, key.file)))
    const [x, y, width, height] = key.box ?? [0, 0, decoded.widthPx, decoded.heightPx]
    const picture = cut(decoded.picture, { x, y, width, height })
    const made = damages[damage]?.(picture) ?? picture
    const place = placed(damage, picture, made)
    scores.push(scoreOne(key, made, place([key.centrePx[0] - x, key.centrePx[1] - y]), place.scale))
  }
  return scores
}

function scoreOne(
  key: Key,
  picture: GreyPicture,
  [x, y]: readonly [number, number],
  scale: number,
): EngravingScore {
  const radius = key.radiusPx * scale
  const truths = key.rings.map((ring) => ({
    innerPx: ring.inner * radius,
    outerPx: ring.outer * radius,
    repeats: ring.repeats,
    strands: ring.strands,
  }))
  try {
    const measured = measurePicture(picture)
    const centre = centreOf(measured)
    const rings = scoreRings(measured, truths, false)
    const main = rings
      .filter(({ truth }) => truth.repeats === key.main)
      .reduce((a, b) =>
        b.truth.outerPx - b.truth.innerPx > a.truth.outerPx - a.truth.innerPx ? b : a,
      )
    return {
      file: key.file,
      centreOff: Math.hypot(centre.x - x, centre.y - y) / radius,
      rings: rings.length,
      right: rings.filter(({ right }) => right).length,
      mainRight: main.right,
      wrong: rings
        .filter(({ right }) => !right)
        .map(({ truth, repeats }) => `${truth.repeats} read as ${repeats ?? "none"}`),
    }
  } catch (error) {
    return {
      file: key.file,
      centreOff: Number.POSITIVE_INFINITY,
      rings: truths.length,
      right: 0,
      mainRight: false,
      wrong: [String((error as Error).message)],
    }
  }
}

/** Where a point of the picture lies in the damaged one. */
function placed(damage: Damage, from: GreyPicture, to: GreyPicture) {
  const angle = damage === "turned 23 degrees" ? (23 * Math.PI) / 180 : 0
  const scale = angle === 0 ? to.width / from.width : 1
  const place = ([x, y]: readonly [number, number]): [number, number] => {
    if (angle === 0) return [(x + 0.5) * scale - 0.5, (y + 0.5) * scale - 0.5]
    const [dx, dy] = [x - (from.width - 1) / 2, y - (from.height - 1) / 2]
    return [
      (to.width - 1) / 2 + dx * Math.cos(angle) - dy * Math.sin(angle),
      (to.height - 1) / 2 + dx * Math.sin(angle) + dy * Math.cos(angle),
    ]
  }
  return Object.assign(place, { scale })
}

function cut(picture: GreyPicture, box: Box): GreyPicture {
  const values = new Float32Array(box.width * box.height)
  for (let y = 0; y < box.height; y++)
    for (let x = 0; x < box.width; x++)
      values[y * box.width + x] = picture.values[(y + box.y) * picture.width + x + box.x]!
  return { width: box.width, height: box.height, values }
}

/** Turned within a frame that holds all of it; the corners get the first pixel's brightness. */
function turned(p: GreyPicture, angle: number): GreyPicture {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const width = Math.ceil(p.width * c + p.height * s)
  const height = Math.ceil(p.width * s + p.height * c)
  const values = new Float32Array(width * height)
  for (let i = 0; i < values.length; i++) {
    const [dx, dy] = [(i % width) - (width - 1) / 2, Math.floor(i / width) - (height - 1) / 2]
    const [x, y] = [(p.width - 1) / 2 + dx * c + dy * s, (p.height - 1) / 2 - dx * s + dy * c]
    const inside = x >= 0 && y >= 0 && x <= p.width - 1 && y <= p.height - 1
    values[i] = inside ? brightnessAt(p, x, y) : p.values[0]!
  }
  return { width, height, values }
}

/** No picture is brought below 300 pixels across: smaller ones hold their finest rings in less than 5 px a stitch. */
function smaller(p: GreyPicture, share: number): GreyPicture {
  const scale = Math.max(share, Math.min(1, 300 / Math.max(p.width, p.height)))
  const [width, height] = [Math.round(p.width * scale), Math.round(p.height * scale)]
  const soft = { ...p, values: softened(p, Math.max(0.3, 0.35 / scale)) }
  const values = new Float32Array(width * height)
  for (let i = 0; i < values.length; i++)
    values[i] = brightnessAt(
      soft,
      ((i % width) + 0.5) / scale - 0.5,
      (Math.floor(i / width) + 0.5) / scale - 0.5,
    )
  return { width, height, values }
}

function noisy(p: GreyPicture, spread: number): GreyPicture {
  const random = seededRandom(2718)
  return {
    ...p,
    values: p.values.map((v) => Math.max(0, Math.min(1, v + spread * random.normal()))),
  }
}
