import type { Caution, CutMethod } from '../../core';

/** Common practice of the trades, no source; local codes go before it. */
export const generalCautions: string[] = [
  'Local building, plumbing and electrical codes go before anything printed here; leave what they reserve to licensed trades.',
  'Old walls, adhesives and paint can hold asbestos or lead. Where the building is old enough to have them, have them tested before you cut, sand or pull anything off.',
  'Shut the water off and drain the pipes before you touch plumbing. Switch circuits off at the panel and prove them dead; wiring near water is a licensed electrician’s work.',
  'Wear eye and hearing protection with power tools. Unplug, or take the battery out, before you change a blade or a bit.',
  'Cutting, sanding and drilling make dust: cut outdoors or with extraction, and wear a respirator rated for the dust of your sheet’s material.',
  'Adhesives, primers and sealants: follow their makers’ sheets, air the room, keep flames and sparks away, wear gloves.',
  'A grab bar or seat must hold a person. Fasten it to blocking or studs as its maker and local code say; a panel and its adhesive hold nothing.',
  'Large sheets are heavy and catch the wind: carry them with two people.',
];

export const methodCautions: Record<Exclude<CutMethod, 'factory'>, string> = {
  knife:
    'Knife: new blade, cut-resistant glove on the holding hand, straightedge clamped, several light strokes away from the body, then snap over an edge.',
  jigsaw:
    'Jigsaw: clamp the sheet on both sides of the cut, fine blade, let it stop before you lift it, keep the hand from under the sheet.',
  plane: 'Plane or sand: clamp the sheet, go from the ends towards the middle, wear a respirator.',
};

export const holeCaution =
  'Holes: drill at low speed from the face the saw wants, with a board clamped behind; never hold a small sheet by hand.';

export const printCaution =
  'Measure twice: a template is no better than its readings. Try every panel dry before any adhesive.';

export const pieceCautions: Record<Caution, string> = {
  saw: 'Mitre saw: guard on, piece held against the fence, hands clear, let the blade stop.',
  knife: 'Knife: sharp blade, straightedge clamped, cut away from the body.',
  jigsaw: 'Jigsaw: clamp both sides, hands from under the work.',
  dust: 'Dust: extraction or outdoors, and a respirator rated for it.',
  adhesive: 'Adhesive: air the room, no flame, gloves.',
  'thin-piece': 'Thin pieces break and jump: hold them with a push stick or a clamp, never by hand near a blade.',
  load: 'A shelf is no seat and no grab bar; nothing that a person may lean on hangs from it.',
};
