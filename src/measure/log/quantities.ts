/** What a log is printed in; one place, so that the page carries only these. */
export {
  count,
  minutes,
  pressure,
  seconds,
  speed,
  temperature,
  times as rate,
} from '../../quantity/quantities.ts';
export { ratio } from '../../quantity/part-quantities.ts';
