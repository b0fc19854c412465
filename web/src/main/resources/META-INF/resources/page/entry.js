// @ts-check
/** Reads what people type into a number field. Pure: text in, number or fault out. */

/**
 * @typedef {{number: number, echo?: string}} Read `echo` when the text is not plainly the number: it is shown beside the field
 * @typedef {{fault: string}} Unread
 */

const PLAIN = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,3})?$/i;

/**
 * A number with decimal point or decimal comma; for a plain number (no unit beside it) also per cent, and for a reduction two tooth
 * counts or `12.3:1`, the larger over the smaller, since a reduction turns the motor faster than the wheel.
 * @param {string} text as typed
 * @param {{unitless?: boolean, reduction?: boolean}} [kind]
 * @returns {Read | Unread}
 */
export function readNumber(text, kind = {}) {
    const typed = text.replace(/[\s  ]/g, '').replace(/[−–]/g, '-');
    if (PLAIN.test(typed)) {
        const number = Number(typed.replace(',', '.'));
        return typed.includes(',') ? { number, echo: 'read as ' + number } : { number };
    }
    const percent = /^(.+)%$/.exec(typed);
    if (kind.unitless && percent && PLAIN.test(percent[1])) {
        const number = Number(percent[1].replace(',', '.')) / 100;
        return { number, echo: 'read as ' + Number(number.toPrecision(12)) };
    }
    const teeth = /^([^:]+):([^:]+)$/.exec(typed);
    if (kind.reduction && teeth && PLAIN.test(teeth[1]) && PLAIN.test(teeth[2])) {
        const [one, other] = [teeth[1], teeth[2]].map((part) => Number(part.replace(',', '.')));
        if (one > 0 && other > 0) {
            const number = Math.max(one, other) / Math.min(one, other);
            return { number, echo: 'read as ' + Number(number.toPrecision(5)) + ' turns of the motor for one of the wheel' };
        }
    }
    return { fault: '“' + text.trim() + '” is not read as a number' };
}
