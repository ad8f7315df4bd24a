import { useCallback, useMemo, useRef } from 'react';
import { AlcoveStage } from '../AlcoveStage';
import { colours } from '../colours';
import { Drawable } from '../Drawable';
import { Polyline } from '../Polyline';
import { type DrawnHeat, heatTags, type LengthWords } from './drawn-heat';
import { HandleProjector, type HandleTrack } from './HandleProjector';
import { HeatWallMesh } from './HeatWallMesh';
import styles from './heat.module.css';
import { SectionHandle } from './SectionHandle';
import { handlePlace, type Section, sectionLine } from './section';

export interface HeatViewProps {
  drawn: DrawnHeat;
  /** mm at either end of the scale, and from contour to contour */
  range: number;
  interval: number;
  section: Section;
  sectionLabel: string;
  sectionText: string;
  onSection: (share: number) => void;
  tags: boolean;
  lengths: LengthWords;
  /** one sentence that says what is drawn */
  description: string;
  calm: boolean;
  reset: number;
}

const HANDLE_STOPS = 25;

/** The walls painted by how far they stand off a plumb or flat plane, with a section to drag along one of them. */
export function HeatView(props: HeatViewProps) {
  return (
    <Drawable besides="The section, the figures and the verdicts work as usual.">
      {(onLost) => <HeatDrawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function HeatDrawing({
  drawn,
  range,
  interval,
  section,
  sectionLabel,
  sectionText,
  onSection,
  tags: tagged,
  lengths,
  description,
  calm,
  reset,
  onLost,
}: HeatViewProps & { onLost: () => void }) {
  const { shape, place, walls, rim, box } = drawn;
  const tags = useMemo(() => (tagged ? heatTags(drawn, lengths) : []), [drawn, tagged, lengths]);
  const handle = useRef<HTMLDivElement>(null);
  const track = useRef<HandleTrack>(null);
  const inTheWay = useCallback(() => {
    if (!track.current || !handle.current) return [];
    const { at } = track.current;
    const { offsetWidth: width, offsetHeight: height } = handle.current;
    return [{ x: at[0], y: at[1], width, height }];
  }, []);
  const { wall, cut, share } = section;
  const field = walls.find(({ name }) => name === wall)!.field;
  const line = useMemo(
    () => sectionLine(shape, { wall, cut, share }, field, place),
    [shape, wall, cut, share, field, place],
  );
  const path = useMemo(
    () =>
      Array.from({ length: HANDLE_STOPS }, (_, i) =>
        handlePlace(shape, { wall, cut, share: i / (HANDLE_STOPS - 1) }, field, place),
      ),
    [shape, wall, cut, field, place],
  );
  return (
    <div className={styles.stage}>
      <AlcoveStage {...{ rim, box, tags, inTheWay, description, calm, reset, onLost }}>
        {walls.map((each) => (
          <HeatWallMesh key={each.name} wall={each} range={range} interval={interval} />
        ))}
        <Polyline points={line} colour={colours.outline} width={3.5} throughWalls />
        <HandleProjector path={path} share={share} element={handle} track={track} />
      </AlcoveStage>
      <SectionHandle
        section={section}
        label={sectionLabel}
        valueText={sectionText}
        element={handle}
        track={track}
        onMove={onSection}
      />
    </div>
  );
}
