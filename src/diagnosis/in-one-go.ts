/** What is worked out in steps, for those who need no breath in between. */
export function inOneGo<Result>(steps: Generator<unknown, Result>): Result {
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}
