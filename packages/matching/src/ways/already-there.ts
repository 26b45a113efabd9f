// When a piece has its size: within this the pieces join as they are. A stitch's stretch, and no ruler tells more on a soft
// edge (12 in: 1/4 in).

export const alreadyThere = 0.02
