// How a house sets its patterns: which brackets, which word for passing over, short words or long. Data only; the
// counts are the same in every style.

import { kindName, type StitchKind, type Terms } from "@roundwright/stitches"

export interface HouseStyle {
  /** The brackets that hold a repeat within a round; what is worked into one place stands in the other kind. */
  readonly repeats: "square" | "round"
  /** The word for passing over in US terms; in UK terms it is "miss". */
  readonly skip: "skip" | "sk"
  /** "dc in next st" or "double crochet in next stitch". */
  readonly words: "short" | "long"
}

export const defaultStyle: HouseStyle = { repeats: "square", skip: "skip", words: "short" }

/** The words of one way of writing. */
export class Voice {
  constructor(
    readonly terms: Terms,
    readonly style: HouseStyle,
  ) {}

  name(kind: StitchKind): string {
    return kindName(kind, this.terms)
  }

  get skip(): string {
    return this.terms === "UK" ? "miss" : this.style.skip
  }

  /** What is worked into one place: "(2 dc, ch 2, 2 dc)". */
  inOnePlace(work: string): string {
    return this.style.repeats === "square" ? `(${work})` : `[${work}]`
  }

  /** "[dc in next st, ch 1] 3 times". */
  repeated(work: string, times: number): string {
    const held = this.style.repeats === "square" ? `[${work}]` : `(${work})`
    return `${held} ${times === 2 ? "twice" : `${times} times`}`
  }

  /** The finished line in the words of the house. */
  spelled(line: string): string {
    return this.style.words === "short" ? line : inLongWords(line, this.terms)
  }
}

const longWords: readonly (readonly [RegExp, string])[] = [
  [/\bRnd\b/g, "Round"],
  [/\bsl st\b/g, "slip stitch"],
  [/\bsts\b/g, "stitches"],
  [/\bst\b/g, "stitch"],
  [/\bsps\b/g, "spaces"],
  [/\bsp\b/g, "space"],
  [/\bch\b/g, "chain"],
  [/\brep\b/g, "repeat"],
  [/\bbeg\b/g, "beginning"],
  [/\bsk\b/g, "skip"],
]

/** Plain stitch names by term; names of gathered stitches and posts keep their short form, which the list of stitches explains. */
const longNames: Readonly<Record<Terms, Readonly<Record<string, string>>>> = {
  US: {
    sc: "single crochet",
    hdc: "half double crochet",
    dc: "double crochet",
    tr: "treble crochet",
    dtr: "double treble crochet",
    trtr: "triple treble crochet",
  },
  UK: {
    ss: "slip stitch",
    dc: "double crochet",
    htr: "half treble crochet",
    tr: "treble crochet",
    dtr: "double treble crochet",
    trtr: "triple treble crochet",
  },
}

function inLongWords(line: string, terms: Terms): string {
  const names = longNames[terms]
  const word = new RegExp(`(?<![\\w-])(${Object.keys(names).join("|")})(?![\\w-])`, "g")
  const named = line.replace(word, (short) => names[short]!)
  return longWords.reduce((text, [short, long]) => text.replace(short, long), named)
}
