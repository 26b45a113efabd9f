// The WebAssembly module of front-kernel.ts, put together instruction by instruction: takes columns off others of a dense
// front, four columns and four rows at a time, two numbers in one.
// Source of the codes: WebAssembly Core Specification 2.0, chapter 5 (W3C, www.w3.org/TR/wasm-core-2).

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
export function moduleBytes(): Uint8Array {
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
