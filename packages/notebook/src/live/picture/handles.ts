// Handles over the picture: the centre, four corners, a box. Each is a button that is dragged, or moved by the arrow keys
// (1 pixel, with Shift 10), with number fields beside it; a loupe shows what lies under it.

/// <reference lib="dom" />

import { make } from "../dom.ts"
import { pictureWords } from "./words.ts"

export interface Handle {
  readonly name: string
  x: number
  y: number
}

export interface HandleActions {
  /** A handle was put down. */
  moved(): void
  speak(text: string): void
}

/** Side of the loupe, CSS pixels, and how much it magnifies. */
const [loupeSide, magnified] = [112, 3] as const
/** Keys struck in one go are one move. */
const keyRestMs = 500

export class Handles {
  readonly #layer = make("div", { class: "handles" })
  readonly #loupe = make("canvas", { class: "loupe", hidden: true, "aria-hidden": "true" })
  readonly #image = new Image()
  #rest: ReturnType<typeof setTimeout> | undefined

  /** @param figure that holds the picture, of that size in its own pixels */
  constructor(
    figure: HTMLElement,
    address: string,
    private readonly width: number,
    private readonly height: number,
    private readonly actions: HandleActions,
  ) {
    this.#image.src = address
    this.#loupe.width = loupeSide
    this.#loupe.height = loupeSide
    this.#layer.append(this.#loupe)
    figure.append(this.#layer)
  }

  /** Puts a handle over the picture. @returns its number fields */
  add(handle: Handle): HTMLElement {
    const grip = make("button", {
      type: "button",
      class: "handle",
      "aria-label": `${handle.name}: arrow keys move it, with Shift by 10 pixels`,
    })
    const fields = (["x", "y"] as const).map((axis) => {
      const field = make("input", {
        type: "number",
        step: "1",
        min: "0",
        max: String(axis === "x" ? this.width : this.height),
        "aria-label": `${handle.name}, ${axis === "x" ? "from the left" : "from the top"}, pixels`,
      })
      field.addEventListener("change", () => {
        if (field.value === "" || !Number.isFinite(field.valueAsNumber)) return place()
        set({ ...handle, [axis]: field.valueAsNumber })
        this.actions.moved()
      })
      return field
    })
    const place = () => {
      grip.style.left = `${(100 * handle.x) / this.width}%`
      grip.style.top = `${(100 * handle.y) / this.height}%`
      fields[0]!.value = String(Math.round(handle.x))
      fields[1]!.value = String(Math.round(handle.y))
    }
    const set = ({ x, y }: { x: number; y: number }) => {
      handle.x = Math.max(0, Math.min(this.width, x))
      handle.y = Math.max(0, Math.min(this.height, y))
      place()
    }
    this.#drag(grip, handle, set)
    this.#keys(grip, handle, set)
    place()
    this.#layer.append(grip)
    return make(
      "span",
      { class: "place" },
      make("span", { class: "place-name" }, handle.name),
      ...fields,
    )
  }

  #drag(grip: HTMLElement, handle: Handle, set: (to: { x: number; y: number }) => void): void {
    let held = false
    grip.addEventListener("pointerdown", (event) => {
      held = true
      grip.setPointerCapture(event.pointerId)
      event.preventDefault()
      grip.focus()
      this.#look(handle)
    })
    grip.addEventListener("pointermove", ({ clientX, clientY }) => {
      if (!held) return
      const room = this.#layer.getBoundingClientRect()
      set({
        x: ((clientX - room.left) / room.width) * this.width,
        y: ((clientY - room.top) / room.height) * this.height,
      })
      this.#look(handle)
    })
    const drop = () => {
      if (!held) return
      held = false
      this.#loupe.hidden = true
      this.actions.moved()
    }
    grip.addEventListener("pointerup", drop)
    grip.addEventListener("pointercancel", drop)
  }

  #keys(grip: HTMLElement, handle: Handle, set: (to: { x: number; y: number }) => void): void {
    const ways: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-1, 0],
      ArrowRight: [1, 0],
      ArrowUp: [0, -1],
      ArrowDown: [0, 1],
    }
    grip.addEventListener("keydown", (event) => {
      const way = ways[event.key]
      if (!way || event.altKey || event.ctrlKey || event.metaKey) return
      event.preventDefault()
      const step = event.shiftKey ? 10 : 1
      set({ x: handle.x + step * way[0], y: handle.y + step * way[1] })
      this.#look(handle)
      this.actions.speak(pictureWords.handle(handle.name, handle.x, handle.y))
      clearTimeout(this.#rest)
      this.#rest = setTimeout(() => this.actions.moved(), keyRestMs)
    })
    grip.addEventListener("blur", () => {
      this.#loupe.hidden = true
    })
  }

  /** Shows what lies under a handle, beside it where the finger is not. */
  #look({ x, y }: Handle): void {
    const context = this.#loupe.getContext("2d")
    const room = this.#layer.getBoundingClientRect()
    if (!context || room.width === 0 || this.#image.naturalWidth === 0) return
    const own = this.#image.naturalWidth / this.width
    const span = (loupeSide / magnified / room.width) * this.#image.naturalWidth
    context.fillStyle = "#888"
    context.fillRect(0, 0, loupeSide, loupeSide)
    context.drawImage(
      this.#image,
      x * own - span / 2,
      y * own - span / 2,
      span,
      span,
      0,
      0,
      loupeSide,
      loupeSide,
    )
    context.strokeStyle = "#000"
    context.strokeRect(loupeSide / 2 - 4, loupeSide / 2 - 4, 8, 8)
    const [left, top] = [(x / this.width) * room.width, (y / this.height) * room.height]
    const beside = left > room.width / 2 ? left - loupeSide - 30 : left + 30
    this.#loupe.style.left = `${Math.max(0, Math.min(room.width - loupeSide, beside))}px`
    this.#loupe.style.top = `${Math.max(0, Math.min(room.height - loupeSide, top - loupeSide - 20))}px`
    this.#loupe.hidden = false
  }
}
