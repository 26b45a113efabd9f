// Whether a regular expression can take more than a time in proportion to the text: a small parser of expressions and
// the three ways in which a run of one character is walked over again and again. A run that is bounded is no run.

/** Characters an expression is asked about. */
const alphabet = [
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)),
  "\n",
  "\u00e9",
  "\u2014",
]
/** Most repetitions that are no run: the work stays in proportion to the text. */
const longestBounded = 1000

type Characters = ReadonlySet<string>

/** One piece of a sequence: the characters it may match, and how often. */
interface Piece {
  readonly kind: "characters" | "group" | "look" | "anchor"
  readonly text: string
  readonly set: Characters
  readonly min: number
  readonly max: number
  readonly ways: readonly (readonly Piece[])[]
}

/** What is wrong with an expression, in words; null where it is linear. */
export function faultOf(expression: RegExp): string | null {
  const ways = new Parser(expression).alternatives()
  return (
    nestedRuns(ways) ?? neighbouringRuns(ways) ?? (expression.sticky ? null : restartedRun(ways))
  )
}

const isRun = (piece: Piece) => piece.max > longestBounded
const nullable = (piece: Piece): boolean =>
  piece.min === 0 ||
  piece.kind === "anchor" ||
  piece.kind === "look" ||
  (piece.kind === "group" && piece.ways.some((way) => way.every(nullable)))
const meets = (a: Characters, b: Characters) => [...a].some((one) => b.has(one))
const shared = (a: Characters, b: Characters) => new Set([...a].filter((one) => b.has(one)))

/** "(a+b?)+": a run inside a run, with nothing between two times that the inner run cannot take. */
function nestedRuns(ways: readonly (readonly Piece[])[]): string | null {
  for (const way of ways)
    for (const piece of way) {
      if (isRun(piece) && piece.kind === "group")
        for (const body of piece.ways)
          for (const inner of runsIn(body)) {
            const parted = body.some((one) => !nullable(one) && !meets(one.set, inner.set))
            if (!parted) return `a run (${inner.text}) inside the run ${piece.text}`
          }
      const deeper = nestedRuns(piece.ways)
      if (deeper) return deeper
    }
  return null
}

function runsIn(pieces: readonly Piece[]): Piece[] {
  return pieces.flatMap((piece) => [
    ...(isRun(piece) ? [piece] : []),
    ...piece.ways.flatMap(runsIn),
  ])
}

/** "a*[ab]*c": two runs side by side that may share what lies between them, and something after that may fail. */
function neighbouringRuns(ways: readonly (readonly Piece[])[]): string | null {
  for (const way of flattened(ways)) {
    for (const [i, first] of way.entries()) {
      if (!isRun(first)) continue
      let common = first.set
      for (let j = i + 1; j < way.length; j++) {
        const next = way[j]!
        if (
          isRun(next) &&
          meets(common, next.set) &&
          way.slice(j + 1).some((one) => !nullable(one) || one.kind !== "characters")
        )
          return `the runs ${first.text} and ${next.text} share characters`
        if (nullable(next)) continue
        common = shared(common, next.set)
        if (common.size === 0) break
      }
    }
  }
  return null
}

/** "a+b" looked for anywhere: from every place in a run of "a" the rest of it is walked. */
function restartedRun(ways: readonly (readonly Piece[])[]): string | null {
  for (const way of flattened(ways)) {
    let common: Characters = new Set(alphabet)
    for (const [i, piece] of way.entries()) {
      if (piece.text === "^" || (piece.kind === "look" && piece.text.startsWith("(?<"))) break
      // A word begins once in its run.
      if (piece.text === "\\b") common = new Set([...common].filter((one) => !/\w/.test(one)))
      if (isRun(piece) && meets(common, piece.set)) {
        const fails = way.slice(i + 1).some((one) => !nullable(one) || one.kind !== "characters")
        if (fails) return `the run ${piece.text} is begun anew at every place`
      }
      if (nullable(piece)) continue
      common = shared(common, piece.set)
      if (common.size === 0) break
    }
  }
  return null
}

