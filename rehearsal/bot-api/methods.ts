import { botMethods } from './bot-methods.ts';
import { copyMethods } from './copy-method.ts';
import { editMethods } from './edit-methods.ts';
import type { Method } from './method.ts';
import type { MethodName } from './schemas.ts';
import { sendMethods } from './send-methods.ts';
import { webhookMethods } from './webhook-methods.ts';

const methods: Readonly<Record<MethodName, Method>> = {
  ...botMethods,
  ...copyMethods,
  ...editMethods,
  ...sendMethods,
  ...webhookMethods,
};

const byLowerCase = new Map(
  Object.entries(methods).map(([name, run]) => [name.toLowerCase(), { name, run }]),
);

/** Finds a method by name, in any case as the service does. */
export function findMethod(name: string): { name: string; run: Method } | undefined {
  return byLowerCase.get(name.toLowerCase());
}
