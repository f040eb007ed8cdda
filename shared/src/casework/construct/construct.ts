/** A design made into casework: every part in its place, every size with its reasons, every piece that is cut. */
import { type Box, boxAround } from '../../geometry/index.js';
import type { Design, LetDeclaration } from '../design/design.js';
import type { Assembly, Casework, ProjectModel, RouteModel } from '../model/casework.js';
import type { ThingValue } from '../model/things.js';
import { allowanceInFile } from './allowances.js';
import { alternativesOf } from './alternatives.js';
import { buildsOf, isOfFile } from './builds.js';
import type { BuiltBefore } from './built-before.js';
import { type BuiltCase, builtCase, furnishedCase, nameOfBuild, withJointsFrom } from './built-case.js';
import { Construction } from './construction.js';
import { evaluate } from './evaluate.js';
import { finishesOf } from './finishes.js';
import { type Asked, Recording } from './recording.js';
import { judge } from './requirements.js';
import { Scope } from './scope.js';

export interface ConstructOptions {
    /** Whether the values of all expressions are kept, by their words: for hovers. */
    readonly keepValues?: boolean;
    /**
     * What was built the last time, to be used again where nothing has changed: a design that is being edited is built anew at each
     * keystroke. The casework is the same with it as without. It is not asked where values are kept.
     */
    readonly before?: BuiltBefore;
}

/**
 * Builds what the design's project builds, or each of its cases once. Never throws on a design: what cannot be computed is unknown, and
 * why is in `problems`.
 */
export function construct(design: Design, { keepValues = false, before }: ConstructOptions = {}): Casework {
    const construction = new Construction(design, keepValues);
    const builtBefore = keepValues ? undefined : before?.for(design);
    const begun = buildsOf(design).map((build) => {
        const path = construction.freePath(nameOfBuild(build));
        const again = builtBefore?.(build, path);
        if (again) {
            askAgain(construction, again.asked);
            return { build, again };
        }
        const recording = new Recording();
        return { build, recording, furnished: construction.during(recording, () => furnishedCase(construction, build, path)) };
    });
    evaluateFile(construction);
    const cases: BuiltCase[] = [];
    let joints = 0;
    for (const { build, again, recording, furnished } of begun) {
        const built = again
            ? withJointsFrom(again, joints)
            : construction.during(recording, () => ({ ...builtCase(construction, build, furnished, joints), asked: recording }));
        cases.push(built);
        joints += built.joints.length;
    }
    const casework = caseworkOf(construction, cases);
    if (!keepValues) before?.keep(design, cases, construction.problems);
    return casework;
}

/** Kinds of things that are not found by their name: a joint says `screw #8`, whatever the fastener is called, and a layout takes any offcut. */
const foundBySize: ReadonlySet<string> = new Set(['fastener', 'offcut']);

/** What stands by itself in the file: its things and values are known, and what is wrong with them is found, whether a case uses them or not. */
function evaluateFile(construction: Construction): void {
    const { design } = construction;
    for (const declaration of design.declarations.values()) {
        const isFound = declaration.is === 'fact' && foundBySize.has(declaration.kind);
        if (declaration.span.file !== design.file && !isFound) continue;
        if (declaration.is === 'fact' && declaration.kind !== 'curve') construction.things.thing(declaration.id);
        if (declaration.is === 'let' && isOfFile(declaration.id)) evaluateLet(construction, declaration);
    }
}

function evaluateLet(construction: Construction, { id, name, nameSpan }: LetDeclaration): void {
    evaluate(construction, { is: 'name', id, name, span: nameSpan }, new Scope(undefined));
}

/** What all cases share is left as if a case had been built that is used again. */
function askAgain(construction: Construction, { declarations, deviations, partCount, turnCount }: Asked): void {
    for (const id of declarations) {
        const declaration = construction.design.declarations.get(id);
        if (declaration?.is === 'fact') construction.things.thing(id);
        if (declaration?.is === 'let') evaluateLet(construction, declaration);
    }
    for (const source of deviations.values()) construction.deviate(source);
    construction.partCount += partCount;
    construction.turnCount += turnCount;
}

