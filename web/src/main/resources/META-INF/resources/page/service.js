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
        const response = await fetch(path, { ...request, headers: { Accept: 'application/json', ...request.headers } });
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

/** @param {string} id */
const setupPath = (id) => '/v1/setups/' + encodeURIComponent(id);

export const service = {
    contract: () => call('/v3/api-docs'),
    demoSetups: () => call('/v1/demo-setups'),

    /** One question, with its working. @param {string} path of the question @param {unknown} setup @param {Units} units */
    ask: (path, setup, units) => call(path + '?units=' + units, json('POST', setup)),

    /** One question, while something is dragged: without its working. @param {string} path @param {unknown} setup @param {Units} units @param {AbortSignal} signal */
    askAgain: (path, setup, units, signal) => call(path + '?working=false&units=' + units, { ...json('POST', setup), signal }),

    /** Every question at once. @param {unknown} setup @param {Units} units */
    assess: (setup, units) => call('/v1/assessments?working=false&units=' + units, json('POST', setup)),

    /** @param {unknown} before a setup or the id of a saved one @param {unknown} after @param {Units} units */
    compare: (before, after, units) => call('/v1/comparisons?units=' + units, json('POST', { before, after })),

    /** @param {string} [next] cursor that the page before gave */
    setups: (next) => call(next === undefined ? '/v1/setups' : '/v1/setups?cursor=' + encodeURIComponent(next)),

    /** @param {string} id */
    setup: (id) => call(setupPath(id)),

    /** @param {unknown} setup */
    create: (setup) => call('/v1/setups', json('POST', setup)),

    /** @param {string} id @param {unknown} setup @param {string} etag of the revision that was opened */
    replace: (id, setup, etag) => call(setupPath(id), json('PUT', setup, { 'If-Match': etag })),

    /** @param {string} id @param {string} etag */
    remove: (id, etag) => call(setupPath(id), { method: 'DELETE', headers: { 'If-Match': etag } }),
};
