// Units of what makers count and measure: lengths of fabric and of yarn (which stand for different things: a point is 4 in wide
// and takes 1.5 yd), weights, areas, times; every other word is a thing that is counted.

/** What a unit measures; yards and metres are of yarn, the other lengths of fabric, unless "yarn" is said. */
export type Dimension = "fabric" | "yarn" | "weight" | "area" | "time" | "money" | "counted"

export interface Unit {
  readonly dimension: Dimension
  /** One key for all units that can be turned into one another; of things counted the word in the singular. */
  readonly key: string
  /** Of the base unit: mm, m, g, mm2, hours, one. */
  readonly inBase: number
  /** As it is told back, in the plural. */
  readonly name: string
}

const inch = 25.4

const measures: readonly (readonly [RegExp, Dimension, number, string])[] = [
  [/^(?:mm|millimet(?:re|er)s?)$/, "fabric", 1, "mm"],
  [/^(?:cm|centimet(?:re|er)s?)$/, "fabric", 10, "cm"],
  [/^(?:in|inch|inches|["″”])$/, "fabric", inch, "in"],
  [/^(?:ft|foot|feet)$/, "fabric", 12 * inch, "ft"],
  [/^(?:m|met(?:re|er)s?)$/, "yarn", 1, "m"],
  [/^(?:yd|yds|yards?)$/, "yarn", 0.9144, "yd"],
  [/^(?:g|grams?|grammes?)$/, "weight", 1, "g"],
  [/^(?:kg|kilos?|kilograms?)$/, "weight", 1000, "kg"],
  [/^(?:oz|ounces?)$/, "weight", 28.3495, "oz"],
  [/^(?:lbs?|pounds?)$/, "weight", 453.592, "lb"],
  [/^(?:min|minutes?)$/, "time", 1 / 60, "minutes"],
  [/^(?:h|hrs?|hours?)$/, "time", 1, "hours"],
  [/^dollars?$/, "money", 1, "dollars"],
  [/^euros?$/, "money", 1, "euros"],
  [/^sterling$/, "money", 1, "pounds sterling"],
]

/** "cm", "sq in", "stitches", "large squares"; null for no word at all. */
export function unitOf(words: readonly string[]): Unit | null {
  const all = words.map((word) => word.toLowerCase())
  if (all.length === 0) return null
  const ofYarn = all.includes("yarn")
  const squared = /^(?:sq|square)$/.test(all[0]!) && all.length === 2
  const sterling = all.includes("sterling")
  const plain = sterling
    ? ["sterling"]
    : all.filter((word) => !/^(?:of|yarn|wide|across|tall|high|long|deep)$/.test(word))
  const named = measureOf(squared ? plain.slice(1) : plain)
  if (named && squared && named[1] === "fabric")
    return { dimension: "area", key: "area", inBase: named[2] ** 2, name: `sq ${named[3]}` }
  if (named && !squared) {
    const [, dimension, inBase, name] = named
    return ofYarn && dimension === "fabric"
      ? { dimension: "yarn", key: "yarn", inBase: inBase / 1000, name }
      : { dimension, key: dimension, inBase, name }
  }
  if (plain.length === 0) return null
  const name = [...plain.slice(0, -1), pluralOf(plain.at(-1)!)].join(" ")
  return { dimension: "counted", key: singular(name), inBase: 1, name }
}

function measureOf(words: readonly string[]) {
  return words.length === 1 ? measures.find(([form]) => form.test(words[0]!)) : undefined
}

/** The area of a length by a length. */
export function areaOf({ inBase, name }: Unit): Unit {
  return { dimension: "area", key: "area", inBase: inBase ** 2, name: `sq ${name}` }
}

const shortWords: Readonly<Record<string, string>> = {
  st: "stitches",
  sts: "stitches",
  ch: "chains",
  chs: "chains",
  rnd: "rounds",
  rnds: "rounds",
  rep: "repeats",
  reps: "repeats",
  sp: "spaces",
  sps: "spaces",
}

function pluralOf(word: string): string {
  const short = shortWords[word]
  if (short) return short
  if (/(?:ss|x|ch|sh)$/.test(word)) return `${word}es`
  if (/^(?:hal|lea|scar|shel)f$/.test(word)) return `${word.slice(0, -1)}ves`
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`
  return word.endsWith("s") || /^(?:sc|hdc|dc|tr|dtr)$/.test(word) ? word : `${word}s`
}

/** "squares" as one of them is called. */
export function singular(plural: string): string {
  if (/(?:ss|x|ch|sh)es$/.test(plural)) return plural.slice(0, -2)
  if (/(?:hal|lea|scar|shel)ves$/.test(plural)) return `${plural.slice(0, -3)}f`
  if (plural.endsWith("ies")) return `${plural.slice(0, -3)}y`
  return /[^s]s$/.test(plural) ? plural.slice(0, -1) : plural
}
