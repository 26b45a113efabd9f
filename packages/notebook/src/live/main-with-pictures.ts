// The script of a live page that has picture cells: that of any page, and what measures pictures.

/// <reference lib="dom" />

import { makeAnswerer } from "./answer.ts"
import { serveWorker } from "./engine.ts"
import { startPage } from "./page.ts"
import { withPictures } from "./picture/answerer.ts"
import { PicturePanel } from "./picture/panel.ts"

if (typeof document === "undefined") serveWorker(withPictures(makeAnswerer(false)))
else
  startPage(
    document.currentScript?.textContent ?? "",
    (section, script, actions) => new PicturePanel(section, script, actions),
  )
