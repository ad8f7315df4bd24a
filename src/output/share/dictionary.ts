import { strToU8 } from 'fflate';

/**
 * Text that jobs are likely to hold, so that even their first words compress. Part of the link's format: what is changed
 * here needs a new version in `format.ts`.
 */
export const DICTIONARY = strToU8(
  '"prices":{"currency":"USD","sheets":{"back":"left":"right":"looks":{"stone":"ribbed":"large-format":"trim":[{"upTo":"metre":"packs":{"adhesive":"sealant":"caulk":"flashingTape":"strips":"painterTape":"alcohol":"labour":{"hour":"plumbing":"tax":{"name":"materials":"quote":{"client":"from":"exclusions":["' +
    '"choices":[{"id":"finish":{"look":"plain","colour":"#","second":"#","size":"seed":"gloss":"trim":{"width":"verticalWidth":"thickness":"shelves":[{"corner":"left","aboveRim":"' +
    '"fixtures":[{"id":"valve","kind":"valve","wall":"right","aboveRim":330.2,"fromBack":381,"fromBackOf":"panel","hole":95.25},{"id":"spout","kind":"spout","wall":"back","fromPlumbLine":{"kind":"shower-head"{"kind":"hand-shower"{"kind":"grab-bar"' +
    '"fit":{"wetWall":"right","thickness":6.35,"flexible":true,"top":965.2,"bed":"keep":{"cornerJoint":"rimJoint":' +
    '{"format":"nookwright-job","version":1,"name":"","display":"in","levelAboveFloor":1244.6,"rim":{"kind":"tub","width":762,"apronHeight":495.3,"profile":[[0,0],[10,-0.8],[20,-3.4]]},"sheets":{"back":{"width":1574.8,"height":2438.4},"left":{"width":812.8,"height":2438.4},"right":{"width":812.8,"height":2438.4}},"readings":[' +
    '{"id":"r1","kind":"tape-to-corner","side":"left","height":-660.4,"value":752.475},{"id":"r2","kind":"tape-to-rim","wall":"back","at":-609.6,"value":741.363},{"id":"r3","kind":"span","height":0,"at":609.6,"value":1520.825},' +
    '{"id":"r4","kind":"plumb","wall":"left","at":304.8,"gaps":[{"height":711.2,"value":30},{"height":-609.6,"value":34.925},{"height":0,"value":31.75}]},' +
    '{"id":"r5","kind":"straightedge","wall":"right","from":{"at":50.8,"height":-609.6},"to":{"at":50.8,"height":711.2},"value":3.175},' +
    '{"id":"r6","kind":"square","side":"right","height":0,"alongBack":600,"alongSide":450,"value":752.475},{"id":"r7","kind":"angle","side":"left","height":0,"value":89.3},' +
    '{"id":"r8","kind":"diagonal","from":{"side":"left","height":-609.6},"to":{"side":"right","height":914.4},"value":2130.425},{"id":"r9","kind":"depth","wall":"right","height":711.2,"value":764.3812}',
);
