// The measured picture as drawings: the picture with its centre and rings; the piece unrolled into a strip, a row a
// ring, every counted strand ticked and numbered; one repeat of every ring, the mean of all. Rings are told apart by
// dash and number, never by colour alone.

import { escapeText } from "../page/html.ts"
import type { AnsweredRing, PictureAnswer } from "./picture-answer.ts"

/** Rings take these dashes by turns. */
const dashes = ["none", "8 4", "2 4", "10 3 2 3", "14 6"] as const
/** Every tick is drawn; of many, each of these is numbered. */
const numberEvery = (count: number) => (count <= 48 ? 1 : count <= 96 ? 5 : 10)

/** Room of the strip and of the repeat, in their own units. */
export const stripRoom = { left: 44, width: 960, height: 420 } as const
const repeatRoom = { left: 24, width: 220, height: 320 } as const

/** The classes of the drawings; `pictureRules` of a file and of a page give them their look. */
export const pictureRules = `
.ring-edge { fill: none; stroke: #8c0d26; stroke-width: 2; vector-effect: non-scaling-stroke; }
.ring-under { fill: none; stroke: #fff; stroke-width: 4; opacity: 0.75; vector-effect: non-scaling-stroke; }
.ring-tick { stroke: #8c0d26; stroke-width: 1.4; vector-effect: non-scaling-stroke; }
.ring-number { font-family: sans-serif; font-weight: bold; fill: #8c0d26; stroke: #fff; stroke-width: 0.24em; paint-order: stroke; }
.tick-number { font-family: sans-serif; font-size: 10px; fill: #000; stroke: #fff; stroke-width: 2.5px; paint-order: stroke; }
.ring-told { font-family: sans-serif; font-size: 12px; fill: currentColor; }
`.trim()

/** The picture as it was given, its rings and its centre laid over it. */
export function pieceSvg(answer: PictureAnswer): string {
  const { widthPx, heightPx, rings, centrePx, images, name } = answer
  const size = Math.max(widthPx, heightPx) / 36
  const [x, y] = centrePx
  // A large picture is not drawn to a tenth of its pixels.
  const place = size > 15 ? Math.round : f
  const edges = rings.map(({ edge }, i) => {
    const points = edge.map(({ x, y }) => `${place(x)},${place(y)}`).join(" ")
    const label = edge[Math.round((edge.length * (i + 1)) / (3 * rings.length + 3))] ?? edge[0]!
    return (
      `<polygon points="${points}" class="ring-under"/>` +
      `<polygon points="${points}" class="ring-edge" stroke-dasharray="${dashOf(i)}"/>` +
      `<text x="${f(label.x)}" y="${f(label.y)}" class="ring-number" font-size="${f(size)}" text-anchor="middle">${i + 1}</text>`
    )
  })
  return svg(
    [0, 0, widthPx, heightPx],
    `${name || "The picture"}: ${ringsWord(rings)} and the centre`,
    [
      `<image class="given" width="${widthPx}" height="${heightPx}" href="${images.given}"/>`,
      cross(x, y, size, "ring-under"),
      cross(x, y, size, "ring-edge"),
      ...edges,
    ],
  )
}

/** The piece unrolled once round: the centre at the bottom, every counted strand ticked in its ring. */
export function stripSvg({ rings, images }: PictureAnswer): string {
  const { left, width, height } = stripRoom
  const rows = rings.flatMap((ring, i) => {
    const [top, bottom] = [height * (1 - ring.to), height * (1 - ring.from)]
    const ticks = ring.ticks.map((turns) => Math.round(1e4 * turns) / 1e4).join(" ")
    return [
      `<g class="ring-row" data-from="${share(ring.from)}" data-to="${share(ring.to)}" data-ticks="${ticks}">`,
      `<line x1="${left}" x2="${left + width}" y1="${f(top)}" y2="${f(top)}" class="ring-under"/>`,
      `<line x1="${left}" x2="${left + width}" y1="${f(top)}" y2="${f(top)}" class="ring-edge" stroke-dasharray="${dashOf(i)}"/>`,
      `<text x="${left - 5}" y="${f((top + bottom) / 2 + 4)}" class="ring-told" text-anchor="end">${told(ring, i)}</text>`,
      ticksOf(ring.ticks, top, Math.min(bottom - 1, top + 15)),
      "</g>",
    ]
  })
  return svg(
    [0, 0, left + width + 8, height],
    `The piece unrolled, the centre below: ${ringsWord(rings)}, every counted strand ticked`,
    [
      `<image x="${left}" width="${width}" height="${height}" preserveAspectRatio="none" href="${images.strip}"/>`,
      ...rows,
    ],
  )
}

