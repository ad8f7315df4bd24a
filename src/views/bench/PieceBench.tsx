import { useMemo, useState } from 'react';
import type { Job, Piece, Result } from '../../core';
import { pieceDrawing, pieceDxf, pieceSvg, pieceTemplateNotes, type View } from '../../output';
import { AlcovePane } from '../alcove';
import { Problems } from '../findings';
import { Card } from '../parts';
import { goTo } from '../place';
import styles from './bench.module.css';
import type { Group } from './bench-item';
import { CuttingCautions } from './CuttingCautions';
import { ContourForm } from './contour';
import { Files } from './Files';
import { CuttingForm, LegForm, ShelfForm, StockForm, TrimForm } from './forms';
import { PieceEdges } from './PieceEdges';
import { PieceStock } from './PieceStock';
import { pieceSketch } from './sketch';
import { TemplateCard } from './TemplateCard';
import { TryFit } from './TryFit';

interface PieceBenchProps {
  group: Group;
  piece: Piece | null;
  job: Job;
  result: Result;
}

const noneWords: Partial<Record<Group, string>> = {
  trim: 'This job has no trim. Choose below which pieces are made.',
  legs: 'This job has no leg: no side panel stands out far enough past the apron, or legs are switched off.',
  shelves: 'This job has no shelf.',
  fillers:
    'This job needs no filler strip: nowhere would the trim stand hollow. They come by themselves where it would.',
};

/** A piece of trim, a leg, a filler or a shelf at the saw, with what it follows from. */
export function PieceBench({ group, piece, job, result }: PieceBenchProps) {
  const show = (item: string) => goTo({ name: 'bench', item });
  return (
    <div className={styles.bench}>
      <div className={styles.sheet}>
        {piece ? (
          <>
            <PieceTemplate key={piece.id} piece={piece} job={job} result={result} />
            <TryFit piece={piece.id} job={job} result={result} />
          </>
        ) : (
          <Card title="Nothing to cut">
            <p>{noneWords[group]}</p>
          </Card>
        )}
      </div>
      <div className={styles.beside}>
        <Problems shown={null} onShow={show} />
        <CuttingCautions />
        <AlcovePane picked={piece?.id ?? null} onPick={show} />
        {group === 'trim' && <TrimForm />}
        {group === 'trim' && <StockForm />}
        {group === 'legs' && <LegForm />}
        {group === 'legs' && <ContourForm />}
        {group === 'shelves' && <ShelfForm shown={piece?.id ?? null} />}
        {group === 'fillers' && <CuttingForm />}
      </div>
    </div>
  );
}

function PieceTemplate({ piece, job, result }: { piece: Piece; job: Job; result: Result }) {
  const [view, setView] = useState<View>('face');
  const drawing = useMemo(() => pieceDrawing(piece, job, view), [piece, job, view]);
  const sketch = useMemo(() => pieceSketch(drawing), [drawing]);
  const views: readonly (readonly [View, string])[] =
    piece.kind === 'shelf'
      ? [
          ['face', 'Top up'],
          ['back', 'Underside up'],
        ]
      : [
          ['face', 'Face up'],
          ['back', 'Back up'],
        ];
  return (
    <>
      <TemplateCard title={drawing.title} statement={drawing.statement} {...{ sketch, view, views }} onView={setView}>
        <ul className={styles.notes}>
          {pieceTemplateNotes(drawing).map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
        <PieceStock piece={piece} job={job} result={result} />
      </TemplateCard>
      <PieceEdges drawing={drawing} />
      <Files
        job={job}
        result={result}
        view={view}
        title={drawing.title}
        name={piece.id.replace(/[^\w]+/g, '-')}
        svg={() => pieceSvg(drawing)}
        dxf={() => pieceDxf(drawing)}
      />
    </>
  );
}
