// What `help` says of the commands that match pieces and finish a blanket.

export const finishingUsage = `  roundwright gauge FILE [--size '9 cm after Rnd 3'] [--size 'side 12.2 cm']
                     [--swatch '16 dc x 9 rows = 10 cm']
                     [--weighed '4 pieces = 38 g' [--skein '50 g = 120 m']]
                     [--pattern NAME] [--yarn DK] [--hook '4 mm'] [--json]
      The hand of a real piece: how wide and how tall each of its stitches is,
      with standard errors, from sizes after rounds, the finished side, swatches
      and the weight of the yarn, all weighed by how sure they are and against
      what is published; the size after every round; and which further
      measurement would narrow heights and widths most. --size may be given
      several times, and the pattern's own Size: lines count too.
  roundwright match [FILE] --to '15.2 cm' [--now '14 cm'] [--pattern NAME]
                     [--rounds 5 --shape square|hexagon|circle|granny]
                     [--changed yarn|pattern|hook|nothing]
                     [--fabric tight|loose] [--tried '3.5 mm = 6.1 in']
                     [--meant-hook '1.75 mm'] [--whole '60 x 80 in']
                     [--yarn DK] [--hook '4 mm']
                     [--gauge '16 sc = 10 cm'] [--json]
      Ways to bring a piece to the size of its siblings, best first, each with
      size, verdict, bow, stitches a side and yarn: another last round, rounds
      more or fewer, the pins, another start, another hook; and says when it
      cannot be the hook, and what it may be. The size is across unless said:
      --to 'side 6 in', --to 'diagonal 21 cm'; --now is the piece as it is. Or
      --to a file with a piece measured round by round. Without FILE a plain
      piece of --rounds stands in; several sizes, as --now '11.5, 12, 13 in',
      are told one by one. --changed tells what differs from the pieces that
      have the size, --fabric how the work comes out, --tried what other hooks
      gave, which goes before any law, --meant-hook which hook was meant where
      --hook is the one in hand, --whole what the pattern says of the whole.
  roundwright match --stitches 60 | --rows 12 | --stitches '5 blocks'
                     --now '35 in' --to '50 in' | --to '80 stitches'
                     [--repeat '16 + 6']
      Straight work by its count: how many for a size, or how large so many.
  roundwright match --chains 57 [--stitch sc|hdc|dc|tr]
  roundwright match --stitches 85 --stitch dc
  roundwright match --chains 100 --now '30 in' --to '34 in'
  roundwright match --chains '24 in' --now '27 in' --to '24 in'
      Stitches on a foundation chain, chains for stitches; a chain (--now) and
      the row on it (--to); what to chain where a chain of that length came
      out so wide.
  roundwright match --now '5 x 7 in' --to '8 x 8 in'
      A rectangle: strips and borders that bring both ways to the size.
  roundwright match --from-corner --to '10 in' [--now '12 in']
      A square worked from a corner: how long its row (--now) is by then.
  roundwright match --shape circle|square|hexagon|granny --rounds 10
                     [--stitch sc|hdc|dc|tr]
      Stitches of each round of a plain flat shape.
  roundwright match --shape oval --to '20 x 14 in' [--gauge '16 sc = 4 in']
  roundwright match --around '22 in' [--shape circle|square|hexagon]
      The chain and rounds of an oval; what a length all round is across.
  roundwright compare A B [--json]
      Two pieces of one pattern: the round in which they part, why (a ratio, an
      offset, a step), and whose count slipped. A and B are patterns, files of
      lines such as "Rnd 3: 36 sts, 9 cm", or figures in quotes: '12, 24, 35'.
  roundwright compare '16 sts = 4 in' '18 sts = 4 in' [--whole '48 in']
  roundwright compare 'worsted, 5 mm hook' 'DK, 4 mm hook' [--whole '12 in']
      Two of a kind set side by side: gauges, with their hooks or without
      ('13 sts = 4 in, 8 mm hook'), stitches and rows ('13 sts x 9 rows =
      4 in'), rows ('84 rows = 180 cm'), hooks ('3 mm hook'), yarns, stitches
      ('UK treble' 'US treble'), widths of one work ('31 in' '34 in'),
      stitches to a place ('90 in 30' '60 in 30'). --whole is what the pattern
      asks for: a length, a size, or a count ('150 sts').
  roundwright compare '10 in, worsted, 5 mm hook, 12 rounds'
                     '7 in, DK, 4 mm hook, 12 rounds'
      Two pieces by size and whatever else is known of each, parted by commas:
      yarn, hook, rounds, stitch ('US dc'), a count ('25 sts'). Each is tested
      as the cause: the hook, the yarn, the rounds, the terms, the count.
  roundwright compare '8 shells' '12 shells' [--at 'row 5 of 30']
  roundwright compare 120 106 --rows 14 | compare 56 64 --sides 8
  roundwright compare '10, 20, 30, 38, 48'
      A count and the one it is meant to be, and how much is to be undone;
      stitches lost or won row by row (the first count, the count now); counts
      of one piece round by round, where they stop growing evenly.
  roundwright reckon '14 stitches = 4 in' '1 repeat = 12 stitches' '50 in'
  roundwright reckon '3 mats = 42 g' '1 ball = 100 g = 210 m' '58 g'
  roundwright reckon '1 blanket = 24 squares' 'have 55 squares'
                     'want 3 blankets' [--repeat '15 + 3'] [--json]
      Any figures through one another: stitches, rows, squares, strips, balls,
      grams, yards, hours. Say what stands for what ('4 strips of 9 blocks',
      '8 g a square' too) and then the amounts that are asked, any number of
      them; 'have' and 'want' tell what is short or over, two of one kind are
      set side by side. Things are told whole with what is left over, squares
      as they can be laid, areas ('30 x 20 in') as areas. Yards and metres are
      of yarn, inches and centimetres of fabric ('300 in of yarn' of yarn).
      --repeat tells whether so many stitches fit a repeat.
  roundwright yarn FILE [--pieces 32 | --layout 4x8]
                     [--weighed '4 pieces = 38 g'] [--step '1 g']
                     [--skein '50 g = 120 m'] [--border sc,hdc] [--join sc|
                     slip-stitch|whip|mattress|as-you-go]
                     [--colours 'rose: 1-3; cream: 4-6'] [--left '23 g']
                     [--reserve '10 %'] [--now '14 cm'] [--json]
      Yarn by round, colour, piece, joins, border and tails, the error beside
      each figure, skeins to buy, and what is left over still makes. Surest are
      several pieces weighed together. Without FILE, from figures alone; amounts
      are in g, oz, m, yd or balls, --skein or --ball brings one to another:
  roundwright yarn --now '64 in' --used '1800 g' [--last-round '45 g' |
                     --rounds 79] [--more 12]
                     [--used '8 balls' --left '16 balls' --keep '14 balls']
      How far a piece goes on that grows in rounds.
  roundwright yarn --row '15 g' --row-height '2 cm' --ball '100 g' --balls 15
      The same in rows.
  roundwright yarn --done 11 [--of 30] [--used '210 g'] [--left '500 g' |
                     --all '710 g'] [--ball '50 g' | --per-ball '12-13']
                     [--step '1 g']
      What is still to do from what was done: parts, sides, rows, pieces.
  roundwright yarn --need '8 x 220 yd' --skein '100 g = 170 yd'
  roundwright yarn --used '1200 yd' --now '40 x 50 in' --to '60 x 80 in'
  roundwright yarn --each 'rose 6 g, cream 4 g' --of 48 [--skein ...]
  roundwright yarn --left '63 g' --skein '100 g = 200 m'
  roundwright yarn --size '50 x 60 in' --yarn worsted
      Skeins of another label; another size; so many pieces by colour; what is
      on a ball; a blanket with nothing weighed.
  roundwright border [FILE] [--layout 4x8 | --pieces 3] [--side '9 in']
                     [--stitches 59 | 110x140] [--rounds sc,dc]
                     [--repeat '6 + 1' [--repeats 13]] [--per-join 1]
                     [--corner 3 | '(sc, ch 2, sc)'] [--rows 20 [--row-stitch
                     dc]] [--terms UK] [--json]
      Stitches a side of a border, so many a join and in each corner, a repeat
      fitted to every side with the places added or passed over told, taller
      stitches into the dips; judged flat round by round. FILE is the piece the
      blanket is made of; or tell a side, stitches or rows.
  roundwright border --stitches 20 --onto 16 | --stitches 193x294 --onto 176x218
  roundwright border --stitches 204 --parts 8
  roundwright border --stitches '31, 33, 32, 32' [--repeat '6 + 1']
  roundwright border --row 'sk 3, 6 dc in next st' [--repeats 12]
  roundwright border --repeat '6 - 1' [--repeats 12]
  roundwright border --stitches 90 --rows 120
                     --row-stitch sc|hdc|dc|tr|knit|garter
  roundwright border --squares '20 16 / 21 20'
  roundwright border --side '45 in' --stitches 220 --gauge '16 sc = 4 in'
  roundwright border --side '38 x 48 in' --to '45 x 55 in' [--gauge ...]
  roundwright border --side '45 x 60 in' --every '2.5 in'
  roundwright border --rows 258 --stitches 227 --step 8
  roundwright border --too-many 24 --per-join 2
      One count led evenly onto another; shares of an edge; sides of unlike
      counts; what a written repeat (--row) uses, and the counts that hold
      whole repeats; stitches picked up along rows (--rows may be left out);
      squares of unlike counts joined; whether an edge ruffles; how wide a
      border must be; repeats of an edging; fewer by steps; stitches too many
      at the joins.
  roundwright blanket [FILE] [--size baby | '120 x 150 cm' | --layout 4x8]
                     [--piece '15 cm' | '8 x 10 in' | 'side 1 in' | '5 = 4 in']
                     [--pieces 30] [--have 12] [--pace '3 a day']
                     [--pair '29 cm' | --gap '0.5 cm'] [--larger '20 cm: 4']
                     [--shape square|hexagon|octagon|circle|on-point]
                     [--straight-edges] [--border '3 cm']
                     [--colours 'rose 120 g, cream' | 6 [--seed 7]
                     [--colours-each 3]] [--join sc] [--skein '50 g = 120 m']
                     [--weighed '4 pieces = 38 g'] [--out plan.svg] [--json]
      Pieces for a size, or the blanket that the pieces at hand make: how many
      are still to make, the layout as a drawing (--out), half pieces, fillers
      and edge triangles, colours shared out by seed or by the weight that is
      left, and the yarn. A joined pair, measured, goes before any reckoning.
      --larger mixes two sizes, also 9 small to 4 large; --colours-each tells
      how many kinds there are with so many colours, or choices '1 x 3 x 2'.
  roundwright blanket --layout 6x9 | --pieces 34 [--have 20]
      Pieces alone, no size told: to make, over, whole blankets, rectangles.
  roundwright blanket --edge '17 in' [--piece '8.5 in'] [--along 3]
  roundwright blanket --around '144 in' --layout 3x3
  roundwright blanket --piece '3 rounds' --join-rounds 1 [--along 2]
  roundwright blanket --corner-to-corner --piece '5 = 4 in' --size '45 x 60 in'
  roundwright blanket --in-rounds --size '45 x 60 in' [--piece '0.9 in']
  roundwright blanket --in-rounds --size '4 x 9 groups' [--chains-each 4]
  roundwright blanket --size throw
      Small pieces along a large edge; pieces of an edge measured all round;
      pieces with a joining round each; blocks from corner to corner; one piece
      in rounds about its first row; the sizes that go by a name.
`
