import type { System } from '../measure/index.ts';

/** What differs between a job in inches and one in millimetres. */
interface Samples {
  readonly paper: string;
  readonly step: string;
  readonly pace: string;
  readonly tile: string;
  readonly thick: string;
  readonly joint: string;
  readonly long: string;
  readonly short: string;
  readonly diagonal: string;
  readonly fromCorner: string;
  readonly clear: string;
  readonly wall: string;
  readonly doorLine: string;
  readonly tuck: string;
  readonly post: string;
  readonly pipe: string;
  readonly near: string;
  readonly far: string;
  readonly box: string;
  readonly gap: string;
  readonly cut: string;
  readonly layers: string;
  readonly bed: string;
  readonly removed: string;
  readonly height: string;
  readonly flat: string;
  readonly notch: string;
  readonly mortarBag: string;
  readonly mortarCovers: string;
  readonly groutBag: string;
  readonly bottle: string;
  readonly bottleCovers: string;
  readonly offcut: string;
  readonly warm: string;
}

const INCHES: Samples = {
  paper: 'letter',
  step: '1/16 in',
  pace: '12 sq ft an hour',
  tile: '11 13/16 in x 11 13/16 in',
  thick: '3/8 in',
  joint: '3/16 in',
  long: '8 ft 2 1/4 in',
  short: '5 ft 0 1/2 in',
  diagonal: '9 ft 7 3/8 in',
  fromCorner: '9 in',
  clear: '30 in',
  wall: '4 3/4 in',
  doorLine: '2 3/8 in',
  tuck: '1/2 in',
  post: '1 1/2 in x 3 1/2 in',
  pipe: '1 1/4 in',
  near: '3 in',
  far: '20 in',
  box: '24 in x 18 in',
  gap: '1/4 in',
  cut: '5 1/2 in',
  layers: '1/4 in',
  bed: '1/8 in',
  removed: '1/8 in',
  height: '3/4 in',
  flat: '3/16 in under 10 ft',
  notch: '1/4 in x 3/8 in x 1/4 in',
  mortarBag: '50 lb',
  mortarCovers: '60-80 sq ft',
  groutBag: '10 lb',
  bottle: '1 qt',
  bottleCovers: '200 sq ft',
  offcut: '1 in',
  warm: '70 F',
};

const MILLIMETRES: Samples = {
  paper: 'a4',
  step: '1 mm',
  pace: '1.1 m2 an hour',
  tile: '297 mm x 297 mm',
  thick: '9 mm',
  joint: '3 mm',
  long: '2495 mm',
  short: '1535 mm',
  diagonal: '2929 mm',
  fromCorner: '230 mm',
  clear: '760 mm',
  wall: '120 mm',
  doorLine: '60 mm',
  tuck: '12 mm',
  post: '40 mm x 90 mm',
  pipe: '32 mm',
  near: '75 mm',
  far: '500 mm',
  box: '600 mm x 450 mm',
  gap: '6 mm',
  cut: '140 mm',
  layers: '6 mm',
  bed: '3 mm',
  removed: '3 mm',
  height: '19 mm',
  flat: '4 mm under 2 m',
  notch: '6 x 10 x 6 mm',
  mortarBag: '20 kg',
  mortarCovers: '5-7 m2',
  groutBag: '5 kg',
  bottle: '1 L',
  bottleCovers: '20 m2',
  offcut: '25 mm',
  warm: '21 C',
};

function head(slug: string, units: System, s: Samples): string {
  return `# yaml-language-server: $schema=../../output/assets/job.schema.json
# One tile job. What follows a # is a note; take the # away to use such a line.
# Lengths carry their unit: 8 ft 2 1/4 in, 98.25 in, 2495 mm. A number without a unit is refused.
# A line that may be left out has a default, and every default is printed on the sheet "Assumed".

title: "${slug}"
owner:                        # whose floor it is
place:                        # where it is
# house year: 1957            # or unknown: old floors and old paint stop the job until they are tested
status: planned               # planned, underway, finished
revision: {letter: A, date: 2027-03-01}
print: {paper: ${s.paper}, units: ${units}, saw step: ${s.step}, crew: en, owner: en}   # crew: [en, es] prints both
work: {days: mon-fri, hours: 08:00-16:30, pace: ${s.pace}, temperature: ${s.warm}}   # from: 2027-03-08
# access: {only toilet: yes, only exit: no}
# contacts: {setter: , phone: }
# picture: door.jpg           # lies in this folder

tile:
  field:                      # a name of your own; more tiles may follow
    name: field tile
    read: [${s.tile}, ${s.tile}]   # length x width of several tiles, as measured
    thick: ${s.thick}
    edge: calibrated          # rectified, calibrated, natural
    turns: any                # any, half, none
    # bow: ${s.bed}           # gap under a straightedge along the longer side
    # material: porcelain     # porcelain, ceramic, stone, cement, glass
    # glazed: yes
    # box: {pieces: 11, price: 41.50, lot: "0417", on hand: 0}
joint: ${s.joint}
`;
}

