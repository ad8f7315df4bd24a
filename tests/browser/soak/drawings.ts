import type { Page } from '@playwright/test';

/** What the drawings in 3D hold on the graphics card. */
export interface OnCard {
  /** drawings that have not been collected */
  drawings: number;
  geometries: number;
  textures: number;
  programs: number;
}

interface Drawer {
  info: { memory: { geometries: number; textures: number }; programs: unknown[] | null };
}

/** Listens to three.js, which tells a page's developer tools of each drawer it makes. Call it before `page.goto`. */
export const watchDrawings = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const tools = new EventTarget();
    const drawers: WeakRef<object>[] = [];
    tools.addEventListener('observe', (event) => {
      const { detail } = event as CustomEvent<object>;
      if ('info' in detail) drawers.push(new WeakRef(detail));
    });
    Object.assign(window, { __THREE_DEVTOOLS__: tools, drawers });
  });

export async function onCard(page: Page): Promise<OnCard> {
  const alive = await page.evaluate(() =>
    (window as unknown as { drawers: WeakRef<Drawer>[] }).drawers
      .flatMap((drawer) => drawer.deref() ?? [])
      .map(({ info: { memory, programs } }) => ({ ...memory, programs: programs?.length ?? 0 })),
  );
  const sum = (what: 'geometries' | 'textures' | 'programs') => alive.reduce((total, one) => total + one[what], 0);
  return {
    drawings: alive.length,
    geometries: sum('geometries'),
    textures: sum('textures'),
    programs: sum('programs'),
  };
}
