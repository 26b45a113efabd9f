export * from "./change.ts"
export { foldLedger, slackFeetChains } from "./fold.ts"
export { type Judgement, judgePiece } from "./judge.ts"
export * from "./ledger.ts"
export { type Hands, handsOf, oddsOf, verdictInHands } from "./odds.ts"
export * from "./outline.ts"
export * from "./result.ts"
export * from "./rhythm.ts"
export {
  type PieceSummary,
  type RoundSummary,
  type StandingPart,
  summarisePiece,
} from "./summary.ts"
export * from "./told.ts"
export * from "./verdict.ts"
