// Finding the repeat of a round: a list of parts as a start, a body worked so many times, and a rest.

export interface Repeated<T> {
  readonly before: readonly T[]
  readonly body: readonly T[]
  readonly times: number
  readonly after: readonly T[]
}

/** Longest body and longest start looked for; longer ones are not worth a repeat. */
const longestBody = 60
const longestStart = 24

/** The form with the fewest parts written; times 1 and an empty body when nothing repeats. */
export function findRepeat<T>(parts: readonly T[], same: (a: T, b: T) => boolean): Repeated<T> {
  let best: Repeated<T> = { before: parts, body: [], times: 1, after: [] }
  let fewest = parts.length
  for (let start = 0; start <= Math.min(longestStart, parts.length - 2); start++) {
    for (let length = 1; length <= Math.min(longestBody, (parts.length - start) / 2); length++) {
      let end = start + length
      while (end < parts.length && same(parts[end]!, parts[end - length]!)) end += 1
      const times = Math.floor((end - start) / length)
      if (times < 2) continue
      const written = start + length + (parts.length - start - times * length)
      if (written >= fewest) continue
      fewest = written
      best = {
        before: parts.slice(0, start),
        body: parts.slice(start, start + length),
        times,
        after: parts.slice(start + times * length),
      }
    }
  }
  return best
}
