/** What a setting is called, by the form of its path: `N` stands for a name or a number, `F` for the floor that it is of. */
const FORMS: readonly (readonly [code: string, form: string])[] = [
  ['status', 'status'],
  ['letter', 'revision\\.letter'],
  ['houseYear', 'house year'],
  ['onlyToilet', 'access\\.only toilet'],
  ['onlyExit', 'access\\.only exit'],
  ['crew', 'print\\.crew'],
  ['owner', 'print\\.owner'],
  ['units', 'print\\.units'],
  ['paper', 'print\\.paper'],
  ['sawStep', 'print\\.saw step'],
  ['workFrom', 'work\\.from'],
  ['workDays', 'work\\.days'],
  ['daysOff', 'work\\.days off'],
  ['workHours', 'work\\.hours'],
  ['pace', 'work\\.pace'],
  ['temperature', 'work\\.temperature'],
  ['material', 'tile\\.N\\.material'],
  ['edge', 'tile\\.N\\.edge'],
  ['bow', 'tile\\.N\\.bow'],
  ['turns', 'tile\\.N\\.turns'],
  ['glazed', 'tile\\.N\\.glazed'],
  ['thick', 'tile\\.N\\.thick'],
  ['onHand', 'tile\\.N\\.box\\.on hand'],
  ['gap', 'F\\.gap'],
  ['gapMax', 'F\\.gap max'],
  ['angles', 'F\\.angles\\.N'],
  ['precision', 'F(?:\\.(?:walls|diagonals)\\.[^.]+)?\\.precision'],
  ['exposure', 'F\\.exposure'],
  ['pattern', 'F\\.pattern'],
  ['inlayPattern', 'F\\.inlays\\.N\\.pattern'],
  ['alternating', 'F(?:\\.inlays\\.[^.]+)?\\.pattern\\.alternating'],
  ['patternTiles', 'F(?:\\.inlays\\.[^.]+)?\\.pattern\\.tiles'],
  ['along', 'F\\.start\\.along'],
  ['across', 'F\\.start\\.across'],
  ['strips', 'F\\.start\\.tolerance\\.strips'],
  ['halves', 'F\\.start\\.tolerance\\.halves'],
  ['narrower', 'F\\.start\\.tolerance\\.narrowest'],
  ['fewerTiles', 'F\\.start\\.tolerance\\.tiles'],
  ['offBalance', 'F\\.start\\.tolerance\\.balance'],
  ['lines', 'F\\.start\\.tolerance\\.lines'],
  ['zones', 'F\\.zones'],
  ['fallsTo', 'F\\.falls\\.to'],
  ['folds', 'F\\.falls\\.folds'],
  ['minWeb', 'F\\.min web'],
  ['minStrip', 'F\\.min strip'],
  ['minCut', 'F\\.min cut'],
  ['taperShows', 'F\\.taper shows'],
  ['focalWeight', 'F\\.focal weight'],
  ['doorWall', 'F\\.doorways\\.N\\.wall'],
  ['doorLine', 'F\\.doorways\\.N\\.door line'],
  ['doorLeft', 'F\\.doorways\\.N\\.left'],
  ['doorRight', 'F\\.doorways\\.N\\.right'],
  ['doorBeyond', 'F\\.doorways\\.N\\.beyond'],
  ['doorOnlyExit', 'F\\.doorways\\.N\\.only exit'],
  ['meets', 'F\\.obstacles\\.N\\.meets'],
  ['borderWidth', 'F\\.border\\.N\\.width'],
  ['borderCorners', 'F\\.border\\.N\\.corners'],
  ['borderThrough', 'F\\.border\\.N\\.runs through'],
  ['inlayWidth', 'F\\.inlays\\.N\\.border\\.\\d+\\.width'],
  ['inlayCorners', 'F\\.inlays\\.N\\.border\\.\\d+\\.corners'],
  ['inlayThrough', 'F\\.inlays\\.N\\.border\\.\\d+\\.runs through'],
  ['baseBelow', 'base\\.below'],
  ['baseNew', 'base\\.new'],
  ['readOn', 'base\\.read on'],
  ['heated', 'base\\.heated'],
  ['groutKind', 'products\\.grout\\.kind'],
  ['groutBag', 'products\\.grout\\.bag'],
  ['density', 'products\\.grout\\.density'],
  ['walk', 'products\\.grout\\.walk'],
  ['heavy', 'products\\.grout\\.heavy'],
  ['water', 'products\\.grout\\.water'],
  ['sealAfter', 'products\\.grout\\.seal after'],
  ['takes', 'products\\.grout\\.takes'],
  ['notch', 'products\\.mortar\\.notch'],
  ['mortarBag', 'products\\.mortar\\.bag'],
  ['backButter', 'products\\.mortar\\.back butter'],
  ['potLife', 'products\\.mortar\\.pot life'],
  ['groutAfter', 'products\\.mortar\\.grout after'],
  ['sealerKind', 'products\\.sealer\\.kind'],
  ['covers', 'products\\.sealer\\.covers'],
  ['bottle', 'products\\.sealer\\.bottle'],
  ['cure', 'products\\.sealer\\.cure'],
  ['tube', 'products\\.sealant\\.tube'],
  ['kerf', 'saw\\.kerf'],
  ['offcuts', 'offcuts\\.plan'],
  ['offcutKept', 'offcuts\\.narrowest'],
  ['breakage', 'waste\\.breakage'],
  ['breakageOf', 'waste\\.breakage\\.N'],
  ['keep', 'waste\\.keep'],
];

const NAME = '([^.]+)';
const FLOOR = '(?:floor|floors\\.[^.]+)';

const forms = FORMS.map(
  ([code, form]) => [code, new RegExp(`^${form.replaceAll('F', FLOOR).replaceAll('N', NAME)}$`)] as const,
);

/** A setting by its name in the catalogue, with the tile, doorway or course that it is of. */
export interface DefaultName {
  /** Key under `assumed.name`. */
  readonly code: string;
  readonly name?: string;
  /** The floor, where the job has several. */
  readonly floor?: string;
}

/**
 * What a setting is called by its path in the job file; undefined where it has no name.
 *
 * @example defaultName('tile.field.box.on hand') //=> { code: 'onHand', name: 'field' }
 * @example defaultName('floors.hall.min web') //=> { code: 'minWeb', floor: 'hall' }
 * @example defaultName('nothing like it') //=> undefined
 */
export function defaultName(path: string): DefaultName | undefined {
  const floor = /^floors\.([^.]+)/.exec(path)?.[1];
  for (const [code, form] of forms) {
    const found = form.exec(path);
    if (found) return { code, ...(found[1] && { name: found[1] }), ...(floor && { floor }) };
  }
  return undefined;
}
