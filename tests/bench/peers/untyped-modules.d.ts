// As much of the libraries that bring no types as the bench uses.

declare module 'pdfkit' {
  interface Struct {
    add(child: Struct): void;
    end(): void;
  }
  interface TextOptions {
    width?: number;
    align?: 'left' | 'right';
    lineBreak?: boolean;
  }
  interface PDFDocument extends NodeJS.ReadableStream {
    addPage(): this;
    registerFont(name: string, file: Buffer): this;
    font(name: string): this;
    fontSize(sizePt: number): this;
    text(text: string, xPt: number, yPt: number, options?: TextOptions): this;
    moveTo(xPt: number, yPt: number): this;
    lineTo(xPt: number, yPt: number): this;
    lineWidth(widthPt: number): this;
    stroke(): this;
    struct(role: string, options?: object, draw?: () => void): Struct;
    addStructure(struct: Struct): void;
    markContent(tag: string, options?: object): void;
    endMarkedContent(): void;
    end(): void;
  }
  const PDFDocument: new (options: Record<string, unknown>) => PDFDocument;
  export default PDFDocument;
}

declare module 'pdfmake' {
  const pdfmake: {
    virtualfs: { writeFileSync(name: string, content: Buffer): void };
    setFonts(fonts: Record<string, Record<string, string>>): void;
    setUrlAccessPolicy(isAllowed: () => boolean): void;
    setLocalAccessPolicy(isAllowed: () => boolean): void;
    createPdf(definition: object): { getBuffer(): Promise<Buffer> };
  };
  export default pdfmake;
}

declare module 'react' {
  export function createElement(type: unknown, properties: object, ...children: unknown[]): never;
}
