import { Tabs } from 'radix-ui';
import { Suspense, useState } from 'react';
import { AlcovePane, panelOf } from '../alcove';
import { Figures, Problems, Verdicts } from '../findings';
import { loadedSoon, PartTabs } from '../parts';
import { goTo, type SitePart } from '../place';
import { Basics } from './Basics';
import { Elevation } from './elevation';
import { Entry } from './entry';
import { FieldSheet } from './FieldSheet';
import { Fixtures } from './Fixtures';
import { Picked } from './Picked';
import { Readings } from './readings';
import { Studs } from './Studs';
import { SurveyRecord } from './SurveyRecord';
import styles from './site.module.css';
import { SurveyProvider } from './survey';

const HeatPane = loadedSoon(() => import('../heat').then(({ HeatPane }) => HeatPane));
const ScanLook = loadedSoon(() => import('./scan').then(({ ScanLook }) => ScanLook));
const ScanPart = loadedSoon(() => import('./scan').then(({ ScanPart }) => ScanPart));

const parts: readonly (readonly [SitePart, string])[] = [
  ['readings', 'Readings'],
  ['scan', 'Scan'],
  ['truth', 'How true it is'],
  ['holes', 'Holes'],
  ['basics', 'Tub and tools'],
];

/** Entered with no need of the drawing: in one column they stand before it. */
const formFirst: ReadonlySet<SitePart> = new Set(['holes', 'basics']);

/** In the alcove: readings in, and what they say about the walls. */
export function Site({ part }: { part: SitePart }) {
  const [picked, setPicked] = useState<string | null>(null);
  const look = (
    <div key="look" className={styles.look}>
      {part === 'readings' && <Elevation picked={panelOf(picked)} onPick={setPicked} />}
      <Suspense fallback={<p className={styles.wait}>Loading the drawing…</p>}>
        {part === 'truth' && <HeatPane />}
        {part === 'scan' && <ScanLook picked={picked} onPick={setPicked} />}
      </Suspense>
      {part !== 'truth' && part !== 'scan' && <AlcovePane picked={picked} onPick={setPicked} />}
      {picked && <Picked item={picked} />}
      <Problems shown={null} onShow={(item) => goTo({ name: 'bench', item })} />
    </div>
  );
  const enter = (
    <div key="enter" className={styles.enter}>
      <Tabs.Content value="readings" tabIndex={-1}>
        <div className={styles.entering}>
          <Entry />
          <Readings />
        </div>
      </Tabs.Content>
      <Tabs.Content value="scan" tabIndex={-1}>
        <Suspense fallback={<p className={styles.wait}>Loading…</p>}>
          <ScanPart />
        </Suspense>
      </Tabs.Content>
      <Tabs.Content value="truth" tabIndex={-1}>
        <Verdicts />
        <Figures />
        <SurveyRecord />
      </Tabs.Content>
      <Tabs.Content value="holes" tabIndex={-1}>
        <Fixtures />
        <Studs />
      </Tabs.Content>
      <Tabs.Content value="basics" tabIndex={-1}>
        <Basics />
        <FieldSheet />
      </Tabs.Content>
    </div>
  );
  return (
    <SurveyProvider>
      <PartTabs
        label="Parts of the survey"
        parts={parts}
        value={part}
        onChoose={(part) => goTo({ name: 'site', part })}
        className={part === 'readings' ? `${styles.site} ${styles.reading}` : styles.site}
      >
        {formFirst.has(part) ? [enter, look] : [look, enter]}
      </PartTabs>
    </SurveyProvider>
  );
}
