import { words } from './words.en.ts';

export const describeConnectorSleeve = (): string => words.describe;
