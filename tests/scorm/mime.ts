import { lookup } from 'mrmime';

export const mime = (name: string): string => lookup(name) ?? 'application/octet-stream';
