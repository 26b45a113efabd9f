// The productions that tell how a round is worked, or like which other.

import type { Production } from "./chart.ts"
import { reads } from "./clauses.ts"
import { readWholeRound } from "./evenly.ts"
import { readFan, readLinked } from "./fans.ts"
import {
  completedPopcorn,
  droppedLoop,
  heldBack,
  spelledCluster,
  startsHolding,
  startsWrap,
} from "./gathered.ts"
import { namedGathered } from "./gathered-names.ts"
import { beginsWhere } from "./handling.ts"
import { beginsBackAlong, eachOf, groupsEach, readPointOf } from "./leaves.ts"
import { asRound, growthRule } from "./like-rounds.ts"
import { loopMode, notDone, otherSide, passesMode } from "./modes.ts"
import { definedName, groupOf, namedList, roundName } from "./named-lists.ts"
import {
  endsWithoutRepeat,
  firstReplaced,
  groupsOfSome,
  nowMade,
  orStitch,
  untilSoMany,
} from "./said-in-passing.ts"
import { localGroup, namesLocal } from "./shells.ts"
import { cornerIncrease, unlabelledRound } from "./vague.ts"
import { saysWhatComes, saysWhichRound } from "./which-round.ts"
import { yarnStarts } from "./yarn-starts.ts"

