import type { ReactNode } from 'react';
import type { Side, WallName } from '../../../core';
import { type DraftReading, type FieldPath, useSession } from '../../../job';
import { ChoiceField, NumberField, SidedField } from '../../parts';
import { GapTable } from './GapTable';
import styles from './readings.module.css';

const sides: readonly (readonly [Side, string])[] = [
  ['left', 'left'],
  ['right', 'right'],
];
const walls: readonly (readonly [WallName, string])[] = [
  ['left', 'left'],
  ['back', 'back'],
  ['right', 'right'],
];

type Of<K extends DraftReading['kind']> = { reading: Extract<DraftReading, { kind: K }> };

const useChoice = (path: FieldPath) => {
  const { choose } = useSession().draft.getState();
  return (value: string) => choose(path, value);
};

const pathOf = (reading: DraftReading, ...rest: (string | number)[]): FieldPath => ['readings', reading.id, ...rest];

function SideChoice({ path, value }: { path: FieldPath; value: Side | undefined }) {
  return <ChoiceField label="corner" value={value} choices={sides} onChoose={useChoice(path)} />;
}

function WallChoice({ path, value }: { path: FieldPath; value: WallName | undefined }) {
  return <ChoiceField label="wall" value={value} choices={walls} onChoose={useChoice(path)} />;
}

function Height({ path }: { path: FieldPath }) {
  return (
    <span className={styles.phrase}>
      <SidedField path={path} label="height" sides={['above', 'below']} /> the level line
    </span>
  );
}

/** Along a wall: to a side of the plumb line on the back wall, out from the back on a side wall. */
function At({ path, wall }: { path: FieldPath; wall: WallName | undefined }) {
  return wall === 'back' ? (
    <span className={styles.phrase}>
      <SidedField path={path} label="place along the wall" sides={['right', 'left']} /> of the plumb line
    </span>
  ) : (
    <span className={styles.phrase}>
      <NumberField path={path} label="distance out from the back wall" /> out from the back wall
    </span>
  );
}

function Value({ reading, label, children }: { reading: DraftReading; label: string; children?: ReactNode }) {
  return (
    <span className={styles.value}>{children ?? <NumberField path={pathOf(reading, 'value')} label={label} />}</span>
  );
}

const sentences: { [K in DraftReading['kind']]: (props: Of<K>) => ReactNode } = {
  'tape-to-corner': ({ reading }) => (
    <>
      to the <SideChoice path={pathOf(reading, 'side')} value={reading.side} /> corner,{' '}
      <Height path={pathOf(reading, 'height')} />:
      <Value reading={reading} label="distance to the corner" />
    </>
  ),
  'tape-to-rim': ({ reading }) => (
    <>
      on the <WallChoice path={pathOf(reading, 'wall')} value={reading.wall} /> wall,{' '}
      <At path={pathOf(reading, 'at')} wall={reading.wall} />:
      <Value reading={reading} label="drop to the rim" />
    </>
  ),
  span: ({ reading }) => (
    <>
      <Height path={pathOf(reading, 'height')} />,
      <span className={styles.phrase}>
        <NumberField path={pathOf(reading, 'at')} label="distance out from the back wall" /> out from the back wall
      </span>
      :
      <Value reading={reading} label="distance from wall to wall" />
    </>
  ),
  plumb: ({ reading }) => (
    <>
      on the <WallChoice path={pathOf(reading, 'wall')} value={reading.wall} /> wall,{' '}
      <At path={pathOf(reading, 'at')} wall={reading.wall} />:
      <GapTable reading={reading} />
    </>
  ),
  straightedge: ({ reading }) => (
    <>
      on the <WallChoice path={pathOf(reading, 'wall')} value={reading.wall} /> wall, from{' '}
      <At path={pathOf(reading, 'from', 'at')} wall={reading.wall} /> and{' '}
      <Height path={pathOf(reading, 'from', 'height')} />, to{' '}
      <At path={pathOf(reading, 'to', 'at')} wall={reading.wall} /> and{' '}
      <Height path={pathOf(reading, 'to', 'height')} />: at the middle
      <Value reading={reading} label="distance of the wall behind the straightedge">
        <SidedField
          path={pathOf(reading, 'value')}
          label="distance of the wall behind the straightedge"
          sides={['hollow', 'hump']}
        />
      </Value>
    </>
  ),
  square: ({ reading }) => (
    <>
      in the <SideChoice path={pathOf(reading, 'side')} value={reading.side} /> corner,{' '}
      <Height path={pathOf(reading, 'height')} />,
      <span className={styles.phrase}>
        <NumberField path={pathOf(reading, 'alongBack')} label="leg along the back wall" /> along the back wall
      </span>{' '}
      and
      <span className={styles.phrase}>
        <NumberField path={pathOf(reading, 'alongSide')} label="leg along the side wall" /> along the side wall
      </span>
      : across
      <Value reading={reading} label="distance between the marks" />
    </>
  ),
  angle: ({ reading }) => (
    <>
      in the <SideChoice path={pathOf(reading, 'side')} value={reading.side} /> corner,{' '}
      <Height path={pathOf(reading, 'height')} />:
      <Value reading={reading} label="inside angle">
        <NumberField path={pathOf(reading, 'value')} kind="degrees" label="inside angle" />
      </Value>
    </>
  ),
  diagonal: ({ reading }) => (
    <>
      from the <SideChoice path={pathOf(reading, 'from', 'side')} value={reading.from?.side} /> corner{' '}
      <Height path={pathOf(reading, 'from', 'height')} />
      to the <SideChoice path={pathOf(reading, 'to', 'side')} value={reading.to?.side} /> corner{' '}
      <Height path={pathOf(reading, 'to', 'height')} />:
      <Value reading={reading} label="length of the diagonal" />
    </>
  ),
  depth: ({ reading }) => (
    <>
      on the <SideChoice path={pathOf(reading, 'wall')} value={reading.wall} /> wall,{' '}
      <Height path={pathOf(reading, 'height')} />:
      <Value reading={reading} label="distance to the front edge" />
    </>
  ),
};

/** A reading as a sentence with its fields in their places. */
export function Sentence({ reading }: { reading: DraftReading }) {
  const Words = sentences[reading.kind] as (props: { reading: DraftReading }) => ReactNode;
  return (
    <div className={styles.sentence}>
      <Words reading={reading} />
    </div>
  );
}
