import { drawMeasureHow, type MeasureHow } from '../../drawing/index.ts';
import type { SheetPage } from '../Sheet.ts';
import type { SheetContext } from '../SheetContext.ts';
import { answersOf, asked, askedAt, blanks, columnsOf, rowsOf } from './asked.ts';
import type { Block } from './Block.ts';

type Drawn = Pick<SheetContext, 'units' | 'say'>;

/** Tiles that are measured one by one. */
const TILES_READ = 10;
const GRID = { rows: 5, columns: 7 };

const page = (name: string, blocks: readonly Block[]): SheetPage => ({
  suffix: name,
  figures: { shape: name },
  bundles: ['measuring'],
  blank: true,
  data: { blocks },
});

function how({ units, say }: Drawn, what: MeasureHow): Block {
  const label = say('sheet.measuring.drawing');
  return { kind: 'drawing', svg: drawMeasureHow(what, { id: `measure-${what}`, label, ...units, say }).svg };
}

const heading = ({ say }: Drawn, key: string): Block => ({ kind: 'heading', text: say(key) });

function doorways(context: Drawn): SheetPage {
  const { say } = context;
  const known = ['flange', 'door', 'door', 'floor', 'appliance'].map((name) => say(`ask.choices.${name}`));
  return page('doorways', [
    heading(context, 'sheet.measuring.doorways'),
    how(context, 'doorway'),
    columnsOf(asked('floor', 'doorways'), 'sheet.measuring.name', 3, say),
    heading(context, 'sheet.measuring.heights'),
    { kind: 'note', text: say('sheet.measuring.heightsHow') },
    rowsOf(asked('base', 'heights'), 'sheet.measuring.what', [...known, '', ''], say),
  ]);
}

function obstacles(context: Drawn): SheetPage {
  const { say } = context;
  const layers = (key: string) =>
    rowsOf(asked('base', key), 'sheet.measuring.layer', blanks(4), say, [say(askedAt('base', key).words)]);
  return page('obstacles', [
    heading(context, 'sheet.measuring.obstacles'),
    how(context, 'obstacle'),
    columnsOf(asked('floor', 'obstacles'), 'sheet.measuring.name', 4, say),
    heading(context, 'sheet.measuring.layers'),
    answersOf([askedAt('base', 'below'), askedAt('base', 'heated')], say),
    { kind: 'side', parts: [[layers('removed')], [layers('kept')]] },
  ]);
}

/** Places on the base: what it is, and the points of it from two walls. */
function places({ say }: Drawn, key: string, count: number): Block {
  const fields = asked('base', key);
  const from = say(fields.find(({ path }) => path.at(-1) === 'from <wall>')!.words);
  const head = [...fields.filter(({ path }) => path.at(-1) !== 'from <wall>').map(({ words }) => say(words))];
  return rowsOf([], `sheet.measuring.${key}`, blanks(count), say, [...head, from, from]);
}

function base(context: Drawn): SheetPage {
  const { say } = context;
  const single = ['nail holes', 'read on', 'film', 'moisture'].flatMap((key) => asked('base', key));
  const [every, from, drops] = asked('base', 'flatness grid');
  const across = Array.from({ length: GRID.columns }, (_, i) => String(i + 1));
  const down = Array.from({ length: GRID.rows }, (_, i) => String(i + 1));
  return page('base', [
    heading(context, 'sheet.measuring.base'),
    answersOf([...single, askedAt('floor', 'exposure')], say),
    {
      kind: 'side',
      parts: [
        [rowsOf([], 'sheet.measuring.where', blanks(3), say, [say(askedAt('base', 'flatness').words), say('sheet.measuring.under')])], // biome-ignore format: one table
        [rowsOf([], 'sheet.measuring.wall', blanks(3), say, [say(askedAt('base', 'joints').words)])],
      ],
    },
    rowsOf(asked('base', 'comes out'), 'sheet.measuring.what', blanks(3), say),
    places(context, 'cracks', 3),
    places(context, 'hollow', 2),
    answersOf([every!, from!, from!], say),
    { kind: 'heading', text: say(drops!.words) },
    rowsOf([], 'sheet.measuring.row', down, say, across),
  ]);
}

function house(context: Drawn): SheetPage {
  const { say } = context;
  const single = (path: readonly string[]) => path.at(-1) !== 'read';
  const numbers = Array.from({ length: TILES_READ }, (_, i) => String(i + 1));
  return page('house', [
    heading(context, 'sheet.measuring.job'),
    answersOf([...['title', 'owner', 'place', 'revision', 'contacts'].flatMap((key) => asked(key))], say),
    heading(context, 'sheet.measuring.house'),
    answersOf([...asked('house year'), ...asked('access')], say),
    { kind: 'note', text: say('sheet.measuring.stops') },
    heading(context, 'sheet.measuring.site'),
    answersOf(asked('site'), say),
    heading(context, 'sheet.measuring.tile'),
    answersOf([...asked('tile').filter(({ path }) => single(path)), askedAt('joint')], say),
    { kind: 'heading', text: say(askedAt('tile', '<name>', 'read').words) },
    {
      kind: 'table',
      table: {
        head: ['', ...numbers],
        rows: ['length', 'width'].map((side) => ({
          name: say(`sheet.measuring.${side}`),
          cells: blanks(TILES_READ),
        })),
      },
    },
  ]);
}

/** Blank pages for what is found beside the room's shape. */
export function blankVisit(context: Drawn): readonly SheetPage[] {
  return [doorways(context), obstacles(context), base(context), house(context)];
}
