import type { MiddlewareHandler } from 'hono';

/**
 * Lets a web page of another address neither read nor change anything here.
 * Browsers send `Origin` or `Sec-Fetch-Site`; programs send neither and pass.
 */
export const sameOriginOnly: MiddlewareHandler = async (c, next) => {
  const origin = c.req.header('origin');
  const site = c.req.header('sec-fetch-site');
  const foreignOrigin = origin !== undefined && origin !== `http://${c.req.header('host') ?? ''}`;
  const foreignSite = site !== undefined && site !== 'same-origin' && site !== 'none';
  if (foreignOrigin || (foreignSite && c.req.method !== 'GET')) {
    return c.json({ error: 'Only the page of this rehearsal may do that.' }, 403);
  }
  return next();
};
