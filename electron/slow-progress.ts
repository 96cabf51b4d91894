/** Tells what a long run is doing, and nothing of a short one. */
export type Progress = {
  /** What is being done from now on. */
  readonly at: (step: string) => void;
  /** The run is over: nothing more is said. */
  readonly end: () => void;
};

/**
 * Says each step of a run that takes longer than it takes to wonder: the step under way once that time is up, and every
 * step after it as it begins.
 * @param quietMs - how long nothing is said. [ms]
 * @param say - where a line goes.
 */
export function slowProgress(quietMs: number, say: (line: string) => void): Progress {
  let step: string | undefined;
  let slow = false;
  const timer = setTimeout(() => {
    slow = true;
    if (step !== undefined) say(step);
  }, quietMs);
  timer.unref();
  return {
    at: (next) => {
      step = next;
      if (slow) say(next);
    },
    end: () => clearTimeout(timer),
  };
}
