// The productions that step over what is no work: yarn, tools, measures, other ways, advice, talk.

import type { Production } from "./chart.ts"
import {
  furtherRounds,
  handlingClause,
  measureSentence,
  otherWay,
  purposeClause,
  toolClause,
  yarnClause,
} from "./handling.ts"
import {
  adviceClause,
  afterFastening,
  asFollows,
  startsAdvice,
  statement,
  talkSentence,
} from "./talk-sentences.ts"
import { leftToMaker, sidesGrow, startsVague } from "./vague.ts"

export const productionsOfTalk: readonly Production[] = [
  {
    name: "left to the maker",
    readsOver: "talk",
    starts: (word) => startsVague(word.text),
    rule: leftToMaker,
    examples: ["increasing as needed to keep it flat"],
  },
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
    name: "as follows",
    readsOver: "talk",
    starts: (word) => word.type === "word",
    rule: asFollows,
    examples: ["You now need to increase as follows: 2 dc in each dc around"],
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
