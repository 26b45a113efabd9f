// One piece of the benchmark laid out, flat and in space, in a process of its own: `bench-memory NAME NODES` prints the most
// memory the process took, MB, node and compiler of the sources included.

import { layOutFlat, layOutInSpace } from "@roundwright/relaxation"
import { piecesOf } from "./bench-pieces.ts"

const [name, size] = process.argv.slice(2)
const piece = piecesOf(Number(size)).find((one) => one.name === name)
if (piece === undefined) throw new Error("Say which piece, and about how many nodes.")
const flat = layOutFlat(piece.net)
layOutInSpace(piece.net, flat.xy, { repeat: flat.repeat })
process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`)
