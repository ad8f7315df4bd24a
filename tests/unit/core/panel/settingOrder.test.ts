import { expect, it } from 'vitest';
import { settingOrder } from '../../../../src/core/panel';
import { jobWith } from '../../../simulate';

it.each([
  ['right', ['back', 'left', 'right']],
  ['left', ['back', 'right', 'left']],
] as const)('a wet wall on the %s is set last', (wetWall, order) => {
  const job = jobWith([]);
  expect(settingOrder({ fit: { ...job.fit, wetWall } })).toEqual(order);
});
