// Small helpers for the tests of the reader.

import { expect } from "vitest"
import { type PatternReading, type Problem, readPattern } from "../src/index.ts"

/** Reads rounds given one a line, numbered from 1, in US terms unless the text says otherwise. */
export function read(...rounds: string[]): PatternReading {
  return readPattern(`Terms: US\n${rounds.map((round, i) => `Rnd ${i + 1}: ${round}`).join("\n")}`)
}

/** Counts of the last round as "stitches/chains/spaces". */
export function last(reading: PatternReading): string {
  const counted = reading.rounds.at(-1)?.counted
  return counted ? `${counted.stitches}/${counted.chains}/${counted.spaces}` : "none"
}

/** Problems that are more than notes. */
export function doubts(reading: PatternReading): string[] {
  return reading.problems
    .filter((problem) => problem.severity !== "note")
    .map((problem) => `${problem.severity} ${problem.code}`)
}

/** Expects the last of the rounds to come to these counts, with nothing doubted. */
export function comesTo(counts: string, ...rounds: string[]): void {
  const reading = read(...rounds)
  expect(doubts(reading), reading.problems.map((problem) => problem.message).join("\n")).toEqual([])
  expect(last(reading)).toBe(counts)
}

/** The stretch of text a problem points at. */
export function pointedAt(text: string, problem: Problem): string {
  return text
    .split("\n")
    [problem.line - 1]!.slice(problem.column - 1, problem.column - 1 + problem.length)
}

/** The only problem with that code. */
export function only(reading: PatternReading, code: string): Problem {
  const found = reading.problems.filter((problem) => problem.code === code)
  expect(
    found,
    `${code} once in ${reading.problems.map((problem) => problem.code).join(", ")}`,
  ).toHaveLength(1)
  return found[0]!
}

/** A whole pattern with the counts of its rounds as "stitches/chains/spaces". */
export interface VariedPattern {
  readonly name: string
  readonly text: string
  readonly counts: readonly string[]
}
