// What a live page adds to the look of a measured picture.

export const livePictureStyle = `
.live .picture pre.measured { display: none; }
.picture figure.given { position: relative; }
.handles { position: absolute; inset: 0; pointer-events: none; }
.handle {
  position: absolute; width: 2rem; height: 2rem; min-height: 0; padding: 0; margin: -1rem 0 0 -1rem; border-radius: 50%;
  background: none; border: 2px solid #fff; outline: 2px solid #8c0d26; pointer-events: auto; touch-action: none; cursor: grab;
}
.handle:hover:enabled { background: rgb(255 255 255 / 0.3); border-color: #fff; }
.handle:focus-visible { outline: 4px solid #8c0d26; outline-offset: 1px; }
.handle::after { content: ""; position: absolute; left: 50%; top: 50%; width: 4px; height: 4px; margin: -2px; background: #8c0d26; border-radius: 50%; }
.loupe { position: absolute; border: 2px solid #8c0d26; border-radius: 50%; background: #888; z-index: 1; }
.loupe[hidden] { display: none; }
.places { border: 0; padding: 0; margin: 0; display: flex; flex-wrap: wrap; gap: 0.3rem 1rem; align-items: center; }
.places legend { color: var(--quiet); font-size: 0.8rem; padding: 0; }
.place { display: inline-flex; gap: 0.3rem; align-items: center; }
.places input[type="number"], .rings input[type="number"] {
  width: 4.8rem; font: 0.84rem/1.3 var(--sans); color: var(--ink); background: var(--paper); border: 1px solid var(--quiet); border-radius: 3px; padding: 0.2rem 0.3rem;
}
.rings input[type="number"] { width: 4rem; text-align: right; }
.rings td .known-by { margin: 0 0.6rem 0 0.6rem; }
.rings td button { font-size: 0.76rem; padding: 0.1rem 0.5rem; min-height: 1.6rem; }
.picture .places-all { margin: 0 0 1.4rem; align-items: flex-end; }
.picture-fields { margin: 0 0 0.6rem; }
.picture .strip svg { cursor: crosshair; }
@media print { .picture .handles, .picture .fields { display: none; } .live .picture pre.measured { display: block; } }
`.trim()
