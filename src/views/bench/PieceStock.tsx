import { formatLength, type Job, type Piece, type Result } from '../../core';
import { placedWords, sizeWords } from '../../output';
import { useStockPlan } from '../van';
import styles from './bench.module.css';

interface PieceStockProps {
  piece: Piece;
  job: Job;
  result: Result;
}

/** Which stock length or sheet a piece is cut from. */
export function PieceStock(props: PieceStockProps) {
  if (props.piece.stock === 'trim') return <FromLength {...props} />;
  if (props.piece.stock === 'sheet') return <FromSheet {...props} />;
  return null;
}

function FromLength({ piece, job, result }: PieceStockProps) {
  const planning = useStockPlan(result, job);
  const words = () => {
    if (planning.state === 'planning') return 'Planning which length it is cut from…';
    if (planning.state === 'failed') return `The lengths could not be planned (${planning.message}).`;
    const { bars } = planning.plan;
    const at = bars.findIndex(({ cuts }) => cuts.some((cut) => cut.piece === piece.id));
    if (at < 0) return 'No stock length is long enough for it.';
    const place = bars[at]!.cuts.findIndex((cut) => cut.piece === piece.id);
    return `Cut from length ${at + 1} of ${bars.length} (${formatLength(bars[at]!.length, { unit: job.display })}), piece ${place + 1} from its end.`;
  };
  return (
    <p className={styles.about} role="status">
      {words()}
    </p>
  );
}

function FromSheet({ piece, job, result }: PieceStockProps) {
  const lines = result.layout.sheets.flatMap((sheet, i) =>
    sheet.placed
      .filter((placed) => placed.piece === piece.id || placed.piece.endsWith(`.${piece.id}`))
      .map((placed) => `Sheet ${i + 1} (${sizeWords(sheet, job)}): ${placedWords(placed, job, result)}.`),
  );
  return (
    <p className={styles.about}>
      {lines.length === 0 ? 'It fits on no sheet.' : `Cut from an offcut. ${lines.join(' ')}`}
    </p>
  );
}
