import { isResilient, withoutAccents } from './houseYear.ts';

/** What breaks when it is torn off: tile, stone, concrete and their mortar, in the languages of the job file, without accents. */
const BREAKS =
  /tiles?\b|ceramic|porcel|azulejo|baldosa|\bgres\b|terra-?cotta|terrazzo|stone|piedra|pedra|marble|marmol|marmore|granit|\bslate\b|pizarra|ardosia|brick|ladrillo|tijolo|concrete|hormigon|concreto|mortar|mortero|argamassa|screed|mud bed|contrapiso|betonilha/i;

/** What is nailed, stapled or stretched on tack strip: carpet, wood and boards. */
const NAILED =
  /carpet|\brugs?\b|alfombra|moqueta|tapete|alcatifa|wood|\b(?:oak|pine|fir|maple|bamboo|osb|sub-?floor|joists)\b|board|parquet|parque\b|laminate|laminad|tarima|madera|madeira|\btacos?\b|contrachapad|contraplacad|compensado/i;

/** Paint that comes off leaves neither. */
const PAINTED = /paint|pintura|\btinta\b/i;

/**
 * What a layer of the old floor does to who tears it off, by its name: it breaks into dust and flying chips, or it leaves tack strip, nails
 * and staples; both where no word tells what it is.
 *
 * @example comesUpAs('old tile') //=> { chips: true, strips: false }
 * @example comesUpAs('vinyl tile') //=> { chips: false, strips: true }
 * @example comesUpAs('cement board') //=> { chips: true, strips: true }
 */
export function comesUpAs(name: string): { readonly chips: boolean; readonly strips: boolean } {
  if (isResilient(name)) return { chips: false, strips: true };
  const plain = withoutAccents(name);
  const [chips, strips] = [BREAKS.test(plain) || /cement/i.test(plain), NAILED.test(plain)];
  const isUnknown = !chips && !strips && !PAINTED.test(plain);
  return { chips: chips || isUnknown, strips: strips || isUnknown };
}
