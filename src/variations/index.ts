/** Families by name: where the numbers come from of questions that have other ones each time they are asked. */
import type { Entry } from '../numbers/entry.ts';
import type { Variation } from '../quiz/vary.ts';
import { families } from './families.ts';
import { idOf, settingOf, type Family, type Made, type Setting } from './family.ts';

const made = new Map<string, Made | undefined>();

/** What stands under a name itself, and nothing that every object has. */
const own = <Value>(from: Readonly<Record<string, Value>>, name: string): Value | undefined =>
  Object.hasOwn(from, name) ? from[name] : undefined;

/** Worked out once, since numbers of one setting are asked for one by one. */
function makeOnce(name: string, family: Family, setting: Setting): Made | undefined {
  const key = `${name}/${idOf(family, setting)}`;
  if (!made.has(key)) made.set(key, family.make(setting));
  return made.get(key);
}

/** @throws Error with the names there are */
export function familyNamed(name: string): Family {
  const found = own(families, name);
  if (found === undefined) {
    throw new Error(
      `There is no family "${name}" in src/variations. There is: ${Object.keys(families).join(', ')}.`,
    );
  }
  return found;
}

/** One setting of a family; nothing where it makes no good question. */
export function variationOf(name: string, setting: Setting): Variation | undefined {
  const family = familyNamed(name);
  const result = makeOnce(name, family, setting);
  if (result === undefined) return undefined;
  const id = idOf(family, setting);
  const texts = Object.entries(setting).filter(
    (one): one is [string, string] => typeof one[1] === 'string',
  );
  return {
    id,
    numbers: Object.fromEntries(
      Object.keys(result.numbers).map((short) => [short, `${name}/${id}/${short}`]),
    ),
    cases: { ...Object.fromEntries(texts), ...result.cases },
    truth: result.truth ?? {},
  };
}

/** A number by its full name, family/setting/name. */
export function variationNumber(full: string): Entry | undefined {
  const [name = '', id = '', short = ''] = full.split('/');
  const family = own(families, name);
  const setting = family && settingOf(family, id);
  const result = family && setting && makeOnce(name, family, setting);
  return result && own(result.numbers, short);
}
