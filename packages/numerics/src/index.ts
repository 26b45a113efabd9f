export * from "./conjugate-gradients.ts"
export { type EliminationPlan, type Front, planElimination } from "./elimination.ts"
export * from "./error.ts"
export * from "./factorisation.ts"
export * from "./lbfgs.ts"
export * from "./least-squares.ts"
export {
  type DifferentiableFunction,
  largestComponent,
  type MinimiserEnd,
  type Minimum,
  type TwiceDifferentiableFunction,
} from "./minimise.ts"
export * from "./nelder-mead.ts"
export * from "./newton.ts"
export * from "./normal.ts"
export * from "./ordering.ts"
export * from "./positive-definite.ts"
export * from "./random.ts"
export * from "./roots.ts"
export * from "./sparse.ts"
