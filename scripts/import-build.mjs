// Imports the built packages as any plain Node program would, without TypeScript, and checks one
// small disc, so that `pnpm build` is known to emit what the README promises.

import { checkPattern } from "@roundwright/assessment"

const text = `Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)
`
const result = checkPattern(text)
const counts = result.rounds.map((round) => round.counted?.stitches)
if (JSON.stringify(counts) !== "[6,12,18]" || result.laidOut === null) {
  console.error("the build reads a plain disc wrongly:", JSON.stringify(result.problems, null, 2))
  process.exit(1)
}
console.log(`the build reads a disc of ${counts.join(", ")} sc: ${result.laidOut.verdict}`)
