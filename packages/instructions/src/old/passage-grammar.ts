// Stretches between two marks that are worked where they stand and named again later in the round.

import { isRepeatWord } from "./grammar.ts"
import { readTimes } from "./repeat-grammar.ts"
import type { Step, Times } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** "from \u2020 to \u2020" comes later in the round: the stretch just closed is worked once here and named again there. */
export function namedAgain(words: Words, mark: string): boolean {
  for (let at = words.at + 1; at < words.tokens.length - 2; at++) {
    const linked = /^(?:to|and)$/.test(words.tokens[at + 1]?.text ?? "")
    if (words.tokens[at]?.text !== mark || !linked || words.tokens[at + 2]?.text !== mark) continue
    if (/^(?:from|between)$/.test(words.tokens[at - 1]?.text ?? "")) return true
  }
  return false
}

/** "rep from \u2020 to \u2020 once": the stretch between these marks again. */
export function readPassage(words: Words): Step[] | null {
  if (words.passages.size === 0) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (!isRepeatWord(words.text()) && !/^(?:work|working)$/.test(words.text())) return null
    words.at += 1
    words.accept("from", "between")
    const body = words.passages.get(words.text())
    if (!body) return null
    words.at += 1
    if (!words.accept("to", "and") || words.passages.get(words.text()) !== body) return null
    words.at += 1
    const times = readTimes(words, false)
    if (!times || times.kind === "until") return [...body]
    const again: Times = { kind: "total", count: times.count }
    return [{ ...words.since(start), do: "repeat", body, last: null, ending: null, times: again }]
  })
}
