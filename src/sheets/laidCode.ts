import type { Packet } from '../packet/Packet.ts';
import { isLaid } from './isLaid.ts';

/** Codes whose words ask for something before the tile is ordered or laid, with those that only tell it. */
const LAID: Readonly<Record<string, string>> = {
  'height.appliance.measure': 'height.appliance.measureLaid',
  'height.flange.onFall': 'height.flange.onFallLaid',
  'sheet.layout-plan.carried': 'sheet.layout-plan.carriedLaid',
  'sheet.base-sheet.carried.none': 'sheet.base-sheet.carried.noneLaid',
  'sheet.base-sheet.carried.beside': 'sheet.base-sheet.carried.besideLaid',
  'height.appliance.tight': 'height.appliance.fits',
  'material.sealant.sum.open': 'material.sealant.sum.openLaid',
  'material.backer.sum.open': 'material.backer.sum.openLaid',
  'material.tape.sum.open': 'material.tape.sum.openLaid',
};

/** The code by which something is said on the sheets of a job: of a floor that is laid as what was found, not as what is to be done. */
export function laidCode(packet: Pick<Packet, 'job'>, code: string): string {
  return (isLaid(packet) ? LAID[code] : undefined) ?? code;
}
