// Faults planted in sound patterns: each kind changes one thing in the text, at a place drawn by the seed, and says in which
// round it must be found and under which codes. A kind that a pattern has no place for is left out there.

import { type RandomSource, seededRandom } from "@roundwright/numerics"
import type { EditCode } from "@roundwright/publishing"
import type { SoundPattern } from "./edit-sound.ts"

export interface Planted {
  readonly text: string
  /** Number of the round it must be found at; null for what stands above the rounds. */
  readonly round: number | null
  readonly codes: readonly EditCode[]
}

export interface FaultKind {
  readonly name: string
  plant(pattern: SoundPattern, random: RandomSource): Planted | null
}

const label = /^(?:Rnd|Round|Row) (\d+): /

interface RoundLine {
  readonly number: number
  readonly at: number
  readonly work: string
  readonly total: string
}

/** The work of a round and its total, which stands behind the last full stop. */
function roundLines(text: string): { lines: string[]; rounds: RoundLine[] } {
  const lines = text.split("\n")
  const rounds = lines.flatMap((line, at) => {
    const found = label.exec(line)
    const parts = found && /^(.*\.) ([([–][^.]*)$/.exec(line)
    return found && parts
      ? [{ number: Number(found[1]), at, work: parts[1]!, total: parts[2]! }]
      : []
  })
  return { lines, rounds }
}

/** Changes the work or the total of one of the rounds that it can be changed in. */
function inRound(
  change: (round: RoundLine, random: RandomSource) => { work?: string; total?: string } | null,
  codes: readonly EditCode[],
  roundOf: (number: number) => number = (number) => number,
): FaultKind["plant"] {
  return ({ text }, random) => {
    const { lines, rounds } = roundLines(text)
    const able = rounds.filter((round) => change(round, seededRandom(1)) !== null)
    if (able.length === 0) return null
    const round = able[Math.floor(random.uniform() * able.length)]!
    const changed = change(round, random)
    if (changed === null) return null
    const line = [changed.work ?? round.work, changed.total ?? round.total]
      .filter((part) => part !== "")
      .join(" ")
    if (line === lines[round.at]) return null
    return { text: lines.with(round.at, line).join("\n"), round: roundOf(round.number), codes }
  }
}

const inWork = (
  from: RegExp,
  to: (match: RegExpExecArray, random: RandomSource) => string,
  codes: readonly EditCode[],
) =>
  inRound(({ work }, random) => {
    const found = from.exec(work)
    return found
      ? {
          work:
            work.slice(0, found.index) +
            to(found, random) +
            work.slice(found.index + found[0].length),
        }
      : null
  }, codes)

const inFront =
  (
    from: RegExp,
    to: (match: RegExpExecArray, random: RandomSource) => string,
    codes: readonly EditCode[],
  ): FaultKind["plant"] =>
  ({ text }, random) => {
    const found = from.exec(text)
    if (!found) return null
    return {
      text:
        text.slice(0, found.index) + to(found, random) + text.slice(found.index + found[0].length),
      round: null,
      codes,
    }
  }

const other = (figure: string, random: RandomSource) => {
  const by = (random.uniform() < 0.5 ? -1 : 1) * (1 + Math.floor(3 * random.uniform()))
  const changed = Number(figure) + by
  return String(changed > 0 ? changed : Number(figure) + Math.abs(by))
}

const counts: readonly EditCode[] = [
  "total-wrong",
  "repeat-does-not-fit",
  "stitches-left-over",
  "spaces-total-wrong",
]

export const faultKinds: readonly FaultKind[] = [
  {
    name: "total of stitches wrong",
    plant: inRound(
      ({ total }, random) => {
        const found = /^([([–] ?)(\d+)(?! ch-)/.exec(total)
        return found
          ? { total: found[1] + other(found[2]!, random) + total.slice(found[0].length) }
          : null
      },
      ["total-wrong"],
    ),
  },
  {
    name: "total of spaces wrong",
    plant: inRound(
      ({ total }, random) => {
        const found = /(\d+)(?= ch-\d+ sps?)/.exec(total)
        return found
          ? {
              total:
                total.slice(0, found.index) +
                other(found[0], random) +
                total.slice(found.index + found[0].length),
            }
          : null
      },
      ["spaces-total-wrong", "total-wrong"],
    ),
  },
  {
    name: "total left out",
    plant: inRound(() => ({ total: "" }), ["total-missing"]),
  },
  {
    name: "total in another style",
    plant: inRound(
      ({ total }) => {
        const inner = total.replace(/^[([–] ?/, "").replace(/[)\]]$/, "")
        return { total: total.startsWith("(") ? `– ${inner}` : `(${inner})` }
      },
      ["totals-in-two-styles"],
    ),
  },
  {
    name: "number of repeats wrong",
    plant: inWork(
      /(\d+)(?= more times?)/,
      ([figure], random) =>
        String(
          Math.max(1, Number(figure) + (random.uniform() < 0.5 && Number(figure) > 1 ? -1 : 1)),
        ),
      counts,
    ),
  },
  {
    name: "stitches in the work wrong",
    plant: inWork(
      /\b(\d+) (?=(?:sc|hdc|dc|tr|htr|dtr) in (?:next st|same|ring))/,
      ([, figure], random) => `${Number(figure) + 1 + Math.floor(2 * random.uniform())} `,
      [...counts, "repeats-differ"],
    ),
  },
  {
    name: "space named that is not there",
    plant: inWork(/ch-(\d+)(?= sp)/, ([, size]) => `ch-${Number(size) + 1}`, ["place-not-there"]),
  },
  {
    name: "bracket not closed",
    plant: inRound(
      ({ work }) => {
        const at = work.search(/\)(?= (?:in|\d+ times?|1 time))/)
        return at < 0 ? null : { work: work.slice(0, at) + work.slice(at + 1) }
      },
      ["bracket-open"],
    ),
  },
  {
    name: "start of the repeat not marked",
    plant: inWork(/\*(?=.*rep from \*)/, () => "", ["repeat-marks-missing"]),
  },
  {
    name: "round without its number",
    plant: inRound(
      ({ work, number }) =>
        number === 1 ? null : { work: work.replace(/^(Rnd|Round|Row) \d+:/, "$1:") },
      ["round-not-labelled", "round-missing"],
    ),
  },
  {
    name: "number given twice",
    plant: inRound(
      ({ work, number }) =>
        number === 1 ? null : { work: work.replace(/\d+/, String(number - 1)) },
      ["round-number-again"],
      (number) => number - 1,
    ),
  },
  {
    name: "round left out",
    plant: ({ text }, random) => {
      const { lines, rounds } = roundLines(text)
      const able = rounds.slice(1, -1)
      if (able.length === 0) return null
      const round = able[Math.floor(random.uniform() * able.length)]!
      return {
        text: lines.toSpliced(round.at, 1).join("\n"),
        round: round.number + 1,
        codes: ["round-missing"],
      }
    },
  },
  {
    name: "stitch of the other terms",
    plant: (pattern, random) =>
      inWork(
        pattern.terms === "US" ? /\b(?:dc|hdc)\b(?= in )/ : /\b(?:tr|htr|dc)\b(?= in )/,
        ([name]) => (pattern.terms === "US" ? "htr" : name === "htr" ? "hdc" : "sc"),
        ["terms-mixed"],
      )(pattern, random),
  },
  {
    name: "word of the other terms",
    plant: (pattern, random) =>
      pattern.terms === "US"
        ? inWork(/\bskip\b/, () => "miss", ["terms-mixed"])(pattern, random)
        : null,
  },
  {
    name: "start that does not say whether it counts",
    plant: inWork(
      /\bch (\d+) \((?:counts as|does not count)[^)]*\)/,
      ([, chains]) => `ch ${chains}`,
      ["start-not-said"],
    ),
  },
  {
    name: "join into another chain",
    plant: inWork(
      /\b(\d)(?:st|nd|rd|th)(?= ch of beg)|(?<=top of beg ch-)\d/,
      ([word]) =>
        word === "4th"
          ? "2nd"
          : word.length === 1
            ? String(Number(word) + 1)
            : word === "2nd"
              ? "1st"
              : "2nd",
      ["join-into-wrong-place"],
    ),
  },
  {
    name: "end not told",
    plant: ({ text }) => {
      const { rounds } = roundLines(text)
      const last = rounds.at(-1)
      const cut = text.replace(/\nFasten off[^\n]*/, "").replace(/ Fasten off\./, "")
      return last && cut !== text
        ? { text: cut, round: last.number, codes: ["no-fasten-off"] }
        : null
    },
  },
  {
    name: "abbreviation not listed",
    plant: ({ text }, random) => {
      const able = [
        ...text.matchAll(
          /(?:\n- (?:ch|sp|st|sk|rep): [^\n]*)|(?:\n(?:ch|sp|st|sk|rep) - [^\n]*)|(?:\b(?:ch|sp|st|sk|rep) = [a-z ]+, )|(?:\b(?:chain|space|stitch|repeat) \([a-z]+\); )/g,
        ),
      ]
      if (able.length === 0) return null
      const entry = able[Math.floor(random.uniform() * able.length)]!
      return {
        text: text.slice(0, entry.index) + text.slice(entry.index + entry[0].length),
        round: null,
        codes: ["abbreviation-not-listed"],
      }
    },
  },
  {
    name: "abbreviation listed and not used",
    plant: inFront(
      /\n- ch: |\nch - |Abbreviations: (?=[^\n]*=)|Abbreviations: /,
      ([found]) => {
        if (found.startsWith("\n-")) return `\n- trtr: triple treble${found}`
        if (found.startsWith("\nch")) return `\ntrtr - triple treble${found}`
        return `${found}trtr = triple treble, `
      },
      ["abbreviation-not-used"],
    ),
  },
  {
    name: "yarn, hook, gauge or size missing",
    plant: ({ text }, random) => {
      const rows = [
        [/\nYarn: [^\n]*/, "yarn-missing"],
        [/\nHook: [^\n]*/, "hook-missing"],
        [/\n(?:Gauge|Tension): [^\n]*/, "gauge-missing"],
        [/\nFinished size: [^\n]*/, "size-missing"],
      ] as const
      const [line, code] = rows[Math.floor(random.uniform() * rows.length)]!
      return line.test(text) ? { text: text.replace(line, ""), round: null, codes: [code] } : null
    },
  },
  {
    name: "gauge impossible for yarn and hook",
    plant: inFront(
      /(?<=(?:Gauge|Tension): )(\d+)(?= \w+ x (\d+) rows)/,
      ([figure]) => String(Math.round(Number(figure) / 2)),
      ["gauge-impossible"],
    ),
  },
  {
    name: "letter of another hook",
    plant: inFront(
      /(?<=US )[A-Z]-\d+/,
      ([letter], random) => {
        const others = ["D-3", "G-6", "I-9", "L-11"].filter((one) => one !== letter)
        return others[Math.floor(random.uniform() * others.length)]!
      },
      ["hook-letter-differs"],
    ),
  },
  {
    name: "finished size that cannot be",
    plant: inFront(
      /(?<=Finished size: )([\d.]+)/,
      ([size], random) => (Number(size) * (random.uniform() < 0.5 ? 2.5 : 0.4)).toFixed(1),
      ["size-impossible"],
    ),
  },
  {
    name: "round named that is not there",
    plant: inRound(
      ({ number, work }) =>
        number < 2 ? null : { work: work.replace(/: .*/, ": Repeat Rnd 37.") },
      ["round-named-not-there"],
    ),
  },
  {
    name: "size in inches that are other centimetres",
    plant: inFront(
      /(?<=Finished size: )([\d.]+) cm/,
      ([, size], random) =>
        `${size} cm (${(Number(size) / 2.54 + (random.uniform() < 0.5 ? 1.5 : -0.4 * Number(size) * 0.4)).toFixed(1)} in)`,
      ["measures-differ"],
    ),
  },
  {
    name: "word written twice",
    plant: inWork(/ (in|into|to) /, ([, word]) => ` ${word} ${word} `, ["word-twice"]),
  },
]
