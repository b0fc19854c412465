// @ts-check
/** A pen that draws as technical drawings do: two line widths, dimension lines of ISO 129-1 with filled arrowheads. Pure: it makes shapes. */

/**
 * An SVG element by name, its attributes, its text and what it holds.
 * @typedef {{tag: string, attributes: Record<string, string | number>, text?: string, children?: Shape[]}} Shape
 */

const ARROW = { long: 10, half: 2.6 }; // filled, about 30 degrees (ISO 129-1)

/** Width of a digit at the size of the lettering, px. */
const LETTER = 7.4;

export class Pen {
    /** @type {Shape[]} */
    shapes = [];

    /** @param {string} tag @param {string} kind class @param {Record<string, string | number>} attributes @param {string} [text] */
    draw(tag, kind, attributes, text) {
        this.shapes.push({ tag, attributes: { class: kind, ...attributes }, text });
    }

    /** @param {string} kind @param {number} x1 @param {number} y1 @param {number} x2 @param {number} y2 */
    line(kind, x1, y1, x2, y2) {
        this.draw('line', kind, { x1, y1, x2, y2 });
    }

    /** @param {string} kind @param {number} x @param {number} y @param {string} text @param {string} [anchor] */
    write(kind, x, y, text, anchor = 'middle') {
        this.draw('text', kind, { x, y, 'text-anchor': anchor }, text);
    }

    /** @param {string} kind @param {number} x @param {number} y @param {number} dx @param {number} dy unit vector the head points along */
    head(kind, x, y, dx, dy) {
        const [bx, by] = [x - dx * ARROW.long, y - dy * ARROW.long];
        const [wx, wy] = [-dy * ARROW.half, dx * ARROW.half];
        this.draw('path', kind, { d: `M${x} ${y}L${bx + wx} ${by + wy}L${bx - wx} ${by - wy}Z` });
    }

    /** A horizontal dimension; arrows outside when there is no room between. @param {number} a @param {number} b @param {number} y @param {string} text @param {string} kind */
    across(a, b, y, text, kind) {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const inside = to - from > 3 * ARROW.long;
        this.line('dimension', inside ? from : from - 18, y, inside ? to : to + 18, y);
        this.head('dimension head', from, y, inside ? -1 : 1, 0);
        this.head('dimension head', to, y, inside ? 1 : -1, 0);
        const fits = to - from > text.length * LETTER;
        this.write('dimension value ' + kind, fits ? (from + to) / 2 : to + 22, fits ? y - 5 : y + 4, text, fits ? 'middle' : 'start');
    }

    /** A vertical dimension, its value to be read from the right. @param {number} a @param {number} b @param {number} x @param {string} text @param {string} kind */
    upright(a, b, x, text, kind) {
        const [top, bottom] = [Math.min(a, b), Math.max(a, b)];
        const inside = bottom - top > 3 * ARROW.long;
        this.line('dimension', x, inside ? top : top - 18, x, inside ? bottom : bottom + 18);
        this.head('dimension head', x, top, 0, inside ? -1 : 1);
        this.head('dimension head', x, bottom, 0, inside ? 1 : -1);
        const middle = (top + bottom) / 2;
        this.draw('text', 'dimension value ' + kind, { x: x - 5, y: middle, 'text-anchor': 'middle', transform: `rotate(-90 ${x - 5} ${middle})` }, text);
    }

    /** A quartered disc: a centre of gravity. @param {string} kind @param {number} x @param {number} y @param {number} r */
    disc(kind, x, y, r) {
        this.draw('circle', 'centre ' + kind, { cx: x, cy: y, r, 'data-centre': kind });
        this.draw('path', 'centre-quarter ' + kind, {
            d: `M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${x + r} ${y}ZM${x} ${y}V${y + r}A${r} ${r} 0 0 1 ${x - r} ${y}Z`,
        });
    }

    /** What is drawn meanwhile stands in one group. @param {Record<string, string | number>} attributes @param {() => void} drawing */
    group(attributes, drawing) {
        const outside = this.shapes;
        this.shapes = [];
        drawing();
        outside.push({ tag: 'g', attributes, children: this.shapes });
        this.shapes = outside;
    }
}

/**
 * A place for a balloon that covers nothing, near its part.
 * @param {number} x
 * @param {number} y
 * @param {{x: number, y: number, r: number}[]} taken
 * @param {{left: number, right: number, top: number, bottom: number}} within
 */
export function freePlace(x, y, taken, within) {
    let best = { x: x + 20, y: y - 20 };
    let least = Infinity;
    for (const distance of [26, 40, 56]) {
        for (const angle of [-45, -90, -135, 0, 180, -70, -110, 45, 135]) {
            const place = {
                x: x + distance * Math.cos(angle * Math.PI / 180),
                y: y + distance * Math.sin(angle * Math.PI / 180),
            };
            const covered = taken.filter((other) => Math.hypot(other.x - place.x, other.y - place.y) < other.r + 11).length;
            const off = place.x < within.left || place.x > within.right || place.y < within.top || place.y > within.bottom ? 5 : 0;
            if (covered + off < least) {
                least = covered + off;
                best = place;
            }
            if (least === 0) {
                return best;
            }
        }
    }
    return best;
}
