import { z } from 'zod';
import { readJson } from '../json.ts';

/** Form and multipart bodies carry everything as text, so each reader also takes the text form. */
function opened(value: unknown): unknown {
  return typeof value === 'string' ? (readJson(value) ?? value) : value;
}

/** A whole number, also as digits. */
export const integer = z.union([
  z.int(),
  z
    .string()
    .regex(/^-?\d{1,16}$/)
    .transform(Number),
]);

/** True or false, also as text or as 0 and 1 in text. */
export const flag = z.union([
  z.boolean(),
  z.enum(['true', 'True', '1']).transform(() => true),
  z.enum(['false', 'False', '0']).transform(() => false),
]);

/** A chat's number. Names of public chats are read, but no chat here has one. */
export const chatId = z.union([
  integer,
  z
    .string()
    .regex(/^@/)
    .transform(() => Number.NaN),
]);

/** Text; numbers are written out as the service does. */
export const text = z.union([z.string(), z.number().transform(String)]);

/** A value that may come as JSON text. */
export function structured<S extends z.ZodType>(schema: S): z.ZodPreprocess<S> {
  return z.preprocess(opened, schema);
}

export const entities = structured(
  z.array(
    z.object({
      type: z.string(),
      offset: z.int(),
      length: z.int(),
      url: z.string().optional(),
      language: z.string().optional(),
    }),
  ),
);
