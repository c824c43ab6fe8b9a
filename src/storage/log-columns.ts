import { keeper, type Area, type Keeper } from './envelope.ts';
import { isRecord, type Form } from './versioned.ts';

/** How the columns of one tool's logs were read last, by the header that it writes. No reading of any log is kept. */
export interface KeptColumns {
  readonly header: string;
  readonly columns: Readonly<Record<string, { readonly column: number; readonly unit?: string }>>;
  readonly ranges: Readonly<Record<string, string>>;
}
export interface LogColumns {
  /** The one used last stands first. */
  readonly tools: readonly KeptColumns[];
}

/** More tools than a shop has. */
export const MOST_TOOLS = 20;

function parseTool(data: unknown): KeptColumns | undefined {
  if (!isRecord(data) || typeof data['header'] !== 'string') return undefined;
  const { header, columns, ranges } = data;
  if (!isRecord(columns) || !isRecord(ranges)) return undefined;
  const read: Record<string, { column: number; unit?: string }> = {};
  for (const [role, choice] of Object.entries(columns)) {
    if (!isRecord(choice)) return undefined;
    const { column, unit } = choice;
    if (typeof column !== 'number' || !Number.isInteger(column) || column < 0) return undefined;
    if (unit !== undefined && typeof unit !== 'string') return undefined;
    read[role] = unit === undefined ? { column } : { column, unit };
  }
  const words: Record<string, string> = {};
  for (const [word, range] of Object.entries(ranges)) {
    if (typeof range !== 'string') return undefined;
    words[word] = range;
  }
  return { header, columns: read, ranges: words };
}

function parse(data: unknown): LogColumns | undefined {
  const { tools } = isRecord(data) ? data : {};
  if (!Array.isArray(tools)) return undefined;
  const read = tools.map(parseTool);
  return read.every((tool) => tool !== undefined)
    ? { tools: read.slice(0, MOST_TOOLS) }
    : undefined;
}

export const logColumnsForm: Form<LogColumns> = { name: 'log-columns', version: 1, parse };

export function logColumnsKeeper(area?: Area): Keeper<LogColumns> {
  return keeper({ ...logColumnsForm, empty: { tools: [] }, area });
}

/** With this tool in front, in the place of what was kept for its header. */
export const withTool = ({ tools }: LogColumns, tool: KeptColumns): LogColumns => ({
  tools: [tool, ...tools.filter(({ header }) => header !== tool.header)].slice(0, MOST_TOOLS),
});
