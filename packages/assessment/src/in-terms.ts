// Sentences on sizes in the reader's own terms. What is known of gauges is told in US names, where no pattern is at hand;
// beside a UK pattern the same stitch has the UK name: "one sc is taken 5.5 mm wide" is one dc there.

import { type BasicStitch, basicName, type Terms } from "@roundwright/stitches"

const told: readonly BasicStitch[] = ["sc", "hdc", "dc", "tr", "dtr", "trtr"]

/** The name of a stitch by itself, worked round a post (`FPdc`) or together (`dc3tog`). */
const stitchName = new RegExp(
  String.raw`(?<![\p{L}\d])(FP|BP)?(${told.join("|")})(?=\d+tog\b|[^\p{L}\d]|$)`,
  "gu",
)

/** A sentence that names stitches in US terms, in the terms asked for. */
export function inTerms(sentence: string, terms: Terms): string {
  return sentence.replace(
    stitchName,
    (_, post: string | undefined, basic: BasicStitch) => `${post ?? ""}${basicName(basic, terms)}`,
  )
}
