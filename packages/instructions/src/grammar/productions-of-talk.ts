// The productions that only talk of a round: names, yarn, tools, measures, advice.

import type { Production } from "./chart.ts"
import {
  beginsWhere,
  furtherRounds,
  handlingClause,
  measureSentence,
  otherWay,
  purposeClause,
  toolClause,
  yarnClause,
} from "./handling.ts"
import { definedName, groupOf, namedList, roundName } from "./named-lists.ts"
import {
  adviceClause,
  afterFastening,
  startsAdvice,
  statement,
  talkSentence,
} from "./talk-sentences.ts"
import { sidesGrow } from "./vague.ts"
import { yarnStarts } from "./yarn-starts.ts"

export const productionsOfTalk: readonly Production[] = [
  {
    name: "handling",
    readsOver: "talk",
    starts: (word) => word.type === "word" && !word.classes.has("join"),
    rule: handlingClause,
    examples: ["fasten off and weave in ends", "change to white"],
  },
  {
    name: "further rounds",
    readsOver: "talk",
    starts: (word) =>
      word.classes.has("repeat") || /^(?:continue|cont|continuing|work)$/.test(word.text),
    rule: furtherRounds,
    examples: ["sc in each st. Continue in this manner until piece measures 6 inches"],
  },
  {
    name: "another way",
    readsOver: "talk",
    starts: (word) => word.text === "or",
    rule: otherWay,
    examples: ["ch 4, join to form a ring. Or begin with a magic ring."],
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
    name: "how sides grow",
    readsOver: "talk",
    starts: (word, cursor) => word.classes.has("each") && cursor.is("side", 1),
    rule: sidesGrow,
    examples: ["dc in each st, each side will increase by 4 sts"],
  },
  {
    name: "purpose",
    readsOver: "talk",
    starts: (word) => word.text === "to" || word.text === "and" || word.text === "for",
    rule: purposeClause,
    examples: ["sc in next st, ch 3 to complete the round"],
  },
  {
    name: "yarn",
    readsOver: "talk",
    starts: (word) => word.classes.has("with") || word.text === "in",
    rule: yarnClause,
    examples: ["with B", "in white"],
  },
  {
    name: "yarn begun in a place",
    starts: (word) => word.classes.has("with") || word.text === "use",
    rule: yarnStarts,
    examples: ["use white yarn in any of the ch-2 sps"],
  },
  {
    name: "tool",
    readsOver: "talk",
    starts: (word) => word.classes.has("with") || word.text === "use",
    rule: toolClause,
    examples: ["using a 4 mm hook"],
  },
  {
    name: "measure",
    readsOver: "talk",
    starts: (word) => word.type === "word",
    rule: measureSentence,
    examples: ["piece should measure 8 cm"],
  },
  {
    name: "where it begins",
    starts: (word, cursor) => word.classes.has("start") && cursor.is("in", 1),
    rule: beginsWhere,
    examples: ["beginning in same st as ch 1"],
  },
  {
    name: "advice",
    readsOver: "talk",
    starts: (word) => startsAdvice(word.text),
    rule: adviceClause,
    examples: ["12 dc in ring, remember to include the first chain 3"],
  },
  {
    name: "statement",
    readsOver: "talk",
    starts: (word) => word.type === "word" || word.type === "ordinal",
    rule: statement,
    examples: [
      "12 dc in ring. You now have arches above the petals",
      "12 dc in ring. This is half of the first petal",
    ],
  },
  {
    name: "after fastening off",
    readsOver: "talk",
    starts: (word) => word.type === "word",
    rule: afterFastening,
    examples: ["12 dc in ring. Fasten off. Attach the hook to the back of the medallion by hand"],
  },
  {
    name: "talk",
    readsOver: "talk",
    starts: (word) => word.type === "word",
    rule: talkSentence,
    examples: ["this is going to look lovely"],
  },
]
