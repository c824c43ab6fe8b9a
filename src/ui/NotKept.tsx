import { faultAt } from './keep-at.ts';

const why = {
  full: 'this browser has no room left',
  blocked: 'this browser keeps nothing for this site',
  newer: 'a newer version of this site has been here, so reload the page before the next one',
  busy: 'another tab of this site holds your answers, so close it before the next one',
  unloaded: 'the part that keeps answers did not load, so reload the page once you are connected',
  failed: 'this browser reported a fault in what it stores',
} as const;

/** One sentence where an answer was given that could not be kept. There from the start, so that it is read out. */
export function NotKept({ place }: { readonly place: string }) {
  const fault = faultAt(place);
  return (
    <p class="muted" role="status">
      {fault && `Your answer counts here, but it could not be kept for practice: ${why[fault]}.`}
    </p>
  );
}
