/** What the service refuses, with all that is wrong and what would be right. */
export class Refusal extends Error {
  constructor(problem) {
    super(problem.detail ?? problem.title);
    this.problem = problem;
    this.status = problem.status;
  }
}

const pause = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));

async function ask(path, options, again = true) {
  const answer = await fetch(path, options);
  if (answer.status === 503 && again) {
    await pause(1000);
    return ask(path, options, false);
  }
  const json = await answer.json();
  if (!answer.ok) throw new Refusal({ status: answer.status, ...json });
  return json;
}

/** The address of a question; parameters that are blank are left out. */
export function address(path, parameters = {}) {
  const query = Object.entries(parameters)
    .filter(([, value]) => value !== undefined && value !== "")
    .map(([key, value]) => `${key}=${encodeURIComponent(value).replaceAll("%2C", ",").replaceAll("%3A", ":")}`)
    .join("&");
  return query ? `${path}?${query}` : path;
}

export const get = (path, parameters, signal) => ask(address(path, parameters), { signal });

export const post = (path, body, signal) =>
  ask(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body), signal });

/** Lets only the newest of several questions answer: asking again drops the one before. */
export function newest() {
  let running = null;
  return async (question) => {
    running?.abort();
    const mine = new AbortController();
    running = mine;
    try {
      const answer = await question(mine.signal);
      return mine === running ? answer : undefined;
    } catch (fault) {
      if (mine.signal.aborted) return undefined;
      throw fault;
    }
  };
}
