import type { Locator } from '@playwright/test';

/** How many different colours (to 16 steps per channel) a screenshot of an element shows, sampled on a 40 × 40 grid. */
export async function coloursOf(element: Locator): Promise<number> {
  const picture = (await element.screenshot()).toString('base64');
  return element.page().evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no 2d canvas');
    context.drawImage(image, 0, 0);
    const seen = new Set<string>();
    for (let i = 0; i < 40; i++) {
      for (let j = 0; j < 40; j++) {
        const [x, y] = [(image.width * (i + 0.5)) / 40, (image.height * (j + 0.5)) / 40];
        seen.add([...context.getImageData(x, y, 1, 1).data].map((value) => value >> 4).join());
      }
    }
    return seen.size;
  }, picture);
}
