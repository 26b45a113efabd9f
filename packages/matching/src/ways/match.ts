// Matching a piece to a size: what it measures now, what brings it to the size, ranked, and whether a hook can be to blame.

import { formatPercent, inTerms, verdictWord } from "@roundwright/assessment"
import { writeRounds } from "@roundwright/instructions"
import { type Motif, stitchesAndChains } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import {
  type GaugeInput,
  hookExponent,
  hookFactor,
  hooks,
  nearestHook,
} from "@roundwright/stitches"
import { type LengthUnit, lengthWords } from "../lengths.ts"
import { alreadyThere } from "./already-there.ts"
import { blockingLimit, blockingText } from "./blocking.ts"
import { type Candidate, candidatesOf, wholeWork } from "./candidates.ts"
import { testCauses } from "./causes.ts"
import { type HookAdvice, hookAdvice, meantHook } from "./hook-advice.ts"
import { factsBeside } from "./match-facts.ts"
import { answerOf } from "./match-words.ts"
import { alongMeant, type PieceNow, sizesOfPiece } from "./piece.ts"
import { byRank, furthestTold, isOneOfFew, isWorthNaming } from "./rank.ts"
import type { Cause, KnownFacts, MatchResult, TestedCause, Way, WayKind } from "./result.ts"
import { type Along, alongOf, type Sized, scaledSizes } from "./sizes.ts"
import type { Target } from "./target.ts"
import { type OwnHookLaw, ownHookLaw } from "./tried-hooks.ts"

/**
 * A hook this many times as thick makes another fabric: 4 mm where 5.5 is asked for. Beyond it, it is not the hook
 * (common practice: two sizes either way; no source).
 */
const furthestHook = 1.4
/** Nodes laid out in all: about a second; what is left out are the changes that a rule of thumb puts furthest off. */
const mostNodes = 4_000
const mostWays = 8
/** Of each kind so many are laid out, those nearest by a rule of thumb: about as many as are told. */
const mostMeasured: Readonly<Partial<Record<WayKind, number>>> = {
  "last-round": 4,
  "round-added": 4,
  "round-left-out": 2,
  start: 2,
}
/** The rule of thumb is off by no more than this share of the size. */
const ruleOff = 0.06
/** Added rounds written out; those that follow grow in the same manner. */
const mostWritten = 3
/** A piece so near its size is left as it is, and nothing is laid out. */
const justThere = 0.005

/** @param facts what is known beside the sizes */
export function matchPiece(piece: PieceNow, target: Target, facts: KnownFacts = {}): MatchResult {
  const { gauge, now, check } = piece
  const along = alongMeant(target, now)
  const size = alongOf(now, along)
  const wanted = target.mm / size
  const terms = check.reading.terms
  const measured = measuredWays(piece, target.mm, along)
  const hook = hookWays(piece, wanted, along)
  const others = [
    ...(Math.abs(wanted - 1) <= alreadyThere ? [wayAsItIs(now, along)] : []),
    ...blockedWays(piece, wanted, target.mm),
  ]
  const all = [...others, ...measured, ...hook.ways]
  const withOff = all.map((one) => ({ ...one, off: one.sizeMm / target.mm - 1 }))
  const worth = withOff.filter((one) => isWorthNaming(one, wanted - 1))
  // Where none meets the size the nearest is told, with how far it stays off.
  const near = nearestOf(withOff, 1 / wanted - 1)
  const ranked = (worth.length > 0 ? worth : near)
    .sort(byRank)
    .filter(isOneOfFew())
    .slice(0, mostWays)
  const ways = ranked.map((one) => published(one, piece, along, target.unit))
  const own = ownLaw(gauge.input.hookMm, size, facts, target.mm)
  // Her own trials go before any published law, and what she knows of yarn, pattern and fabric before both.
  const stated = blameOf(wanted, Number.POSITIVE_INFINITY, facts)
  const meant = meantHook(facts, gauge.input.hookMm, wanted)
  const blame = meant?.explains
    ? null
    : own === null || stated !== null
      ? blameOf(wanted, hook.reach, facts)
      : own.wantedMm === null && Math.abs(wanted - 1) > alreadyThere
        ? "to be tested"
        : null
  const tested = blame === "to be tested"
  const causes = tested ? fewCauses(testCauses(piece, target.mm, along, target.unit)) : []
  const cause: Cause | null = tested ? (causes[0]?.fits ? causes[0].cause : "unknown") : blame
  const { sideMm, acrossMm, diagonalMm, verdict, bowMm, stitchesPerSide } = now
  const result = {
    target: { mm: target.mm, along, unit: target.unit ?? ("cm" as const) },
    now: { sideMm, acrossMm, diagonalMm, verdict, bowMm, stitchesPerSide },
    ways,
    cause,
    causes,
    factor: wanted,
    perSideMm: (target.mm - size) / 2,
    hookAdvice: cause === null ? adviceFor(wanted, facts, gauge.input) : null,
    hookWantedMm: hook.wantedMm,
    notes: [
      ...(piece.standIn ? [piece.standIn] : []),
      ...factsBeside(piece, target, wanted),
      ...check.gaugeNotes,
      ...gauge.notes.map((note) => inTerms(note, terms)),
    ],
  }
  return {
    ...result,
    text: `${meant ? `${meant.text} ` : ""}${withTrials(answerOf(result, size, facts, piece.standIn !== undefined), own, cause)}`,
  }
}

