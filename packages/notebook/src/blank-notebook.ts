// A notebook for a motif of one's own: a small pattern to write over, yarn and hook, and every result.

import { unlessSaid } from "./hand-lines.ts"

/** Markdown of the notebook a maker begins with. */
export function blankNotebook(): string {
  return [
    "# A motif of my own",
    "Does it lie flat, from which round is it off, and what would mend it? Write your pattern over the one below, round by round, in the words patterns are usually written in. What is not understood is underlined where it stands, and everything further down follows what you write.",
    fence("pattern name=mine", example),
    "## Your hand",
    "Have you made some rounds? Lay the piece flat, measure across it and say after which round: every size is then right to a few per cent. A swatch tells how tall your stitches are for their width as well. Yarn and hook alone give the hand of most makers, and miss one piece in two by a tenth. What your pattern says itself goes before the two lines below; what you set in the fields goes before both.",
    fence("gauge for=mine", [unlessSaid, "Yarn: DK", "Hook: 4 mm"]),
    "## Does it lie flat?",
    fence("verdict of=mine"),
    "## What to change",
    fence("remedies of=mine"),
    "## As it comes to lie",
    "Every stitch where the net of the piece puts it when it is pressed flat.",
    fence("chart of=mine name=diagram"),
    "## Round by round",
    fence("ledger of=mine"),
    fence("chart of=mine name=growth"),
    fence("chart of=mine name=fullness"),
    "## How far it reaches",
    fence("chart of=mine name=reach"),
    "## Squaring it",
    "From the last round to straight sides and defined corners: the rounds to add, from which heights and counts, best first.",
    fence("squaring of=mine", ["Corners: 4", "Rounds: 2", "Stitches: sc, hdc, dc, tr"]),
  ].join("\n\n")
}

/** Small, so that it is soon written over, and not quite flat, so that there is something to try. */
const example = [
  "# My motif",
  "Terms: US",
  "",
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  "Rnd 2: 2 sc in each st around. (12 sc)",
  "Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
  "Rnd 4: 2 sc in each st around. (36 sc)",
  "Rnd 5: *sc in next 5 sts, 2 sc in next st; rep from * around. (42 sc)",
]

function fence(info: string, lines: readonly string[] = []): string {
  return ["```".concat(info), ...lines, "```"].join("\n")
}
