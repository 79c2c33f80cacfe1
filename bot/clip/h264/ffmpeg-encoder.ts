import { spawn } from 'node:child_process';
import { buffer } from 'node:stream/consumers';
import type { Yuv420 } from '../yuv.ts';
import { NAL, nalType, splitByStartCode } from './nal.ts';
import type { StillEncoder } from './stills.ts';

/** Fixed quantiser, every picture for itself, one thread and no note of versions: the same program gives the same bytes. */
const OPTIONS = 'aq-mode=0:psy=0:ipratio=1:keyint=1:scenecut=0:bframes=0:sliced-threads=0';

/**
 * An encoder that runs an installed `ffmpeg` program, for whoever prefers it: somewhat fewer bytes. It is never needed, and
 * its bytes differ from release to release. The program comes under its own licence and is called as a separate process.
 *
 * @throws {RangeError} when the program fails or gives no usable stream.
 */
export function ffmpegEncoder(program: string): StillEncoder {
  return async (pictures, size, qp) => {
    const units = splitByStartCode(await run(program, flags(size, qp), pictures));
    const sps = units.find((unit) => nalType(unit) === NAL.sps);
    const pps = units.find((unit) => nalType(unit) === NAL.pps);
    const coded = units.filter((unit) => nalType(unit) === NAL.idr);
    if (!sps || !pps || coded.length !== pictures.length) {
      throw new RangeError(`Got ${coded.length} pictures for ${pictures.length} from ffmpeg.`);
    }
    return { sps, pps, pictures: coded };
  };
}

function flags(size: number, qp: number): string[] {
  const input = `-f rawvideo -pix_fmt yuv420p -s ${size}x${size} -r 1 -i -`;
  const output = `-c:v libx264 -profile:v baseline -preset veryslow -refs 1 -qp ${qp} -threads 1 -x264-params ${OPTIONS}`;
  return `-nostdin -v error ${input} ${output} -bitexact -f h264 -`.split(' ');
}

async function run(
  program: string,
  args: readonly string[],
  pictures: readonly Yuv420[],
): Promise<Uint8Array> {
  const child = spawn(program, args, { stdio: ['pipe', 'pipe', 'ignore'] });
  const ended = new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  // A program that stops reading early closes the pipe; its exit code tells.
  child.stdin.on('error', () => undefined);
  child.stdin.end(Buffer.concat(pictures));
  const [stream, code] = await Promise.all([buffer(child.stdout), ended]);
  if (code !== 0) throw new RangeError(`ffmpeg ended with code ${code}.`);
  return stream;
}
