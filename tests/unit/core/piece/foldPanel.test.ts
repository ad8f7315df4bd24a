import { describe, expect, it } from 'vitest';
import type { PanelName } from '../../../../src/core/panel';
import { foldPanel } from '../../../../src/core/piece';
import { fitted, jobOf } from '../panel/fitting';
import { alcoveWith, skewedParameters } from '../skewedAlcove';

describe.each<PanelName>(['back', 'left', 'right'])('the %s panel, folded back', (name) => {
  it.each([true, false])('lies on its wall, a bed off it, where it was cut for (flexible: %s)', (flexible) => {
    for (let seed = 1; seed <= 4; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const choices = { fit: { flexible } };
      const { panel } = fitted(alcove, name, choices);
      const place = foldPanel(alcove, jobOf(choices), panel);
      panel.flat.outline.forEach(([x, y], i) => {
        const [u, v] = panel.outline[i]!;
        const [px, py, pz] = place(x, y, 6);
        const height = alcove[name].value(u, v);
        const expected = name === 'back' ? [u, v, height + 8] : [name === 'left' ? height + 8 : height - 8, v, u];
        expect(Math.hypot(px - expected[0]!, py - expected[1]!, pz - expected[2]!)).toBeLessThan(1e-6);
      });
    }
  });
});