/** Causes this far from the size explain nothing and are not told; a few are, to show what was tested. */
const farCause = 0.3
const mostCauses = 6

function fewCauses(causes: readonly TestedCause[]): TestedCause[] {
  const near = causes.filter(({ off }) => off <= farCause)
  return (near.length > 0 ? near : causes).slice(0, mostCauses)
}

/**
 * The way that takes most off what is missing, where it takes off half at least.
 * @param missing size now over the one wished for, less one, as `off` is
 */
function nearestOf<One extends { readonly off: number }>(
  ways: readonly One[],
  missing: number,
): One[] {
  const [best] = [...ways].sort((a, b) => Math.abs(a.off) - Math.abs(b.off))
  return best && Math.abs(best.off) <= Math.abs(missing) / 2 ? [best] : []
}

/** The law of the maker's own trials, the piece itself among them where its hook is known. */
function ownLaw(
  hookMm: number | undefined,
  sizeMm: number,
  { tried }: KnownFacts,
  targetMm: number,
): OwnHookLaw | null {
  if (!tried || tried.length === 0) return null
  const own = hookMm === undefined ? [] : [{ hookMm, mm: sizeMm }]
  return ownHookLaw([...own, ...tried], targetMm)
}

function withTrials(text: string, own: OwnHookLaw | null, cause: Cause | null): string {
  if (own === null) return text
  return cause !== null && own.wantedMm !== null
    ? `${text} ${own.text} That would cure the size and not the cause.`
    : `${text} ${own.text}`
}

/** What is to blame: null for the hook or the hand. */
function blameOf(
  wanted: number,
  reach: number,
  { changed, fabric }: KnownFacts,
): Cause | "to be tested" | null {
  if (Math.abs(wanted - 1) <= alreadyThere) return null
  if (changed === "hook") return null
  if (changed === "yarn") return "yarn"
  if (changed === "pattern") return "the pattern"
  if (Math.abs(Math.log(wanted)) > reach) return "to be tested"
  // A fabric that is firm already takes no thinner hook, a loose one no thicker.
  const wrongWay = (fabric === "tight" && wanted < 1) || (fabric === "loose" && wanted > 1)
  return wrongWay ? "to be tested" : null
}

/** Who must work tight to reach the size takes a thinner hook and works as usual. */
function adviceFor(wanted: number, { fabric }: KnownFacts, input: GaugeInput): HookAdvice | null {
  if (Math.abs(wanted - 1) > alreadyThere || fabric === undefined) return hookAdvice(wanted, input)
  return hookAdvice(fabric === "tight" ? 0.93 : 1.07, input)
}

interface Unranked {
  readonly kind: WayKind
  readonly change: string
  readonly sizeMm: number
  readonly sized: Sized
  readonly work: number
  /** Yarn over that of the piece now. */
  readonly yarn: number
  readonly motif: Motif | null
  readonly from: number
}

/** Changed pieces laid out, those first whose rule of thumb comes nearest; none that will not be told. */
function measuredWays(piece: PieceNow, targetMm: number, along: Along): Unranked[] {
  const { motif, gauge, now, check } = piece
  const wanted = targetMm / alongOf(now, along)
  if (Math.abs(wanted - 1) <= justThere) return []
  const acrossWanted = wanted * now.acrossMm
  const missing = acrossWanted - now.acrossMm
  const candidates = candidatesOf(motif, gauge, now.acrossMm, missing, check.reading.terms)
    .map((one) => ({ one, off: Math.abs(one.estimateMm / acrossWanted - 1) }))
    .filter(({ off }) => off <= furthestTold(wanted - 1) + ruleOff)
    .sort((a, b) => a.off - b.off)
  const measured: Unranked[] = []
  const many = new Map<WayKind, number>()
  let nodes = 0
  for (const { one } of candidates) {
    const before = many.get(one.kind) ?? 0
    if (before >= mostMeasured[one.kind]!) continue
    nodes += stitchesAndChains(one.motif)
    if (nodes > mostNodes && measured.length > 3) break
    const sized = unlessRefused(
      () => sizesOfPiece(piece, one.motif),
      () => null,
    )
    if (!sized) continue
    many.set(one.kind, before + 1)
    measured.push(unranked(one, sized, now, along))
  }
  return measured
}

function unranked(one: Candidate, sized: Sized, now: Sized, along: Along): Unranked {
  const { kind, change, work, motif, from } = one
  const yarn = sized.yarnSc / now.yarnSc
  return { kind, change, work, motif, from, sized, yarn, sizeMm: alongOf(sized, along) }
}