export const productionsOfRounds: readonly Production[] = [
  {
    name: "loops worked in",
    starts: (word) =>
      word.classes.has("back-loop") ||
      word.classes.has("front-loop") ||
      word.classes.has("third-loop") ||
      word.classes.has("in") ||
      word.classes.has("work") ||
      word.text === "both" ||
      word.text === "through",
    rule: reads(loopMode, 0.02),
    examples: ["working in back loops", "in BLO"],
  },
  {
    name: "in front or behind",
    starts: (word) =>
      word.classes.has("work") ||
      word.classes.has("behind") ||
      word.classes.has("front") ||
      word.text === "behind",
    rule: reads(passesMode),
    examples: ["working behind the petals", "in front of ch-3 loops of rnd 2"],
  },
  {
    name: "other side of a chain",
    starts: (word) =>
      /^(?:working|work|on|along|in|down|across|rotate|rotating|turn|pivot|continue|continuing|into|over|to|working in|work in)$/.test(
        word.text,
      ),
    rule: otherSide,
    examples: ["working along opposite side of chain"],
  },
  {
    name: "not done",
    starts: (word) => word.classes.has("not"),
    rule: reads(notDone, 0.02),
    examples: ["do not turn", "without joining"],
  },
  {
    name: "like another round",
    starts: (word, cursor) =>
      word.classes.has("repeat") ||
      word.classes.has("work") ||
      word.classes.has("same") ||
      (/^(?:is|are)$/.test(word.text) &&
        /^(?:same|same as|as|like|worked)$/.test(cursor.text(1))) ||
      /^(?:as|like|same way|same manner|follow|as for|same as|as per|exactly|as before)$/.test(
        word.text,
      ),
    rule: asRound,
    examples: ["as rnd 2", "rep rnds 4-5", "work same as round 3"],
  },
  {
    name: "growth",
    starts: (word) =>
      word.type === "number" ||
      /^(?:continue|cont|continuing|continues|proceed|carry|in|with|as|having|an|in this way|this way|as established|and)$/.test(
        word.text,
      ) ||
      word.classes.has("more") ||
      word.classes.has("and"),
    rule: growthRule,
    examples: ["as rnd 2, with 2 sc between increases", "continue in this way"],
  },
  {
    name: "whole round",
    starts: (word) =>
      word.classes.has("even") ||
      word.classes.has("increase") ||
      word.classes.has("decrease") ||
      word.classes.has("work") ||
      word.text === "plain" ||
      (word.type === "number" && word.value === 1),
    rule: reads(readWholeRound),
    examples: ["work even", "inc 6 evenly around", "work one round of sc"],
  },
  {
    name: "corner increase",
    starts: (word) => word.classes.has("increase"),
    rule: reads(cornerIncrease),
    examples: ["increasing in each corner"],
  },
  {
    name: "own group",
    readsOver: "names",
    starts: (word, cursor) =>
      /^(?:v|v-st|vst|v-stitch|v-stitches|shells?|fans?)$/.test(word.text) ||
      (word.type === "number" &&
        (cursor.is("group", 1) || cursor.text(1) === "-" || cursor.is("start", 1))) ||
      (word.classes.has("start") && (cursor.is("group", 1) || cursor.is("corner", 1))) ||
      (word.classes.has("work") && cursor.is("group", 1)) ||
      namesLocal(cursor),
    rule: localGroup,
    examples: ["v-st in next st", "3-dc shell in next sp"],
  },
  {
    name: "fan told stitch by stitch",
    starts: (word) => word.classes.has("group"),
    rule: reads(readFan),
    examples: ["fan of 5: hdc, dc, tr, dc, hdc"],
  },
  {
    name: "linked pairs",
    starts: (word) => word.type === "number",
    rule: reads(readLinked),
    examples: ["8 dc2tog, each over the last used dc and the 2nd dc along, ch 3 between"],
  },
  {
    name: "point of a chain",
    starts: (word) =>
      word.classes.has("group") || word.text === "1" || /^(?:leaf|spike|tooth)$/.test(word.text),
    rule: reads(readPointOf),
    examples: ["point of ch 3 with (1 sc, 2 dc) back on it"],
  },
  {
    name: "back along a chain",
    starts: (word) => word.classes.has("start") || word.classes.has("work") || word.text === "now",
    rule: reads(beginsBackAlong),
    examples: [
      "starting in 2nd ch from hook and working down the chain",
      "working back along the ch",
    ],
  },
  {
    name: "so many of",
    starts: (word) => word.type === "number",
    rule: eachOf,
    examples: ["six points, each: ch 4, skip the last, over the next ch: 1 sc, 1 hdc, 1 dc"],
  },
  {
    name: "groups each in its place",
    starts: (word) => word.type === "number",
    rule: groupsEach,
    examples: ["10 groups of (3 dc, ch 1, 3 dc), each in the 3rd of next 6 sc"],
  },
  {
    name: "cluster spelled out",
    readsOver: "names",
    starts: (word, cursor) =>
      (/^[([*]$/.test(word.text) && startsWrap(cursor, 1)) || startsWrap(cursor, 0),
    rule: spelledCluster,
    examples: [
      "(yo, insert hook in next st, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all loops",
    ],
  },
  {
    name: "popcorn closed",
    readsOver: "names",
    starts: (word) => /^(?:drop|remove|withdraw|take)$/.test(word.text),
    rule: droppedLoop,
    examples: ["5 dc in next st, drop loop, insert hook in first dc, draw dropped loop through"],
  },
  {
    name: "popcorn completed",
    readsOver: "names",
    starts: (word) => /^(?:complete|finish|close)$/.test(word.text),
    rule: completedPopcorn,
    examples: ["5 dc in next st, complete as popcorn"],
  },
  {
    name: "gathered stitch named",
    starts: (word) =>
      /^[-=:([]$/.test(word.text) ||
      word.classes.has("counts") ||
      word.classes.has("forms") ||
      word.classes.has("first") ||
      word.classes.has("start"),
    rule: namedGathered,
    examples: ["5 dc in next st (popcorn made)", "ch 3, 4 dc in same st - first popcorn"],
  },
  {
    name: "loops held back",
    readsOver: "names",
    starts: (word) =>
      word.type === "number" || startsHolding(word.text) || word.classes.has("work"),
    rule: heldBack,
    examples: [
      "holding back last loop of each on hook, 3 tr in next sp, yo and draw through all loops",
    ],
  },
  {
    name: "round in passing",
    starts: (word, cursor) =>
      word.type === "number" &&
      (cursor.is("round", 2) || cursor.is("round", 3) || cursor.is("round", 4)),
    rule: unlabelledRound,
    examples: ["2 sc in each st; then one hdc round"],
  },
  {
    name: "which round",
    starts: (word) =>
      word.classes.has("of") ||
      word.classes.has("in") ||
      word.classes.has("made") ||
      word.classes.has("first"),
    rule: saysWhichRound,
    examples: ["ch 3 at beg of rnd"],
  },
  {
    name: "what comes of it",
    starts: (word) => word.classes.has("forms") || word.text === "giving",
    rule: saysWhatComes,
    examples: ["3 dc in next sp, creating 4 corners"],
  },
  {
    name: "first stitch replaced",
    starts: (word) => word.classes.has("first") || word.text === "again",
    rule: firstReplaced,
    examples: ["2 dc in each sp. The first dc of the round is replaced by 3 chains"],
  },
  {
    name: "now made",
    starts: (word) =>
      word.classes.has("group") ||
      word.classes.has("corner") ||
      word.classes.has("picot") ||
      word.classes.has("first") ||
      word.type === "ordinal" ||
      /^cl/.test(word.text),
    rule: nowMade,
    examples: ["in next ch-2 sp work [3 dc, ch 2, 3 dc]: corner made"],
  },
  {
    name: "end of no repeat",
    starts: (word) => word.classes.has("end"),
    rule: endsWithoutRepeat,
    examples: ["dc in each dc around, ending with 1 dc in first sp"],
  },
  {
    name: "groups of some",
    starts: (word, cursor) => word.type === "number" && /^[([]$/.test(cursor.text(1)),
    rule: groupsOfSome,
    examples: ["2 dc in next st; 5 (2 dc) groups"],
  },
  {
    name: "chain or stitch",
    starts: (word, cursor) => word.text === "or" || (word.text === "(" && cursor.text(1) === "or"),
    rule: orStitch,
    examples: ["ch 3 or 1 dc, 15 dc in ring"],
  },
  {
    name: "until so many",
    starts: (word) => word.classes.has("until"),
    rule: untilSoMany,
    examples: ["*sc in next st, ch 3* continue around until 12 petals have been formed"],
  },
  {
    name: "group of",
    starts: (word, cursor) =>
      (word.classes.has("group") || word.classes.has("work")) &&
      (/^[([]$/.test(cursor.text(2)) || /^[([]$/.test(cursor.text(3))),
    rule: groupOf,
    examples: ["work a petal of (sc, 3 dc, sc) in next sp"],
  },
  {
    name: "name defined",
    readsOver: "names",
    starts: (word, cursor) =>
      word.classes.has("group") || word.classes.has("corner") || cursor.text(1) === "=",
    rule: definedName,
    examples: ["2 sc in next st. Shell = 5 dc."],
  },
  {
    name: "name of the round",
    readsOver: "names",
    starts: (word, cursor) =>
      word.type === "word" && (cursor.text(1) === ":" || cursor.text(2) === ":"),
    rule: roundName,
    examples: ["border: sc in each st around"],
  },
  {
    name: "named list",
    starts: (word) => word.classes.has("work") || word.text === "for",
    rule: namedList,
    examples: ["work a petal in each loop: sc, 3 dc, sc", "make petals as follows: sc, 3 dc, sc"],
  },
  {
    name: "yarn begun in a place",
    starts: (word) => word.classes.has("with") || word.text === "use",
    rule: yarnStarts,
    examples: ["use white yarn in any of the ch-2 sps"],
  },
  {
    name: "where it begins",
    starts: (word, cursor) => word.classes.has("start") && cursor.is("in", 1),
    rule: beginsWhere,
    examples: ["beginning in same st as ch 1"],
  },
]
