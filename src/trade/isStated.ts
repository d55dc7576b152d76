/**
 * Whether a field of a product was taken from its own sheet. `stated` holds the paths of the fields that the job gives;
 * a path counts when it ends in the field's name, with or without the unit, however the words are joined.
 *
 * @example
 * isStated(['products.mortar.grout after'], 'groutAfterHours') //=> true
 * isStated(['products.grout.walk'], 'waterHours') //=> false
 */
export function isStated(stated: readonly string[], field: string): boolean {
  const ends = [field, field.replace(/(Hours|Kg|M2|M2PerLitre)$/, '')].map(plain);
  return stated.some((path) => ends.some((end) => plain(path).endsWith(end)));
}

function plain(name: string): string {
  return name.replace(/[^a-z0-9]/gi, '').toLowerCase();
}
