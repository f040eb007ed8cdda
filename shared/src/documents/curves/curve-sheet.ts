/** The document of curves: how each is drawn, and how fair it is. */

import type { Casework, CurveModel } from '../../casework/index.js';
import { templateShapes } from '../../drawing/index.js';
import { add, distance, isArc, isBow, isJoined } from '../../geometry/index.js';
import { cautions } from '../cautions.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import type { Group, Sheet } from '../sheet.js';
import { bowGroups } from './bow-groups.js';
import { curveColumns, withTable } from './curve-cells.js';
import { pinGroups, trammelGroup } from './drawing-groups.js';
import { fairnessGroup, threeLooks } from './fairness-group.js';
import { type LineOfSheet, lineGroup } from './line-groups.js';

/** Between the places at which the bend of a line is told, in millimetres. */
const usualSteps = { inch: 6 * 25.4, mm: 150 } as const;

/** Of all curves that what is built follows; undefined where there is none. */
export function curveSheet(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'spacing'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const lines = linesOf(casework, options);
    if (lines.length === 0) return undefined;
    const print = printStyle(casework, options);
    return {
        kind: 'curves',
        title: 'Curves',
        facts: projectFacts(casework, print),
        columns: curveColumns(print),
        groups: lines.flatMap((line) => groupsOf(line, casework)).map(withTable),
        notes: [
            'Lines are finished lines, with their bands on: heights from the bottom of the case (widths from its left), depths from its back. What is cut to before the bands is in the templates and their offsets.',
            'Strains, pulls and string lengths are of a uniform strip; a knot, a splice or a planed taper moves the line.',
            threeLooks,
            cautions.bent,
            cautions.routing,
            cautions.decides,
        ],
    };
}

/** The lines to tell of, each once: two builds of one case draw theirs with one strip. */
export function linesOf(casework: Casework, options: Pick<DocumentOptions, 'units' | 'spacing'>): readonly LineOfSheet[] {
    const print = printStyle(casework, options);
    const spacing = options.spacing ?? usualSteps[print.system];
    const built = new Set(casework.assemblies.map(({ path }) => path));
    const models: CurveModel[] = [];
    const bases = new Set(casework.curves.filter(({ parts }) => parts.length > 0).map(({ follows }) => follows?.path));
    for (const model of casework.curves) {
        const isNew =
            built.has(model.assembly) &&
            (model.parts.length > 0 || bases.has(model.path)) &&
            !models.some((known) => isAlike(known, model));
        if (model.curve && isNew) models.push(model);
    }
    const isOnly = (name: string) => models.filter((model) => model.name === name).length === 1;
    return models.flatMap((model) =>
        model.curve ? [{ model, curve: model.curve, name: isOnly(model.name) ? model.name : model.path, print, spacing }] : [],
    );
}

/** One line, or the same moved forward, which the same strip draws. */
function isAlike(a: CurveModel, b: CurveModel): boolean {
    if (!a.curve || !b.curve || a.nameSpan !== b.nameSpan || a.curve.kind !== b.curve.kind) return false;
    const [p, q] = [a.curve, b.curve];
    const forward = { x: 0, y: q.start.y - p.start.y };
    return (
        distance(add(p.start, forward), q.start) < 1e-6 &&
        distance(add(p.end, forward), q.end) < 1e-6 &&
        Math.abs(p.length - q.length) < 1e-6
    );
}

function groupsOf(line: LineOfSheet, casework: Casework): readonly Group[] {
    const band = templateShapes(casework).find((shape) => shape.line.path === line.model.path)?.takesOff.front;
    return [lineGroup(line), ...makingGroups(line, casework, band), fairnessGroup(line)];
}

/** How it is drawn: by string, trammel or straightedge, or by a batten; pieces each in their own way. */
function makingGroups(line: LineOfSheet, casework: Casework, band: number | undefined): readonly Group[] {
    const { curve } = line;
    if (isJoined(curve)) {
        const own = curve.pieces.flatMap((piece, index) =>
            pieceGroups({ ...line, curve: piece, name: `${line.name}, piece ${index + 1}` }, casework, band),
        );
        return [...own, ...pinGroups(line)];
    }
    return [...pieceGroups(line, casework, band), ...(curve.kind === 'line' ? [] : pinGroups(line))];
}

function pieceGroups(line: LineOfSheet, casework: Casework, band: number | undefined): readonly Group[] {
    const { curve } = line;
    if (isBow(curve)) return bowGroups(line, curve, casework);
    const trammel = isArc(curve) ? trammelGroup(line, curve, band) : undefined;
    return trammel ? [trammel] : [];
}
