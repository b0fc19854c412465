// @ts-check
/** Everything the page asks of the service: the contract's endpoints and no other. */

/** @typedef {{status: number, body: any, etag: string | null, location: string | null}} Reply status 0: the service was not reached */
/** @typedef {'metric' | 'us'} Units */

/**
 * @param {string} path
 * @param {RequestInit} [request]
 * @returns {Promise<Reply>}
 */
async function call(path, request = {}) {
    try {
        const response = await fetch(path, request);
        const text = await response.text();
        return {
            status: response.status,
            body: text === '' ? null : JSON.parse(text),
            etag: response.headers.get('ETag'),
            location: response.headers.get('Location'),
        };
    } catch {
        return { status: 0, body: null, etag: null, location: null };
    }
}

/** @param {string} method @param {unknown} body @param {Record<string, string>} [headers] @returns {RequestInit} */
function json(method, body, headers = {}) {
    return { method, body: JSON.stringify(body), headers: { 'Content-Type': 'application/json', ...headers } };
}

/**
 * One question over a range of one value: lines of progress, then the answer.
 * @param {unknown} request
 * @param {Units} units
 * @param {(share: number) => void} progress 0 to 1
 * @param {AbortSignal} signal
 * @returns {Promise<Reply>}
 */
async function sweep(request, units, progress, signal) {
    const nothing = { etag: null, location: null };
    try {
        const response = await fetch('/v1/sweeps?units=' + units, { ...json('POST', request, { Accept: 'application/x-ndjson, application/problem+json' }), signal });
        if (response.body === null || !response.headers.get('Content-Type')?.startsWith('application/x-ndjson')) {
            return { status: response.status, body: await response.json(), ...nothing };
        }
        const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
        let rest = '';
        for (let part = await reader.read(); !part.done; part = await reader.read()) {
            const lines = (rest + part.value).split('\n');
            rest = lines.pop() ?? '';
            for (const line of lines.filter((one) => one !== '').map((one) => JSON.parse(one))) {
                if (line.answer) {
                    return { status: 200, body: line.answer, ...nothing };
                }
                if (line.problem) {
                    return { status: 422, body: line.problem, ...nothing };
                }
                progress(line.progress.done / line.progress.of);
            }
        }
    } catch {
        // told below: the service was not reached, or left in the middle
    }
    return { status: 0, body: null, ...nothing };
}

/** @param {string} id */
const setupPath = (id) => '/v1/setups/' + encodeURIComponent(id);

export const service = {
    /** What the form needs of the contract. */
    form: () => call('/v3/api-docs/form'),
    contract: () => call('/v3/api-docs'),
    demoSetups: () => call('/v1/demo-setups'),

    /** One question, with its working. @param {string} path of the question @param {unknown} setup @param {Units} units */
    ask: (path, setup, units) => call(path + '?units=' + units, json('POST', setup)),

    /** One question, while something is dragged: without its working. @param {string} path @param {unknown} setup @param {Units} units @param {AbortSignal} signal */
    askAgain: (path, setup, units, signal) => call(path + '?working=false&units=' + units, { ...json('POST', setup), signal }),

    /** Every question at once. @param {unknown} setup @param {Units} units */
    assess: (setup, units) => call('/v1/assessments?working=false&units=' + units, json('POST', setup)),

    sweep,

    /** @param {unknown} before a setup or the id of a saved one @param {unknown} after @param {Units} units */
    compare: (before, after, units) => call('/v1/comparisons?units=' + units, json('POST', { before, after })),

    /** @param {string} [next] cursor that the page before gave */
    setups: (next) => call(next === undefined ? '/v1/setups' : '/v1/setups?cursor=' + encodeURIComponent(next)),

    /** @param {string} id */
    setup: (id) => call(setupPath(id)),

    /** Where a saved setup is a sheet for the shop. @param {string} id */
    buildSheet: (id) => setupPath(id) + '/build-sheet',

    /** @param {unknown} setup */
    create: (setup) => call('/v1/setups', json('POST', setup)),

    /** @param {string} id @param {unknown} setup @param {string} etag of the revision that was opened */
    replace: (id, setup, etag) => call(setupPath(id), json('PUT', setup, { 'If-Match': etag })),

    /** @param {string} id @param {string} etag */
    remove: (id, etag) => call(setupPath(id), { method: 'DELETE', headers: { 'If-Match': etag } }),
};
