import type { PanelName, Problem } from '../panel';
import type { Clearance } from './clearanceOf';
import type { WayIn } from './report';

/** The back panel passes the walls neither straight nor turned nor bowed. */
export function tooWide({ clearance }: Clearance, bow: WayIn['bow']): Problem {
  const bent = bow ? ', and bowing it to pass would bend the sheet beyond its limit' : '';
  return {
    where: 'panels.back',
    what: `the panel does not go in past the side walls, straight or turned${bent}; cut it in two at a seam, or take a sheet that bends further`,
    howMuch: clearance === null ? null : -2 * clearance,
  };
}

/** A panel does not get in under the ceiling or the header. */
export const tooHigh = (panel: PanelName, { clearance }: Clearance): Problem => ({
  where: `panels.${panel}`,
  what: 'the panel does not go in under the ceiling or header, straight or turned; lower its top, or cut it at a level seam',
  howMuch: clearance === null ? null : -2 * clearance,
});
