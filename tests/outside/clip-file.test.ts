import { createFile, type ISOFile, type Movie, MP4BoxBuffer } from 'mp4box';
import { afterAll, describe, expect, it } from 'vitest';
import { type ClipInput, createClipMaker } from '../../bot/clip/index.ts';
import { partClip, partFrames } from '../bot/clip/support/frames.ts';

/**
 * The files are read by MP4Box.js (npm package mp4box, BSD-3-Clause), a reader of ISO/IEC 14496-12 files by the GPAC project that
 * shares no code with ours. What a file must be comes from the standards: a list of sync samples (14496-12, 8.6.2), movie
 * box before the media for playing while loading (8.1.1 allows both), Constrained Baseline as `42C0` and AAC-LC as `40.2` in
 * the codecs parameter (RFC 6381).
 */
interface Read {
  readonly file: ISOFile;
  readonly info: Movie;
  readonly order: readonly string[];
}

function read(clip: Uint8Array): Read {
  const file = createFile();
  const found: Movie[] = [];
  const errors: string[] = [];
  file.onReady = (info) => found.push(info);
  file.onError = (_, message) => errors.push(message);
  file.appendBuffer(MP4BoxBuffer.fromArrayBuffer(Uint8Array.from(clip).buffer, 0), true);
  file.flush();
  expect(errors).toEqual([]);
  const [info] = found;
  if (!info) throw new Error('the reader found no movie');
  return { file, info, order: file.boxes.map(({ type }) => type ?? '') };
}

const maker = createClipMaker();
afterAll(() => maker.close());
const uneven: ClipInput = {
  frames: partFrames('doubles', 4).map((frame, i) => ({ ...frame, seconds: 2 + i / 2 })),
  sound: 'none-but-silent',
};

describe.each<[string, ClipInput, number[]]>([
  ['fifteen cards of three seconds with a tick', partClip('mixed', 15), Array(17).fill(3)],
  ['cards of unequal seconds in silence', uneven, [2, 2.5, 3, 3.5, 4, 4.5]],
  ['a single card', { frames: uneven.frames.slice(0, 1), sound: 'tick' }, [2]],
])('%s', async (_, input, seconds) => {
  const clip = await maker.make(input);
  const { file, info, order } = read(clip);
  const total = seconds.reduce((sum, each) => sum + each, 0);
  const [video] = info.videoTracks;
  const [audio] = info.audioTracks;

  it('is one movie with one picture track and one sound track, type and index before the media', () => {
    expect(order).toEqual(['ftyp', 'moov', 'mdat']);
    expect(info.isProgressive).toBe(true);
    expect([info.tracks.length, info.videoTracks.length, info.audioTracks.length]).toEqual([
      2, 1, 1,
    ]);
  });

  it('is Constrained Baseline at level 2.2 and AAC-LC, 480 pixels square, 16 kHz, one channel', () => {
    expect(video?.codec).toBe('avc1.42c016');
    expect(audio?.codec).toBe('mp4a.40.2');
    expect(video?.video).toEqual({ width: 480, height: 480 });
    expect([video?.track_width, video?.track_height]).toEqual([480, 480]);
    expect(audio?.audio).toMatchObject({ sample_rate: 16_000, channel_count: 1 });
  });

  it('lasts exactly as long as its cards, as movie, as tracks and as edits', () => {
    expect(info.duration / info.timescale).toBe(total);
    for (const track of info.tracks) {
      expect(track.movie_duration / track.movie_timescale).toBe(total);
      expect(track.edits).toMatchObject([{ media_time: 0, segment_duration: info.duration }]);
    }
    expect((video?.samples_duration ?? 0) / (video?.timescale ?? 1)).toBe(total);
  });

  it('has sound to its very end, and less than a packet more', () => {
    const sound = (audio?.samples_duration ?? 0) / 16_000;
    expect(sound).toBeGreaterThanOrEqual(total);
    expect(sound).toBeLessThan(total + 1024 / 16_000);
  });

  it('has one sync sample a card, where the card begins, and two pictures a second', () => {
    const samples = file.getTrackSamplesInfo(video?.id ?? 0);
    expect(samples.length).toBe(2 * total);
    const begins = samples
      .filter(({ is_sync }) => is_sync)
      .map(({ cts, timescale }) => cts / timescale);
    expect(begins).toEqual(
      seconds.map((_each, i) => seconds.slice(0, i).reduce((a, b) => a + b, 0)),
    );
    expect(samples.every(({ cts, dts }) => cts === dts)).toBe(true);
  });

  it('places every sample inside the media, each right after another, none twice', () => {
    const all = info.tracks.flatMap(({ id }) => file.getTrackSamplesInfo(id));
    const sorted = all.toSorted((a, b) => a.offset - b.offset);
    let at = sorted[0]?.offset ?? 0;
    for (const { offset, size } of sorted) {
      expect(offset).toBe(at);
      at += size;
    }
    expect(at).toBe(clip.length);
  });

  it('carries no time of making', () => {
    const epoch = Date.UTC(1904, 0, 1);
    expect(info.created.getTime()).toBe(epoch);
    expect(info.tracks.map(({ created }) => created.getTime())).toEqual([epoch, epoch]);
  });

  it('says BT.709 in limited range, in words of the container', () => {
    const colour = file.getBoxes('colr', true)[0];
    expect(colour).toMatchObject({
      colour_type: 'nclx',
      colour_primaries: 1,
      transfer_characteristics: 1,
      matrix_coefficients: 1,
      full_range_flag: 0,
    });
  });
});
