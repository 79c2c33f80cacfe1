import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMultipart } from '../../rehearsal/bot-api/multipart.ts';

function body(...lines: string[]): Uint8Array {
  return new TextEncoder().encode(lines.join('\r\n'));
}

function named(part: { name: string; fileName?: string } | undefined): unknown {
  return [part?.name, part?.fileName];
}

describe('parseMultipart', () => {
  it('reads headers without spaces and a bare file name with spaces', () => {
    const parts = parseMultipart(
      body(
        '--b',
        'content-disposition:form-data;name="doc";filename=week one.csv',
        'content-type:text/csv',
        '',
        'a,b',
        '--b--',
        '',
      ),
      'multipart/form-data; boundary=b',
    );
    expect(parts.map(named)).toEqual([['doc', 'week one.csv']]);
    expect(new TextDecoder().decode(parts[0]?.bytes)).toBe('a,b');
  });

  it('reads quoted names, upper case headers and a quoted boundary', () => {
    const parts = parseMultipart(
      body(
        '--b',
        'Content-Disposition: form-data; name="doc"; filename="a \\"b\\".csv"',
        '',
        'x',
        '--b--',
        '',
      ),
      'multipart/form-data; boundary="b"',
    );
    expect(parts.map(named)).toEqual([['doc', 'a "b".csv']]);
  });

  it('ends a bare file name at a semicolon', () => {
    const parts = parseMultipart(
      body(
        '--b',
        'content-disposition:form-data;name="doc";filename=a;b.csv',
        '',
        'x',
        '--b--',
        '',
      ),
      'multipart/form-data; boundary=b',
    );
    expect(parts[0]?.fileName).toBe('a');
  });
});

it('decodes a bare file name, and leaves a quoted one and a lone percent sign alone', () => {
  const nameOf = (written: string): string | undefined =>
    parseMultipart(
      body(
        '--b',
        `content-disposition:form-data;name="doc";filename=${written}`,
        '',
        'x',
        '--b--',
        '',
      ),
      'multipart/form-data; boundary=b',
    )[0]?.fileName;
  expect(['a%20b.csv', '"a%20b.csv"', '100%.csv'].map(nameOf)).toEqual([
    'a b.csv',
    'a%20b.csv',
    '100%.csv',
  ]);
});

describe('parseMultipart with any body', () => {
  it('keeps any bytes as they are', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        const full = Buffer.concat([
          body('--b0undary', 'content-disposition:form-data;name="f";filename=f.bin', '', ''),
          bytes,
          body('', '--b0undary--', ''),
        ]);
        fc.pre(!Buffer.from(bytes).includes('--b0undary'));
        expect(parseMultipart(full, 'multipart/form-data; boundary=b0undary')[0]?.bytes).toEqual(
          bytes,
        );
      }),
    );
  });

  it('never throws on damaged bodies', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(
          Array.isArray(parseMultipart(body(`--b${text}`), 'multipart/form-data; boundary=b')),
        ).toBe(true);
      }),
    );
  });

  it('refuses a content type without a boundary', () => {
    expect(() => parseMultipart(body('x'), 'multipart/form-data')).toThrow(
      'Bad Request: boundary not found',
    );
  });
});
