/*
Runs in the page: compares two pictures, given as data addresses. Both are made small first, so that an edge that is drawn
a little otherwise by another build of the browser makes no difference and another figure does. Gives one sentence a fault.
*/
globalThis.pictureFaults = async (expected, found) => {
  const small = 4;
  /** Most that a small pixel may differ, of 255. */
  const most = 56;
  const load = (address) =>
    new Promise((resolve, reject) => {
      const image = new Image();
      image.onload = () => resolve(image);
      image.onerror = () => reject(new Error('not a picture'));
      image.src = address;
    });
  const shrink = (image) => {
    const [width, height] = [Math.ceil(image.width / small), Math.ceil(image.height / small)];
    const context = Object.assign(document.createElement('canvas'), { width, height }).getContext('2d');
    context.imageSmoothingQuality = 'high';
    context.filter = 'blur(0.6px)';
    context.drawImage(image, 0, 0, width, height);
    return { width, height, data: context.getImageData(0, 0, width, height).data };
  };
  const [a, b] = await Promise.all([load(expected), load(found)]);
  if (a.width !== b.width || a.height !== b.height) {
    return [`is ${b.width} by ${b.height} pixels now, was ${a.width} by ${a.height}`];
  }
  const [before, now] = [shrink(a), shrink(b)];
  const off = [];
  for (let at = 0; at < now.width * now.height; at++) {
    const difference = Math.abs(before.data[at * 4 + 1] - now.data[at * 4 + 1]);
    if (difference > most)
      off.push({ x: (at % now.width) * small, y: Math.floor(at / now.width) * small, difference });
  }
  if (off.length === 0) return [];
  const [xs, ys] = [off.map(({ x }) => x), off.map(({ y }) => y)];
  const worst = off.reduce((one, other) => (other.difference > one.difference ? other : one));
  return [
    `differs in ${off.length} of ${now.width * now.height} spots, from ${Math.min(...xs)} ${Math.min(...ys)} to ${Math.max(...xs)} ${Math.max(...ys)}, most at ${worst.x} ${worst.y} by ${worst.difference} of 255`,
  ];
};
