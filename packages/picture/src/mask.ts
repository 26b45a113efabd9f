// Masks of 0 and 1: gaps closed by a disc, holes filled, the largest part kept.

/** Closing by a disc of `radius` pixels: everything within reach of the mask, less everything within reach of the rest. */
export function closeGaps(
  mask: Uint8Array,
  width: number,
  height: number,
  radius: number,
): Uint8Array {
  if (radius < 1) return Uint8Array.from(mask)
  // A frame of empty pixels keeps the border from being eaten or from sticking.
  const [w, h] = [width + 2 * radius, height + 2 * radius]
  const framed = new Uint8Array(w * h)
  for (let y = 0; y < height; y++)
    framed.set(mask.subarray(y * width, (y + 1) * width), (y + radius) * w + radius)
  const wide = squaredDistance(framed, w, h).map((d) => (d <= radius * radius ? 1 : 0))
  const outside = Uint8Array.from(wide, (value) => 1 - value)
  const far = squaredDistance(outside, w, h)
  const out = new Uint8Array(mask.length)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      out[y * width + x] = far[(y + radius) * w + x + radius]! > radius * radius ? 1 : 0
  return out
}

/**
 * Squared distance of every pixel to the nearest 1, exact, in time proportional to the pixels.
 * Source: P. Felzenszwalb, D. Huttenlocher, "Distance transforms of sampled functions", Theory of Computing 8 (2012).
 */
export function squaredDistance(mask: Uint8Array, width: number, height: number): Float64Array {
  const far = (width + height) ** 2
  const field = Float64Array.from(mask, (value) => (value === 1 ? 0 : far))
  const longest = Math.max(width, height)
  const [line, place, edge] = [
    new Float64Array(longest),
    new Int32Array(longest),
    new Float64Array(longest + 1),
  ]
  const pass = (length: number, lines: number, step: number, skip: number) => {
    for (let l = 0; l < lines; l++) {
      const start = l * skip
      for (let k = 0; k < length; k++) line[k] = field[start + k * step]!
      let top = 0
      place[0] = 0
      edge[0] = Number.NEGATIVE_INFINITY
      edge[1] = Number.POSITIVE_INFINITY
      for (let q = 1; q < length; q++) {
        let s: number
        do {
          const p = place[top]!
          s = (line[q]! + q * q - line[p]! - p * p) / (2 * (q - p))
        } while (s <= edge[top]! && --top >= 0)
        top += 1
        place[top] = q
        edge[top] = s
        edge[top + 1] = Number.POSITIVE_INFINITY
      }
      for (let q = 0, k = 0; q < length; q++) {
        while (edge[k + 1]! < q) k += 1
        field[start + q * step] = (q - place[k]!) ** 2 + line[place[k]!]!
      }
    }
  }
  pass(width, height, 1, width)
  pass(height, width, width, 1)
  return field
}

/** Parts of 0 that do not reach the border become 1. */
export function fillHoles(mask: Uint8Array, width: number, height: number): Uint8Array {
  const empty = Uint8Array.from(mask, (value) => 1 - value)
  const labels = label(empty, width, height)
  const open = new Set<number>()
  for (let x = 0; x < width; x++) {
    open.add(labels.of[x]!)
    open.add(labels.of[(height - 1) * width + x]!)
  }
  for (let y = 0; y < height; y++) {
    open.add(labels.of[y * width]!)
    open.add(labels.of[y * width + width - 1]!)
  }
  return Uint8Array.from(mask, (value, i) => (value === 1 || !open.has(labels.of[i]!) ? 1 : 0))
}

export function largestPart(mask: Uint8Array, width: number, height: number): Uint8Array {
  const { of, sizes } = label(mask, width, height)
  let best = 0
  for (let k = 1; k < sizes.length; k++) if (sizes[k]! > (sizes[best] ?? 0) || best === 0) best = k
  return Uint8Array.from(of, (value) => (best > 0 && value === best ? 1 : 0))
}

export interface MaskPart {
  readonly size: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** All parts of 1 with the pixels they reach to, the largest first. */
export function parts(mask: Uint8Array, width: number, height: number): MaskPart[] {
  const { of, sizes } = label(mask, width, height)
  const out = sizes.map((size) => ({ size, left: width, right: -1, top: height, bottom: -1 }))
  of.forEach((name, i) => {
    const part = out[name]!
    const y = Math.floor(i / width)
    const x = i - y * width
    part.left = Math.min(part.left, x)
    part.right = Math.max(part.right, x)
    part.top = Math.min(part.top, y)
    part.bottom = Math.max(part.bottom, y)
  })
  return out.slice(1).sort((a, b) => b.size - a.size)
}

/** Parts of 1 joined by edges, numbered from 1; 0 is no part. */
function label(mask: Uint8Array, width: number, height: number) {
  const of = new Int32Array(mask.length)
  const sizes = [0]
  const stack: number[] = []
  for (let start = 0; start < mask.length; start++) {
    if (mask[start] === 0 || of[start] !== 0) continue
    const name = sizes.length
    let size = 0
    of[start] = name
    stack.push(start)
    while (stack.length > 0) {
      const i = stack.pop()!
      size += 1
      const x = i % width
      for (const [to, inside] of [
        [i - 1, x > 0],
        [i + 1, x < width - 1],
        [i - width, i >= width],
        [i + width, i < width * (height - 1)],
      ] as const)
        if (inside && mask[to] === 1 && of[to] === 0) {
          of[to] = name
          stack.push(to)
        }
    }
    sizes.push(size)
  }
  return { of, sizes }
}
