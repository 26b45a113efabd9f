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
 * 150 N/m beyond the give: loops first turn and slide over one another, and take load only when they lie along it, a law
 * shaped like a J, as of every knitted and crocheted cloth. With 500 N/m from 3.5 % on, as taken first, pieces that are known to lie flat rose by centimetres.
 */
export const usualStiffness = 0.15
/** Shear over tension: 0.38 for an even sheet, less for open cloth (estimate). */
export const usualLeanShare = 0.3
/** A string gives way when pushed; something must be left so that its nodes have a place. */
export const usualSlackShare = 0.01
/**
 * Half of the 12 to 13 % that makers' flat pieces differ from flat by (bands of the growth ledger): a misfit is shared
 * between tops that close up and posts that stretch, so each takes half.
 */
export const usualGive = 0.06
/** Small against 1, large enough that the shape inside the give is still determined. */
export const usualGiveShare = 0.05
/** 1e-4 N m: a strip of worsted fabric held level hangs down within about 2 cm (estimate; cube root of bending over weight). */
export const usualBending = 0.1
/**
 * A worked chain has no straight rest shape: its loops are hinges, and it lies as it is laid. What is left keeps a chain from
 * kinking. At ten times that chains hold flat wheels up as struts would.
 */
export const usualChainBendingShare = 0.02
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
