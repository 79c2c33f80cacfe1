import { readJson } from '../json.ts';
import { ApiError, badRequest } from './envelope.ts';
import { parseMultipart } from './multipart.ts';

export interface Upload {
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

export interface CallBody {
  readonly params: Record<string, unknown>;
  readonly uploads: ReadonlyMap<string, Upload>;
}

/** The service refuses more parameters than this without files, in bytes. */
const PARAMS_LIMIT = 1_048_576;
/** The service takes uploads up to 50 MB. */
const UPLOAD_LIMIT = 52_428_800;

const NO_UPLOADS: ReadonlyMap<string, Upload> = new Map();

/** Reads a call's parameters from the query string and a JSON, form or multipart body. */
export async function readBody(request: Request): Promise<CallBody> {
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const bytes = new Uint8Array(await request.arrayBuffer());
  const type = request.headers.get('content-type') ?? '';
  if (/^multipart\/form-data/i.test(type)) return multipartBody(query, bytes, type);
  if (bytes.length > PARAMS_LIMIT) throw new ApiError(413, 'Request Entity Too Large');
  const text = new TextDecoder().decode(bytes);
  if (text === '') return { params: query, uploads: NO_UPLOADS };
  if (/^application\/json/i.test(type))
    return { params: { ...query, ...jsonObject(text) }, uploads: NO_UPLOADS };
  return {
    params: { ...query, ...Object.fromEntries(new URLSearchParams(text)) },
    uploads: NO_UPLOADS,
  };
}

function jsonObject(text: string): Record<string, unknown> {
  const value = readJson(text);
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ...value };
  throw badRequest("can't parse request: JSON object expected");
}

function multipartBody(query: Record<string, string>, bytes: Uint8Array, type: string): CallBody {
  if (bytes.length > UPLOAD_LIMIT) throw new ApiError(413, 'Request Entity Too Large');
  const params: Record<string, unknown> = { ...query };
  const uploads = new Map<string, Upload>();
  for (const part of parseMultipart(bytes, type)) {
    if (part.fileName === undefined) params[part.name] = new TextDecoder().decode(part.bytes);
    else uploads.set(part.name, { fileName: part.fileName, bytes: part.bytes });
  }
  // A file sent under a parameter's own name is that parameter's value; others are pointed at.
  const pointedAt = Object.values(params).join('\n');
  for (const name of uploads.keys()) {
    if (!pointedAt.includes(`attach://${name}`)) params[name] ??= `attach://${name}`;
  }
  return { params, uploads };
}
