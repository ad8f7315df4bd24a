import type { Job, Price, Result } from '../core';
import type { OutputFonts } from './outputFonts';
import type { QuoteOptions } from './pdf';

/** The quote as a PDF; the code that writes it is loaded when first asked for. */
export async function quoteFile(
  job: Job,
  result: Result,
  price: Price,
  fonts: OutputFonts,
  options: QuoteOptions,
): Promise<Uint8Array> {
  const { quotePdf } = await import('./pdf');
  return quotePdf(job, result, price, fonts, options);
}
