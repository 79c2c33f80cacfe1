import type { MiddlewareHandler } from 'hono';
import { isLoopback } from './safety.ts';

function hostName(host: string): string {
  const url = `http://${host}`;
  return URL.canParse(url) ? new URL(url).hostname.replace(/^\[|\]$/g, '') : '';
}

/** A bot is a program; no page, not even ours, calls its side. */
function isBotSide(path: string): boolean {
  return /^\/(bot|file\/bot)/.test(path);
}

/**
 * Lets a web page of another address neither read nor change anything here, also not one whose name was made to lead to this
 * computer, unless `allowRemote`. Browsers send `Origin` or `Sec-Fetch-Site`; programs send neither and pass.
 */
export function sameOriginOnly(allowRemote: boolean): MiddlewareHandler {
  return async (c, next) => {
    const host = c.req.header('host') ?? '';
    const origin = c.req.header('origin');
    const site = c.req.header('sec-fetch-site');
    const foreignOrigin = origin !== undefined && origin !== `http://${host}`;
    const foreignSite = site !== undefined && site !== 'same-origin' && site !== 'none';
    const changes = c.req.method !== 'GET' || isBotSide(c.req.path);
    const foreignName = !allowRemote && !isLoopback(hostName(host));
    if (foreignOrigin || foreignName || (foreignSite && changes))
      return c.json(
        { error: 'Only the page of this rehearsal, at its own address, may do that.' },
        403,
      );
    return next();
  };
}
