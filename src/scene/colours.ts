/** Colours of the drawing, sRGB. Each is also told apart by shape, hatching or a label. */
export const colours = {
  room: '#e7e3da',
  wall: '#b9b3a6',
  panel: '#f4f6f5',
  panelPicked: '#cfe6e3',
  outline: '#38474b',
  outlinePicked: '#0b5d57',
  rim: '#ffffff',
  controlLine: '#1d4f91',
  traced: '#0b5d57',
  sliver: '#f0b429',
  sliverStripe: '#6b4300',
  gap: '#d64550',
  gapStripe: '#ffffff',
  hole: '#38474b',
  holeOff: '#b3261e',
} as const;
