// The motif as an elastic net, as plain data: nodes, and what holds them together. A point is a node or a
// weighted mean of a few (a place between two chains). Lengths in mm; energies in N mm.

/** Weights sum to 1. */
export interface Point {
  readonly nodes: readonly number[]
  readonly weights: readonly number[]
}

export type NodeKind = "centre" | "top" | "chain"

export interface NetNode {
  readonly kind: NodeKind
  /** Index of the round (from 0), -1 for the centre. */
  readonly round: number
  /** Index of the element in the round; for the centre, the place in the ring. */
  readonly element: number
  /** Length of edge that belongs to the node, mm. */
  readonly widthMm: number
  /** Area of fabric whose weight it carries, mm2. */
  readonly areaMm2: number
  /** Set where it stands free of the ground: no part of the round's edge. */
  readonly free?: true
  /** How far a picot on this top stands out from the edge, mm; absent without one. */
  readonly picotMm?: number
}

export type SpringRole = "top" | "post" | "chain"

/** Pulls two points towards their rest distance. */
export interface Spring {
  readonly role: SpringRole
  readonly from: Point
  readonly to: Point
  readonly restMm: number
  /** Area of fabric the spring stands for: energy = stiffness x area x half the strain squared. */
  readonly areaMm2: number
  /** Of a post, how far its top lies to one side of its base at ease, mm, positive counterclockwise; none when absent. */
  readonly leanMm?: number
  /** Of a string that ends in a stitch, how much of it is chain and can hang slack: the half of the stitch cannot. All when absent. */
  readonly slackMm?: number
  readonly round: number
  readonly element: number
}

/** Keeps a post from leaning: holds the difference of the distances from its top to both sides of its base. */
export interface Lean {
  readonly top: Point
  readonly left: Point
  readonly right: Point
  readonly restMm: number
  /** Energy = shear stiffness x areaShare x half the square of the difference. */
  readonly areaShare: number
  readonly round: number
  readonly element: number
}

/**
 * Keeps the panel between two neighbouring posts from being sheared: holds the difference of its diagonals, from the first
 * point to the second and from the third to the fourth: top, next base, next top, base.
 */
export interface Panel {
  readonly points: readonly [Point, Point, Point, Point]
  readonly restMm: number
  /** As for a lean. */
  readonly areaShare: number
}

/**
 * Resists folding along the line from the first point to the second, with the third and fourth on either side: the
 * sine of the fold is `scale` times the determinant of the three vectors from the first point.
 */
export interface Hinge {
  readonly points: readonly [Point, Point, Point, Point]
  readonly scale: number
  /** Product of the areas on both sides at ease (each length x width), mm4. */
  readonly areasMm4: number
  /** Energy = bending x share x half the square of 2 tan(fold / 2). */
  readonly share: number
}

/** Bending of a chain: energy = bending x share x half the square of the second difference. */
export interface Rod {
  readonly nodes: readonly [number, number, number]
  readonly share: number
}

/** The edge of one round: its nodes counterclockwise as first laid out. */
export interface NetEdge {
  readonly nodes: readonly number[]
  readonly closed: boolean
  /** Elements of the round in the same order as the nodes. */
  readonly elements: readonly number[]
  /** Sum of the rest lengths with every chain drawn out, mm. */
  readonly lengthMm: number
  /** How much shorter its scallops can stand than their edge, mm; absent without any. */
  readonly scallopMm?: number
}

export interface Net {
  readonly nodes: readonly NetNode[]
  readonly springs: readonly Spring[]
  readonly leans: readonly Lean[]
  readonly panels: readonly Panel[]
  readonly hinges: readonly Hinge[]
  readonly rods: readonly Rod[]
  /** One per round, from the centre out. */
  readonly edges: readonly NetEdge[]
  /** Nodes of the centre: one, or those of a ring. */
  readonly centre: readonly number[]
  /** First placing in the plane: x, y of every node, rounds as circles and polygons. */
  readonly start: Float64Array
  /** 1 when lengths are mm; else mm in one unit of length (an sc width), assumed. */
  readonly mmPerUnit: number
}

export function nodePoint(node: number): Point {
  return { nodes: [node], weights: [1] }
}

/** (1 - share) of one point and share of the other. */
export function blend(a: Point, b: Point, share: number): Point {
  if (share <= 0) return a
  if (share >= 1) return b
  const weights = new Map<number, number>()
  a.nodes.forEach((node, k) => {
    weights.set(node, (weights.get(node) ?? 0) + (1 - share) * a.weights[k]!)
  })
  b.nodes.forEach((node, k) => {
    weights.set(node, (weights.get(node) ?? 0) + share * b.weights[k]!)
  })
  return { nodes: [...weights.keys()], weights: [...weights.values()] }
}

export function samePoint(a: Point, b: Point): boolean {
  return (
    a.nodes.length === b.nodes.length &&
    a.nodes.every((node, k) => node === b.nodes[k] && a.weights[k] === b.weights[k])
  )
}
