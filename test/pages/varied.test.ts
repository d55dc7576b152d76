import { printedWell } from './support/printedWell.ts';
import { variedJobs } from './support/variedJobs.ts';

printedWell('packets of other papers, languages and sizes', variedJobs());
