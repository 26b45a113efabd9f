// The table: a plane that pushes back where a node sinks below it.

/** Depth to which weight presses a node into the table, mm: invisible, yet not too stiff to solve. */
export const restingDepthMm = 0.01
/** A node's contact must not be weaker than this when weight is off, N/mm per mm2. */
const leastContact = 1e-4
/** Contact of a node that carries no fabric counts as that of this area, mm2. */
const leastAreaMm2 = 1

/** Stiffness of a node's contact, N/mm, from the fabric it carries. */
export function contactOf(weight: number, areaMm2: number): number {
  return Math.max(weight / restingDepthMm, leastContact) * Math.max(areaMm2, leastAreaMm2)
}

// Contact grows from nothing over the resting depth, so that the second derivative is continuous.
export function contactEnergy(k: number, z: number): number {
  const s = restingDepthMm
  const t = -z
  return t < s ? (k * t ** 3) / (6 * s) : k * (t ** 2 / 2 - (s * t) / 2 + s ** 2 / 6)
}

export function contactForce(k: number, z: number): number {
  const s = restingDepthMm
  const t = -z
  return t < s ? (-k * t ** 2) / (2 * s) : -k * (t - s / 2)
}

export function contactStiffness(k: number, z: number): number {
  return k * Math.min(1, -z / restingDepthMm)
}

/** Height at which a node of an area lies at rest on the table under its own weight, mm, below zero. */
export function restingHeightMm(weight: number): (areaMm2: number) => number {
  return (areaMm2) => {
    if (weight === 0 || areaMm2 === 0) return 0
    const sunk = (weight * areaMm2) / contactOf(weight, areaMm2)
    const s = restingDepthMm
    return sunk > s / 2 ? -(sunk + s / 2) : -Math.sqrt(2 * s * sunk)
  }
}
