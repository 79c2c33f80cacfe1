import type { Yuv420 } from '../yuv.ts';

/** Pictures as H.264: the two parameter sets and, for each picture, one slice that stands for itself (an IDR picture). */
export interface CodedStills {
  /** Sequence parameter set, a NAL unit without start code. */
  readonly sps: Uint8Array;
  /** Picture parameter set, a NAL unit without start code. */
  readonly pps: Uint8Array;
  /** One NAL unit of type 5 for each picture, in order, without start codes. */
  readonly pictures: readonly Uint8Array[];
}

/** Encodes pictures of one size, each independent of the others. `qp` is the quantiser, 10 (fine) to 51 (coarse). */
export type StillEncoder = (
  pictures: readonly Yuv420[],
  size: number,
  qp: number,
) => Promise<CodedStills>;
