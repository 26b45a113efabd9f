// Damaged patterns for the fuzz test: words lost, doubled, swapped and replaced, numbers changed,
// marks put in and taken out, lines cut; all from one seed.

/** Small seeded generator (mulberry32): the same seed gives the same texts. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Patterns of our own that damage starts from. */
export const soundPatterns: readonly string[] = [
  "# Disc\nTerms: US\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\nRnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
  "Terms: US\nYarn: DK\nHook: 4 mm\nRnd 1: ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join with sl st to top of ch-3. (12 dc + 4 ch-2 sps)\nRnd 2: sl st to next ch-2 sp; (ch 3 (counts as dc), 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times; join. (24 dc)",
  "Terms: UK\nRnd 1: ch 6, join with ss to form a ring; ch 1, 12 dc in ring; join.\nRnd 2: ch 5 (counts as tr, ch 2), *miss 1 dc, tr in next dc, ch 2; rep from * 4 more times; join with ss to 3rd ch of ch-5.\nRnd 3: ch 1, *3 dc in next ch-2 sp, dc in next tr; rep from * around, ending last rep at **; join.",
  "Picot: ch 3, sl st in first ch.\nRnd 1: 8 sc in magic ring; join.\nRnd 2: ch 1, sc in same st, *ch 5, sc in next sc; rep from * around, ending last rep with ch 2, dc in first sc.\nRnd 3: ch 1, sc in loop just made, *ch 7, sc in next loop; rep from * 6 more times; ch 7; join.\nRnds 4-5: (4 sc, picot, 4 sc) in each ch-7 loop around; join. [64 sc]",
  "1st round: ch 5; *dc in 5th ch from hook, ch 1; rep from * 10 more times; join (skipped ch count as dc, ch 1).\n2nd round: sl st to ch-1 sp; ch 3, dc2tog in same sp (counts as dc3tog), ch 3, *dc3tog in next ch-1 sp, ch 3; rep from * 10 more times; join. 12 clusters.\n3rd round: working behind petals, sc in each st of Rnd 1, turn.",
  "Terms: US\nRnd 1: 8 dc in magic ring; join.\nRnd 2: *ch 5, sc in 2nd ch from hook, hdc in next ch, dc in next 2 ch, sl st in next dc; rep from * around.\nRnd 3: *sc in tip of next point, ch 6; rep from * 7 more times, now and then 7 chains as needed to lie flat.\nRnd 4: (3 dc, ch 1, 3 dc) in each ch-6 sp, ch 2 between groups; as Rnd 2, with 2 sc between increases.",
  "1) 6 sc in mr\n2) inc x 6 (12)\n3) *sc 1, inc* x 6 (18)\n4) as Rnd 3, with 2 sc between increases (24)\n5) continue in this way, increasing 6 sts each round\n6) 8 dc2tog, each over the last used st and the 3rd st along, ch 3 between\n7) (yo, insert hook in next sp, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all loops; seven points, each: ch 6, skip the last, over the next 5 ch: 1 sc, 2 hdc, 2 dc.",
  "Rnd 1: ch 4, join to form a ring; 3 sc in each ch. (12 sc)\nRnd 2: *3 sc in the centre sc of next corner, 1 sc in each sc to next corner; rep from * 3 more times.\nRnd 3: sc in back loop of each sc around, 3 sc in center sc of each corner.\nRnd 4: as Rnd 3.\nRnd 5: 40 sc evenly, increasing 4.",
]

const spare =
  "( ) [ ] * ** ; , . : = - + \u2020 0 1 2 3 7 99 1000000000 \u00bd ch sc dc tr hdc dc3tog picot rep from around times twice in next each same last skip 2nd corner sp st sts loop ring join turn as Rnd of to with counts constructor __proto__ \u00e9 \u{1f9f6} wibble".split(
    " ",
  )

/** One damaged text. */
export function damaged(random: () => number): string {
  const below = (n: number) => Math.floor(random() * n)
  let text = soundPatterns[below(soundPatterns.length)]!
  const hurts = 1 + below(6)
  for (let i = 0; i < hurts; i++) text = hurt(text, below)
  return text
}

function hurt(text: string, below: (n: number) => number): string {
  const parts = text.split(/(\s+|[,;:()*[\].])/)
  const at = below(Math.max(1, parts.length))
  switch (below(9)) {
    case 0:
      parts.splice(at, 1 + below(4))
      break
    case 1:
      parts.splice(at, 0, spare[below(spare.length)]!, " ")
      break
    case 2:
      parts[at] = spare[below(spare.length)]!
      break
    case 3: {
      const other = below(parts.length)
      const held = parts[at]!
      parts[at] = parts[other] ?? ""
      parts[other] = held
      break
    }
    case 4:
      return text.replace(/\d+/g, (found) => (below(6) === 0 ? String(below(40)) : found))
    case 5: {
      const cut = below(text.length)
      return text.slice(0, cut) + text.slice(cut + below(30))
    }
    case 6: {
      const lines = text.split("\n")
      lines.splice(below(lines.length), 1 + below(2))
      return lines.join("\n")
    }
    case 7: {
      const lines = text.split("\n")
      const line = lines[below(lines.length)]!
      lines.splice(below(lines.length), 0, line)
      return lines.join(below(4) === 0 ? "\r\n" : "\n")
    }
    default: {
      const cut = below(text.length)
      return text.slice(0, cut) + String.fromCharCode(32 + below(500)) + text.slice(cut)
    }
  }
  return parts.join("")
}

/** What is wrong with a reading of that text, or null: a throw, a place outside it, a broken number. */
export function faultOf(
  text: string,
  read: (text: string) => import("../src/index.ts").PatternReading,
): string | null {
  const reading = read(text)
  const lines = text.split(/\r\n|\r|\n/)
  for (const problem of reading.problems) {
    const line = lines[problem.line - 1]
    if (line === undefined) return `line ${problem.line} of ${lines.length}: ${problem.code}`
    if (
      problem.column < 1 ||
      problem.length < 0 ||
      problem.column - 1 + problem.length > line.length
    )
      return `column ${problem.column}+${problem.length} of ${line.length}: ${problem.code}`
    if (problem.message === "" || /NaN|undefined|Infinity/.test(problem.message + problem.hint))
      return `message: ${problem.message}`
  }
  for (const round of reading.rounds) {
    if (round.counted && !Object.values(round.counted).every(Number.isInteger))
      return `counts of round ${round.number}`
    if (round.start < 0 || round.end < round.start || round.end > text.length)
      return `place of round ${round.number}`
  }
  return null
}
