// Questions of the kind that makers ask, in our own words, each with the command it is asked by and what the answer must hold,
// worked out by hand. They show what can be asked; they are no evidence, for the code was written with them in sight.

export interface AskedQuestion {
  readonly asks: string
  readonly command: string
  readonly holds: readonly string[]
}

export const askedOfSizes: readonly AskedQuestion[] = [
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
    asks: "A chain of 30 in under rows of 34 in.",
    command: "match --chains 100 --now '30 in' --to '34 in'",
    holds: ["12 % shorter", "The rows keep their hook"],
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
    asks: "13 in where 8.5 in are meant; the hook is 2.3 mm and not 1.75.",
    command: "match --now '13 in' --to '8.5 in' --hook '2.3 mm' --meant-hook '1.75 mm'",
    holds: ["hooks stand as 1.31", "sizes as 1.53", "the hook for the greater part"],
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
