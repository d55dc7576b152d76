/**
 * A length as a whole number of ticks, 320 to the millimetre. Both systems are exact in it: an inch is
 * 8128 ticks, 1/64 in is 127, 0.1 mm is 32, so a row of tiles, joints and gaps adds up exactly.
 */
export type Ticks = number;

/** The system a length was written in, and is printed in. */
export type System = 'inches' | 'mm';

export const TICKS_PER_MM = 320;
/** 25.4 mm exactly: NIST Handbook 44, Appendix C. */
export const TICKS_PER_INCH = 8128;
/** 12 in. */
export const TICKS_PER_FOOT = 97536;
/** The finest mark on an ordinary folding rule in inches, 1/64 in. */
export const TICKS_PER_64TH = 127;
