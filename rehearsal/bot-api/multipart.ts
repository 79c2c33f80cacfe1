import { badRequest } from './envelope.ts';

export interface Part {
  readonly name: string;
  /** Present for file parts only. */
  readonly fileName?: string;
  readonly bytes: Uint8Array;
}

/**
 * Reads a multipart/form-data body.
 * Tolerant where HTTP clients differ: no space needed after ":" and ";", header names in any case,
 * file names quoted or bare, with spaces or any UTF-8. A bare file name ends at ";" and has
 * its "%20" and the like decoded, as on the service (tdlib/td HttpReader.cpp). Throws a 400 when the boundary is
 * missing; the words are from memory.
 */
export function parseMultipart(body: Uint8Array, contentType: string): Part[] {
  const boundary = /boundary=(?:"([^"]+)"|([^;\s]+))/i.exec(contentType);
  const mark = boundary?.[1] ?? boundary?.[2];
  if (mark === undefined) throw badRequest('boundary not found');
  const buffer = Buffer.from(body.buffer, body.byteOffset, body.byteLength);
  return slices(buffer, `--${mark}`).flatMap((part) => {
    const read = readPart(part);
    return read === undefined ? [] : [read];
  });
}

function slices(buffer: Buffer, delimiter: string): Buffer[] {
  const parts: Buffer[] = [];
  let start = buffer.indexOf(delimiter);
  while (start >= 0) {
    const from = start + Buffer.byteLength(delimiter);
    if (buffer.subarray(from, from + 2).toString('latin1') === '--') break;
    const next = buffer.indexOf(`\r\n${delimiter}`, from);
    if (next < 0) break;
    parts.push(buffer.subarray(from + 2, next));
    start = next + 2;
  }
  return parts;
}

function readPart(part: Buffer): Part | undefined {
  const end = part.indexOf('\r\n\r\n');
  if (end < 0) return undefined;
  const headers = part.subarray(0, end).toString('utf8').split('\r\n');
  const disposition = headers.find((line) => /^content-disposition:/i.test(line)) ?? '';
  const name = parameter(disposition, 'name');
  if (name === undefined) return undefined;
  const fileName = parameter(disposition, 'filename');
  const bytes = new Uint8Array(part.subarray(end + 4));
  return fileName === undefined ? { name, bytes } : { name, fileName, bytes };
}

function parameter(disposition: string, key: string): string | undefined {
  const found = new RegExp(`;\\s*${key}=(?:"((?:[^"\\\\]|\\\\.)*)"|([^;]*))`, 'i').exec(
    disposition,
  );
  const quoted = found?.[1]?.replace(/\\(.)/g, '$1');
  return quoted ?? percentDecoded(found?.[2]?.trim());
}

/** As the service does with bare names; a name with a lone "%" stays as it is. */
function percentDecoded(name: string | undefined): string | undefined {
  try {
    return name === undefined ? undefined : decodeURIComponent(name);
  } catch {
    return name;
  }
}
