/** How many hostile updates a run sends: 1,000 with all other tests, as many as `FUZZ` says for a long run. */
// biome-ignore lint/style/noProcessEnv: the test runner passes nothing else from the command line.
export const FUZZ_RUNS = Number(process.env.FUZZ ?? 1_000);
