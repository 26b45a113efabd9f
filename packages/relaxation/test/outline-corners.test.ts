import { describe, expect, it } from "vitest"
import { cornersOfOutline } from "../src/outline-corners.ts"

/** Points along a polygon of k corners, rounded off by this share towards its circle, turned. */
function outline(k: number, roundness: number, turned = 0.3, n = 96) {
  return Array.from({ length: n }, (_, i) => {
    const angle = (2 * Math.PI * i) / n
    const side = (2 * Math.PI) / k
    const off = (((angle % side) + side) % side) - side / 2
    const polygon = Math.cos(Math.PI / k) / Math.cos(off)
    const r = 50 * ((1 - roundness) * polygon + roundness)
    const at = angle + turned
    return {
      x: r * Math.cos(at),
      y: r * Math.sin(at),
      r,
      angle: Math.atan2(Math.sin(at), Math.cos(at)),
    }
  })
}

describe("corners read off an outline", () => {
  it.each([3, 4, 5, 6, 8])("are %i of a polygon of as many, however it is turned", (k) => {
    for (const turned of [0, 0.3, 2])
      expect(cornersOfOutline(outline(k, 0, turned))).toHaveLength(k)
  })

  it("are there while it is nearer to the polygon than to the circle", () => {
    expect(cornersOfOutline(outline(4, 0.3))).toHaveLength(4)
    expect(cornersOfOutline(outline(4, 0.7))).toEqual([])
    expect(cornersOfOutline(outline(4, 1))).toEqual([])
  })

  it("are the farthest points", () => {
    const points = outline(4, 0)
    const far = Math.max(...points.map(({ r }) => r))
    for (const place of cornersOfOutline(points))
      expect(points[place]!.r).toBeGreaterThan(0.98 * far)
  })
})
