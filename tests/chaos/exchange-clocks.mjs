/** @type {string} */
let clocks;

/**
 * Node's module hooks (node:module, "Customization Hooks"): they run before the sources are compiled, hence plain JavaScript.
 *
 * @param {{ clocks: string }} data
 */
export async function initialize(data) {
  clocks = data.clocks;
}

/**
 * Leads whoever imports the bot's clocks to the shared ones.
 *
 * @type {import('node:module').ResolveHook}
 */
export async function resolve(specifier, context, next) {
  const found = await next(specifier, context);
  return /\/bot\/roots\/clocks\.ts(\?|$)/.test(found.url) ? { ...found, url: clocks } : found;
}
