import type { PDFDocument, PDFFont, PDFHexString } from 'pdf-lib';
import type { OutputFonts } from '../outputFonts';
import { plainlyPrintable, printable } from './printable';

/** One font of the pack: measures and encodes any text a person may have typed, never throws. */
export interface Typeface {
  font: PDFFont;
  /** mm, at a font size in mm */
  width: (text: string, size: number) => number;
  encode: (text: string) => PDFHexString;
}

export interface Typefaces {
  regular: Typeface;
  bold: Typeface;
}

export async function embedTypefaces(pdf: PDFDocument, fonts: OutputFonts): Promise<Typefaces> {
  const fontkit = (await import('@pdf-lib/fontkit')).default;
  pdf.registerFontkit(fontkit);
  const embed = async (bytes: Uint8Array) =>
    typeface(await pdf.embedFont(bytes, { subset: true, features: { liga: false, dlig: false } }));
  return { regular: await embed(fonts.regular), bold: await embed(fonts.bold) };
}

function typeface(font: PDFFont): Typeface {
  const glyphs = new Set(font.getCharacterSet());
  const safeTexts = new Map<string, string>();
  const unitWidths = new Map<string, number>();
  const safe = (text: string): string => {
    let known = safeTexts.get(text);
    if (known === undefined) {
      known = printable(text, glyphs);
      try {
        unitWidths.set(known, font.widthOfTextAtSize(known, 1));
      } catch {
        known = plainlyPrintable(text, glyphs);
      }
      safeTexts.set(text, known);
    }
    return known;
  };
  const unitWidth = (text: string): number => {
    const known = unitWidths.get(text);
    if (known !== undefined) return known;
    const width = font.widthOfTextAtSize(text, 1);
    unitWidths.set(text, width);
    return width;
  };
  return {
    font,
    width: (text, size) => unitWidth(safe(text)) * size,
    encode: (text) => font.encodeText(safe(text)),
  };
}
