// Files that import one another in circles: strongly connected parts of the graph of relative imports (Tarjan 1972).
// Imports of types alone count too: a circle of ideas is one whatever is left of it at run time.

import { dirname, join } from "node:path"

/**
 * @param sources text of each file by its path, parted by slashes
 * @returns each circle as the paths in it, sorted; a file that imports itself is one
 */
export function importCycles(sources: ReadonlyMap<string, string>): string[][] {
  const imports = new Map(
    [...sources].map(([file, text]) => [file, importsOf(file, text, sources)]),
  )
  const order = new Map<string, number>()
  const lowest = new Map<string, number>()
  const open: string[] = []
  const cycles: string[][] = []
  const visit = (file: string): number => {
    const own = order.size
    order.set(file, own)
    lowest.set(file, own)
    open.push(file)
    for (const next of imports.get(file)!) {
      const reached = order.has(next) ? (open.includes(next) ? order.get(next)! : own) : visit(next)
      lowest.set(file, Math.min(lowest.get(file)!, reached))
    }
    if (lowest.get(file) === own) {
      const part = open.splice(open.indexOf(file))
      if (part.length > 1 || imports.get(file)!.includes(file)) cycles.push(part.sort())
    }
    return lowest.get(file)!
  }
  for (const file of imports.keys()) if (!order.has(file)) visit(file)
  return cycles.sort((a, b) => (a[0]! < b[0]! ? -1 : 1))
}

function importsOf(file: string, text: string, sources: ReadonlyMap<string, string>): string[] {
  return [...text.matchAll(/(?:\bfrom|\bimport\(|^import)\s*"(\.[^"]*)"/gm)]
    .map(([, target]) => join(dirname(file), target!))
    .filter((target) => sources.has(target))
}