/** Sequences with single groups opened: "(?:a|b)c" as "ac" and "bc". */
function flattened(ways: readonly (readonly Piece[])[]): (readonly Piece[])[] {
  let open: (readonly Piece[])[] = []
  for (const way of ways) {
    let found: Piece[][] = [[]]
    for (const piece of way) {
      const parts = piece.kind === "group" && piece.max <= 1 ? flattened(piece.ways) : [[piece]]
      const choices =
        piece.kind === "group" && piece.max <= 1 && piece.min === 0 ? [[], ...parts] : parts
      found = found
        .flatMap((before) => choices.map((choice) => [...before, ...choice]))
        .slice(0, 4000)
    }
    open = [...open, ...found]
  }
  return open
}

class Parser {
  private at = 0
  private readonly source: string

  constructor(private readonly expression: RegExp) {
    this.source = expression.source
  }

  alternatives(): Piece[][] {
    const ways: Piece[][] = [[]]
    while (this.at < this.source.length && this.source[this.at] !== ")") {
      if (this.source[this.at] === "|") {
        this.at += 1
        ways.push([])
      } else ways[ways.length - 1]!.push(this.piece())
    }
    return ways
  }

  private piece(): Piece {
    const from = this.at
    const base = this.atom()
    const [min, max] = this.quantifier()
    return {
      ...base,
      min: base.kind === "anchor" ? 0 : min,
      max,
      text: this.source.slice(from, this.at),
    }
  }

  private atom(): Omit<Piece, "min" | "max" | "text"> {
    const one = this.source[this.at]!
    if (one === "(") {
      const head = /^\((?:\?(?:[:=!]|<[=!]|<\w+>))?/.exec(this.source.slice(this.at))![0]
      this.at += head.length
      const ways = this.alternatives()
      this.at += 1
      const kind = /^\(\?(?:<?[=!])/.test(head) ? "look" : "group"
      return { kind, set: setOf(ways), ways }
    }
    if (one === "^" || one === "$") {
      this.at += 1
      return { kind: "anchor", set: new Set(), ways: [] }
    }
    const token =
      /^(?:\[(?:\\[\s\S]|[^\]\\])*\]|\\[bB]|\\u\{[0-9a-f]+\}|\\u[0-9a-f]{4}|\\x[0-9a-f]{2}|\\p\{[^}]*\}|\\[\s\S]|[\s\S])/i.exec(
        this.source.slice(this.at),
      )![0]
    this.at += token.length
    if (token === "\\b" || token === "\\B") return { kind: "anchor", set: new Set(), ways: [] }
    const flags = this.expression.flags.replace(/[gy]/g, "")
    const single = new RegExp(`^(?:${token})$`, flags)
    return {
      kind: "characters",
      set: new Set(alphabet.filter((char) => single.test(char))),
      ways: [],
    }
  }

  private quantifier(): [number, number] {
    const found = /^(?:[*+?]|\{(\d+)(,?)(\d*)\})\??/.exec(this.source.slice(this.at))
    if (!found) return [1, 1]
    this.at += found[0].length
    const sign = found[0][0]
    if (sign === "*") return [0, Number.POSITIVE_INFINITY]
    if (sign === "+") return [1, Number.POSITIVE_INFINITY]
    if (sign === "?") return [0, 1]
    const min = Number(found[1])
    return [
      min,
      found[2] === "" ? min : found[3] === "" ? Number.POSITIVE_INFINITY : Number(found[3]),
    ]
  }
}

function setOf(ways: readonly (readonly Piece[])[]): Characters {
  return new Set(ways.flatMap((way) => way.flatMap(({ set }) => [...set])))
}

/** The expressions written in a source file, with what they are written as. */
export function expressionsIn(
  source: string,
): { readonly written: string; readonly expression: RegExp }[] {
  const found: { written: string; expression: RegExp }[] = []
  const literal =
    /(?<=[(,=:?!&|[{;\s]|return )\/(?![*/])((?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+)\/([a-z]*)/g
  const code = source.replace(/^\s*(?:\/\/|\*|\/\*).*$/gm, "")
  for (const [written, pattern, flags] of code.matchAll(literal)) {
    try {
      found.push({ written, expression: new RegExp(pattern!, flags) })
    } catch {
      // A division, or part of a text: no expression.
    }
  }
  return found
}
