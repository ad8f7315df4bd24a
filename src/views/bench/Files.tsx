import { useState } from 'react';
import type { Job, Result } from '../../core';
import { download, jobFileStem } from '../../job';
import { jobPackPdf, loadBrowserFonts, type PaperName, type View } from '../../output';
import { Card, ChoiceField, useMaking } from '../parts';
import { withLengthsPlanned } from '../van';
import styles from './bench.module.css';

const papers: readonly (readonly [PaperName, string])[] = [
  ['letter', 'Letter'],
  ['tabloid', 'Tabloid'],
  ['a4', 'A4'],
  ['a3', 'A3'],
  ['roll', 'Roll, 24 in wide'],
];

interface FilesProps {
  job: Job;
  result: Result;
  view: View;
  /** of the panel or piece shown */
  title: string;
  /** for its files */
  name: string;
  svg: () => string;
  dxf: () => Promise<string>;
}

/** Files of a panel or piece and of the whole job; their code is loaded when first asked for. */
export function Files({ job, result, view, title, name, svg, dxf }: FilesProps) {
  const { making, make } = useMaking();
  const [paper, setPaper] = useState<PaperName>(job.display === 'in' ? 'letter' : 'a4');
  const stem = jobFileStem(job);

  const saveSvg = () => make('SVG template', async () => download(`${stem}-${name}.svg`, svg(), 'image/svg+xml'));
  const saveDxf = () => make('DXF template', async () => download(`${stem}-${name}.dxf`, await dxf(), 'image/vnd.dxf'));
  const pdf = () =>
    make('job pack', async () => {
      const bytes = await jobPackPdf(job, await withLengthsPlanned(result, job), await loadBrowserFonts(), {
        paper,
        view,
      });
      download(`${stem}-job-pack.pdf`, new Uint8Array(bytes), 'application/pdf');
    });

  return (
    <Card title="Files">
      <div className={styles.files}>
        <button type="button" disabled={making !== null} onClick={saveSvg}>
          {title}: SVG
        </button>
        <button type="button" disabled={making !== null} onClick={saveDxf}>
          {title}: DXF
        </button>
      </div>
      <div className={styles.files}>
        <ChoiceField label="Paper" labelShown value={paper} choices={papers} onChoose={setPaper} />
        <button type="button" disabled={making !== null} onClick={pdf}>
          Whole job: PDF at 1:1
        </button>
      </div>
      <p className={styles.about} role="status">
        {making === null
          ? 'Print at 100 %, then measure the check bar before you trust a page.'
          : `Making the ${making}…`}
      </p>
    </Card>
  );
}
