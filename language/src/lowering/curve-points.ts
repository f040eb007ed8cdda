// The points and pieces of a curve. Knows how they are written: nothing of where they lie.
import type { CurvePoint, Expression as DesignExpression, Property } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerExpression, lowerPlaces } from './expressions.js';
import type { FileLowering } from './file-lowering.js';

/** `through 17in at 14in` */
export function isThrough(node: Ast.Property): boolean {
    return node.value?.$type === 'Reference' && node.value.target?.$refText === 'through' && node.extra !== undefined;
}

/**
 * `through 17in at 14in, 13in at 40in`: depths, each at its place. For the grammar `at` begins a list of places, so the depth of each
 * point but the first stands there as the last place of the one before.
 */
export function lowerPoints(file: FileLowering, node: Ast.Property): DesignExpression {
    const span = file.span(node);
    const points: CurvePoint[] = [];
    let depth: DesignExpression | undefined = lowerExpression(file, node.extra, span);
    for (const clause of node.clauses ?? []) {
        if (clause.$type !== 'AtClause' || !depth) {
            break;
        }
        const [place, next, ...more] = lowerPlaces(file, clause.places, span);
        if (place) {
            points.push({ depth, at: place, span: file.between(depth.span.start, place.span.end) });
        }
        const [stray] = more;
        if (stray) {
            return reportWithoutPlace(file, next?.distance ?? depth);
        }
        depth = next?.distance;
    }
    return depth ? reportWithoutPlace(file, depth) : { is: 'points', points, span };
}

function reportWithoutPlace(file: FileLowering, depth: DesignExpression): DesignExpression {
    if (depth.is !== 'broken') {
        const text = file.text.slice(depth.span.start, depth.span.end);
        file.report('PRP-002', depth.span, {
            message: `nothing says where along the curve it is \`${text}\` deep`,
            hint: `give it a place: \`${text} at ...\``,
            found: `\`${text}\` alone`,
            needed: 'a depth at a place',
        });
    }
    return { is: 'broken', span: depth.span };
}

const shapes: readonly string[] = ['arc', 'bow', 'fair', 'radius'];

/** Each piece, from one `to` to the next, has one shape at most. */
export function checkPieces(file: FileLowering, properties: readonly Property[]): void {
    const shaped = new Map<number, Property>();
    let piece = 0;
    for (const property of properties) {
        if (property.name === 'to') {
            piece++;
        }
        if (!shapes.includes(property.name)) {
            continue;
        }
        const before = shaped.get(Math.max(piece, 1));
        if (before) {
            file.report('PRP-003', property.nameSpan, {
                message: `this piece is given two shapes, \`${before.name}\` and \`${property.name}\``,
                hint: 'keep one of the two; a curve of several pieces says `to` for each of them, and then its shape',
                found: `\`${property.name}\` after \`${before.name}\``,
                needed: 'one shape for each `to`',
                related: [{ span: before.nameSpan, message: `\`${before.name}\` is stated here` }],
            });
        }
        shaped.set(Math.max(piece, 1), property);
    }
}
