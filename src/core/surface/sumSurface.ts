import { add } from '../dual';
import type { Surface } from './surface';

/** The surface whose heights are the sums of two. */
export function sumSurface(first: Surface, second: Surface): Surface {
  return {
    value: (a, b) => first.value(a, b) + second.value(a, b),
    gradient(a, b) {
      const [pa, pb] = first.gradient(a, b);
      const [qa, qb] = second.gradient(a, b);
      return [pa + qa, pb + qb];
    },
    curvature(a, b) {
      const [paa, pab, pbb] = first.curvature(a, b);
      const [qaa, qab, qbb] = second.curvature(a, b);
      return [paa + qaa, pab + qab, pbb + qbb];
    },
    at: (a, b) => add(first.at(a, b), second.at(a, b)),
    slopeAt: (a, b) => add(first.slopeAt(a, b), second.slopeAt(a, b)),
  };
}
