import { z } from 'zod';
import { withDetected } from '../entities.ts';
import type { Service } from '../service.ts';
import type { FileClass, StoredMessage } from '../state.ts';
import { PhoneError } from './phone-error.ts';
import { deliver, requireOpened } from './writing.ts';

/** Bytes a phone sends here at most. The service takes more; a bot can fetch 20 MB of them. */
const SENDING_LIMIT = 52_428_800;

const FILE_CLASSES: Readonly<Record<string, FileClass>> = {
  photo: 'Photo',
  video: 'Video',
  document: 'Document',
  voice: 'Voice',
};

const query = z.object({
  kind: z.enum(['photo', 'video', 'document', 'voice']),
  name: z.string().min(1).max(255).optional(),
  caption: z.string().max(1024).optional(),
  seconds: z.coerce.number().int().min(0).max(86_400).optional(),
});

/** Types that browsers and programs give when they know nothing; the name says more. */
const NO_TYPE = ['', 'application/octet-stream'];

function checkLength(bytes: number): void {
  if (bytes > SENDING_LIMIT)
    throw new PhoneError(400, 'A phone sends files of up to 50 MB here. Choose a smaller one.');
}

/**
 * Sends a file as the person: the request's body is the file, its content type the file's, and `kind`, `name`, `caption`
 * and `seconds` stand in the address. Nothing is checked against the kind, because a person's phone may send anything.
 * Throws a PhoneError for a wrong value, an empty file, one over 50 MB, and a chat that is not open.
 */
export async function sendFile(
  service: Service,
  id: number,
  request: Request,
): Promise<StoredMessage> {
  const read = query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!read.success) throw new PhoneError(400, z.prettifyError(read.error));
  const account = requireOpened(service, id);
  // Refused by what it says of itself, before it fills the memory.
  checkLength(Number(request.headers.get('content-length')));
  const bytes = new Uint8Array(await request.arrayBuffer());
  checkLength(bytes.length);
  if (bytes.length === 0) throw new PhoneError(400, 'An empty file cannot be sent.');
  const { kind, name, caption = '', seconds } = read.data;
  const type = request.headers.get('content-type')?.trim() ?? '';
  const record = await service.files.put({
    bytes,
    fileClass: FILE_CLASSES[kind] ?? 'Document',
    fileName: name,
    mimeType: NO_TYPE.includes(type) ? undefined : type,
    shape: seconds === undefined ? {} : { duration: seconds },
  });
  const text = caption.trim();
  const entities = withDetected(text, []);
  return deliver(service, account, { text, entities, file: record.uniqueId });
}
