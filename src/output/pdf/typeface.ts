import { type PDFDocument, type PDFFont, PDFHexString } from 'pdf-lib';
import type { OutputFonts } from '../outputFonts';
import { needsNoShaping, plainlyPrintable, printable } from './printable';

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
  const characters = cached((character: string) => setCharacter(font, glyphs, character));
  const widths = cached((text: string) => {
    let width = 0;
    for (const character of text) width += characters(character).width;
    return width;
  });
  const encoded = cached((text: string) => {
    const safe = printable(text, glyphs);
    if (!needsNoShaping(safe)) {
      try {
        return font.encodeText(safe).asString();
      } catch {
        return [...plainlyPrintable(safe)].map((character) => characters(character).hex).join('');
      }
    }
    return [...safe].map((character) => characters(character).hex).join('');
  });
  return {
    font,
    width: (text, size) => widths(text) * size,
    encode: (text) => PDFHexString.of(encoded(text)),
  };
}

/** A character as it is written in the file, with its width at size 1; without shaping a line is these side by side. */
function setCharacter(font: PDFFont, glyphs: ReadonlySet<number>, character: string): { hex: string; width: number } {
  const set = (safe: string) => ({ hex: font.encodeText(safe).asString(), width: font.widthOfTextAtSize(safe, 1) });
  const safe = printable(character, glyphs);
  try {
    return set(safe);
  } catch {
    return set(plainlyPrintable(safe));
  }
}

function cached<T>(make: (key: string) => T): (key: string) => T {
  const made = new Map<string, T>();
  return (key) => {
    const known = made.get(key);
    if (known !== undefined) return known;
    const value = make(key);
    made.set(key, value);
    return value;
  };
}
