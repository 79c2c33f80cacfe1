import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { z } from 'zod';

const RULES_FILE = z.object({
  rbnf: z.object({
    rbnf: z.object({
      SpelloutRules: z.record(
        z.string(),
        z.union([z.string(), z.array(z.tuple([z.string(), z.string()]))]),
      ),
    }),
  }),
});

interface Rule {
  readonly base: number;
  readonly divisor: number;
  readonly text: string;
}

/**
 * A speller of whole numbers after a published rule set of the Unicode Consortium (rule-based number format, UTS #35 part 3):
 * the last rule whose base is not above n is taken; ←← spells n over the rule's divisor, →→ the rest, =…= the number by
 * another set; […] is left out when there is no rest. Soft hyphens are stripped. Enough for 0 to 1000.
 */
export function publishedSpeller(locale: string, ruleSet: string): (n: number) => string {
  const path = createRequire(import.meta.url).resolve(`cldr-rbnf/rbnf/${locale}.json`);
  const sets = RULES_FILE.parse(JSON.parse(readFileSync(path, 'utf8'))).rbnf.rbnf.SpelloutRules;
  return (n) => spell(sets, ruleSet, n).replaceAll('\u00ad', '');
}

type RuleSets = z.infer<typeof RULES_FILE>['rbnf']['rbnf']['SpelloutRules'];

function spell(sets: RuleSets, name: string, n: number): string {
  const rule = rulesOf(sets, name).findLast(({ base }) => base <= n);
  if (rule === undefined) throw new Error(`no rule of ${name} for ${n}`);
  const rest = n % rule.divisor;
  return rule.text
    .replace(/\[([^\]]*)\]/g, rest === 0 ? '' : '$1')
    .replace(/←([^←]*)←/g, (_, set: string) =>
      spell(sets, set || name, Math.floor(n / rule.divisor)),
    )
    .replace(/→([^→]*)→/g, (_, set: string) => spell(sets, set || name, rest))
    .replace(/=([^=]*)=/g, (_, set: string) => spell(sets, set, n));
}

function rulesOf(sets: RuleSets, name: string): readonly Rule[] {
  const rules = sets[name];
  if (rules === undefined || typeof rules === 'string') throw new Error(`no rule set ${name}`);
  return rules.flatMap(([head, text]) => {
    const match = /^(\d+)(?:\/(\d+))?$/.exec(head);
    if (match === null) return [];
    const [base, radix] = [Number(match[1]), Number(match[2] ?? '10')];
    let divisor = 1;
    while (divisor * radix <= base) divisor *= radix;
    return [{ base, divisor, text: text.replace(/;$/, '').replace(/^'/, '') }];
  });
}
