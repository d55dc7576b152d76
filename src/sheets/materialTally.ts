import type { Material } from '../materials/Material.ts';
import type { TilePlan } from '../tiles/TilePlan.ts';
import type { Step } from '../trade/index.ts';
import { asMarked } from './asMarked.ts';
import { gradedJoint } from './gradedJoint.ts';
import { laidCode } from './laidCode.ts';
import { pileLine } from './pileLine.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import type { Say } from './SheetView.ts';
import { sayFigure, sayFigures } from './sayFigures.ts';
import { saySource } from './saySource.ts';
import { sayThing } from './sayThing.ts';
import { tallyTotal } from './tallyTotal.ts';
import { tileSize } from './tileSize.ts';

/** How much of what to buy: every figure with its sum, its rate and where the rate comes from. */
export const materialTally: Sheet = {
  name: 'material-tally',
  for: 'estimator',
  bundles: ['office', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const priced = Object.values(context.packet.tiles).some(({ price }) => price !== undefined);
    if (!priced) return [{ data: tally(context, false) }];
    return [
      { bundles: ['packet'], data: tally(context, false) },
      { bundles: ['office'], suffix: 'priced', data: tally(context, true) },
    ];
  },
};

/** Only the office sees money. */
function tally(context: SheetContext, priced: boolean) {
  const materials = context.packet.materials
    .filter(({ what }) => what !== 'tile')
    .map((one) => materialRow(context, one));
  return {
    tiles: Object.values(context.packet.tiles).map((plan) => {
      const { price, ...rest } = tileCount(context, plan);
      return priced ? { ...rest, price } : rest;
    }),
    materials,
    ...(priced ? { total: tallyTotal(context, materials) } : {}),
  };
}

/** The count of one tile as a column of figures that adds up. */
function tileCount(context: SheetContext, plan: TilePlan) {
  const { packet } = context;
  const tile = packet.spec.tiles.find(({ key }) => key === plan.tile);
  const perBox = tile?.box?.pieces ?? 0;
  return {
    name: tile?.name ?? plan.tile,
    size: tile ? tileSize(context, tile) : '',
    lot: tile?.box?.lot ?? '',
    ...plan,
    pileLine: pileLine(context, plan),
    tilesCut: plan.needed - plan.whole,
    saved: plan.whole + plan.cut - plan.needed,
    perBox,
    proved: plan.needed === plan.bound,
    price: plan.price === undefined ? '' : asMarked(plan.price.toFixed(2), context.units.decimal),
    returnable: plan.over,
  };
}

function materialRow(context: SheetContext, material: Material) {
  const { say, packet } = context;
  // A floor alone needs no name; and a packet from before each floor's joints were told apart has none.
  const one = (figures: Step['figures']) =>
    packet.surfaces.length === 1 || figures.surface === undefined ? 'yes' : 'no';
  return {
    what: say(`material.${material.what}.name`),
    name: nameText(context, material),
    sum: material.sum.map(({ code, figures }) =>
      say(laidCode(packet, code), {
        ...sayFigures(context, figures),
        ...graded(context, code, figures),
        one: one(figures),
      }),
    ),
    source: saySource(say, material.source),
    amount: amountText(context, material),
    buy: buyText(context, material),
  };
}

/** What a line is called beside its kind: its name, or the size it is sold in. */
function nameText({ say, length }: SheetContext, { what, name, size }: Material): string {
  if (size !== undefined) return length(size);
  return name === undefined ? '' : nameOf(say, what, name);
}

/** The joint of a line that names a kind of grout. */
function graded({ units }: SheetContext, code: string, { joint }: Material['sum'][number]['figures']) {
  const isGrade = /\.(?:un)?sanded$|\.coarse$/.test(code);
  return isGrade && typeof joint === 'number' ? { joint: gradedJoint(joint, units) } : {};
}

/** Lines of the tally that bear the name of a layer or a flange. */
const NAMED: ReadonlySet<string> = new Set(['layer', 'bond', 'ring']);

/** Layers and flanges have usual names, which every language has; products have names of their own. */
function nameOf(say: Say, what: string, name: string): string {
  return NAMED.has(what) ? sayThing(say, name) : name;
}

/** What has no package is bought in the job's own unit, all else by the package. */
function buyText(context: SheetContext, { buy, buyUnit }: Material): string {
  const ending = ENDINGS[buyUnit];
  if (ending) return String(sayFigure(context, ending, buy));
  return `${context.number(buy, 0)} ${context.say(`unit.${buyUnit}`, { count: buy })}`;
}

/** Units of the tally as endings of a figure's name, so that each is printed in the job's own system. */
const ENDINGS: Readonly<Record<string, string>> = {
  kg: 'amountKg',
  litre: 'amountLitres',
  metre: 'amountMetres',
  m2: 'amountM2',
};

function amountText(context: SheetContext, { amount, unit }: Material): string {
  const ending = ENDINGS[unit];
  if (ending) return String(sayFigure(context, ending, amount));
  return `${context.number(amount, 1)} ${context.say(`unit.${unit}`, { count: amount })}`;
}
