// One stitch in place of another, the other country's name among it: how much taller, what that does to rows and rounds.

import {
  basicStitches,
  gaugeFrom,
  kindName,
  readStitchName,
  type StitchKind,
  sizeOf,
  type Terms,
  turningChains,
} from "@roundwright/stitches"

export interface StitchTold {
  readonly kind: StitchKind
  readonly terms: Terms
  readonly said: string
}

/** "dc", "UK treble", "US double crochet"; null where it is no stitch. */
export function readStitchTold(text: string): StitchTold | null {
  const terms: Terms = /\b(?:uk|british|english)\b/i.test(text) ? "UK" : "US"
  const name = text
    .replace(/\b(?:uk|us|british|english|american)\b/gi, "")
    .trim()
    .toLowerCase()
  if (name === "" || /\d/.test(name)) return null
  const kind = readStitchName(name, terms)
  return kind === null || kind === undefined ? null : { kind, terms, said: text.trim() }
}

export interface StitchesCompared {
  /** Height of the second over the first. */
  readonly heightRatio: number
  readonly widthRatio: number
  readonly cause: "terms" | "ratio" | null
  readonly text: string
}

/** @param a what was worked @param b what was meant */
export function compareStitches(a: StitchTold, b: StitchTold): StitchesCompared {
  const gauge = gaugeFrom({ swatches: [] })
  const [first, second] = [a, b].map(({ kind }) => sizeOf(kind, gauge, { turned: true })) as [
    ReturnType<typeof sizeOf>,
    ReturnType<typeof sizeOf>,
  ]
  const heightRatio = second.heightMm / first.heightMm
  const widthRatio = second.widthMm / first.widthMm
  const us = ({ kind }: StitchTold) => kindName(kind, "US")
  const uk = ({ kind }: StitchTold) => kindName(kind, "UK")
  const names = `${a.said} is US ${us(a)} (UK ${uk(a)}), ${b.said} is US ${us(b)} (UK ${uk(b)})`
  if (us(a) === us(b))
    return {
      heightRatio,
      widthRatio,
      cause: null,
      text: `${names}: the same stitch, nothing changes.`,
    }
  const sameWord = (a.terms !== b.terms && bothSaid(a, b)) || uk(a) === us(b) || us(a) === uk(b)
  const plain = basicStitches.filter((one) => !/^e/.test(one))
  const steps = plain.indexOf(b.kind.basic) - plain.indexOf(a.kind.basic)
  const many = [a, b].some(({ kind }) => !plain.includes(kind.basic)) ? 0 : Math.abs(steps)
  const [from, to] = [turningChains(a.kind.basic), turningChains(b.kind.basic)]
  const inSteps =
    many === 0
      ? ""
      : ` The first is ${many === 1 ? "one step" : `${many} steps`} ${steps < 0 ? "taller" : "lower"} in the order sc, hdc, dc, tr, dtr; it starts a round with ${from} chains where the second takes ${to}.`
  const tall = heightRatio.toFixed(2)
  const rows = heightRatio > 1 ? heightRatio : 1 / heightRatio
  const lower = heightRatio > 1 ? "first" : "second"
  return {
    heightRatio,
    widthRatio,
    cause: sameWord ? "terms" : "ratio",
    text: `${names}.${inSteps} The second is ${tall} times as tall, the first ${(1 / heightRatio).toFixed(2)} times the second, so the same length takes ${rows.toFixed(1)} times the rows in the ${lower}, and a piece in rounds comes out about ${tall} times the size in the second, where its count is as it should be. ${sameWord ? "Not the hook: it is the terms, one country's name for the other's stitch. Work all of it alike, either way." : "Not the hook: it is the stitch."} The taller stitch takes more yarn a stitch and less for the same area.`,
  }
}

function bothSaid(...told: readonly StitchTold[]): boolean {
  return told.every(({ said }) => /\b(?:uk|us|british|english|american)\b/i.test(said))
}
