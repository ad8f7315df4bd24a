import type { Rgb } from '../../src/scene/heat/oklab';

/**
 * Machado, Oliveira and Fernandes, A physiologically-based model for simulation of color vision deficiency, 2009,
 * severity 1.0; read in a public package that lists them. They act on linear light.
 */
export const dichromacies: Record<'protan' | 'deutan' | 'tritan', readonly (readonly [number, number, number])[]> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Linear light as someone with that dichromacy would see it, within the gamut. */
export const seenBy = (kind: keyof typeof dichromacies, light: Rgb): Rgb => {
  const [red, green, blue] = dichromacies[kind].map((row) =>
    Math.min(1, Math.max(0, row[0] * light[0] + row[1] * light[1] + row[2] * light[2])),
  );
  return [red!, green!, blue!];
};
