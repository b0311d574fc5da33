/** Runs the newest of many requests after a pause; an older one still under way is given up. */
export function later(pauseMs) {
  let timer;
  let running;
  return action => {
    clearTimeout(timer);
    timer = setTimeout(async () => {
      running?.abort();
      running = new AbortController();
      try {
        await action(running.signal);
      } catch (failure) {
        if (failure.name !== "AbortError") console.warn("no answer from the server", failure.message);
      }
    }, pauseMs);
  };
}
