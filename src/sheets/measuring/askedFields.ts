import { meetsWords } from '../../job/sections/edge.ts';
import type { AskedField, AskedKind, AskedSection } from './AskedField.ts';

type Rest = Pick<AskedField, 'choices' | 'required'>;

const ask =
  (section: AskedSection, ...above: readonly string[]) =>
  (keys: string, words: string, kind: AskedKind, rest: Rest = {}): AskedField => ({
    section,
    path: [...above, ...keys.split('/')],
    words: `ask.${words}`,
    kind,
    ...rest,
  });

const required: Rest = { required: true };
const oneOf = (...choices: readonly string[]): Rest => ({ choices });

const job = ask('job');
const house = ask('house');
const site = ask('site', 'site');
const wall = ask('walls', 'floor', 'walls', '<wall>');
const measured = ask('walls', 'floor');
const corner = ask('corners', 'floor');
const floor = ask('floor', 'floor');
const doorway = ask('doorways', 'floor', 'doorways', '<name>');
const obstacle = ask('obstacles', 'floor', 'obstacles', '<name>');
const base = ask('base', 'base');
const height = ask('heights', 'base', 'heights', '<name>');
const tile = ask('tile', 'tile', '<name>');

/**
 * Everything that the measuring sheet asks, in the order in which one goes about it. The job file takes each answer at its
 * path, so that nothing is measured in vain; the blank sheet, the form and the tests all go by this list.
 */
export const askedFields: readonly AskedField[] = [
  job('title', 'title', 'text', required),
  job('owner', 'owner', 'text'),
  job('place', 'place', 'text'),
  job('revision/date', 'date', 'date', required),
  job('contacts/setter', 'setter', 'text'),
  job('contacts/phone', 'phone', 'text'),
  house('house year', 'houseYear', 'year'),
  house('access/only toilet', 'onlyToilet', 'yesNo'),
  house('access/only exit', 'onlyExit', 'yesNo'),
  site('way in', 'wayIn', 'text'),
  site('water', 'water', 'text'),
  site('power', 'power', 'text'),
  site('saw stands', 'sawStands', 'text'),
  site('waste goes', 'wasteGoes', 'text'),
  site('photographs', 'photographs', 'text'),
  wall('read', 'wallRead', 'lengths', required),
  wall('middle', 'wallMiddle', 'middle'),
  wall('meets', 'wallMeets', 'choice', oneOf(...meetsWords)),
  wall('touch', 'touch', 'yesNo'),
  wall('seen', 'seen', 'choice', oneOf('plain', 'focal', 'hidden')),
  measured('precision', 'precision', 'choice', oneOf('tape', 'laser', 'unknown')),
  ask('diagonals', 'floor', 'diagonals', '<diagonal>')('read', 'diagonalRead', 'lengths'),
  corner('corner checks/<corner>/legs', 'checkLegs', 'size'),
  corner('corner checks/<corner>/read', 'checkRead', 'lengths'),
  corner('angles/<corner>', 'angle', 'degrees'),
  ask('baseLine', 'floor')('base line/<corner>', 'baseLine', 'point'),
  doorway('in', 'doorIn', 'wall', required),
  doorway('from <corner>', 'doorFrom', 'length', required),
  doorway('clear', 'doorClear', 'length', required),
  doorway('wall', 'doorWall', 'length'),
  doorway('door line', 'doorLine', 'length'),
  doorway('left', 'doorLeft', 'doorSide'),
  doorway('right', 'doorRight', 'doorSide'),
  doorway('beyond', 'doorBeyond', 'choice', oneOf('carpet', 'wood', 'tile', 'vinyl', 'concrete', 'later')),
  doorway('only exit', 'doorOnlyExit', 'yesNo'),
  obstacle('circle', 'circle', 'length'),
  obstacle('rectangle', 'rectangle', 'size'),
  obstacle('polygon', 'polygon', 'points'),
  obstacle('from', 'polygonFrom', 'walls'),
  obstacle('from <wall>', 'obstacleFrom', 'length'),
  obstacle('meets', 'obstacleMeets', 'choice', oneOf(...meetsWords)),
  obstacle('touch', 'touch', 'yesNo'),
  obstacle('seen', 'seen', 'choice', oneOf('plain', 'focal', 'hidden')),
  floor('exposure', 'exposure', 'choice', oneOf('dry', 'wet', 'sun', 'outside')),
  base('below', 'below', 'text'),
  base('removed/<name>', 'removed', 'length'),
  base('kept/<name>', 'kept', 'length'),
  base('comes out/<name>', 'comesOut', 'text'),
  base('nail holes', 'nailHoles', 'text'),
  base('film/kind', 'film', 'choice', oneOf('none', 'paint', 'curing')),
  base('film/drop test', 'dropTest', 'choice', oneOf('soaks in', 'stays')),
  base('moisture/reads', 'moisture', 'text'),
  base('moisture/on', 'moistureOn', 'date'),
  base('read on', 'readOn', 'text'),
  base('flatness', 'flatness', 'flatness'),
  base('flatness grid/every', 'gridEvery', 'length'),
  base('flatness grid/from <wall>', 'gridFrom', 'length'),
  base('flatness grid/drops', 'gridDrops', 'points'),
  base('cracks/<name>/is', 'crack', 'choice', oneOf('still', 'moving')),
  base('cracks/<name>/from <wall>', 'crackFrom', 'lengths'),
  base('hollow/<name>/across', 'hollow', 'length'),
  base('hollow/<name>/from <wall>', 'hollowFrom', 'lengths'),
  base('joints/from <wall>', 'baseJoints', 'lengths'),
  base('heated', 'heated', 'yesNo'),
  height('height', 'height', 'length'),
  height('above', 'heightAbove', 'text'),
  height('needs', 'heightNeeds', 'length'),
  tile('name', 'tileName', 'text'),
  tile('read', 'tileRead', 'sizes', required),
  tile('run', 'tileRun', 'text'),
  tile('thick', 'tileThick', 'length'),
  tile('bow', 'tileBow', 'length'),
  tile('edge', 'tileEdge', 'choice', oneOf('rectified', 'calibrated', 'natural')),
  tile('material', 'tileMaterial', 'choice', oneOf('porcelain', 'ceramic', 'stone', 'cement', 'glass')),
  tile('glazed', 'glazed', 'yesNo'),
  tile('box/pieces', 'boxPieces', 'count'),
  tile('box/lot', 'lot', 'text'),
  tile('box/caliber', 'caliber', 'text'),
  tile('box/shade', 'shade', 'text'),
  tile('box/on hand', 'onHand', 'count'),
  ask('tile')('joint', 'joint', 'length', required),
];
