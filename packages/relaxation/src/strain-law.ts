// Energy of a spring against its strain e. Full stiffness beyond the give b, a small share inside it, a
// small share for a string that is pushed. The stiffness changes along a short ramp instead of at a
// point, so that the second derivative is continuous and Newton's method keeps its speed:
//   E(e) = inside e^2 / 2 + (pulled - inside) R(e - b) + (pushed - inside) R(-e - b)
// where R'' rises from 0 to 1 over the width of the ramp.

/** Strain over which the stiffness changes: small against every give and every strain of interest. */
export const rampWidth = 0.01
/** The same where the slack of a string is used up: loops close against stitches gently. */
const closingWidth = 0.05

export interface StrainLaw {
  readonly pulled: number
  readonly inside: number
  readonly pushed: number
  readonly give: number
  /** Strain at which a string pushed together is as stiff as when pulled: its slack is used up. Never when absent. */
  readonly closed?: number
}

/** Value, first and second derivative by strain, written to `out`. */
export function strainEnergy(law: StrainLaw, strain: number, out: Float64Array): void {
  out[0] = (law.inside * strain * strain) / 2
  out[1] = law.inside * strain
  out[2] = law.inside
  addRamp(law.pulled - law.inside, strain - law.give, 1, rampWidth, out)
  addRamp(law.pushed - law.inside, -strain - law.give, -1, rampWidth, out)
  if (law.closed !== undefined)
    addRamp(law.pulled - law.pushed, -strain - law.closed, -1, closingWidth, out)
}

function addRamp(
  stiffness: number,
  beyond: number,
  sign: number,
  width: number,
  out: Float64Array,
): void {
  if (stiffness === 0 || beyond <= 0) return
  if (beyond < width) {
    out[0]! += (stiffness * beyond ** 3) / (6 * width)
    out[1]! += (sign * stiffness * beyond ** 2) / (2 * width)
    out[2]! += (stiffness * beyond) / width
    return
  }
  out[0]! += stiffness * (beyond ** 2 / 2 - (width * beyond) / 2 + width ** 2 / 6)
  out[1]! += sign * stiffness * (beyond - width / 2)
  out[2]! += stiffness
}
