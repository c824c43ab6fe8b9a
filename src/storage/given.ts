/** What somebody gave as an answer, as it lies in storage. */
import type { RetrievalAnswer } from './answer.ts';
import { isRecord } from './versioned.ts';

export type Given = RetrievalAnswer['given'];
export type Certainty = RetrievalAnswer['certainty'];

export const isText = (value: unknown): value is string =>
  typeof value === 'string' && value !== '';

export function isGiven(value: unknown): value is Given {
  if (!isRecord(value)) return false;
  const { kind, ids, text, system } = value;
  if (kind === 'chosen') return Array.isArray(ids) && ids.every(isText);
  return kind === 'typed' && typeof text === 'string' && (system === 'si' || system === 'us');
}

export const isCertainty = (value: unknown): value is Certainty =>
  value === 1 || value === 2 || value === 3;
