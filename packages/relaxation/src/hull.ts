// The band laid round a set of points in the plane: their convex hull, and the area a closed line holds.
// Source: A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions", 1979 (from memory).

export type PlanePoint = readonly [number, number]

/** Corners of the hull counterclockwise; points on its sides are left out. Fewer than three points stay as they are. */
export function hullOf(points: readonly PlanePoint[]): PlanePoint[] {
  if (points.length < 3) return [...points]
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  return [...halfHull(sorted), ...halfHull(sorted.reverse())]
}

/** Half the cross products of neighbours, without sign. */
export function polygonArea(line: readonly PlanePoint[]): number {
  let sum = 0
  line.forEach(([x, y], k) => {
    const [u, v] = line[(k + 1) % line.length]!
    sum += x * v - u * y
  })
  return Math.abs(sum) / 2
}

function halfHull(sorted: readonly PlanePoint[]): PlanePoint[] {
  const line: PlanePoint[] = []
  for (const point of sorted) {
    while (line.length > 1 && turn(line.at(-2)!, line.at(-1)!, point) <= 0) line.pop()
    line.push(point)
  }
  line.pop()
  return line
}

function turn(o: PlanePoint, a: PlanePoint, b: PlanePoint): number {
  return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])
}
