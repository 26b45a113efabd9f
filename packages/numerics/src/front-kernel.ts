// The innermost work of the factorisation, C -= L D L' on a dense front, as a WebAssembly module of two numbers at a time.
// The module is put together here, instruction by instruction, so that nothing compiled has to be kept. Where a machine
// or a page does not allow it the same sums are done in JavaScript, in the same order: the same input gives the same bits.
// Source of the instruction codes: WebAssembly Core Specification 2.0, chapter 5 (W3C, www.w3.org/TR/wasm-core-2).

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

/** Codes of the value types and instructions used. */
const [i32, v128] = [0x7f, 0x7b]
const get = (local: number): number[] => [0x20, local]
const set = (local: number): number[] => [0x21, local]
const constant = (value: number): number[] => [0x41, ...signed(value)]
const [add, multiply, lessThan] = [[0x6a], [0x6c], [0x48]]
const wide = (code: number): number[] => [0xfd, ...unsigned(code)]
const at = (offset: number): number[] => [3, ...unsigned(offset)]
const load = (offset = 0): number[] => [...wide(0x00), ...at(offset)]
const store = (offset = 0): number[] => [...wide(0x0b), ...at(offset)]
/** One number, twice over. */
const loadBoth = (offset = 0): number[] => [...wide(0x0a), ...at(offset)]
const [timesWide, minusWide] = [wide(0xf2), wide(0xf1)]
const advance = (local: number, by: number[]): number[] => [
  ...get(local),
  ...by,
  ...add,
  ...set(local),
]
/** Repeats the body, which must run at least once, while `local` is below `limit`. */
const doWhileBelow = (local: number, limit: number, body: number[]): number[] => [
  ...[0x03, 0x40],
  ...body,
  ...get(local),
  ...get(limit),
  ...lessThan,
  ...[0x0d, 0, 0x0b],
]
/** The body only where `local` is below `limit`. */
const ifBelow = (local: number, limit: number, body: number[]): number[] => [
  ...get(local),
  ...get(limit),
  ...lessThan,
  ...[0x04, 0x40],
  ...body,
  0x0b,
]

/** takeOff(a, stride, rows, pivots, from, until, packed): all but `pivots` in bytes. */
function moduleBytes(): Uint8Array {
  const [a, stride, rows, pivots, column, until, packed] = [0, 1, 2, 3, 4, 5, 6]
  const [packedEnd, p, q, r, target, l] = [7, 8, 9, 10, 11, 12]
  const [x0, x1, f] = [13, 14, 15]
  /** Two accumulators for each of the four columns: rows r, r + 1 and r + 2, r + 3. */
  const sums = Array.from({ length: 8 }, (_, k) => 16 + k)
  const fourColumns = (of: (j: number) => number[]): number[] => [
    ...get(target),
    ...set(p),
    ...[0, 1, 2, 3].flatMap((j) => [...of(j), ...(j < 3 ? advance(p, get(stride)) : [])]),
  ]
  // The factors of four columns: their entries in each pivot's column times the pivot. l runs down the diagonal.
  const pack = [
    ...get(a),
    ...get(column),
    ...add,
    ...set(p),
    ...get(a),
    ...set(l),
    ...get(packed),
    ...set(q),
    ...doWhileBelow(q, packedEnd, [
      ...get(l),
      ...loadBoth(),
      ...set(f),
      ...[0, 16].flatMap((half) => [
        ...get(q),
        ...get(p),
        ...load(half),
        ...get(f),
        ...timesWide,
        ...store(half),
      ]),
      ...advance(p, get(stride)),
      ...advance(l, [...get(stride), ...add, ...constant(8)]),
      ...advance(q, constant(32)),
    ]),
  ]
  const overPivots = doWhileBelow(q, packedEnd, [
    ...get(l),
    ...load(0),
    ...set(x0),
    ...get(l),
    ...load(16),
    ...set(x1),
    ...[0, 1, 2, 3].flatMap((j) => [
      ...get(q),
      ...loadBoth(8 * j),
      ...set(f),
      ...[x0, x1].flatMap((x, half) => [
        ...get(sums[2 * j + half]!),
        ...get(x),
        ...get(f),
        ...timesWide,
        ...minusWide,
        ...set(sums[2 * j + half]!),
      ]),
    ]),
    ...advance(l, get(stride)),
    ...advance(q, constant(32)),
  ])
  const overRows = doWhileBelow(r, rows, [
    ...fourColumns((j) =>
      [0, 1].flatMap((half) => [...get(p), ...load(16 * half), ...set(sums[2 * j + half]!)]),
    ),
    ...get(a),
    ...get(r),
    ...add,
    ...set(l),
    ...get(packed),
    ...set(q),
    ...overPivots,
    ...fourColumns((j) =>
      [0, 1].flatMap((half) => [...get(p), ...get(sums[2 * j + half]!), ...store(16 * half)]),
    ),
    ...advance(target, constant(32)),
    ...advance(r, constant(32)),
  ])
  const body = [
    ...get(packed),
    ...get(pivots),
    ...constant(32),
    ...multiply,
    ...add,
    ...set(packedEnd),
    ...ifBelow(
      packed,
      packedEnd,
      ifBelow(
        column,
        until,
        doWhileBelow(column, until, [
          ...pack,
          ...get(column),
          ...set(r),
          // column is in bytes of a row: times the stride in bytes, over the 8 bytes of an entry.
          ...get(a),
          ...get(column),
          ...constant(3),
          ...[0x76],
          ...get(stride),
          ...multiply,
          ...add,
          ...get(column),
          ...add,
          ...set(target),
          ...overRows,
          ...advance(column, constant(32)),
        ]),
      ),
    ),
    0x0b,
  ]
  const locals = vector([
    [...unsigned(6), i32],
    [...unsigned(11), v128],
  ])
  const code = [...locals, ...body]
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, vector([[0x60, ...vector(Array(7).fill([i32])), 0]])),
    ...section(3, vector([[0]])),
    ...section(5, vector([[0x00, 1]])),
    ...section(
      7,
      vector([
        [...name("memory"), 0x02, 0],
        [...name("takeOff"), 0x00, 0],
      ]),
    ),
    ...section(10, vector([[...unsigned(code.length), ...code]])),
  ])
}

function section(id: number, bytes: readonly number[]): number[] {
  return [id, ...unsigned(bytes.length), ...bytes]
}

function vector(items: readonly (readonly number[])[]): number[] {
  return [...unsigned(items.length), ...items.flat()]
}

function name(text: string): number[] {
  return [...unsigned(text.length), ...[...text].map((letter) => letter.charCodeAt(0))]
}

/** Whole numbers from 0 in groups of seven bits, lowest first. */
function unsigned(value: number): number[] {
  return value < 128 ? [value] : [(value & 127) | 128, ...unsigned(value >>> 7)]
}

/** The same with a sign; only small positive ones are needed. */
function signed(value: number): number[] {
  return value < 64 ? [value] : [(value & 127) | 128, ...signed(value >>> 7)]
}
