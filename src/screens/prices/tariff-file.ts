import type { FileOut } from '../../desk/contract.ts';
import type { Tariff } from '../../model/shapes/tariff.ts';

/** A tariff as a JSON file that fits the published schema and comes in again as it went out. */
export function tariffFile(tariff: Tariff): FileOut {
  const bytes = new TextEncoder().encode(`${JSON.stringify(tariff, null, 2)}\n`);
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  const plain = tariff.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return { fileName: `tariff-${plain || tariff.id}.json`, mediaType: 'application/json', base64: btoa(binary) };
}
