// The innermost work of the factorisation, C -= L D L' on a dense front, as a WebAssembly module of two numbers at a time.
// Where a machine or a page does not allow it the same sums are done in JavaScript, in the same order: the same input
// gives the same bits.

import { moduleBytes } from "./front-module.ts"

/** Room for a front, and how to take columns off others of it. */
export interface FrontKernel {
  /** Room for `entries` numbers, what they were before; valid until the next call. */
  room(entries: number): Float64Array
  /**
   * From columns `from` to `until` (whole blocks of four, which may run over the end into the padding) of the front, rows
   * on and below the diagonal, takes off columns 0 to `pivots` times their pivots, which stand on their diagonal.
   * @param stride entries from one column to the next: rows rounded up by at least three, the padding zero
   */
  takeOff(stride: number, rows: number, pivots: number, from: number, until: number): void
}

let shared: FrontKernel | null = null

/** One for the whole program: a front is done with before the next one is begun. */
export function frontKernel(): FrontKernel {
  shared ??= fastKernel() ?? plainKernel()
  return shared
}

/** In JavaScript: four pivots are carried through a column at once, so that entries are loaded and stored less often. */
export function plainKernel(): FrontKernel {
  let a = new Float64Array(0)
  return {
    room(entries) {
      if (a.length < entries) a = new Float64Array(entries)
      return a
    },
    takeOff(stride, rows, pivots, from, until) {
      for (let c = from; c < until; c++) {
        const column = c * stride
        let k = 0
        for (; k + 3 < pivots; k += 4) {
          const [p0, p1, p2, p3] = [k, k + 1, k + 2, k + 3].map((j) => j * stride) as Four
          const f0 = a[p0 + c]! * a[p0 + k]!
          const f1 = a[p1 + c]! * a[p1 + k + 1]!
          const f2 = a[p2 + c]! * a[p2 + k + 2]!
          const f3 = a[p3 + c]! * a[p3 + k + 3]!
          for (let r = c; r < rows; r++)
            a[column + r] =
              a[column + r]! - a[p0 + r]! * f0 - a[p1 + r]! * f1 - a[p2 + r]! * f2 - a[p3 + r]! * f3
        }
        for (; k < pivots; k++) {
          const f = a[k * stride + c]! * a[k * stride + k]!
          for (let r = c; r < rows; r++) a[column + r]! -= a[k * stride + r]! * f
        }
      }
    },
  }
}

type Four = [number, number, number, number]

interface WasmMemory {
  readonly buffer: ArrayBuffer
  grow(pages: number): number
}
interface WasmExports {
  readonly memory: WasmMemory
  takeOff(
    a: number,
    stride: number,
    rows: number,
    pivots: number,
    from: number,
    until: number,
    packed: number,
  ): void
}
declare const WebAssembly:
  | undefined
  | {
      Module: new (bytes: Uint8Array) => object
      Instance: new (module: object) => { readonly exports: object }
    }

const pageBytes = 65_536
/** Beyond this a front would not fit into what the module can address (4 GB). */
const mostEntries = 4e8

/** Null where WebAssembly, its wide numbers or the right to compile it are missing. */
export function fastKernel(): FrontKernel | null {
  if (typeof WebAssembly === "undefined") return null
  let found: WasmExports
  try {
    found = new WebAssembly.Instance(new WebAssembly.Module(moduleBytes())).exports as WasmExports
  } catch {
    return null
  }
  const { memory, takeOff } = found
  // Four factors for each of a column's pivots are packed in front of the numbers.
  let packedBytes = 0
  let a = new Float64Array(0)
  return {
    room(entries) {
      if (entries > mostEntries) throw new RangeError("A front is too large.")
      const packed = 32 * Math.ceil(Math.sqrt(entries))
      const missing = packed + 8 * entries - memory.buffer.byteLength
      if (missing > 0) memory.grow(Math.ceil(missing / pageBytes))
      if (a.buffer !== memory.buffer || packed !== packedBytes || a.length < entries) {
        packedBytes = packed
        a = new Float64Array(memory.buffer, packed)
      }
      return a
    },
    takeOff(stride, rows, pivots, from, until) {
      takeOff(packedBytes, 8 * stride, 8 * rows, pivots, 8 * from, 8 * until, 0)
    },
  }
}
