/** A problem of the service, with all errors and allowed values. */
export class Refusal extends Error {
  constructor(problem) {
    super(problem.detail ?? problem.title);
    this.problem = problem;
    this.status = problem.status;
  }
}

const pause = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));

async function answered(path, options, again = true) {
  const answer = await fetch(path, options);
  if (answer.status === 503 && again) {
    await pause(1000);
    return answered(path, options, false);
  }
  if (!answer.ok) throw new Refusal({ status: answer.status, ...(await answer.json()) });
  return answer;
}

const ask = async (path, options) => (await answered(path, options)).json();

/** The address of a request; blank parameters are left out. */
export function address(path, parameters = {}) {
  const query = Object.entries(parameters)
    .filter(([, value]) => value !== undefined && value !== "")
    .map(([key, value]) => `${key}=${encodeURIComponent(value).replaceAll("%2C", ",").replaceAll("%3A", ":")}`)
    .join("&");
  return query ? `${path}?${query}` : path;
}

export const get = (path, parameters, signal) => ask(address(path, parameters), { signal });

const sending = (body) => ({ method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });

export const post = (path, body, signal) => ask(path, { ...sending(body), signal });

/** The answer to records as a file, in whatever format the path asks for. */
export const fetched = (path, body) => answered(path, sending(body)).then((answer) => answer.blob());

/** Lets only the latest of several requests complete: a new one aborts the previous one. */
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
