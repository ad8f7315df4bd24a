/** Coordinates of a surface: its field's two arguments and the field itself, as indices of x, y, z. */
export const AXES = {
  back: [0, 1, 2],
  left: [2, 1, 0],
  right: [2, 1, 0],
  rim: [0, 2, 1],
} as const;

export type SurfaceName = keyof typeof AXES;

export const SURFACE_NAMES = ['back', 'left', 'right', 'rim'] as const satisfies readonly SurfaceName[];

export const isSurfaceName = (name: string): name is SurfaceName => Object.hasOwn(AXES, name);
