import type { Bundle, SheetView } from '../sheets/SheetView.ts';
import type { BundleView } from './SiteJob.ts';

export const bundleNames: readonly Bundle[] = ['crew', 'templates', 'owner', 'office', 'packet', 'measuring'];

/** The print documents of a job: sheets in their given order; a document without sheets does not exist. */
export function bundlesOf(sheets: readonly SheetView[]): readonly BundleView[] {
  return bundleNames
    .map((name) => ({ name, sheets: sheets.filter((sheet) => sheet.bundles.includes(name)) }))
    .filter((bundle) => bundle.sheets.length > 0);
}
