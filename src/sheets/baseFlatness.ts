import { tilesLaid } from '../layout/tilesLaid.ts';
import type { Flatness } from '../materials/Flatness.ts';
import { printVolume } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { flatnessClass, straightedgeChecks } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** How flat a floor must be and is, what fills it, and how often to lay the straightedge. */
export function baseFlatness(context: SheetContext, surface: PacketSurface) {
  const { packet, say, length, longLength } = context;
  const own = packet.spec.tiles.filter(({ key }) => tilesLaid(surface).includes(key));
  const longest = Math.max(...own.flatMap(({ length, width }) => [length, width]));
  const asked = flatnessClass(longest, packet.spec.print.system);
  const { flatness } = surface;
  return {
    asked: say('sheet.base-sheet.asked', {
      class: asked.name,
      gap: length(asked.gap),
      over: longLength(asked.over),
      shortGap: length(asked.shortGap),
      shortOver: longLength(asked.shortOver),
    }),
    checkCount: say('sheet.base-sheet.checks', { count: straightedgeChecks(surface.areaM2) }),
    spots: flatness ? flatness.under.map((under) => spotRow(context, surface, under)) : [],
    kept: flatness
      ? say('sheet.base-sheet.kept', { class: flatness.class, range: length(flatness.range) })
      : '',
    fill: flatness ? fillLines(context, flatness) : [],
  };
}

function spotRow(
  { say, length, longLength }: SheetContext,
  surface: PacketSurface,
  under: Flatness['under'][number],
) {
  const { straightedge, limit, pass, worst } = under;
  const edge = say('sheet.base-sheet.straightedge', {
    length: longLength(straightedge),
    limit: length(limit),
  });
  if (!worst) return { edge, text: say('sheet.base-sheet.tooFar'), state: '', failed: false };
  const [row, number] = [worst.row, worst.number];
  return {
    edge,
    text: say('sheet.base-sheet.worst', {
      kind: worst.kind,
      depth: length(worst.depth),
      row,
      number,
      floor: surface.name,
    }),
    state: say(`limit.${pass ? 'pass' : 'fail'}`),
    failed: !pass,
  };
}

function fillLines({ packet, say, length }: SheetContext, flatness: Flatness): readonly string[] {
  const { system } = packet.spec.print;
  const bag = packet.base.fillBagLitres;
  const line = (code: string, mean: number, litres: number, bags: number | undefined) =>
    say(`sheet.base-sheet.${code}`, {
      mean: length(mean),
      volume:
        system === 'mm'
          ? printVolume(litres, 'mm')
          : `${printVolume(litres, system)} (${printVolume(litres, 'mm')})`,
      bags: bags ?? 0,
      bag: bag === undefined ? '' : printVolume(bag, system),
    });
  return [
    line('patch', flatness.patchMean, flatness.patchLitres, flatness.patchBags),
    line('level', flatness.levelMean, flatness.levelLitres, flatness.levelBags),
  ];
}
