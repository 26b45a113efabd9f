// What `roundwright` and `roundwright help` say: every command in a line, by what it is wanted for.

const groups: readonly (readonly [string, readonly (readonly [string, string])[]])[] = [
  [
    "A written pattern",
    [
      ["check", "does it lie flat, cup or ruffle, from which round; what to do"],
      ["edit", "a technical edit: what must be mended, asked, made even"],
      ["sheet", "the pattern sheet for print, with chart and finished size"],
      ["chart", "the stitch chart for print, as SVG"],
    ],
  ],
  [
    "New rounds",
    [
      ["square", "turn a circle into 3 to 12 straight sides; go on with a square"],
      ["plan-circle", "counts per round of a flat disc, polygon or oval"],
    ],
  ],
  [
    "A piece that is there",
    [
      ["measure", "rings, repeats and outline of a photograph or drawing"],
      ["rebuild", "the rounds that a measured picture was made by"],
      ["gauge", "the hand it was made by, from its sizes, weight or swatches"],
      ["compare", "two pieces, gauges or lists of counts: where they part, and why"],
    ],
  ],
  [
    "To a size, to a blanket",
    [
      ["match", "reach a size: hook, last round, a round more or less"],
      ["blanket", "how many pieces, laid out how; half pieces and edges"],
      ["border", "stitches a side, corners, a repeat that comes out even"],
      ["yarn", "length and weight by round and colour; what a rest still makes"],
      ["reckon", "any figures through one another: rows, strips, balls, hours"],
    ],
  ],
  [
    "A page to write in",
    [
      ["new", "a page for a motif of your own: write, and see the verdict"],
      ["report", "a notebook, or a folder of them, as pages with their charts"],
    ],
  ],
]

/** The widest name of a command and the space behind it. */
const column = 14

/** Every command in a line. @returns at most 80 letters a line, a line break at the end */
export function overview(): string {
  const lines = groups.flatMap(([title, commands]) => [
    "",
    title,
    ...commands.map(([name, does]) => `  ${name.padEnd(column)}${does}`),
  ])
  return `roundwright: does a crochet motif worked in rounds lie flat, and what to change.
${lines.join("\n")}

roundwright help COMMAND tells how one is used, roundwright help all tells
everything. The first to try: roundwright check PATTERN.txt

Exit status: 0 = read and flat, 1 = read and something to mend,
             2 = could not be read or used.
`
}
