// Questions of the kind that makers ask, in our own words, each with the command it is asked by and what the answer must hold,
// worked out by hand. They show what can be asked; they are no evidence, for the code was written with them in sight.

export interface AskedQuestion {
  readonly asks: string
  readonly command: string
  readonly holds: readonly string[]
}

export const askedQuestions: readonly AskedQuestion[] = [
  {
    asks: "18 stitches are 5 in; how many for 45 in, in repeats of 14 plus 3?",
    command: "match --stitches 18 --now '5 in' --to '45 in' --repeat '14 + 3'",
    holds: ["takes 162", "11 repeats, 157 stitches, 43.6 in", "12 repeats, 171 stitches, 47.5 in"],
  },
  {
    asks: "12 rows are 10 cm; how many for 150 cm?",
    command: "match --rows 12 --now '10 cm' --to '150 cm'",
    holds: ["Length goes with the count", "takes 180"],
  },
  {
    asks: "A row for every day of the year, 22 rows to 10 cm: how long?",
    command: "match --rows 22 --now '10 cm' --to '365 rows'",
    holds: ["365 are 165.9 cm"],
  },
  {
    asks: "5 blocks are 4 in; how large are 50?",
    command: "match --stitches '5 blocks' --now '4 in' --to '50 blocks'",
    holds: ["0.8 in each", "50 are 40 in"],
  },
  {
    asks: "120 chains, then hdc: how many stitches?",
    command: "match --chains 120 --stitch hdc",
    holds: ["120 chains give 119 hdc", "3rd chain"],
  },
  {
    asks: "57 chains, sc in the second from the hook and in each: how many?",
    command: "match --chains 57",
    holds: ["57 chains give 56 sc", "not the hook"],
  },
  {
    asks: "How many chains for 85 dc?",
    command: "match --stitches 85 --stitch dc",
    holds: ["87 chains give 85 dc"],
  },
  {
    asks: "Three squares of 5.5, 6 and 6.25 in where 6 in are wanted: which can stay?",
    command: "match --now '5.5 in, 6 in, 6.25 in' --to '6 in'",
    holds: ["1 of 3 join as they are", "8 % too small, 0.25 in on each side", "4 % too large"],
  },
  {
    asks: "The pattern has 16 sts to 4 in, mine 18; what becomes of 48 in?",
    command: "compare '16 sts = 4 in' '18 sts = 4 in' --whole '48 in'",
    holds: ["192 stitches", "42.7 in", "take 216 stitches", "two sizes up"],
  },
  {
    asks: "20 sts to 10 cm against 17: what becomes of 150 stitches?",
    command: "compare '20 sts = 10 cm' '17 sts = 10 cm' --whole '150 sts'",
    holds: ["75.0 cm", "88.2 cm", "take 128 stitches"],
  },
  {
    asks: "5 repeats to 10 cm with 3.5 mm, 4 with 4 mm as the pattern says: which hook?",
    command:
      "compare '4 repeats = 10 cm, 4 mm hook' '5 repeats = 10 cm, 3.5 mm hook' --whole '53 cm'",
    holds: ["42.4 cm", "4 mm hook gave the first gauge: take it"],
  },
  {
    asks: "A 12 in square of worsted, made in DK with its hook: what size?",
    command: "compare 'worsted, 5 mm hook' 'DK, 4 mm hook' --whole '12 in'",
    holds: ["smaller", "12 in in the first are", "in every round alike"],
  },
  {
    asks: "I began with 120 stitches and have 106 after 14 rows.",
    command: "compare 120 106 --rows 14",
    holds: ["14 fewer in 14 rows, 1 a row", "At one end of every row", "Not the hook"],
  },
  {
    asks: "80 have become 104 in 24 rows.",
    command: "compare 80 104 --rows 24",
    holds: ["24 more in 24 rows", "one too many"],
  },
  {
    asks: "The pattern wants 8 skeins of 220 yd, mine have 170 yd.",
    command: "yarn --need '8 x 220 yd' --skein '100 g = 170 yd'",
    holds: ["1760 yd are 10.4 skeins", "buy 11", "12 with a tenth"],
  },
  {
    asks: "40 by 50 in took 1200 yd; 60 by 80 in?",
    command: "yarn --used '1200 yd' --now '40 x 50 in' --to '60 x 80 in'",
    holds: ["2.40 times", "2880 yd", "1680 yd more"],
  },
  {
    asks: "A square takes 6 g rose, 4 g cream, 10 g green; 48 squares, balls of 50 g?",
    command: "yarn --each 'rose 6 g, cream 4 g, green 10 g' --of 48 --skein '50 g = 120 m'",
    holds: [
      "rose 288 g (6 balls)",
      "cream 192 g (4 balls)",
      "green 480 g (10 balls)",
      "960 g in all",
    ],
  },
  {
    asks: "A square takes 15 g, 80 are wanted, balls of 100 g?",
    command: "yarn --done '1 square' --used '15 g' --of 80 --ball '100 g'",
    holds: ["all take 1200 g", "a ball makes 6 whole ones", "12 to 14 balls in all"],
  },
  {
    asks: "63 g of a ball of 100 g and 200 m are left.",
    command: "yarn --left '63 g' --skein '100 g = 200 m'",
    holds: ["63 % of a ball", "126 m"],
  },
  {
    asks: "30 of 70 done with 450 g, 550 g left: enough?",
    command: "yarn --done '30 squares' --of 70 --used '450 g' --left '550 g'",
    holds: ["40 to do", "each takes 15 g", "not enough: 50 short", "make 36"],
  },
  {
    asks: "20 rounds took 600 g; 5 more?",
    command: "yarn --used '600 g' --rounds 20 --more 5",
    holds: ["338 g", "1.25 times as wide"],
  },
  {
    asks: "40 in took 10 balls, 6 are left: how large can it get?",
    command: "yarn --now '40 in' --used '10 balls' --left '6 balls'",
    holds: ["26 %", "50.6 in"],
  },
  {
    asks: "A square metre in worsted, nothing weighed?",
    command: "yarn --size '100 x 100 cm' --yarn worsted",
    holds: ["1.00 square metres", "800 g"],
  },
  {
    asks: "A row takes 12 g and is 1.5 cm; 20 balls of 50 g?",
    command: "yarn --row '12 g' --row-height '1.5 cm' --ball '50 g' --balls 20",
    holds: ["4 whole rows, 2 g over", "80 rows, 120.0 cm", "83 rows, 124.5 cm"],
  },
  {
    asks: "5 squares took 62 g of 800 g: how many in all?",
    command: "yarn --done '5 squares' --used '62 g' --all '800 g'",
    holds: ["Each takes 12.4 g", "64 in all", "8 by 8"],
  },
  {
    asks: "38 by 48 in is to be 45 by 55 in: how wide a border?",
    command: "border --side '38 x 48 in' --to '45 x 55 in' --gauge '14 sc = 4 in'",
    holds: ["3.5 in on each side", "rounds of dc"],
  },
  {
    asks: "38 by 50 in is to be 45 by 60 in.",
    command: "border --side '38 x 50 in' --to '45 x 60 in'",
    holds: ["3.5 in on each side of the width and 5 in of the length", "3 in more as rows"],
  },
  {
    asks: "An edging of 2.5 in repeats round 45 by 60 in?",
    command: "border --side '45 x 60 in' --every '2.5 in'",
    holds: ["210 in", "84 repeats", "18 and 24 a side"],
  },
  {
    asks: "Six squares of 30 stitches, one a join: how many a side?",
    command: "border --stitches 30 --pieces 6",
    holds: ["187 a side: 180 in the pieces, 5 in the joins, 1 in each corner"],
  },
  {
    asks: "Sides of 110 and 140 for a repeat of 8 plus 1?",
    command: "border --stitches 110x140 --repeat '8 + 1'",
    holds: ["113 = 8 x 14 + 1, 3 more", "137 = 8 x 17 + 1, 3 fewer"],
  },
  {
    asks: "82 for a multiple of 6 less 2?",
    command: "border --stitches 82 --repeat '6 less 2'",
    holds: ["82 = 6 x 14 - 2: it fits as it is", "56 repeats"],
  },
  {
    asks: "250 stitches in 6 parts?",
    command: "border --stitches 250 --parts 6",
    holds: ["2 parts of 41 and 4 of 42"],
  },
  {
    asks: "Increase 96 to 108 evenly.",
    command: "border --stitches 96 --onto 108",
    holds: ["12 groups of 8", "12 times (7 sts, 2 in 1)"],
  },
  {
    asks: "A strip of 148 rows beside one of 152?",
    command: "border --stitches 148 --onto 152",
    holds: ["skip 4 of the 152, about every 38th"],
  },
  {
    asks: "Top 193 to 176 and side 294 to 218.",
    command: "border --stitches 193x294 --onto 176x218",
    holds: ["11 times take 10 of 11, 6 times take 11 of 12", "All four edges: 788"],
  },
  {
    asks: "Six squares of unlike counts, two rows of three: the outer edge?",
    command: "border --squares '24 24 20 / 20 24 24'",
    holds: ["top 68, right 44, bottom 68, left 44", "224 in all"],
  },
  {
    asks: "(sc, ch 2, sc) in the corners and 13 along each side, then once more?",
    command: "border --stitches 13 --corner '(sc, ch 2, sc)' --rounds sc,sc",
    holds: ["(60 sc, 4 ch-2 sps;", "Rnd 2: 15 sc a side", "(68 sc"],
  },
  {
    asks: "How many 6 in squares for 50 by 60 in?",
    command: "blanket --piece '6 in' --size '50 x 60 in'",
    holds: ["80 squares of 6 in each in 10 rows of 8: 48 in by 60 in", "10 rows of 9, 90 in all"],
  },
  {
    asks: "The same with a border of 3 in?",
    command: "blanket --piece '6 in' --size '50 x 60 in' --border '3 in'",
    holds: ["63 squares", "9 rows of 7: 48 in by 60 in"],
  },
  {
    asks: "8 rows of 6 squares of 7 in, joins of 1/4 in?",
    command: "blanket --piece '7 in' --layout 8x6 --gap '0.25 in'",
    holds: ["48 squares", "43.3 in by 57.8 in"],
  },
  {
    asks: "5 rows of 6 blocks of 8 by 10 in?",
    command: "blanket --piece '8 x 10 in' --layout 5x6",
    holds: ["30 pieces in 5 rows of 6: 48 in by 50 in"],
  },
  {
    asks: "10 rows of 8 hexagons: how many, how many halves?",
    command: "blanket --piece '10 cm' --layout 10x8 --shape hexagon",
    holds: ["75 hexagons", "10 half pieces"],
  },
  {
    asks: "6 rows of 5 octagons of 6 in?",
    command: "blanket --piece '6 in' --layout 6x5 --shape octagon",
    holds: ["30 octagons", "20 fillers between them of 2.49 in a side"],
  },
  {
    asks: "Squares of 5 in on their corners, 4 rows of 3?",
    command: "blanket --piece '5 in' --layout 4x3 --shape on-point",
    holds: ["18 squares", "10 half pieces and 4 quarters", "21.2 in by 28.3 in"],
  },
  {
    asks: "4 rows of 5 circles?",
    command: "blanket --piece '12 cm' --layout 4x5 --shape circle",
    holds: ["20 circles", "12 fillers", "60.0 cm by 48.0 cm"],
  },
  {
    asks: "Corner to corner, 5 blocks are 4 in, 45 by 60 in?",
    command: "blanket --corner-to-corner --piece '5 = 4 in' --size '45 x 60 in'",
    holds: ["56 blocks by 75", "130 diagonal rows", "Increase to row 56", "go on for 19 rows"],
  },
  {
    asks: "A granny rectangle of 45 by 60 in, rounds of 0.9 in: how long is the first row?",
    command: "blanket --in-rounds --size '45 x 60 in' --piece '0.9 in'",
    holds: ["row of 15 in", "25 rounds", "60 in by 45 in"],
  },
  {
    asks: "7 rows of 6 in 4 colours?",
    command: "blanket --piece '12 cm' --layout 7x6 --colours 4",
    holds: ["42 squares", "colour 1: 11", "colour 4: 10"],
  },
  {
    asks: "37 of 80 done, 3 a day?",
    command: "blanket --piece '12 cm' --layout 10x8 --have 37 --pace '3 a day'",
    holds: ["43 more to make", "take 15 days"],
  },
  {
    asks: "8 squares of 9 in among 6 in ones, 54 by 72 in?",
    command: "blanket --piece '6 in' --size '54 x 72 in' --larger '9 in: 8'",
    holds: ["8 of 9 in", "90 of 6 in", "54 in by 72 in"],
  },
  {
    asks: "6 in squares along an edge of 9 in?",
    command: "blanket --edge '9 in' --piece '6 in'",
    holds: ["9 small go in place of 4 large"],
  },
  {
    asks: "8 pieces along 60 in?",
    command: "blanket --edge '60 in' --along 8",
    holds: ["must be 7.5 in each", "takes 36"],
  },
  {
    asks: "100 squares make 52 by 52 in, 8 are done.",
    command: "blanket --size '52 x 52 in' --pieces 100 --have 8",
    holds: ["5.2 in each", "92 more to make"],
  },
  {
    asks: "Hexagons with sides of 1 in for 20 by 30 in?",
    command: "blanket --shape hexagon --piece 'side 1 in' --size '20 x 30 in'",
    // 20 / 1.732 = 11.5, so 12 columns; rows of 1.5 in: (30 - 0.5) / 1.5 = 19.7, so 20: 10 x 12 + 10 x 11.
    holds: ["230 hexagons of 1.73 in each in 20 rows"],
  },
  {
    asks: "Rows of 40 to 20 in against 40 to 22 in?",
    command: "compare '40 rows = 20 in' '40 rows = 22 in'",
    holds: ["1.10 times as tall", "hand or the hook"],
  },
  {
    asks: "Pieces of 4, 8, 12 cm and of 4.4, 8.8, 13.2 cm round by round?",
    command: "compare '4 cm, 8 cm, 12 cm' '4.4 cm, 8.8 cm, 13.2 cm'",
    holds: ["1.10"],
  },
  {
    asks: "6, 12, 18, 24, 29 where another has 30.",
    command: "compare '6, 12, 18, 24, 29' '6, 12, 18, 24, 30'",
    holds: ["part in round 5", "The count of A slipped"],
  },
  {
    asks: "227 stitches on 258 rows wave; they must go down by eights.",
    command: "border --rows 258 --stitches 227 --step 8",
    holds: ["0.88 to a row", "three of four are 194, so 195", "four of five are 206, so 203"],
  },
  {
    asks: "A chain of 30 in under rows of 34 in.",
    command: "match --chains 100 --now '30 in' --to '34 in'",
    holds: ["12 % shorter", "The rows keep their hook"],
  },
  {
    asks: "220 sc on 45 in at 16 sc to 4 in?",
    command: "border --side '45 in' --stitches 220 --gauge '16 sc = 4 in'",
    holds: ["179 sc lie flat", "23 % too many"],
  },
  {
    asks: "144 in round nine blocks: how large are they?",
    command: "blanket --around '144 in' --layout 3x3",
    holds: ["each piece is 12 in", "36 in by 36 in"],
  },
  {
    asks: "3 and 2 by turns against 3, 2, 2: how much less ruffle?",
    command: "compare '5 in 2' '7 in 3'",
    holds: ["2.50", "2.33", "6.7 % fewer", "still a full ruffle"],
  },
  {
    asks: "56 stand where the next round uses 64, on 8 sides.",
    command: "compare 56 64 --sides 8",
    holds: ["8 fewer than 64", "1 too few on each of 8 sides", "no slip"],
  },
  {
    asks: "The first rows are 31 in, the newest 34 in.",
    command: "compare '31 in' '34 in'",
    holds: ["10 % wider", "not the hook", "one stitch in 10"],
  },
  {
    asks: "I worked the English double crochet where the American was meant.",
    command: "compare 'English double crochet' 'American double crochet'",
    holds: ["is US sc", "Not the hook: it is the terms", "times the rows in the first"],
  },
  {
    asks: "6 to the inch with 3 mm, 8 with 1.8 mm: what are two rounds?",
    command: "compare '6 sts = 1 in, 3 mm hook' '8 sts = 1 in, 1.8 mm hook' --whole '2 rounds'",
    holds: ["0.75 times", "2.67 of the second, so 3", "0.60, the sizes as 0.75", "only in part"],
  },
  {
    asks: "Three different ones of four colours, 16 rows of 15 hexagons, 40 done?",
    command:
      "blanket --layout 16x15 --shape hexagon --piece '10 cm' --have 40 --colours 4 --colours-each 3",
    holds: ["24 kinds, 10 of each", "240 whole"],
  },
  {
    asks: "13 in where 8.5 in are meant; the hook is 2.3 mm and not 1.75.",
    command: "match --now '13 in' --to '8.5 in' --hook '2.3 mm' --meant-hook '1.75 mm'",
    holds: ["hooks stand as 1.31", "sizes as 1.53", "the hook for the greater part"],
  },
  {
    asks: "Three rounds and one to join: how many has the square as large as four of them?",
    command: "blanket --piece '3 rounds' --join-rounds 1 --along 2",
    holds: ["has 7 of its own", "has 15"],
  },
  {
    asks: "A granny rectangle of 4 by 9 groups, 4 chains to a group less one?",
    command: "blanket --in-rounds --size '4 x 9 groups' --chains-each 4",
    holds: ["5 groups, 19 chains", "4 rounds"],
  },
  {
    asks: "24 too many a side, two at every join.",
    command: "border --too-many 24 --per-join 2",
    holds: ["12 joins", "96 all round"],
  },
  {
    asks: "170 hexagons made 40 by 54 in: how large is one?",
    command: "blanket --shape hexagon --size '40 x 54 in' --pieces 170",
    // 2160 / 170 = 12.71 square inches; across = root of 12.71 / 0.866.
    holds: ["3.83 in each"],
  },
  {
    asks: "Three families of one light, three middle and two dark shades?",
    command: "blanket --colours 3 --colours-each '1 x 3 x 2'",
    holds: ["6 kinds in a family, 18 in 3 families"],
  },
  {
    asks: "32 for a multiple of 3 plus 2?",
    command: "border --stitches 32 --repeat '3 + 2'",
    holds: ["it fits as it is (beside it 29 and 35)"],
  },
  {
    asks: "The gauge square should be 4 in and is 4.5: what becomes of 60 in?",
    command: "match --now '4.5 in' --to '4 in' --rounds 2 --whole '60 in'",
    holds: ["67.5 in in place of 60 in", "27 % more yarn"],
  },
  {
    asks: "30 cm where the others are 28.6, with a 5 mm hook.",
    command: "match --now '30 cm' --to '28.6 cm' --rounds 2 --hook '5 mm'",
    holds: ["one size down (4.5 mm)"],
  },
  {
    asks: "15 cm with 4 mm, 14 cm with 3.5 mm; 14 cm is wanted.",
    command: "match --now '15 cm' --to '14 cm' --rounds 2 --hook '4 mm' --tried '3.5 mm = 14 cm'",
    holds: ["3.5 mm gives the size: take it"],
  },
  {
    asks: "10 in where 6 in are meant, 5 mm hook.",
    command: "match --now '10 in' --to '6 in' --rounds 2 --hook '5 mm'",
    holds: ["Not the hook", "2 in on each side"],
  },
  {
    asks: "8.5 in from corner to corner; it should be 6 in.",
    command: "match --now 'diagonal 8.5 in' --to '6 in' --rounds 2",
    holds: ["Leave it"],
  },
  {
    asks: "A granny of 3 rounds is 6 in, 8 in are wanted.",
    command: "match --shape granny --rounds 3 --now '6 in' --to '8 in'",
    holds: ["add a round of dc", "granny square of 3 rounds"],
  },
]
