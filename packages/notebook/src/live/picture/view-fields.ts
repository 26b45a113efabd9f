// Where things lie in the picture: handles and number fields for the centre, four corners and a box, how the view is
// taken, and the one length that is known.

/// <reference lib="dom" />

import { readLines } from "@roundwright/picture"
import { button, make } from "../dom.ts"
import { centreIn, setLine } from "./edit-lines.ts"
import { type Handle, Handles } from "./handles.ts"

export interface PlaceActions {
  text(): string
  set(text: string): void
  speak(text: string): void
}

interface Room {
  readonly width: number
  readonly height: number
}

const views = [
  ["", "found by the piece itself"],
  ["as it is", "as it is: taken from right above"],
  ["by its round edge", "by its round edge: the piece is round"],
] as const

/** Adds the handles to the figure and the fields below it. */
export function placesOver(
  figure: HTMLElement,
  address: string,
  room: Room,
  lines: string,
  actions: PlaceActions,
): void {
  const read = readLines(lines)
  const parts: HTMLElement[] = []
  const put = (name: "Centre" | "Corners" | "Box" | "Tap", value: string | null) =>
    actions.set(setLine(actions.text(), name, value))
  const group = (
    title: string,
    places: readonly Handle[],
    moved: () => void,
    drop: (() => void) | null,
  ) => {
    const handles = new Handles(figure, address, room.width, room.height, {
      moved,
      speak: actions.speak,
    })
    const fields = places.map((place) => handles.add(place))
    const parted = make("fieldset", { class: "places" }, make("legend", {}, title), ...fields)
    if (drop) parted.append(button(`Leave out: ${title.toLowerCase()}`, drop))
    parts.push(parted)
  }
  const centre = centreIn(lines)
  if (centre) {
    const place: Handle = { name: "Centre", x: centre[0], y: centre[1] }
    group(
      "Centre",
      [place],
      () => put("Centre", whole([place])),
      read.centre ? () => put("Centre", null) : null,
    )
  }
  const around = edgeOf(figure, room)
  if (read.corners) {
    const places = pairs(read.corners).map(([x, y], i) => ({ name: `Corner ${i + 1}`, x, y }))
    group(
      "Four corners",
      places,
      () => put("Corners", whole(places)),
      () => put("Corners", null),
    )
  } else {
    const [l, t, r, b] = around
    const corners = [l, t, r, t, r, b, l, b]
    parts.push(
      button("Set four corners of something square", () =>
        put("Corners", whole(pairs(corners).map(([x, y]) => ({ name: "", x, y })))),
      ),
    )
  }
  if (read.box) {
    const [x, y, width, height] = read.box as [number, number, number, number]
    const places: Handle[] = [
      { name: "Box, upper left", x, y },
      { name: "Box, lower right", x: x + width, y: y + height },
    ]
    group(
      "Box round one motif",
      places,
      () => put("Box", boxOf(places)),
      () => put("Box", null),
    )
  } else
    parts.push(
      button("Set a box round one motif", () => {
        const [l, t, r, b] = around
        put(
          "Box",
          boxOf([
            { name: "", x: l, y: t },
            { name: "", x: r, y: b },
          ]),
        )
      }),
    )
  if (read.tap) {
    const place: Handle = { name: "Tap on one motif", x: read.tap[0]!, y: read.tap[1]! }
    group(
      "One motif of several",
      [place],
      () => put("Tap", whole([place])),
      () => put("Tap", null),
    )
  } else if (!read.box)
    parts.push(
      button("Tap one motif of several", () => {
        const [l, t, r, b] = around
        put("Tap", whole([{ name: "", x: (l + r) / 2, y: (t + b) / 2 }]))
      }),
    )
  const view = make("select", {})
  view.append(...views.map(([value, words]) => make("option", { value }, words)))
  view.value =
    read.view === "round edge" ? "by its round edge" : read.view === null ? "" : read.view
  view.addEventListener("change", () =>
    actions.set(setLine(actions.text(), "View", view.value === "" ? null : view.value)),
  )
  const known = make("input", { type: "text", placeholder: "side 15.2 cm, across 9 cm ..." })
  known.value = read.known ?? ""
  known.addEventListener("change", () =>
    actions.set(setLine(actions.text(), "Known length", known.value.trim() || null)),
  )
  parts.push(
    make("label", { class: "field" }, "The view", view),
    make("label", { class: "field" }, "Known length", known),
  )
  figure.after(make("div", { class: "fields places-all" }, ...parts))
}

/** Left, top, right and bottom of the piece as its rings are drawn. */
function edgeOf(figure: HTMLElement, { width, height }: Room): [number, number, number, number] {
  const points = [...figure.querySelectorAll("polygon.ring-edge")].flatMap((edge) =>
    pairs((edge.getAttribute("points") ?? "").split(/[\s,]+/).map(Number)),
  )
  if (points.length === 0) return [0.1 * width, 0.1 * height, 0.9 * width, 0.9 * height]
  const xs = points.map(([x]) => x)
  const ys = points.map(([, y]) => y)
  return [
    Math.max(0, Math.min(...xs)),
    Math.max(0, Math.min(...ys)),
    Math.min(width, Math.max(...xs)),
    Math.min(height, Math.max(...ys)),
  ]
}

function pairs(numbers: readonly number[]): [number, number][] {
  return numbers.flatMap((x, i): [number, number][] =>
    i % 2 === 0 && i + 1 < numbers.length ? [[x, numbers[i + 1]!]] : [],
  )
}

function whole(places: readonly Handle[]): string {
  return places.map(({ x, y }) => `${Math.round(x)} ${Math.round(y)}`).join(", ")
}

function boxOf([a, b]: readonly Handle[]): string {
  const [left, top] = [Math.min(a!.x, b!.x), Math.min(a!.y, b!.y)].map(Math.round)
  const [right, bottom] = [Math.max(a!.x, b!.x), Math.max(a!.y, b!.y)].map(Math.round)
  return `${left} ${top} ${right! - left!} ${bottom! - top!}`
}
