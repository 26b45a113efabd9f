// What a live page adds to the look of a page: editors that read like the printed pattern, a quiet bar,
// and marks for what is old or was changed.

export const liveStyle = `
.prose > table { display: block; overflow-x: auto; margin: 0 0 1rem; }
.live main { padding-top: 2.5rem; }
.bar {
  position: sticky; top: 0; z-index: 2; background: var(--paper); border-bottom: 1px solid var(--line);
  display: flex; flex-wrap: wrap; gap: 0.3rem 1.2rem; align-items: center; justify-content: space-between;
  padding: 0.55rem 1.25rem; font: 0.84rem/1.4 var(--sans); font-variant-numeric: lining-nums;
}
.bar p { margin: 0; }
.telling { flex: 1 1 18rem; min-width: 0; }
.saying { font-weight: 600; }
.notices { flex: 1 1 100%; }
.notice { display: flex; flex-wrap: wrap; gap: 0.3rem 0.6rem; align-items: center; padding: 0.3rem 0; border-top: 1px solid var(--line); }
.notice p { flex: 1 1 18rem; }
.state { color: var(--quiet); }
.doing { display: flex; flex-wrap: wrap; gap: 0.4rem; align-items: center; }
.heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
button, .save > summary, .fold > summary, .field select, .field input {
  font: 0.84rem/1.3 var(--sans); color: var(--ink); background: var(--paper);
  border: 1px solid var(--quiet); border-radius: 3px; padding: 0.32rem 0.7rem; min-height: 2rem;
}
button, .save > summary, .fold > summary { cursor: pointer; }
button:hover:enabled, .save > summary:hover { background: var(--tint); border-color: var(--ink); }
button:disabled { color: var(--quiet); border-color: var(--line); cursor: default; }
button:focus-visible, summary:focus-visible, textarea:focus-visible, select:focus-visible, input:focus-visible, .cell:focus-visible, .prose:focus-visible {
  outline: 2px solid var(--accent); outline-offset: 2px;
}
.save { position: relative; }
.save > summary { list-style: none; display: block; padding-top: 0.42rem; }
.save > summary::-webkit-details-marker { display: none; }
.save > summary::after { content: " \\25be"; }
.choices {
  position: absolute; right: 0; top: calc(100% + 0.3rem); display: grid; gap: 0.3rem; padding: 0.5rem;
  background: var(--paper); border: 1px solid var(--line); white-space: nowrap;
}
.choices button { text-align: left; }
.heading { display: flex; flex-wrap: wrap; gap: 0.3rem 1rem; justify-content: space-between; align-items: baseline; margin: 0 0 0.4rem; }
.heading .label { margin: 0; }
.tools { display: flex; gap: 0.5rem; align-items: center; }
.tools button { font-size: 0.76rem; padding: 0.15rem 0.55rem; min-height: 1.6rem; }
.edited { font: italic 0.84rem/1.4 var(--serif); color: var(--accent); }
.paper { display: grid; background: var(--tint); border-top: 1px solid var(--line); border-bottom: 1px solid var(--line); }
.paper > .sheet, .paper > textarea {
  grid-area: 1 / 1; min-width: 0; margin: 0; padding: 0.9rem 1.05rem; border: 0; background: none; width: 100%;
  font: 0.82rem/1.6 var(--mono); font-variant-numeric: lining-nums; letter-spacing: 0; tab-size: 4;
  white-space: pre-wrap; overflow-wrap: anywhere; word-break: normal; text-align: left;
}
.paper > .sheet { min-height: 3.4rem; overflow: hidden; }
.sheet .line { display: block; min-height: 1.6em; padding: 0; text-indent: 0; }
.sheet .round { box-shadow: inset 0 1px var(--line); }
.paper > textarea { color: transparent; caret-color: var(--ink); resize: none; overflow: hidden; border-radius: 0; display: block; height: 100%; }
.paper > textarea:focus-visible { outline-offset: 0; }
.paper > textarea::selection { color: transparent; background: color-mix(in srgb, var(--accent) 28%, transparent); }
.long .paper > textarea { height: 24rem; overflow: auto; color: var(--ink); }
.paper mark { text-decoration-thickness: 1.5px; }
.found .where { border: 0; padding: 0; min-height: 0; background: none; color: var(--quiet); font-size: 0.88rem; text-decoration: underline; text-decoration-thickness: 1px; text-underline-offset: 0.15em; }
.found .where:hover { color: var(--ink); }
.found li.error .where { color: var(--alarm); }
.found + .below:not(:empty) { margin-top: 0.6rem; }
.fold { margin: 0.7rem 0 0; }
.fold > summary { display: inline-flex; align-items: center; font-size: 0.76rem; padding: 0.15rem 0.55rem; min-height: 1.6rem; }
.fold[open] > summary { margin-bottom: 0.8rem; }
.fields { display: flex; flex-wrap: wrap; gap: 0.8rem 1.4rem; align-items: flex-end; margin: 0.8rem 0 0; font: 0.84rem/1.4 var(--sans); }
.field { display: grid; gap: 0.2rem; min-width: 0; }
.field label, .field legend { color: var(--quiet); font-size: 0.8rem; padding: 0; }
.field select { max-width: 100%; }
.swatch { display: flex; flex-wrap: wrap; gap: 0.4rem; align-items: center; border: 0; margin: 0; padding: 0; }
.swatch legend { margin-bottom: 0.2rem; }
.field input[type="number"] { width: 4.6rem; }
.tick { display: inline-flex; gap: 0.3rem; align-items: center; min-height: 2rem; }
.tick input { min-height: 0; margin: 0; accent-color: var(--accent); }
.squaring > .after:not(:empty) { margin: 0.7rem 0 0; }
.squaring > .answer { margin-top: 1.2rem; }
.outdated > .answer { color: var(--quiet); }
.export { margin: 0.4rem 0 1rem; font: 0.84rem/1.4 var(--sans); }
.export > div { display: flex; flex-wrap: wrap; gap: 0.4rem; }
.export button, .take, .take button { font-size: 0.76rem; padding: 0.15rem 0.55rem; min-height: 1.6rem; }
.edit li .take { display: block; margin-top: 0.2rem; }
.edit p.take, .print-sheet { margin: 0 0 0.8rem; padding: 0; }
[data-round] { cursor: pointer; }
.beside:has(> .pattern .editor) > .problems { display: none; }
.beside .editor > .found { position: static; width: auto; margin-top: 0.6rem; max-height: none; }
.try { margin: 0.35rem 0 0; display: inline-block; }
.old .verdict, .old .ledger, .old .remedies, .old .chart, .old .problems, .old .values { position: relative; }
.old .verdict::after, .old .ledger::after, .old .remedies::after, .old .chart::after, .old .problems::after, .old .values::after {
  content: "earlier answer"; position: absolute; right: 0; top: -1.15rem; font: italic 0.8rem/1.2 var(--serif);
  color: var(--quiet); visibility: hidden; animation: telling-old 0s 0.25s forwards;
}
.cell.late, .cell.provisional { position: relative; }
.cell.late::after, .cell.provisional::after {
  content: "earlier answer"; position: absolute; right: 0; top: -1.15rem; font: italic 0.8rem/1.2 var(--serif); color: var(--quiet);
}
.cell.provisional::after { content: "first answer"; }
.old .cell.provisional::after { content: "earlier answer"; }
@keyframes telling-old { to { visibility: visible; } }
@media (min-width: 82rem) {
  .editor { position: relative; }
  .editor > .found { position: absolute; left: calc(100% + 1.6rem); top: 1.6rem; width: 17rem; margin: 0; max-height: max(100%, 16rem); overflow-y: auto; }
}
@media (max-width: 34rem) {
  .bar { padding: 0.45rem 1rem; }
  .telling { flex-basis: 100%; }
  .bar .state { display: none; }
  .paper { margin: 0 -1rem; }
  .paper > .sheet, .paper > textarea { padding: 0.8rem 1rem; }
}
html:has(.live) { scroll-padding-top: 6rem; }
@media (forced-colors: active) { .paper > .sheet { visibility: hidden; } }
@media print {
  .printing-sheet main > :not(:has(.alone)):not(.alone), .printing-sheet footer { display: none; }
  .export, .take, .print-sheet { display: none; }
  .bar, .tools, .fold, .try, .fields { display: none; }
  .editor:not(.long) .paper > textarea { display: none; }
  .paper > .sheet { overflow: visible; padding: 0.4rem 0; font-size: 9pt; line-height: 1.5; }
  .sheet .line { padding-left: 2.5em; text-indent: -2.5em; box-shadow: none; }
  .paper { background: none; }
}
`.trim()
