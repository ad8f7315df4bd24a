/** Long enough to read a tape's marks on, short enough for hundreds to be kept. */
const longestSide = 1600;
const quality = 0.85;

export interface Shrunk {
  bytes: Uint8Array<ArrayBuffer>;
  type: string;
  width: number;
  height: number;
}

/** Width and height, in pixels, that fit into a square of `longest` without changing their ratio. */
export function fitted(width: number, height: number, longest = longestSide): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Draws a picture upright at a size that can be kept, as JPEG. Rejects where the browser cannot read it. */
export async function shrink(picture: Blob): Promise<Shrunk> {
  const bitmap = await createImageBitmap(picture, { imageOrientation: 'from-image' });
  try {
    const { width, height } = fitted(bitmap.width, bitmap.height);
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('the browser gives no canvas');
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, width, height);
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(bitmap, 0, 0, width, height);
    const type = 'image/jpeg';
    const jpeg = await new Promise<Blob | null>((done) => canvas.toBlob(done, type, quality));
    if (!jpeg) throw new Error('the browser could not write the picture');
    return { bytes: new Uint8Array(await jpeg.arrayBuffer()), type, width, height };
  } finally {
    bitmap.close();
  }
}
