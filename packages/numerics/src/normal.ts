// The standard normal distribution.

/**
 * Share of a standard normal distribution below z; error at most 7.5e-8. -Infinity gives 0, Infinity 1.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17.
 */
export function normalBelow(z: number): number {
  if (z < 0) return 1 - normalBelow(-z)
  if (z > farthest) return 1
  const t = 1 / (1 + 0.2316419 * z)
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
  const sum = coefficients.reduceRight((rest, one) => t * (one + rest), 0)
  return 1 - density * sum
}

const coefficients = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429]
/** Beyond this the share above is less than the error. */
const farthest = 8
