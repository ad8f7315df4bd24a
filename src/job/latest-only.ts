/**
 * Runs `work` on one input at a time. While it runs only the newest input waits: those in between are skipped, and
 * a finished run is reported even where a newer input waits, so that a slow machine still shows progress.
 */
export function latestOnly<In, Out>(
  work: (input: In) => Promise<Out>,
  report: { done(input: In, output: Out): void; failed(input: In, error: unknown): void },
): (input: In) => void {
  let waiting: { input: In } | null = null;
  let running = false;

  const run = async () => {
    running = true;
    while (waiting) {
      const { input } = waiting;
      waiting = null;
      try {
        const output = await work(input);
        report.done(input, output);
      } catch (error) {
        report.failed(input, error);
      }
    }
    running = false;
  };
  return (input) => {
    waiting = { input };
    if (!running) void run();
  };
}
