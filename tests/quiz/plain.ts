/** A thing as JSON has it, its amounts as they read in metric units, with plain spaces. */
export const plain = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_key, one: unknown) =>
      typeof one === 'object' && one !== null && 'amount' in one && 'si' in one ? one.si : one,
    ).replaceAll(/[\u00a0\u202f]/gu, ' '),
  );
