// A sheet can be printed by itself, as it will be handed out: what is not of it is left out while it prints.

/// <reference lib="dom" />

import { button, make } from "./dom.ts"

export function offerPrint(section: Element): void {
  if (!section.querySelector(".sheet-page") || section.querySelector(".print-sheet")) return
  const print = button("Print the sheet", () => {
    section.classList.add("alone")
    document.body.classList.add("printing-sheet")
    window.print()
    section.classList.remove("alone")
    document.body.classList.remove("printing-sheet")
  })
  section.prepend(make("p", { class: "print-sheet" }, print))
}
