declare module '*/generated/fonts.js' {
  export const CHARACTERS: readonly number[];
  export const FACES: Readonly<Record<'regular' | 'semibold' | 'italic', import('./built-face.ts').BuiltFace>>;
}

declare module 'subset-font' {
  interface SubsetOptions {
    targetFormat: 'sfnt' | 'woff2';
    keepFeatures?: readonly string[];
    noLayoutClosure?: boolean;
    noHinting?: boolean;
    dropTables?: readonly string[];
  }
  export default function subsetFont(font: Uint8Array, text: string, options: SubsetOptions): Promise<Uint8Array>;
}