function wayAsItIs(now: Sized, along: Along): Unranked {
  return {
    kind: "leave",
    change: "Leave it as it is",
    sizeMm: alongOf(now, along),
    sized: now,
    work: 0,
    yarn: 1,
    motif: null,
    from: 0,
  }
}

function blockedWays({ motif, now }: PieceNow, wanted: number, targetMm: number): Unranked[] {
  const stretch = wanted - 1
  if (stretch <= alreadyThere || stretch > blockingLimit(motif)) return []
  return [
    {
      kind: "blocked",
      change: blockingText(stretch),
      sizeMm: targetMm,
      sized: scaledSizes(now, wanted),
      work: 0.5,
      yarn: 1,
      motif: null,
      from: 0,
    },
  ]
}

/** Another hook on the same yarn: the two sizes sold that come nearest, and how far a hook reaches (as a logarithm of size). */
function hookWays({ gauge, now }: PieceNow, wanted: number, along: Along) {
  const { hookMm } = gauge.input
  const exponent = hookExponent(gauge.input)
  const reach = exponent * Math.log(furthestHook)
  const factor = wanted ** (1 / exponent)
  if (hookMm === undefined)
    return { ways: unknownHook(wanted, factor, now, along, reach), reach, wantedMm: null }
  const wantedMm = hookMm * factor
  const sold = [...hooks]
    .filter(({ mm }) => mm !== hookMm && mm / hookMm <= furthestHook && hookMm / mm <= furthestHook)
    .sort((a, b) => Math.abs(a.mm - wantedMm) - Math.abs(b.mm - wantedMm))
    .slice(0, 2)
  const ways = sold.map(({ mm }): Unranked => {
    const grows = hookFactor(gauge.input, hookMm, mm)
    const sized = scaledSizes(now, grows)
    return {
      kind: "hook",
      change: `Make it anew with a ${mm} mm hook in place of ${hookMm} mm, on the same yarn`,
      sizeMm: alongOf(sized, along),
      sized,
      work: wholeWork,
      yarn: grows,
      motif: null,
      from: 0,
    }
  })
  return { ways, reach, wantedMm }
}

/** A hook size is half a millimetre; of an unknown hook only their number can be told, from a 4 mm one. */
const usualHookMm = 4

function unknownHook(
  wanted: number,
  factor: number,
  now: Sized,
  along: Along,
  reach: number,
): Unranked[] {
  if (Math.abs(Math.log(wanted)) > reach || Math.abs(wanted - 1) <= alreadyThere) return []
  const to = nearestHook(usualHookMm * factor).mm
  const way = factor > 1 ? "thicker" : "thinner"
  const sized = scaledSizes(now, wanted)
  return [
    {
      kind: "hook",
      change: `Make it anew with a hook ${formatPercent(Math.abs(factor - 1))} ${way} on the same yarn (${to} mm where it was ${usualHookMm})`,
      sizeMm: alongOf(sized, along),
      sized,
      work: wholeWork,
      yarn: wanted,
      motif: null,
      from: 0,
    },
  ]
}

function published(
  one: Unranked & { off: number },
  piece: PieceNow,
  along: Along,
  unit?: LengthUnit,
): Way {
  const { sized, kind, change, sizeMm, yarn, off } = one
  const { verdict, bowMm, stitchesPerSide } = sized
  const yarnChange = yarn - 1
  const facts = [
    `${lengthWords(sizeMm, unit)} ${along === "side" ? "along the side" : along === "diagonal" ? "corner to corner" : "across"}`,
    Math.abs(off) < 0.005
      ? "just the size"
      : `${formatPercent(Math.abs(off))} too ${off > 0 ? "large" : "small"}`,
    verdictWord(verdict),
    ...(bowMm === null || Math.abs(bowMm) < 0.02 * (sized.sideMm ?? 0)
      ? []
      : [`sides bow ${bowMm > 0 ? "out" : "in"} by ${lengthWords(Math.abs(bowMm), unit)}`]),
    ...(stitchesPerSide === null ? [] : [`${stitchesPerSide} stitches a side`]),
    ...(Math.abs(yarnChange) < 0.01
      ? []
      : [`${formatPercent(Math.abs(yarnChange))} ${yarnChange > 0 ? "more" : "less"} yarn`]),
  ]
  const rounds = one.motif && kind !== "start" ? roundsOf(one.motif, one.from, piece) : []
  return {
    kind,
    change,
    sizeMm,
    verdict,
    bowMm,
    stitchesPerSide,
    yarnChange,
    off,
    rounds,
    text: `${change}: ${facts.join(", ")}.`,
  }
}

function roundsOf(motif: Motif, from: number, { check }: PieceNow): string[] {
  if (from >= motif.rounds.length) return []
  return unlessRefused(
    () => {
      const written = [...writeRounds(motif, from, check.reading.terms)]
      if (written.length <= mostWritten) return written
      const rest = written.length - mostWritten
      return [...written.slice(0, mostWritten), `... and ${rest} more in the same manner.`]
    },
    () => [],
  )
}
