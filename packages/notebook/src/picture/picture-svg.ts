// The measured picture as a drawing: the picture with its centre and rings, and below it the piece unrolled
// into a strip, a row a ring, every counted strand ticked and numbered. Rings are told apart by dash and
// number, never by colour alone.

import type { PictureMeasurement, PublishedMeasurement } from "@roundwright/picture"
import { polygonContour, ticksOf } from "@roundwright/picture"

export interface PictureSvgOptions {
  /** The straight picture as an address of its own (`data:image/png;base64,...`). */
  readonly picture: string
  /** The unrolled strip, centre at the bottom, as such an address. */
  readonly strip: string
  readonly title: string
}

const margin = 24
const stripHeight = 320
/** Rings take these dashes by turns. */
const dashes = ["none", "8 4", "2 4", "10 3 2 3", "14 6"] as const
/** Every tick is drawn; of many, each of these is numbered. */
const numberEvery = (count: number) => (count <= 40 ? 1 : count <= 80 ? 5 : 10)

export function pictureSvg(
  measured: PictureMeasurement,
  published: PublishedMeasurement,
  { picture, strip, title }: PictureSvgOptions,
): string {
  const { width, height } = measured.view.picture
  const total = { width: width + 2 * margin, height: height + stripHeight + 3 * margin }
  const { centre } = measured
  const rows = measured.rows.length
  const stripTop = height + 2 * margin
  const yOfRow = (row: number) => stripTop + stripHeight * (1 - row / rows)
  const rings = measured.rings.map((ring, i) => {
    const shown = published.rings[i]!
    const outline = contourPoints(measured, ring.toRow)
    const count = shown.strands ?? shown.repeats ?? 0
    const read = shown.repeats !== null
    const dash = dashes[i % dashes.length]
    const label = outline[0]!
    const top = yOfRow(ring.toRow + 1)
    const bottom = yOfRow(ring.fromRow)
    const ticks = read ? ticksOf(measured, ring, count) : []
    const every = numberEvery(ticks.length)
    const marks = ticks.map((angle, k) => {
      const x = margin + ((width * (((angle / (2 * Math.PI)) % 1) + 1)) % width)
      const number =
        (k + 1) % every === 0 || k === 0
          ? `<text x="${f(x + 1.5)}" y="${f(top + 9)}" class="n">${k + 1}</text>`
          : ""
      return `<line x1="${f(x)}" x2="${f(x)}" y1="${f(top + 2)}" y2="${f(Math.min(bottom - 1, top + 14))}" class="t"/>${number}`
    })
    const told = read
      ? `${i + 1}: ${shown.repeats}${shown.strands !== shown.repeats ? ` (${shown.strands})` : ""}`
      : `${i + 1}: ?`
    return [
      `<polygon points="${outline.map((p) => `${f(p.x + margin)},${f(p.y + margin)}`).join(" ")}" class="u"/>`,
      `<polygon points="${outline.map((p) => `${f(p.x + margin)},${f(p.y + margin)}`).join(" ")}" class="r" stroke-dasharray="${dash}"/>`,
      `<text x="${f(label.x + margin + 3)}" y="${f(label.y + margin - 3)}" class="b">${i + 1}</text>`,
      `<line x1="${margin}" x2="${margin + width}" y1="${f(top)}" y2="${f(top)}" class="r" stroke-dasharray="${dash}"/>`,
      `<text x="2" y="${f((top + bottom) / 2 + 4)}" class="s">${told}</text>`,
      ...marks,
    ].join("\n")
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${total.width} ${total.height}" width="${total.width}" height="${total.height}" role="img">
<title>${escapeText(title)}</title>
<style>.r{fill:none;stroke:#b00020;stroke-width:1.6}.u{fill:none;stroke:#fff;stroke-width:3.2;opacity:.7}.t{stroke:#b00020;stroke-width:1.2}.n{font:7px sans-serif;fill:#000;stroke:#fff;stroke-width:2px;paint-order:stroke}.b{font:bold 13px sans-serif;fill:#b00020;stroke:#fff;stroke-width:3px;paint-order:stroke}.s{font:9px sans-serif;fill:#000;stroke:#fff;stroke-width:3px;paint-order:stroke}</style>
<rect width="100%" height="100%" fill="#fff"/>
<image x="${margin}" y="${margin}" width="${width}" height="${height}" href="${picture}"/>
<image x="${margin}" y="${stripTop}" width="${width}" height="${stripHeight}" preserveAspectRatio="none" href="${strip}"/>
<path d="M${f(centre.x + margin - 8)} ${f(centre.y + margin)}h16M${f(centre.x + margin)} ${f(centre.y + margin - 8)}v16" class="r"/>
${rings.join("\n")}
</svg>
`
}

/** The contour of a row in the straight picture, from direction 0. */
function contourPoints(measured: PictureMeasurement, at: number) {
  const row = measured.rows[Math.min(at, measured.rows.length - 1)]!
  const { corners, cornerAngle } = measured.outline
  const contour = corners > 0 ? polygonContour(corners, cornerAngle, row.bend) : () => 1
  return Array.from({ length: 180 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 180
    const r = row.radius * contour(angle)
    return {
      x: measured.centre.x + r * Math.cos(angle),
      y: measured.centre.y + r * Math.sin(angle),
    }
  })
}

const f = (value: number) => value.toFixed(1)

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;")
}
