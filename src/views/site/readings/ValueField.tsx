import type { DraftReading } from '../../../job';
import { NumberField, SidedField } from '../../parts';
import { kindWords } from './kinds';

/** What was read; a hung line has its gaps instead. */
export function ValueField({ reading }: { reading: Exclude<DraftReading, { kind: 'plumb' }> }) {
  const path = ['readings', reading.id, 'value'];
  const label = `${reading.id}, ${kindWords[reading.kind].name.toLowerCase()}: value`;
  switch (reading.kind) {
    case 'straightedge':
      return <SidedField path={path} label={label} sides={['hollow', 'hump']} />;
    case 'angle':
      return <NumberField path={path} label={label} kind="degrees" />;
    default:
      return <NumberField path={path} label={label} />;
  }
}
