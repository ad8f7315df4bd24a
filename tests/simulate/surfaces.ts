import { type Alcove, alcoveModel } from '../../src/core/alcove';
import { jobWith } from './testJob';
import type { TrueAlcove } from './trueAlcove';

/** The surfaces of an alcove known exactly, without a survey; humps are beyond the minimum basis and left out. */
export function surfacesOf(alcove: TrueAlcove): Alcove {
  const side = (name: 'left' | 'right') => {
    const { c, y, z, yz, yy, zz } = alcove[name];
    return [
      [`${name}.position`, c],
      [`${name}.plumb`, y],
      [`${name}.square`, z],
      [`${name}.twist`, yz],
      [`${name}.bowUp`, yy],
      [`${name}.bowAcross`, zz],
      [`front.${name}.position`, alcove.front[name].f0],
      [`front.${name}.plumb`, alcove.front[name].f1],
    ] as const;
  };
  const { back, rim } = alcove;
  const values = new Map<string, number>([
    ['back.plumb', back.y],
    ['back.twist', back.xy],
    ['back.bowAcross', back.xx],
    ['back.bowUp', back.yy],
    ['rim.height', rim.c],
    ['rim.levelAlong', rim.x],
    ['rim.levelAcross', rim.z],
    ['rim.bowAlong', rim.xx],
    ['rim.bowAcross', rim.zz],
    ...side('left'),
    ...side('right'),
  ]);
  const model = alcoveModel(jobWith([]));
  return model.build(model.parameters.map(({ name }) => values.get(name) ?? unknown(name)));
}

function unknown(name: string): never {
  throw new Error(`an alcove known exactly has no ${name}`);
}
