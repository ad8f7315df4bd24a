import type { Result } from '../../src/core/result';
import type { TrueAlcove, TrueSide } from './trueAlcove';

/** The alcove that a result's adjusted parameters describe, for the simulator to measure; none of its walls uneven. */
export function adjustedAlcove({ adjustment }: Pick<Result, 'adjustment'>): TrueAlcove {
  if (adjustment.uneven.length > 0) throw new Error('the simulator knows no uneven walls');
  const values = new Map(adjustment.parameters.map(({ name, value }) => [name, value]));
  const of = (name: string): number => {
    const value = values.get(name);
    if (value === undefined) throw new Error(`the result has no parameter ${name}`);
    return value;
  };
  const side = (name: string): TrueSide => ({
    c: of(`${name}.position`),
    y: of(`${name}.plumb`),
    z: of(`${name}.square`),
    yz: of(`${name}.twist`),
    yy: of(`${name}.bowUp`),
    zz: of(`${name}.bowAcross`),
  });
  const front = (name: string) => ({ f0: of(`front.${name}.position`), f1: of(`front.${name}.plumb`) });
  return {
    back: { y: of('back.plumb'), xy: of('back.twist'), xx: of('back.bowAcross'), yy: of('back.bowUp') },
    left: side('left'),
    right: side('right'),
    rim: {
      c: of('rim.height'),
      x: of('rim.levelAlong'),
      z: of('rim.levelAcross'),
      xx: of('rim.bowAlong'),
      zz: of('rim.bowAcross'),
    },
    front: { left: front('left'), right: front('right') },
    humps: [],
  };
}
