// Crochet cotton by number: what a text calls the thread, and how wide a stitch of it comes out.
//
// Numbers rise as the thread grows finer; "size 10" is also the trade's "bedspread" and "10-count" cotton. Pearl
// cotton has numbers of its own, coarser thread for the same number; those are from memory of the shade cards.
//
// Width. Three gauges of size 10: 17 hdc in 2 in and 9 ch in 1 in (Knit-Cro-Sheen, steel 8 = 1.5 mm; a chain is 0.97
// of a stitch) and 6 dc in 1 in (steel 1 = 2.75 mm). On one hook a finer thread makes a narrower stitch: filet meshes
// of sizes 10, 30 and 50 on 1.5, 1.3 and 1.0 mm hooks measure 2.12, 1.59 and 1.41 mm, and with the hook's share (hook-law.ts)
// taken off their widths go with the number to the power -0.19 and -0.11. Rows in test/evidence/stitches-gauges.json.

import { hookFactor } from "./hook-law.ts"

/** Middle of the three gauges, each brought to a 1.5 mm hook: 2.99, 2.91 and 3.00 mm. */
export const threadWidth = { size: 10, hookMm: 1.5, widthMm: 2.99, gauges: 3 } as const
/** Between the two exponents of the filet meshes, so that it misses either width by the same 5 %. */
export const threadExponent = -0.14

/** Sizes a text can mean by number. 3 and 5 and their pearls are nearer to fingering yarn. */
const sizes = [5, 8, 10, 15, 20, 30, 40, 50, 60, 70, 80, 100]
/** Crochet cotton as thick as pearl cotton of these numbers; from memory. */
const pearlSizes: Readonly<Record<string, number>> = { "3": 5, "5": 10, "8": 20, "12": 40 }

/** Width of one sc or dc of a thread, mm. Without a hook, on the one the size 10 gauges were made with. */
export function threadScWidth(size: number, hookMm: number = threadWidth.hookMm): number {
  const { widthMm } = threadWidth
  return (
    widthMm *
    hookFactor({ threadSize: size }, threadWidth.hookMm, hookMm) *
    (size / threadWidth.size) ** threadExponent
  )
}

/** The size of crochet cotton a text names: "size 20 crochet cotton", "no. 30 thread", "pearl cotton no. 5". */
export function readThreadSize(text: string): number | undefined {
  if (text.length > longestLine) return undefined
  const pearl = pearlName.exec(text)
  if (pearl !== null) return pearlSizes[pearl[1] ?? pearl[2]!]
  const named = threadName.exec(text) ?? threadNameAfter.exec(text)
  const size = named === null ? undefined : Number(named[1])
  if (size !== undefined) return sizes.includes(size) ? size : undefined
  return bedspread.test(text) ? threadWidth.size : undefined
}

/** A heading line is far shorter. */
const longestLine = 2000
const pearlName =
  /\b(?:pearl|perle|perl[eé]) cotton\b[^;\d]{0,20}(\d{1,2})\b|\b(?:size|no\.?|#)\s?(\d{1,2})\s+(?:pearl|perle)\b/i
const threadName = /(?:\b(?:size|sz\.?|no\.?)|#)\s?(\d{1,3})\b(?=[^.;]*\b(?:thread|cotton|cord)\b)/i
const threadNameAfter =
  /\b(?:thread|cotton)\b[^.;\d]{0,12}(?:\b(?:size|sz\.?|no\.?)|#)\s?(\d{1,3})\b(?!\s?(?:mm|steel|hook))/i
const bedspread = /\bbedspread(?:[ -]weight)? (?:cotton|thread)\b/i
