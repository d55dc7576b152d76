import { bad, good, type Reader } from '../shape/Reader.ts';

/** Whether a path stays in the folder it starts from, on every system. */
function staysInside(path: string): boolean {
  // Control characters, drive letters and addresses are nothing a picture beside the job file needs.
  const odd = [...path].some((letter) => letter < ' ') || path.includes(':') || path.includes('\\');
  return (
    !odd && path !== '' && !path.startsWith('/') && !path.startsWith('~') && !path.split('/').includes('..')
  );
}

/**
 * The path of a picture inside the job's folder.
 *
 * @example
 * picture.read('photos/door.jpg') //=> { ok: true, value: 'photos/door.jpg' }
 * picture.read('../other/door.jpg').code //=> 'pictureOutside'
 * picture.read('/etc/passwd').code //=> 'pictureOutside'
 */
export const picture: Reader<string> = {
  read: (value) => {
    const path = String(value).trim();
    if (!staysInside(path)) return bad('pictureOutside');
    return /\.(?:jpe?g|png|webp|svg)$/i.test(path) ? good(path) : bad('notAPicture');
  },
  standIn: '',
  json: { type: 'string', examples: ['photos/door.jpg'] },
};
