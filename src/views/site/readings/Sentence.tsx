import type { ReactNode } from 'react';
import type { Side, WallName } from '../../../core';
import { type DraftReading, type FieldPath, useSession } from '../../../job';
import { ChoiceField, NumberField, SidedField } from '../../parts';
import styles from '../rows.module.css';

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

function Phrase({ children }: { children: ReactNode }) {
  return <span className={styles.phrase}>{children}</span>;
}

/** Words that go without saying where room is short. */
function Tail({ children }: { children: string }) {
  return <span className={styles.tail}>{children}</span>;
}

function Corner({ path, value }: { path: FieldPath; value: Side | undefined }) {
  return (
    <Phrase>
      <ChoiceField label="corner" value={value} choices={sides} onChoose={useChoice(path)} /> <Tail>corner</Tail>
    </Phrase>
  );
}

function Wall({ path, value }: { path: FieldPath; value: WallName | undefined }) {
  return (
    <Phrase>
      <ChoiceField label="wall" value={value} choices={walls} onChoose={useChoice(path)} /> <Tail>wall</Tail>
    </Phrase>
  );
}

function SideWall({ path, value }: { path: FieldPath; value: Side | undefined }) {
  return (
    <Phrase>
      <ChoiceField label="wall" value={value} choices={sides} onChoose={useChoice(path)} /> <Tail>wall</Tail>
    </Phrase>
  );
}

function Height({ path }: { path: FieldPath }) {
  return (
    <Phrase>
      <SidedField path={path} label="height from the level line" sides={['above', 'below']} /> <Tail>level line</Tail>
    </Phrase>
  );
}

function Out({ path }: { path: FieldPath }) {
  return (
    <Phrase>
      <NumberField path={path} label="distance out from the back wall" /> out from the back
    </Phrase>
  );
}

/** Along a wall: to a side of the plumb line on the back wall, out from the back on a side wall. */
function At({ path, wall }: { path: FieldPath; wall: WallName | undefined }) {
  if (wall !== 'back') return <Out path={path} />;
  return (
    <Phrase>
      <SidedField path={path} label="place along the wall" sides={['right of', 'left of']} /> plumb line
    </Phrase>
  );
}

const sentences: { [K in DraftReading['kind']]: (props: Of<K>) => ReactNode } = {
  'tape-to-corner': ({ reading }) => (
    <>
      <Corner path={pathOf(reading, 'side')} value={reading.side} />
      <Height path={pathOf(reading, 'height')} />
    </>
  ),
  'tape-to-rim': ({ reading }) => (
    <>
      <Wall path={pathOf(reading, 'wall')} value={reading.wall} />
      <At path={pathOf(reading, 'at')} wall={reading.wall} />
    </>
  ),
  span: ({ reading }) => (
    <>
      <Height path={pathOf(reading, 'height')} />
      <Out path={pathOf(reading, 'at')} />
    </>
  ),
  plumb: ({ reading }) => (
    <>
      <Wall path={pathOf(reading, 'wall')} value={reading.wall} />
      <At path={pathOf(reading, 'at')} wall={reading.wall} />
    </>
  ),
  straightedge: ({ reading }) => (
    <>
      <Wall path={pathOf(reading, 'wall')} value={reading.wall} />
      <span className={styles.end}>
        from <At path={pathOf(reading, 'from', 'at')} wall={reading.wall} />
        <Height path={pathOf(reading, 'from', 'height')} />
      </span>
      <span className={styles.end}>
        to <At path={pathOf(reading, 'to', 'at')} wall={reading.wall} />
        <Height path={pathOf(reading, 'to', 'height')} />
      </span>
    </>
  ),
  square: ({ reading }) => (
    <>
      <Corner path={pathOf(reading, 'side')} value={reading.side} />
      <Height path={pathOf(reading, 'height')} />
      <Phrase>
        <NumberField path={pathOf(reading, 'alongBack')} label="leg along the back wall" /> along back wall
      </Phrase>
      <Phrase>
        <NumberField path={pathOf(reading, 'alongSide')} label="leg along the side wall" /> along side wall
      </Phrase>
    </>
  ),
  angle: ({ reading }) => (
    <>
      <Corner path={pathOf(reading, 'side')} value={reading.side} />
      <Height path={pathOf(reading, 'height')} />
    </>
  ),
  diagonal: ({ reading }) => (
    <>
      <span className={styles.end}>
        from <Corner path={pathOf(reading, 'from', 'side')} value={reading.from?.side} />
        <Height path={pathOf(reading, 'from', 'height')} />
      </span>
      <span className={styles.end}>
        to <Corner path={pathOf(reading, 'to', 'side')} value={reading.to?.side} />
        <Height path={pathOf(reading, 'to', 'height')} />
      </span>
    </>
  ),
  depth: ({ reading }) => (
    <>
      <SideWall path={pathOf(reading, 'wall')} value={reading.wall} />
      <Height path={pathOf(reading, 'height')} />
    </>
  ),
};

/** Where a reading was taken, as words with fields in their places. */
export function Sentence({ reading }: { reading: DraftReading }) {
  const Words = sentences[reading.kind] as (props: { reading: DraftReading }) => ReactNode;
  return (
    <div className={styles.sentence}>
      <Words reading={reading} />
    </div>
  );
}
