// More questions of the kind that makers ask, in our own words, of figures reckoned through one another and of pieces set side by side;
// each worked out by hand. They show what can be asked; they are no evidence, for the code was written with them in sight.

import type { AskedQuestion } from "./asked-questions.ts"

export const askedOfFigures: readonly AskedQuestion[] = [
  {
    asks: "3 mats took 42 g of a ball of 100 g and 210 m; 58 g are left.",
    command: "reckon '3 mats = 42 g' '1 ball = 100 g = 210 m' '58 g'",
    holds: ["4.14 mats", "4 mats take 56 g, 2 g over", "5 mats take 70 g, 12 g more", "121.8 m"],
  },
  {
    asks: "160 patches cover 30 by 20 in, 40 weigh 150 g: what of 600?",
    command: "reckon '160 patches = 30 x 20 in' '40 patches = 150 g' '600 patches'",
    holds: ["2250 sq in", "2250 g"],
  },
  {
    asks: "24 squares make a blanket; I have 55.",
    command: "reckon '1 blanket = 24 squares' 'have 55 squares'",
    holds: ["2 blankets take 48 squares, 7 squares over", "3 blankets take 72 squares, 17 squares"],
  },
  {
    asks: "4 strips of 9 blocks, 3 hours a block: how long; and 5 strips?",
    command: "reckon '4 strips of 9 blocks' '3 hours a block' '5 strips'",
    holds: ["36 blocks = 108 hours", "45 blocks = 135 hours", "1 strip more"],
  },
  {
    asks: "14 stitches are 4 in, the repeat is 12; 50 in are wanted.",
    command: "reckon '14 stitches = 4 in' '1 repeat = 12 stitches' '50 in'",
    holds: ["175 stitches", "14.6 repeats", "14 repeats take 48 in"],
  },
  {
    asks: "500 g are there, a square takes 8 g, 80 are wanted.",
    command: "reckon '8 g a square' 'have 500 g' 'want 80 squares'",
    holds: ["62 squares take 496 g", "140 g to go"],
  },
  {
    asks: "A point takes 1.5 yd and is 4 in; a row has 12; 10 and 30 rows?",
    command: "reckon '1 point = 1.5 yd = 4 in' '1 row = 12 points' '10 rows' '30 rows'",
    holds: ["180 yd", "540 yd", "Together: 40 rows = 480 points = 720 yd", "1 row = 12 points"],
  },
  {
    asks: "30 by 40 in took 900 yd; 400 yd are left: how large a one?",
    command: "reckon '30 x 40 in = 900 yd' '400 yd'",
    holds: ["533.3 sq in", "20 by 26.7 in"],
  },
  {
    asks: "10 rose squares of 6 g and 20 cream ones of 9 g, balls of 50 g?",
    command:
      "reckon '1 rose square = 6 g' '1 cream square = 9 g' '10 rose squares' '20 cream squares' '1 ball = 50 g'",
    holds: ["All of them: 240 g = 4.8 balls"],
  },
  {
    asks: "10 in with worsted and 5 mm, 7 in with DK and 4 mm, 12 rounds both.",
    command: "compare '10 in, worsted, 5 mm hook, 12 rounds' '7 in, DK, 4 mm hook, 12 rounds'",
    holds: [
      "is 0.70",
      "it is the yarn, with the hook",
      "3 in more across, 1.5 in on each side",
      "5.1",
    ],
  },
  {
    asks: "8 in with 4 mm, 8.3 in with 5 mm, one yarn.",
    command: "compare '8 in, 4 mm hook' '8.3 in, 5 mm hook'",
    holds: ["It is the hook, and less than hooks do by rule", "5 mm over 4 mm is 1.25"],
  },
  {
    asks: "10 in of 12 rounds, 8.33 in of 10 rounds.",
    command: "compare '10 in, 12 rounds' '8.33 in, 10 rounds'",
    holds: ["it is the number of rounds", "0.83 in across in the first"],
  },
  {
    asks: "8 shells in row 5 of 30 where 12 are meant.",
    command: "compare '8 shells' '12 shells' --at 'row 5 of 30'",
    holds: ["is 0.67", "4 shells fewer", "26 rows to undo"],
  },
  {
    asks: "90 on 30 where 60 are meant.",
    command: "compare '90 in 30' '60 in 30'",
    holds: ["3.00 to a place", "2.00", "30 fewer"],
  },
  {
    asks: "10, 20, 30, 38, 48: which round is off?",
    command: "compare '10, 20, 30, 38, 48'",
    holds: ["round 4 has 38 where 40 would follow, 2 too few", "Every later round carries it on"],
  },
  {
    asks: "12 sts and 8 rows to 4 in against 14 and 9; 36 by 48 in.",
    command: "compare '12 sts x 8 rows = 4 in' '14 sts x 9 rows = 4 in' --whole '36 x 48 in'",
    holds: ["108 stitches and 96 rows", "126 stitches and 108 rows", "0.86 times as wide"],
  },
  {
    asks: "5 by 7 in to be made up to 8 by 8.",
    command: "match --now '5 x 7 in' --to '8 x 8 in'",
    holds: ["3 in wide along the edge of 7 in", "29.0 sq in more", "does not do"],
  },
  {
    asks: "A square of 10 in from a corner.",
    command: "match --from-corner --to '10 in'",
    holds: ["14.1 in by then", "sides of 7.07 in", "Not the hook"],
  },
  {
    asks: "A chain of 24 in became 27 in; 24 in are wanted.",
    command: "match --chains '24 in' --now '27 in' --to '24 in'",
    holds: ["is 1.13", "chain 21.3 in", "0.89 times the stitches"],
  },
  {
    asks: "A disc of dc of 6 rounds: how many stitches?",
    command: "match --shape circle --rounds 6",
    holds: ["round 6 has 72", "12, 24, 36, 48, 60, 72"],
  },
  {
    asks: "A rug of 30 by 20 in as an oval.",
    command: "match --shape oval --to '30 x 20 in'",
    holds: ["a row of 10 in", "3 at each end"],
  },
  {
    asks: "A granny of 9 rounds: how many groups?",
    command: "match --shape granny --rounds 9",
    holds: ["9 groups on each side", "36 groups (108 dc)"],
  },
  {
    asks: "A hat of 20 in round: what is it across?",
    command: "match --around '20 in'",
    holds: ["6.37 in across"],
  },
  {
    asks: "Skip 3, a shell of 6 in the next: which multiple?",
    command: "border --row 'sk 3, 6 dc in next st'",
    holds: ["uses 4", "makes 6", "a multiple of 4", "3, 7, 11"],
  },
  {
    asks: "A repeat of 6 less 1 between the corners.",
    command: "border --repeat '6 - 1'",
    holds: ["5, 11, 17"],
  },
  {
    asks: "90 stitches to be picked up along knitting.",
    command: "border --stitches 90 --row-stitch knit",
    holds: ["about 120 rows", "113 to 135", "1.33 times as long"],
  },
  {
    asks: "160 stitches on 100 rows of sc.",
    command: "border --stitches 160 --rows 100 --row-stitch sc",
    holds: ["1.60 to a row", "60 % too long and waves"],
  },
  {
    asks: "Sides of 31, 33, 32, 32.",
    command: "border --stitches '31, 33, 32, 32'",
    holds: ["bring each to 32", "2 stitches changed"],
  },
  {
    asks: "17 petals under 4 corners.",
    command: "border --stitches 17 --parts 4",
    holds: ["not the same in each", "16 (4 in each) is 1 fewer", "20 (5 in each) 3 more"],
  },
  {
    asks: "6 by 9 pieces, 20 are there.",
    command: "blanket --layout 6x9 --have 20",
    holds: ["54 pieces, 1.5 to 1", "34 more to make", "7 by 9 are 63"],
  },
  {
    asks: "34 squares: how can they be laid?",
    command: "blanket --pieces 34",
    holds: ["only 2 by 17", "35 (5 by 7)", "36 (6 by 6)"],
  },
]
