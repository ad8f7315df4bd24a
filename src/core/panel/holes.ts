import type { Alcove } from '../alcove';
import { add, constant, type Dual, shift } from '../dual';
import type { Fixture, Job } from '../job-file';
import { contourRise } from './contour';
import { towardsRoom } from './edges';
import type { PanelHole } from './panel';

/** Centre of a fixture's hole on its wall, wall coordinates. */
export interface HoleCentre {
  fixture: Fixture;
  u: Dual;
  v: Dual;
  from: PanelHole['from'];
}

/**
 * Centre of a hole: straight up from the finished rim under it, and out from the back, at the panel's face. The two
 * hang together through the walls' slopes, so they are iterated; six rounds settle slopes up to 0.1 to below 1e-6 mm.
 */
export function holeCentre(alcove: Alcove, { fit, rim }: Job, fixture: Fixture): HoleCentre {
  const face = fit.bed + fit.thickness;
  let u: Dual = constant('fromBack' in fixture ? fixture.fromBack : fixture.fromPlumbLine);
  let v: Dual = constant(fixture.aboveRim + alcove.rim.value(0, 0));
  for (let round = 0; round < 6; round++) {
    if (fixture.wall === 'back') {
      const z = shift(alcove.back.at(u, v), face);
      v = shift(add(alcove.rim.at(u, z), contourRise(rim, z)), fixture.aboveRim);
    } else {
      const x = shift(alcove[fixture.wall].at(u, v), towardsRoom(fixture.wall) * face);
      const backFace = fixture.fromBackOf === 'panel' ? face : 0;
      u = shift(alcove.back.at(x, v), backFace + fixture.fromBack);
      v = shift(add(alcove.rim.at(x, u), contourRise(rim, u)), fixture.aboveRim);
    }
  }
  return {
    fixture,
    u,
    v,
    from:
      'fromBack' in fixture
        ? { of: fixture.fromBackOf, distance: fixture.fromBack }
        : { of: 'plumb-line', distance: fixture.fromPlumbLine },
  };
}
