// Names of stitches for people: short trade abbreviations and full words, in US or UK terms.
// US and UK pairs: "US and UK crochet terms", funcrochetdesigns.com, with which woolandcrafts.co.uk
// and crochetforall.com agree. Names above the US trtr and of extended forms follow the same shift
// by one and are common practice, no source.

import type { BasicStitch, Gathering, StitchKind, Terms } from "./kinds.ts"

interface Name {
  readonly short: string
  readonly full: string
}

const names: Readonly<Record<Terms, Readonly<Record<BasicStitch, Name>>>> = {
  US: {
    "sl st": { short: "sl st", full: "slip stitch" },
    sc: { short: "sc", full: "single crochet" },
    esc: { short: "esc", full: "extended single crochet" },
    hdc: { short: "hdc", full: "half double crochet" },
    ehdc: { short: "ehdc", full: "extended half double crochet" },
    dc: { short: "dc", full: "double crochet" },
    edc: { short: "edc", full: "extended double crochet" },
    tr: { short: "tr", full: "treble crochet" },
    etr: { short: "etr", full: "extended treble crochet" },
    dtr: { short: "dtr", full: "double treble" },
    trtr: { short: "trtr", full: "triple treble" },
    quadtr: { short: "quadtr", full: "quadruple treble" },
    quintr: { short: "quintr", full: "quintuple treble" },
  },
  UK: {
    "sl st": { short: "ss", full: "slip stitch" },
    sc: { short: "dc", full: "double crochet" },
    esc: { short: "edc", full: "extended double crochet" },
    hdc: { short: "htr", full: "half treble" },
    ehdc: { short: "ehtr", full: "extended half treble" },
    dc: { short: "tr", full: "treble" },
    edc: { short: "etr", full: "extended treble" },
    tr: { short: "dtr", full: "double treble" },
    etr: { short: "edtr", full: "extended double treble" },
    dtr: { short: "trtr", full: "triple treble" },
    trtr: { short: "quadtr", full: "quadruple treble" },
    quadtr: { short: "quintr", full: "quintuple treble" },
    quintr: { short: "sextr", full: "sextuple treble" },
  },
}

/** The abbreviation of a basic stitch: `basicName("dc", "UK")` is `tr`. */
export function basicName(basic: BasicStitch, terms: Terms = "US"): string {
  return names[terms][basic].short
}

/** The short name of a kind: `dc`, `FPdc`, `BLO sc`, `dc3tog`, `3-dc cluster`, `popcorn of 5 dc`. */
export function kindName(kind: StitchKind, terms: Terms = "US"): string {
  const basic = basicName(kind.basic, terms)
  const { gathered } = kind
  if (gathered === undefined || gathered.how === "together") {
    const tail = gathered === undefined ? "" : `${gathered.legs}tog`
    if (kind.post !== undefined) return loopPrefix(kind) + postMark(kind) + basic + tail
    return loopPrefix(kind) + basic + tail
  }
  const prefix = loopPrefix(kind) + (kind.post === undefined ? "" : `${postMark(kind)} `)
  if (gathered.how === "popcorn") return `${prefix}popcorn of ${gathered.legs} ${basic}`
  return `${prefix}${gathered.legs}-${basic} ${gathered.how}`
}

const gatheredWords: Readonly<Record<Gathering, string>> = {
  together: "worked together",
  cluster: "closed to a cluster",
  puff: "closed to a puff",
  bobble: "closed to a bobble",
  popcorn: "folded to a popcorn",
}

/** The name in words: `double crochet`, `front post treble crochet`, `3 double crochet worked together`. */
export function fullKindName(kind: StitchKind, terms: Terms = "US"): string {
  const basic = names[terms][kind.basic].full
  const post = kind.post === undefined ? "" : `${kind.post} post `
  const loops = kind.loops === undefined ? "" : ` in the ${kind.loops} loop`
  const { gathered } = kind
  const one = post + basic
  if (gathered === undefined) return one + loops
  return `${gathered.legs} ${one} ${gatheredWords[gathered.how]}${loops}`
}

function postMark(kind: StitchKind): string {
  return kind.post === "front" ? "FP" : "BP"
}

function loopPrefix(kind: StitchKind): string {
  if (kind.loops === undefined) return ""
  return kind.loops === "third" ? "third-loop " : kind.loops === "back" ? "BLO " : "FLO "
}
