// How fast the laid-out shape is found. Our Newton method against two minimisers that use first derivatives only, our
// L-BFGS and the conjugate gradient of the npm library fmin: same energy, same start, same length of the gradient at the
// end. The flat disc and the lace square in the plane, the ruffled disc in space from its start of two waves. Then the
// whole work, flat and in space, and how its time grows with the number of nodes.

import { execFileSync } from "node:child_process"
import { writeFileSync } from "node:fs"
import { createRequire } from "node:module"
import { join } from "node:path"
import { minimiseByLbfgs, minimiseByNewton } from "@roundwright/numerics"
import {
  cornersOfFabric,
  layOutFlat,
  layOutInSpace,
  type Net,
  NetEnergy,
  netToJson,
  roundMisfits,
  startsInSpace,
  usualMaterial,
  usualPull,
} from "@roundwright/relaxation"
import { piecesOf } from "./bench-pieces.ts"

/** The library fmin is published as a script of the older kind. */
const fmin: {
  conjugateGradient(
    f: (x: number[], slope?: number[]) => number,
    start: number[],
    options?: { maxIterations?: number },
  ): unknown
} = createRequire(import.meta.url)("fmin")

/** Length of the gradient, N, at which all three stop: fmin has it built in. */
const gradientLength = 1e-5
/** A rival that takes this many times as long as ours, and this long, ms, is stopped. */
const patience = { times: 40, ms: 5000, mostMs: 40_000 }

interface Problem {
  readonly energy: NetEnergy
  readonly start: Float64Array
}

/** A ruffled piece is timed as a whole up to this many nodes: beyond it takes minutes. */
const largestRuffled = 3500

/** @param sizes numbers of nodes at which the minimisers are compared */
export function benchNet(write: (line: string) => void, sizes: readonly number[]): void {
  write("\nMinimisers: same energy, start and final gradient (length 1e-5 N)")
  write(
    `  ${"piece".padEnd(14)} ${"nodes".padStart(6)} ${"Newton".padStart(10)} ${"L-BFGS".padStart(12)} ${"fmin".padStart(12)}   faster`,
  )
  for (const size of sizes)
    for (const { name, net } of piecesOf(size)) {
      const problem = name === "ruffled disc" ? inSpace(net) : inPlane(net)
      const ours = newtonMs(problem)
      const limit = Math.min(patience.mostMs, Math.max(patience.ms, patience.times * ours))
      const [lbfgs, gradient] = [lbfgsMs(problem, limit), fminMs(problem, limit)]
      const best = Math.min(lbfgs.ms, gradient.ms)
      const reached = lbfgs.reached || gradient.reached
      write(
        `  ${name.padEnd(14)} ${String(net.nodes.length).padStart(6)} ${time(ours).padStart(10)} ${told(lbfgs).padStart(12)} ${told(gradient).padStart(12)}   ` +
          `${reached ? "" : "more than "}${(best / ours).toFixed(1)} times`,
      )
    }
  write("\nThe whole work: flat, then in space")
  const grown = new Map<string, { nodes: number; ms: number }[]>()
  for (const size of [500, ...sizes, 10_000, 20_000].filter((n, k, all) => all.indexOf(n) === k))
    for (const { name, net } of piecesOf(size)) {
      if (name === "ruffled disc" && net.nodes.length > largestRuffled) continue
      const { flatMs, spaceMs, settled } = wholeWork(net, size < 2000 ? 3 : 1)
      const list = grown.get(name) ?? []
      list.push({ nodes: net.nodes.length, ms: flatMs + spaceMs })
      grown.set(name, list)
      write(
        `  ${name.padEnd(14)} ${String(net.nodes.length).padStart(6)} flat ${time(flatMs).padStart(9)}, in space ${time(spaceMs).padStart(9)}` +
          `${settled ? "" : ", not at rest"}`,
      )
    }
  for (const [name, list] of grown)
    write(`  ${name.padEnd(14)} time grows with nodes to the power ${exponentOf(list).toFixed(2)}`)
  write("\nMemory of a process that lays out one piece of about 10,000 nodes, flat and in space")
  for (const name of ["flat disc", "lace square"])
    write(`  ${name.padEnd(14)} ${memoryMb(name)} MB`)
}

function memoryMb(name: string): number {
  const script = join(import.meta.dirname, "bench-memory.ts")
  const args = ["--conditions=source", "--import", "tsx", script, name, "10000"]
  return Number(execFileSync(process.execPath, args, { encoding: "utf8" }))
}

/** The net of the lace square with its start, as JSON that any tool can minimise. */
export function exportNet(file: string): void {
  const { net } = piecesOf(800)[1]!
  writeFileSync(file, `${netToJson(net, usualMaterial)}\n`)
}

