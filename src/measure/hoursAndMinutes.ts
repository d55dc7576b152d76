/**
 * A time as a clock counts it, to the minute.
 *
 * @example hoursAndMinutes(4.83) //=> { hours: 4, minutes: 50 }
 * @example hoursAndMinutes(24) //=> { hours: 24, minutes: 0 }
 */
export function hoursAndMinutes(time: number): { readonly hours: number; readonly minutes: number } {
  const minutes = Math.round(time * 60);
  return { hours: Math.floor(minutes / 60), minutes: minutes % 60 };
}
