// Spellings of the basic stitches met in patterns, each without spaces, stops and hyphens and in
// small letters. Pairs of terms: see kind-names.ts; further spellings are common practice, no source.
//
// The same word names two stitches in the two sets: a UK dc is a US sc, a UK tr a US dc, a UK dtr a
// US tr, a UK trtr a US dtr ("US and UK crochet terms", funcrochetdesigns.com). Older British texts
// call the slip stitch single crochet (downloadablecrochetpatterns.com), so "single crochet" has no
// safe reading in UK terms and is not read there.

import type { BasicStitch, Terms } from "./kinds.ts"

const slipStitch = [
  "slst",
  "slipst",
  "slipstitch",
  "slstitch",
  "ss",
  "slps",
  "slpst",
  "sl",
  "slip",
  "slt",
  "slips",
]

const usWords: Readonly<Record<BasicStitch, readonly string[]>> = {
  "sl st": slipStitch,
  sc: ["sc", "singlecrochet", "singlecr", "scr", "scst", "crabst", "crabstitch"],
  esc: ["esc", "exsc", "extsc", "extendedsc", "extendedsinglecrochet"],
  hdc: ["hdc", "halfdoublecrochet", "halfdouble", "halfdc", "hdcr", "hdcst"],
  ehdc: ["ehdc", "exhdc", "exthdc", "extendedhdc", "extendedhalfdoublecrochet"],
  dc: ["dc", "doublecrochet", "doublecr", "dblcrochet", "dcr", "dcst"],
  edc: ["edc", "exdc", "extdc", "extendeddc", "extendeddoublecrochet"],
  tr: ["tr", "trc", "trcrochet", "treble", "treblecrochet", "trebcrochet", "triplecrochet", "trst"],
  etr: ["etr", "exttr", "extendedtr", "extendedtreble", "extendedtreblecrochet"],
  dtr: ["dtr", "dtrc", "dtc", "dbltr", "dbletr", "doubletr", "doubletreble", "doubletreblecrochet"],
  trtr: ["trtr", "ttr", "tripletr", "tripletreble", "tripletreblecrochet", "trebletreble"],
  quadtr: ["quadtr", "qtr", "quadtreble", "quadrupletreble", "quadrupletreblecrochet"],
  quintr: ["quintr", "quinttr", "quinttreble", "quintupletreble", "quintupletreblecrochet"],
}

const ukWords: Readonly<Record<BasicStitch, readonly string[]>> = {
  "sl st": slipStitch,
  sc: usWords.dc,
  esc: usWords.edc,
  hdc: ["htr", "ht", "hftr", "halftr", "halftreble", "halftreblecrochet", "htrc", "hlftr"],
  ehdc: ["ehtr", "exhtr", "exthtr", "extendedhtr", "extendedhalftreble"],
  dc: ["tr", "trc", "trcrochet", "treble", "treblecrochet", "trst"],
  edc: usWords.etr,
  tr: usWords.dtr,
  etr: ["edtr", "extdtr", "extendeddtr", "extendeddoubletreble"],
  dtr: usWords.trtr,
  trtr: usWords.quadtr,
  quadtr: usWords.quintr,
  quintr: ["sextr", "sexttr", "sextupletreble"],
}

/** Every spelling with its stitch, for each set of terms. */
export const stitchWords: Readonly<Record<Terms, ReadonlyMap<string, BasicStitch>>> = {
  US: collect(usWords),
  UK: collect(ukWords),
}

/**
 * Words that only UK texts use, in small letters: evidence for weighing an undeclared text.
 * htr, miss and tension after "US and UK crochet terms", funcrochetdesigns.com; the rest follows.
 */
export const ukOnlyWords: readonly string[] = [
  "htr",
  "half treble",
  "half treble crochet",
  "half tr",
  "ehtr",
  "edtr",
  "sextr",
  "miss",
  "tension",
  "yoh",
]

/** Words that only US texts use. `single crochet` in an old British text is a slip stitch, though. */
export const usOnlyWords: readonly string[] = [
  "sc",
  "single crochet",
  "esc",
  "extended single crochet",
  "hdc",
  "half double crochet",
  "half double",
  "ehdc",
  "gauge",
  "skip",
]

function collect(
  words: Readonly<Record<BasicStitch, readonly string[]>>,
): ReadonlyMap<string, BasicStitch> {
  const map = new Map<string, BasicStitch>()
  for (const [basic, spellings] of Object.entries(words) as [BasicStitch, readonly string[]][]) {
    for (const spelling of spellings) map.set(spelling, basic)
  }
  return map
}
