import type { FormState } from './FormContext.ts';

/** Under this name the draft is remembered on the device. */
const key = 'tile-job-packets.form';

/** The state that was left on this device; some browsers keep nothing for pages from disk, and then there is none. */
export function rememberedState(): Partial<FormState> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    return typeof kept === 'object' && kept !== null ? kept : {};
  } catch {
    return {};
  }
}

/** Remembers a state on this device where that is allowed. */
export function rememberState(state: FormState): void {
  try {
    localStorage.setItem(key, JSON.stringify(state));
  } catch {
    // Without a memory the form works all the same; the file is what counts.
  }
}
