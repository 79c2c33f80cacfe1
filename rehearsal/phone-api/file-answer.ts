import { readRange } from '../byte-range.ts';
import { imageSize } from '../image-size.ts';
import type { FileRecord } from '../state.ts';

/** Bytes every PDF file begins with (ISO 32000-1, 7.5.2). */
const PDF_MARK = '%PDF-';

/** True for files the browser shows by itself; a document only when its bytes are what its type says. */
function isShown({ fileClass, mimeType }: FileRecord, bytes: Uint8Array): boolean {
  // The others have a type that their class allows, whatever their sender said.
  if (fileClass !== 'Document') return true;
  if (mimeType === 'application/pdf')
    return Buffer.from(bytes.subarray(0, PDF_MARK.length)).toString('latin1') === PDF_MARK;
  return imageSize(bytes)?.mimeType === mimeType;
}

/** The range asked for, unless it was asked of another version of the file (RFC 9110, 13.1.5). */
function wantedRange(request: Request, tag: string): string | undefined {
  const condition = request.headers.get('if-range') ?? tag;
  return request.method === 'GET' && condition === tag
    ? (request.headers.get('range') ?? undefined)
    : undefined;
}

/**
 * Answers with a file, or with the part of it a player asks for (RFC 9110, 14 and 15.3.7). Pictures, videos, recordings and
 * PDF files are shown; all else is saved, never run.
 */
export function fileAnswer(request: Request, record: FileRecord, bytes: Uint8Array): Response {
  const size = bytes.length;
  const name = encodeURIComponent(record.fileName ?? record.path.split('/').at(-1) ?? 'file');
  const disposition = isShown(record, bytes) ? 'inline' : 'attachment';
  const tag = `"${record.uniqueId}"`;
  const headers = {
    'accept-ranges': 'bytes',
    'content-type': record.mimeType,
    'content-disposition': `${disposition}; filename*=UTF-8''${name}`,
    etag: tag,
  };
  const range = readRange(wantedRange(request, tag), size);
  if (range === 'all') return new Response(new Uint8Array(bytes), { headers });
  if (range === 'none') {
    const none = { 'accept-ranges': 'bytes', 'content-range': `bytes */${size}` };
    return new Response(null, { status: 416, headers: none });
  }
  const { first, last } = range;
  return new Response(new Uint8Array(bytes.subarray(first, last + 1)), {
    status: 206,
    headers: { ...headers, 'content-range': `bytes ${first}-${last}/${size}` },
  });
}
