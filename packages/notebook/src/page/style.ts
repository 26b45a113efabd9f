// The look of a page: made for reading. A serif text column of about 68 characters, a sans for what
// is measured, one quiet accent, hairlines instead of boxes; light, dark, paper and phone.

export const pageStyle = `
:root {
  color-scheme: light dark;
  --paper: #fcfbf8; --ink: #22201c; --quiet: #625d54; --line: #d9d4ca; --tint: #f3f0e9;
  --accent: #5b3b63; --alarm: #96281b;
  --serif: "Iowan Old Style", "Palatino Linotype", Palatino, Charter, "Bitstream Charter", Georgia, serif;
  --sans: system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif;
  --mono: ui-monospace, "SF Mono", Menlo, Consolas, "DejaVu Sans Mono", monospace;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #191816; --ink: #e9e5dc; --quiet: #a8a195; --line: #3b3832; --tint: #23211e;
    --accent: #cfa9d8; --alarm: #f0a090;
  }
}
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0; background: var(--paper); color: var(--ink);
  font: 1.125rem/1.6 var(--serif); font-kerning: normal; font-variant-numeric: oldstyle-nums;
  overflow-wrap: break-word;
}
main { max-width: 36.5rem; margin: 0 auto; padding: 3.5rem 1.25rem 2rem; }
h1, h2, h3, h4 { line-height: 1.22; font-weight: 600; text-wrap: balance; }
h1 { font-size: 2.1rem; letter-spacing: -0.012em; margin: 0 0 1.4rem; }
h2 { font-size: 1.4rem; margin: 3rem 0 0.8rem; }
h3 { font-size: 1.15rem; margin: 2.2rem 0 0.5rem; }
p, ul, ol, dl { margin: 0 0 1rem; }
h1 + p { font-size: 1.22rem; line-height: 1.52; }
a { color: var(--accent); text-decoration-thickness: 1px; text-underline-offset: 0.15em; }
ul, ol { padding-left: 1.4rem; }
li { margin: 0.25rem 0; }
blockquote { margin: 1.2rem 0; padding-left: 1.1rem; border-left: 2px solid var(--line); color: var(--quiet); }
hr { border: 0; border-top: 1px solid var(--line); margin: 2.5rem 0; }
code, pre { font-family: var(--mono); font-size: 0.84em; font-variant-numeric: lining-nums; }
pre { overflow-x: auto; margin: 0 0 1rem; }
.value { font-variant-numeric: lining-nums; border-bottom: 1px dotted var(--quiet); }
.value.failed { border: 0; color: var(--alarm); font-family: var(--sans); font-size: 0.86em; }
table { border-collapse: collapse; font: 0.84rem/1.4 var(--sans); font-variant-numeric: tabular-nums lining-nums; }
th, td { padding: 0.34rem 0.6rem; text-align: right; vertical-align: baseline; white-space: nowrap; }
th { font-weight: 600; vertical-align: bottom; white-space: normal; border-bottom: 1px solid var(--ink); }
td { border-bottom: 1px solid var(--line); }
th:first-child, td:first-child { padding-left: 0; }
th:last-child, td:last-child { padding-right: 0; }
td.word, th.word { text-align: left; }
td.wrap { white-space: normal; min-width: 9rem; }
tr.astray td.word { font-weight: 600; }
@media (min-width: 50rem) { .ledger .scroll, .transitions .scroll { width: 46rem; max-width: none; margin-left: -4.75rem; } .ledger table, .transitions table { width: 100%; } }
main > table { display: block; overflow-x: auto; margin: 0 0 1rem; }
.scroll { overflow-x: auto; max-width: 100%; }
.scroll:focus-visible { outline: 2px solid var(--accent); outline-offset: 4px; }
.cell { margin: 1.7rem 0; }
.cell .label { margin: 0 0 0.5rem; }
.label {
  font: 600 0.76rem/1.4 var(--sans); letter-spacing: 0.03em; color: var(--quiet); margin: 0 0 0.5rem;
}
figure { margin: 0; }
.scroll + figure, figure + .scroll { margin-top: 1.4rem; }
.pattern pre, .gauge pre, .circle pre {
  margin: 0; padding: 0.9rem 1.05rem; background: var(--tint); border-top: 1px solid var(--line);
  border-bottom: 1px solid var(--line); font-size: 0.82rem; line-height: 1.6;
}
.pattern .line, .gauge .line, .circle pre .line {
  display: block; min-height: 1.6em; padding-left: 2.5em; text-indent: -2.5em;
  white-space: pre-wrap; overflow-wrap: anywhere;
}
.head { font-weight: 600; }
mark { background: none; color: inherit; text-decoration: underline wavy var(--alarm) 1px; text-underline-offset: 0.25em; }
mark.note { text-decoration-color: var(--quiet); text-decoration-style: dotted; }
.verdict { border-left: 4px solid var(--accent); padding: 0.15rem 0 0.15rem 1.15rem; }
.verdict .said { font-size: 1.42rem; line-height: 1.3; font-weight: 600; margin: 0 0 0.4rem; text-wrap: balance; }
.verdict p { margin: 0.3rem 0; text-wrap: pretty; }
.verdict .facts, .notes { font: 0.88rem/1.5 var(--sans); color: var(--quiet); font-variant-numeric: lining-nums; }
.notes { margin: 0.6rem 0 0; padding-left: 1.1rem; }
.remedies ol { margin: 0; padding-left: 1.5rem; }
.remedies li { margin: 0.55rem 0; }
.scroll + .after, pre + .after { margin-top: 0.6rem; }
.circle .scroll, .circle .notes { margin: 0.6rem 0 1.2rem; }
.after { font: 0.88rem/1.45 var(--sans); color: var(--quiet); display: block; font-variant-numeric: lining-nums; }
.problems ul, .found { list-style: none; margin: 0.6rem 0 0; padding: 0; font: 0.88rem/1.5 var(--sans); font-variant-numeric: lining-nums; }
.problems li, .found li { padding: 0.45rem 0; border-bottom: 1px solid var(--line); margin: 0; }
.where { color: var(--quiet); }
.hint { display: block; color: var(--quiet); }
.proposals { padding-left: 1.5rem; }
.proposals > li { margin: 0 0 1.4rem; }
.proposals pre { margin: 0.5rem 0 0; padding: 0.6rem 0.9rem; background: var(--tint); white-space: normal; font-size: 0.82rem; line-height: 1.6; }
.proposals .line { display: block; padding-left: 2.5em; text-indent: -2.5em; white-space: pre-wrap; overflow-wrap: anywhere; }
.calculation table { width: 100%; }
.calculation td.formula { font-family: var(--mono); font-size: 0.79rem; white-space: normal; overflow-wrap: anywhere; }
.calculation td.name { font-style: italic; font-family: var(--serif); font-size: 0.98rem; }
.calculation .remark { color: var(--quiet); display: block; font-family: var(--sans); }
figure svg { display: block; width: 100%; height: auto; }
.narrow { display: none; }
.fault { border: 1px solid var(--alarm); padding: 0.8rem 1rem; font: 0.9rem/1.5 var(--sans); margin: 0.6rem 0; }
.fault strong { color: var(--alarm); }
.fault pre { margin: 0.6rem 0 0; white-space: pre-wrap; overflow-wrap: anywhere; color: var(--quiet); }
footer {
  max-width: 36.5rem; margin: 2rem auto 0; padding: 1rem 1.25rem 3rem; font: 0.8rem/1.5 var(--sans);
  color: var(--quiet);
}
footer .licences { margin-top: 1rem; }
footer .licences pre { white-space: pre-wrap; overflow-wrap: anywhere; margin-top: 0.6rem; }
footer p { border-top: 1px solid var(--line); padding-top: 1rem; margin: 0; }
@media (max-width: 34rem) {
  body { font-size: 1.0625rem; line-height: 1.55; }
  main { padding: 2rem 1rem 1rem; }
  h1 { font-size: 1.65rem; }
  h1 + p { font-size: 1.12rem; }
  .wide { display: none; }
  .narrow { display: block; }
  table { font-size: 0.8rem; }
  th, td { padding: 0.34rem 0.36rem; }
  .proposals { padding-left: 1.2rem; }
  .proposals pre { padding: 0.5rem 0.7rem; }
  .proposals .line { padding-left: 1.2em; text-indent: -1.2em; }
  .pattern .line, .gauge .line, .circle pre .line { padding-left: 1.2em; text-indent: -1.2em; }
  .pattern pre, .gauge pre, .circle pre { margin: 0 -1rem; padding: 0.8rem 1rem; }
  footer { padding: 1rem 1rem 2rem; }
}
@media print {
  :root { color-scheme: light; --paper: #fff; --ink: #000; --quiet: #444; --line: #bbb; --tint: #fff; --accent: #000; --alarm: #000; }
  html { font-size: 80%; }
  body { font-size: 10.5pt; line-height: 1.45; }
  h1 + p { font-size: 12pt; }
  main, footer { max-width: none; padding-left: 0; padding-right: 0; }
  main { padding-top: 0; padding-bottom: 0; }
  figure { max-width: 12cm; }
  .wide { display: block; }
  .narrow { display: none; }
  .pattern pre, .gauge pre, .circle pre { font-size: 9pt; line-height: 1.5; }
  figure, .verdict, .ledger, .pattern, table, li, .fault { break-inside: avoid; }
  footer { margin-top: 0.5rem; break-before: avoid; }
  .licences { display: none; }
  h2, h3, h4, .label, .heading { break-after: avoid; }
  h2 { margin-top: 1.8rem; }
  p { orphans: 3; widows: 3; }
  .scroll, main > table { overflow: visible; }
  th, td { padding: 0.25rem 0.4rem; }
  a { text-decoration: none; }
  @page { margin: 18mm 20mm; }
}
`.trim()
