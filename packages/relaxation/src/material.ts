// What the fabric is made of, as far as a net needs to know: stiffness, bending, weight, give. No measured
// stiffness of crochet was found in print; the values are estimates of the right size. Shapes depend on their
// ratios, and most of all on lengths.

/** Stiffness in N/mm (force per unit width for unit strain), bending in N mm, weight in N/mm2. */
export interface Material {
  /** Force per width and strain, along tops and along posts. */
  readonly stiffness: number
  /** Stiffness of the fabric in shear (posts leaning), as a share of its stiffness along tops and posts. */
  readonly leanShare: number
  /** What a slack chain resists with, as a share of its stiffness when taut. */
  readonly slackShare: number
  /** Strain that the yarn takes up almost for free, either way. */
  readonly give: number
  /** Stiffness inside the give, as a share of the full one. */
  readonly giveShare: number
  /** Moment per width and curvature of the solid fabric. */
  readonly bending: number
  /** Bending of a chain against a strip of fabric as wide as the chain is long. */
  readonly chainBendingShare: number
  /** Weight of the solid fabric per area. */
  readonly weight: number
}

/**
 * 500 N/m: a strip 10 cm wide that carries 1 kg stretches by a fifth (estimate). A tenth of that was tried first:
 * such a strip would double its length, and a disc with a third too many stitches pressed itself flat instead
 * of ruffling.
 */
export const usualStiffness = 0.5
/** Shear over tension: 0.38 for an even sheet, less for open cloth (estimate). */
export const usualLeanShare = 0.3
/** A string gives way when pushed; something must be left so that its nodes have a place. */
export const usualSlackShare = 0.05
/**
 * Half of the 6 to 8 % that makers' flat pieces differ from their even count by (bands of the growth
 * ledger): a misfit is shared between tops that close up and posts that stretch, so each takes half.
 */
export const usualGive = 0.035
/** Small against 1, large enough that the shape inside the give is still determined. */
export const usualGiveShare = 0.05
/** 5e-4 N m: a strip of worsted fabric held level hangs down within about 4 cm (estimate; cube root of bending over weight). */
export const usualBending = 0.5
/** A chain is a cord about half as wide and thick as the fabric's rows (estimate). */
export const usualChainBendingShare = 0.2
/** Middle of 0.76 to 0.94 kg/m2, solid blankets weighed and measured, times 9.81 m/s2. */
export const usualWeight = 0.85e-6 * 9.81

export const usualMaterial: Material = {
  stiffness: usualStiffness,
  leanShare: usualLeanShare,
  slackShare: usualSlackShare,
  give: usualGive,
  giveShare: usualGiveShare,
  bending: usualBending,
  chainBendingShare: usualChainBendingShare,
  weight: usualWeight,
}

/** No weight, no give and hardly any bending: the shape that lengths alone ask for. */
export const idealMaterial: Material = {
  ...usualMaterial,
  give: 0,
  bending: 1e-4 * usualBending,
  weight: 0,
}

/** Width of one sc in mm assumed where the gauge knows none: worsted yarn, so that weight means something. */
export const assumedScWidthMm = 5.8
