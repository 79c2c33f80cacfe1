// Asked by the container's health check: ends with 0 when the bot in this container is ready. Plain JavaScript, since it starts
// every half minute and should cost nothing.
const { HEALTH_PORT } = process.env;
const answer = await fetch(`http://127.0.0.1:${HEALTH_PORT}/ready`).catch(() => null);
process.exit(answer?.ok ? 0 : 1);
