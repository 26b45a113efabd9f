// Units of length as patterns write them after a number.

const inchMm = 25.4

/** mm in one "mm" or "cm", in any case; of an inch, however it is written, for every other word. */
export function millimetresIn(unit: string): number {
  if (/^mm/i.test(unit)) return 1
  return /^cm/i.test(unit) ? 10 : inchMm
}
