// Questions of the same kind on borders and blankets.

import type { AskedQuestion } from "./asked-questions.ts"

export const askedOfEdges: readonly AskedQuestion[] = [
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
    asks: "227 stitches on 258 rows wave; they must go down by eights.",
    command: "border --rows 258 --stitches 227 --step 8",
    holds: ["0.88 to a row", "three of four are 194, so 195", "four of five are 206, so 203"],
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
    asks: "Three different ones of four colours, 16 rows of 15 hexagons, 40 done?",
    command:
      "blanket --layout 16x15 --shape hexagon --piece '10 cm' --have 40 --colours 4 --colours-each 3",
    holds: ["24 kinds, 10 of each", "240 whole"],
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
]
