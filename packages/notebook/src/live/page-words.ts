// What a live page says of itself: of its work, of what it carries, and of what it keeps for its reader.

export const pageWords = {
  workerEnded:
    "The computing ended by itself twice, probably for want of memory. Your text is as you wrote it; a smaller pattern may be worked out.",
  noSearchHere:
    "This browser gives the page no worker, so a search would hold it up for seconds with no way to stop it. The command `roundwright square` does the same.",
  noMatchHere:
    "This browser gives the page no worker, so laying out the pieces to choose from would hold it up for seconds. The command `roundwright match` does the same.",
  handedOver: (name: string) =>
    `${name} was handed to the browser, which does not tell whether it was kept.`,
  isSaved: "It is saved",
  saved: (name: string) => `Saved as ${name}.`,
  earlier: "An earlier answer: the text was changed after it.",
  notWorkedOut: "Changed, and not worked out yet.",
  draftBack: "Your changes that were not saved are back. Undo leads to the page as it was opened.",
  draftFound: "Changes to this page that were never saved are kept in this browser.",
  takeUp: "Take them up",
  throwAway: "Throw them away",
  noDrafts:
    "This browser keeps nothing for this page: what is not saved is lost when the page is closed.",
  hide: "Hide this",
  figureAsked: "The figure is being worked out as a file.",
  unreadable:
    "What this page carries to be changed with cannot be read, so it cannot be changed here. All that was written in it stands below.",
  onlyNotebook:
    "Part of what this page carries cannot be read. Its text is whole; what had been worked out is worked out anew.",
  misfits: (count: number) =>
    `${count === 1 ? "One answer" : `${count} answers`} that this page carries ${count === 1 ? "does" : "do"} not fit it and ${count === 1 ? "is" : "are"} worked out anew.`,
  textEdited:
    "The text of a pattern or gauge was changed in the file itself: the page goes by that. Undo leads back to the text the page carries.",
  gaveWay: (what: readonly string[]) =>
    `The pattern says its own ${what.join(" and ")}, which goes first. The page's own lines for that are kept and give way; set a field to put yours first again, or undo.`,
  proseKept:
    "Words of this page were changed in the file itself. They are kept here as they stand, and are no part of the notebook that is saved as Markdown.",
} as const
