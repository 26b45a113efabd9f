// What `roundwright help` says, at 80 columns.

export const usage = `roundwright: does a crochet motif worked in rounds lie flat, and what to change.

  roundwright check FILE... [--json] [--lay-out]
                     [--yarn DK] [--hook '4 mm'] [--gauge '16 sc = 10 cm']
      Reads written patterns and says of each whether it lies flat, cups or
      ruffles, from which round, and what to change. With --json nothing but
      JSON is printed: one object, or one a line for several files.
      With --lay-out the shape is solved as an elastic net on a table: slower,
      but it tells lift, waves, bow of the sides, corner angle and skew.
      With your own yarn, hook or gauge it also says how the piece differs in
      your hands, which way, and how much to correct.
  roundwright square FILE [--corners 4] [--rounds 2] [--stitches sc,hdc,dc,tr]
                     [--json]
      Takes the last round of a pattern as a circle and proposes rounds that
      turn it into straight sides, best first, and shows why they work.
  roundwright plan-circle [--stitch dc] --across 200mm | --rounds 10
                     [--gauge '14 dc x 7 rows = 10 cm'] [--yarn DK]
                     [--hook '4 mm'] [--json]
      Counts per round of a flat disc.
  roundwright report NOTEBOOK [--out FILE.html] [--plain]
  roundwright report NOTEBOOK... | FOLDER [--out FOLDER] [--plain]
      Renders a Markdown notebook to one HTML file, by default NOTEBOOK.html
      in the folder you are in. The page can be changed where it stands and its
      results follow; --plain leaves the script out. Several notebooks, or a
      folder of them, become as many pages with an index.html that leads to
      them. An existing file that is not such a page is never overwritten.
  roundwright new [--out FILE.html]
      Writes a page for a motif of your own: open it, write, see the verdict.
  roundwright help

Exit status: 0 = read and flat, 1 = read and something to mend,
             2 = could not be read or used.
`
