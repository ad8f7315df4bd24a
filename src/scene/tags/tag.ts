import { type DrawnAlcove, isWithin, type Layer, type Vec3 } from '../geometry';

export type TagKind = 'fit' | 'line' | 'sliver' | 'gap' | 'hole' | 'piece';

/** Words at a place in the drawing. */
export interface Tag {
  key: string;
  kind: TagKind;
  text: string;
  at: Vec3;
  /** false where something stands before it; without it nothing does */
  seenFrom?: (eye: Vec3) => boolean;
}

/** The words to draw, what matters most first; with a panel or a piece picked, its own alone. */
export function tagsOf(
  drawn: DrawnAlcove,
  picked: string | null,
  layers: Record<Layer, boolean>,
  lengthText: (mm: number) => string,
): Tag[] {
  const shown = layers.panels ? drawn.panels.filter(({ name }) => picked === null || picked === name) : [];
  const stripped = layers.slivers ? shown : [];
  const strips = stripped.flatMap(({ name, strips: all }) =>
    all.map(({ kind, edge, widest }): Tag & { width: number } => ({
      key: `${name} ${edge} ${kind}`,
      kind,
      text: stripText(kind, widest.width, lengthText),
      at: widest.at,
      width: widest.width,
    })),
  );
  const holes = shown.flatMap(({ name, holes: all }) =>
    all.map(
      ({ hole, at }): Tag =>
        isWithin(hole)
          ? { key: `${name} ${hole.id}`, kind: 'hole', text: hole.id, at }
          : { key: `${name} ${hole.id}`, kind: 'gap', text: `${hole.id}: off the panel`, at },
    ),
  );
  const lines = drawn.lines.map(
    ({ name, points }): Tag => ({
      key: name,
      kind: 'line',
      text: name,
      at: name === 'plumb line' ? points[points.length - 1]! : points[0]!,
    }),
  );
  const widestFirst = strips.sort((a, b) => b.width - a.width);
  const gaps = (tag: Tag) => tag.kind === 'gap';
  const others = (tag: Tag) => tag.kind !== 'gap';
  const pieces = drawn.pieces
    .filter(({ id, layer }) => id === picked && layers[layer])
    .map(({ id, name, at }): Tag => ({ key: id, kind: 'piece', text: name, at }));
  return [
    ...pieces,
    ...widestFirst.filter(gaps),
    ...holes.filter(gaps),
    ...lines,
    ...widestFirst.filter(others),
    ...holes.filter(others),
  ];
}

/** Beyond this a strip is a piece of sheet rather than a sliver, mm. */
const widestSliver = 100;

const stripText = (kind: 'sliver' | 'gap', width: number, lengthText: (mm: number) => string): string =>
  `${kind === 'sliver' && width > widestSliver ? 'cut off' : kind} ${lengthText(width)}`;
