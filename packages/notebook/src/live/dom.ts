// Making elements in a page: texts are set as texts, never as markup.

/// <reference lib="dom" />

type Attributes = Readonly<Record<string, string | boolean>>

/** An element with attributes and children. A true attribute stands without a value, a false one not at all. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag)
  for (const [name, value] of Object.entries(attributes))
    if (value !== false) element.setAttribute(name, value === true ? "" : value)
  element.append(...children)
  return element
}

export function button(label: string, onPress: () => void, attributes: Attributes = {}) {
  const made = make("button", { type: "button", ...attributes }, label)
  made.addEventListener("click", onPress)
  return made
}

/** Markup that the engine made: everything foreign in it is escaped already, and no script could run. */
export function setMarkup(element: Element, markup: string): void {
  element.innerHTML = markup
}
