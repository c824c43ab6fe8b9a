/** What a key that came down on the stage means, by where it came down. */
import { commandOf, type Command, type Where } from '../meeting/keys.ts';

/** Parts of the page whose own controls are moved by arrows. */
const OWN_KEYS = '[data-own-keys]';

export function whereOf(target: EventTarget | null): Where {
  if (!(target instanceof Element)) return 'stage';
  if (target.matches('input[type="text"], input[type="number"], input:not([type]), textarea'))
    return 'text';
  if (['input', 'select', '[role="slider"]'].some((one) => target.matches(one))) return 'control';
  if (target.closest(OWN_KEYS) !== null) return 'control';
  return target.closest('button, a, summary') === null ? 'stage' : 'button';
}

export const commandFor = (event: KeyboardEvent): Command | undefined =>
  commandOf(event, whereOf(event.target));
