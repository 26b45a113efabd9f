// The numbers of the rounds, outside the work, each led to where its round begins by a fine line.

import type { Motif } from "@roundwright/motif"
import type { ChartLayout } from "./lay-out-chart.ts"
import { type Place, polar } from "./mark.ts"
import { wrapped } from "./rings.ts"

/** Height of a figure and room for one along the outside, mm. */
const figureMm = 2.6
const roomMm = 3.6

export function roundNumbers(
  motif: Motif,
  { starts, reach }: ChartLayout,
): { parts: string[]; places: Place[] } {
  const radius = reach + figureMm
  const own = starts.map(({ x, y }) => Math.atan2(y, x))
  const angles = uncrossed(apart(own, roomMm / radius), starts, radius)
  const parts = motif.rounds.map(({ number }, k) => {
    const start = starts[k]!
    const at = polar(angles[k]!, radius)
    const near = polar(angles[k]!, radius - figureMm * 0.65)
    const line = `<path d="M${two(start.x)} ${two(-start.y)}L${two(near.x)} ${two(-near.y)}" stroke="#777" stroke-width="0.09" stroke-dasharray="0.35 0.5"/>`
    const text = `<text x="${two(at.x)}" y="${two(-at.y + figureMm * 0.36)}" font-size="${figureMm}" text-anchor="middle" fill="#000" stroke="none">${number}</text>`
    return line + text
  })
  return { parts, places: angles.map((angle) => polar(angle, radius)) }
}

/** Angles moved as little as leaves so much between any two. */
function apart(wanted: readonly number[], gap: number): number[] {
  const n = wanted.length
  if (n < 2) return [...wanted]
  const centre = Math.atan2(
    wanted.reduce((sum, angle) => sum + Math.sin(angle), 0),
    wanted.reduce((sum, angle) => sum + Math.cos(angle), 0),
  )
  const step = Math.min(gap, (2 * Math.PI) / n)
  const order = wanted
    .map((angle, k) => ({ k, off: wrapped(angle - centre) }))
    .sort((a, b) => a.off - b.off || b.k - a.k)
  const placed = order.map(({ off }) => off)
  for (let pass = 0; pass < 200; pass++) {
    let moved = false
    for (let i = 1; i < n; i++) {
      const lack = step - (placed[i]! - placed[i - 1]!)
      if (lack <= 1e-6) continue
      placed[i] = placed[i]! + lack / 2
      placed[i - 1] = placed[i - 1]! - lack / 2
      moved = true
    }
    if (!moved) break
  }
  const out = new Array<number>(n)
  order.forEach(({ k }, i) => {
    out[k] = centre + placed[i]!
  })
  return out
}

/** The same places, two of them changed about wherever the lines that lead to them cross: each change makes the lines shorter. */
function uncrossed(angles: readonly number[], starts: readonly Place[], radius: number): number[] {
  const out = [...angles]
  const cross = (i: number, k: number) => {
    const [from, to] = [starts[i]!, polar(out[i]!, radius)]
    const [start, end] = [starts[k]!, polar(out[k]!, radius)]
    return (
      side(from, to, start) * side(from, to, end) < 0 &&
      side(start, end, from) * side(start, end, to) < 0
    )
  }
  let changed = true
  for (let pass = 0; changed && pass < out.length; pass++) {
    changed = false
    for (let i = 0; i < out.length; i++)
      for (let k = i + 1; k < out.length; k++)
        if (cross(i, k)) {
          ;[out[i], out[k]] = [out[k]!, out[i]!]
          changed = true
        }
  }
  return out
}

/** More than zero where the third place lies to the left of the line from the first to the second. */
function side(a: Place, b: Place, c: Place): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

function two(value: number): string {
  return String(Math.round(value * 100) / 100 || 0)
}
