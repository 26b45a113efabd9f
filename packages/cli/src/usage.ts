// What `roundwright help` says, at 80 columns.

import { finishingUsage } from "./finishing-usage.ts"

export const usage = `roundwright: does a crochet motif worked in rounds lie flat, and what to change.

  roundwright check FILE... [--json] [--quick | --lay-out]
                     [--yarn DK] [--hook '4 mm'] [--gauge '16 sc = 10 cm']
      Reads written patterns and says of each whether it lies flat, cups or
      ruffles, from which round, and what to change. Of a notebook each pattern
      block is read by itself. With --json nothing but JSON is printed: one
      object, or one a line where several patterns are checked.
      The shape is solved as an elastic net on a table: it tells lift, waves,
      bow of the sides, corner angle and skew. With --quick only the growth of
      the rounds is judged, in milliseconds; with --lay-out a large or much
      ruffled piece is solved to the end, however long that takes.
      With your own yarn, hook or gauge it also says how the piece differs in
      your hands, which way, and how much to correct. A hook alone keeps the
      pattern's yarn and gauge; --gauge 'Rnds 1-3 = 9 cm' is a round of yours,
      measured, and the surest.
  roundwright sheet FILE [--terms US|UK] [--format md|html|txt|large]
                     [--out FILE]
      The pattern sheet: level, materials, gauge, finished size, abbreviations,
      notes, rounds with the size after each, chart, blocking and care, and what
      is left for the designer to say. html is made for print on A4 and Letter;
      large is 24 point in full words, one step on a line.
  roundwright chart FILE [--terms US|UK] [--width 80mm] [--out FILE.svg|.png]
                     [--emphasis none|repeat|rounds]
      The stitch chart for print, with its key, as SVG, or as PNG of 300 dots
      an inch where FILE ends so: symbols of one size, on wish one repeat dark
      and the rest light, or two inks by round.
  roundwright edit FILE... [--json] [--out FILE] [--chart CHART.svg]
      The technical edit of a finished text, in an editor's order: what must be
      mended, what the designer is asked, what is a matter of style; each with
      its place, the reason and a wording. Wordings that nothing speaks against
      go into a corrected copy, FILE-corrected, beside the file. Exit status 1
      where something must be mended. --chart holds a chart that 'chart' wrote,
      against the text, round by round.
  roundwright square FILE [--corners 4] [--rounds 2] [--stitches sc,hdc,dc,tr]
                     [--from-round 5] [--corner-style any|chains|stitches]
                     [--straighten sc] [--terms US|UK] [--json]
      Takes the last round of a pattern (or another one) as a circle and
      proposes rounds that turn it into 3 to 12 straight sides, and shows why
      they work: in the piece's own fabric first (loops, spaces, groups and
      shells are held), then in others, with a softer corner, in fewer rounds.
      A circle that does not lie flat is told before anything is added. A piece
      that has the corners already goes on in its own pattern first.
      --straighten adds a last round of one stitch, over lace too.
  roundwright square FILE --side 12cm ...
      Says how many rounds a side of that length takes, and proposes them.
  roundwright square FILE --count 240 [--straighten sc]
      One round that leads evenly to that many stitches, before a border.
  roundwright plan-circle [--stitch dc] --across 200mm | --rounds 10
                     [--increases staggered|stacked] [--repeats 6]
                     [--gauge '14 dc x 7 rows = 10 cm'] [--yarn DK]
                     [--hook '4 mm'] [--terms US|UK] [--json]
  roundwright plan-circle [--stitch dc] --corners 6
                     [--corner-style chains|stitches] ...
  roundwright plan-circle [--stitch dc] --oval 20 | --longer-by 80mm --rounds 6
      Counts per round of a flat disc, polygon or oval. --stitch sc,dc takes
      one stitch after the other; a stitch of your own needs its swatch, such
      as: --stitch petal --gauge '10 petal x 6 rows = 10 cm'.
  roundwright measure PICTURE [--box x,y,width,height | --tap x,y]
                     [--centre x,y]
                     [--corners 'x,y x,y x,y x,y' | --round-edge | --as-it-is]
                     [--side 15.2cm | --across 9cm | --known 'ruler ...']
                     [--ring 3=12] [--into NOTEBOOK] [--out FILE.svg] [--json]
      Measures a photograph of a motif: centre, outline, rings and how often
      each repeats, as plain lines for a notebook, and a drawing of the picture
      with every counted strand ticked, by default PICTURE.svg in the folder
      you are in. A tilted view is made straight by the piece's own regularity,
      by the four corners of something square, or by the edge of a round piece.
      Of several motifs --tap x,y takes the one it lies on; motifs that are
      joined need a --box.
      --known takes any one length: 'side 15.2 cm', 'across 9 cm', 'ruler
      120,400 820,410 = 10 cm', 'coin X,Y X,Y X,Y X,Y X,Y = 23.2 mm' with points
      round its edge, or 'stitch 4.5 mm in ring 3'. --into brings the lines into
      the picture cell of a notebook; lines set by hand there (without bracket)
      go before what is found and are never overwritten. Exit status 1 where
      something is not sure and has to be looked at.
  roundwright rebuild NOTEBOOK [--gauge '16 sc = 10 cm'] [--yarn DK]
                     [--hook '4 mm'] [--json]
      Proposes rounds that fit the rings of a measured picture, whose lines (in
      mm) stand in the notebook with Gauge: or Yarn: and Hook:, likeliest first,
      writes them as a pattern, and asks the one question that parts the first
      two. Answer on the ring's line: "Ring 3: to 25 mm; 12 repeats; dc".
${finishingUsage}  roundwright report NOTEBOOK [--out FILE.html] [--plain]
  roundwright report NOTEBOOK... | FOLDER [--out FOLDER] [--plain]
      Renders a Markdown notebook to one HTML file, by default NOTEBOOK.html
      in the folder you are in. The page can be changed where it stands and its
      results follow; --plain leaves the script out. Several notebooks, or a
      folder of them, become as many pages with an index.html that leads to
      them. A page that you changed, or saved in a browser, is left alone: the
      new one takes another name. Other files are never overwritten.
  roundwright new [--out FILE.html]
      Writes a page for a motif of your own: open it, write, see the verdict.
  roundwright help [COMMAND | all]
      Names every command in a line, says what one does, as COMMAND --help does
      too, or all of this.
  roundwright --version

Exit status: 0 = read and flat, 1 = read and something to mend,
             2 = could not be read or used.
`