function inPlane(net: Net): Problem {
  const energy = new NetEnergy(net, {
    dimensions: 2,
    material: { ...usualMaterial, leanShare: 1 },
    table: false,
    pull: usualPull,
    corners: cornersOfFabric(net, net.start),
  })
  return { energy, start: net.start }
}

function inSpace(net: Net): Problem {
  const { xy } = layOutFlat(net)
  const energy = new NetEnergy(net, {
    dimensions: 3,
    material: usualMaterial,
    table: true,
    pull: 0,
    corners: cornersOfFabric(net, xy),
  })
  const starts = startsInSpace(net, xy, roundMisfits(net, xy, usualMaterial.give), "both", [2])
  return { energy, start: starts.find(({ folds }) => folds === 2)!.xyz }
}

/** The second of two runs: the first warms up. */
function newtonMs(problem: Problem): number {
  runNewton(problem)
  return runNewton(problem)
}

function runNewton({ energy, start }: Problem): number {
  const begun = performance.now()
  minimiseByNewton(energy, start, {
    // No component longer than this: then the whole is not either.
    gradientTolerance: gradientLength / Math.sqrt(energy.size),
    iterations: 1000,
    longestMove: 10,
    saddleMove: 0.5,
  })
  return performance.now() - begun
}

interface Timed {
  readonly ms: number
  readonly reached: boolean
}

class OutOfTime extends Error {}

/** The energy as a function that gives up when its time is over, and tells when the gradient is short enough. */
function watched({ energy }: Problem, limitMs: number) {
  const until = performance.now() + limitMs
  const state = { reached: false }
  const gradient = (x: Float64Array, out: Float64Array): number => {
    if (performance.now() > until) throw new OutOfTime()
    const value = energy.gradient(x, out)
    if (lengthOf(out) <= gradientLength) {
      state.reached = true
      throw new OutOfTime()
    }
    return value
  }
  return { state, gradient }
}

function timed(run: () => void, state: { reached: boolean }): Timed {
  const begun = performance.now()
  try {
    run()
  } catch (error) {
    if (!(error instanceof OutOfTime)) throw error
  }
  return { ms: performance.now() - begun, reached: state.reached }
}

function lbfgsMs(problem: Problem, limitMs: number): Timed {
  const { state, gradient } = watched(problem, limitMs)
  const f = {
    size: problem.energy.size,
    value: (x: Float64Array) => problem.energy.value(x),
    gradient,
  }
  return timed(() => {
    minimiseByLbfgs(f, problem.start, {
      gradientTolerance: 0,
      iterations: 10_000_000,
      longestMove: 10,
    })
  }, state)
}

function fminMs(problem: Problem, limitMs: number): Timed {
  const { state, gradient } = watched(problem, limitMs)
  const at = new Float64Array(problem.energy.size)
  const out = new Float64Array(problem.energy.size)
  const f = (x: number[], slope?: number[]): number => {
    at.set(x)
    const value = gradient(at, out)
    if (slope !== undefined) for (let k = 0; k < out.length; k++) slope[k] = out[k]!
    return value
  }
  return timed(() => {
    fmin.conjugateGradient(f, [...problem.start], { maxIterations: 10_000_000 })
  }, state)
}

function wholeWork(net: Net, times: number): { flatMs: number; spaceMs: number; settled: boolean } {
  const runs = Array.from({ length: times }, () => {
    const begun = performance.now()
    const flat = layOutFlat(net)
    const middle = performance.now()
    const space = layOutInSpace(net, flat.xy, { repeat: flat.repeat })
    return {
      flatMs: middle - begun,
      spaceMs: performance.now() - middle,
      settled: flat.how.settled && space.how.settled,
    }
  })
  return runs.sort((a, b) => a.flatMs + a.spaceMs - b.flatMs - b.spaceMs)[times >> 1]!
}

/** Slope of the logarithms, least squares. */
function exponentOf(list: readonly { nodes: number; ms: number }[]): number {
  const points = list.map(({ nodes, ms }) => [Math.log(nodes), Math.log(ms)] as const)
  const mean = (k: 0 | 1) => points.reduce((sum, point) => sum + point[k], 0) / points.length
  const [x, y] = [mean(0), mean(1)]
  const across = points.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0)
  return across / points.reduce((sum, [a]) => sum + (a - x) ** 2, 0)
}

function lengthOf(v: Float64Array): number {
  let sum = 0
  for (const x of v) sum += x * x
  return Math.sqrt(sum)
}

function told({ ms, reached }: Timed): string {
  return reached ? time(ms) : `> ${time(ms)}`
}

function time(ms: number): string {
  return ms < 1000 ? `${ms.toFixed(ms < 10 ? 1 : 0)} ms` : `${(ms / 1000).toFixed(1)} s`
}
