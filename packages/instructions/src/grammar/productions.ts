// The productions of the grammar, each with wordings it reads. None knows the others: what a bracket or a
// repeat holds is asked of the chart. The examples are tests.

import type { Production } from "./chart.ts"
import { productionsOfRounds } from "./productions-of-rounds.ts"
import { productionsOfTalk } from "./productions-of-talk.ts"
import { productionsOfWork } from "./productions-of-work.ts"

export const productions: readonly Production[] = [
  ...productionsOfWork,
  ...productionsOfRounds,
  ...productionsOfTalk,
]
