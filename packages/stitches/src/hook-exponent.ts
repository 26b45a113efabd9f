/**
 * Width goes with hook to this power on one yarn: between 0.53 (fitted within weights on published gauges) and 0.45
 * (row height in one experiment; see default-width.ts).
 */
export const hookExponent = 0.5
