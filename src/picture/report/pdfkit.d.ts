/** The part of pdfkit (0.20) that the report uses; the package carries no types of its own. */
declare namespace PDFKit {
  interface Options {
    readonly size?: 'A4'
    readonly margin?: number
    /** Path of the first font: without it the library would load one of its own. */
    readonly font?: string
    readonly lang?: string
    readonly displayTitle?: boolean
    readonly info?: { readonly Title?: string; readonly CreationDate?: Date; readonly Producer?: string }
  }
  interface Document {
    registerFont(name: string, file: string): this
    font(name: string): this
    fontSize(size: number): this
    fillColor(colour: string): this
    widthOfString(words: string): number
    text(
      words: string,
      x: number,
      y: number,
      options: { readonly lineBreak: false; readonly baseline: 'alphabetic' },
    ): this
    image(png: Uint8Array, x: number, y: number, options: { width: number; height: number }): this
    moveTo(x: number, y: number): this
    lineTo(x: number, y: number): this
    lineWidth(width: number): this
    stroke(colour: string): this
    on(event: 'data', heard: (chunk: Uint8Array) => void): this
    on(event: 'end', heard: () => void): this
    on(event: 'error', heard: (error: Error) => void): this
    end(): void
  }
}

declare module 'pdfkit' {
  const PDFDocument: new (options?: PDFKit.Options) => PDFKit.Document
  export default PDFDocument
}
