import type { CDPSession } from '@playwright/test';

interface Snapshot {
  snapshot: { meta: { node_fields: string[]; node_types: [string[]] } };
  nodes: number[];
}

/** What the page's own script makes; compiled code and the browser's own things are other types. */
const OWN = new Set([
  'array',
  'bigint',
  'closure',
  'concatenated string',
  'number',
  'object',
  'regexp',
  'sliced string',
  'string',
  'symbol',
]);

/** Bytes of the objects of a page's script, its compiled code left out: that grows and shrinks as the browser sees fit. */
export async function objectBytes(session: CDPSession): Promise<number> {
  const chunks: string[] = [];
  const take = ({ chunk }: { chunk: string }) => void chunks.push(chunk);
  session.on('HeapProfiler.addHeapSnapshotChunk', take);
  await session.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  session.off('HeapProfiler.addHeapSnapshotChunk', take);
  const { snapshot, nodes } = JSON.parse(chunks.join('')) as Snapshot;
  const {
    node_fields: fields,
    node_types: [types],
  } = snapshot.meta;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length) {
    if (OWN.has(types[nodes[at + type]!]!)) bytes += nodes[at + size]!;
  }
  return bytes;
}
