// Hook sizes: mm with the US letter and number and the old UK number.
// Sources: hook size table of cnas.ca; larger sizes: hook charts of Tangled Yarn, of a Spanish hook
// table and of Lindley General Store. Letters differ between makers above N and millimetres are the
// size to rely on. Steel hooks run in reverse, higher is thinner: 00 = 3.5 mm, 14 = 0.75 mm
// (homequestionsanswered.com); those between are from memory of the usual US chart, and makers
// differ (steel 7 is 1.65 mm of one and 1.50 mm of another, junice.com).

export interface Hook {
  readonly mm: number
  readonly usLetter?: string
  readonly usNumber?: string
  /** The number of the old UK (imperial) series, which runs in reverse. */
  readonly oldUk?: string
}

export const hooks: readonly Hook[] = [
  { mm: 2, oldUk: "14" },
  { mm: 2.25, usLetter: "B", usNumber: "1", oldUk: "13" },
  { mm: 2.5, oldUk: "12" },
  { mm: 2.75, usLetter: "C", usNumber: "2" },
  { mm: 3, oldUk: "11" },
  { mm: 3.25, usLetter: "D", usNumber: "3", oldUk: "10" },
  { mm: 3.5, usLetter: "E", usNumber: "4", oldUk: "9" },
  { mm: 3.75, usLetter: "F", usNumber: "5" },
  { mm: 4, usLetter: "G", usNumber: "6", oldUk: "8" },
  { mm: 4.5, usNumber: "7", oldUk: "7" },
  { mm: 5, usLetter: "H", usNumber: "8", oldUk: "6" },
  { mm: 5.5, usLetter: "I", usNumber: "9", oldUk: "5" },
  { mm: 6, usLetter: "J", usNumber: "10", oldUk: "4" },
  { mm: 6.5, usLetter: "K", usNumber: "10.5", oldUk: "3" },
  { mm: 7, oldUk: "2" },
  { mm: 8, usLetter: "L", usNumber: "11", oldUk: "0" },
  { mm: 9, usLetter: "M", usNumber: "13", oldUk: "00" },
  { mm: 10, usLetter: "N", usNumber: "15", oldUk: "000" },
  { mm: 12, usLetter: "O" },
  { mm: 16, usLetter: "Q" },
  { mm: 19, usLetter: "S", usNumber: "35" },
]

/** US steel sizes by number, mm. All but 00, 7 and 14 from memory of the usual chart. */
export const steelHooksMm: Readonly<Record<string, number>> = {
  "00": 3.5,
  "0": 3.25,
  "1": 2.75,
  "2": 2.25,
  "3": 2.1,
  "4": 2,
  "5": 1.9,
  "6": 1.8,
  "7": 1.65,
  "8": 1.5,
  "9": 1.4,
  "10": 1.3,
  "11": 1.1,
  "12": 1,
  "13": 0.85,
  "14": 0.75,
}

/** The hook of the table nearest to a size in mm. */
export function nearestHook(mm: number): Hook {
  return hooks.reduce((best, hook) =>
    Math.abs(hook.mm - mm) < Math.abs(best.mm - mm) ? hook : best,
  )
}
