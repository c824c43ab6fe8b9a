import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { logColumnsKeeper, MOST_TOOLS, withTool } from '../../src/storage/log-columns.ts';
import { fakeArea } from './fake-area.ts';

const tool = (header: string) => ({ header, columns: { time: { column: 0 } }, ranges: {} });

it('keeps what a tool’s columns are, and reads it back', () => {
  const keeper = logColumnsKeeper(fakeArea());
  expect(keeper.read()).toEqual({ data: { tools: [] }, status: 'nothing' });
  expect(keeper.update((kept) => withTool(kept, tool('a')))).toBe('ok');
  expect(keeper.read().data.tools).toEqual([tool('a')]);
});

it('has one entry for a header, the last used first, and not more than a shop has tools', () => {
  let kept = { tools: [] as ReturnType<typeof tool>[] };
  for (let i = 0; i < MOST_TOOLS + 5; i += 1) kept = withTool(kept, tool(String(i))) as typeof kept;
  kept = withTool(kept, tool('10')) as typeof kept;
  expect(kept.tools.length).toBe(MOST_TOOLS);
  expect(kept.tools[0]?.header).toBe('10');
  expect(kept.tools.filter(({ header }) => header === '10').length).toBe(1);
});

it('reads what version 1 wrote', () => {
  const area = fakeArea();
  area.setItem(
    'hot-clutch:log-columns:a',
    readFileSync('tests/storage/log-columns-version-1.json', 'utf8'),
  );
  const { data, status } = logColumnsKeeper(area).read();
  expect(status).toBe('ok');
  expect(data.tools[0]?.columns['turbine']).toEqual({ column: 1, unit: 'rpm' });
});

it.each([
  '{}',
  '{"v":1,"n":1,"data":{"tools":[{"header":1}]}}',
  '{"v":1,"n":1,"data":{"tools":[{"header":"a","columns":{"time":{"column":-1}},"ranges":{}}]}}',
])('keeps %s aside and begins anew', (text) => {
  const area = fakeArea();
  area.setItem('hot-clutch:log-columns:a', text);
  expect(logColumnsKeeper(area).read().status).toBe('unreadable');
  expect(area.getItem('hot-clutch:log-columns:aside:0')).toBe(text);
});
