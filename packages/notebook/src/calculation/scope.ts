// Which names an expression sees: values calculated so far, the figures of the pattern its cell is
// about (or of the only pattern there is), and the figures of any pattern behind its name.

import type { Value } from "./math.ts"
import type { Figure, Wanted } from "./names.ts"
import type { Names } from "./names-in-reach.ts"

export interface Scope {
  /** Calculated values, in order, and those that wait for a figure still to come. */
  readonly values: Map<string, Value | Wanted>
  /** The figures of each pattern. */
  readonly patterns: ReadonlyMap<string, ReadonlyMap<string, Figure>>
}

/** @param of the pattern whose figures need no name before them; absent: the only one, if so */
export function namesIn(scope: Scope, of?: string): Names {
  const near = scope.patterns.get(of ?? (scope.patterns.size === 1 ? only(scope) : ""))
  return {
    plain: (name) => scope.values.get(name) ?? near?.get(name),
    pattern: (name) => scope.patterns.get(name),
    hint: (name) => hintFor(name, scope, near),
  }
}

/** True when an expression already means something by this name. */
export function isTaken(name: string, scope: Scope): boolean {
  if (scope.values.has(name) || scope.patterns.has(name)) return true
  return [...scope.patterns.values()].some((figures) => figures.has(name))
}

function only(scope: Scope): string {
  return [...scope.patterns.keys()][0] ?? ""
}

/** Names that begin like the one that was not found, or what there is. */
function hintFor(
  name: string,
  scope: Scope,
  near: ReadonlyMap<string, Figure> | undefined,
): string {
  const [pattern, member] = name.includes(".") ? name.split(".") : [undefined, name]
  const figures = pattern === undefined ? near : scope.patterns.get(pattern)
  const stem = (member ?? "").replace(/_[^_]*$/, "")
  const alike = [...(figures?.keys() ?? [])].filter(
    (known) => known.replace(/_[^_]*$/, "") === stem,
  )
  if (alike.length > 0) return `There is ${alike.slice(0, 8).join(", ")}.`
  const owners = [...scope.patterns].filter(([, its]) => its.has(name)).map(([owner]) => owner)
  if (owners.length > 0)
    return `Say of which pattern: ${owners
      .slice(0, 8)
      .map((owner) => `${owner}.${name}`)
      .join(", ")}.`
  const values = [...scope.values.keys()]
  if (values.length > 0) return `Calculated so far: ${values.slice(-8).join(", ")}.`
  const patterns = [...scope.patterns.keys()]
  return patterns.length > 0
    ? `Figures of a pattern are written ${patterns[0]}.rounds, ${patterns[0]}.fullness_last and so on.`
    : "No name has a value yet: the notebook has no pattern and no calculation before this."
}
