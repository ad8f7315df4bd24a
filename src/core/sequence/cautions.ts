/**
 * Usual cautions beside the steps where they belong. None is more certain than the product's sheet, local code or a
 * licensed trade.
 */
export const cautions = {
  water: 'Shut off and drain the supply before touching plumbing; know where the main valve is.',
  electric:
    'Switch off and prove dead any circuit in these walls; work on wiring near water belongs to a licensed electrician.',
  oldWall:
    'Old walls, paint and adhesives can hold asbestos or lead: where the building is old enough, have them tested before they are disturbed.',
  dust: 'Cutting and sanding make dust: work outdoors or with extraction, with a respirator rated for the dust.',
  cutting:
    'Knife and saw: eye and hearing protection, work clamped, hands behind the blade, unplug before changing it.',
  hiddenServices: 'Pipes and cables can run behind: find them before drilling.',
  lifting: 'Sheets are heavy and catch: carry and set them with two people.',
  solvent: "Adhesive, sealant and alcohol: air the room, no flame or spark, gloves; follow the product's own sheet.",
  licensed: 'Leave to a licensed plumber what local code reserves.',
  hotWater: "Check that the valve's limit stop is set so that the water cannot scald, as local code says.",
  grabBar:
    'A grab bar must hold a person: fix it to blocking or studs as its maker and local code say; panel and adhesive hold nothing.',
} as const;
