// What the picture cell of a live page says.

export const pictureWords = {
  stages: {
    piece: "Finding the piece and its centre ...",
    view: "Making the view straight ...",
    rings: "Counting the rings ...",
  },
  choose: "Choose a picture (PNG or JPEG)",
  measure: "Measure",
  stop: "Stop measuring",
  stopped: "Stopped. The lines are as they were.",
  opening: "Opening the picture ...",
  noPicture: "Choose a picture first: this page carries none.",
  noKind: "This file is neither a PNG nor a JPEG picture.",
  empty: "This file is empty.",
  cutOff: "This picture is damaged or cut off and cannot be read to its end.",
  tooLarge: (width: number, height: number) =>
    `The picture is ${width} x ${height} pixels, more than can be measured. Shrink it: 12 million pixels are plenty.`,
  tooMuch: "This file is larger than 64 MB. Shrink the picture.",
  changed: "The lines have changed since: it is being measured again.",
  measured: (rings: number, questions: number) =>
    `Measured: ${rings === 1 ? "1 ring" : `${rings} rings`}. ${
      questions === 0
        ? "All counts are sure."
        : `${questions === 1 ? "1 count" : `${questions} things`} to look at, below.`
    }`,
  ring: (number: number, repeats: number | null, sure: boolean, next: number | null) =>
    `Ring ${number}: ${repeats === null ? "not read" : `${repeats} repeats`}${sure ? ", sure" : ""}${next === null ? "" : `; next best ${next}`}.`,
  counted: (ring: number, count: number) => `Ring ${ring}, counted by hand: ${count}.`,
  handle: (name: string, x: number, y: number) => `${name}: ${Math.round(x)}, ${Math.round(y)}`,
} as const
