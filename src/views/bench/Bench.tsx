import { useSessionState } from '../../job';
import { BenchList } from './BenchList';
import { BedBench } from './bed';
import { benchItem } from './bench-item';
import { PanelBench } from './PanelBench';
import { PieceBench } from './PieceBench';
import { SheetsBench } from './SheetsBench';
import { WayBench } from './way';

/** At the saw: all that is cut, each piece with its flat template, numbers and files. */
export function Bench({ item }: { item: string }) {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  if (!result || !job) return <p>Working out the panels…</p>;
  const shown = benchItem(item, result);
  const { group, panel, piece } = shown;
  return (
    <>
      <BenchList shown={shown} result={result} />
      {panel && group === 'panels' && <PanelBench panel={panel} job={job} result={result} />}
      {panel && group === 'ways' && <WayBench key={panel} panel={panel} job={job} result={result} />}
      {panel && group === 'beds' && <BedBench panel={panel} job={job} result={result} />}
      {group === 'sheets' && <SheetsBench job={job} result={result} />}
      {!panel && group !== 'sheets' && group !== 'ways' && group !== 'beds' && (
        <PieceBench group={group} piece={piece} job={job} result={result} />
      )}
    </>
  );
}
