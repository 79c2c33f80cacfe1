import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { architectureNow, DRAWINGS } from '../pictures/architecture.ts';
import { houseDrawing } from '../pictures/house-drawing.ts';
import { importsIn, readImports, roomsOf } from '../pictures/imports.ts';
import { roomsDrawing } from '../pictures/rooms-drawing.ts';

describe('the drawings of the engineer’s page', () => {
  it.each(Object.entries(architectureNow()))(
    '%s shows the imports as they are (npm run architecture draws it anew)',
    (name, svg) => {
      expect(readFileSync(join(DRAWINGS, name), 'utf8')).toBe(svg);
    },
  );

  it('are made from all of the code', () => {
    const imports = readImports();
    expect(imports.length).toBeGreaterThan(2000);
    expect(imports).toContainEqual({ from: 'bot/main.ts', to: 'bot/roots/start-bot.ts' });
  });

  it('have no place for an import that the house rules forbid', () => {
    expect(() => houseDrawing([{ from: 'drills', to: 'db' }])).toThrow('drills imports db');
  });

  it('have no place for a room that does not say what it is for', () => {
    expect(() => roomsDrawing([{ from: 'bot/attic', to: 'db' }])).toThrow('bot/attic is new');
  });

  it('show an import that points back as a ring', () => {
    const back = { from: 'db', to: 'jobs' };
    const forth = { from: 'jobs', to: 'db' };
    expect(roomsDrawing([forth]).match(/r="5"/g)).toBeNull();
    expect(roomsDrawing([back, forth]).match(/r="5"/g)).toHaveLength(1);
  });
});

describe('reading imports', () => {
  it('finds those of types, of several lines, passed on and lazy, and no package', () => {
    const text = [
      "import type { A } from './a.ts';",
      "import {\n  b,\n} from '../db/b.ts';",
      "export { c } from './c.ts';",
      "const d = import('./d.ts');",
      "import { z } from 'zod';",
      "const e = 'import { e } from nowhere';",
    ].join('\n');
    expect(importsIn('bot/main.ts', text).map(({ to }) => to)).toEqual([
      ...['bot/a.ts', 'db/b.ts', 'bot/c.ts', 'bot/d.ts'],
    ]);
    expect(importsIn('bot/main.ts', "import { a } from './roots/a.ts';")).toEqual([
      { from: 'bot/main.ts', to: 'bot/roots/a.ts' },
    ]);
  });

  it('names two rooms once, and none with itself', () => {
    const folder = (file: string) => file.split('/')[0] ?? null;
    const twice = { from: 'jobs/tick.ts', to: 'db/index.ts' };
    const self = { from: 'db/a.ts', to: 'db/b.ts' };
    expect(roomsOf([twice, twice, self], folder)).toEqual([{ from: 'jobs', to: 'db' }]);
  });
});
