/** TrueType fonts that a job pack is set in, whole files. */
export interface OutputFonts {
  regular: Uint8Array;
  bold: Uint8Array;
}
