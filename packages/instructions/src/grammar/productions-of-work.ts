// The productions that make something: stitches, chains, brackets, repeats, joins, lists in one place.

import { anotherCorner, skipsThere } from "./another-corner.ts"
import { readBracket } from "./brackets.ts"
import { makeChains, makePicot, picotAfterEvery } from "./chains.ts"
import type { Production } from "./chart.ts"
import { reads } from "./clauses.ts"
import { countsWithoutBracket } from "./counts-as.ts"
import { isStitchWord } from "./cursor.ts"
import { joinRound, standingStitch } from "./joins.ts"
import { makeStitches } from "./make.ts"
import { ringStart } from "./modes.ts"
import { leftUnworked, skipStitches, slipStitch, turnWork } from "./moves.ts"
import { readPassage } from "./passages.ts"
import { allInOne, listPlace, placeFirst } from "./placed-lists.ts"
import { atPlace } from "./places.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { readStarred } from "./repeats.ts"
import { goesOn, listTimes, repeatAll, repeatedFirst } from "./repeats-unmarked.ts"
import { ringOfChains } from "./ring-of-chains.ts"
import { stitchAgain } from "./stitch-again.ts"
import { totalWithoutBracket } from "./totals.ts"

export const productionsOfWork: readonly Production[] = [
  {
    name: "slip stitch",
    starts: (word) =>
      /^s/.test(word.text) ||
      word.type === "number" ||
      word.classes.has("work") ||
      word.classes.has("colour"),
    rule: slipStitch,
    examples: ["sl st in next 2 dc", "slip stitch to first sc", "ss into top of 3 ch"],
  },
  {
    name: "make",
    starts: (word, cursor) =>
      word.type === "number" ||
      word.classes.has("work") ||
      // "standing dc in any sp" is a start of its own.
      (word.classes.has("adjective") && word.text !== "standing") ||
      word.classes.has("increase") ||
      word.classes.has("decrease") ||
      word.classes.has("colour") ||
      word.classes.has("start") ||
      word.classes.has("half") ||
      word.classes.has("first") ||
      word.classes.has("size") ||
      word.classes.has("more") ||
      word.classes.has("back-loop") ||
      word.classes.has("front-loop") ||
      word.classes.has("stitch") ||
      isStitchWord(word.text, cursor.terms) ||
      cursor.locals.get(word.text)?.kind !== undefined,
    rule: makeStitches,
    examples: [
      "3 dc in next st",
      "dc in next 3 sts",
      "2 sc in each st around",
      "work 1 dc into the same stitch",
      "dc3tog over next 3 dc",
      "sc 5",
    ],
  },
  {
    name: "chain",
    starts: (word) =>
      word.classes.has("chain") ||
      word.type === "number" ||
      word.classes.has("start") ||
      word.classes.has("work") ||
      word.text === "twisted",
    rule: makeChains,
    examples: ["ch 3", "3 ch", "chain three", "make 5 chains"],
  },
  {
    name: "picot",
    starts: (word) =>
      word.classes.has("picot") ||
      word.classes.has("chain") ||
      word.type === "number" ||
      word.classes.has("size") ||
      word.classes.has("work"),
    rule: reads(makePicot),
    examples: ["picot", "ch-3 picot", "picot of 4 ch", "2 picots"],
  },
  {
    name: "picot among stitches",
    starts: (word) =>
      word.classes.has("picot") || word.classes.has("chain") || word.type === "number",
    rule: picotAfterEvery,
    examples: ["1 sc in each sc, picot after every 2nd sc"],
  },
  {
    name: "bracket",
    starts: (word) => word.text === "(" || word.text === "[" || word.text === "{",
    rule: readBracket,
    examples: ["(2 dc, ch 2, 2 dc) in next sp", "[sc, inc] 6 times", "(counts as dc)", "(24 dc)"],
  },
  {
    name: "starred repeat",
    starts: (word) => isRepeatMark(word.text),
    rule: readStarred,
    examples: ["*sc in next st, ch 1; rep from * around", "*dc, ch 1* 5 times"],
  },
  {
    name: "repeat of all",
    starts: (word) => word.classes.has("repeat"),
    rule: repeatAll,
    examples: ["sc in next st, ch 1; repeat around", "sc 1, inc 1, rep to end"],
  },
  {
    name: "repeat told first",
    starts: (word, cursor) =>
      word.classes.has("repeat") ||
      (word.type === "number" && (cursor.is("times", 1) || cursor.is("more", 1))),
    rule: repeatedFirst,
    examples: [
      "dc3tog in ring, ch 3, 11 more (dc3tog, ch 3) in ring",
      "in the ring work 6 times *2 dc, ch 1*",
      "repeat 6 times *sc in next st, 2 sc in next st*",
      "repeat (sc 1, inc) 6 times",
    ],
  },
  {
    name: "goes on",
    starts: (word, cursor) =>
      word.classes.has("around") ||
      (/^(?:do|follow|work)$/.test(word.text) &&
        /^(?:it|this|that|so|these|same)$/.test(cursor.text(1))) ||
      /^(?:continue|cont|continuing|continues|carry on|carry|keep|keep going|go on|and so on|and so forth|proceed|do it|do this|alternating|alternate|etc|etcetera)$/.test(
        word.text,
      ),
    rule: goesOn,
    examples: [
      "sc in next 2 sts, 2 sc in next st, continue around",
      "(2 dc, ch 2, 2 dc) in next sp, do the same in the other spaces",
    ],
  },
  {
    name: "passage again",
    starts: (word, cursor) =>
      (isRepeatMark(word.text) && cursor.is("to", 1) && cursor.text(2) === word.text) ||
      word.classes.has("repeat") ||
      word.classes.has("work"),
    rule: readPassage,
    examples: ["\u2020 sc in next st, ch 3 \u2020, dc in next st; rep from \u2020 to \u2020 once"],
  },
  {
    name: "list times",
    starts: (word, cursor) =>
      word.text === "x" || (word.type === "number" && cursor.is("times", 1)) || word.text === "for",
    rule: listTimes,
    examples: ["1 sc in next st, 2 sc in next st, x 6"],
  },
  {
    name: "skip",
    starts: (word) => word.classes.has("skip"),
    rule: skipStitches,
    examples: ["skip 2 sc", "miss next ch-3 sp", "sk 1"],
  },
  {
    name: "skip to a place",
    starts: (word) => word.classes.has("skip") || /^(?:move|go|hop)$/.test(word.text),
    rule: skipsThere,
    examples: ["skip to the next gap and work (3 dc, ch 2, 3 dc) into this space"],
  },
  {
    name: "another corner",
    starts: (word) => word.classes.has("work"),
    rule: anotherCorner,
    examples: ["2 dc, ch 2, 3 dc in corner, ch 1, work another corner as before"],
  },
  {
    name: "left unworked",
    starts: (word) => /^(?:leave|leaving|left)$/.test(word.text),
    rule: reads(leftUnworked),
    examples: ["leave the next st unworked"],
  },
  {
    name: "join",
    starts: (word, cursor) =>
      word.classes.has("join") ||
      (word.text === "close" && (cursor.is("with", 1) || cursor.is("round", 1))),
    rule: joinRound,
    examples: [
      "join with sl st to top of ch-3",
      "join yarn in any corner",
      "join",
      "close with sc into top of first dc",
    ],
  },
  {
    name: "standing stitch",
    starts: (word) =>
      word.text === "standing" || word.classes.has("start") || word.classes.has("with"),
    rule: standingStitch,
    examples: ["standing dc in any ch-2 sp"],
  },
  {
    name: "turn",
    starts: (word) => word.classes.has("turn"),
    rule: reads(turnWork),
    examples: ["turn", "turn work"],
  },
  {
    name: "ring",
    starts: (word) =>
      word.classes.has("ring") ||
      word.classes.has("work") ||
      word.classes.has("start") ||
      word.classes.has("forms") ||
      word.classes.has("in") ||
      word.classes.has("with") ||
      word.classes.has("bought-ring"),
    rule: ringStart,
    examples: ["make a magic ring", "into an adjustable loop"],
  },
  {
    name: "ring of chains",
    starts: (word) =>
      word.classes.has("ring") ||
      word.classes.has("work") ||
      word.classes.has("start") ||
      word.classes.has("forms") ||
      word.type === "number",
    rule: ringOfChains,
    examples: ["an eight stitch ring", "make a ring of 6 chains", "ch 6, form a ring"],
  },
  {
    name: "how a chain counts",
    starts: (word) =>
      word.classes.has("counts") ||
      word.classes.has("not") ||
      word.classes.has("to") ||
      /^(?:-|for|as|which|that|will|this|instead|it|in place)$/.test(word.text),
    rule: countsWithoutBracket,
    examples: ["ch 3, counts as first dc", "ch 1, does not count as a stitch"],
  },
  {
    name: "total",
    starts: (word) =>
      word.type === "number" ||
      word.classes.has("says-total") ||
      word.text === "for" ||
      word.text === "to" ||
      word.text === "=" ||
      word.text === "-" ||
      word.text === ":" ||
      word.text === ">",
    rule: totalWithoutBracket,
    examples: [
      "2 sc in each st around. 24 sc.",
      "sc in each st - 24 sts",
      "dc in each st, you should have 24 dc",
    ],
  },
  {
    name: "place first",
    starts: (word, cursor) => atPlace(cursor) || /^fill(?:ing)?$/.test(word.text),
    rule: placeFirst,
    examples: [
      "in next ch-2 sp work 2 dc, ch 2, 2 dc",
      "into the ring work 12 dc",
      "fill each loop with sc, 3 dc, sc",
    ],
  },
  {
    name: "stitch again",
    starts: (word, cursor) => word.type === "number" && cursor.is("in", 1),
    rule: stitchAgain,
    examples: ["1 sc in first st, 2 in next"],
  },
  {
    name: "all in one place",
    starts: (word, cursor) => /^(?:all|together)$/.test(word.text) && atPlace(cursor),
    rule: allInOne,
    examples: ["*3 dc, ch 2; rep from * 3 more times, all in ring"],
  },
  {
    name: "place of a list",
    starts: (_, cursor) => atPlace(cursor),
    rule: listPlace,
    examples: ["2 dc, ch 2, 2 dc, in next sp"],
  },
]
