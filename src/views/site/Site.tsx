import { useState } from 'react';
import type { PanelName } from '../../core';
import { AlcovePane } from '../alcove';
import { Figures, Problems } from '../findings';
import { goTo } from '../shell/place';
import { Basics } from './Basics';
import { Fixtures } from './Fixtures';
import { Picked } from './Picked';
import { Readings } from './readings';
import styles from './site.module.css';

/** In the alcove: readings in, and what they say about the walls. */
export function Site() {
  const [picked, setPicked] = useState<PanelName | null>(null);
  return (
    <div className={styles.site}>
      <div className={styles.look}>
        <AlcovePane picked={picked} onPick={setPicked} />
        {picked && <Picked panel={picked} />}
        <Problems onShow={(panel) => goTo({ name: 'bench', panel })} />
      </div>
      <div className={styles.enter}>
        <Readings />
        <Fixtures />
        <Basics />
      </div>
      <div className={styles.judge}>
        <Figures />
      </div>
    </div>
  );
}
