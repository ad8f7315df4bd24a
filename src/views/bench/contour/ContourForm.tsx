import type { Point } from '../../../core';
import { useDraft } from '../../../job';
import { Card, NumberField } from '../../parts';
import styles from '../bench.module.css';
import { ContourPicture } from './ContourPicture';
import { GaugeForm } from './GaugeForm';
import { PhotoTrace } from './PhotoTrace';
import { PointRows } from './PointRows';

/** Shape of the rim where it rolls over, and of the apron below: offsets, a gauge's line, or a traced photo. */
export function ContourForm() {
  const rim = useDraft(({ draft }) => draft.job.rim);
  const [outward, rise] = rim.profile.at(-1) ?? [-10, 0];
  const [back, low] = rim.apron.at(-1) ?? [0, rise];
  const nextOnRim: Point = [outward + 10, rim.profile.length === 0 ? 0 : rise - 4];
  const nextBelow: Point = [back, low - 60];
  return (
    <Card title="Contour of rim and apron">
      <ContourPicture rim={rim} />
      <div className={styles.form}>
        <NumberField path={['rim', 'width']} label="Back wall to its outer face" labelShown />
        <NumberField path={['rim', 'contourSd']} label="Standard deviation across it" labelShown />
      </div>
      <PointRows
        list="profile"
        title="Rim, rolling over"
        about="Out from where the rim leaves its plane, and down from that plane. The last point is the outer face."
        points={rim.profile}
        next={rim.profile.length < 200 && nextOnRim[0] <= Math.min(500, rim.width) ? nextOnRim : null}
      />
      <PointRows
        list="apron"
        title="Apron, below that"
        about="Hold a straightedge plumb against the outer face: how far back the apron stands, and how far below the rim’s plane."
        points={rim.apron}
        next={rim.apron.length < 400 && nextBelow[1] >= -1500 ? nextBelow : null}
      />
      <details className={styles.more}>
        <summary>From a contour gauge</summary>
        <GaugeForm />
      </details>
      <details className={styles.more}>
        <summary>From a photo</summary>
        <PhotoTrace />
      </details>
    </Card>
  );
}
