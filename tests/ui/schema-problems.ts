import type { LinkSchema } from '../../src/ui/link-state.ts';

const NAME = /^[A-Za-z][A-Za-z0-9_-]*$/u;
const OPTION = /^[A-Za-z0-9_.-]+$/u;

/** Mistakes in a schema itself, for the widget's test; an empty list means it is sound. */
export function schemaProblems({ id, version, controls }: LinkSchema): readonly string[] {
  const problems: string[] = [];
  if (!NAME.test(id)) problems.push(`The id "${id}" must be letters, digits, "-" or "_".`);
  if (!Number.isInteger(version)) problems.push(`The version ${version} must be a whole number.`);
  const keys = controls.map((control) => control.key);
  for (const key of new Set(keys)) {
    if (!NAME.test(key)) problems.push(`The key "${key}" must be letters, digits, "-" or "_".`);
    if (keys.indexOf(key) !== keys.lastIndexOf(key))
      problems.push(`The key "${key}" is used twice.`);
  }
  for (const control of controls) {
    if (control.kind === 'number') {
      const { key, min, max, step, default: start } = control;
      if (!(min < max && step > 0 && start >= min && start <= max)) {
        problems.push(`"${key}": ${min} to ${max} by ${step}, start ${start}, is not a range.`);
      }
    }
    if (control.kind === 'choice') {
      for (const option of control.options) {
        if (!OPTION.test(option)) problems.push(`The option "${option}" cannot stand in a link.`);
      }
      if (!control.options.includes(control.default)) {
        problems.push(`"${control.key}": the default "${control.default}" is not an option.`);
      }
    }
  }
  return problems;
}
