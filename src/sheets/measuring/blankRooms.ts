import {
  cornerLetter,
  drawGrid,
  drawMeasureForm,
  drawMeasureHow,
  type MeasureHow,
  type MeasureShape,
  measureRoom,
} from '../../drawing/index.ts';
import type { SheetPage } from '../Sheet.ts';
import type { SheetContext } from '../SheetContext.ts';
import { answersOf, askedAt, blanks, rowsOf } from './asked.ts';
import type { Block } from './Block.ts';

type Drawn = Pick<SheetContext, 'units' | 'say'>;

/** Corners for which there is room. */
export const MOST_CORNERS = 12;
/** Diagonals for which there is room where nobody knows the room yet. */
const FREE_DIAGONALS = 10;

/** Lines of the squared field are 5 mm apart: a foot at 1:60, 10 cm at 1:20. */
const GRID = { widthMm: 96, heightMm: 96, step: 5 };

const letters = Array.from({ length: MOST_CORNERS }, (_, i) => cornerLetter(i));

const options = ({ units, say }: Drawn, name: string) => ({
  id: `measure-${name}`,
  label: say('sheet.measuring.drawing'),
  ...units,
  say,
});

function walls({ say }: Drawn, names: readonly string[]): readonly Block[] {
  const [read, middle, meets, touch, seen] = ['read', 'middle', 'meets', 'touch', 'seen'].map((key) =>
    say(askedAt('floor', 'walls', '<wall>', key).words),
  ) as [string, string, string, string, string];
  const head = [say('sheet.measuring.once'), say('sheet.measuring.twice'), middle, meets, touch, seen];
  return [
    { kind: 'heading', text: `${say('sheet.measuring.walls')}: ${read}` },
    rowsOf([], 'sheet.measuring.wall', names, say, head),
  ];
}

function diagonals({ say }: Drawn, names: readonly string[]): readonly Block[] {
  const head = [say('sheet.measuring.once'), say('sheet.measuring.twice')];
  return [
    {
      kind: 'heading',
      text: `${say('sheet.measuring.diagonals')}: ${say(askedAt('floor', 'diagonals').words)}`,
    },
    rowsOf([], 'sheet.measuring.diagonal', names, say, head),
  ];
}

/** The same in two columns where there are many. */
function diagonalsAside(context: Drawn, names: readonly string[]): readonly Block[] {
  if (names.length < 3) return diagonals(context, names);
  const half = Math.ceil(names.length / 2);
  const [[heading, left], [, right]] = [names.slice(0, half), names.slice(half)].map((part) =>
    diagonals(context, part),
  ) as [Block[], Block[]];
  return [heading!, { kind: 'side', parts: [[left!], [right!]] }];
}

const page = (suffix: string, shape: string, blocks: readonly Block[]): SheetPage => ({
  suffix,
  figures: { shape },
  bundles: ['measuring'],
  blank: true,
  data: { blocks },
});

/** Corners, each checked by a mark on either wall. */
function checks({ say }: Drawn, names: readonly string[]): Block {
  const words = (...path: readonly string[]) => say(askedAt('floor', ...path).words);
  const head = [
    `① × ② ${words('corner checks', '<corner>', 'legs')}`,
    `③ ${words('corner checks', '<corner>', 'read')}`,
    say('sheet.measuring.twice'),
    words('angles'),
  ];
  return rowsOf([], 'sheet.measuring.corner', names, say, head);
}

function room(context: Drawn, shape: MeasureShape): SheetPage {
  const { walls: names, diagonals: across } = measureRoom(shape);
  return page(shape.toLowerCase(), shape, [
    { kind: 'drawing', svg: drawMeasureForm(shape, options(context, shape)).svg },
    { kind: 'note', text: context.say('sheet.measuring.walk') },
    ...walls(context, names),
    ...diagonalsAside(context, across),
    ...(names.length > 4
      ? []
      : [
          { kind: 'heading', text: context.say('sheet.measuring.checks') } as const,
          checks(context, letters.slice(0, 4)),
        ]),
  ]);
}

/** Any count of corners: a field to sketch on, and rows for every wall; the last one goes back to A. */
function anyRoom(context: Drawn): SheetPage {
  const names = Array.from({ length: MOST_CORNERS }, (_, i) => `${cornerLetter(i)}-${cornerLetter(i + 1)}`);
  const grid = drawGrid(GRID, GRID.step, options(context, 'grid')).svg;
  return page('any', 'any', [
    {
      kind: 'side',
      parts: [
        [
          { kind: 'drawing', svg: grid },
          { kind: 'note', text: context.say('sheet.measuring.sketch') },
        ],
        diagonals(
          context,
          blanks(FREE_DIAGONALS).map(() => '–'),
        ),
      ],
    },
    ...walls(context, [...names.slice(0, -1), `${cornerLetter(MOST_CORNERS - 1)}-A`]),
  ]);
}

function how(context: Drawn, what: MeasureHow): Block {
  return { kind: 'drawing', svg: drawMeasureHow(what, options(context, what)).svg };
}

/** Corners by two marks and from a snapped line: where a wall cannot be read from end to end. */
function cornersPage(context: Drawn): SheetPage {
  const { say } = context;
  const words = (...path: readonly string[]) => say(askedAt('floor', ...path).words);
  return page('corners', 'corners', [
    { kind: 'heading', text: say('sheet.measuring.checks') },
    {
      kind: 'side',
      parts: [
        [how(context, 'cornerCheck'), { kind: 'note', text: say('sheet.measuring.checksHow') }],
        [checks(context, letters)],
      ],
    },
    { kind: 'heading', text: say('sheet.measuring.line') },
    {
      kind: 'side',
      parts: [
        [
          how(context, 'baseLine'),
          { kind: 'note', text: say('sheet.measuring.lineHow') },
          answersOf([askedAt('floor', 'precision')], say),
        ],
        [
          rowsOf([], 'sheet.measuring.corner', letters, say, [
            `①, ② ${words('base line')}`,
            say('sheet.measuring.twice'),
          ]),
        ],
      ],
    },
  ]);
}

/** Blank pages for the room itself. */
export function blankRooms(context: Drawn): readonly SheetPage[] {
  return [
    room(context, 'rectangle'),
    room(context, 'L'),
    room(context, 'T'),
    anyRoom(context),
    cornersPage(context),
  ];
}
