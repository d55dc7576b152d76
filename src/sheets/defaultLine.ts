import { type DefaultName, defaultName } from './defaultName.ts';
import { defaultValue } from './defaultValue.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayThing } from './sayThing.ts';

/** A value that nobody wrote: what it is of, where it stands in the job file, and what it was taken to be. */
export interface DefaultLine {
  readonly name: string;
  readonly path: string;
  readonly value: string;
}

/** A default in the words and the units of the sheet. A setting without a name of its own is called by its path. */
export function defaultLine(
  context: SheetContext,
  { path, figures }: SheetContext['packet']['defaults'][number],
): DefaultLine {
  const found = defaultName(path);
  const value = figures.value ?? '';
  if (!found) return { name: path, path, value: defaultValue(context, value) };
  const { say } = context;
  const what = say(`assumed.name.${found.code}`, ofWhat(context, found));
  return {
    name: found.floor ? say('assumed.floor', { floor: found.floor, what }) : what,
    path,
    value: valueSaid(context, found.code, value),
  };
}

/** What a setting is of, as the sheet calls it; courses are counted from one. */
function ofWhat({ packet, say }: SheetContext, { code, name = '' }: DefaultName) {
  const tile = packet.spec.tiles.find(({ key }) => key === name)?.name;
  return {
    name: code === 'breakageOf' ? say(`assumed.sawn.${name}`) : (tile ?? name),
    number: Number(name) + 1,
  };
}

function valueSaid(context: SheetContext, code: string, value: string | number): string {
  if (code === 'angles') return `${value}°`;
  if (code === 'readOn') return sayThing(context.say, String(value));
  if (code !== 'patternTiles') return defaultValue(context, value);
  const { tiles } = context.packet.spec;
  const named = String(value).split(', ');
  return named.map((key) => tiles.find((tile) => tile.key === key)?.name ?? key).join(', ');
}
