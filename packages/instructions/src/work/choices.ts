// Where a text can be taken in more than one way, the reading asks here. The usual way is tried
// first; when counts do not agree, others are tried and the one that agrees is told.

export type ChoiceName =
  | "start-chain"
  | "single-start-chain"
  | "increase-inside"
  | "pick-of"
  | "times"
  | "last-repeat"
  | "chains-are-stitches"
  | "over-earlier"
  | "several-in-several"
  | "skipped-chains"
  | "next-after-start"
  | "bare-list"
  | "same-space"
  | "several-unplaced"
  | "first-place"
  | "every-second"

export type ChoiceValue = string

/** The values taken, and every point at which one was asked for. */
export class Choices {
  readonly asked = new Map<
    ChoiceName,
    { readonly taken: ChoiceValue; readonly others: readonly ChoiceValue[] }
  >()

  constructor(private readonly forced: ReadonlyMap<ChoiceName, ChoiceValue> = new Map()) {}

  /** @param values the usual reading first */
  take<V extends ChoiceValue>(name: ChoiceName, values: readonly V[]): V {
    const forced = this.forced.get(name)
    const usual = values[0]!
    const taken =
      forced !== undefined && (values as readonly string[]).includes(forced) ? (forced as V) : usual
    this.asked.set(name, { taken, others: values.filter((value) => value !== usual) })
    return taken
  }

  isUsual(): boolean {
    return this.forced.size === 0
  }

  forcedValues(): ReadonlyMap<ChoiceName, ChoiceValue> {
    return this.forced
  }
}

/** What makers leave open most often: whether "repeat 5 times" counts the first time. */
const likeliest: ChoiceName = "times"

/** Other readings of the points asked, those with one change first; at most `most`. */
export function otherReadings(
  choices: Choices,
  most: number,
): ReadonlyMap<ChoiceName, ChoiceValue>[] {
  const singles: [ChoiceName, ChoiceValue][] = []
  for (const [name, { others }] of choices.asked)
    for (const value of others) singles.push([name, value])
  singles.sort((a, b) => Number(b[0] === likeliest) - Number(a[0] === likeliest))
  const readings = singles.map((single) => new Map([single]))
  for (let i = 0; i < singles.length && readings.length < most; i++)
    for (let j = i + 1; j < singles.length && readings.length < most; j++) {
      const a = singles[i]!
      const b = singles[j]!
      if (a[0] !== b[0]) readings.push(new Map([a, b]))
    }
  return readings.slice(0, most)
}
