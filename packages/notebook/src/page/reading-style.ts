// What helps to find one's way in a page: the list of contents, anchors of headings, pattern and verdict side by side
// where there is room, and the round that was chosen.

export const readingStyle = `
h1, h2, h3, h4 { scroll-margin-top: 5rem; }
.anchor { margin-left: 0.4em; text-decoration: none; font-weight: 400; color: var(--quiet); opacity: 0; }
.anchor::after { content: "#"; }
:is(h1, h2, h3, h4):hover > .anchor, .anchor:focus-visible { opacity: 1; }
.contents { font: 0.88rem/1.45 var(--sans); border-top: 1px solid var(--line); border-bottom: 1px solid var(--line); padding: 0.7rem 0; margin: 1.4rem 0; }
.contents ol { list-style: none; margin: 0; padding: 0; }
.contents li { margin: 0; }
.contents a { display: inline-block; padding: 0.2rem 0; text-decoration: none; }
.contents a:hover, .contents a:focus-visible { text-decoration: underline; }
td a.round { color: inherit; text-decoration: underline dotted; text-underline-offset: 0.2em; }
tr.chosen td { background: color-mix(in srgb, var(--accent) 16%, transparent); }
.line.chosen, .line:target { background: color-mix(in srgb, var(--accent) 20%, transparent); scroll-margin-top: 6rem; }
@media screen {
  svg .chosen, svg .chosen path { stroke: var(--accent); stroke-width: 2.2; }
  .sheet-page svg .chosen, .sheet-page svg .chosen :is(path, ellipse) { stroke: #7a3b86; stroke-width: 0.42; }
}
@media (min-width: 80rem) {
  .contents { position: fixed; left: 1.2rem; top: 6rem; width: calc(50vw - 24.5rem); max-width: 15rem; max-height: 70vh; overflow-y: auto; border: 0; margin: 0; padding: 0; color: var(--quiet); }
  .beside { display: grid; grid-template-columns: 100% min(22rem, calc(50vw - 21.4rem)); column-gap: 1.8rem; align-items: start; margin: 1.7rem 0; }
  .beside > .cell { margin: 0 0 1rem; }
  .beside > .first { grid-column: 1; grid-row: 1 / span 6; }
  .beside > :not(.first) { grid-column: 2; }
  .beside > .prose:empty { display: none; }
  .beside .verdict .said { font-size: 1.2rem; }
}
@media print { .contents, .anchor { display: none; } }`.trim()
