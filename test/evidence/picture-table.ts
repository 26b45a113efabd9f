// The lines of `pnpm evidence` about pictures, rounds rebuilt and gauges fitted. Which seeds were looked at
// while constants were chosen is said beside each.

import { scoreDrawings } from "./picture-drawings.ts"
import { type Damage, damages, engravingKeys, scoreEngravings } from "./picture-engravings.ts"
import { type LeftOut, leaveOutDrawn, leaveOutPublished } from "./picture-gauge.ts"
import { scoreRebuilding } from "./picture-rebuild.ts"

/** Drawings whose seeds nobody looked at while building; the whole of them is run with --full. */
const judged = { level: 6201, tilted: 8101 } as const

export async function printPictures(print: (line?: string) => void, full: boolean): Promise<void> {
  print("\nPictures: engravings keyed by eye and from their written rounds before any was measured")
  for (const damage of full ? (Object.keys(damages) as Damage[]) : (["as it is"] as const)) {
    const scores = await scoreEngravings(damage)
    const rings = sum(scores.map(({ rings }) => rings))
    print(
      `  ${damage.padEnd(22)} rings ${sum(scores.map(({ right }) => right))} of ${rings}, main ring ${scores.filter(({ mainRight }) => mainRight).length} of ${engravingKeys.length}, ` +
        `centre within 1.5 % of the radius in ${scores.filter(({ centreOff }) => centreOff <= 0.015).length}; ` +
        scores
          .flatMap(({ file, wrong }) => wrong.map((one) => `${file.split("-")[1]}: ${one}`))
          .join(", "),
    )
  }
  print(
    "\nPictures: drawings of our own, all kinds of rounds (constants chosen on seeds 1 to 40 of four kinds, sureness fitted on 101 to 220 of them)",
  )
  for (const [name, from, count, tilt] of [
    ["tilt 0 to 5 degrees", judged.level, full ? 200 : 12, [0, 5]],
    ["tilt 15 to 30, no click", judged.tilted, full ? 40 : 6, [15, 30]],
  ] as const) {
    const s = scoreDrawings({ from, count, tiltDeg: tilt })
    print(
      `  ${name.padEnd(24)} n = ${s.drawings}: centre ${share(s.centre, s.drawings)}, main count ${share(s.main, s.drawings)}, rings ${share(s.ringsRight, s.rings)} of ${s.rings} ` +
        `(with bounds ${share(s.ringsRightWithBounds, s.rings)}; kinds not tuned on ${share(s.untunedRight, s.untuned)} of ${s.untuned}), radii ${share(s.radiiRight, s.radii)}, ` +
        `outline ${share(s.outlines, s.drawings)}, called sure ${s.sure}, of them right ${share(s.sureRight, s.sure)}; of ${s.rings - s.ringsRight} wrong rings ${s.wrongTold} in views that were doubted`,
    )
  }
  print(
    "\nRounds rebuilt from radii and counts, plain motifs laid out by the net (constants chosen on seeds 1 to 30)",
  )
  for (const [name, closeUp] of [
    ["scale 4 %", false],
    ["width from close up", true],
  ] as const) {
    const s = scoreRebuilding(9001, full ? 60 : 20, closeUp)
    print(
      `  ${name.padEnd(24)} n = ${s.motifs} motifs, ${s.rounds} rounds: stitch first ${share(s.first, s.rounds)}, among two ${share(s.amongTwo, s.rounds)}, ` +
        `count ${share(s.counts, s.rounds)}, with the question answered ${share(s.answered, s.rounds)}, hdc ${share(s.hdcFirst, s.hdc)} of ${s.hdc}`,
    )
  }
  print(
    "\nGauge fitted to a piece, one measured round left out and predicted (no constant chosen on these)",
  )
  print(`  published pieces         ${leftOutWords(leaveOutPublished())}`)
  print(`  hands from the spreads   ${leftOutWords(leaveOutDrawn(4001, full ? 150 : 30))}`)
}

function leftOutWords(list: readonly LeftOut[]): string {
  const off = list.map(({ error }) => Math.abs(error)).sort((a, b) => a - b)
  const within = (limit: number) =>
    list.filter(({ standardErrors }) => Math.abs(standardErrors) <= limit).length
  return (
    `n = ${list.length}: median off ${(100 * (off[off.length >> 1] ?? 0)).toFixed(1)} %, ` +
    `within one standard error ${share(within(1), list.length)}, within 1.96 ${share(within(1.96), list.length)}`
  )
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

function share(part: number, whole: number): string {
  return whole === 0 ? "-" : `${((100 * part) / whole).toFixed(1)} %`
}
