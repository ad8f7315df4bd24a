import { DropdownMenu } from 'radix-ui';
import type { Fixture, WallName } from '../../core';
import { type DraftFixture, useDraft, useSession } from '../../job';
import { Card, ChoiceField, NumberField, Plus, SidedField } from '../parts';
import lists from './lists.module.css';
import { RowHead } from './RowHead';
import { WaitingLine } from './readings';
import rows from './rows.module.css';
import styles from './site.module.css';

const kindNames: Record<Fixture['kind'], string> = {
  valve: 'valve',
  spout: 'spout',
  'shower-head': 'shower head',
  'hand-shower': 'hand shower',
  'body-spray': 'body spray',
  'grab-bar': 'grab bar',
  other: 'other',
};
const kinds = Object.entries(kindNames) as [Fixture['kind'], string][];
const walls: readonly (readonly [WallName, string])[] = [
  ['left', 'left'],
  ['back', 'back'],
  ['right', 'right'],
];

/** What comes through the panels: where its centre lies and what hole it takes. */
export function Fixtures() {
  const fixtures = useDraft(({ draft }) => draft.job.fixtures);
  const { addFixture } = useSession().draft.getState();
  return (
    <Card
      title="Holes for fixtures"
      rows
      aside={
        <DropdownMenu.Root modal={false}>
          <DropdownMenu.Trigger className={lists.add} data-adds>
            <Plus /> Add a fixture
          </DropdownMenu.Trigger>
          <DropdownMenu.Portal>
            <DropdownMenu.Content className={lists.kinds} align="end" sideOffset={6} collisionPadding={8}>
              {kinds.map(([kind, name]) => (
                <DropdownMenu.Item key={kind} className={lists.kind} onSelect={() => addFixture(kind)}>
                  <strong>{name}</strong>
                </DropdownMenu.Item>
              ))}
            </DropdownMenu.Content>
          </DropdownMenu.Portal>
        </DropdownMenu.Root>
      }
    >
      <p className={styles.about}>
        Shut the water off before plumbing is opened; keep power tools and leads away from water. A grab bar must be
        fixed to blocking in the wall, not to a panel.
      </p>
      {fixtures.length === 0 && <p>No hole yet.</p>}
      <ul className={lists.list}>
        {fixtures.map((fixture) => (
          <FixtureRow key={fixture.id} fixture={fixture} />
        ))}
      </ul>
    </Card>
  );
}

function FixtureRow({ fixture }: { fixture: DraftFixture }) {
  const { choose, putOnWall, remove } = useSession().draft.getState();
  const path = ['fixtures', fixture.id] as const;
  return (
    <li className={rows.reading} data-fixture={fixture.id} data-row>
      <RowHead name={fixture.id} onRemove={() => remove('fixtures', fixture.id)} />
      <div className={rows.sentence}>
        <span className={rows.phrase}>
          <ChoiceField
            label={`${fixture.id}: fixture`}
            value={fixture.kind}
            choices={kinds}
            onChoose={(kind) => choose([...path, 'kind'], kind)}
          />
        </span>
        <span className={rows.phrase}>
          <ChoiceField
            label="wall"
            value={fixture.wall}
            choices={walls}
            onChoose={(wall) => putOnWall(fixture.id, wall)}
          />
          wall,
        </span>
        <span className={rows.phrase}>
          hole <NumberField path={[...path, 'hole']} label="diameter of the hole" /> across,
        </span>
        <span className={rows.phrase}>
          centre <NumberField path={[...path, 'aboveRim']} label="height above the rim" /> above the rim,
        </span>
        <span className={rows.phrase}>
          taken at
          <ChoiceField
            label={`${fixture.id}: taken at`}
            value={fixture.takenAt ?? 'face'}
            onChoose={(at) => choose([...path, 'takenAt'], at)}
            choices={[
              ['face', "the panel's face"],
              ['wall', 'the bare wall'],
            ]}
          />
          {fixture.takenAt === 'wall' && 'with the pipe square to it,'}
        </span>
        {fixture.wall === 'back' ? (
          <span className={rows.phrase}>
            <SidedField
              path={[...path, 'fromPlumbLine']}
              label="distance from the plumb line"
              sides={['right of', 'left of']}
            />
            plumb line
          </span>
        ) : (
          <span className={rows.phrase}>
            <NumberField path={[...path, 'fromBack']} label="distance from the back" /> from the
            <ChoiceField
              label="measured from"
              value={fixture.fromBackOf}
              onChoose={(of) => choose([...path, 'fromBackOf'], of)}
              choices={[
                ['panel', 'face of the back panel'],
                ['wall', 'bare back wall'],
              ]}
            />
          </span>
        )}
      </div>
      <WaitingLine list="fixtures" id={fixture.id} />
    </li>
  );
}
