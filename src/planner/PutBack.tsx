import { words } from './words.en.ts';

/** The title over the readings: whoever takes one out, or puts it back, is led there. */
export const READINGS_TITLE = 'next-readings-title';
export const toReadings = (): void => document.getElementById(READINGS_TITLE)?.focus();

interface PutBackProps {
  /** What was taken out last; empty for nothing. */
  readonly said: string;
  readonly putBack: () => void;
}

/** What was taken out last, and the way back. */
export function PutBack({ said, putBack }: PutBackProps) {
  return (
    <p role="status" class="next-put-back">
      {said !== '' && (
        <>
          {said}{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => {
              putBack();
              toReadings();
            }}
          >
            {words.readings.putBack}
          </button>
        </>
      )}
    </p>
  );
}
