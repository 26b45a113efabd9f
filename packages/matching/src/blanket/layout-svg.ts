// A layout drawn: every piece with its number or the first letters of its colour, so that it can be read without colour.

import { fillsFor, plainFill } from "./colour-words.ts"
import type { SharedColours } from "./colours.ts"
import type { Layout } from "./layout.ts"

const ink = "#2b2b2b"

/** @param borderMm width of a border round it all @param scale px to a mm */
export function layoutSvg(
  layout: Layout,
  {
    shared = null,
    borderMm = 0,
    title = "Layout",
  }: {
    readonly shared?: SharedColours | null
    readonly borderMm?: number
    readonly title?: string
  } = {},
): string {
  const [width, height] = [layout.widthMm + 2 * borderMm, layout.heightMm + 2 * borderMm]
  const letters =
    0.28 * Math.sqrt((layout.widthMm * layout.heightMm) / Math.max(1, layout.pieces.length))
  const legend = shared ? 1.8 * letters * shared.colours.length + letters : 0
  const fills = fillsFor((shared?.colours ?? []).map(({ name }) => name))
  const short = shared ? abbreviations(shared.colours.map(({ name }) => name)) : []
  const shapes = layout.pieces.map((piece, k) => {
    const colour = shared?.of[k] ?? null
    const fill = shared ? (colour === null ? "#ffffff" : fills[colour]!) : plainFill
    const points = piece.corners.map(([x, y]) => `${n(x)},${n(y)}`).join(" ")
    const label = shared ? (colour === null ? "" : short[colour]!) : String(k + 1)
    const [x, y] = piece.centre
    const size = letters * (piece.shape === "square" || piece.shape === "hexagon" ? 1 : 0.6)
    return `<polygon points="${points}" fill="${fill}" stroke="${ink}" stroke-width="${n(letters / 18)}"/><text x="${n(x)}" y="${n(y)}" font-size="${n(size)}" text-anchor="middle" dominant-baseline="central" fill="${ink}">${escaped(label)}</text>`
  })
  const lines = (shared?.colours ?? []).map(({ name, pieces }, k) => {
    const y = height - borderMm + letters + 1.8 * letters * k
    return `<rect x="0" y="${n(y)}" width="${n(letters)}" height="${n(letters)}" fill="${fills[k]!}" stroke="${ink}" stroke-width="${n(letters / 18)}"/><text x="${n(1.4 * letters)}" y="${n(y + letters / 2)}" font-size="${n(letters)}" dominant-baseline="central" fill="${ink}">${escaped(`${short[k]!} ${name}: ${pieces}`)}</text>`
  })
  const border =
    borderMm > 0
      ? `<rect x="${n(-borderMm)}" y="${n(-borderMm)}" width="${n(width)}" height="${n(height)}" fill="none" stroke="${ink}" stroke-width="${n(letters / 10)}"/>`
      : ""
  const box = `${n(-borderMm)} ${n(-borderMm)} ${n(width)} ${n(height + legend)}`
  const said = `${layout.pieces.length} pieces, ${(width / 10).toFixed(1)} by ${(height / 10).toFixed(1)} cm`
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" width="${n(width)}mm" height="${n(height + legend)}mm" role="img" font-family="sans-serif"><title>${escaped(title)}</title><desc>${escaped(said)}</desc>${border}${shapes.join("")}${lines.join("")}</svg>\n`
}

/** The fewest first letters that tell the colours apart. */
function abbreviations(names: readonly string[]): string[] {
  for (let length = 1; length <= 4; length += 1) {
    const short = names.map((name) => name.slice(0, length).toUpperCase())
    if (new Set(short).size === names.length) return short
  }
  return names.map((_, k) => String(k + 1))
}

function n(value: number): string {
  return String(Number(value.toFixed(2)))
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`)
}
