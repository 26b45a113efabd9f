// What a picture cell gives: the measured picture as plain figures, its lines brought up to date, and what is asked.

import type { GreyPicture, PublishedRing, ShownRing } from "@roundwright/picture"

/** A ring as it is counted and as it is drawn. */
export type AnsweredRing = Omit<PublishedRing, "innerPx" | "outerPx"> & ShownRing

export interface PictureFigures {
  /** The cell's lines with what was found in them. */
  readonly lines: string
  /** Name of the picture, as the lines say it. */
  readonly name: string
  readonly widthPx: number
  readonly heightPx: number
  readonly centrePx: readonly [number, number]
  /** Four corners and the box as they were given, pixels; null where there are none. */
  readonly cornersPx: readonly number[] | null
  readonly boxPx: readonly number[] | null
  readonly rings: readonly AnsweredRing[]
  readonly questions: readonly string[]
}

/** As it comes from the measuring, with the pictures made by it. */
export interface PictureFound extends PictureFigures {
  readonly strip: GreyPicture
  readonly repeat: GreyPicture | null
}

/** As it is drawn: every picture an address of its own, `data:image/...`. */
export interface PictureAnswer extends PictureFigures {
  readonly images: {
    readonly given: string
    readonly strip: string
    readonly repeat: string | null
  }
}

export interface PictureFault {
  readonly fault: string
  readonly hint: string
}