/** Ticks of a row and their numbers, in as few letters as may be: a page holds hundreds. */
function ticksOf(ticks: readonly number[], top: number, foot: number): string {
  if (ticks.length === 0) return ""
  const every = numberEvery(ticks.length)
  const xs = ticks.map((turns) => stripRoom.left + stripRoom.width * turns)
  const strokes = xs.map((x) => `M${f(x)} ${f(top + 1)}V${f(foot)}`).join("")
  const numbers = xs.map((x, k) =>
    k === 0 || (k + 1) % every === 0
      ? `<text x="${Math.round(x + 2)}" y="${Math.round(foot)}">${k + 1}</text>`
      : "",
  )
  return `<path d="${strokes}" class="ring-tick"/><g class="tick-number">${numbers.join("")}</g>`
}

/** One repeat of every ring, all repeats laid over one another; null where none was read. */
export function repeatSvg({ rings, images }: PictureAnswer): string | null {
  if (images.repeat === null) return null
  const { left, width, height } = repeatRoom
  return svg(
    [0, 0, left + width, height],
    "One repeat of every ring, the mean of all its repeats, the centre below",
    [
      `<image x="${left}" width="${width}" height="${height}" preserveAspectRatio="none" href="${images.repeat}"/>`,
      ...rings.flatMap(({ from, to }, i) => {
        const [top, bottom] = [height * (1 - to), height * (1 - from)]
        return [
          `<line x1="${left}" x2="${left + width}" y1="${f(top)}" y2="${f(top)}" class="ring-edge" stroke-dasharray="${dashOf(i)}"/>`,
          `<text x="${left - 5}" y="${f((top + bottom) / 2 + 4)}" class="ring-told" text-anchor="end">${i + 1}</text>`,
        ]
      }),
    ],
  )
}

/** All three in one file that stands by itself. */
export function pictureFile(answer: PictureAnswer, title: string): string {
  const { left, width, height } = stripRoom
  const across = left + width + 8
  const pieceHeight = (across * answer.heightPx) / answer.widthPx
  const repeat = repeatSvg(answer)
  const parts = [
    placed(pieceSvg(answer), 0, 0, across, pieceHeight),
    placed(stripSvg(answer), 0, pieceHeight + 16, across, height),
    ...(repeat ? [placed(repeat, 0, pieceHeight + height + 32, 244, 320)] : []),
  ]
  const total = pieceHeight + height + 16 + (repeat ? 336 : 0)
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${across} ${f(total)}" width="${across}" height="${f(total)}" role="img">
<title>${escapeText(title)}</title>
<style>${pictureRules.replace(/\n/g, "")}</style>
<rect width="100%" height="100%" fill="#fff"/>
${parts.join("\n")}
</svg>
`
}

function placed(drawing: string, x: number, y: number, width: number, height: number): string {
  return drawing.replace(
    "<svg ",
    `<svg x="${x}" y="${f(y)}" width="${f(width)}" height="${f(height)}" `,
  )
}

function svg(box: readonly number[], title: string, parts: readonly string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.map((value) => Math.round(value)).join(" ")}" role="img"><title>${escapeText(title)}</title>${parts.join("")}</svg>`
}

function cross(x: number, y: number, size: number, look: string): string {
  return `<path d="M${f(x - size)} ${f(y)}h${f(2 * size)}M${f(x)} ${f(y - size)}v${f(2 * size)}" class="${look}"/>`
}

export const dashOf = (ring: number) => dashes[ring % dashes.length]!

function told({ repeats, strands }: AnsweredRing, i: number): string {
  if (repeats === null) return `${i + 1}: ?`
  return `${i + 1}: ${strands ?? repeats}`
}

function ringsWord(rings: readonly AnsweredRing[]): string {
  return rings.length === 1 ? "1 ring" : `${rings.length} rings`
}

const share = (value: number) => Math.round(1e4 * value) / 1e4
const f = (value: number) => String(Math.round(10 * value) / 10)
