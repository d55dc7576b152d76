/** Inches, written as a decimal, to ticks. */
export const inch = (value: number): number => Math.round(value * 8128);

/** Millimetres to ticks. */
export const mm = (value: number): number => Math.round(value * 320);

export const SIXTEENTH = 508;
