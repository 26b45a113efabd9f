// The net as documented JSON, so that anyone can lower the same energy with another tool. Form 1:
//
// { "form": 1, "unit": "mm, N",
//   "material": stiffness N/mm, bending N mm, weight N/mm2 and the shares of material.ts,
//   "nodes":   [{ kind, round, element, widthMm, areaMm2 }],
//   "start":   [x, y, z, ...] of every node,
//   "springs": [{ role, from, to, restMm, areaMm2 }]   points are { nodes, weights },
//   "leans":   [{ top, left, right, restMm, areaShare }],
//   "panels":  [{ points, restMm, areaShare }],
//   "hinges":  [{ points, scale, areasMm4, share }],
//   "rods":    [{ nodes, share }],
//   "corners": [{ at, first, second, areaMm2 }] }
//
// The formulas of the terms stand in spring-group.ts (with strain-law.ts), lean-group.ts, hinge-group.ts, corner-group.ts,
// plain-groups.ts, table.ts and energy.ts; which strengths they get in energy-terms.ts.

import { cornersOfFabric } from "./fabric-corners.ts"
import type { Material } from "./material.ts"
import type { Net } from "./net.ts"

/** @param xyz start in space; the flat start on the table when left out */
export function netToJson(net: Net, material: Material, xyz?: Float64Array): string {
  const { nodes, springs, leans, panels, hinges, rods } = net
  const start =
    xyz ??
    Float64Array.from({ length: 3 * nodes.length }, (_, k) =>
      k % 3 === 2 ? 0 : net.start[2 * Math.floor(k / 3) + (k % 3)]!,
    )
  const flat = Float64Array.from(
    { length: 2 * nodes.length },
    (_, k) => start[3 * (k >> 1) + (k % 2)]!,
  )
  return JSON.stringify({
    form: 1,
    unit: "mm, N",
    material,
    nodes,
    start: [...start],
    springs,
    leans,
    panels,
    hinges,
    rods,
    corners: cornersOfFabric(net, flat),
  })
}