function caseworkOf(construction: Construction, cases: readonly BuiltCase[]): Casework {
    const { design, things, shop, deviations, problems, values } = construction;
    const scope = new Scope(undefined);
    const parts = cases.flatMap((one) => one.parts);
    const finishes = finishesOf(construction, parts);
    return {
        design,
        ...projectOf(construction),
        assemblies: withInside(cases.flatMap(({ assemblies }) => assemblies)),
        parts: new Map(parts.map((part) => [part.path, part])),
        unplaced: new Set(cases.flatMap(({ unplaced }) => unplaced)),
        pieces: cases.flatMap(({ pieces }) => pieces),
        openings: new Map(cases.flatMap(({ openings }) => openings.map((opening) => [opening.path, opening]))),
        joints: cases.flatMap(({ joints }) => joints),
        curves: cases.flatMap(({ curves }) => curves),
        loads: cases.flatMap(({ loads }) => loads),
        requirements: [
            ...cases.flatMap(({ requirements }) => requirements),
            ...design.requirements.map((statement) => judge(construction, statement, scope, undefined)),
        ],
        allowances: [
            ...cases.flatMap(({ allowances }) => allowances),
            ...design.allowances.map((statement) =>
                allowanceInFile(
                    statement,
                    cases.flatMap(({ builtBy }) => builtBy),
                ),
            ),
        ],
        finishes,
        things: things.all(),
        shop,
        deviations,
        problems,
        values,
    };
}

/** What a case reaches over all takes in the cases inside it, which stand behind it in the list. */
function withInside(assemblies: readonly Assembly[]): readonly Assembly[] {
    const inside = new Map<string, Box[]>();
    return assemblies
        .toReversed()
        .map((assembly) => {
            const extent = boxAround([assembly.extent, ...(inside.get(assembly.path) ?? [])]) ?? assembly.extent;
            if (assembly.inside !== undefined) inside.set(assembly.inside, [...(inside.get(assembly.inside) ?? []), extent]);
            return { ...assembly, extent };
        })
        .reverse();
}

function routeOf(value: ThingValue | undefined): RouteModel | undefined {
    if (value?.is !== 'block') return undefined;
    const sizes = (name: string) => {
        const found = value.properties.get(name);
        return found?.is === 'sizes' ? found.sizes : [];
    };
    const ceiling = value.properties.get('ceiling');
    return {
        doorways: sizes('doorway'),
        corners: sizes('corner'),
        ...(ceiling?.is === 'measure' ? { ceiling: ceiling.measure } : {}),
        span: value.span,
    };
}

function projectOf(construction: Construction): { readonly project?: ProjectModel } {
    const declaration = construction.design.project;
    if (!declaration) return {};
    const thing = construction.things.thing(declaration.id);
    const text = (name: string): string | undefined => {
        const value = thing?.properties.get(name);
        return value?.is === 'text' ? value.text : undefined;
    };
    const units = thing?.properties.get('units');
    const [client, revision] = [text('client'), text('revision')];
    const [sag, climate] = [thing?.properties.get('sag'), thing?.properties.get('climate')];
    const [slope, carpet, accessible] = ['slope', 'carpet', 'accessible'].map((name) => thing?.properties.get(name));
    const route = routeOf(thing?.properties.get('route'));
    const alternatives = alternativesOf(construction, declaration);
    const terms = declaration.properties.flatMap(({ name, value }) => (name === 'terms' && value?.is === 'text' ? [value.text] : []));
    const project: ProjectModel = {
        title: declaration.title ?? declaration.name,
        units: units?.is === 'word' && units.word === 'mm' ? 'mm' : 'in',
        notes: declaration.doc === undefined ? [] : [declaration.doc],
        ...(client === undefined ? {} : { client }),
        ...(revision === undefined ? {} : { revision }),
        ...(sag?.is === 'measure' ? { sag: sag.measure } : {}),
        ...(slope?.is === 'measure' ? { slope: slope.measure } : {}),
        ...(carpet?.is === 'measure' ? { carpet: carpet.measure } : {}),
        ...(accessible?.is === 'truth' && accessible.value ? { isAccessible: true } : {}),
        ...(route ? { route } : {}),
        ...(climate?.is === 'measures' ? { climate: climate.measures } : {}),
        ...(terms.length > 0 ? { terms } : {}),
        ...(alternatives.length > 0 ? { alternatives } : {}),
        ...(thing ? { thing } : {}),
    };
    return { project };
}
