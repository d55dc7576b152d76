/** One time on the job's clock. Local time without a zone, ISO `YYYY-MM-DDTHH:MM`. */
export interface CalendarEntry {
  /**
   * Before the first tile `laboratory`, `comesOut`, `lift`, `heatOff`, `fill`, `fillCures`, `layer`, `layerCures`; from it on
   * `doNotSet`, `set`, `sealTile`, `grout`, `walk`, `softJoints`, `heavy`, `furniture`, `sealFrom`, `sealTo`, `seal`, `sealerCures`, `water`, `heat`.
   */
  readonly code: string;
  readonly from: string;
  readonly to?: string;
  readonly zone?: number;
  /** The floor that the zone is of, where the job has several: each counts its zones from one. */
  readonly floor?: string;
  /** What comes out, is lifted, is laid or is tested, as the job file names it. */
  readonly things?: readonly string[];
  /** Who comes for it, where the job says so. */
  readonly who?: string;
  /** On `lift`: the laboratory must have said no first. On `heavy` or `furniture`: a toilet goes back. On `water`: the room gets wet and has a shower. */
  readonly concerns?: 'laboratory' | 'toilet' | 'shower';
  /** On `heavy`: furniture waits for `furniture`, as the room is closed again before; `allLater`: and so does what is joined to water. */
  readonly furniture?: 'later' | 'allLater';
  /** The wait it rests on and where that comes from. */
  readonly hours?: number;
  readonly source: string;
  /** The wait as it is in a warm room, where the cold of this one makes it longer; and the room's temperature in °C. */
  readonly warmHours?: number;
  readonly tempC?: number;
  /** The moment that the wait comes to, where the time told is another one, and why it is another one. */
  readonly due?: string;
  readonly moved?: 'night' | 'evening' | 'work' | 'oneGo' | 'softJoints' | 'sealer' | 'missed';
  /** Of work that comes after the time by which it is to be done, `moved` being `missed`: that time, as it is told. */
  readonly latest?: string;
  /** What is set, lifted, filled or laid, by the tally's measure of the field, and how much of it in an hour. */
  readonly areaM2?: number;
  readonly paceM2PerHour?: number;
}
