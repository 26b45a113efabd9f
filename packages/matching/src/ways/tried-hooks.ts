// What a maker's own trials with other hooks say: two hooks and their sizes give her own law of the hook, and that goes before
// any published one.

import { RoundwrightError } from "@roundwright/numerics"
import { nearestHook, readHeading } from "@roundwright/stitches"
import { lengthAt } from "../lengths.ts"

export interface TriedHook {
  readonly hookMm: number
  readonly mm: number
}

export interface OwnHookLaw {
  /** Power of the hook that the size goes with. */
  readonly exponent: number
  /** Hook that would give the size, mm; null where no hook sold does. */
  readonly wantedMm: number | null
  readonly text: string
}

/** "3.5 mm = 6.1 in; hook H = 5 in". @throws RoundwrightError `bad-trial` */
export function readTriedHooks(text: string): TriedHook[] {
  return text
    .split(/[;\n]/)
    .filter((part) => part.trim() !== "")
    .map((part) => {
      const [hook = "", size = ""] = part.split(/\s{0,9}(?:=|:|->)\s{0,9}/)
      const hookMm = readHeading("hook", hook.replace(/\bhook\b/i, "").trim(), "US").hookMm?.value
      const mm = lengthAt(size)?.mm
      if (hookMm === undefined || mm === undefined || !(mm > 0))
        throw new RoundwrightError(
          "bad-trial",
          `"${part.trim().slice(0, 40)}" is no hook with the size it gave.`,
          {
            hint: "Write trials such as: 3.5 mm = 6.1 in; 4 mm = 6.5 in.",
          },
        )
      return { hookMm, mm }
    })
}

/** A hook that moves the size by less than this power, or the wrong way, is not what moves it. */
const leastPower = 0.15
/** As in matching: beyond this many times the hook it is another fabric. */
const furthest = 1.4

/** Null where fewer than two different hooks were tried. */
export function ownHookLaw(tries: readonly TriedHook[], targetMm: number): OwnHookLaw | null {
  const sorted = [...tries].sort((a, b) => a.hookMm - b.hookMm)
  const [least, most] = [sorted[0], sorted.at(-1)]
  if (!least || !most || least.hookMm === most.hookMm) return null
  const exact = tries.find(({ mm }) => Math.abs(mm / targetMm - 1) <= 0.01)
  const exponent = Math.log(most.mm / least.mm) / Math.log(most.hookMm / least.hookMm)
  if (exact)
    return {
      exponent,
      wantedMm: exact.hookMm,
      text: `By your own trials ${exact.hookMm} mm gives the size: take it.`,
    }
  const share = Math.round(100 * Math.abs((most.hookMm / least.hookMm) ** exponent - 1))
  const said = `By your own trials ${least.hookMm} mm to ${most.hookMm} mm moves the size by ${share} %`
  if (exponent < leastPower)
    return {
      exponent,
      wantedMm: null,
      text: `${said}: the hook hardly moves it, so it is not the hook.`,
    }
  const from = tries.reduce((best, one) =>
    Math.abs(Math.log(one.mm / targetMm)) < Math.abs(Math.log(best.mm / targetMm)) ? one : best,
  )
  const wanted = from.hookMm * (targetMm / from.mm) ** (1 / exponent)
  const ratio = Math.max(wanted / from.hookMm, from.hookMm / wanted)
  if (ratio > furthest)
    return {
      exponent,
      wantedMm: null,
      text: `${said}, so the size would take a hook of about ${wanted.toFixed(1)} mm: beyond any for this yarn, so it is not the hook.`,
    }
  const { mm } = nearestHook(wanted)
  return { exponent, wantedMm: mm, text: `${said}, so ${mm} mm comes nearest.` }
}
