// Bounds on the work a text can ask for, so that no input hangs or fills the memory.

/** Longest text read, in UTF-16 units: about 2,000 printed pages, far above any pattern. */
export const longestText = 2_000_000

/** Most elements made in one round: a blanket border has a few thousand. */
export const mostElementsPerRound = 10_000

/** Most single chains in one run or ring: foundation chains of blankets stay under 500. */
export const mostChains = 5_000

/** Most steps worked in one reading of a round, repeats written out; bounds repeats that make nothing. */
export const mostStepsPerRound = 30_000

/** Most steps worked in a whole text, over all rounds and all readings tried. */
export const mostStepsPerText = 3_000_000

/** Most rounds of one text: a pattern of a thousand rounds is already a rug. */
export const mostRounds = 5_000

/** Deepest nesting of brackets; patterns use three. */
export const deepestNesting = 24

/** Most tokens in one round's text; a long printed round has two hundred. */
export const mostTokensPerRound = 6_000

/** Most other readings of one round tried when its counts do not agree. */
export const mostReadingsTried = 10

/** Most problems listed; one more tells how many were left out. */
export const mostProblems = 500

/** Most single chains on the edge of one round, over all its runs. */
export const mostChainsPerRound = 30_000

/** A reading of a round with more steps than this is large: few others of it are tried. */
export const largeReading = 4_000

/** Other readings tried of a large round. */
export const mostReadingsOfLarge = 3

/** Largest number a round may name: no count, repeat or chain of a motif comes near it. */
export const largestNumber = 100_000

/** Chains of the smallest loop; a space of fewer is passed over as a stitch is. */
export const fewestOfLoop = 3
