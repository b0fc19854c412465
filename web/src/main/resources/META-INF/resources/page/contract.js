// @ts-check
/** Reads the published contract (OpenAPI 3.1) into what the page needs: the fields of a setup and the questions that can be asked. */

/**
 * A field of the form.
 * @typedef {object} Field
 * @property {string} name name in the JSON
 * @property {'group'|'list'|'quantity'|'money'|'number'|'text'|'choice'|'flag'} kind
 * @property {string} description
 * @property {Field[]} [fields] of a group
 * @property {Field} [item] of a list
 * @property {string[]} [units] of a quantity
 * @property {boolean} [plain] a quantity that may also be sent as a plain number
 * @property {string[]} [choices]
 * @property {number} [least] of a plain number
 * @property {number} [most] of a plain number
 * @property {boolean} [long] a text of several lines
 */

/**
 * A question of the registry.
 * @typedef {object} Question
 * @property {string} name `centre-of-gravity`
 * @property {string} path
 * @property {string} summary
 * @property {string[]} leads leading results, pointers into the result
 * @property {Schema} result schema of the result; empty in what the form alone needs
 */

/** @typedef {Record<string, any>} Schema */

/**
 * @typedef {object} Contract
 * @property {Field[]} fields the sections of a setup
 * @property {Question[]} questions
 * @property {boolean} buildSheets whether a saved setup can be had as a sheet for the shop
 * @property {boolean} sweeps whether one question can be asked over a range
 * @property {(schema: Schema) => Schema} resolve follows a `$ref`; what stands beside it holds
 */

/** @param {Schema} document @returns {Contract} */
export function readContract(document) {
    /** @type {(schema: Schema) => Schema} */
    const resolve = (schema) => {
        if (!schema?.$ref) {
            return schema ?? {};
        }
        const { $ref, ...beside } = schema;
        const target = document.components.schemas[$ref.slice($ref.lastIndexOf('/') + 1)];
        return { ...resolve(target), ...beside };
    };
    const setup = resolve({ $ref: '#/components/schemas/Setup' });
    return { fields: properties(setup, resolve), questions: questions(document, resolve), buildSheets: '/v1/setups/{id}/build-sheet' in document.paths, sweeps: '/v1/sweeps' in document.paths, resolve };
}

/**
 * Properties in the order of the record: the document sorts its keys, `x-order` keeps what people read in.
 * @param {Schema} schema
 * @param {(schema: Schema) => Schema} resolve
 * @returns {Field[]}
 */
function properties(schema, resolve) {
    const all = Object.keys(schema.properties ?? {});
    const order = (schema['x-order'] ?? []).filter((/** @type {string} */ name) => all.includes(name));
    const names = [...order, ...all.filter((name) => !order.includes(name))];
    return names.map((name) => field(name, schema.properties[name], resolve));
}

/**
 * @param {string} name
 * @param {Schema} raw
 * @param {(schema: Schema) => Schema} resolve
 * @returns {Field}
 */
function field(name, raw, resolve) {
    const schema = resolve(raw);
    const alternatives = (schema.oneOf ?? schema.anyOf ?? []).map(resolve);
    const counted = [schema, ...alternatives].find((/** @type {Schema} */ one) => one.type === 'number' || one.type === 'integer');
    const described = { name, description: schema.description ?? '', least: (counted ?? schema).minimum, most: (counted ?? schema).maximum };
    const quantity = [schema, ...alternatives].find(isQuantity);
    if (quantity) {
        const units = resolve(quantity.properties.unit).enum;
        return { ...described, kind: 'quantity', units, plain: Boolean(counted) };
    }
    if (schema.properties?.amount && schema.properties?.currency) {
        return { ...described, kind: 'money' };
    }
    if (schema.type === 'array') {
        return { ...described, kind: 'list', item: field(name, schema.items, resolve) };
    }
    if (schema.properties) {
        return { ...described, kind: 'group', fields: properties(schema, resolve) };
    }
    if (schema.enum) {
        return { ...described, kind: 'choice', choices: schema.enum };
    }
    if (schema.type === 'boolean') {
        return { ...described, kind: 'flag' };
    }
    if (counted) {
        return { ...described, kind: 'number' };
    }
    return { ...described, kind: 'text', long: schema.maxLength > 1000 };
}

/** @param {Schema} schema */
function isQuantity(schema) {
    return Boolean(schema.properties?.value && schema.properties?.unit && Object.keys(schema.properties).length === 2);
}

/**
 * A question is a POST that takes a setup and answers with a `result`; saving a setup is none.
 * @param {Schema} document
 * @param {(schema: Schema) => Schema} resolve
 * @returns {Question[]}
 */
function questions(document, resolve) {
    /** @type {Question[]} */
    const found = [];
    for (const [path, operations] of Object.entries(document.paths ?? {})) {
        const operation = operations.post;
        const name = /^\/v1\/([a-z-]+)$/.exec(path)?.[1];
        const body = operation?.requestBody?.content?.['application/json']?.schema?.$ref ?? '';
        const reply = operation?.responses?.['200']?.content?.['application/json']?.schema;
        const result = reply && resolve(reply).properties?.result;
        if (name && body.endsWith('/Setup') && result) {
            found.push({ name, path, summary: operation.summary ?? '', leads: operation['x-leads'] ?? [], result: resolve(result) });
        }
    }
    return found;
}
