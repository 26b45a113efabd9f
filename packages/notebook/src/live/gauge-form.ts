// A measured round, yarn, hook and swatch as fields beside a gauge's text. The text stays what counts: the fields show
// what they can read of it, and set its lines. The measured round is asked for first: it brings sizes to a few per cent,
// where yarn and hook alone miss one piece in two by a tenth.

/// <reference lib="dom" />

import {
  hooks,
  readGaugeLine,
  readHeading,
  readHook,
  readYarnWeight,
  yarnWeights,
} from "@roundwright/stitches"
import { withOwnLine } from "../hand-lines.ts"
import { headingValue } from "../headings.ts"
import { make } from "./dom.ts"

/** Stitches a swatch is usually worked in. */
const swatchStitches = ["sc", "hdc", "dc", "tr"] as const

/** A swatch is measured over this width, the trade's own measure. */
const swatchCm = 10

export class GaugeForm {
  readonly root: HTMLElement
  readonly #across: HTMLInputElement
  readonly #after: HTMLInputElement
  readonly #yarn: HTMLSelectElement
  readonly #hook: HTMLSelectElement
  readonly #stitches: HTMLInputElement
  readonly #kind: HTMLSelectElement
  readonly #rows: HTMLInputElement

  /** @param id to name the fields by @param text the gauge as it stands @param set takes the changed text */
  constructor(id: string, text: () => string, set: (text: string) => void) {
    this.#across = count(`${id}-across`, "Measured across, cm", { max: "300", step: "0.1" })
    this.#after = count(`${id}-after`, "After which round", { step: "1" })
    this.#yarn = choice(
      `${id}-yarn`,
      yarnWeights.map((facts) => [yarnName(facts.weight), `${facts.weight} ${facts.name}`]),
    )
    this.#hook = choice(
      `${id}-hook`,
      hooks.map(({ mm, usLetter }) => [
        `${mm} mm`,
        usLetter ? `${mm} mm (${usLetter})` : `${mm} mm`,
      ]),
    )
    this.#kind = choice(
      `${id}-kind`,
      swatchStitches.map((kind) => [kind, kind]),
      false,
    )
    this.#stitches = count(`${id}-stitches`, "Stitches of the swatch")
    this.#rows = count(`${id}-rows`, "Rows of the swatch")
    this.#kind.setAttribute("aria-label", "Stitch of the swatch")
    this.root = make(
      "div",
      { class: "fields" },
      make(
        "fieldset",
        { class: "field swatch" },
        make("legend", {}, "Your piece, measured: the surest"),
        this.#across,
        make("span", {}, "cm across after round"),
        this.#after,
      ),
      field("Yarn weight", this.#yarn),
      field("Hook", this.#hook),
      make(
        "fieldset",
        { class: "field swatch" },
        make("legend", {}, `Your swatch, ${swatchCm} cm square`),
        this.#stitches,
        this.#kind,
        make("span", {}, "by"),
        this.#rows,
        make("span", {}, "rows"),
      ),
    )
    for (const part of [this.#across, this.#after])
      part.addEventListener("change", () => set(withOwnLine(text(), "Size", this.#size())))
    this.#yarn.addEventListener("change", () =>
      set(withOwnLine(text(), "Yarn", this.#yarnLine(headingValue(text(), "Yarn") ?? ""))),
    )
    this.#hook.addEventListener("change", () =>
      set(withOwnLine(text(), "Hook", this.#hook.value || null)),
    )
    for (const part of [this.#stitches, this.#kind, this.#rows])
      part.addEventListener("change", () => set(withOwnLine(text(), "Gauge", this.#swatch())))
  }

  /** Shows what can be read of the text. */
  show(text: string): void {
    const [piece] = readHeading("size", headingValue(text, "Size") ?? "", "US").pieces
    this.#across.value = piece === undefined ? "" : String(Math.round(piece.mm) / 10)
    this.#after.value = typeof piece?.round === "number" ? String(piece.round) : ""
    const weight = readYarnWeight(headingValue(text, "Yarn") ?? "")?.weight
    this.#yarn.value = weight === undefined ? "" : yarnName(weight)
    const mm = readHook(headingValue(text, "Hook") ?? "")
    this.#hook.value = hooks.some((hook) => hook.mm === mm) ? `${mm} mm` : ""
    const gauge = headingValue(text, "Gauge")
    const swatch = gauge === null ? undefined : readGaugeLine(gauge, "US").swatches[0]
    const per = (size: number | undefined) =>
      size === undefined ? "" : String(Math.round((100 * swatchCm) / size) / 10)
    this.#stitches.value = per(swatch?.widthMm)
    this.#rows.value = per(swatch?.heightMm)
    const kind = swatchStitches.find((one) => one === swatch?.kind.basic)
    if (kind) this.#kind.value = kind
  }

  /** Without a round it is the size of the finished piece. */
  #size(): string | null {
    const cm = Number(this.#across.value)
    if (!(cm > 0)) return null
    const round = Math.round(Number(this.#after.value))
    return round > 0 ? `${cm} cm after Rnd ${round}` : `${cm} cm`
  }

  /** Another weight leaves the yarn held in as many strands. @param before the line as it stands */
  #yarnLine(before: string): string | null {
    const yarn = this.#yarn.value
    const strands = readHeading("yarn", before, "US").strands?.value ?? 1
    if (yarn === "") return null
    return strands === 1 ? yarn : `${yarn}, ${strands} strands`
  }

  #swatch(): string | null {
    const stitches = Number(this.#stitches.value)
    const rows = Number(this.#rows.value)
    if (!(stitches > 0)) return null
    const tall = rows > 0 ? ` x ${rows} rows` : ""
    return `${stitches} ${this.#kind.value}${tall} = ${swatchCm} cm`
  }
}

/** A name by which a yarn of that weight is read again. */
export function yarnName(weight: number): string {
  const { name, alsoCalled } = yarnWeights[weight]!
  return [...alsoCalled, name].find((word) => readYarnWeight(word)?.weight === weight) ?? name
}

function field(label: string, input: HTMLElement): HTMLElement {
  return make("div", { class: "field" }, make("label", { for: input.id }, label), input)
}

/** @param options value and label of each */
function choice(
  id: string,
  options: readonly (readonly [value: string, label: string])[],
  mayBeOpen = true,
): HTMLSelectElement {
  const entries = mayBeOpen ? [["", "not said"] as const, ...options] : options
  return make(
    "select",
    { id },
    ...entries.map(([value, label]) => make("option", { value }, label)),
  )
}

function count(
  id: string,
  label: string,
  bounds: { readonly max?: string; readonly step?: string } = {},
): HTMLInputElement {
  const { max = "99", step = "0.5" } = bounds
  return make("input", {
    ...{ id, type: "number", min: "1", max, step, inputmode: "decimal" },
    "aria-label": label,
  })
}
