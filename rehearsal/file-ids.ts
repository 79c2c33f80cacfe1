import { createHash } from 'node:crypto';
import type { FileClass } from './state.ts';

/** `full` is the file itself; `small` the reduced size listed for a photo. */
export type FileVariant = 'full' | 'small';

export interface FileIdParts {
  readonly fileClass: FileClass;
  readonly uniqueId: string;
  readonly variant: FileVariant;
  /** Which bot the id works for. */
  readonly botTag: string;
}

const ID = /^(Photo|Document|Video|Voice)\|([\w-]{15})\|(full|small)\|([0-9a-f]{12})$/;

/** A short mark of the bot a file id belongs to; the token cannot be got back from it. */
export function botTag(token: string): string {
  return createHash('sha256').update(token).digest('hex').slice(0, 12);
}

/** Writes an opaque file id. */
export function writeFileId({ fileClass, uniqueId, variant, botTag: tag }: FileIdParts): string {
  return Buffer.from([fileClass, uniqueId, variant, tag].join('|')).toString('base64url');
}

const CLASSES: Readonly<Record<string, FileClass>> = {
  Photo: 'Photo',
  Document: 'Document',
  Video: 'Video',
  Voice: 'Voice',
};

/** Reads a file id; undefined when it is not one. */
export function readFileId(id: string): FileIdParts | undefined {
  const [, className = '', uniqueId, variant, tag] =
    ID.exec(Buffer.from(id, 'base64url').toString('latin1')) ?? [];
  const fileClass = CLASSES[className];
  if (fileClass === undefined || uniqueId === undefined || tag === undefined) return undefined;
  return { fileClass, uniqueId, variant: variant === 'small' ? 'small' : 'full', botTag: tag };
}
