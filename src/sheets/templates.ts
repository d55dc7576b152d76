import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import {
  drawCheckBars,
  drawTemplate,
  drawTemplateKey,
  planTemplate,
  type Space,
  type TemplatePlan,
} from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { calledCut } from './calledCut.ts';
import { drawingSpace } from './drawingSpace.ts';
import { floorMark } from './floorMark.ts';
import { floorName } from './floorName.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What is marked through at full size? Each cut that no straight line makes, on as many pages as it takes; equal cuts once. */
export const templates: Sheet = {
  name: 'templates',
  for: 'setter',
  bundles: ['templates'],
  speaks: 'crew',
  make: (context) => {
    const { packet, say, units } = context;
    const { paper } = packet.spec.print;
    const space = { ...drawingSpace(paper, 'portrait', HEAD_MM), widthMm: WIDTHS_MM[paper] };
    const pages = packet.surfaces.flatMap((surface) =>
      surface.cuts.filter(isHard).flatMap((cut) => pagesOf(context, surface, cut, space)),
    );
    const bars = drawCheckBars({ id: 'bars', label: say('drawing.bars'), ...units, say }).svg;
    return pages.length === 0
      ? []
      : [{ scale: '1:1', data: { pages, bars, joined: pages.some(({ of }) => of > 1) } }];
  },
};

/** What stands over a template on its page. */
const HEAD_MM = 29;
/** Beside the check bar, on whole millimetres. */
const WIDTHS_MM = { letter: 174, a4: 168 } as const;
/** More names than this are told by the saw list. */
const MOST_NAMES = 8;

function namesOf({ pieces }: Cut): string {
  const more = pieces.length - MOST_NAMES;
  return pieces.slice(0, MOST_NAMES).join(' · ') + (more > 0 ? ` + ${more}` : '');
}

function pagesOf(context: SheetContext, surface: PacketSurface, cut: Cut, space: Space) {
  const { packet } = context;
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const { kind, hand, asPlan, turn } = calledCut(context, surface, cut);
  const plan = planTemplate(cut, tile, space, turn);
  return plan.grid.pages.map((window, page) => ({
    number: cut.number,
    count: cut.pieces.length,
    kind,
    hand,
    asPlan,
    names: namesOf(cut),
    surface: floorName(packet, surface.name),
    page: page + 1,
    of: plan.grid.pages.length,
    broken: plan.broken.length > 0,
    turned: plan.turned,
    ...drawingsOf(context, surface, cut, plan, page, window),
  }));
}

function drawingsOf(
  { packet, say, units }: SheetContext,
  surface: PacketSurface,
  cut: Cut,
  plan: TemplatePlan,
  page: number,
  window: number,
) {
  const figures = { number: cut.number, page: page + 1, of: plan.grid.pages.length };
  const options = (id: string, label: string) => ({
    id: [id, floorMark(packet, surface.name), cut.number, page + 1].filter(Boolean).join('-'),
    label,
    ...units,
    say,
  });
  const count = cut.pieces.length > 1 ? `${cut.pieces.length} × ` : '';
  const lines = [say('sheet.templates.faceUp'), count + namesOf(cut)];
  return {
    drawing: drawTemplate(
      plan,
      window,
      { number: String(cut.number), lines },
      options('template', say('sheet.templates.drawing', figures)),
    ).svg,
    key: drawTemplateKey(plan, window, options('key', say('sheet.templates.key', figures))).svg,
  };
}
