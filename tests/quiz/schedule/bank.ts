/** The questions of the site as practice sees them: in the order of the course, without their words. */
import { bankIndex } from '../../../src/lessons/bank-index.ts';

export const bank = bankIndex().items;
if (bank.length < 100)
  throw new Error(`The bank has ${bank.length} questions: is the folder gone?`);