function floor(s: Samples): string {
  return `
floor:
  walls:                      # once round, the room on your left; several readings in [ ]
    A-B: {read: ${s.long}, seen: focal}      # seen: focal, plain, hidden
    B-C: ${s.short}
    C-D: {read: ${s.long}, touch: no}        # a tape cannot reach this face at floor level
    D-A: ${s.short}
  diagonals: {A-C: ${s.diagonal}}            # measure at least one
  # angles: {D: 270}          # a corner that is not 90, where diagonals do not tell
  # gap: ${s.gap}             # at walls and obstacles
  doorways:
    hall:
      in: D-A
      from D: ${s.fromCorner}            # to the nearer side of the clear opening
      clear: ${s.clear}
      wall: ${s.wall}            # its thickness
      door line: ${s.doorLine}       # from the face of the wall to under the closed door
      left: undercut ${s.tuck}   # as you face the door; the tile slides in so far
      right: plain            # or post ${s.post}, along the wall x into it
      beyond: wood            # carpet, wood, tile, vinyl, concrete, later
  obstacles:
    pipe: {circle: ${s.pipe}, from C-D: ${s.near}, from D-A: ${s.far}}
    # cabinet: {rectangle: ${s.box}, from A-B: ${s.far}, from B-C: ${s.near}}   # first size along the first wall named
    # hearth: {polygon: [[${s.near}, ${s.near}], [${s.far}, ${s.near}], [${s.near}, ${s.far}]], from: [A-B, B-C]}
  exposure: dry               # dry, wet, sun, outside
  pattern: straight           # or {running: 1/3}, {straight, turned: 45}, {running: 1/2, along: B-C}
  #   along: a wall, shared taper, or a line of sight: from hall to B-C
  # border: [{tile: band, width: ${s.cut}, corners: mitred}]   # courses from the wall inwards; a width, or solve; or corners: butted, runs through: left
  start: {along: best, across: best}
  #   centred between A-B and C-D; joint on hall; tile on A-B; cut of ${s.cut} at A-B
  zones: auto                 # or 2, or {from A-B: [${s.far}]}
`;
}

function rest(s: Samples): string {
  return `
base:                         # layers from the bare base up
  below: boards               # the bare base: boards, plywood, concrete
  removed: {sheet vinyl: ${s.removed}}
  new: {board: ${s.layers}, mortar under tile: ${s.bed}, tile: ${s.thick}}
  heights: {hall floor: ${s.height} above boards, hall door: ${s.height} above vinyl}   # as measured now
  # read on: sheet vinyl       # what flatness, film and moisture were read on: the old floor, or base once it is bare
  # flatness: [${s.flat} at the hall door]
  # cracks: {by the window: still}           # still or moving; or {is: moving, from A-B: [${s.near}, ${s.far}], from D-A: [${s.near}, ${s.near}]}
  # hollow: {by the door: {from A-B: ${s.far}, from D-A: ${s.near}}}
  # nail holes: along all walls
  # film: {kind: curing, drop test: soaks in}     # none, paint, curing; soaks in or stays
  # moisture: {reads: 4 lb, on: 2027-02-26, limit: 5 lb}   # or 78 % RH, 2.1 % CM, 9 % MC
  # flatness grid: {from A-B: ${s.near}, from D-A: ${s.near}, every: ${s.far}, drops: [[${s.height}, ${s.height}]]}
  # joints: {from A-B: ${s.far}}
  # heated: no
  # comes out: {toilet: plumber, hall door: setter}

products:                     # the product's own sheet wins over our defaults
  mortar: {notch: ${s.notch}, bag: ${s.mortarBag}}
  #   covers: ${s.mortarCovers}, back butter: yes, pot life: 90 min, grout after: 24 h
  grout: {kind: cement, bag: ${s.groutBag}}
  #   colour: , walk: 24 h, heavy: 72 h, water: 7 days, seal after: 4-6 days, density: 1.6 kg per litre
  # sealer: {kind: penetrating, bottle: ${s.bottle}, covers: ${s.bottleCovers}}
  # sealant: {tube: 300 ml}

# saw: {kerf: 2 mm}
# offcuts: {plan: fewest tiles, narrowest: ${s.offcut}}   # or plan: smallest pile, of offcuts that wait
# waste: {breakage: 3 %, keep: 2 %}   # or breakage: {straight: 3 %, notch: 10 %, hole: 10 %}, by how it is sawn
`;
}

/**
 * A commented job file to begin with, in inches or millimetres. It reads without problems; its measures are samples to be
 * written over.
 *
 * @example
 * starterJob('boot-room', 'mm').includes('joint: 3 mm') //=> true
 */
export function starterJob(slug: string, system: System): string {
  const samples = system === 'inches' ? INCHES : MILLIMETRES;
  // A title in quotation marks: a folder may be called `1957` or `no`.
  return head(slug.replace(/["\\]/g, ''), system, samples) + floor(samples) + rest(samples);
}
