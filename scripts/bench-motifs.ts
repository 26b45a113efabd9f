// How long a maker waits for the verdict on real motifs of about eight rounds: the growth ledger's, the net's with its odds, and
// beside it the same as it was worked out before, the whole net without its repeat and the shape in space with it, in one run.
// Told is the time of computing, which on a machine with nothing else to do is the time one waits.

import { examinePattern } from "@roundwright/assessment"
import { keepLedger } from "@roundwright/flatness"
import { minimiseByNewton } from "@roundwright/numerics"
import {
  cornersOfFabric,
  layOut,
  NetEnergy,
  pinningPull,
  usualMaterial,
  usualPull,
} from "@roundwright/relaxation"
import { caseText, loadCases } from "../test/evidence/cases.ts"
import { leftOut } from "../test/evidence/judged-pieces.ts"

/** So many motifs, those of eight rounds first. */
const motifs = 10
/** Times measured after one to warm up; the median is told. */
const times = 3

/** Published motifs that read whole without a doubt, by how near their rounds are to eight. */
function realMotifs() {
  const all = [...loadCases("measured-motifs"), ...loadCases("handbook-motifs")].flatMap((one) => {
    if (leftOut.has(one.id)) return []
    const { reading, gauge } = examinePattern(caseText(one), { remedies: false })
    const sound = reading.problems.every(({ severity }) => severity === "note")
    const { motif } = reading
    const whole = motif.rounds.length === reading.rounds.length
    return sound && whole && gauge ? [{ id: one.id, motif, gauge }] : []
  })
  const off = (one: (typeof all)[number]) => Math.abs(one.motif.rounds.length - 8)
  return all.sort((a, b) => off(a) - off(b)).slice(0, motifs)
}

export function benchMotifs(write: (line: string) => void): void {
  write(`\nThe verdict with its odds on ${motifs} published motifs of about eight rounds`)
  write(
    `  ${"motif".padEnd(30)} rounds  nodes  repeats    ledger       net  whole net  and in space`,
  )
  const waits: number[] = []
  for (const { id, motif, gauge } of realMotifs()) {
    const judged = layOut(motif, gauge, { inSpace: false })
    const ledger = medianMs(() => keepLedger(motif, gauge))
    const net = medianMs(() => layOut(motif, gauge, { inSpace: false }))
    const whole = medianMs(() => flatAsAWhole(judged.net))
    const space = medianMs(() => layOut(motif, gauge, { space: { work: 5e9 } }), 1)
    waits.push(net)
    write(
      `  ${id.padEnd(30)} ${String(motif.rounds.length).padStart(6)} ${String(judged.net.nodes.length).padStart(6)} ${String(judged.flat.repeat?.order ?? 1).padStart(8)} ` +
        `${ledger.toFixed(1).padStart(6)} ms ${net.toFixed(0).padStart(6)} ms ${whole.toFixed(0).padStart(7)} ms ${space.toFixed(0).padStart(10)} ms`,
    )
  }
  waits.sort((a, b) => a - b)
  const within = waits.filter((ms) => ms < 500).length
  write(
    `  the net: median ${waits[waits.length >> 1]!.toFixed(0)} ms, longest ${waits.at(-1)!.toFixed(0)} ms, under 0.5 s ${within} of ${waits.length}`,
  )
}

/** The flat shape found on all nodes, pinned out and let go, as it was before repeats were used. */
function flatAsAWhole(net: ReturnType<typeof layOut>["net"]): void {
  const options = {
    dimensions: 2,
    material: { ...usualMaterial, leanShare: 1 },
    table: false,
    corners: cornersOfFabric(net, net.start),
  } as const
  const size = net.springs.reduce((sum, { restMm }) => sum + restMm, 0) / net.springs.length
  const force = usualMaterial.stiffness * size
  const newton = { longestMove: size, leaveSaddles: false, iterations: 150 }
  const pinned = minimiseByNewton(
    new NetEnergy(net, { ...options, pull: pinningPull }),
    net.start,
    {
      ...newton,
      gradientTolerance: 1e-3 * force,
    },
  )
  minimiseByNewton(new NetEnergy(net, { ...options, pull: usualPull }), pinned.x, {
    ...newton,
    gradientTolerance: 1e-8 * force,
  })
}

function medianMs(work: () => unknown, runs = times): number {
  work()
  const all = Array.from({ length: runs }, () => {
    const begun = process.cpuUsage()
    work()
    const { user, system } = process.cpuUsage(begun)
    return (user + system) / 1000
  })
  return all.sort((a, b) => a - b)[runs >> 1]!
}
