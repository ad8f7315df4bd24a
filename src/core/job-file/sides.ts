/*
 * Walls and sides by name, apart from the schemas, so that a worker that only solves does not carry what checks files.
 */

/** The walls that carry a panel, in the order that lists and files keep. */
export const WALLS = ['back', 'left', 'right'] as const;
/** Those of them beside the tub. */
export const SIDES = ['left', 'right'] as const;

export type WallName = (typeof WALLS)[number];
export type Side = (typeof SIDES)[number];
