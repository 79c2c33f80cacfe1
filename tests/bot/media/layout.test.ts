import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingOf } from '../../../bot/media/drawing.ts';
import {
  answerSheet,
  cardFrame,
  cardSheet,
  classMap,
  digestPicture,
  progressPicture,
  readyFrame,
  resultCard,
} from '../../../bot/media/index.ts';
import { text } from '../../../bot/media/svg.ts';
import { type Face, run } from './faces.ts';
import { layoutFaults } from './layout-faults.ts';
import { SAMPLES } from './samples.ts';
import { rects, textBoxes } from './text-boxes.ts';

describe('layoutFaults', () => {
  const paper = (body: string) => drawingOf(200, 100, body);
  const line = (x: number, content: string) => text({ x, y: 50, size: 20 }, content);

  it('finds two texts that touch, and text off its paper or over an edge', () => {
    const box = '<rect x="40" y="20" width="40" height="50" rx="0" fill="#ffffff"/>';
    const clock = '<circle cx="100" cy="50" r="30" fill="#ffffff"/>';
    expect(layoutFaults(paper(line(20, 'Wren') + line(50, 'Otter')))).toHaveLength(1);
    expect(layoutFaults(paper(line(180, 'Wren')))).toHaveLength(1);
    expect(layoutFaults(paper(box + line(60, 'Wren')))).toHaveLength(1);
    expect(layoutFaults(paper(clock + line(30, 'Wren')))).toHaveLength(1);
    expect(layoutFaults(paper(line(20, 'Wren') + line(120, 'Otter')))).toEqual([]);
  });
});

describe.each(Object.entries(SAMPLES))('the picture "%s"', (_, drawing) => {
  it('begins with paper over its whole area', () => {
    expect(rects(drawing)[0]).toEqual({ x: 0, y: 0, width: drawing.width, height: drawing.height });
  });

  it('lets no text leave its paper, touch another, or cross the edge of a box or a clock', () => {
    expect(layoutFaults(drawing)).toEqual([]);
  });

  it('sets no text smaller than 11 CSS px', () => {
    expect(Math.min(...textBoxes(drawing).map(({ size }) => size), 99)).toBeGreaterThanOrEqual(11);
  });
});

const words = fc.array(fc.string({ unit: 'grapheme', maxLength: 14 }), { maxLength: 7 });
const line = words.map((each) => each.join(' '));
const number = fc.integer({ min: 0, max: 1000 });
const sum = fc
  .tuple(number, fc.constantFrom('+', '−', '×'), number, number, fc.integer({ min: 0, max: 3 }))
  .map(([a, sign, b, c, gap]) =>
    [gap === 1 ? '?' : a, sign, gap === 2 ? '?' : b, '=', gap === 3 ? '?' : c].join(' '),
  );
const face: fc.Arbitrary<Face> = fc.oneof(
  fc.record({ kind: fc.constant('text' as const), text: fc.oneof(sum, line) }),
  fc.record({
    kind: fc.constant('clock' as const),
    hour: fc.integer({ min: 1, max: 12 }),
    minute: fc.integer({ min: 0, max: 59 }),
  }),
);
const item = fc.record({ face, answer: fc.oneof(number.map(String), line) });
const score = fc
  .tuple(fc.nat(500), fc.nat(500))
  .map(([a, b]) => ({ right: Math.min(a, b), asked: Math.max(a, b) }));

function sound<T>(
  given: fc.Arbitrary<T>,
  draw: (value: T) => Parameters<typeof layoutFaults>[0],
): void {
  fc.assert(
    fc.property(given, (value) => {
      expect(layoutFaults(draw(value))).toEqual([]);
    }),
    { numRuns: 60 },
  );
}

describe('whatever is written on it, a picture for the family keeps its texts apart', () => {
  it('a frame', () => {
    sound(fc.record({ face, title: line }), ({ face, title }) =>
      cardFrame({ face, title, position: 20, of: 20 }),
    );
  });

  it('a ready frame', () => {
    sound(line, (title) => readyFrame({ title, cards: 20, seconds: 15 }));
  });

  it('a card sheet', () => {
    sound(
      fc.record({ title: line, faces: fc.array(face, { minLength: 1, maxLength: 20 }) }),
      cardSheet,
    );
  });

  it('an answer sheet', () => {
    sound(
      fc.record({
        title: line,
        items: fc.array(item, { minLength: 1, maxLength: 20 }),
        miniClocks: fc.boolean(),
      }),
      answerSheet,
    );
  });

  it('a result card', () => {
    const part = fc.tuple(score, line, line).map(([s, label, note]) => ({ ...s, label, note }));
    sound(
      fc.record({
        title: line,
        lines: fc.array(part, { maxLength: 6 }),
        sayAgain: fc.array(item, { maxLength: 3 }),
        footer: line,
      }),
      resultCard,
    );
  });

  it('a child’s term', () => {
    const strand = fc.tuple(line, fc.array(score, { minLength: 5, maxLength: 5 }));
    sound(fc.tuple(fc.array(strand, { maxLength: 8 }), line, fc.nat(400)), (given) => {
      const [strands, title, evenings] = given;
      return progressPicture({
        title,
        evenings,
        weekLabels: strands[0]?.[1].map(() => title) ?? ['3 Nov'],
        strands: strands.map(([label, weeks]) => ({ label, weeks })),
        footer: title,
      });
    });
  });
});

describe('whatever is written on it, a picture for the teacher keeps its texts apart', () => {
  it('a class map', () => {
    const standing = fc.constantFrom('secure', 'growing', 'not_yet');
    const cell = fc.tuple(score, standing).map(([s, standing]) => ({ ...s, standing }) as const);
    sound(
      fc.tuple(line, fc.array(fc.tuple(line, cell), { minLength: 1, maxLength: 8 })),
      (given) => {
        const [title, strands] = given;
        return classMap({
          title,
          strandLabels: strands.map(([label]) => label),
          rows: run(1, 1, 12).map((row) => ({
            number: row,
            name: strands[row % strands.length]?.[0] ?? '',
            cells: strands.map(([, each]) => each),
          })),
          footer: title,
        });
      },
    );
  });

  it('a digest', () => {
    sound(fc.tuple(line, fc.array(fc.tuple(line, score), { maxLength: 8 })), ([title, strands]) =>
      digestPicture({
        title,
        subtitle: title,
        dayLabels: ['Mon', 'Tue'],
        strandLabels: strands.map(([label]) => label),
        rows: run(1, 1, 3).map((row) => ({
          number: row,
          name: title,
          days: ['practised', 'silent'],
          strands: strands.map(([, each]) => each),
        })),
        footer: title,
      }),
    );
  });
});
